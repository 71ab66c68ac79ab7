package evenhand.catalogue;

import static evenhand.catalogue.Shape.shape;
import static evenhand.catalogue.Slot.choice;
import static evenhand.catalogue.Slot.group;
import static evenhand.catalogue.Slot.groups;
import static evenhand.catalogue.Slot.inOrder;
import static evenhand.catalogue.Slot.length;
import static evenhand.catalogue.Slot.mass;
import static evenhand.catalogue.Slot.ratio;

import evenhand.car.Axle;
import evenhand.car.AxleLift;
import evenhand.car.End;
import evenhand.car.Weights;
import evenhand.quantity.InvalidValue;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** What the car weighs, where its weight stands, and how high its centre of gravity lies. */
final class WeightCatalogue {
    static final Map<String, End> ENDS = inOrder(End.FRONT.key(), End.FRONT, End.REAR.key(), End.REAR);

    static final Slot<Double> FRONT_LEFT = corner("frontLeft");
    static final Slot<Double> FRONT_RIGHT = corner("frontRight");
    static final Slot<Double> REAR_LEFT = corner("rearLeft");
    static final Slot<Double> REAR_RIGHT = corner("rearRight");

    static final Shape<Weights.Corners> CORNERS = shape(
            "cornerWeights",
            v -> new Weights.Corners(v.of(FRONT_LEFT), v.of(FRONT_RIGHT), v.of(REAR_LEFT), v.of(REAR_RIGHT)),
            FRONT_LEFT,
            FRONT_RIGHT,
            REAR_LEFT,
            REAR_RIGHT);

    static final Slot<Weights.Corners> CORNER_WEIGHTS = group("cornerWeights", CORNERS)
            .optional()
            .means("what the four scales show, instead of the mass and the front weight fraction");

    static final Slot<Double> MASS = mass("mass")
            .means("mass of the whole car as it drives")
            .measured("scales", Amount.percent(1))
            .usual(400, 3500)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(20))
            .within(1, 1e5)
            .unless(CORNER_WEIGHTS);

    static final Slot<Double> FRONT_WEIGHT_FRACTION = ratio("frontWeightFraction")
            .means("part of the weight that the front wheels carry")
            .measured("scales", Amount.of(0.01))
            .usual(0.35, 0.68)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(0.01))
            .within(0.001, 0.999)
            .because("the centre of gravity must lie between the axles")
            .unless(CORNER_WEIGHTS);

    static final Slot<Double> RISE = length("rise")
            .means("height by which the lifted wheels' centres rose")
            .measured("steel rule", Amount.of(0.003))
            .usual(0.1, 1)
            .within(0.001, 10);
    static final Slot<Double> GAIN = mass("otherAxleGain")
            .means("what the other axle's scales gained")
            .measured("scales", Amount.of(1))
            .usual(1, 300);
    static final Shape<AxleLift.Reading> READING =
            shape("axleLiftReading", v -> new AxleLift.Reading(v.of(RISE), v.of(GAIN)), RISE, GAIN);
    static final Slot<End> LIFTED_AXLE = choice("liftedAxle", ENDS).means("axle that was raised");
    static final Slot<List<AxleLift.Reading>> READINGS =
            groups("readings", READING).means("each rise with what the other axle gained");

    static final Slot<Double> FRONT_RADIUS = radius("frontRadius", "front");
    static final Slot<Double> REAR_RADIUS = radius("rearRadius", "rear");

    static final Shape<Lift> AXLE_LIFT = shape(
            "axleLift",
            v -> new Lift(new AxleLift(v.of(LIFTED_AXLE), v.of(READINGS)), v.maybe(FRONT_RADIUS), v.maybe(REAR_RADIUS)),
            LIFTED_AXLE,
            READINGS,
            FRONT_RADIUS,
            REAR_RADIUS);

    /** Weighings with one axle raised, and the radii of the wheels then; those of the tyres where absent. */
    record Lift(AxleLift lift, OptionalDouble frontRadius, OptionalDouble rearRadius) {
        double cgHeight(Weights weights, double wheelbase, Axle front, Axle rear) {
            try {
                return lift.cgHeight(
                        weights.mass(),
                        wheelbase,
                        weights.frontFraction(),
                        frontRadius.orElse(front.tyre().loadedRadius()),
                        rearRadius.orElse(rear.tyre().loadedRadius()));
            } catch (InvalidValue invalid) {
                throw new InvalidValue("axleLift." + invalid.component(), String.valueOf(invalid.getMessage()));
            }
        }
    }

    private WeightCatalogue() {}

    private static Slot<Double> radius(String key, String end) {
        return length(key)
                .optional()
                .means("loaded radius of the " + end + " wheels in the weighing; that of the tyre where absent")
                .measured("steel rule from a level floor to the middle of the hub", Amount.of(0.002))
                .usual(0.22, 0.40)
                .within(0.01, 2);
    }

    private static Slot<Double> corner(String key) {
        return mass(key)
                .means("what the scale under this wheel shows")
                .measured("corner scales", Amount.percent(0.5))
                .usual(80, 900)
                .takes(Slot.Work.ANOTHER_CAR)
                .usualStep(Amount.of(5))
                .within(0.1, 1e5);
    }

    static Weights weights(Values v) {
        return v.has(CORNER_WEIGHTS)
                ? v.of(CORNER_WEIGHTS)
                : new Weights.Whole(v.of(MASS), v.of(FRONT_WEIGHT_FRACTION));
    }
}
