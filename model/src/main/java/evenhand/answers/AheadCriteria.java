package evenhand.answers;

import evenhand.answers.Criterion.Reading;
import evenhand.car.Car;
import evenhand.car.Weights;
import evenhand.quantity.Unit;
import evenhand.straight.Braking;
import evenhand.straight.Driving;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;

/**
 * The figures of a car straight ahead that it is judged by, braking and pulling away; those with a pace at a deceleration or an
 * acceleration. A file that says nothing of brakes or engine is judged by them only where somebody asks.
 */
public final class AheadCriteria {
    /** k_f/k_r − 1 at a deceleration. */
    public static final Criterion BRAKE_BALANCE = braking(
            "brake balance",
            "%",
            1,
            1,
            true,
            (car, pace) -> car.row(pace).map(Braking.Row::brakeBalance).orElseGet(OptionalDouble::empty));

    /** On the car's own tyres. */
    public static final Criterion FIRST_LOCK = braking(
            "first lock",
            "g",
            3,
            0.01,
            false,
            (car, none) -> car.braking()
                    .firstLock(OptionalDouble.empty())
                    .locks()
                    .map(locks -> OptionalDouble.of(locks.deceleration()))
                    .orElseGet(OptionalDouble::empty));

    /** As far as it is looked for, where the rear never goes first. */
    public static final Criterion REAR_LOCKS_ABOVE = braking(
            "rear locks above",
            "g",
            3,
            0.01,
            false,
            (car, none) -> OptionalDouble.of(
                    car.braking().rearLocksAbove().orElse(Braking.FURTHEST_CROSSING * Weights.GRAVITY)));

    /** How far the nose goes down at a deceleration. */
    public static final Criterion DIVE = braking(
            "dive",
            "mm",
            1,
            2,
            true,
            (car, pace) -> car.row(pace)
                    .map(row -> OptionalDouble.of(-row.frontHeave()))
                    .orElseGet(OptionalDouble::empty));

    public static final Criterion PEDAL_FORCE = braking(
            "pedal force",
            "N",
            0,
            10,
            true,
            (car, pace) -> car.row(pace).map(Braking.Row::pedalForce).orElseGet(OptionalDouble::empty));

    /** How far the tail goes down at an acceleration. */
    public static final Criterion SQUAT = driving(
            "squat",
            "mm",
            1,
            2,
            true,
            (car, pace) -> car.driving()
                    .pulling(pace)
                    .map(state -> OptionalDouble.of(-state.rearHeave()))
                    .orElseGet(OptionalDouble::empty));

    /** What engine and grip allow off the line. */
    public static final Criterion LAUNCH = driving(
            "launch",
            "g",
            3,
            0.01,
            false,
            (car, none) -> car.driving()
                    .launch()
                    .map(launch -> OptionalDouble.of(launch.state().acceleration()))
                    .orElseGet(OptionalDouble::empty));

    /** All that can be an aim. */
    public static final List<Criterion> ALL =
            List.of(BRAKE_BALANCE, FIRST_LOCK, REAR_LOCKS_ABOVE, DIVE, SQUAT, PEDAL_FORCE, LAUNCH);

    private AheadCriteria() {}

    /** A car at rest that is asked; its solvers are made where they are needed. One per thread. */
    static final class Asked {
        private final Car car;
        private Optional<Braking> brakes = Optional.empty();
        private Optional<Driving> drive = Optional.empty();

        Asked(Car car) {
            this.car = car;
        }

        Braking braking() {
            if (brakes.isEmpty()) {
                brakes = Optional.of(new Braking(car));
            }
            return brakes.get();
        }

        Driving driving() {
            if (drive.isEmpty()) {
                drive = Optional.of(new Driving(car));
            }
            return drive.get();
        }

        Optional<Braking.Row> row(double deceleration) {
            return braking().row(deceleration, true);
        }
    }

    /** Those that a car as read is judged by without being asked: of its brakes or its engine, where the file tells of them. */
    static List<Judged> of(Car car, List<Double> paces) {
        boolean brakes =
                car.brakes().parts().isPresent() || car.brakes().frontShare().isPresent();
        boolean engine = car.drive().engine().isPresent();
        List<Judged> judged = new ArrayList<>();
        for (double pace : paces) {
            ALL.stream()
                    .filter(one -> one.hasPace() && isTold(one, brakes, engine))
                    .forEach(one -> judged.add(new Judged(one, OptionalDouble.of(pace))));
        }
        ALL.stream()
                .filter(one -> !one.hasPace() && isTold(one, brakes, engine))
                .forEach(one -> judged.add(new Judged(one, OptionalDouble.empty())));
        return judged;
    }

    private static boolean isTold(Criterion criterion, boolean brakes, boolean engine) {
        return criterion.ahead().orElseThrow().ofBrakes() ? brakes : engine;
    }

    /** What a car as read lacks for a figure, in the words of a file. */
    public static Optional<String> needs(Criterion criterion, Car car) {
        return criterion.equals(PEDAL_FORCE) && car.brakes().parts().isEmpty()
                ? Optional.of("the parts of car.brakes, from the pedal to the wheels")
                : Optional.empty();
    }

    private static Criterion braking(
            String name,
            String unit,
            int digits,
            double noticeable,
            boolean paced,
            BiFunction<Asked, Double, OptionalDouble> si) {
        return criterion(name, unit, digits, noticeable, new Reading.Ahead(paced, true, si));
    }

    private static Criterion driving(
            String name,
            String unit,
            int digits,
            double noticeable,
            boolean paced,
            BiFunction<Asked, Double, OptionalDouble> si) {
        return criterion(name, unit, digits, noticeable, new Reading.Ahead(paced, false, si));
    }

    private static Criterion criterion(String name, String unit, int digits, double noticeable, Reading reading) {
        Unit shown = Unit.of(unit);
        return new Criterion(name, shown, digits, shown.toSi(noticeable), reading);
    }
}
