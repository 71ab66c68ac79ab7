package evenhand.answers;

import evenhand.car.End;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * One figure of an answer, declared once: JSON key, column of a CSV file, head and cell of a table.
 *
 * @param name the key without its unit, for instance {@code frontRoll}
 * @param words as in the head of a table: "roll of the front"
 * @param dimension what it measures
 * @param unit that answers for programs are in
 * @param perG whether it is said per g of lateral acceleration, where the unit does not say so itself
 * @param digits behind the decimal point in a table, in the dimension's metric unit
 * @param reading the value in SI; empty where there is none
 * @param <T> the part of an answer that the figure is read from
 */
public record Figure<T>(
        String name,
        String words,
        Dimension dimension,
        Unit unit,
        boolean perG,
        int digits,
        Function<T, OptionalDouble> reading) {

    /** A figure that always has a value, but for the quotient of two nothings. */
    public static <T> Figure<T> of(
            String name, String words, Dimension dimension, String unit, int digits, ToDoubleFunction<T> reading) {
        return new Figure<>(
                name,
                words,
                dimension,
                Unit.of(unit),
                false,
                digits,
                part -> OptionalDouble.of(reading.applyAsDouble(part)));
    }

    /** A figure that does not exist everywhere. */
    public static <T> Figure<T> ofOptional(
            String name,
            String words,
            Dimension dimension,
            String unit,
            int digits,
            Function<T, OptionalDouble> reading) {
        return new Figure<>(name, words, dimension, Unit.of(unit), false, digits, reading);
    }

    /** The same figure of a whole, read from the part that it may have. */
    public <W> Figure<W> within(Function<W, Optional<T>> part) {
        return new Figure<>(
                name,
                words,
                dimension,
                unit,
                perG,
                digits,
                whole -> part.apply(whole).map(reading).orElseGet(OptionalDouble::empty));
    }

    /** The same figure by another name. */
    public Figure<T> named(String otherName, String otherWords) {
        return new Figure<>(otherName, otherWords, dimension, unit, perG, digits, reading);
    }

    /** The same figure where it is said of which end it is: {@code bodyFrequency} becomes {@code frontBodyFrequency}. */
    public Figure<T> named(End end, String otherWords) {
        return named(end.key() + Character.toUpperCase(name.charAt(0)) + name.substring(1), otherWords);
    }

    /** The same figure, said per g. */
    public Figure<T> perEachG() {
        return new Figure<>(name, words, dimension, unit, true, digits, reading);
    }

    /** The value in SI. What is not finite does not exist. */
    public OptionalDouble si(T part) {
        OptionalDouble value = reading.apply(part);
        return value.isPresent() && Double.isFinite(value.getAsDouble()) ? value : OptionalDouble.empty();
    }

    /** The value in {@link #unit}, unrounded. */
    public OptionalDouble value(T part) {
        return in(unit, part);
    }

    /** The value in another unit of its dimension, unrounded. */
    public OptionalDouble in(Unit other, T part) {
        OptionalDouble si = si(part);
        return si.isPresent() ? OptionalDouble.of(other.fromSi(si.getAsDouble())) : si;
    }

    /** Its JSON key: the name and the unit, for instance {@code frontRoll_deg}. */
    public String key() {
        return key(unit);
    }

    /** The key for the value in another unit of its dimension. */
    public String key(Unit other) {
        String suffix = suffix(other);
        return name + (suffix.isEmpty() ? "" : "_" + suffix) + (perG ? "_per_g" : "");
    }

    /** The unit's symbol as it stands in a table: {@code N/g}. */
    public String symbol(Unit other) {
        return other.symbol() + (perG ? "/g" : "");
    }

    /** A unit as part of a key: {@code Nm_per_deg}, {@code m_per_s2}, {@code lbf_ft}; empty for a ratio. */
    static String suffix(Unit unit) {
        if (unit.dimension() == Dimension.RATIO) {
            return "";
        }
        String symbol = unit.symbol();
        StringBuilder suffix = new StringBuilder();
        for (int i = 0; i < symbol.length(); i++) {
            char c = symbol.charAt(i);
            switch (c) {
                case '*' -> suffix.append(symbol.charAt(i - 1) == 'N' && symbol.charAt(i + 1) == 'm' ? "" : "_");
                case '/' -> suffix.append("_per_");
                case '^', '(', ')' -> {}
                default -> suffix.append(c);
            }
        }
        return suffix.toString();
    }
}
