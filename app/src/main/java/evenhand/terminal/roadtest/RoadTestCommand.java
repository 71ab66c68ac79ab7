package evenhand.terminal.roadtest;

import evenhand.answers.Aim;
import evenhand.doubt.Tolerance;
import evenhand.quantity.InvalidValue;
import evenhand.roadtest.Findings;
import evenhand.roadtest.Study;
import evenhand.scenario.AimReading;
import evenhand.scenario.RoadTests;
import evenhand.scenario.Scenario;
import evenhand.terminal.asked.EachFile;
import evenhand.terminal.asked.FormOptions;
import evenhand.terminal.asked.Mistake;
import evenhand.terminal.asked.OptionText;
import evenhand.terminal.asked.ProgressLine;
import evenhand.terminal.asked.SoundScenario;
import evenhand.terminal.asked.Status;
import evenhand.terminal.asked.TestedOption;
import evenhand.terminal.asked.UsualOptions;
import evenhand.terminal.page.Console;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code evenhand roadtest}. */
@Command(
        name = "roadtest",
        sortOptions = false,
        description = {
            "What the car on the road says of the car on paper.",
            "",
            "Sets what was read on a circle, at the limit and at bounced corners (\"roadTests\" in the file) beside what"
                    + " the file expects, and corrects the file's numbers by it, each as far as its tolerance lets it."
                    + " Says whether file and road agree, which numbers can no longer be believed, which readings do not"
                    + " fit, what is left of doubt in every set-up, and what to read next. Every other question can be"
                    + " asked of the corrected car by --tested.",
            "",
            "With --card nothing is corrected: it writes the sheet to take along to the next test.",
            ""
        },
        footer = {
            "",
            "A reading's residual is what was read less what the corrected car shows, in",
            "standard deviations of reading and pace.",
            "",
            "Examples with the demo cars:",
            "  app/evenhand roadtest scenarios/harbour-saloon.json",
            "  app/evenhand roadtest scenarios/harbour-saloon.json --samples 200 \\",
            "      --aim \"understeer 1 deg/g at 0.5 g\"",
            "  app/evenhand balance scenarios/harbour-saloon.json --tested",
            "  app/evenhand roadtest scenarios/harbour-saloon.json --card card.pdf \\",
            "      --setup \"Pivot middle\" --radius \"30 m\"",
            "",
            "Ends with 0 when file and road agree or the card is written, with 1 when they",
            "do not or no test has a reading, and with 2 when the command line or a file is",
            "wrong."
        })
public final class RoadTestCommand implements EachFile {
    private static final int FEWEST = 10;
    private static final int MOST = 100_000;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = EachFile.SCENARIOS)
    private List<String> files = new ArrayList<>();

    @Option(
            names = "--test",
            paramLabel = "NAME",
            description = "Only this road test; may be given more than once. Otherwise all of the file.")
    private List<String> names = new ArrayList<>();

    @Option(
            names = "--aim",
            paramLabel = "AIM",
            description =
                    "The next readings are to narrow this figure of the first set-up. Otherwise understeer near the"
                            + " limit. Aims as for find.")
    private Optional<String> aimText = Optional.empty();

    @Option(
            names = "--samples",
            paramLabel = "N",
            defaultValue = "2048",
            description = "How many cars are sampled. Otherwise ${DEFAULT-VALUE}.")
    private String samples = "2048";

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "Another whole number samples other cars; the same one always the same. Otherwise"
                    + " ${DEFAULT-VALUE}.")
    private String seed = "1";

    @Option(
            names = "--exact",
            description = "Takes measured values without a tolerance as exact; estimates keep their spread.")
    private boolean exact;

    @Mixin
    private final CardOptions card = new CardOptions();

    @Mixin
    private final FormOptions forms = new FormOptions();

    @Mixin
    private final UsualOptions usual = new UsualOptions();

    @Override
    public FormOptions forms() {
        return forms;
    }

    @Override
    public void ofSeveral() throws Mistake {
        if (card.isAsked()) {
            throw new Mistake("--card: writes one sheet for one car; name one file");
        }
    }

    @Override
    public Status run(Console console) throws Mistake {
        FormOptions.Form form = forms.form();
        int count = (int) OptionText.whole("--samples", samples, FEWEST, MOST);
        long seeded = OptionText.whole("--seed", seed, Long.MIN_VALUE, Long.MAX_VALUE);
        Optional<Aim> aim = aim();
        usual.units();
        if (card.isAsked()) {
            if (form != FormOptions.Form.PEOPLE || !names.isEmpty() || aim.isPresent()) {
                throw new Mistake(
                        "--card: writes a sheet for the next test; leave out --test, --aim, --json and --csv");
            }
            return card.write(OptionText.file(files.get(0)), usual.units(), console);
        }
        card.requireNone();
        Optional<Scenario> read = SoundScenario.read(OptionText.file(files.get(0)), console);
        if (read.isEmpty()) {
            return Status.WRONG;
        }
        Scenario scenario = read.get();
        if (!names.isEmpty()) {
            TestedOption.requireKnown(scenario, names);
        }
        RoadTests tests = RoadTests.of(scenario, names);
        if (!tests.problems().isEmpty()) {
            tests.problems().forEach(problem -> console.complain(problem.toString()));
            return Status.WRONG;
        }
        if (tests.tests().isEmpty()) {
            console.complain("evenhand roadtest: "
                    + (scenario.roadTests().isEmpty()
                            ? "the file has no road tests; write them beside \"car\" as \"roadTests\""
                            : "no road test has a reading: " + String.join("; ", tests.silent())));
            return Status.NO_ANSWER;
        }
        Optional<Findings> found;
        try (ProgressLine progress = new ProgressLine(console, "asking " + count + " cars")) {
            found = Study.of(tests.asked(
                    scenario.setups(),
                    aim,
                    count,
                    seeded,
                    exact ? Tolerance.Unsaid.EXACT : Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES,
                    progress));
        }
        if (found.isEmpty()) {
            console.complain(
                    "evenhand roadtest: a set-up that was driven does not turn by the file, or its bounced end does"
                            + " not swing; \"evenhand balance\" and \"evenhand ride\" say why");
            return Status.NO_ANSWER;
        }
        new RoadTestReply(scenario, found.get(), count, seeded, tests.silent()).give(form, console, usual.units());
        return found.get().agreement().agrees() ? Status.DONE : Status.NO_ANSWER;
    }

    private Optional<Aim> aim() throws Mistake {
        if (aimText.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(AimReading.read(aimText.get()));
        } catch (InvalidValue e) {
            throw new Mistake("--aim \"" + aimText.get() + "\": " + e.getMessage());
        }
    }
}
