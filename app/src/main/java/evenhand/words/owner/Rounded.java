package evenhand.words.owner;

import evenhand.answers.Criterion;
import evenhand.quantity.Unit;
import evenhand.words.InPrint;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.OptionalDouble;

/** Numbers with as many digits as their doubt leaves a meaning: "1.3 ± 0.9 deg/g", "14 ± 3 deg/g". */
public final class Rounded {
    /** A doubt that begins with less than this keeps a second digit, for the step from 1 to 2 is a large one. */
    private static final double SECOND_DIGIT = 3;

    private Rounded() {}

    /** A value with its doubt and its unit; without doubt as it is usually shown. */
    public static String value(Criterion criterion, double si, OptionalDouble doubt, Units units) {
        return withUnit(
                number(criterion, si, doubt, units)
                        + (isSeen(criterion, doubt, units) ? " ± " + doubt(criterion, doubt, units) : ""),
                units.of(criterion));
    }

    /** A value with its unit, rounded by its doubt. */
    public static String plain(Criterion criterion, double si, OptionalDouble doubt, Units units) {
        return withUnit(number(criterion, si, doubt, units), units.of(criterion));
    }

    /** The number alone, rounded by its doubt. */
    public static String number(Criterion criterion, double si, OptionalDouble doubt, Units units) {
        return Numbers.fixed(units.of(criterion).fromSi(si), digits(criterion, doubt, units));
    }

    /** The doubt alone, as a number. */
    public static String doubt(Criterion criterion, OptionalDouble doubt, Units units) {
        double shown = units.of(criterion).fromSi(doubt.orElse(0));
        return Numbers.fixed(shown, digits(criterion, doubt, units));
    }

    /** A doubt of nothing at all is not written. */
    private static boolean isSeen(Criterion criterion, OptionalDouble doubt, Units units) {
        return doubt.isPresent() && !doubt(criterion, doubt, units).matches("[0.]+");
    }

    private static int digits(Criterion criterion, OptionalDouble doubt, Units units) {
        int usual = units.digits(criterion);
        double size = doubt.isPresent() ? Math.abs(units.of(criterion).fromSi(doubt.getAsDouble())) : 0;
        if (size == 0) {
            return usual;
        }
        int first = (int) Math.floor(Math.log10(size));
        int digits = size / Math.pow(10, first) < SECOND_DIGIT ? 1 - first : -first;
        return Math.max(0, Math.min(usual, digits));
    }

    private static String withUnit(String number, Unit unit) {
        String symbol = InPrint.symbol(unit);
        return symbol.isEmpty() ? number : number + " " + symbol;
    }
}
