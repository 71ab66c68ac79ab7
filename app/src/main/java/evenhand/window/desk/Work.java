package evenhand.window.desk;

import evenhand.answers.Trial;
import evenhand.car.LoadCase;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.turn.Direction;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The job on the desk: everything that undo brings back.
 *
 * @param chosen names of the set-ups that are shown, in the order of the file; the active one is shown in any case
 * @param active name of the set-up that is adjusted
 * @param base name of the set-up that the others are compared with
 * @param pace lateral acceleration that the drawing and the figures stand at, m/s²
 * @param radius of the circle, m
 * @param load name of what is aboard besides what the car was weighed with
 * @param which car is asked
 * @param shelf which set-ups stay at the top of the list, and which are put aside
 */
public record Work(
        Scenario scenario,
        List<String> chosen,
        String active,
        String base,
        double pace,
        double radius,
        Direction direction,
        Optional<String> load,
        WhichCar which,
        Shelf shelf) {
    public Work {
        // what is adjusted, and what the others are compared with, is seen; what is pinned is shown
        shelf = shelf.hiding(active, false).hiding(base, false);
        List<String> ticked = new ArrayList<>(chosen);
        ticked.removeAll(shelf.hidden());
        shelf.pinned().stream().filter(name -> !ticked.contains(name)).forEach(ticked::add);
        chosen = List.copyOf(ticked);
    }

    /** A scenario as it is first laid on the desk: the second set-up beside the first. */
    public static Work on(Scenario scenario) {
        List<String> names = scenario.setups().stream().map(Setup::name).toList();
        List<String> shown = names.subList(0, Math.min(2, names.size()));
        return new Work(
                scenario,
                shown,
                shown.get(shown.size() - 1),
                names.get(0),
                Trial.BRISK,
                Trial.USUAL_RADIUS,
                Trial.USUAL_DIRECTION,
                Optional.empty(),
                WhichCar.AS_MEASURED,
                Shelf.EMPTY);
    }

    /** The set-up that is adjusted. */
    public Setup activeSetup() {
        return scenario.setup(active).orElseThrow();
    }

    public Setup baseSetup() {
        return scenario.setup(base).orElseThrow();
    }

    /** Name of the set-up that the owner gets: the active one; where that is the base, the last of the others that are shown. */
    public String handedOver() {
        return shown().stream()
                .map(Setup::name)
                .filter(name -> active.equals(base) && !name.equals(active))
                .reduce((one, other) -> other)
                .orElse(active);
    }

    /** The set-ups that are shown, in the order of the file. */
    public List<Setup> shown() {
        return scenario.setups().stream()
                .filter(setup -> chosen.contains(setup.name()) || setup.name().equals(active))
                .toList();
    }

    /** The usual paces and the chosen one, rising. */
    public List<Double> paces() {
        TreeSet<Double> paces = new TreeSet<>(Trial.USUAL_PACES);
        paces.add(pace);
        return List.copyOf(paces);
    }

    public Trial trial() {
        return new Trial(paces(), radius, direction)
                .with(load.flatMap(scenario::loadCase))
                .through(scenario.hardUse());
    }

    /** The usual paces only: what is shared out and searched for need not follow the drawing's pace. */
    public Trial usualTrial() {
        return new Trial(Trial.USUAL_PACES, radius, direction)
                .with(load.flatMap(scenario::loadCase))
                .through(scenario.hardUse());
    }

    Work withScenario(Scenario next) {
        List<String> names = next.setups().stream().map(Setup::name).toList();
        String nowActive = names.contains(active) ? active : names.get(Math.min(index(active), names.size() - 1));
        return new Work(
                next,
                chosen.stream().filter(names::contains).toList(),
                nowActive,
                names.contains(base) ? base : names.get(0),
                pace,
                radius,
                direction,
                load.flatMap(name -> aboard(name, next)),
                next.roadTests().isEmpty() ? WhichCar.AS_MEASURED : which,
                shelf.among(names));
    }

    /** What is aboard in another version of the job: a case that was renamed is still the same. */
    private Optional<String> aboard(String name, Scenario next) {
        List<String> before = loads(scenario);
        List<String> after = loads(next);
        int index = before.indexOf(name);
        return after.contains(name)
                ? Optional.of(name)
                : index >= 0 && before.size() == after.size() ? Optional.of(after.get(index)) : Optional.empty();
    }

    private static List<String> loads(Scenario scenario) {
        return scenario.loadCases().stream().map(LoadCase::name).toList();
    }

    private int index(String name) {
        List<String> names = scenario.setups().stream().map(Setup::name).toList();
        return Math.max(0, names.indexOf(name));
    }

    Work renamed(String from, String to) {
        List<String> names = new ArrayList<>(chosen);
        names.replaceAll(name -> name.equals(from) ? to : name);
        return new Work(
                scenario,
                names,
                active.equals(from) ? to : active,
                base.equals(from) ? to : base,
                pace,
                radius,
                direction,
                load,
                which,
                shelf.renamed(from, to));
    }

    Work withChosen(List<String> names) {
        return new Work(scenario, names, active, base, pace, radius, direction, load, which, shelf);
    }

    Work withActive(String name) {
        return new Work(scenario, chosen, name, base, pace, radius, direction, load, which, shelf);
    }

    Work withBase(String name) {
        return new Work(scenario, chosen, active, name, pace, radius, direction, load, which, shelf);
    }

    Work withPace(double next) {
        return new Work(scenario, chosen, active, base, next, radius, direction, load, which, shelf);
    }

    Work withRadius(double next) {
        return new Work(scenario, chosen, active, base, pace, next, direction, load, which, shelf);
    }

    Work withLoad(Optional<String> next) {
        return new Work(scenario, chosen, active, base, pace, radius, direction, next, which, shelf);
    }

    Work withCar(WhichCar next) {
        return new Work(scenario, chosen, active, base, pace, radius, direction, load, next, shelf);
    }

    /** With another shelf, as far as it is of these set-ups. */
    public Work with(Shelf next) {
        List<String> names = scenario.setups().stream().map(Setup::name).toList();
        return new Work(scenario, chosen, active, base, pace, radius, direction, load, which, next.among(names));
    }

    /** The set-ups as the list has them: the pinned ones first, and those that are put aside at its end. */
    public List<Setup> listed() {
        return scenario.setups().stream()
                .sorted(Comparator.comparingInt(setup -> shelf.pinned().contains(setup.name())
                        ? 0
                        : shelf.hidden().contains(setup.name()) ? 2 : 1))
                .toList();
    }

    /** The same asked of another car under the same names: the one that road tests have corrected. */
    Work of(Scenario corrected) {
        return new Work(corrected, chosen, active, base, pace, radius, direction, load, which, shelf);
    }

    Work withDirection(Direction next) {
        return new Work(scenario, chosen, active, base, pace, radius, next, load, which, shelf);
    }
}
