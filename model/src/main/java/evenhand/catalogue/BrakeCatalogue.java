package evenhand.catalogue;

import static evenhand.catalogue.Shape.as;
import static evenhand.catalogue.Shape.kinds;
import static evenhand.catalogue.Shape.shape;
import static evenhand.catalogue.Slot.group;
import static evenhand.catalogue.Slot.length;
import static evenhand.catalogue.Slot.measure;
import static evenhand.catalogue.Slot.ratio;
import static evenhand.quantity.InvalidValue.require;

import evenhand.car.BrakeParts;
import evenhand.car.Brakes;
import evenhand.quantity.Dimension;
import evenhand.quantity.InvalidValue;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The brakes: by their share alone, or from the pedal to the wheels. Usual ranges are common practice, no source. */
final class BrakeCatalogue {
    private static final double MM = 0.001;
    private static final double BAR = 1e5;

    static final Slot<Double> FRONT_SHARE = ratio("frontShare")
            .optional()
            .means("share of the brake force at the front wheels, where the parts are not given")
            .measured("brake tester, or worked out from pistons and discs", Amount.of(0.03))
            .usual(0.5, 0.85)
            .takes(Slot.Work.REBUILDING)
            .within(0, 1);

    private static final Slot<Double> PEDAL_RATIO = ratio("ratio")
            .means("travel of the foot over travel of the rod that the pedal pushes")
            .measured("steel rule from the pedal's pivot to the pad and to the rod", Amount.percent(3))
            .usual(3, 8)
            .takes(Slot.Work.REBUILDING)
            .usualStep(Amount.of(0.5))
            .within(0.5, 30);
    private static final Slot<Double> PEDAL_EFFICIENCY = ratio("efficiency")
            .means("part of the pedal's force that its friction leaves")
            .usual(0.7, 1)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(0.05))
            .within(0.05, 1)
            .defaultsTo(1.0);
    private static final Slot<BrakeParts.Pedal> PEDAL = group(
                    "pedal",
                    shape(
                            "pedal",
                            v -> new BrakeParts.Pedal(v.of(PEDAL_RATIO), v.of(PEDAL_EFFICIENCY)),
                            PEDAL_RATIO,
                            PEDAL_EFFICIENCY))
            .optional()
            .means("brake pedal");

    private static final Slot<Double> BOOSTER_GAIN = ratio("gain")
            .means("force behind the booster over force before it")
            .measured("a gauge in the lines, engine on and off", Amount.percent(10))
            .usual(1.5, 8)
            .takes(Slot.Work.REBUILDING)
            .usualStep(Amount.of(0.5))
            .within(1, 50);
    private static final Slot<Double> RUN_OUT = measure("runOut", Dimension.FORCE)
            .optional()
            .means(
                    "force at the pedal's rod, before the gain, beyond which the booster helps no further; no end where absent")
            .measured("a gauge in the lines, where the pressure begins to rise less", Amount.percent(10))
            .usual(500, 3000)
            .takes(Slot.Work.REBUILDING)
            .usualStep(Amount.percent(10))
            .within(1, 1e5);
    private static final Slot<BrakeParts.Booster> BOOSTER = group(
                    "booster",
                    shape(
                            "booster",
                            v -> new BrakeParts.Booster(
                                    v.of(BOOSTER_GAIN), v.optional(RUN_OUT).orElse(Double.POSITIVE_INFINITY)),
                            BOOSTER_GAIN,
                            RUN_OUT))
            .optional()
            .means("brake booster");

    private static final Slot<Double> FRONT_BORE =
            bore("frontBore", "bore of the master cylinder of the front brakes").optional();
    private static final Slot<Double> REAR_BORE =
            bore("rearBore", "bore of the master cylinder of the rear brakes").optional();
    private static final Slot<Double> BORE =
            bore("bore", "bore of the master cylinder").unless(FRONT_BORE);
    private static final Slot<Double> BAR_SHARE = ratio("frontShare")
            .optional()
            .means("part of the rod's force that the balance bar gives to the front cylinder")
            .measured(
                    "steel rule on the bar: the clevis' distance from the rear cylinder over that between both",
                    Amount.of(0.02))
            .usual(0.3, 0.7)
            .usualStep(Amount.of(0.02))
            .within(0.01, 0.99);
    private static final Slot<BrakeParts.MasterCylinder> MASTER_CYLINDER = group(
                    "masterCylinder",
                    shape("masterCylinder", BrakeCatalogue::masterCylinder, BORE, FRONT_BORE, REAR_BORE, BAR_SHARE))
            .optional()
            .means("master cylinder, or two of them with a balance bar");

    private static final Slot<Double> THRESHOLD = measure("thresholdPressure", Dimension.PRESSURE)
            .means("pressure below which the brake does not bite")
            .usual(0, 8 * BAR)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(BAR))
            .within(0, 100 * BAR)
            .defaultsTo(0.0);

    private static final Slot<Double> PISTON_BORE =
            bore("bore", "bore of a piston").usual(30 * MM, 70 * MM);
    private static final Slot<Double> PISTONS = ratio("number")
            .means("number of pistons on one side of the disc")
            .usual(1, 3)
            .takes(Slot.Work.REBUILDING)
            .within(1, 12)
            .defaultsTo(1.0);
    private static final Slot<Double> DISC_RADIUS = length("radius")
            .means("distance of the middle of the pads from the wheel's axis")
            .measured("steel rule on the worn track of the disc", Amount.of(2 * MM))
            .usual(80 * MM, 180 * MM)
            .takes(Slot.Work.REBUILDING)
            .usualStep(Amount.of(5 * MM))
            .within(10 * MM, 1);
    private static final Slot<Double> PAD_FRICTION = ratio("padFriction")
            .means("friction of the pads on the disc")
            .measured("the letter on the pad, or a stop with a gauge in the lines", Amount.of(0.04))
            .usual(0.25, 0.6)
            .goesBack(Slot.WayBack.OLD_PART)
            .usualStep(Amount.of(0.03))
            .within(0.05, 1.5);
    private static final Slot<Double> CYLINDER_BORE =
            bore("bore", "bore of the wheel cylinder").usual(14 * MM, 32 * MM);
    private static final Slot<Double> DRUM_RADIUS = length("radius")
            .means("radius of the drum inside")
            .measured("calliper", Amount.of(MM))
            .usual(85 * MM, 160 * MM)
            .takes(Slot.Work.REBUILDING)
            .usualStep(Amount.of(5 * MM))
            .within(10 * MM, 1);
    private static final Slot<Double> FACTOR = ratio("factor")
            .means(
                    "drag of both shoes at the drum over the force on one shoe: 2 to 2.5 leading and trailing, 3 with two leading,"
                            + " 4 to 6 self-energising")
            .measured("by the kind of drum; from memory, spread wide", Amount.percent(15))
            .usual(1.2, 6)
            .takes(Slot.Work.REBUILDING)
            .usualStep(Amount.of(0.2))
            .within(0.1, 20);

    private static final Shape<BrakeParts.WheelBrake> WHEEL_BRAKE = kinds(
            "wheelBrake",
            "kind",
            "what presses on what",
            as(
                    "disc",
                    shape(
                            "disc",
                            v -> new BrakeParts.Disc(
                                    v.of(PISTON_BORE),
                                    v.of(PISTONS),
                                    v.of(DISC_RADIUS),
                                    v.of(PAD_FRICTION),
                                    v.of(THRESHOLD)),
                            PISTON_BORE,
                            PISTONS,
                            DISC_RADIUS,
                            PAD_FRICTION,
                            THRESHOLD)),
            as(
                    "drum",
                    shape(
                            "drum",
                            v -> new BrakeParts.Drum(
                                    v.of(CYLINDER_BORE), v.of(DRUM_RADIUS), v.of(FACTOR), v.of(THRESHOLD)),
                            CYLINDER_BORE,
                            DRUM_RADIUS,
                            FACTOR,
                            THRESHOLD)));
    private static final Slot<BrakeParts.WheelBrake> FRONT =
            group("front", WHEEL_BRAKE).optional().means("brake of a front wheel, by its kind");
    private static final Slot<BrakeParts.WheelBrake> REAR =
            group("rear", WHEEL_BRAKE).optional().means("brake of a rear wheel, by its kind");

    private static final Slot<Double> KNEE = measure("knee", Dimension.PRESSURE)
            .means("pressure from which the valve lets that of the rear brakes rise less")
            .measured("two gauges, before the valve and behind it", Amount.of(2 * BAR))
            .usual(10 * BAR, 70 * BAR)
            .usualStep(Amount.of(2 * BAR))
            .within(0, 500 * BAR);
    private static final Slot<Double> VALVE_SLOPE = ratio("slope")
            .means("rise of the pressure behind the valve over the rise before it, beyond the knee")
            .measured("two gauges, before the valve and behind it", Amount.of(0.05))
            .usual(0.2, 0.6)
            .goesBack(Slot.WayBack.OLD_PART)
            .usualStep(Amount.of(0.05))
            .within(0, 1)
            .because("a valve holds pressure back, it makes none");
    private static final Slot<Double> KNEE_PER_BUMP = measure("kneePerBump", Dimension.PRESSURE_PER_TRAVEL)
            .means("rise of the knee per bump travel of the rear axle, of a valve that feels the load")
            .measured("gauges, with the boot empty and full", Amount.percent(10))
            .usual(0, 2 * BAR / MM)
            .usualStep(Amount.of(0.1 * BAR / MM))
            .within(0, 50 * BAR / MM)
            .defaultsTo(0.0);
    private static final Slot<BrakeParts.RearValve> REAR_VALVE = group(
                    "rearValve",
                    shape(
                            "rearValve",
                            v -> new BrakeParts.RearValve(v.of(KNEE), v.of(VALVE_SLOPE), v.of(KNEE_PER_BUMP)),
                            KNEE,
                            VALVE_SLOPE,
                            KNEE_PER_BUMP))
            .optional()
            .means("valve that holds back the pressure of the rear brakes");

    static final Shape<Brakes> BRAKES = shape(
            "brakes", BrakeCatalogue::brakes, FRONT_SHARE, PEDAL, BOOSTER, MASTER_CYLINDER, FRONT, REAR, REAR_VALVE);

    private BrakeCatalogue() {}

    private static Slot<Double> bore(String key, String meaning) {
        return length(key)
                .means(meaning)
                .measured("calliper, or cast on the part", Amount.of(0.1 * MM))
                .usual(15 * MM, 30 * MM)
                .takes(Slot.Work.REBUILDING)
                .usualStep(Amount.of(1.6 * MM))
                .within(2 * MM, 0.3);
    }

    private static BrakeParts.MasterCylinder masterCylinder(Values v) {
        if (v.has(BORE)) {
            require(!v.has(REAR_BORE), REAR_BORE.key(), "stands beside bore; give bore, or frontBore and rearBore");
            require(
                    !v.has(BAR_SHARE),
                    BAR_SHARE.key(),
                    "is that of a balance bar, which needs two cylinders; give frontBore and rearBore instead of bore");
            return new BrakeParts.OneCylinder(v.of(BORE));
        }
        return new BrakeParts.BalanceBar(needed(v, FRONT_BORE), needed(v, REAR_BORE), needed(v, BAR_SHARE));
    }

    private static double needed(Values v, Slot<Double> slot) {
        return v.optional(slot)
                .orElseThrow(() -> new InvalidValue(
                        slot.key(), "is missing: two cylinders with a balance bar need the " + slot.meaning()));
    }

    private static Brakes brakes(Values v) {
        OptionalDouble share = v.maybe(FRONT_SHARE);
        List<Slot<?>> parts = List.of(PEDAL, MASTER_CYLINDER, FRONT, REAR);
        if (parts.stream().noneMatch(v::has) && !v.has(BOOSTER) && !v.has(REAR_VALVE)) {
            return new Brakes(share);
        }
        for (Slot<?> part : parts) {
            require(
                    v.has(part),
                    part.key(),
                    "is missing: brakes by their parts have pedal, masterCylinder, front and rear; give the "
                            + part.meaning() + ", or frontShare alone");
        }
        return new Brakes(
                share,
                Optional.of(new BrakeParts(
                        v.of(PEDAL),
                        v.optional(BOOSTER),
                        v.of(MASTER_CYLINDER),
                        v.of(FRONT),
                        v.of(REAR),
                        v.optional(REAR_VALVE))));
    }
}
