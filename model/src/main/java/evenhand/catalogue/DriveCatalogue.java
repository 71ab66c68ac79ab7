package evenhand.catalogue;

import static evenhand.catalogue.Shape.as;
import static evenhand.catalogue.Shape.kinds;
import static evenhand.catalogue.Shape.shape;
import static evenhand.catalogue.Slot.choice;
import static evenhand.catalogue.Slot.group;
import static evenhand.catalogue.Slot.inOrder;
import static evenhand.catalogue.Slot.measure;
import static evenhand.catalogue.Slot.numbers;
import static evenhand.catalogue.Slot.ratio;
import static evenhand.catalogue.Slot.torque;

import evenhand.car.Drive;
import evenhand.car.End;
import evenhand.car.Engine;
import evenhand.quantity.Dimension;
import java.util.List;

/** What drives the car: engine, gears, axle and differential. */
final class DriveCatalogue {
    private static final double RPM = Math.PI / 30;

    private static final Slot<Double> BIAS_RATIO = ratio("biasRatio")
            .means("greater share of the drive force over the lesser at which the differential gives way")
            .usual(1.3, 6)
            .takes(Slot.Work.REBUILDING)
            .goesBack(Slot.WayBack.OLD_PART)
            .usualStep(Amount.of(0.5))
            .within(1, 1000);

    private static final Shape<Drive.Differential> DIFFERENTIAL_SHAPE = kinds(
            "differential",
            "kind",
            "how the drive force is shared between the wheels",
            as("open", shape("openDifferential", v -> new Drive.Differential.Open())),
            as("locked", shape("lockedDifferential", v -> new Drive.Differential.Locked())),
            as(
                    "torque-biasing",
                    shape(
                            "torqueBiasingDifferential",
                            v -> new Drive.Differential.TorqueBiasing(v.of(BIAS_RATIO)),
                            BIAS_RATIO)));

    private static final Slot<End> DRIVEN =
            choice("axle", WeightCatalogue.ENDS).means("driven axle").defaultsTo(Drive.USUAL.axle());
    private static final Slot<Drive.Differential> DIFFERENTIAL = group("differential", DIFFERENTIAL_SHAPE)
            .means("differential of the driven axle, by its kind")
            .defaultsTo(Drive.USUAL.differential());
    static final Slot<Double> FINAL_DRIVE = ratio("finalDrive")
            .optional()
            .means(
                    "turns of the propeller shaft per turn of the wheels; a driven live axle then feels the shaft's torque")
            .usual(2.5, 6)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(0.2))
            .within(0.1, 50);
    private static final Slot<Drive.ShaftTurns> SHAFT_TURNS = choice(
                    "shaftTurns",
                    inOrder(
                            "anticlockwise from behind",
                            Drive.ShaftTurns.ANTICLOCKWISE,
                            "clockwise from behind",
                            Drive.ShaftTurns.CLOCKWISE))
            .means("sense in which the propeller shaft turns, driving forwards")
            .defaultsTo(Drive.USUAL.shaftTurns());

    private static final Slot<Engine.Torque> TORQUE =
            torque("torque").means("torque of the engine at full throttle over its speed");
    private static final Slot<Double> RED_LINE = measure("redLine", Dimension.ROTATION)
            .optional()
            .means("highest speed of the engine")
            .usual(3500 * RPM, 9000 * RPM)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(500 * RPM))
            .within(100 * RPM, 30_000 * RPM);
    private static final Slot<Engine> ENGINE = group(
                    "engine", shape("engine", v -> new Engine(v.of(TORQUE), v.maybe(RED_LINE)), TORQUE, RED_LINE))
            .optional()
            .means("engine");
    static final Slot<List<Double>> GEARS = numbers("gears", "[3.1, 1.95, 1.35, 1.0]")
            .optional()
            .means("turns of the engine per turn of the propeller shaft, from the first gear on");
    static final Slot<Double> EFFICIENCY = ratio("efficiency")
            .optional()
            .means(
                    "part of the engine's power that reaches the wheels; 0.9 of a driven rear axle, 0.92 of a front one where absent")
            .usual(0.8, 0.97)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(0.02))
            .within(0.05, 1);

    static final Shape<Drive> DRIVE = shape(
            "drive",
            v -> new Drive(
                    v.of(DRIVEN),
                    v.of(DIFFERENTIAL),
                    v.maybe(FINAL_DRIVE),
                    v.of(SHAFT_TURNS),
                    v.optional(ENGINE),
                    v.optional(GEARS).orElse(List.of()),
                    v.maybe(EFFICIENCY)),
            DRIVEN,
            DIFFERENTIAL,
            FINAL_DRIVE,
            SHAFT_TURNS,
            ENGINE,
            GEARS,
            EFFICIENCY);

    private DriveCatalogue() {}
}
