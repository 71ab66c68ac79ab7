package evenhand.quantity;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A measured value as a person wrote it.
 *
 * @param si the value, in the SI unit of its dimension
 * @param tolerance half-width that the person would bet 20 to 1 on (two standard deviations), SI; 0 if none was given
 * @param dimension what it measures
 * @param text as typed
 * @param unit that it was typed in; of "5 ft 3.5 in" the inch; of a plain ratio the one with the empty symbol
 */
public record Quantity(double si, double tolerance, Dimension dimension, String text, Unit unit) {
    /** Digits that tell any two numbers of practice apart, and hide the noise of binary arithmetic in the 16th and 17th. */
    private static final int CLEAN_DIGITS = 15;
    /** Digits that tell any two doubles apart. */
    private static final int ALL_DIGITS = 17;

    public Quantity {
        if (!Double.isFinite(si) || !Double.isFinite(tolerance) || tolerance < 0) {
            throw new IllegalArgumentException(
                    "value " + si + " and tolerance " + tolerance + " must be finite, the latter not below 0");
        }
        if (unit.dimension() != dimension) {
            throw new IllegalArgumentException("\"" + unit.symbol() + "\" is no unit of " + dimension.words());
        }
    }

    /** Whether a tolerance was written, be it zero. */
    public boolean saysTolerance() {
        return tolerance > 0 || text.indexOf('±') >= 0 || text.contains("+/") || text.contains("+-");
    }

    /** Whether a tolerance was given that is not zero. */
    public boolean hasTolerance() {
        return tolerance > 0;
    }

    /**
     * Reads text such as "1420 mm", "24 N/mm ± 5 %", "520 ± 20 mm", "5 ft 3.5 in" or "55 29/32 in".
     *
     * <p>A tolerance without unit has the value's, and a value without unit the tolerance's. A tolerance in % is a share of the
     * value, except beside a value in %: "55 % ± 2 %" is from 53 % to 57 %.
     *
     * @throws QuantityException if the text is not a quantity of the expected dimension, or greater than any car's
     */
    public static Quantity parse(String text, Dimension expected) throws QuantityException {
        return parse(text, expected, expected.largest());
    }

    /**
     * Reads text as {@link #parse(String, Dimension)} does, for a quantity that is not a part of a car, such as the radius of a
     * turn.
     *
     * @param largest greatest magnitude to be accepted, SI, instead of the greatest a car can have
     * @throws QuantityException if the text is not a quantity of the expected dimension, or greater
     */
    public static Quantity parse(String text, Dimension expected, double largest) throws QuantityException {
        return new QuantityReader(text, expected, largest).read();
    }

    /**
     * Reads a tolerance that stands alone, such as "± 1 deg": a quantity of nothing that may be off by so much.
     *
     * @throws QuantityException if the text is not a tolerance of the expected dimension
     */
    public static Quantity parseTolerance(String text, Dimension expected) throws QuantityException {
        String plain = text.strip();
        boolean marked = plain.startsWith("±") || plain.startsWith("+");
        Quantity whole =
                new QuantityReader(text, (marked ? "0 " : "0 ± ") + plain, expected, expected.largest()).read();
        return new Quantity(0, whole.tolerance(), expected, text, whole.unit());
    }

    /**
     * A quantity without tolerance, with a text in this unit that is as short as can be. Its {@code si} is what the text reads
     * as, so that a file written and read again gives the same answers; it differs from the value given by at most one unit in
     * the last place, where that makes the text shorter ("275 mm" for 0.255 + 0.02) or where no number in this unit comes nearer.
     *
     * @param si value in SI
     * @throws IllegalArgumentException if the value is not finite, in SI or in the unit
     */
    public static Quantity of(double si, Unit unit) {
        double number = unit.fromSi(si);
        if (!Double.isFinite(si) || !Double.isFinite(number)) {
            throw new IllegalArgumentException("not a finite value: " + si);
        }
        for (int digits = 1; digits <= CLEAN_DIGITS; digits++) {
            double rounded =
                    new BigDecimal(number).round(new MathContext(digits)).doubleValue();
            if (Math.abs(unit.toSi(rounded) - si) <= Math.ulp(si)) {
                return written(rounded, unit);
            }
        }
        double nearest = number;
        for (double candidate : new double[] {Math.nextDown(number), Math.nextUp(number)}) {
            if (Math.abs(unit.toSi(candidate) - si) < Math.abs(unit.toSi(nearest) - si)) {
                nearest = candidate;
            }
        }
        return written(nearest, unit);
    }

    private static Quantity written(double number, Unit unit) {
        String text = numeral(number) + (unit.symbol().isEmpty() ? "" : " " + unit.symbol());
        return new Quantity(unit.toSi(number) + 0.0, 0, unit.dimension(), text, unit); // + 0.0 makes -0.0 a plain zero
    }

    /** The shortest decimal that reads back as this double; with an exponent only where zeros would outnumber the digits. */
    static String numeral(double number) {
        BigDecimal exact = new BigDecimal(number);
        BigDecimal decimal = exact;
        for (int digits = 1; digits <= ALL_DIGITS; digits++) {
            decimal = exact.round(new MathContext(digits));
            if (decimal.doubleValue() == number) {
                break;
            }
        }
        decimal = decimal.stripTrailingZeros();
        int exponent = decimal.precision() - decimal.scale() - 1;
        if (decimal.signum() == 0 || (exponent >= -5 && exponent <= 8)) {
            return decimal.toPlainString();
        }
        return decimal.scaleByPowerOfTen(-exponent).stripTrailingZeros().toPlainString() + "e" + exponent;
    }
}
