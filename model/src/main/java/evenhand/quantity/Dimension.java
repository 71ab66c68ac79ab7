package evenhand.quantity;

import java.util.List;

/** What kind of thing a number measures. Each has its SI unit, the units that may be written, and the ones for show. */
public enum Dimension {
    /** Mass; SI kg. */
    MASS("a mass", "kg", 1e5, "kg", "lb", "\"1380 kg\" or \"3042 lb\""),
    /** Length; SI m. */
    LENGTH("a length", "m", 100, "mm", "in", "\"1420 mm\" or \"55.9 in\""),
    /** Way that a car has run; SI m. */
    DISTANCE("a distance", "m", 1e10, "km", "mi", "\"48210 km\" or \"29956 mi\""),
    /** Force; SI N. */
    FORCE("a force", "N", 1e7, "N", "lbf", "\"3500 N\" or \"787 lbf\""),
    /** Force per travel, of a spring, stop or tyre; SI N/m. */
    STIFFNESS("a stiffness", "N/m", 1e10, "N/mm", "lbf/in", "\"24 N/mm\" or \"137 lbf/in\""),
    /** Side force per slip angle of a tyre; SI N/rad. */
    CORNERING_STIFFNESS("a cornering stiffness", "N/rad", 1e9, "N/deg", "lbf/deg", "\"1150 N/deg\" or \"259 lbf/deg\""),
    /** Moment of a force; SI N·m. */
    MOMENT("a moment", "N*m", 1e8, "N*m", "lbf*ft", "\"120 N*m\" or \"88.5 lbf*ft\""),
    /** Moment per angle of roll or twist; SI N·m/rad. */
    ROLL_STIFFNESS(
            "a roll stiffness", "N*m/rad", 1e10, "N*m/deg", "lbf*ft/deg", "\"210 N*m/deg\" or \"155 lbf*ft/deg\""),
    /** Angle; SI rad. */
    ANGLE("an angle", "rad", 100, "deg", "deg", "\"1.5 deg\" or \"0.0262 rad\""),
    /** Angle per lateral acceleration, of steer as of roll; SI rad per m/s². */
    UNDERSTEER_GRADIENT("an understeer gradient", "rad/(m/s^2)", 10, "deg/g", "deg/g", "\"2.5 deg/g\""),
    /** Acceleration; SI m/s². */
    ACCELERATION("an acceleration", "m/s^2", 1e4, "g", "g", "\"0.5 g\" or \"4.9 m/s^2\""),
    /** Speed; SI m/s. */
    SPEED("a speed", "m/s", 1e3, "km/h", "mph", "\"80 km/h\" or \"49.7 mph\""),
    /** Frequency; SI Hz. */
    FREQUENCY("a frequency", "Hz", 1e5, "Hz", "Hz", "\"1.4 Hz\""),
    /** Time; SI s. */
    TIME("a time", "s", 1e6, "s", "s", "\"0.5 s\""),
    /** Force per speed of a damper; SI N·s/m. */
    DAMPING("a damping rate", "N*s/m", 1e9, "N*s/m", "lbf*s/in", "\"1500 N*s/m\" or \"8.57 lbf*s/in\""),
    /** Pressure above the air's, or stress; SI Pa. */
    PRESSURE("a pressure", "Pa", 1e10, "bar", "psi", "\"2.1 bar\" or \"30.5 psi\""),
    /** Pressure per travel, of a valve that feels the load; SI Pa/m. */
    PRESSURE_PER_TRAVEL("a pressure per travel", "Pa/m", 1e12, "bar/mm", "bar/mm", "\"0.8 bar/mm\""),
    /** Speed of turning; SI rad/s. */
    ROTATION("a speed of turning", "rad/s", 1e4, "rpm", "rpm", "\"3200 rpm\""),
    /** Angle of steer per side force; SI rad/N. */
    FORCE_STEER("a steer angle per force", "rad/N", 1, "deg/kN", "deg/kN", "\"0.05 deg/kN\""),
    /** Angle of steer per aligning moment; SI rad/(N·m). */
    MOMENT_STEER("a steer angle per moment", "rad/(N*m)", 1, "deg/(kN*m)", "deg/(kN*m)", "\"3 deg/(kN*m)\""),
    /** Angle of steer per travel of a wheel; SI rad/m. */
    TRAVEL_STEER("a steer angle per travel", "rad/m", 100, "deg/m", "deg/m", "\"5 deg/m\""),
    /** Area; SI m². */
    AREA("an area", "m^2", 1e3, "m^2", "m^2", "\"0.75 m^2\""),
    /** Moment of inertia; SI kg·m². */
    INERTIA("a moment of inertia", "kg*m^2", 1e8, "kg*m^2", "kg*m^2", "\"2200 kg*m^2\""),
    /** A number without unit, or in %; 1. */
    RATIO("a ratio", "", 1e6, "", "", "\"0.55\" or \"55 %\"");

    private final String words;
    private final String jsonUnit;
    private final double largest;
    private final String metric;
    private final String imperial;
    private final String example;

    Dimension(String words, String jsonUnit, double largest, String metric, String imperial, String example) {
        this.words = words;
        this.jsonUnit = jsonUnit;
        this.largest = largest;
        this.metric = metric;
        this.imperial = imperial;
        this.example = example;
    }

    /** The name with its article, as it stands in a sentence: "a length". */
    public String words() {
        return words;
    }

    /** The units that may be written, metric before imperial. The first of RATIO is the plain number with the symbol "". */
    public List<Unit> units() {
        return Unit.ofDimension(this);
    }

    /** The unit for show to those who think in metric units. */
    public Unit metric() {
        return Unit.of(metric);
    }

    /** The unit for show to those who think in imperial units; the metric one where the trade has no other. */
    public Unit imperial() {
        return Unit.of(imperial);
    }

    /** The SI unit as text for answers, such as "N*m/rad"; empty for a ratio. */
    public String jsonUnit() {
        return jsonUnit;
    }

    /** How one is written, each example in quotes, for use in a message. */
    public String example() {
        return example;
    }

    /**
     * The largest magnitude that is read, in SI. It lies far beyond any car, so that it refuses only slips of the unit or of the
     * decimal point; what is merely unusual is for others to say.
     */
    public double largest() {
        return largest;
    }
}
