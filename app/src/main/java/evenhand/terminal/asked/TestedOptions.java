package evenhand.terminal.asked;

import evenhand.answers.Progress;
import evenhand.catalogue.Entries;
import evenhand.doubt.Tolerance;
import evenhand.roadtest.Study;
import evenhand.scenario.RoadTests;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.scenario.TestGiven;
import evenhand.terminal.page.Console;
import evenhand.words.Numbers;
import evenhand.words.TestedWords;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Stack;
import picocli.CommandLine.IParameterPreprocessor;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** The car as its road tests have corrected it. */
public final class TestedOptions {
    private static final int LARGE = 64;

    @Option(
            names = "--tested",
            paramLabel = "=NAME",
            arity = "0..1",
            preprocessor = OnlyAttached.class,
            description = "Asks the car as its road tests have corrected it: all tests of the file, or the one that"
                    + " is named right behind the sign of equality, --tested=\"First circle\".")
    private Optional<String> tested = Optional.empty();

    @Option(names = "--force", description = "With --tested: also where the file and the road do not agree.")
    private boolean force;

    /** A name belongs to the option only behind a sign of equality: what follows else is the file. */
    static final class OnlyAttached implements IParameterPreprocessor {
        @Override
        public boolean preprocess(
                Stack<String> arguments, CommandSpec command, ArgSpec option, Map<String, Object> info) {
            if (!"=".equals(info.get("separator"))) {
                arguments.push("");
            }
            return false;
        }
    }

    /** The scenario as it was asked for, or nothing after its problems were told. */
    Optional<Scenario> of(Scenario scenario, Tolerance.Unsaid unsaid, Console console) throws Mistake {
        if (tested.isEmpty()) {
            if (force) {
                throw new Mistake("--force belongs to --tested; leave it out, or write --tested too");
            }
            return Optional.of(scenario);
        }
        List<String> names = tested.filter(name -> !name.isEmpty()).stream().toList();
        requireKnown(scenario, names);
        RoadTests tests = RoadTests.of(scenario, names);
        if (!tests.problems().isEmpty()) {
            tests.problems().forEach(problem -> console.complain(problem.toString()));
            return Optional.empty();
        }
        if (tests.tests().isEmpty()) {
            throw new Mistake("--tested: the file has no road test with a reading"
                    + (tests.silent().isEmpty() ? "" : ": " + String.join("; ", tests.silent())));
        }
        List<String> asked = tests.tests().stream().map(test -> test.name()).toList();
        List<Entries> cars = scenario.setups().stream().map(Setup::entries).toList();
        Study.Lesson lesson = Study.lesson(new Study.Question(
                        scenario.setups().stream().map(Setup::name).toList(),
                        cars,
                        tests.tests(),
                        Optional.empty(),
                        LARGE,
                        1,
                        unsaid,
                        Progress.NONE))
                .orElseThrow(() -> new Mistake(
                        "--tested: a set-up that was driven does not turn by the file; \"evenhand balance\" says why"));
        if (!lesson.agreement().agrees() && !force) {
            throw new Mistake("--tested: the file and the road do not agree by " + TestedWords.names(asked)
                    + " (probability " + Numbers.significant(lesson.agreement().probability(), 2)
                    + "); \"evenhand roadtest\" says where, --force takes the corrected car all the same");
        }
        return Optional.of(scenario.off(
                        lesson.learnt(),
                        new Scenario.Tested(asked, lesson.agreement().agrees()))
                .orElseThrow(() -> new Mistake("--tested: what the road says of the numbers makes no car of one of the"
                        + " set-ups; \"evenhand roadtest\" says which moved")));
    }

    /** That each of these names is a test of the file. */
    public static void requireKnown(Scenario scenario, List<String> names) throws Mistake {
        List<String> known = scenario.roadTests().stream().map(TestGiven::name).toList();
        if (known.isEmpty()) {
            throw new Mistake("the file has no road tests; write them beside \"car\" as \"roadTests\"");
        }
        for (String name : names) {
            if (!known.contains(name)) {
                throw SoundScenario.unknown("road test", name, known);
            }
        }
    }
}
