package evenhand.terminal.loads;

import evenhand.car.End;
import evenhand.car.LoadCase;
import evenhand.car.Side;
import evenhand.car.mounts.HardUse;
import evenhand.car.mounts.Mount;
import evenhand.car.mounts.PartEnd;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.terminal.asked.EachFile;
import evenhand.terminal.asked.FormOptions;
import evenhand.terminal.asked.LoadOption;
import evenhand.terminal.asked.Mistake;
import evenhand.terminal.asked.OptionText;
import evenhand.terminal.asked.ProgressLine;
import evenhand.terminal.asked.ScenarioArgument;
import evenhand.terminal.asked.SetupOption;
import evenhand.terminal.asked.SoundScenario;
import evenhand.terminal.asked.Status;
import evenhand.terminal.asked.UsualOptions;
import evenhand.terminal.page.Console;
import evenhand.words.Units;
import evenhand.words.loads.LoadsAsked;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code evenhand loads}. */
@Command(
        name = "loads",
        sortOptions = false,
        description = {
            "What each link, spring, bracket and mount has to carry.",
            "",
            "Case by case of what the car is put through (hardUse in the file; the usual cases where it lists none):"
                    + " forces at every end of every member, and what the file's mounts make of them, their pins, seats, eyes and"
                    + " beams. Statics of rigid bodies, for comparing designs; no proof of strength. First stand the hardest"
                    + " worked parts, and what a set-up changes against the first.",
            ""
        },
        footer = {
            "",
            "Examples with the demo cars:",
            "  app/evenhand loads scenarios/sluice-tourer.json",
            "  app/evenhand loads scenarios/sluice-tourer.json --in \"Kerb strike\" \\",
            "      --part rear --turn left",
            "",
            "Have brackets, welds and bolts checked by a licensed or suitably qualified",
            "engineer.",
            "",
            "Ends with 0 when done, with 1 when a set-up or a case has no answer, and with 2",
            "when the command line or the file is wrong."
        })
public final class LoadsCommand implements EachFile {
    @Mixin
    private final ScenarioArgument file = new ScenarioArgument();

    @Mixin
    private final SetupOption setups = new SetupOption();

    @Mixin
    private final LoadOption load = new LoadOption();

    @Option(
            names = "--in",
            paramLabel = "CASE",
            description = "Only this case of hard use, every end in full; may be given more than once. Otherwise all.")
    private List<String> cases = new ArrayList<>();

    @Option(
            names = "--part",
            paramLabel = "PREFIX",
            description =
                    "Only members and mounts whose names begin so, such as rear or rear.lowerLink, and mounts that"
                            + " carry them; may be given more than once. Otherwise all.")
    private List<String> parts = new ArrayList<>();

    @Option(
            names = "--turn",
            paramLabel = "left|right|both",
            defaultValue = "both",
            description = "Only bends to this hand, and wheels struck on this side. Otherwise ${DEFAULT-VALUE}.")
    private String turn = "both";

    @Mixin
    private final FormOptions forms = new FormOptions();

    @Mixin
    private final UsualOptions usual = new UsualOptions();

    @Override
    public FormOptions forms() {
        return forms;
    }

    @Override
    public Status run(Console console) throws Mistake {
        FormOptions.Form form = forms.form();
        Set<Side> hands = hands();
        Units shown = usual.units();
        Optional<Scenario> read = file.read(console);
        if (read.isEmpty()) {
            return Status.WRONG;
        }
        Scenario scenario = read.get();
        Optional<LoadCase> aboard = load.of(scenario);
        List<Setup> chosen = setups.of(scenario);
        LoadsAsked asked =
                new LoadsAsked(scenario.hardUse(), !scenario.listsHardUse(), cases(scenario), parts(chosen), hands);
        List<SetupLoads> answers = new ArrayList<>();
        try (ProgressLine progress = new ProgressLine(console, "loading")) {
            for (Setup setup : chosen) {
                answers.add(SetupLoads.of(setup, aboard, asked, scenario.estimatedUse()));
                progress.at((double) answers.size() / chosen.size());
            }
        }
        LoadsReply reply = new LoadsReply(scenario, aboard, asked, answers);
        reply.give(form, console, shown);
        return reply.complete() ? Status.DONE : Status.NO_ANSWER;
    }

    private Set<Side> hands() throws Mistake {
        return switch (OptionText.ways(turn)) {
            case LEFT -> Set.of(Side.LEFT);
            case RIGHT -> Set.of(Side.RIGHT);
            case BOTH -> Set.of(Side.values());
        };
    }

    private List<String> cases(Scenario scenario) throws Mistake {
        List<String> known = scenario.hardUse().stream().map(HardUse::name).toList();
        for (String name : cases) {
            if (!known.contains(name)) {
                throw SoundScenario.unknown("case of hard use", name, known);
            }
        }
        return cases;
    }

    /** A beginning that no part of any set-up has is a slip. */
    private List<String> parts(List<Setup> chosen) throws Mistake {
        Set<String> known = new LinkedHashSet<>();
        for (Setup setup : chosen) {
            for (End end : End.values()) {
                PartEnd.known(setup.car().axle(end), end).stream()
                        .map(PartEnd::part)
                        .forEach(known::add);
            }
            setup.car().mounts().stream().map(Mount::name).forEach(known::add);
        }
        for (String prefix : parts) {
            if (known.stream().noneMatch(part -> part.startsWith(prefix))) {
                throw SoundScenario.unknown("part", prefix, List.copyOf(known));
            }
        }
        return parts;
    }

    /** A hand in the words of an answer. */
    static String word(Side hand) {
        return hand == Side.LEFT ? "left" : "right";
    }
}
