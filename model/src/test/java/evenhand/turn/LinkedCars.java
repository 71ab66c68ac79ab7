package evenhand.turn;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.Damper;
import evenhand.car.End;
import evenhand.car.LateralLocator;
import evenhand.car.Reaction;
import evenhand.car.RoadCars;
import evenhand.car.Spring;
import evenhand.car.Stops;
import evenhand.car.links.LinkedAxle;
import evenhand.car.links.LinkedAxles;
import evenhand.car.links.LinkedAxles.Kind;
import evenhand.geometry.Lever;
import evenhand.geometry.Linear;
import evenhand.geometry.LiveAxleMotion;
import evenhand.geometry.WheelPairMotion;
import evenhand.linkage.Assembly;
import evenhand.linkage.MotionFit;
import java.util.Optional;
import java.util.SplittableRandom;

/** Random road cars whose axles stand on random links, springs along lines of their own. */
public final class LinkedCars {
    private LinkedCars() {}

    /** A car, or none where its links do not come together. */
    public static Optional<Car> any(long seed) {
        return on(seed, RoadCars.any(seed).settled(), false);
    }

    /** The same with stops and dampers. */
    public static Optional<Car> damped(long seed) {
        return on(seed, RoadCars.damped(seed).settled(), true);
    }

    private static Optional<Car> on(long seed, Car car, boolean damped) {
        SplittableRandom random = new SplittableRandom(seed * 0x9E3779B97F4A7C15L + 41);
        Kind[] kinds = Kind.values();
        Kind front = random.nextInt(3) == 0 ? Kind.STRUTS : Kind.WISHBONES;
        Kind rear = random.nextInt(6) == 0 ? front : kinds[random.nextInt(kinds.length)];
        Optional<Axle> ofFront = axle(car, End.FRONT, front, seed, random, damped);
        Optional<Axle> ofRear = axle(car, End.REAR, rear, seed, random, damped);
        return ofFront.isEmpty() || ofRear.isEmpty()
                ? Optional.empty()
                : Optional.of(new Car(
                        car.weights(),
                        car.wheelbase(),
                        car.cgHeight(),
                        car.chassisTorsionalStiffness(),
                        car.steering(),
                        car.air(),
                        car.rollingResistance(),
                        ofFront.get(),
                        ofRear.get(),
                        car.drive(),
                        car.pitchInertia(),
                        car.seat()));
    }

    private static Optional<Axle> axle(
            Car car, End end, Kind kind, long seed, SplittableRandom random, boolean damped) {
        long at = seed;
        LinkedAxle linked = LinkedAxles.of(kind, at);
        while (linked.stance().end() != end) {
            at += 1_000;
            linked = LinkedAxles.of(kind, at);
        }
        linked = linked.down(0);
        if (!(Assembly.of(linked) instanceof Assembly.Standing standing)) {
            return Optional.empty();
        }
        Axle known = car.axle(end);
        Stops stops = damped ? known.stops() : Stops.NONE;
        Optional<Damper> damper = damped ? known.damper() : Optional.empty();
        double track = linked.stance().track();
        double rate = 14_000 + 20_000 * random.nextDouble();
        Lever coefficients = Lever.upright(1, kind.isLive() ? 0.45 : track / 2);
        if (kind.isLive()) {
            LiveAxleMotion motion = (LiveAxleMotion) MotionFit.of(standing.linkage(), 0.1, 0.1);
            Linear rest = motion.atRest(coefficients, Optional.empty());
            double ratio = rest.springs().ratio();
            return Optional.of(new Axle.Live(
                    track,
                    known.unsprung(),
                    new LateralLocator.ByPoints(rest.rollCentreHeight(), rest.rollCentreByTravel()),
                    new Spring.Upright(
                            rate / ratio / ratio, 2 * rest.springs().arm().atGround(), ratio, Spring.Lengths.UNKNOWN),
                    known.bar(),
                    stops,
                    damper,
                    0,
                    known.alignment(),
                    known.tyre(),
                    known.rollInertia(),
                    Reaction.UNKNOWN,
                    Optional.of(linked),
                    Optional.of(motion)));
        }
        WheelPairMotion motion = (WheelPairMotion) MotionFit.of(standing.linkage(), 0.1, 0.1);
        Linear rest = motion.atRest(coefficients, Optional.empty());
        double ratio = rest.springs().ratio();
        return Optional.of(new Axle.Independent(
                track,
                known.unsprung(),
                new Axle.RollCentre(rest.rollCentreHeight(), rest.rollCentreByTravel()),
                new Spring.AtWheel(rate / ratio / ratio, ratio, Spring.Lengths.UNKNOWN),
                known.bar(),
                stops,
                damper,
                0,
                rest.rollCamber(),
                known.alignment(),
                known.tyre(),
                known.rollInertia(),
                Reaction.UNKNOWN,
                Optional.of(linked),
                Optional.of(motion)));
    }
}
