package evenhand.terminal.ride;

import evenhand.car.LoadCase;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.terminal.asked.Answer;
import evenhand.terminal.asked.AskedInForms;
import evenhand.terminal.asked.AskedRoad;
import evenhand.terminal.asked.FormOptions;
import evenhand.terminal.asked.FullOption;
import evenhand.terminal.asked.LoadOption;
import evenhand.terminal.asked.Mistake;
import evenhand.terminal.asked.OptionText;
import evenhand.terminal.asked.ScenarioArgument;
import evenhand.terminal.asked.SetupOption;
import evenhand.terminal.asked.UsualOptions;
import evenhand.terminal.page.Console;
import evenhand.terminal.reply.SetupRide;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code evenhand ride}. */
@Command(
        name = "ride",
        sortOptions = false,
        description = {
            "How each set-up rides: comfort where the driver sits, frequencies, damping, travel and grip.",
            "",
            "Each axle as a quarter car, linear about its rest: rates at the wheel, frequencies of the body and"
                    + " of the wheel's hop, damping, and what a road does at a speed. Comfort is judged where the"
                    + " driver's seat is bolted down (car.seat.behindFrontAxle), on both axles together, by ISO 2631-1."
                    + " Pitch and bounce of the body,"
                    + " what the springs carry, how much travel there is and where in a turn a stop is touched."
                    + " First stands how each set-up rides against the first; --full prints all figures, and why.",
            ""
        },
        footer = {
            "",
            "Examples with the demo cars:",
            "  app/evenhand ride scenarios/harbour-saloon.json",
            "  app/evenhand ride scenarios/harbour-saloon.json --road C --speed \"60 km/h\"",
            "  app/evenhand ride scenarios/harbour-saloon.json --speed \"50 km/h\" \\",
            "      --road validation/data/road-profile-quarter-metre.csv",
            "  app/evenhand ride scenarios/harbour-saloon.json --setup Lowered \\",
            "      --full --curves",
            "",
            "Ends with 0 when done, with 1 when a set-up has no answer, and with 2 when the",
            "command line or the file is wrong."
        })
public final class RideCommand implements AskedInForms {
    @Mixin
    private final ScenarioArgument file = new ScenarioArgument();

    @Mixin
    private final SetupOption setups = new SetupOption();

    @Mixin
    private final LoadOption load = new LoadOption();

    @Option(
            names = "--road",
            paramLabel = "A..H|FILE.csv",
            defaultValue = "B",
            description = "Class of the road by ISO 8608, by its geometric mean, or a measured profile: a file with the"
                    + " header distance_m,height_m. Otherwise ${DEFAULT-VALUE}.")
    private String road = "B";

    @Option(
            names = "--speed",
            paramLabel = "SPEED",
            defaultValue = "80 km/h",
            description = "How fast on it. Otherwise ${DEFAULT-VALUE}.")
    private String speed = "80 km/h";

    @Option(
            names = "--curves",
            description = "Also the response over frequency, and comfort against grip over damping. With --full.")
    private boolean curves;

    @Mixin
    private final FullOption full = new FullOption();

    @Mixin
    private final FormOptions forms = new FormOptions();

    @Mixin
    private final UsualOptions usual = new UsualOptions();

    @Override
    public FormOptions forms() {
        return forms;
    }

    @Override
    public UsualOptions usual() {
        return usual;
    }

    @Override
    public Answer answer(Console console) throws Mistake {
        FormOptions.Form form = forms.form();
        if (form == FormOptions.Form.CSV && curves) {
            throw new Mistake("--curves and --csv: a row per set-up has no room for curves; take --json");
        }
        if (form == FormOptions.Form.PEOPLE && curves && !full.full()) {
            throw new Mistake("--curves: one screen has no room for curves; add --full, or take --json");
        }
        Optional<AskedRoad> askedFor = AskedRoad.of(road, console::complain);
        if (askedFor.isEmpty()) {
            return Answer.NONE;
        }
        AskedRoad asked = askedFor.get();
        double metresPerSecond = OptionText.speed(speed);
        Optional<Scenario> read = file.read(console);
        if (read.isEmpty()) {
            return Answer.NONE;
        }
        Scenario scenario = read.get();
        Optional<LoadCase> aboard = load.of(scenario);
        List<SetupRide> answers = new ArrayList<>();
        Optional<SetupRide.Base> base = Optional.empty();
        for (Setup setup : setups.of(scenario)) {
            SetupRide answer = SetupRide.of(setup, aboard, asked, metresPerSecond, base);
            if (base.isEmpty() && answer instanceof SetupRide.Rides rides) {
                base = Optional.of(new SetupRide.Base(setup.name(), rides.ride()));
            }
            answers.add(answer);
        }
        return new RideReply(scenario, aboard, asked, metresPerSecond, answers, curves, full.full());
    }
}
