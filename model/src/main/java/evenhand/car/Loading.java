package evenhand.car;

import evenhand.quantity.InvalidValue;
import java.util.OptionalDouble;

/**
 * A car that has sunk under a load: masses and their heights by moments of mass, everything else as the axles' travel and
 * the tyres' deflection leave it. The body moves as a plane over its axles; plan positions stay.
 */
final class Loading {
    private final Car car; // at rest without the load, its lowered carried out
    private final LoadCase load;
    private final Sinking front;
    private final Sinking rear;
    private final double letDownInFront; // m, what lowered did to the seats
    private final double letDownBehind;

    private Loading(Car asRead, LoadCase load, Sinking front, Sinking rear) {
        car = asRead.settled();
        this.load = load;
        this.front = front;
        this.rear = rear;
        letDownInFront = asRead.front().lowered();
        letDownBehind = asRead.rear().lowered();
    }

    /** The car, or an {@link InvalidValue} where none can be so. */
    static Car settle(Car asRead, LoadCase load, Sinking front, Sinking rear) {
        return new Loading(asRead, load, front, rear).car();
    }

    private Car car() {
        Car.Sprung sprung = car.sprung();
        double drop = between(front.drop(), rear.drop(), sprung.behindFront());
        Weights weights = weights();
        double moment =
                sprung.mass() * (sprung.height() - drop) + unsprung(car.front(), front) + unsprung(car.rear(), rear);
        for (LoadCase.Added one : load.added()) {
            moment += one.mass() * (height(one) - between(front.drop(), rear.drop(), one.behindFrontAxle()));
        }
        Air air = car.air();
        return new Car(
                weights,
                car.wheelbase(),
                moment / weights.mass(),
                car.chassisTorsionalStiffness(),
                car.steering(),
                new Air(air.dragArea(), less(air.dragHeight(), drop), air.frontLiftArea(), air.rearLiftArea()),
                car.rollingResistance(),
                car.front().sunk(front),
                car.rear().sunk(rear),
                car.drive(),
                pitchInertia(sprung),
                car.seat(),
                car.sharedBrakes().rearSunk(rear.travel()),
                car.mounts());
    }

    /** A height of the body between its axles, or beyond them. */
    private double between(double inFront, double behind, double behindFrontAxle) {
        return inFront + (behind - inFront) * behindFrontAxle / car.wheelbase();
    }

    /** Height of an added mass before it sinks, m: its seat was let down with the body. */
    private double height(LoadCase.Added one) {
        return one.height() - between(letDownInFront, letDownBehind, one.behindFrontAxle());
    }

    private static double unsprung(Axle axle, Sinking sinking) {
        return axle.unsprung().mass() * (axle.unsprung().height() - sinking.squash());
    }

    private static OptionalDouble less(OptionalDouble height, double drop) {
        return height.isPresent() ? OptionalDouble.of(height.getAsDouble() - drop) : height;
    }

    /** Both wheels of an axle take half of what is added: it stands in the middle. */
    private Weights weights() {
        double inFront = load.mass(End.FRONT, car.wheelbase());
        double behind = load.mass(End.REAR, car.wheelbase());
        if (car.weights() instanceof Weights.Corners corners) {
            return new Weights.Corners(
                    corners.frontLeft() + inFront / 2,
                    corners.frontRight() + inFront / 2,
                    corners.rearLeft() + behind / 2,
                    corners.rearRight() + behind / 2);
        }
        double mass = car.weights().mass();
        return new Weights.Whole(
                mass + load.mass(), (mass * car.weights().frontFraction() + inFront) / (mass + load.mass()));
    }

    /** About the new common centre, the added masses taken as points (parallel axes). */
    private OptionalDouble pitchInertia(Car.Sprung sprung) {
        if (car.pitchInertia().isEmpty()) {
            return car.pitchInertia();
        }
        double mass = sprung.mass() + load.mass();
        double x = sprung.mass() * sprung.behindFront();
        double z = sprung.mass() * sprung.height();
        for (LoadCase.Added one : load.added()) {
            x += one.mass() * one.behindFrontAxle();
            z += one.mass() * height(one);
        }
        x /= mass;
        z /= mass;
        double inertia = car.pitchInertia().getAsDouble()
                + sprung.mass() * square(sprung.behindFront() - x, sprung.height() - z);
        for (LoadCase.Added one : load.added()) {
            inertia += one.mass() * square(one.behindFrontAxle() - x, height(one) - z);
        }
        return OptionalDouble.of(inertia);
    }

    private static double square(double along, double up) {
        return along * along + up * up;
    }
}
