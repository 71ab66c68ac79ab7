package evenhand.catalogue;

import evenhand.car.Axle;
import evenhand.car.Bar;
import evenhand.car.Brakes;
import evenhand.car.Car;
import evenhand.car.Drive;
import evenhand.car.End;
import evenhand.car.InertiaEstimate;
import evenhand.car.Reaction;
import evenhand.car.Seat;
import evenhand.quantity.Dimension;
import evenhand.quantity.InvalidValue;
import evenhand.quantity.Quantity;
import evenhand.tyre.TyreEstimate;
import evenhand.tyre.TyreSize;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** The way into a car by paths: what can be named, read, changed and compared. */
public final class Catalogue {
    /** The car as it is declared. */
    public static final Shape<Car> CAR = CarCatalogue.CAR;

    /** The keys under which a word says of which kind an object is: "layout", "kind". */
    public static final Set<String> KIND_KEYS = kindKeys(CAR);

    private Catalogue() {}

    private static Set<String> kindKeys(Shape<?> shape) {
        Set<String> keys = new LinkedHashSet<>();
        addKindKeys(shape, keys);
        return Collections.unmodifiableSet(keys);
    }

    private static void addKindKeys(Shape<?> shape, Set<String> keys) {
        if (shape instanceof Shape.Kinds<?> kinds) {
            keys.add(kinds.key());
            kinds.kinds().values().forEach(kind -> addKindKeys(kind, keys));
        } else if (shape instanceof Shape.ByName<?> byName) {
            addKindKeys(byName.each(), keys);
        } else if (shape instanceof Shape.Plain<?> plain) {
            for (Slot<?> slot : plain.slots()) {
                if (slot.content() instanceof Content.Group<?> group) {
                    addKindKeys(group.shape(), keys);
                } else if (slot.content() instanceof Content.Groups<?> groups) {
                    addKindKeys(groups.shape(), keys);
                }
            }
        }
    }

    /**
     * One difference between two cars: a number, word or curve, or a whole object where one has it and the other has not, or
     * where its kind changes.
     */
    public record Difference(String path, Optional<Entry> from, Optional<Entry> to) {
        public String fromText() {
            return from.map(Entry::text).orElse("none");
        }

        public String toText() {
            return to.map(Entry::text).orElse("none");
        }
    }

    /**
     * Builds a car, its numbers off by what its entries say.
     *
     * @return its values as they were before they were off
     */
    public static Built<Car> build(Entries car) {
        Built<Car> built = build(CAR, car);
        Set<String> decided = decidedByLinks(car);
        return decided.isEmpty() ? built : built.without(decided);
    }

    /** Builds any shape; for the parts of a file that are no car. */
    public static <T> Built<T> build(Shape<T> shape, Entries entries) {
        return Building.build(shape, entries, entries.off());
    }

    /** Whether a number is of a mount, which decides nothing but what that mount feels. */
    public static boolean isOfMounts(String path) {
        return path.startsWith(CarCatalogue.MOUNTS.key() + ".");
    }

    /** Whether a number is of a perch's thread, which decides how it can be turned and moves no other answer. */
    public static boolean isOfPerches(String path) {
        return path.contains("." + PerchCatalogue.PERCH.key() + ".");
    }

    /** Every number that this car has, with value, step, usual range and words; given, default or estimated; none that links decide. */
    public static List<Adjustable> adjustments(Entries car) {
        return build(car).values();
    }

    /** Paths of coefficients that a car's points decide, so that nobody is to be asked for them. */
    public static Set<String> decidedByLinks(Entries car) {
        return OnLinks.decided(car);
    }

    /** The size of the tyres of an axle, where it is given and can be read. */
    public static Optional<TyreSize> tyreSize(Entries car, End end) {
        return car.get(end.key()).orElse(null) instanceof Entries axle
                        && axle.get(AxleCatalogue.TYRE.key()).orElse(null) instanceof Entries tyre
                ? TyreCatalogue.size(tyre)
                : Optional.empty();
    }

    /** What an answer says beside the estimates: numbers that follow from others by a rule, a bar's from its dimensions. */
    public static List<Adjustable> workedOut(Car car) {
        List<Adjustable> worked = new ArrayList<>();
        for (End end : End.values()) {
            Axle axle = car.axle(end);
            if (axle.bar().orElse(null) instanceof Bar.Round) {
                worked.add(new Adjustable(
                        end.key() + ".bar.rollStiffness",
                        SpringCatalogue.BAR_ROLL_STIFFNESS,
                        axle.barRollStiffness(),
                        0,
                        Adjustable.Origin.ESTIMATED,
                        Bar.Round.RULE,
                        Dimension.ROLL_STIFFNESS.metric()));
            }
            axle.links().ifPresent(links -> worked.addAll(RodRates.estimated(end, links)));
        }
        return List.copyOf(worked);
    }

    /** What the ride estimates where it is not given: pitch inertia, where the driver sits, roll inertia of live axles. */
    public static List<Adjustable> estimatedForRide(Car car) {
        List<Adjustable> estimated = new ArrayList<>(estimatedForComfort(car));
        for (End end : End.values()) {
            if (car.axle(end) instanceof Axle.Live live && live.rollInertia().isEmpty()) {
                estimated.add(inertia(
                        end.key() + ".rollInertia",
                        AxleCatalogue.ROLL_INERTIA,
                        InertiaEstimate.roll(live),
                        InertiaEstimate.ROLL_TOLERANCE,
                        InertiaEstimate.ROLL_RULE));
            }
        }
        return List.copyOf(estimated);
    }

    /**
     * Those of them that comfort at the seat rests on. The roll inertia of a live axle is not among them: it moves tramp alone.
     */
    public static List<Adjustable> estimatedForComfort(Car car) {
        List<Adjustable> estimated = new ArrayList<>();
        if (car.pitchInertia().isEmpty()) {
            estimated.add(pitchInertia(car));
        }
        if (car.seat().behindFrontAxle().isEmpty()) {
            estimated.add(seat(car));
        }
        return List.copyOf(estimated);
    }

    /** A car at rest whose estimates for comfort are off; what was given is as it was built. */
    public static Car ridingOff(Car standing, Deviation deviation) {
        return standing.riding(
                standing.pitchInertia().orElseGet(() -> deviation.of(pitchInertia(standing))),
                standing.seat().behindFrontAxle().orElseGet(() -> deviation.of(seat(standing))));
    }

    private static Adjustable pitchInertia(Car car) {
        return inertia(
                CarCatalogue.PITCH_INERTIA.key(),
                CarCatalogue.PITCH_INERTIA,
                InertiaEstimate.pitch(car),
                InertiaEstimate.PITCH_TOLERANCE,
                InertiaEstimate.PITCH_RULE);
    }

    private static Adjustable seat(Car car) {
        return new Adjustable(
                Path.join(CarCatalogue.SEAT.key(), CarCatalogue.SEAT_BEHIND_FRONT.key()),
                CarCatalogue.SEAT_BEHIND_FRONT,
                car.seatBehindFront(),
                Seat.TOLERANCE * car.wheelbase(),
                Adjustable.Origin.ESTIMATED,
                Seat.RULE,
                Dimension.LENGTH.metric());
    }

    /** What the travel of links by points estimates where it is not given: the share of the front brakes. */
    public static List<Adjustable> estimatedForTravel(Car car) {
        return car.brakes().frontShare().isPresent() || car.brakes().parts().isPresent()
                ? List.of()
                : List.of(new Adjustable(
                        Path.join(CarCatalogue.BRAKES.key(), BrakeCatalogue.FRONT_SHARE.key()),
                        BrakeCatalogue.FRONT_SHARE,
                        car.frontBrakeShare(),
                        Brakes.TOLERANCE,
                        Adjustable.Origin.ESTIMATED,
                        Brakes.RULE,
                        Dimension.RATIO.metric()));
    }

    /** What braking estimates where it is not given: the front share, wind-up of the rear leaves. */
    public static List<Adjustable> estimatedForBrakes(Entries entries, Car car) {
        List<Adjustable> estimated = new ArrayList<>(estimatedForTravel(car));
        windUp(entries, car, End.REAR).ifPresent(estimated::add);
        return List.copyOf(estimated);
    }

    /** What driving estimates where it is not given: efficiency, rolling radius of the driven tyres, wind-up of its leaves. */
    public static List<Adjustable> estimatedForDrive(Entries entries, Car car) {
        List<Adjustable> estimated = new ArrayList<>();
        End driven = car.drive().axle();
        if (car.drive().engine().isPresent() && car.drive().givenEfficiency().isEmpty()) {
            estimated.add(new Adjustable(
                    Path.join(CarCatalogue.DRIVE.key(), DriveCatalogue.EFFICIENCY.key()),
                    DriveCatalogue.EFFICIENCY,
                    car.drive().efficiency(),
                    Drive.EFFICIENCY_TOLERANCE,
                    Adjustable.Origin.ESTIMATED,
                    Drive.EFFICIENCY_RULE,
                    Dimension.RATIO.metric()));
        }
        String rolling = driven.key() + "." + AxleCatalogue.TYRE.key() + "." + TyreCatalogue.ROLLING_RADIUS.key();
        if (entry(entries, rolling).isEmpty()) {
            double radius = car.axle(driven).tyre().rollingRadius();
            boolean bySize = tyreSize(entries, driven).isPresent();
            estimated.add(new Adjustable(
                    rolling,
                    TyreCatalogue.ROLLING_RADIUS,
                    radius,
                    (bySize ? 1 : 2) * TyreEstimate.ROLLING_TOLERANCE * radius,
                    Adjustable.Origin.ESTIMATED,
                    bySize ? TyreEstimate.ROLLING_RULE : "as loadedRadius, without a size of the tyre",
                    Dimension.LENGTH.metric()));
        }
        windUp(entries, car, driven).ifPresent(estimated::add);
        return List.copyOf(estimated);
    }

    private static Optional<Adjustable> windUp(Entries entries, Car car, End end) {
        String path = end.key() + ".spring." + SpringCatalogue.WIND_UP_STIFFNESS.key();
        OptionalDouble stiffness = car.axle(end).reaction().windUpStiffness();
        return stiffness.isEmpty() || entry(entries, path).isPresent()
                ? Optional.empty()
                : Optional.of(new Adjustable(
                        path,
                        SpringCatalogue.WIND_UP_STIFFNESS,
                        stiffness.getAsDouble(),
                        Reaction.WIND_UP_TOLERANCE * stiffness.getAsDouble(),
                        Adjustable.Origin.ESTIMATED,
                        Reaction.WIND_UP_RULE,
                        Dimension.ROLL_STIFFNESS.metric()));
    }

    private static Adjustable inertia(String path, Slot<Double> slot, double si, double tolerance, String rule) {
        return new Adjustable(
                path, slot, si, tolerance * si, Adjustable.Origin.ESTIMATED, rule, Dimension.INERTIA.metric());
    }

    /**
     * The declaration of the number at a path of this car.
     *
     * @throws InvalidValue if there is none, with the nearest key
     */
    public static Slot<Double> slot(Entries car, String path) {
        return measure(find(CAR, car, Path.of(path), 0), path);
    }

    /** The number as the person gave it; empty where it is absent from the file. */
    public static Optional<Quantity> get(Entries car, String path) {
        slot(car, path);
        return entry(car, path).map(entry -> ((Entry.Measured) entry).quantity());
    }

    /** The number given, SI; empty where it is absent from the file. */
    public static OptionalDouble number(Entries car, String path) {
        return get(car, path).map(q -> OptionalDouble.of(q.si())).orElseGet(OptionalDouble::empty);
    }

    /** This car with another number at a path, in the unit and with the tolerance that the person used. */
    public static Entries with(Entries car, String path, double si) {
        Slot<Double> slot = slot(car, path);
        if (!(slot.content() instanceof Content.Measure measure)) {
            throw new IllegalStateException("a slot of numbers that is no measure: " + path);
        }
        Optional<Quantity> before = get(car, path);
        String text = (si + " " + measure.dimension().jsonUnit()).strip();
        return with(
                car,
                path,
                new Quantity(
                        si,
                        before.map(Quantity::tolerance).orElse(0.0),
                        measure.dimension(),
                        text,
                        before.map(Quantity::unit)
                                .orElseGet(() -> measure.dimension().metric())));
    }

    /** This car with another quantity at a path. */
    public static Entries with(Entries car, String path, Quantity quantity) {
        slot(car, path);
        return with(car, path, Optional.of(new Entry.Measured(quantity)));
    }

    /** The other car's side of a difference, put into this car. */
    public static Entries with(Entries car, Difference difference) {
        return with(car, difference.path(), difference.to());
    }

    private static Entries with(Entries car, String path, Optional<Entry> entry) {
        Path steps = Path.of(path);
        return put(car, steps, 0, entry);
    }

    private static Entries put(Entries entries, Path path, int depth, Optional<Entry> entry) {
        Path.Step step = path.steps().get(depth);
        boolean last = depth == path.steps().size() - 1;
        if (step.index() >= 0 && entries.given().get(step.key()) instanceof Entry.Listed listed && !last) {
            List<Entries> items = new ArrayList<>(listed.items());
            items.set(step.index(), put(items.get(step.index()), path, depth + 1, entry));
            return entries.with(step.key(), Optional.of(new Entry.Listed(items)));
        }
        if (last) {
            return entries.with(step.key(), entry);
        }
        Entries below = entries.given().get(step.key()) instanceof Entries group
                ? group
                : new Entries(Optional.empty(), Map.of());
        return entries.with(step.key(), Optional.of(put(below, path, depth + 1, entry)));
    }

    /** What a person gave at a path, a number or anything else; nothing where the file has nothing there. */
    public static Optional<Entry> entry(Entries car, String path) {
        Entry here = car;
        for (Path.Step step : Path.of(path).steps()) {
            Entry below = here instanceof Entries entries ? entries.given().get(step.key()) : null;
            if (below instanceof Entry.Listed listed
                    && step.index() >= 0
                    && step.index() < listed.items().size()) {
                below = listed.items().get(step.index());
            }
            if (below == null) {
                return Optional.empty();
            }
            here = below;
        }
        return Optional.of(here);
    }

    /** In what the second car differs from the first, in the order of the catalogue. */
    public static List<Difference> differences(Entries from, Entries to) {
        List<Difference> differences = new ArrayList<>();
        collect("", from, to, differences);
        return List.copyOf(differences);
    }

    private static void collect(String path, Entries from, Entries to, List<Difference> differences) {
        if (!from.kind().equals(to.kind())) {
            differences.add(new Difference(path, Optional.of(from), Optional.of(to)));
            return;
        }
        Set<String> keys = new LinkedHashSet<>(from.given().keySet());
        keys.addAll(to.given().keySet());
        for (String key : keys) {
            Optional<Entry> before = from.get(key);
            Optional<Entry> after = to.get(key);
            String here = Path.join(path, key);
            if (before.isPresent()
                    && after.isPresent()
                    && before.get() instanceof Entries one
                    && after.get() instanceof Entries other) {
                collect(here, one, other, differences);
            } else if (!same(before, after)) {
                differences.add(new Difference(here, before, after));
            }
        }
    }

    /** Whether two entries mean the same: "275 mm" and "0.275 m" do. */
    private static boolean same(Optional<Entry> one, Optional<Entry> other) {
        if (one.isPresent()
                && other.isPresent()
                && one.get() instanceof Entry.Measured a
                && other.get() instanceof Entry.Measured b) {
            return a.quantity().si() == b.quantity().si();
        }
        return one.equals(other);
    }

    private static Slot<?> find(Shape<?> shape, Entries entries, Path path, int depth) {
        Shape.Plain<?> plain = shape.plain(entries);
        Path.Step step = path.steps().get(depth);
        String here = new Path(path.steps().subList(0, depth + 1)).toString();
        if (shape instanceof Shape.Kinds<?> kinds && kinds.key().equals(step.key())) {
            throw new InvalidValue(here, "names no single quantity or ratio, but a kind; change it in a set-up");
        }
        Slot<?> slot = plain.slot(step.key())
                .orElseThrow(() -> new InvalidValue(
                        here,
                        "is unknown; the nearest known key is "
                                + Nearest.key(
                                        step.key(),
                                        plain.slots().stream().map(Slot::key).toList())));
        if (depth == path.steps().size() - 1) {
            return slot;
        }
        Entry below = entries.given().get(step.key());
        if (slot.content() instanceof Content.Group<?> group) {
            if (below instanceof Entries inside) {
                return find(group.shape(), inside, path, depth + 1);
            }
            if (group.shape() instanceof Shape.Plain<?> whole && slot.standIn().isPresent()) {
                return find(whole, new Entries(Optional.empty(), Map.of()), path, depth + 1);
            }
            throw new InvalidValue(here, "is not on this car; give it in the file first");
        }
        if (slot.content() instanceof Content.Groups<?> groups
                && below instanceof Entry.Listed listed
                && step.index() >= 0
                && step.index() < listed.items().size()) {
            return find(groups.shape(), listed.items().get(step.index()), path, depth + 1);
        }
        throw new InvalidValue(here, "has no keys below it on this car");
    }

    @SuppressWarnings("unchecked") // only slots of measures hold doubles
    private static Slot<Double> measure(Slot<?> slot, String path) {
        if (slot.content() instanceof Content.Measure) {
            return (Slot<Double>) slot;
        }
        throw new InvalidValue(
                path,
                "names no single quantity or ratio"
                        + (slot.content() instanceof Content.Group<?> group
                                ? "; name one of its keys, for example " + Path.join(path, firstMeasure(group.shape()))
                                : ""));
    }

    private static String firstMeasure(Shape<?> shape) {
        if (shape instanceof Shape.ByName<?> byName) {
            return Path.join("NAME", firstMeasure(byName.each()));
        }
        Shape.Plain<?> plain = shape instanceof Shape.Plain<?> single
                ? single
                : ((Shape.Kinds<?>) shape).kinds().values().iterator().next();
        return plain.slots().stream()
                .filter(slot -> slot.content() instanceof Content.Measure)
                .map(Slot::key)
                .findFirst()
                .orElse("");
    }
}
