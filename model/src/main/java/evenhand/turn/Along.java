package evenhand.turn;

/**
 * What changes the speed for a moment while the car turns.
 *
 * @param acceleration al along the path, forwards positive, m/s²
 * @param by what does it
 */
public record Along(double acceleration, By by) {
    /** What gives the force. */
    public enum By {
        /** The driven axle: power, or the engine's braking. */
        ENGINE("engine"),
        /** All brakes, the clutch down. */
        BRAKES("brakes");

        private final String key;

        By(String key) {
            this.key = key;
        }

        /** Name in answers. */
        public String key() {
            return key;
        }
    }

    /** The steady turn. */
    public static final Along NONE = new Along(0, By.ENGINE);

    public Along {
        if (by == By.BRAKES && !(acceleration < 0)) {
            throw new IllegalArgumentException("brakes only slow");
        }
    }

    /** Whether the speed stays. */
    public boolean isSteady() {
        return acceleration == 0;
    }

    boolean byBrakes() {
        return by == By.BRAKES;
    }
}
