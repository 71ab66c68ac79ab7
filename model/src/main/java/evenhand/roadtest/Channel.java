package evenhand.roadtest;

import evenhand.quantity.Dimension;

/** What is read in a steady turn. */
public enum Channel {
    /** Angle from the mark on the rim, into the turn positive. */
    STEERING_WHEEL("steeringWheel", "steering wheel", true),
    /** Lean of the body against standing, outwards positive. */
    ROLL("roll", "lean", false),
    /** Sideslip, its sign as a left turn would have it. */
    SIDESLIP("sideslip", "sideslip", true);

    private final String key;
    private final String words;
    private final boolean needsCircle;

    Channel(String key, String words, boolean needsCircle) {
        this.key = key;
        this.words = words;
        this.needsCircle = needsCircle;
    }

    /** Name in files and answers. */
    public String key() {
        return key;
    }

    /** Name in sentences. */
    public String words() {
        return words;
    }

    public Dimension dimension() {
        return Dimension.ANGLE;
    }

    /** Whether it says nothing without the radius. */
    public boolean needsCircle() {
        return needsCircle;
    }
}
