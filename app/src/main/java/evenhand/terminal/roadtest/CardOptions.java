package evenhand.terminal.roadtest;

import evenhand.answers.Trial;
import evenhand.car.Weights;
import evenhand.doubt.Tolerance;
import evenhand.report.CannotReport;
import evenhand.report.ReportFile;
import evenhand.report.RunCard;
import evenhand.report.ShopPicture;
import evenhand.roadtest.Measured;
import evenhand.roadtest.RoadTest;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.terminal.asked.LoadOption;
import evenhand.terminal.asked.Mistake;
import evenhand.terminal.asked.OptionText;
import evenhand.terminal.asked.SoundScenario;
import evenhand.terminal.asked.Status;
import evenhand.terminal.asked.TestedOption;
import evenhand.terminal.page.Console;
import evenhand.words.Units;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The sheet to take along to a road test. */
final class CardOptions {
    /** Paces from which gradients can be read, m/s². */
    private static final List<Double> USUAL_PACES =
            List.of(0.2 * Weights.GRAVITY, 0.3 * Weights.GRAVITY, 0.4 * Weights.GRAVITY);

    @Option(
            names = "--card",
            paramLabel = "OUT",
            description = "Writes the sheet to take along, .pdf or .html: runs, what is expected, boxes, when to stop.")
    private Optional<String> card = Optional.empty();

    @Option(names = "--setup", paramLabel = "NAME", description = "With --card: the set-up that will be driven.")
    private Optional<String> setup = Optional.empty();

    @Option(
            names = "--radius",
            paramLabel = "LENGTH",
            description = "With --card: radius of the circle. Otherwise \"40 m\".")
    private Optional<String> radius = Optional.empty();

    @Option(
            names = "--pace",
            paramLabel = "ACCELERATION",
            description =
                    "With --card: a lateral acceleration to drive at; may be given more than once. Otherwise \"0.2 g\","
                            + " \"0.3 g\" and \"0.4 g\".")
    private List<String> paces = new ArrayList<>();

    @Option(names = "--paper", paramLabel = "a4|letter", description = "With --card: size of the sheets. Otherwise a4.")
    private Optional<String> paper = Optional.empty();

    @Option(
            names = "--force",
            description =
                    "With --card: writes over a file that is there already; with --tested also where the file and the"
                            + " road do not agree.")
    private boolean force;

    @Mixin
    private final TestedOption tested = new TestedOption();

    @Mixin
    private final LoadOption load = new LoadOption();

    boolean isAsked() {
        return card.isPresent();
    }

    /** That nothing is asked of a card that is not wanted. */
    void requireNone() throws Mistake {
        if (setup.isPresent()
                || radius.isPresent()
                || !paces.isEmpty()
                || paper.isPresent()
                || force
                || tested.isAsked()
                || load.isGiven()) {
            throw new Mistake(
                    "--setup, --load, --radius, --pace, --paper, --tested and --force belong to --card; the road tests of"
                            + " the file say what was driven");
        }
    }

    Status write(Path file, Units units, Console console) throws Mistake {
        if (setup.isEmpty()) {
            throw new Mistake("--card: which set-up will be driven? Write --setup with its name");
        }
        double circle = radius.isPresent() ? OptionText.radius(radius.get()) : Trial.USUAL_RADIUS;
        List<Double> asked = paces.isEmpty() ? USUAL_PACES : OptionText.paces(paces);
        try {
            ReportFile target = ReportFile.of(OptionText.file(card.orElseThrow()), force);
            if (target.kind() == ReportFile.Kind.CSV) {
                throw new Mistake(
                        "--card " + target.path() + ": a card is for paper; let its name end in .pdf or .html");
            }
            Optional<Scenario> sound = SoundScenario.read(file, console);
            Optional<Scenario> read = sound.isPresent()
                    ? tested.of(sound.get(), Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES, force, console)
                    : sound;
            if (read.isEmpty()) {
                return Status.WRONG;
            }
            Scenario scenario = read.get();
            Setup driven = SoundScenario.one(scenario, setup);
            RunCard.Asked sheet = new RunCard.Asked(
                    scenario,
                    driven,
                    load.of(scenario),
                    new Measured(circle, RoadTest.USUAL_RADIUS_TOLERANCE * circle),
                    asked,
                    units,
                    ShopPicture.of(scenario, file));
            RunCard.write(sheet, target, OptionText.paper(paper.orElse("a4")))
                    .forEach(remark -> console.complain("evenhand roadtest: " + remark));
            return Status.DONE;
        } catch (CannotReport e) {
            throw new Mistake(String.valueOf(e.getMessage()));
        }
    }
}
