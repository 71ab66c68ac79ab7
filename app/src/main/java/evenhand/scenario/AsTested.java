package evenhand.scenario;

import evenhand.answers.Progress;
import evenhand.doubt.Tolerance;
import evenhand.roadtest.RoadTest;
import evenhand.roadtest.Study;
import java.util.List;
import java.util.Optional;

/** The job of a scenario on the car as its road tests have corrected it, or why there is none. */
public sealed interface AsTested {
    /** Intervals are not asked for, only the corrected car. */
    int FEW_SAMPLES = 64;

    /** Every set-up is of the corrected car. */
    record Corrected(Scenario scenario) implements AsTested {}

    /** The logs of the tests have problems, each of its own file. */
    record Unreadable(List<Problem> problems) implements AsTested {
        public Unreadable {
            problems = List.copyOf(problems);
        }
    }

    /** No test has a reading; what was left out, and why, a clause each. */
    record Silent(List<String> why) implements AsTested {
        public Silent {
            why = List.copyOf(why);
        }
    }

    /** A set-up that was driven does not turn by the file, or its bounced end does not swing. */
    record NoTurn() implements AsTested {}

    /** File and road do not agree by these tests. */
    record Disagrees(List<String> tests, double probability) implements AsTested {
        public Disagrees {
            tests = List.copyOf(tests);
        }
    }

    /** What is learnt makes no car of one of the set-ups. */
    record NoCar() implements AsTested {}

    /**
     * Corrects the car by these tests, by all where none is named.
     *
     * @param unsaid how measured values without a tolerance are taken
     * @param force also where file and road do not agree
     * @throws java.util.concurrent.CancellationException if it is no longer wanted
     */
    static AsTested of(
            Scenario scenario, List<String> names, Tolerance.Unsaid unsaid, boolean force, Progress progress) {
        RoadTests read = RoadTests.of(scenario, names);
        if (!read.problems().isEmpty()) {
            return new Unreadable(read.problems());
        }
        if (read.tests().isEmpty()) {
            return new Silent(read.silent());
        }
        List<String> tests = read.tests().stream().map(RoadTest::name).toList();
        Optional<Study.Lesson> lesson =
                Study.lesson(read.asked(scenario.setups(), Optional.empty(), FEW_SAMPLES, 1, unsaid, progress));
        if (lesson.isEmpty()) {
            return new NoTurn();
        }
        boolean agrees = lesson.get().agreement().agrees();
        if (!agrees && !force) {
            return new Disagrees(tests, lesson.get().agreement().probability());
        }
        return scenario.off(lesson.get().learnt(), new Scenario.Tested(tests, agrees))
                .<AsTested>map(Corrected::new)
                .orElseGet(NoCar::new);
    }
}
