package evenhand.terminal.asked;

import evenhand.answers.Progress;
import evenhand.doubt.Tolerance;
import evenhand.scenario.AsTested;
import evenhand.scenario.Scenario;
import evenhand.scenario.TestGiven;
import evenhand.terminal.page.Console;
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
public final class TestedOption {
    @Option(
            names = "--tested",
            paramLabel = "=NAME",
            arity = "0..1",
            preprocessor = OnlyAttached.class,
            description = "Asks the car as its road tests have corrected it: all tests of the file, or the one that"
                    + " is named right behind the sign of equality, --tested=\"First circle\".")
    private Optional<String> tested = Optional.empty();

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

    /** Whether the corrected car is asked for. */
    public boolean isAsked() {
        return tested.isPresent();
    }

    /**
     * The scenario as it was asked for, or nothing after its problems were told.
     *
     * @param force also where file and road do not agree
     */
    public Optional<Scenario> of(Scenario scenario, Tolerance.Unsaid unsaid, boolean force, Console console)
            throws Mistake {
        if (tested.isEmpty()) {
            return Optional.of(scenario);
        }
        List<String> names = tested.filter(name -> !name.isEmpty()).stream().toList();
        requireKnown(scenario, names);
        AsTested corrected = AsTested.of(scenario, names, unsaid, force, Progress.NONE);
        if (corrected instanceof AsTested.Corrected car) {
            return Optional.of(car.scenario());
        }
        if (corrected instanceof AsTested.Unreadable unreadable) {
            unreadable.problems().forEach(problem -> console.complain(problem.toString()));
            return Optional.empty();
        }
        throw new Mistake("--tested: " + TestedWords.why(corrected) + next(corrected));
    }

    /** What to do about it. */
    private static String next(AsTested none) {
        return none instanceof AsTested.Disagrees
                ? "; \"evenhand roadtest\" says where, --force takes the corrected car all the same"
                : none instanceof AsTested.NoCar
                        ? "; \"evenhand roadtest\" says which moved"
                        : none instanceof AsTested.NoTurn ? "; \"evenhand balance\" says why" : "";
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
