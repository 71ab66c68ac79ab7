package evenhand.car;

/**
 * Moments of inertia that hardly a shop can measure, estimated where a car does not give them. They move the pitch
 * frequency and the tramp of a live axle, and nothing else.
 */
public final class InertiaEstimate {
    /** k²/(ab) of a sprung mass in pitch: cars have some 0.8 to 1. Common practice, no source. */
    private static final double PITCH_DYNAMIC_INDEX = 0.9;

    /** Part of a live axle's mass that sits at its wheels: wheels, tyres, brakes. Common practice, no source. */
    private static final double AT_THE_WHEELS = 0.6;

    /** How pitch inertia is estimated, in words. */
    public static final String PITCH_RULE =
            "from the sprung mass and its distances from the axles, dynamic index 0.9, ± 20 %;"
                    + " common practice, no source";

    /** How a live axle's roll inertia is estimated, in words. */
    public static final String ROLL_RULE =
            "from the unsprung mass: 60 % of it at the wheels, the rest spread evenly between them,"
                    + " ± 30 %; common practice, no source";

    /** Half-width of the pitch estimate, two standard deviations, over its value. */
    public static final double PITCH_TOLERANCE = 0.2;

    /** The same of a live axle's roll inertia. */
    public static final double ROLL_TOLERANCE = 0.3;

    private InertiaEstimate() {}

    /** Pitch inertia of the sprung mass about its own centre, kg·m²: that of the car, or 0.9·ms·as·bs. */
    public static double pitch(Car car) {
        if (car.pitchInertia().isPresent()) {
            return car.pitchInertia().getAsDouble();
        }
        Car.Sprung sprung = car.sprung();
        double ahead = sprung.behindFront();
        return PITCH_DYNAMIC_INDEX * sprung.mass() * ahead * (car.wheelbase() - ahead);
    }

    /**
     * Inertia of a whole live axle about the car's long axis through its middle, kg·m²: that of the axle, or
     * mu·(0.6·(t/2)² + 0.4·t²/12).
     */
    public static double roll(Axle.Live axle) {
        double square = axle.track() * axle.track();
        return axle.rollInertia()
                .orElse(axle.unsprung().mass() * square * (AT_THE_WHEELS / 4 + (1 - AT_THE_WHEELS) / 12));
    }
}
