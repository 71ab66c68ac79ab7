package evenhand.advice;

import evenhand.answers.Answers;
import evenhand.answers.Trial;
import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.Damper;
import evenhand.car.End;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Slot;
import evenhand.choice.Effect;
import evenhand.choice.Lever;
import evenhand.lowering.Stance;
import evenhand.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.DoubleStream;

/**
 * The steps that a shop can answer for on one car, each tried once however much is complained of: what a step does does not depend on
 * what is wished. May be asked from several threads.
 */
public final class Steps {
    /** All forces of a damper are changed by this part: less is not felt. Common practice. */
    private static final double FORCES = 0.15;

    /** Bars that are fitted to road cars, N·m/rad, from the lightest. Common practice, no source. */
    private static final List<Double> BARS = DoubleStream.concat(
                    DoubleStream.of(Lever.LIGHT_BAR),
                    DoubleStream.of(90, 120, 180).map(Unit.of("N*m/deg")::toSi))
            .boxed()
            .toList();

    private static final List<String> STOPS = List.of("bumpStop", "droopStop", "metalStop");

    /** A car after a step, and what it answers. */
    record After(Car car, Answers answers) {}

    private final Entries car;
    private final Trial trial;
    private final Answers before;
    private final RoadNeeds needs;
    private final List<List<List<Effect.Step>>> courses;
    private final Entries withoutStops;
    private final Optional<Answers> answersWithoutStops;
    private final Map<Effect.Step, Optional<After>> after = new ConcurrentHashMap<>();
    private final Map<Effect.Step, Stance> stances = new ConcurrentHashMap<>();
    private final Map<Effect.Step, Price> prices = new ConcurrentHashMap<>();
    private final Map<Effect.Step, Optional<Answers>> afterWithoutStops = new ConcurrentHashMap<>();

    /**
     * Of a car in a trial.
     *
     * @param car that builds
     * @param before what it answers as it stands
     */
    public Steps(Entries car, Trial trial, Answers before) {
        Car built = Catalogue.build(car).value().orElseThrow();
        this.car = car;
        this.trial = trial;
        this.before = before;
        needs = RoadNeeds.of(built, trial);
        courses = courses(car, built);
        withoutStops = withoutStops(car);
        answersWithoutStops = Catalogue.build(withoutStops).value().map(trial::ask);
    }

    Trial trial() {
        return trial;
    }

    Answers before() {
        return before;
    }

    RoadNeeds needs() {
        return needs;
    }

    /** For each adjustment the ways it can go, and on each the steps in the order that they are tried in. */
    List<List<List<Effect.Step>>> courses() {
        return courses;
    }

    /** What comes of a step; nothing where no car can have that. */
    Optional<After> after(Effect.Step step) {
        return once(after, step, one -> Effect.after(car, one).map(changed -> new After(changed, trial.ask(changed))));
    }

    /** How the car stands on the road after a step. */
    Stance stance(Effect.Step step, After changed) {
        return once(stances, step, one -> needs.after(changed.car()));
    }

    /** What a step takes of room and height. */
    Price price(Effect.Step step, After changed) {
        return once(prices, step, one -> needs.price(changed.car(), stance(step, changed)));
    }

    /** What the same car without its stops answers. */
    Optional<Answers> withoutStops() {
        return answersWithoutStops;
    }

    /** What that car answers after a step. */
    Optional<Answers> withoutStops(Effect.Step step) {
        return once(afterWithoutStops, step, one -> Effect.after(withoutStops, one, trial));
    }

    /** Not in one move with the look: whoever tries another step need not wait for this one. */
    private static <V> V once(Map<Effect.Step, V> known, Effect.Step step, Function<Effect.Step, V> tried) {
        V before = known.get(step);
        if (before != null) {
            return before;
        }
        V now = tried.apply(step);
        known.put(step, now);
        return now;
    }

    private static Entries withoutStops(Entries car) {
        Entries without = car;
        for (End end : End.values()) {
            for (String stop : STOPS) {
                String path = end.key() + "." + stop;
                if (Catalogue.entry(car, path).isPresent()) {
                    without = Catalogue.with(
                            without, new Catalogue.Difference(path, Catalogue.entry(car, path), Optional.empty()));
                }
            }
        }
        return without;
    }

    private static List<List<List<Effect.Step>>> courses(Entries car, Car built) {
        List<List<List<Effect.Step>>> all = new ArrayList<>();
        for (List<Effect.Step> ways : Effect.ways(car)) {
            if (ways.get(0).work() != Slot.Work.ANOTHER_CAR
                    && !isAsWelded(ways.get(0).path(), built)) {
                all.add(ways.stream().map(Steps::wholeThenHalf).toList());
            }
        }
        for (End end : End.values()) {
            if (built.axle(end).bar().isEmpty()) {
                String path = end.key() + ".bar.rollStiffness";
                all.add(List.of(BARS.stream()
                        .<Effect.Step>map(size -> new Effect.ByBar(path, size))
                        .toList()));
            }
            Optional<Damper> damper = built.axle(end).damper();
            if (damper.isPresent()
                    && damper.get().setting().isEmpty()
                    && damper.get().forces().isPresent()) {
                String path = end.key() + ".damper";
                all.add(List.of(
                        List.of(new Effect.ByForces(path, 1 + FORCES)),
                        List.of(new Effect.ByForces(path, 1 - FORCES))));
            }
        }
        return all;
    }

    private static List<Effect.Step> wholeThenHalf(Effect.Step step) {
        return step instanceof Effect.ByNumber number
                ? List.of(step, new Effect.ByNumber(number.adjustable(), number.size() / 2))
                : List.of(step);
    }

    /** Whether it is an angle of a live axle's own housing, which nobody sets. */
    private static boolean isAsWelded(String path, Car built) {
        for (End end : End.values()) {
            if (built.axle(end) instanceof Axle.Live
                    && (path.equals(end.key() + ".camber") || (path.equals(end.key() + ".toe") && end == End.REAR))) {
                return true;
            }
        }
        return false;
    }
}
