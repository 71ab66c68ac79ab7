package evenhand.terminal;

import evenhand.answers.Trial;
import evenhand.choice.Comparison;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.turn.TurnAnswer;
import java.util.List;

/** Set-ups compared with one of them. */
record Compared(Scenario scenario, Setup base, Trial trial, List<Against> setups) {
    /** One set-up against the base. */
    record Against(Setup setup, Answer answer) {}

    sealed interface Answer permits Answered, Unanswered {}

    record Answered(Comparison comparison) implements Answer {}

    record Unanswered(TurnAnswer.Reason reason, String text) implements Answer {}

    Compared {
        setups = List.copyOf(setups);
    }

    boolean complete() {
        return setups.stream().allMatch(against -> against.answer() instanceof Answered);
    }
}
