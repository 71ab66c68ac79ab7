package evenhand.choice;

import evenhand.answers.Answers;
import evenhand.answers.Judged;
import evenhand.answers.Trial;
import evenhand.car.Car;
import evenhand.car.Damper;
import evenhand.car.End;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Entry;
import evenhand.catalogue.Slot;
import evenhand.quantity.Quantity;
import evenhand.quantity.Unit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What one step of one adjustment does to a car in one trial, all else left as it is.
 *
 * @param step what is done
 * @param moves of every figure that both cars have
 */
public record Effect(Step step, List<Move> moves) {
    private static final List<String> STOPS = List.of(".bumpStop.", ".droopStop.", ".metalStop.");
    private static final List<String> CURVES = List.of("bump", "rebound");

    /** What is done to the car. */
    public sealed interface Step {
        /** Of what is changed, relative to the car. */
        String path();

        /** What it takes. */
        Slot.Work work();

        /** Whether it takes other links, brackets or wheels, and stays so. */
        default boolean takesRebuilding() {
            return work() == Slot.Work.REBUILDING && wayBack() == Slot.WayBack.NONE;
        }

        /** Whether it is a stop that is moved: what it does rests on that stop. */
        default boolean movesStop() {
            return STOPS.stream().anyMatch(stop -> path().contains(stop));
        }

        /** How the old value comes back. */
        Slot.WayBack wayBack();
    }

    /**
     * A number goes up or down.
     *
     * @param size SI
     */
    public record ByNumber(Adjustable adjustable, double size) implements Step {
        @Override
        public String path() {
            return adjustable.path();
        }

        @Override
        public Slot.Work work() {
            return adjustable.slot().work();
        }

        @Override
        public Slot.WayBack wayBack() {
            return adjustable.slot().wayBack();
        }
    }

    /** A damper is set to the next of its settings, or to the one before. */
    public record ToSetting(String path, String from, String to) implements Step {
        @Override
        public Slot.Work work() {
            return Slot.Work.SETTING;
        }

        @Override
        public Slot.WayBack wayBack() {
            return Slot.WayBack.TURNED_BACK;
        }
    }

    /**
     * All forces of an axle's dampers become larger or smaller: others are fitted, or these are given other valves.
     *
     * @param path of the damper
     * @param factor on every force, in bump and in rebound
     */
    public record ByForces(String path, double factor) implements Step {
        @Override
        public Slot.Work work() {
            return Slot.Work.SETTING;
        }

        @Override
        public Slot.WayBack wayBack() {
            return Slot.WayBack.OLD_PART;
        }

        /** The curves that a car gets, by their paths. */
        public Map<String, Entry.Drawn> curves(Entries car) {
            Map<String, Entry.Drawn> curves = new LinkedHashMap<>();
            for (String curve : CURVES) {
                String where = path + "." + curve;
                if (Catalogue.entry(car, where).orElse(null) instanceof Entry.Drawn drawn) {
                    curves.put(where, scaled(drawn));
                }
            }
            return curves;
        }

        private Entries in(Entries car) {
            Entries changed = car;
            for (Map.Entry<String, Entry.Drawn> curve : curves(car).entrySet()) {
                changed = Catalogue.with(
                        changed,
                        new Catalogue.Difference(curve.getKey(), Optional.empty(), Optional.of(curve.getValue())));
            }
            return changed;
        }

        private Entry.Drawn scaled(Entry.Drawn drawn) {
            return new Entry.Drawn(drawn.points().stream()
                    .map(point -> new Entry.Drawn.Point(
                            point.at(),
                            Quantity.of(
                                    factor * point.force().si(), point.force().unit())))
                    .toList());
        }
    }

    /**
     * A bar goes where there is none.
     *
     * @param path of its roll stiffness
     * @param rollStiffness N·m/rad
     */
    public record ByBar(String path, double rollStiffness) implements Step {
        @Override
        public Slot.Work work() {
            return Slot.Work.REBUILDING;
        }

        @Override
        public Slot.WayBack wayBack() {
            return Slot.WayBack.OLD_PART;
        }

        private Entries in(Entries car) {
            String key = path.substring(path.lastIndexOf('.') + 1);
            Unit unit = Unit.of("N*m/deg");
            Entry stiffness = new Entry.Measured(Quantity.of(rollStiffness, unit));
            Entries bar = new Entries(Optional.empty(), Map.of(key, stiffness));
            String where = path.substring(0, path.length() - key.length() - 1);
            return Catalogue.with(car, new Catalogue.Difference(where, Optional.empty(), Optional.of(bar)));
        }
    }

    /** What a figure was, and by how much it moves, SI. */
    public record Move(Judged judged, double base, double difference) {
        /** In what is noticeable of the figure. */
        public double size() {
            return Math.abs(difference) / judged.criterion().noticeable();
        }
    }

    public Effect {
        moves = List.copyOf(moves);
    }

    /**
     * The effects of one usual step up of each adjustment that this car has, largest first; down where a step up makes no car.
     * What leaves the car without an answer either way has none. In the first bend of the trial.
     *
     * @param before what the car answers as it stands
     */
    public static List<Effect> each(Entries car, Trial trial, Answers before) {
        return inEachBend(car, trial.firstBend(), before.in(0)).get(0);
    }

    /** The same in each bend of a trial, in its order; every car is asked once for all. */
    public static List<List<Effect>> inEachBend(Entries car, Trial trial, Answers before) {
        List<Judged> figures = trial.judged(before);
        List<List<Optional<Effect>>> all = ways(car, trial.hardUse().judged()).parallelStream()
                .map(ways -> firstThatTurns(car, ways, trial, before, figures))
                .toList();
        return IntStream.range(0, trial.bends())
                .mapToObj(bend -> all.stream()
                        .flatMap(effects -> effects.get(bend).stream())
                        .sorted(Comparator.comparingDouble(effect -> -effect.size()))
                        .toList())
                .toList();
    }

    /** In each bend the effect of the first of some steps that leaves the car with an answer there. */
    private static List<Optional<Effect>> firstThatTurns(
            Entries car, List<Step> steps, Trial trial, Answers before, Collection<Judged> figures) {
        List<Optional<Effect>> effects = new ArrayList<>(Collections.nCopies(trial.bends(), Optional.empty()));
        for (Step step : steps) {
            if (effects.stream().anyMatch(Optional::isEmpty)) {
                after(car, step, trial).ifPresent(after -> {
                    for (int bend = 0; bend < effects.size(); bend++) {
                        if (effects.get(bend).isEmpty()) {
                            effects.set(bend, between(step, before.in(bend), after.in(bend), figures));
                        }
                    }
                });
            }
        }
        return effects;
    }

    /** For each adjustment that moves the car the two ways it can go. */
    public static List<List<Step>> ways(Entries car) {
        return ways(car, false);
    }

    /** @param mounts whether what carries load alone is among them */
    private static List<List<Step>> ways(Entries car, boolean mounts) {
        List<List<Step>> all = new ArrayList<>();
        for (Adjustable value : Catalogue.adjustments(car)) {
            boolean asked = mounts || !value.isOfMount();
            if (asked && value.slot().step().isPresent() && value.step() > 0) {
                all.add(List.of(new ByNumber(value, value.step()), new ByNumber(value, -value.step())));
            }
        }
        Catalogue.build(car).value().ifPresent(built -> {
            for (End end : End.values()) {
                List<Step> settings = settings(built, end);
                if (!settings.isEmpty()) {
                    all.add(settings);
                }
            }
        });
        return all;
    }

    private static List<Step> settings(Car car, End end) {
        Optional<Damper> damper = car.axle(end).damper();
        if (damper.isEmpty() || damper.get().setting().isEmpty()) {
            return List.of();
        }
        List<String> names =
                damper.get().settings().stream().map(Damper.Setting::name).toList();
        String set = damper.get().setting().get();
        int now = names.indexOf(set);
        String path = end.key() + ".damper.setting";
        List<Step> steps = new ArrayList<>();
        for (int next : new int[] {now + 1, now - 1}) {
            if (next >= 0 && next < names.size()) {
                steps.add(new ToSetting(path, set, names.get(next)));
            }
        }
        return steps;
    }

    /**
     * The car after a step; nothing where no car can have that. All else stays as it is: a number that was estimated is off by the
     * step and does not become a measured one, beside which less would be estimated.
     */
    public static Optional<Car> after(Entries car, Step step) {
        if (step instanceof ByNumber number) {
            double value = car.off().of(number.adjustable()) + number.size();
            return number.adjustable().slot().bounds().holds(value)
                    ? Catalogue.build(car.off(one -> one.path().equals(step.path())
                                    ? value
                                    : car.off().of(one)))
                            .value()
                    : Optional.empty();
        }
        return Catalogue.build(refitted(car, step)).value();
    }

    /** The car with a bar fitted, or with another setting. */
    static Entries refitted(Entries car, Step step) {
        if (step instanceof ByBar bar) {
            return bar.in(car);
        }
        if (step instanceof ByForces forces) {
            return forces.in(car);
        }
        ToSetting setting = (ToSetting) step;
        return Catalogue.with(
                car,
                new Catalogue.Difference(step.path(), Optional.empty(), Optional.of(new Entry.Word(setting.to()))));
    }

    /** What the car answers after a step; nothing where no car can have that. */
    public static Optional<Answers> after(Entries car, Step step, Trial trial) {
        return after(car, step).map(trial::ask);
    }

    /** What a step has done in the first bend; nothing where the car does not turn any more. */
    public static Optional<Effect> between(Step step, Answers before, Answers after, Collection<Judged> figures) {
        if (after.noTurn().isPresent()) {
            return Optional.empty();
        }
        List<Move> moves = new ArrayList<>();
        for (Judged judged : figures) {
            judged.si(before)
                    .ifPresent(base ->
                            judged.si(after).ifPresent(now -> moves.add(new Move(judged, base, now - base))));
        }
        return Optional.of(new Effect(step, moves));
    }

    /** The largest move, in what is noticeable. */
    public double size() {
        return moves.stream().mapToDouble(Move::size).max().orElse(0);
    }

    /** The move of one figure. */
    public Optional<Move> move(Judged judged) {
        return moves.stream().filter(move -> move.judged().equals(judged)).findFirst();
    }
}
