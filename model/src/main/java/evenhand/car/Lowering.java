package evenhand.car;

import evenhand.quantity.InvalidValue;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A body let down by its perches: same links, springs and loads. Until the links' points are known, roll centres and
 * camber follow their slopes.
 */
final class Lowering {
    private Lowering() {}

    /** Refuses a {@code lowered} that moves the body further than any car allows. */
    static void require(Car.Sprung sprung, Air air, Axle front, Axle rear) {
        lowered(front, "front.lowered");
        lowered(rear, "rear.lowered");
        double mean = mean(sprung, front, rear);
        InvalidValue.require(
                mean < sprung.height() && (mean <= air.dragHeight().orElse(mean) || mean <= 0),
                front.lowered() > rear.lowered() ? "front.lowered" : "rear.lowered",
                "lets the body down below the ground");
    }

    private static double mean(Car.Sprung sprung, Axle front, Axle rear) {
        return front.lowered() * sprung.frontShare() + rear.lowered() * sprung.rearShare();
    }

    private static void lowered(Axle axle, String key) {
        try {
            Optional<Stops.Droop> droop = axle.settled().stops().droop();
            InvalidValue.require(
                    droop.isEmpty() || droop.get().travel() > 0 || axle.lowered() == 0,
                    key,
                    "raises the body by more than the travel of droopStop: the axle would hang on it");
        } catch (InvalidValue e) {
            throw e.component().equals(key) ? e : tooFar(key, e);
        }
    }

    private static InvalidValue tooFar(String key, InvalidValue why) {
        String what = why.component().equals("height") ? "the height of the roll centre" : why.component();
        return new InvalidValue(key, "moves the body further than it can go: " + what + " " + why.getMessage());
    }

    /**
     * The car at the height that its {@code lowered} values leave. The sprung centre of gravity sinks by the mean of
     * both ends at its own place, the whole car's by the sprung part of that.
     */
    static Car settle(Car car) {
        if (car.front().lowered() == 0 && car.rear().lowered() == 0) {
            return car;
        }
        Car.Sprung sprung = car.sprung();
        double mean = mean(sprung, car.front(), car.rear());
        Air air = car.air();
        return new Car(
                car.weights(),
                car.wheelbase(),
                car.cgHeight() - mean * sprung.mass() / car.weights().mass(),
                car.chassisTorsionalStiffness(),
                car.steering(),
                new Air(
                        air.dragArea(),
                        air.dragHeight().isPresent()
                                ? OptionalDouble.of(air.dragHeight().getAsDouble() - mean)
                                : air.dragHeight(),
                        air.frontLiftArea(),
                        air.rearLiftArea()),
                car.rollingResistance(),
                car.front().settled(),
                car.rear().settled(),
                car.drive(),
                car.pitchInertia(),
                car.seat(),
                car.sharedBrakes().rearSunk(car.rear().lowered()),
                car.mounts());
    }
}
