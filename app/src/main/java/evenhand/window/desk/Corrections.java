package evenhand.window.desk;

import evenhand.answers.Progress;
import evenhand.doubt.Tolerance;
import evenhand.forms.Table;
import evenhand.scenario.AsTested;
import evenhand.scenario.Scenario;
import evenhand.words.TestedWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The car as its road tests have corrected it, worked out once as long as neither car nor readings change. Of one thread. */
final class Corrections {
    private record Known(Scenario of, boolean force, AsTested car) {}

    private Optional<Known> last = Optional.empty();

    AsTested of(Work work) {
        boolean force = work.which() == WhichCar.AS_TESTED_ALL_THE_SAME;
        Optional<Known> before =
                last.filter(known -> known.force() == force && known.of().equals(work.scenario()));
        Known now = before.orElseGet(() -> new Known(
                work.scenario(),
                force,
                AsTested.of(
                        work.scenario(), List.of(), Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES, force, Progress.NONE)));
        last = Optional.of(now);
        return now.car();
    }

    /** The reply where no car is learnt, with the ways on. */
    static Reply none(AsTested car) {
        List<Reply.Next> ways = new ArrayList<>();
        if (car instanceof AsTested.Disagrees) {
            ways.add(new Reply.Next(
                    "take the corrected car all the same",
                    Optional.of(new TrialAct.ChooseCar(WhichCar.AS_TESTED_ALL_THE_SAME))));
        }
        ways.add(new Reply.Next(
                "ask the car as it was measured", Optional.of(new TrialAct.ChooseCar(WhichCar.AS_MEASURED))));
        ways.add(new Reply.Next("see what the road said", Optional.of(new LookAct.Ask(Question.ROAD))));
        return new Reply(
                List.of("The car cannot be asked as tested: " + TestedWords.why(car) + "."),
                List.of(),
                List.of(),
                Table.NONE,
                ways);
    }
}
