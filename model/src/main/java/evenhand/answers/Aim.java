package evenhand.answers;

import evenhand.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

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

    /** A size that is to be nothing comes so near to it, in parts of what is noticeable: right there it has an edge. */
    private static final double NOTHING = 0.2;

    /** This part of what is noticeable is the solver's rounding. */
    private static final double ROUNDING = 1e-6;

    public Aim {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("an aim at no number");
        }
    }

    /** One end is to go first: no number, but a yes. */
    public static Aim frontFirst() {
        return new Aim(new Judged(Criterion.FRONT_FIRST, OptionalDouble.empty()), Sense.AT_LEAST, 1);
    }

    /** Whether it is a yes or no, with nothing in between and no slope. */
    public boolean isYesOrNo() {
        return judged.criterion().equals(Criterion.FRONT_FIRST);
    }

    /** What a figure passes where the aim begins or ceases to be met: its value, or halfway between no and yes. */
    public double level() {
        return isYesOrNo() ? 0.5 : value;
    }

    /**
     * The figure that decides: of a bound that of the worse way round and circle, of an exact value the mean of all. None
     * where one of them has none.
     */
    public OptionalDouble figure(Answers answers) {
        List<Double> values = judged.everywhere(answers);
        if (values.isEmpty()) {
            return OptionalDouble.empty();
        }
        DoubleStream all = values.stream().mapToDouble(Double::doubleValue);
        return switch (sense) {
            case EXACTLY -> all.average();
            case AT_MOST -> all.max();
            case AT_LEAST -> all.min();
        };
    }

    /** The bends in which a car that meets the aim on the mean is further off than a driver would let pass. */
    public List<Answers.Bend> off(Answers answers) {
        List<Answers.Bend> off = new ArrayList<>();
        List<Double> values = judged.everywhere(answers);
        if (sense == Sense.EXACTLY && values.size() == answers.bends().size() && values.size() > 1) {
            for (int i = 0; i < values.size(); i++) {
                if (Math.abs(values.get(i) - value) > letPass()) {
                    off.add(answers.bends().get(i));
                }
            }
        }
        return off;
    }

    /** How far either way round may be off an exact aim that both meet on the mean: 0.3 deg/g, 1 %, else a hundredth of it. */
    private double letPass() {
        return switch (judged.criterion().dimension()) {
            case UNDERSTEER_GRADIENT -> Unit.of("deg/g").toSi(0.3);
            case RATIO -> 0.01;
            default -> Math.max(0.01 * Math.abs(value), judged.criterion().noticeable());
        };
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

    /** Whether a figure is at the aim's value, but for rounding. */
    public boolean touches(double figure) {
        return Math.abs(value - figure) <= ROUNDING * judged.criterion().noticeable();
    }

    /** Whether a figure meets the aim, but for rounding. */
    public boolean met(double figure) {
        return Math.abs(shortfall(figure))
                <= (isOfNothing() ? NOTHING : ROUNDING) * judged.criterion().noticeable();
    }

    /** Whether a size is to be zero, which it touches without passing it. */
    public boolean isOfNothing() {
        return value == 0 && sense != Sense.AT_LEAST && judged.criterion().isSize();
    }

    /** Whether a driver would call it met: nearer than what is noticeable to an exact value, or on the right side. */
    public boolean nearlyMet(double figure) {
        return Math.abs(shortfall(figure))
                <= (sense == Sense.EXACTLY ? 1 : ROUNDING) * judged.criterion().noticeable();
    }

    /** Whether a car meets it: on the mean or in the worse bend, and no bend further off than a driver would let pass. */
    public boolean holds(Answers answers) {
        OptionalDouble figure = figure(answers);
        return figure.isPresent() && met(figure.getAsDouble()) && off(answers).isEmpty();
    }

    /** Whether no figure can meet both. */
    public boolean contradicts(Aim other) {
        return judged.equals(other.judged) && !(met(other.value) || other.met(value));
    }
}
