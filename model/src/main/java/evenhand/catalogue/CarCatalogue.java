package evenhand.catalogue;

import static evenhand.catalogue.Shape.shape;
import static evenhand.catalogue.Slot.group;
import static evenhand.catalogue.Slot.length;
import static evenhand.catalogue.Slot.measure;
import static evenhand.catalogue.Slot.ratio;

import evenhand.car.Air;
import evenhand.car.Axle;
import evenhand.car.Brakes;
import evenhand.car.Car;
import evenhand.car.Drive;
import evenhand.car.End;
import evenhand.car.Seat;
import evenhand.car.Steering;
import evenhand.car.Weights;
import evenhand.car.mounts.Mount;
import evenhand.quantity.Dimension;
import evenhand.quantity.InvalidValue;
import java.util.Map;
import java.util.OptionalDouble;

/** The whole car. */
final class CarCatalogue {
    private static final double DEGREE = Math.toRadians(1);

    static final Slot<Double> WHEELBASE = length("wheelbase")
            .means("distance between the axles")
            .measured("tape between plumb lines", Amount.of(0.003))
            .usual(1.8, 3.3)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(0.02))
            .within(0.2, 10);

    static final Slot<WeightCatalogue.Lift> AXLE_LIFT = group("axleLift", WeightCatalogue.AXLE_LIFT)
            .optional()
            .means("weighings with one axle raised, from which the height of the centre of gravity is computed");

    static final Slot<Double> CG_HEIGHT = length("cgHeight")
            .means("height of the whole car's centre of gravity above the ground")
            .measured("axle lift", Amount.of(0.04))
            .usual(0.35, 0.75)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(0.01))
            .within(0.01, 3)
            .unless(AXLE_LIFT);

    static final Slot<Double> CHASSIS = measure("chassisTorsionalStiffness", Dimension.ROLL_STIFFNESS)
            .means("torsional stiffness of body and frame between the axles; rigid where absent")
            .measured("twist under a weight", Amount.percent(10))
            .usual(500 / DEGREE, 50_000 / DEGREE)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.percent(20))
            .within(1, 1e10)
            .defaultsTo(Double.POSITIVE_INFINITY);

    static final Slot<Double> STEERING_RATIO = ratio("ratio")
            .means("angle of the steering wheel over steer of the front wheels")
            .measured("degree plate", Amount.percent(3))
            .usual(8, 25)
            .within(0.5, 100)
            .defaultsTo(Steering.USUAL.ratio());

    static final Slot<Double> ACKERMANN_SHARE = ratio("ackermannShare")
            .means("1 = both front wheels aim at one centre of the turn, 0 = parallel")
            .usual(-0.3, 1.2)
            .takes(Slot.Work.REBUILDING)
            .goesBack(Slot.WayBack.OLD_PART)
            .usualStep(Amount.of(0.1))
            .within(-2, 2)
            .defaultsTo(Steering.USUAL.ackermannShare());

    static final Shape<Steering> STEERING_SHAPE = shape(
            "steering",
            v -> new Steering(v.of(STEERING_RATIO), v.of(ACKERMANN_SHARE)),
            STEERING_RATIO,
            ACKERMANN_SHARE);
    static final Slot<Steering> STEERING =
            group("steering", STEERING_SHAPE).means("steering gear").defaultsTo(Steering.USUAL);

    static final Slot<Double> DRAG_AREA =
            area("dragArea", "drag coefficient times frontal area").usual(0, 1.5);
    static final Slot<Double> DRAG_HEIGHT = length("dragHeight")
            .optional()
            .means("height at which the drag acts; that of the centre of gravity where absent")
            .usual(0.2, 1)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(0.02))
            .within(0, 3);
    static final Slot<Double> FRONT_LIFT_AREA = area(
                    "frontLiftArea", "lift coefficient of the front axle times area; negative presses down")
            .usual(-0.5, 0.5);
    static final Slot<Double> REAR_LIFT_AREA = area(
                    "rearLiftArea", "lift coefficient of the rear axle times area; negative presses down")
            .usual(-0.8, 0.5);

    static final Shape<Air> AIR_SHAPE = shape(
            "air",
            v -> new Air(v.of(DRAG_AREA), v.maybe(DRAG_HEIGHT), v.of(FRONT_LIFT_AREA), v.of(REAR_LIFT_AREA)),
            DRAG_AREA,
            DRAG_HEIGHT,
            FRONT_LIFT_AREA,
            REAR_LIFT_AREA);
    static final Slot<Air> AIR =
            group("air", AIR_SHAPE).means("forces of the air").defaultsTo(Air.NONE);

    static final Slot<Double> ROLLING_RESISTANCE = ratio("rollingResistance")
            .means("rolling drag over load")
            .usual(0, 0.025)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(0.002))
            .within(0, 0.9)
            .defaultsTo(0.0);

    static final Slot<Given.OnAxle> FRONT =
            group(End.FRONT.key(), AxleCatalogue.AXLE).means("front axle");
    static final Slot<Given.OnAxle> REAR =
            group(End.REAR.key(), AxleCatalogue.AXLE).means("rear axle");

    static final Slot<Drive> DRIVE =
            group("drive", DriveCatalogue.DRIVE).means("driven wheels").defaultsTo(Drive.USUAL);

    static final Slot<Double> PITCH_INERTIA = measure("pitchInertia", Dimension.INERTIA)
            .optional()
            .means("moment of inertia of the sprung mass in pitch")
            .usual(500, 5000)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.percent(10))
            .within(1, 1e6);

    static final Slot<Double> SEAT_BEHIND_FRONT = length("behindFrontAxle")
            .optional()
            .means("how far the driver's seat is bolted down behind the front axle; comfort is judged there")
            .measured("tape along the sill, from the middle of the front wheel to the seat's bolts", Amount.of(0.05))
            .usual(0.8, 2)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(0.1))
            .within(-10, 20);

    static final Shape<Seat> SEAT_SHAPE = shape("seat", v -> new Seat(v.maybe(SEAT_BEHIND_FRONT)), SEAT_BEHIND_FRONT);
    static final Slot<Seat> SEAT =
            group("seat", SEAT_SHAPE).means("where the driver sits").defaultsTo(Seat.USUAL);

    static final Slot<Brakes> BRAKES =
            group("brakes", BrakeCatalogue.BRAKES).means("brakes").defaultsTo(Brakes.USUAL);

    static final Slot<Map<String, Mount>> MOUNTS = group("mounts", MountCatalogue.MOUNTS)
            .optional()
            .means("brackets, plates and bolted faces that carry load, each by a name of its own");

    static final Shape<Car> CAR = shape(
            "car",
            CarCatalogue::car,
            WeightCatalogue.MASS,
            WeightCatalogue.FRONT_WEIGHT_FRACTION,
            WeightCatalogue.CORNER_WEIGHTS,
            WHEELBASE,
            CG_HEIGHT,
            AXLE_LIFT,
            CHASSIS,
            STEERING,
            AIR,
            ROLLING_RESISTANCE,
            FRONT,
            REAR,
            DRIVE,
            PITCH_INERTIA,
            SEAT,
            BRAKES,
            MOUNTS);

    private CarCatalogue() {}

    private static Slot<Double> area(String key, String meaning) {
        return measure(key, Dimension.AREA)
                .means(meaning)
                .takes(Slot.Work.ANOTHER_CAR)
                .usualStep(Amount.of(0.05))
                .within(key.equals("dragArea") ? 0 : -100, 100)
                .defaultsTo(0.0);
    }

    private static Car car(Values v) {
        Weights weights = WeightCatalogue.weights(v);
        Axle front = axle(v.of(FRONT), End.FRONT);
        Axle rear = axle(v.of(REAR), End.REAR);
        double cgHeight =
                v.optional(CG_HEIGHT).orElseGet(() -> v.of(AXLE_LIFT).cgHeight(weights, v.of(WHEELBASE), front, rear));
        return new Car(
                weights,
                v.of(WHEELBASE),
                cgHeight,
                v.of(CHASSIS),
                steering(v, front),
                v.of(AIR),
                v.of(ROLLING_RESISTANCE),
                front,
                rear,
                v.of(DRIVE),
                v.maybe(PITCH_INERTIA),
                v.of(SEAT),
                v.of(BRAKES),
                v.optional(MOUNTS).stream()
                        .flatMap(mounts -> mounts.entrySet().stream())
                        .map(mount -> mount.getValue().named(mount.getKey()))
                        .toList());
    }

    private static Axle axle(Given.OnAxle given, End end) {
        try {
            return given.at(end);
        } catch (InvalidValue invalid) {
            throw new InvalidValue(Path.join(end.key(), invalid.component()), String.valueOf(invalid.getMessage()));
        }
    }

    /** The steering gear; how much the inner wheel is steered more is the links' to say, where they steer. */
    private static Steering steering(Values v, Axle front) {
        Steering given = v.of(STEERING);
        OptionalDouble byLinks = front.links().isPresent()
                ? LinksAtRest.ackermannShare(front.links().get())
                : OptionalDouble.empty();
        if (byLinks.isEmpty()) {
            return given;
        }
        InvalidValue.require(
                !v.isGiven(STEERING, ACKERMANN_SHARE),
                Path.join(STEERING.key(), ACKERMANN_SHARE.key()),
                "the links decide this, " + OnLinks.comesOut(OnLinks.ratio(byLinks.getAsDouble()))
                        + "; take it out, or take out car.front.links");
        return new Steering(given.ratio(), byLinks.getAsDouble());
    }
}
