package evenhand.terminal;

import evenhand.answers.Aim;
import evenhand.answers.Trial;
import evenhand.doubt.Doubt;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.turn.TurnAnswer;
import java.util.List;
import java.util.Optional;

/**
 * Set-ups and what doubt leaves of their answers.
 *
 * @param answered the set-ups that turn, in order; what is left of them stands in the same order
 * @param answer nothing where none of them turns
 */
record Doubted(
        Scenario scenario,
        Trial trial,
        Optional<Aim> aim,
        int samples,
        long seed,
        List<Setup> answered,
        List<Silent> silent,
        Optional<Doubt.Answer> answer) {
    /** A set-up that does not turn as it is given. */
    record Silent(Setup setup, TurnAnswer.NoTurn why) {}

    Doubted {
        answered = List.copyOf(answered);
        silent = List.copyOf(silent);
    }
}
