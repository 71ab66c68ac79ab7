package evenhand.validation;

import evenhand.bump.Bump;
import evenhand.bump.BumpAnswer;
import evenhand.bump.DriveOver;
import evenhand.car.Car;
import evenhand.car.Curve;
import evenhand.car.End;
import evenhand.car.Spring;
import evenhand.car.Stops;
import evenhand.road.Profile;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** One mass at a time over an event: the other of the quarter car is made all but nothing. */
final class BumpEvaluators {
    private static final double WHEELS = 4;

    /** Mass that a wheel's share of the body has, kg. */
    private static final double BODY = 250;

    /** A wheel that rings far above anything looked at, kg, on a tyre whose give is reckoned in, N/m. */
    private static final double LIGHT_WHEEL = 4e-2;

    private static final double STIFF_TYRE = 1e7;

    private BumpEvaluators() {}

    /** Rate that makes this one in series with the stiff tyre. */
    private static double behindTyre(double rate) {
        return rate * STIFF_TYRE / (STIFF_TYRE - rate);
    }

    private static Car onSprings(double mass, double rate, Stops stops) {
        PlainCar car = new PlainCar();
        car.mass = WHEELS * (mass + LIGHT_WHEEL);
        for (PlainCar.PlainAxle axle : List.of(car.front, car.rear)) {
            axle.unsprungMass = 2 * LIGHT_WHEEL;
            axle.tyreRate = STIFF_TYRE;
            axle.spring = new Spring.AtWheel(behindTyre(rate), 1, Spring.Lengths.UNKNOWN);
            axle.stops = stops;
        }
        return car.build();
    }

    private static Bump over(Car car, Profile road, double speed) {
        BumpAnswer.Straight answer = (BumpAnswer.Straight) DriveOver.straight(car, radius -> road, speed);
        return answer.axles().get(End.FRONT);
    }

    /** Amplitude of the body's acceleration behind an event, by least squares over the rows. */
    private static double freeAcceleration(Bump bump, double from, double angular) {
        double cosCos = 0;
        double cosSin = 0;
        double sinSin = 0;
        double cosPull = 0;
        double sinPull = 0;
        for (int i = 0; i < bump.series().time().size(); i++) {
            double time = bump.series().time().get(i);
            if (time > from) {
                double cos = Math.cos(angular * time);
                double sin = Math.sin(angular * time);
                double pull = bump.series().bodyAcceleration().get(i);
                cosCos += cos * cos;
                cosSin += cos * sin;
                sinSin += sin * sin;
                cosPull += cos * pull;
                sinPull += sin * pull;
            }
        }
        double determinant = cosCos * sinSin - cosSin * cosSin;
        return Math.hypot(
                (cosPull * sinSin - sinPull * cosSin) / determinant,
                (sinPull * cosCos - cosPull * cosSin) / determinant);
    }

    static Computed bodyOverHump(Inputs in) {
        double angular = 2 * Math.PI * in.number("natural_Hz");
        double rate = BODY * angular * angular;
        Profile hump = Profile.hump(in.number("height_m"), in.number("bump_length_m"));
        double speed = in.number("speed_m_s");
        Bump bump = over(onSprings(BODY, rate, Stops.NONE), hump, speed);
        double free = freeAcceleration(bump, hump.length() / speed, angular);
        return new Computed().with("residual_amplitude_m", free / (angular * angular));
    }

    /** A ramp as long as one period of the body takes. */
    static Computed bodyOverRamp(Inputs in) {
        double angular = 2 * Math.PI * in.number("natural_Hz");
        double rate = BODY * angular * angular;
        double speed = in.number("speed_m_s");
        double length = speed / in.number("natural_Hz");
        double height = in.number("slope") * length;
        Bump bump = over(onSprings(BODY, rate, Stops.NONE), Profile.ramp(height, length), speed);
        double left = freeAcceleration(bump, length / speed, angular);
        return new Computed()
                .with("peak_acceleration_m_s2", bump.peakBodyAcceleration())
                .with("left_of_peak", left / bump.peakBodyAcceleration());
    }

    /** A heavy wheel with next to nothing on it, and a road that falls away. */
    static Computed drop(Inputs in) {
        PlainCar car = new PlainCar();
        car.mass = WHEELS * in.number("mass_kg");
        for (PlainCar.PlainAxle axle : List.of(car.front, car.rear)) {
            axle.unsprungMass = car.mass / 2 - 2e-6;
            axle.tyreRate = in.number("tyre_N_m");
            axle.spring = new Spring.AtWheel(1e-4, 1, Spring.Lengths.UNKNOWN);
        }
        Bump bump = over(car.build(), Profile.step(-in.number("drop_m")), 10);
        List<Double> loads = bump.series().tyreLoad();
        int landed = 0;
        while (loads.get(landed) == 0) {
            landed++;
        }
        double greatest = loads.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        return new Computed().with("flight_s", bump.series().time().get(landed)).with("greatest_load_N", greatest);
    }

    /** A body whose bump stop is touched as soon as it goes below rest, set moving by a hump. */
    static Computed freeOnStop(Inputs in) {
        double mass = in.number("mass_kg");
        double spring = in.number("spring_N_m");
        double both = spring + in.number("stop_N_m");
        double stop = behindTyre(both) - behindTyre(spring);
        Curve line = new Curve(List.of(new Curve.Point(0, 0), new Curve.Point(1, stop)));
        Stops stops = new Stops(
                Optional.of(new Stops.Bump(0, line, OptionalDouble.empty())), Optional.empty(), Optional.empty());
        Bump bump = over(onSprings(mass, spring, stops), Profile.hump(0.02, 3), 10);
        List<Double> times = bump.series().time();
        List<Double> pulls = bump.series().bodyAcceleration();
        double first = 0;
        double last = 0;
        int periods = -1;
        for (int i = 1; i < times.size(); i++) {
            double before = pulls.get(i - 1);
            double after = pulls.get(i);
            if (times.get(i) > 0.5 && before < 0 && after >= 0) {
                last = times.get(i) - (times.get(i) - times.get(i - 1)) * after / (after - before);
                first = periods < 0 ? last : first;
                periods++;
            }
        }
        return new Computed().with("period_s", (last - first) / periods);
    }
}
