package evenhand.window.desk;

import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.choice.Change;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.words.ChangeWords;
import evenhand.words.Units;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Acts in words, as somebody looks for them who wants to go back: what was changed, from what to what, in which set-up. */
final class ActWords {
    /** More changes than these are not read out. */
    private static final int MOST = 2;

    private ActWords() {}

    /**
     * What was done.
     *
     * @param before the work before it
     * @param now the desk after it
     */
    static String of(Act act, Work before, Desk now) {
        Work after = now.work();
        Units units = now.look().units();
        if (act instanceof EditAct edit) {
            return edit.setup()
                    .map(setup ->
                            changes(before, after, Optional.of(setup)).orElse(act.words()) + " in \"" + setup + "\"")
                    .orElseGet(() -> changes(before, after, Optional.empty()).orElse(act.words()));
        }
        if (act instanceof TrialAct.ChoosePace) {
            return "the pace " + fromTo(Units.exactPace(before.pace()), Units.exactPace(after.pace()));
        }
        if (act instanceof TrialAct.ChooseRadius) {
            return "the circle " + fromTo(units.radius(before.radius()), units.radius(after.radius()));
        }
        if (act instanceof TrialAct.ChooseDirection) {
            return "turning " + after.direction().key();
        }
        if (act instanceof TrialAct.ChooseLoad) {
            return after.load().map(load -> "\"" + load + "\" aboard").orElse("nothing more aboard");
        }
        if (act instanceof SetupAct.RenameSetup renaming) {
            return act.words() + " to \"" + renaming.next().strip() + "\"";
        }
        return act.words();
    }

    private static String fromTo(String from, String to) {
        return from + " → " + to;
    }

    /** What differs of a set-up, or of the car that set-ups build on; nothing where no value of it does. */
    private static Optional<String> changes(Work before, Work after, Optional<String> setup) {
        Optional<Entries> was = entries(before.scenario(), setup);
        Optional<Entries> is = entries(after.scenario(), setup);
        if (was.isEmpty() || is.isEmpty()) {
            return Optional.empty();
        }
        List<Change> changes = Catalogue.differences(was.get(), is.get()).stream()
                .map(Change::of)
                .toList();
        return changes.isEmpty() || changes.size() > MOST
                ? Optional.empty()
                : Optional.of(changes.stream().map(ActWords::change).collect(Collectors.joining(", ")));
    }

    private static String change(Change change) {
        return ChangeWords.name(change) + " " + ChangeWords.fromTo(change);
    }

    private static Optional<Entries> entries(Scenario scenario, Optional<String> setup) {
        return setup.isPresent() ? scenario.setup(setup.get()).map(Setup::entries) : Optional.of(scenario.car());
    }
}
