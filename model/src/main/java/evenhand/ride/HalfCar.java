package evenhand.ride;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.InertiaEstimate;

/**
 * The body on both its axles, seen from the side, linear about its rest: heave, pitch and two unsprung masses. The same
 * road runs under both axles, the rear one later by L/V.
 *
 * <pre>
 *  ms·(bs·zf'' + as·zr'')/L = Ff + Fr     I·(zr'' − zf'')/L = bs·Fr − as·Ff
 *  F = 2·(ks·(w − z) + c·(w' − z'))       2·mu·w'' = 2·kt·(r − w) − F
 * </pre>
 * zf, zr the body above its axles, w wheels, r road, up positive, from rest; as, bs from the sprung centre of gravity to
 * the axles. Both wheels of an axle move together. Solved for the ends, {@code F = M·z''} with
 * <pre>  M = [ms·bs² + I, ms·as·bs − I; ms·as·bs − I, ms·as² + I]/L²  </pre>
 * so that each end is a quarter car by itself where I = ms·as·bs.
 *
 * <p>Source: Gillespie 1992 ch. 5; Wong 2008 ch. 7.
 *
 * @param mass ms, kg
 * @param inertia I in pitch about the sprung centre of gravity, kg·m²
 * @param toFront as, m
 * @param toRear bs, m
 * @param front one wheel of the front axle: unsprung mass, wheel rate, tyre and damper count
 * @param rear of the rear axle
 */
public record HalfCar(double mass, double inertia, double toFront, double toRear, QuarterCar front, QuarterCar rear) {
    public HalfCar {
        if (!(mass > 0 && inertia > 0 && toFront + toRear > 0)) {
            throw new IllegalArgumentException("mass, inertia and wheelbase must be above zero");
        }
    }

    /** A car at its ride height on its quarter cars. */
    static HalfCar of(Car car, QuarterCar front, QuarterCar rear) {
        Car.Sprung sprung = car.sprung();
        return new HalfCar(
                sprung.mass(),
                InertiaEstimate.pitch(car),
                sprung.behindFront(),
                car.wheelbase() - sprung.behindFront(),
                front,
                rear);
    }

    /** L, m. */
    public double wheelbase() {
        return toFront + toRear;
    }

    QuarterCar end(End end) {
        return end == End.FRONT ? front : rear;
    }

    /** What of the body each of an axle's two wheels has to move when the other axle's body stands still, kg. */
    double massOver(End end) {
        double away = end == End.FRONT ? toRear : toFront;
        return (mass * away * away + inertia) / (2 * wheelbase() * wheelbase());
    }

    /** What one end's movement asks of the other, for one wheel of each, kg; zero where the ends move by themselves. */
    double massBetween() {
        return (mass * toFront * toRear - inertia) / (2 * wheelbase() * wheelbase());
    }
}
