package evenhand.car;

/**
 * A body let down by its perches: same links, springs and loads. Until the links' points are known, roll centres and
 * camber follow their slopes.
 */
final class Lowering {
    private Lowering() {}

    /** The stops of an axle after the body went down by {@code d} m: less gap in bump, more travel in droop. */
    static Stops stops(Stops stops, double d) {
        return new Stops(
                stops.bump().map(bump -> new Stops.Bump(bump.gap() - d, bump.curve(), bump.base())),
                stops.droop().map(droop -> new Stops.Droop(droop.travel() + d, droop.rate(), droop.base())),
                stops.metal().map(metal -> new Stops.Metal(metal.gap() - d, metal.base())));
    }

    /**
     * The car at the height that its {@code lowered} values leave. The sprung centre of gravity sinks by the mean of
     * both ends at its own place, the whole car's by the sprung part of that.
     */
    static Car settle(Car car) {
        double front = car.front().lowered();
        double rear = car.rear().lowered();
        if (front == 0 && rear == 0) {
            return car;
        }
        Car.Sprung sprung = car.sprung();
        double mean = front * sprung.frontShare() + rear * sprung.rearShare();
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
                                ? java.util.OptionalDouble.of(air.dragHeight().getAsDouble() - mean)
                                : air.dragHeight(),
                        air.frontLiftArea(),
                        air.rearLiftArea()),
                car.rollingResistance(),
                car.front().settled(),
                car.rear().settled(),
                car.drive(),
                car.pitchInertia());
    }
}
