package evenhand.straight;

import evenhand.car.Axle;
import evenhand.car.BrakeParts;
import evenhand.car.Brakes;
import evenhand.car.Car;
import evenhand.car.Drive;
import evenhand.car.Engine;
import evenhand.car.Reaction;
import evenhand.car.RoadCars;
import evenhand.car.SwingArm;
import evenhand.car.links.SideView.BrakesAt;
import evenhand.turn.LinkedCars;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

/** Random road cars with brakes by their parts, an engine, gears and a side view; a seed makes a car. Invented data. */
public final class BrakedCars {
    private static final double BAR = 1e5;
    private static final double RPM = Math.PI / 30;

    private final SplittableRandom random;

    private BrakedCars(long seed) {
        random = new SplittableRandom(seed * 0x9E3779B97F4A7C15L + 71);
    }

    /** At rest, with everything. */
    public static Car any(long seed) {
        return new BrakedCars(seed).on(RoadCars.any(seed)).settled();
    }

    /** The same before its body is let down. */
    static Car asRead(long seed) {
        return new BrakedCars(seed).on(RoadCars.any(seed));
    }

    /** On links by points, where they come together. */
    public static Optional<Car> onLinks(long seed) {
        return LinkedCars.any(seed).map(car -> new BrakedCars(seed).withParts(car));
    }

    /** A car with its axles swinging so. */
    static Car swinging(Car car, Optional<SwingArm> front, Optional<SwingArm> rear) {
        return with(
                car,
                reacting(car.front(), front, car.front().reaction().brakesAt()),
                reacting(car.rear(), rear, car.rear().reaction().brakesAt()));
    }

    static Car with(Car car, Axle front, Axle rear) {
        return new Car(
                car.weights(),
                car.wheelbase(),
                car.cgHeight(),
                car.chassisTorsionalStiffness(),
                car.steering(),
                car.air(),
                car.rollingResistance(),
                front,
                rear,
                car.drive(),
                car.pitchInertia(),
                car.seat(),
                car.brakes());
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private Car on(Car car) {
        return withParts(with(car, axle(car.front()), axle(car.rear())));
    }

    private Car withParts(Car car) {
        Drive drive = car.drive();
        double best = between(150, 320);
        return car.braked(new Brakes(OptionalDouble.empty(), Optional.of(parts())))
                .driven(new Drive(
                        drive.axle(),
                        drive.differential(),
                        OptionalDouble.of(drive.finalDrive().orElse(3.7)),
                        drive.shaftTurns(),
                        Optional.of(new Engine(
                                new Engine.Torque(List.of(
                                        new Engine.Torque.Point(1000 * RPM, 0.7 * best),
                                        new Engine.Torque.Point(3000 * RPM, best),
                                        new Engine.Torque.Point(5500 * RPM, 0.8 * best))),
                                OptionalDouble.of(6000 * RPM))),
                        List.of(3.2, 1.9, 1.3, 1.0),
                        OptionalDouble.empty()));
    }

    private Axle axle(Axle axle) {
        Optional<SwingArm> arm = random.nextInt(3) == 0
                ? Optional.empty()
                : Optional.of(new SwingArm(
                        between(0.8, 6), between(-0.05, 0.5), axle.tyre().loadedRadius()));
        return reacting(axle, arm, random.nextBoolean() ? BrakesAt.WHEELS : BrakesAt.BODY);
    }

    private static Axle reacting(Axle axle, Optional<SwingArm> arm, BrakesAt brakesAt) {
        Reaction reaction = new Reaction(
                arm, brakesAt, axle instanceof Axle.Live ? OptionalDouble.of(9000) : OptionalDouble.empty());
        if (axle instanceof Axle.Independent wheels) {
            return new Axle.Independent(
                    wheels.track(),
                    wheels.unsprung(),
                    wheels.rollCentre(),
                    wheels.spring(),
                    wheels.bar(),
                    wheels.stops(),
                    wheels.damper(),
                    wheels.lowered(),
                    wheels.rollCamber(),
                    wheels.alignment(),
                    wheels.tyre(),
                    wheels.rollInertia(),
                    reaction);
        }
        Axle.Live live = (Axle.Live) axle;
        return new Axle.Live(
                live.track(),
                live.unsprung(),
                live.lateralLocator(),
                live.spring(),
                live.bar(),
                live.stops(),
                live.damper(),
                live.lowered(),
                live.alignment(),
                live.tyre(),
                live.rollInertia(),
                reaction);
    }

    /** Brakes from the pedal to the wheels. */
    static BrakeParts parts(long seed) {
        return new BrakedCars(seed).parts();
    }

    private BrakeParts parts() {
        BrakeParts.MasterCylinder cylinder = random.nextBoolean()
                ? new BrakeParts.OneCylinder(between(0.018, 0.024))
                : new BrakeParts.BalanceBar(between(0.016, 0.02), between(0.016, 0.02), between(0.4, 0.6));
        BrakeParts.WheelBrake front = new BrakeParts.Disc(
                between(0.045, 0.06), 1, between(0.1, 0.13), between(0.3, 0.45), between(0, 2) * BAR);
        BrakeParts.WheelBrake rear = random.nextBoolean()
                ? new BrakeParts.Disc(between(0.03, 0.04), 1, between(0.1, 0.13), between(0.3, 0.45), 0)
                : new BrakeParts.Drum(between(0.017, 0.024), between(0.09, 0.13), between(2, 3.2), between(0, 5) * BAR);
        Optional<BrakeParts.RearValve> valve = random.nextInt(3) == 0
                ? Optional.empty()
                : Optional.of(new BrakeParts.RearValve(
                        between(15, 50) * BAR,
                        random.nextInt(5) == 0 ? 0 : between(0.2, 0.6),
                        random.nextBoolean() ? 0 : between(0.2, 1.2) * BAR * 1000));
        return new BrakeParts(
                new BrakeParts.Pedal(between(3.5, 6), between(0.8, 1)),
                random.nextBoolean()
                        ? Optional.of(new BrakeParts.Booster(between(2, 5), between(500, 1500)))
                        : Optional.empty(),
                cylinder,
                front,
                rear,
                valve);
    }
}
