package evenhand.catalogue;

import static evenhand.catalogue.Shape.shape;
import static evenhand.catalogue.Slot.angle;
import static evenhand.catalogue.Slot.length;
import static evenhand.catalogue.Slot.measure;
import static evenhand.catalogue.Slot.ratio;

import evenhand.car.Bar;
import evenhand.car.Spring;
import evenhand.quantity.Dimension;
import evenhand.quantity.InvalidValue;

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

    static final Shape<Spring.AtWheel> AT_WHEEL = shape(
            "springAtWheel",
            v -> new Spring.AtWheel(v.of(RATE), v.of(SPRING_MOTION_RATIO), lengths(v)),
            RATE,
            SPRING_MOTION_RATIO,
            INSTALLED_LENGTH,
            FREE_LENGTH,
            SOLID_LENGTH);

    static final Slot<Double> AXLE_SPRING_MOTION_RATIO = SPRING_MOTION_RATIO.unless(LEAN);

    static final Shape<Spring> ON_AXLE = shape(
            "springOnAxle",
            SpringCatalogue::onAxle,
            RATE,
            BASE,
            LEAN,
            AXLE_SPRING_MOTION_RATIO,
            LOWER_MOUNT_HEIGHT,
            INSTALLED_LENGTH,
            FREE_LENGTH,
            SOLID_LENGTH);

    static Slot<Double> motionRatio(String meaning) {
        return ratio("motionRatio")
                .means(meaning)
                .measured("travel of both over a wheel travel of 40 mm", Amount.of(0.02))
                .usual(0.4, 1.1)
                .takes(Slot.Work.REBUILDING)
                .usualStep(Amount.of(0.02))
                .within(0.01, 10);
    }

    private static Spring onAxle(Values v) {
        if (!v.has(LEAN)) {
            return new Spring.Upright(v.of(RATE), v.of(BASE), v.of(AXLE_SPRING_MOTION_RATIO), lengths(v));
        }
        double height = v.optional(LOWER_MOUNT_HEIGHT)
                .orElseThrow(() -> new InvalidValue(
                        LOWER_MOUNT_HEIGHT.key(),
                        "is missing: a spring with lean needs the " + LOWER_MOUNT_HEIGHT.meaning()));
        return new Spring.Leaning(v.of(RATE), v.of(BASE), v.of(LEAN), height, lengths(v));
    }

    private static Spring.Lengths lengths(Values v) {
        return new Spring.Lengths(v.maybe(INSTALLED_LENGTH), v.maybe(FREE_LENGTH), v.maybe(SOLID_LENGTH));
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

    static final Shape<Bar> BAR = shape(
            "bar",
            SpringCatalogue::bar,
            BAR_ROLL_STIFFNESS,
            DIAMETER,
            ARM_LENGTH.unless(BAR_ROLL_STIFFNESS),
            ACTIVE_LENGTH.unless(BAR_ROLL_STIFFNESS),
            LINK_RATIO.unless(BAR_ROLL_STIFFNESS),
            BUSH_FACTOR.unless(BAR_ROLL_STIFFNESS));

    private static Bar bar(Values v) {
        if (v.has(BAR_ROLL_STIFFNESS)) {
            return new Bar.Measured(v.of(BAR_ROLL_STIFFNESS));
        }
        return new Bar.Round(
                v.of(DIAMETER),
                needed(v, ARM_LENGTH),
                needed(v, ACTIVE_LENGTH),
                needed(v, LINK_RATIO),
                v.of(BUSH_FACTOR));
    }

    private static double needed(Values v, Slot<Double> slot) {
        return v.optional(slot)
                .orElseThrow(() -> new InvalidValue(
                        slot.key(), "is missing: a bar given by its diameter needs the " + slot.meaning()));
    }

    private SpringCatalogue() {}
}
