package evenhand.answers;

/**
 * What a car is to achieve.
 *
 * @param judged the figure, at its pace
 * @param value SI
 */
public record Aim(Judged judged, Sense sense, double value) {
    /** On which side of the value an aim is met. */
    public enum Sense {
        EXACTLY,
        AT_MOST,
        AT_LEAST
    }

    /** This part of what is noticeable is the solver's rounding. */
    private static final double ROUNDING = 1e-6;

    public Aim {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("an aim at no number");
        }
    }

    /** What is to be added to a figure for the aim to be met, SI; zero where it is. */
    public double shortfall(double figure) {
        double difference = value - figure;
        return switch (sense) {
            case EXACTLY -> difference;
            case AT_MOST -> Math.min(0, difference);
            case AT_LEAST -> Math.max(0, difference);
        };
    }

    /** Whether a figure meets the aim, but for rounding. */
    public boolean met(double figure) {
        return Math.abs(shortfall(figure)) <= ROUNDING * judged.criterion().noticeable();
    }

    /** Whether a driver would call it met: nearer than what is noticeable to an exact value, or on the right side. */
    public boolean nearlyMet(double figure) {
        return Math.abs(shortfall(figure))
                <= (sense == Sense.EXACTLY ? 1 : ROUNDING) * judged.criterion().noticeable();
    }

    /** Whether no figure can meet both. */
    public boolean contradicts(Aim other) {
        return judged.equals(other.judged) && !(met(other.value) || other.met(value));
    }
}
