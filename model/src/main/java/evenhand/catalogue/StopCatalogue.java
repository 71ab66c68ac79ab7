package evenhand.catalogue;

import static evenhand.catalogue.Shape.shape;
import static evenhand.catalogue.Slot.choice;
import static evenhand.catalogue.Slot.curve;
import static evenhand.catalogue.Slot.length;
import static evenhand.catalogue.Slot.measure;

import evenhand.car.Curve;
import evenhand.car.Stops;
import evenhand.quantity.Dimension;
import java.util.Map;
import java.util.OptionalDouble;

/** What ends the travel, at a wheel of its own and on a live axle. */
final class StopCatalogue {
    static final Slot<Double> GAP = length("gap")
            .means("travel from rest until they touch")
            .measured("steel rule on level ground", Amount.of(0.003))
            .usual(0, 0.15)
            .goesBack(Slot.WayBack.OLD_PART)
            .usualStep(Amount.of(0.01))
            .within(-1, 2);
    static final Slot<Curve> STOP_CURVE =
            curve("curve", Content.CurveOf.STOP).means("force of the bump rubber over its deflection");
    static final Slot<Double> TRAVEL = length("travel")
            .means("travel from rest until droop ends")
            .measured("steel rule, wheel hanging", Amount.of(0.003))
            .usual(0.02, 0.2)
            .usualStep(Amount.of(0.01))
            .within(0, 2);
    static final Slot<Double> STOP_RATE = measure("rate", Dimension.STIFFNESS)
            .means("rate of the droop stop or strap once it is reached")
            .usual(50e3, 5e6)
            .within(1, 1e10)
            .defaultsTo(1000e3);
    static final Slot<Boolean> AROUND = choice("around", Map.of("damper", true))
            .means("what the rubber sits on, where it works along it and into its ends")
            .defaultsTo(false);
    static final Slot<Double> STOP_BASE = SpringCatalogue.BASE.optional();

    static final Shape<Stops.Bump> BUMP_AT_WHEEL = shape(
            "bumpStopAtWheel",
            v -> new Stops.Bump(v.of(GAP), v.of(STOP_CURVE), OptionalDouble.empty(), v.of(AROUND)),
            GAP,
            STOP_CURVE,
            AROUND);
    static final Shape<Stops.Bump> BUMP_ON_AXLE = shape(
            "bumpStopOnAxle",
            v -> new Stops.Bump(v.of(GAP), v.of(STOP_CURVE), v.maybe(STOP_BASE), v.of(AROUND)),
            GAP,
            STOP_CURVE,
            STOP_BASE,
            AROUND);
    static final Shape<Stops.Droop> DROOP_AT_WHEEL = shape(
            "droopStopAtWheel",
            v -> new Stops.Droop(v.of(TRAVEL), v.of(STOP_RATE), OptionalDouble.empty()),
            TRAVEL,
            STOP_RATE);
    static final Shape<Stops.Droop> DROOP_ON_AXLE = shape(
            "droopStopOnAxle",
            v -> new Stops.Droop(v.of(TRAVEL), v.of(STOP_RATE), v.maybe(STOP_BASE)),
            TRAVEL,
            STOP_RATE,
            STOP_BASE);
    static final Shape<Stops.Metal> METAL_AT_WHEEL =
            shape("metalStopAtWheel", v -> new Stops.Metal(v.of(GAP), OptionalDouble.empty()), GAP);
    static final Shape<Stops.Metal> METAL_ON_AXLE =
            shape("metalStopOnAxle", v -> new Stops.Metal(v.of(GAP), v.maybe(STOP_BASE)), GAP, STOP_BASE);

    private StopCatalogue() {}
}
