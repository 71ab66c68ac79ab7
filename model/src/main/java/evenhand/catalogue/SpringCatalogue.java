package evenhand.catalogue;

import static evenhand.catalogue.Shape.shape;
import static evenhand.catalogue.Slot.angle;
import static evenhand.catalogue.Slot.choice;
import static evenhand.catalogue.Slot.group;
import static evenhand.catalogue.Slot.inOrder;
import static evenhand.catalogue.Slot.length;
import static evenhand.catalogue.Slot.measure;
import static evenhand.catalogue.Slot.ratio;
import static evenhand.quantity.InvalidValue.require;

import evenhand.car.Bar;
import evenhand.car.Reaction;
import evenhand.car.Spring;
import evenhand.car.links.BarArm;
import evenhand.car.links.CarriedOn;
import evenhand.car.links.Pair;
import evenhand.car.links.SpringLine;
import evenhand.quantity.Dimension;
import evenhand.quantity.InvalidValue;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Springs at a wheel of its own and on a live axle, and anti-roll bars. */
final class SpringCatalogue {
    private static final double DEGREE = Math.toRadians(1);

    static final Slot<Double> RATE = measure("rate", Dimension.STIFFNESS)
            .means("rate of one spring along its line")
            .measured("press and scale", Amount.percent(3))
            .usual(10e3, 150e3)
            .goesBack(Slot.WayBack.OLD_PART)
            .usualStep(Amount.percent(10))
            .within(1, 1e8);

    static final Slot<Double> INSTALLED_LENGTH = length("installedLength")
            .optional()
            .means("length of the spring in the car at rest")
            .measured("tape along the spring", Amount.of(0.002))
            .usual(0.1, 0.6)
            .within(0.001, 5);

    static final Slot<Double> FREE_LENGTH = length("freeLength")
            .optional()
            .means("length of the spring without load")
            .measured("tape on the bench", Amount.of(0.002))
            .usual(0.15, 0.7)
            .within(0.001, 5);

    static final Slot<Double> SOLID_LENGTH = length("solidLength")
            .optional()
            .means("length of the spring when its coils touch")
            .measured("wire thickness times coils", Amount.of(0.003))
            .usual(0.05, 0.4)
            .within(0.001, 5);

    static final Slot<Double> BASE = length("base")
            .means("distance between the left and the right one across the car, at the lower mounts")
            .measured("tape between the lower mounts", Amount.of(0.005))
            .usual(0.6, 1.3)
            .takes(Slot.Work.REBUILDING)
            .usualStep(Amount.of(0.02))
            .within(0.01, 5);

    static final Slot<Double> LEAN = angle("lean")
            .optional()
            .means("lean inwards going up")
            .measured("digital level", Amount.of(0.5 * DEGREE))
            .usual(-10 * DEGREE, 45 * DEGREE)
            .takes(Slot.Work.REBUILDING)
            .usualStep(Amount.of(2 * DEGREE))
            .within(-80 * DEGREE, 80 * DEGREE);

    static final Slot<Double> SPRING_MOTION_RATIO =
            motionRatio("spring travel over wheel travel").defaultsTo(1.0);

    static final Slot<Double> LOWER_MOUNT_HEIGHT = length("lowerMountHeight")
            .optional()
            .means("height of the spring's lower mount above the ground")
            .measured("steel rule from a level floor", Amount.of(0.002))
            .usual(0.1, 0.4)
            .takes(Slot.Work.REBUILDING)
            .usualStep(Amount.of(0.01))
            .within(0.001, 2);

    static final Slot<Values> TOP =
            PointCatalogue.point("top", "upper end of its line on the body").optional();
    private static final String BOTTOM_WORDS = "lower end of its line on the moving part";
    static final Slot<Values> BOTTOM_AT_WHEEL =
            group("bottom", PointCatalogue.POINT_ON).byPoints().optional().means(BOTTOM_WORDS);
    static final Slot<Values> BOTTOM_ON_AXLE =
            group("bottom", PointCatalogue.POINT).byPoints().optional().means(BOTTOM_WORDS);

    /** What a coil stands around. */
    private enum Around {
        DAMPER,
        STRUT
    }

    private static final Slot<Around> AROUND = choice("around", inOrder("damper", Around.DAMPER, "strut", Around.STRUT))
            .byPoints()
            .optional()
            .means("what the coil stands around, instead of points of its own");

    static final Slot<Double> FITTINGS = length("fittings")
            .byPoints()
            .optional()
            .means("how much longer the line is than the coil on it")
            .measured("tape along the damper", Amount.of(0.002))
            .usual(0, 0.25)
            .takes(Slot.Work.REBUILDING)
            .within(-1, 1);

    private static final Slot<Values> RIGHT_AT_WHEEL =
            PointCatalogue.right("springPointsAtWheel", TOP, BOTTOM_AT_WHEEL);
    private static final Slot<Values> RIGHT_ON_AXLE = PointCatalogue.right("springPointsOnAxle", TOP, BOTTOM_ON_AXLE);

    static final Slot<Double> WHEEL_SPRING_MOTION_RATIO =
            SPRING_MOTION_RATIO.notNeededWith(TOP).notNeededWith(AROUND);

    static final Shape<Given.OfSpring<Spring.AtWheel>> AT_WHEEL = shape(
            "springAtWheel",
            SpringCatalogue::atWheel,
            RATE,
            WHEEL_SPRING_MOTION_RATIO,
            INSTALLED_LENGTH,
            FREE_LENGTH,
            SOLID_LENGTH,
            TOP,
            BOTTOM_AT_WHEEL,
            AROUND,
            FITTINGS,
            RIGHT_AT_WHEEL,
            PerchCatalogue.PERCH);

    static final Slot<Double> AXLE_SPRING_MOTION_RATIO =
            SPRING_MOTION_RATIO.unless(LEAN).notNeededWith(TOP).notNeededWith(AROUND);

    static final Slot<Double> LEAF_LENGTH = length("leafLength")
            .optional()
            .means("length of a leaf spring between its eyes; its wind-up under the axle's torque follows from it")
            .measured("tape along the main leaf", Amount.of(0.005))
            .usual(0.8, 1.5)
            .takes(Slot.Work.REBUILDING)
            .usualStep(Amount.of(0.05))
            .within(0.1, 5);

    static final Slot<Double> WIND_UP_STIFFNESS = measure("windUpStiffness", Dimension.ROLL_STIFFNESS)
            .optional()
            .means("stiffness of both leaves against winding up under the axle's torque; from leafLength where absent")
            .measured("a bar on the axle, a weight, and a level", Amount.percent(10))
            .usual(50 / DEGREE, 600 / DEGREE)
            .takes(Slot.Work.REBUILDING)
            .usualStep(Amount.percent(10))
            .within(1, 1e7);

    private static final Slot<Double> AXLE_SPRING_BASE = BASE.notNeededWith(TOP).notNeededWith(AROUND);

    static final Shape<Given.OfSpring<Spring>> ON_AXLE = shape(
            "springOnAxle",
            SpringCatalogue::onAxle,
            RATE,
            AXLE_SPRING_BASE,
            LEAN,
            AXLE_SPRING_MOTION_RATIO,
            LOWER_MOUNT_HEIGHT,
            INSTALLED_LENGTH,
            FREE_LENGTH,
            SOLID_LENGTH,
            TOP,
            BOTTOM_ON_AXLE,
            AROUND,
            FITTINGS,
            RIGHT_ON_AXLE,
            LEAF_LENGTH,
            WIND_UP_STIFFNESS,
            PerchCatalogue.PERCH);

    static Slot<Double> motionRatio(String meaning) {
        return ratio("motionRatio")
                .means(meaning)
                .measured("travel of both over a wheel travel of 40 mm", Amount.of(0.02))
                .usual(0.4, 1.1)
                .takes(Slot.Work.REBUILDING)
                .usualStep(Amount.of(0.02))
                .within(0.01, 10);
    }

    private static Given.OfSpring<Spring.AtWheel> atWheel(Values v) {
        Optional<SpringLine> line = line(v, BOTTOM_AT_WHEEL, RIGHT_AT_WHEEL);
        Spring.Lengths lengths = lengths(v);
        return new Given.OfSpring<>(
                v.of(RATE),
                lengths,
                line.isPresent()
                        ? Optional.empty()
                        : Optional.of(new Spring.AtWheel(v.of(RATE), v.of(WHEEL_SPRING_MOTION_RATIO), lengths)),
                line,
                OptionalDouble.empty());
    }

    private static Given.OfSpring<Spring> onAxle(Values v) {
        Optional<SpringLine> line = line(v, BOTTOM_ON_AXLE, RIGHT_ON_AXLE);
        return new Given.OfSpring<>(
                v.of(RATE),
                lengths(v),
                line.isPresent() ? Optional.empty() : Optional.of(knownOnAxle(v)),
                line,
                windUp(v));
    }

    private static OptionalDouble windUp(Values v) {
        return v.has(WIND_UP_STIFFNESS) || !v.has(LEAF_LENGTH)
                ? v.maybe(WIND_UP_STIFFNESS)
                : OptionalDouble.of(Reaction.windUp(v.of(RATE), v.of(LEAF_LENGTH)));
    }

    /** The line between points, or around something else that has them. */
    private static Optional<SpringLine> line(Values v, Slot<Values> bottom, Slot<Values> right) {
        if (v.has(AROUND)) {
            require(
                    !v.has(TOP) && !v.has(bottom),
                    "around",
                    "stands beside points of its own; leave out one of the two");
            double fittings = v.optional(FITTINGS).orElse(0.0);
            return Optional.of(
                    v.of(AROUND) == Around.STRUT
                            ? new SpringLine.AroundStrut(fittings)
                            : new SpringLine.AroundDamper(fittings));
        }
        if (!v.has(TOP) && !v.has(bottom)) {
            require(
                    !v.has(FITTINGS),
                    FITTINGS.key(),
                    "belongs to a spring around a damper or a strut; write \"around\"");
            return Optional.empty();
        }
        require(v.has(TOP), TOP.key(), "is missing: a spring by points has its top and its bottom");
        require(v.has(bottom), bottom.key(), "is missing: a spring by points has its top and its bottom");
        require(!v.has(FITTINGS), FITTINGS.key(), "belongs to a spring around a damper or a strut; take it out");
        return Optional.of(new SpringLine.BetweenPoints(Sided.pair(
                v,
                right,
                side -> new SpringLine.Ends(
                        PointCatalogue.point(side, TOP),
                        PointCatalogue.point(side, bottom),
                        bottom == BOTTOM_AT_WHEEL ? side.below(bottom).of(PointCatalogue.ON) : CarriedOn.AXLE))));
    }

    private static Spring knownOnAxle(Values v) {
        if (!v.has(LEAN)) {
            return new Spring.Upright(v.of(RATE), v.of(AXLE_SPRING_BASE), v.of(AXLE_SPRING_MOTION_RATIO), lengths(v));
        }
        double height = v.optional(LOWER_MOUNT_HEIGHT)
                .orElseThrow(() -> new InvalidValue(
                        LOWER_MOUNT_HEIGHT.key(),
                        "is missing: a spring with lean needs the " + LOWER_MOUNT_HEIGHT.meaning()));
        return new Spring.Leaning(v.of(RATE), v.of(AXLE_SPRING_BASE), v.of(LEAN), height, lengths(v));
    }

    private static Spring.Lengths lengths(Values v) {
        return new Spring.Lengths(
                v.maybe(INSTALLED_LENGTH),
                v.maybe(FREE_LENGTH),
                v.maybe(SOLID_LENGTH),
                v.optional(PerchCatalogue.PERCH));
    }

    static final Slot<Double> DIAMETER = length("diameter")
            .optional()
            .means("thickness of a solid round bar")
            .measured("calliper, paint off", Amount.of(0.0002))
            .usual(0.01, 0.035)
            .goesBack(Slot.WayBack.OLD_PART)
            .usualStep(Amount.of(0.001))
            .within(0.001, 0.2);

    static final Slot<Double> BAR_ROLL_STIFFNESS = measure("rollStiffness", Dimension.ROLL_STIFFNESS)
            .means("roll moment of the bar between body and axle per suspension roll, leverage and bushes included")
            .measured("hung weight", Amount.percent(8))
            .usual(20 / DEGREE, 1000 / DEGREE)
            .goesBack(Slot.WayBack.OLD_PART)
            .usualStep(Amount.percent(10))
            .within(0, 1e7)
            .unless(DIAMETER);

    static final Slot<Double> ARM_LENGTH = length("armLength")
            .optional()
            .means("lever of the drop link about the bar")
            .measured("tape", Amount.of(0.002))
            .usual(0.1, 0.4)
            .usualStep(Amount.of(0.01))
            .within(0.01, 2);

    static final Slot<Double> ACTIVE_LENGTH = length("activeLength")
            .optional()
            .means("length of the bar that twists")
            .measured("tape", Amount.of(0.005))
            .usual(0.5, 1.3)
            .within(0.01, 5);

    static final Slot<Double> LINK_RATIO = ratio("linkRatio")
            .optional()
            .means("travel of the drop link over travel of the wheel")
            .measured("travel of both over a wheel travel of 40 mm", Amount.of(0.02))
            .usual(0.3, 1.1)
            .takes(Slot.Work.REBUILDING)
            .usualStep(Amount.of(0.05))
            .within(0.01, 10);

    static final Slot<Double> BUSH_FACTOR = ratio("bushFactor")
            .means("part of the bar's stiffness that bushes and links leave")
            .usual(0.5, 1)
            .goesBack(Slot.WayBack.OLD_PART)
            .usualStep(Amount.of(0.05))
            .within(0.01, 1)
            .defaultsTo(1.0);

    static final Slot<Values> BAR_PIVOT = PointCatalogue.point(
                    "pivot", "point on the bar's axis, which runs across the car")
            .optional();
    private static final Slot<Values> ARM_END = PointCatalogue.point("armEnd", "end of the drop link on the bar's arm")
            .optional();
    private static final String LINK_END_WORDS = "other end of the drop link, on the moving part";
    private static final Slot<Values> LINK_END_AT_WHEEL =
            group("linkEnd", PointCatalogue.POINT_ON).byPoints().optional().means(LINK_END_WORDS);
    private static final Slot<Values> LINK_END_ON_AXLE =
            group("linkEnd", PointCatalogue.POINT).byPoints().optional().means(LINK_END_WORDS);

    static final Shape<Given.OfBar> BAR_AT_WHEEL = bar(
            "barAtWheel",
            LINK_END_AT_WHEEL,
            PointCatalogue.right("barPointsAtWheel", BAR_PIVOT, ARM_END, LINK_END_AT_WHEEL));
    static final Shape<Given.OfBar> BAR_ON_AXLE = bar(
            "barOnAxle",
            LINK_END_ON_AXLE,
            PointCatalogue.right("barPointsOnAxle", BAR_PIVOT, ARM_END, LINK_END_ON_AXLE));

    private static Shape<Given.OfBar> bar(String name, Slot<Values> linkEnd, Slot<Values> right) {
        return shape(
                name,
                v -> bar(v, linkEnd, right),
                BAR_ROLL_STIFFNESS,
                DIAMETER,
                ARM_LENGTH.unless(BAR_ROLL_STIFFNESS),
                ACTIVE_LENGTH.unless(BAR_ROLL_STIFFNESS),
                LINK_RATIO.unless(BAR_ROLL_STIFFNESS),
                BUSH_FACTOR.unless(BAR_ROLL_STIFFNESS),
                BAR_PIVOT,
                ARM_END,
                linkEnd,
                right);
    }

    private static Given.OfBar bar(Values v, Slot<Values> linkEnd, Slot<Values> right) {
        Optional<Pair<BarArm>> points = Optional.empty();
        if (v.has(BAR_PIVOT) || v.has(ARM_END) || v.has(linkEnd)) {
            for (Slot<Values> slot : List.of(BAR_PIVOT, ARM_END, linkEnd)) {
                require(v.has(slot), slot.key(), "is missing: a bar by points has its pivot, armEnd and linkEnd");
            }
            points = Optional.of(Sided.pair(
                    v,
                    right,
                    side -> new BarArm(
                            PointCatalogue.point(side, BAR_PIVOT),
                            PointCatalogue.point(side, ARM_END),
                            PointCatalogue.point(side, linkEnd),
                            linkEnd == LINK_END_AT_WHEEL
                                    ? side.below(linkEnd).of(PointCatalogue.ON)
                                    : CarriedOn.AXLE)));
        }
        if (v.has(BAR_ROLL_STIFFNESS)) {
            Bar bar = new Bar.Measured(v.of(BAR_ROLL_STIFFNESS));
            return new Given.OfBar(ratio -> bar, OptionalDouble.empty(), false, points);
        }
        double armLength = needed(v, ARM_LENGTH);
        double activeLength = needed(v, ACTIVE_LENGTH);
        OptionalDouble given = points.isPresent() ? v.maybe(LINK_RATIO) : OptionalDouble.of(needed(v, LINK_RATIO));
        return new Given.OfBar(
                ratio -> new Bar.Round(v.of(DIAMETER), armLength, activeLength, ratio, v.of(BUSH_FACTOR)),
                given,
                true,
                points);
    }

    private static double needed(Values v, Slot<Double> slot) {
        return v.optional(slot)
                .orElseThrow(() -> new InvalidValue(
                        slot.key(), "is missing: a bar given by its diameter needs the " + slot.meaning()));
    }

    private SpringCatalogue() {}
}
