package evenhand.car;

import evenhand.tyre.MagicFormula;
import evenhand.tyre.Tyre;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

/** Plausible road cars from a seed: the same seed gives the same car, whatever was made before. Invented data. */
public final class RoadCars {
    private final SplittableRandom random;

    private RoadCars(long seed) {
        random = new SplittableRandom(seed * 0x9E3779B97F4A7C15L + 17);
    }

    /** A car with everything that a file can give: leaning springs, stops, compliance, drag, any differential. */
    public static Car any(long seed) {
        return new RoadCars(seed).car(true);
    }

    /** A car for which the hand sums hold exactly as the turn grows gentle: no toe, camber, drag, rigid chassis. */
    public static Car plain(long seed) {
        return new RoadCars(seed).car(false);
    }

    /** The car of {@link #any} with dampers at both ends, and at times metal stops; its other numbers are the same. */
    public static Car damped(long seed) {
        Car car = any(seed);
        RoadCars more = new RoadCars(seed ^ 0x5DEECE66DL);
        return new Car(
                car.weights(),
                car.wheelbase(),
                car.cgHeight(),
                car.chassisTorsionalStiffness(),
                car.steering(),
                car.air(),
                car.rollingResistance(),
                more.damped(car, End.FRONT),
                more.damped(car, End.REAR),
                car.drive(),
                more.chance(0.3)
                        ? OptionalDouble.of(car.weights().mass() * more.between(1.0, 1.9))
                        : OptionalDouble.empty(),
                more.chance(0.5) ? new Seat(OptionalDouble.of(car.wheelbase() * more.between(-0.1, 1.1))) : Seat.USUAL);
    }

    private Axle damped(Car car, End end) {
        Axle axle = car.axle(end);
        double mass = car.axleLoad(end) / 2 / Weights.GRAVITY - axle.unsprung().mass() / 2;
        boolean leans = axle instanceof Axle.Live && chance(0.6);
        double ratio = between(0.55, 0.98);
        double lean = Math.toRadians(between(0, 30));
        double square = leans ? Math.cos(lean) * Math.cos(lean) : ratio * ratio;
        double slow = 2 * mass * 2 * Math.PI * 1.4 * between(0.15, 0.6) / square;
        double stiffer = between(1, 3); // rebound over bump
        Damper damper = new Damper(
                leans ? OptionalDouble.empty() : OptionalDouble.of(ratio),
                leans ? OptionalDouble.of(lean) : OptionalDouble.empty(),
                axle instanceof Axle.Live ? OptionalDouble.of(between(0.8, 1.05)) : OptionalDouble.empty(),
                Optional.of(new Damper.Forces(
                        digressive(2 * slow / (1 + stiffer)), digressive(2 * slow * stiffer / (1 + stiffer)))),
                List.of(),
                Optional.empty());
        Stops stops = chance(0.5)
                ? new Stops(
                        axle.stops().bump(),
                        axle.stops().droop(),
                        Optional.of(new Stops.Metal(between(0.07, 0.11), OptionalDouble.empty())))
                : axle.stops();
        OptionalDouble inertia =
                chance(0.3) ? OptionalDouble.of(axle.unsprung().mass() * between(0.2, 0.4)) : OptionalDouble.empty();
        if (axle instanceof Axle.Independent wheels) {
            return new Axle.Independent(
                    wheels.track(),
                    wheels.unsprung(),
                    wheels.rollCentre(),
                    wheels.spring(),
                    wheels.bar(),
                    stops,
                    Optional.of(damper),
                    wheels.lowered(),
                    wheels.rollCamber(),
                    wheels.alignment(),
                    wheels.tyre(),
                    inertia);
        }
        Axle.Live live = (Axle.Live) axle;
        return new Axle.Live(
                live.track(),
                live.unsprung(),
                live.lateralLocator(),
                live.spring(),
                live.bar(),
                stops,
                Optional.of(damper),
                live.lowered(),
                live.alignment(),
                live.tyre(),
                inertia);
    }

    /** Full slope up to 0.1 m/s, then less. */
    private Curve digressive(double slope) {
        double fast = between(0.3, 0.8) * slope;
        return new Curve(List.of(
                new Curve.Point(0, 0),
                new Curve.Point(0.1, 0.1 * slope),
                new Curve.Point(0.6, 0.1 * slope + 0.5 * fast)));
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private boolean chance(double of) {
        return random.nextDouble() < of;
    }

    private Car car(boolean full) {
        double mass = between(750, 1800);
        double frontFraction = between(0.44, 0.62);
        double wheelbase = between(2.2, 2.9);
        double track = between(1.2, 1.55);
        double height = between(0.44, 0.62);
        Weights weights;
        if (full && chance(0.4)) {
            double left = between(0.48, 0.52);
            double cross = between(-0.01, 0.01);
            weights = new Weights.Corners(
                    mass * frontFraction * (left + cross),
                    mass * frontFraction * (1 - left - cross),
                    mass * (1 - frontFraction) * (left - cross),
                    mass * (1 - frontFraction) * (1 - left + cross));
        } else {
            weights = new Weights.Whole(mass, frontFraction);
        }
        boolean liveFront = chance(0.1);
        boolean liveRear = chance(0.65);
        Axle front = axle(full, liveFront, mass * frontFraction, track, End.FRONT);
        Axle rear = axle(full, liveRear, mass * (1 - frontFraction), track + between(-0.04, 0.04), End.REAR);
        Drive.Differential differential = chance(0.5) || !full
                ? new Drive.Differential.Open()
                : chance(0.5) ? new Drive.Differential.Locked() : new Drive.Differential.TorqueBiasing(between(1.2, 4));
        return new Car(
                weights,
                wheelbase,
                height,
                full && chance(0.8) ? between(1500, 12000) * 180 / Math.PI : Double.POSITIVE_INFINITY,
                new Steering(16, full ? between(0, 1) : 1),
                full
                        ? new Air(
                                between(0.5, 0.9),
                                chance(0.5) ? OptionalDouble.of(between(0.45, 0.7)) : OptionalDouble.empty(),
                                between(0, 0.15),
                                between(0, 0.15))
                        : Air.NONE,
                full ? between(0.008, 0.018) : 0,
                front,
                rear,
                new Drive(
                        chance(0.7) ? End.REAR : End.FRONT,
                        differential,
                        full && chance(0.7) ? OptionalDouble.of(between(3, 4.5)) : OptionalDouble.empty(),
                        chance(0.5) ? Drive.ShaftTurns.ANTICLOCKWISE : Drive.ShaftTurns.CLOCKWISE),
                OptionalDouble.empty(),
                Seat.USUAL);
    }

    private Axle axle(boolean full, boolean live, double axleMass, double track, End end) {
        Unsprung unsprung = new Unsprung(live ? between(85, 150) : between(60, 90), between(0.28, 0.32));
        double sprung = (axleMass - unsprung.mass()) / 2;
        double frequency = between(1.2, 1.9) * 2 * Math.PI;
        double wheelRate = sprung * frequency * frequency;
        Optional<Bar> bar = chance(end == End.FRONT ? 0.8 : 0.4)
                ? Optional.of(new Bar.Measured(between(50, 350) * 180 / Math.PI))
                : Optional.empty();
        Stops stops = full ? stops(live) : Stops.NONE;
        Alignment alignment = new Alignment(
                full ? Math.toRadians(between(-1.5, 0.5)) : 0,
                full ? Math.toRadians(between(-0.1, 0.15)) : 0,
                between(-0.04, 0.07),
                Math.toRadians(between(-0.02, 0.08)) / 1000,
                Math.toRadians(between(-1, 4)) / 1000);
        Tyre tyre = tyre(axleMass * Weights.GRAVITY / 2);
        double lowered = full && chance(0.3) ? between(0, 0.05) : 0;
        if (!live) {
            double ratio = between(0.5, 0.95);
            return new Axle.Independent(
                    track,
                    unsprung,
                    new Axle.RollCentre(between(-0.03, 0.12), between(-2.4, -0.7)),
                    new Spring.AtWheel(wheelRate / (ratio * ratio), ratio, Spring.Lengths.UNKNOWN),
                    bar,
                    stops,
                    Optional.empty(),
                    lowered,
                    between(0.4, 1.0),
                    alignment,
                    tyre,
                    OptionalDouble.empty());
        }
        double base = between(0.85, 1.1);
        Spring spring;
        if (full && chance(0.5)) {
            double lean = Math.toRadians(between(5, 25));
            double cos = Math.cos(lean);
            spring = new Spring.Leaning(
                    wheelRate / (cos * cos),
                    base,
                    lean,
                    between(0.18, 0.24),
                    chance(0.5)
                            ? new Spring.Lengths(
                                    OptionalDouble.of(between(0.28, 0.36)),
                                    OptionalDouble.empty(),
                                    OptionalDouble.empty())
                            : Spring.Lengths.UNKNOWN);
        } else {
            spring = new Spring.Upright(wheelRate, base, 1, Spring.Lengths.UNKNOWN);
        }
        double height = between(0.15, 0.33);
        LateralLocator locator = chance(0.5)
                ? new LateralLocator.WattsLinkage(
                        height, chance(0.5) ? LateralLocator.CarriedBy.BODY : LateralLocator.CarriedBy.AXLE)
                : chance(0.5)
                        ? new LateralLocator.PanhardRod(height, -0.5)
                        : new LateralLocator.LeafSprings(height, -0.5);
        return new Axle.Live(
                track,
                unsprung,
                locator,
                spring,
                bar,
                stops,
                Optional.empty(),
                lowered,
                alignment,
                tyre,
                OptionalDouble.empty());
    }

    private Stops stops(boolean live) {
        OptionalDouble base = live ? OptionalDouble.of(between(0.7, 1.0)) : OptionalDouble.empty();
        double kink = between(0.01, 0.03);
        double first = kink * between(2e4, 6e4);
        Curve curve = new Curve(List.of(
                new Curve.Point(0, 0),
                new Curve.Point(kink, first),
                new Curve.Point(kink + 0.02, first + 0.02 * between(6e4, 2e5))));
        return new Stops(
                chance(0.6) ? Optional.of(new Stops.Bump(between(0.02, 0.08), curve, base)) : Optional.empty(),
                chance(0.4)
                        ? Optional.of(new Stops.Droop(between(0.03, 0.09), between(3e5, 1e6), base))
                        : Optional.empty(),
                Optional.empty());
    }

    private Tyre tyre(double load) {
        double referenceLoad = between(0.8, 1.3) * load;
        return new Tyre(
                between(0.28, 0.32),
                between(160e3, 250e3),
                new MagicFormula(
                        referenceLoad,
                        referenceLoad * between(0.13, 0.26) * 180 / Math.PI,
                        between(0.8, 1.1),
                        between(0.05, 0.2),
                        between(1.6, 2.6),
                        between(1.2, 1.5),
                        between(-1.5, 0.2),
                        between(0.02, 0.08),
                        between(0, 4),
                        Math.toRadians(between(0, 3)),
                        between(0.01, 0.04)),
                between(0.9, 1.15),
                chance(0.5) ? OptionalDouble.of(between(20, 30) * referenceLoad) : OptionalDouble.empty());
    }
}
