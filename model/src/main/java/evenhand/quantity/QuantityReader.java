package evenhand.quantity;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/**
 * Reads one text. It is made plain first (one sign for each group of look-alikes), parted at the ±, and each side read from left
 * to right: number, unit, and for feet a second number with inches. No step goes back, so time grows with the length only.
 */
final class QuantityReader {
    private static final double INCHES_PER_FOOT = 12;

    private static final Pattern INCH_MARK = Pattern.compile("\"|″|”|''");
    private static final Pattern FOOT_MARK = Pattern.compile("['′’]");
    /** Of "2 660.5 mm", which would be refused next. */
    private static final Pattern BLANK_IN_NUMBER = Pattern.compile("(?<=[0-9]) (?=[0-9]{3}(?![0-9/]))");

    private static final Pattern BLANKS = Pattern.compile(" +");

    private static final Unit NO_UNIT = Unit.of("");
    private static final Unit PERCENT = Unit.of("%");
    private static final Unit INCH = Unit.of("in");
    private static final Unit FOOT = Unit.of("ft");

    private final String typed;
    private final String read;
    private final Dimension expected;
    private static final double ROUNDING = 1e-15;

    private final double largest;

    QuantityReader(String typed, Dimension expected, double largest) {
        this(typed, typed, expected, largest);
    }

    /** Reads something else than what was typed, of which alone it speaks. */
    QuantityReader(String typed, String read, Dimension expected, double largest) {
        this.typed = typed;
        this.read = read;
        this.expected = expected;
        this.largest = largest;
    }

    /** One side of the ±: so many of a unit, in the sense of the text; NO_UNIT where none was written. */
    private record Side(double number, Unit unit, String text) {
        double si(Unit ofBareNumber) {
            return unit.equals(NO_UNIT) ? ofBareNumber.toSi(number) : unit.toSi(number);
        }
    }

    Quantity read() throws QuantityException {
        String plain = Unit.plain(read).replace("+/-", "±").replace("+-", "±");
        if (plain.isEmpty()) {
            throw QuantityException.empty(expected);
        }
        refuseCommas(plain);
        refuseMarks(plain);
        int plusMinus = plain.indexOf('±');
        if (plusMinus < 0) {
            Side value = side(plain, () -> QuantityException.noNumber(typed, expected));
            return quantity(value, dimensionChecked(value.unit()), 0);
        }
        String after = plain.substring(plusMinus + 1).strip();
        if (after.indexOf('±') >= 0) {
            throw QuantityException.secondTolerance(typed);
        }
        Side value = side(plain.substring(0, plusMinus).strip(), () -> QuantityException.noNumber(typed, expected));
        if (after.startsWith("-")) {
            throw QuantityException.negativeTolerance(typed);
        }
        return withTolerance(value, side(after, () -> QuantityException.noNumberInTolerance(typed)));
    }

    private Quantity withTolerance(Side value, Side tolerance) throws QuantityException {
        boolean shareOfValue = tolerance.unit().equals(PERCENT) && !value.unit().equals(PERCENT);
        Unit unit = dimensionChecked(value.unit().equals(NO_UNIT) && !shareOfValue ? tolerance.unit() : value.unit());
        if (shareOfValue) {
            return quantity(value, unit, Math.abs(value.si(unit)) * PERCENT.toSi(tolerance.number()));
        }
        if (!tolerance.unit().equals(NO_UNIT) && tolerance.unit().dimension() != expected) {
            throw QuantityException.wrongTolerance(
                    tolerance.text(), tolerance.unit().dimension(), expected);
        }
        return quantity(value, unit, tolerance.si(unit));
    }

    private Unit dimensionChecked(Unit unit) throws QuantityException {
        if (unit.dimension() == expected) {
            return unit;
        }
        throw unit.equals(NO_UNIT)
                ? QuantityException.needsUnit(expected)
                : QuantityException.wrongDimension(typed, unit.dimension(), expected);
    }

    private Quantity quantity(Side value, Unit unit, double tolerance) throws QuantityException {
        double si = value.si(unit);
        if (!Double.isFinite(si) || !Double.isFinite(tolerance)) {
            throw QuantityException.notFinite(typed);
        }
        // the bound itself may have been written in a unit that rounds it
        double bound = largest * (1 + ROUNDING);
        if (Math.abs(si) > bound || tolerance > bound) {
            throw QuantityException.tooGreat(typed, expected, largest);
        }
        return new Quantity(si + 0.0, tolerance, expected, typed, unit); // + 0.0 makes -0.0 a plain zero
    }

    private Side side(String text, Supplier<QuantityException> noNumber) throws QuantityException {
        boolean negative = text.startsWith("-");
        int start = afterBlanks(text, negative || text.startsWith("+") ? 1 : 0);
        refuseWordsForInfinity(text, start);
        int end = endOfMagnitude(text, start);
        if (end == start) {
            throw noNumber.get();
        }
        double number = magnitude(text, start, end);
        boolean fraction = text.substring(start, end).indexOf('/') >= 0;
        Unit unit;
        int inches = startOfInches(text, end);
        if (inches >= 0) {
            int endOfInches = endOfMagnitude(text, inches);
            number = number * INCHES_PER_FOOT + magnitude(text, inches, endOfInches);
            unit = unit(text.substring(endOfInches).strip());
            if (!unit.equals(INCH)) {
                throw QuantityException.inchesExpected(typed);
            }
        } else {
            refuseSecondNumber(text, start, end);
            unit = unit(text.substring(end).strip());
            // A fraction without unit is left to the other side of the ±: "55 29/32 ± 1/32 in".
            boolean inchesPossible =
                    unit.equals(INCH) || unit.equals(FOOT) || (unit.equals(NO_UNIT) && expected == Dimension.LENGTH);
            if (fraction && !inchesPossible) {
                throw QuantityException.fractionNotInInches(typed, expected);
            }
        }
        return new Side(negative ? -number : number, unit, text);
    }

    /** Where the inches of "5 ft 3.5 in" begin, or -1 if what follows the first number is not feet and another number. */
    private static int startOfInches(String text, int endOfNumber) {
        int feet = afterBlanks(text, endOfNumber);
        if (!text.startsWith(FOOT.symbol(), feet)) {
            return -1;
        }
        int next = afterBlanks(text, feet + FOOT.symbol().length());
        return endOfMagnitude(text, next) > next ? next : -1;
    }

    /** End of a number, a fraction, or a whole number with a fraction after blanks; start itself if there is none of them. */
    private static int endOfMagnitude(String text, int start) {
        int whole = afterDigits(text, start);
        if (whole > start) {
            int end = endOfFraction(text, start);
            if (end > start) {
                return end;
            }
            int second = afterBlanks(text, whole);
            end = endOfFraction(text, second);
            if (second > whole && end > second) {
                return end;
            }
        }
        return endOfNumber(text, start);
    }

    /** End of "29/32", or start if there is no fraction there. */
    private static int endOfFraction(String text, int start) {
        int bar = afterDigits(text, start);
        if (bar == start || bar == text.length() || text.charAt(bar) != '/') {
            return start;
        }
        int end = afterDigits(text, bar + 1);
        return end > bar + 1 ? end : start;
    }

    /** End of "12", "1.2", ".5", "1." or "1.2e-3", without sign, or start if there is no number there. */
    private static int endOfNumber(String text, int start) {
        int end = afterDigits(text, start);
        int digits = end - start;
        if (end < text.length() && text.charAt(end) == '.') {
            int point = end + 1;
            end = afterDigits(text, point);
            digits += end - point;
        }
        if (digits == 0) {
            return start;
        }
        if (end < text.length() && (text.charAt(end) == 'e' || text.charAt(end) == 'E')) {
            int exponent = end + 1;
            if (exponent < text.length() && (text.charAt(exponent) == '-' || text.charAt(exponent) == '+')) {
                exponent++;
            }
            int endOfExponent = afterDigits(text, exponent);
            if (endOfExponent > exponent) {
                return endOfExponent;
            }
        }
        return end;
    }

    private double magnitude(String text, int start, int end) throws QuantityException {
        String part = text.substring(start, end);
        int bar = part.indexOf('/');
        if (bar < 0) {
            return finite(Double.parseDouble(part));
        }
        int blank = part.indexOf(' ');
        double whole = blank < 0 ? 0 : Double.parseDouble(part.substring(0, blank));
        double above = Double.parseDouble(part.substring(blank + 1, bar).strip());
        double below = Double.parseDouble(part.substring(bar + 1));
        if (below == 0) {
            throw QuantityException.badFraction(typed);
        }
        return finite(whole + finite(above) / finite(below));
    }

    private double finite(double number) throws QuantityException {
        if (!Double.isFinite(number)) {
            throw QuantityException.notFinite(typed);
        }
        return number;
    }

    private void refuseWordsForInfinity(String text, int start) throws QuantityException {
        String word = text.substring(start, Math.min(text.length(), start + "infinity".length()))
                .toLowerCase(Locale.ROOT);
        if (word.startsWith("nan") || word.startsWith("inf") || word.startsWith("∞")) {
            throw QuantityException.notFinite(typed);
        }
    }

    /** A digit after the number: thousands parted by a blank, or a unit left out. Neither is guessed at. */
    private void refuseSecondNumber(String text, int start, int end) throws QuantityException {
        int second = afterBlanks(text, end);
        int endOfSecond = afterDigits(text, second);
        boolean point = second < text.length() && text.charAt(second) == '.';
        if (endOfSecond == second && !point) {
            return;
        }
        boolean thousands = second > end
                && afterDigits(text, start) == end
                && end - start <= 3
                && endOfSecond - second == 3
                && (endOfSecond == text.length() || text.charAt(endOfSecond) != ' ' || !isDigit(text, endOfSecond + 1));
        throw thousands
                ? QuantityException.blankInNumber(text.substring(0, end) + text.substring(second))
                : QuantityException.secondNumber(typed, expected);
    }

    private Unit unit(String written) throws QuantityException {
        Optional<Unit> known = Unit.find(written);
        if (known.isPresent()) {
            return known.get();
        }
        int blank = written.indexOf(' ');
        if (blank > 0) {
            Optional<Unit> first = Unit.find(written.substring(0, blank));
            if (first.isPresent()) {
                throw QuantityException.afterUnit(
                        typed, first.get(), written.substring(blank).strip());
            }
        }
        throw MeantUnit.refusal(typed, written, expected);
    }

    /** A comma before a digit is an error whose message shows the text without it, or both texts that it can mean. */
    private void refuseCommas(String plain) throws QuantityException {
        StringBuilder asDecimal = new StringBuilder(plain.length());
        StringBuilder asThousands = new StringBuilder(plain.length());
        boolean decimal = false;
        boolean thousands = false;
        boolean doubtful = false;
        for (int i = 0; i < plain.length(); ) {
            int end = i;
            while (end < plain.length() && (isDigit(plain, end) || isMark(plain, end))) {
                end++;
            }
            if (end == i) {
                asDecimal.append(plain.charAt(i));
                asThousands.append(plain.charAt(i));
                i++;
                continue;
            }
            String run = plain.substring(i, end);
            int comma = run.lastIndexOf(',');
            boolean single = comma == run.indexOf(',');
            int point = run.lastIndexOf('.');
            if (comma < 0 || !isDigit(run, comma + 1)) {
                asDecimal.append(run);
                asThousands.append(run);
            } else if (!single || point > comma) {
                thousands = true;
                asDecimal.append(run.replace(",", ""));
                asThousands.append(run.replace(",", ""));
            } else {
                decimal = true;
                boolean either =
                        point < 0 && comma >= 1 && comma <= 3 && run.charAt(0) != '0' && run.length() - comma == 4;
                doubtful |= either;
                String mended = run.replace(".", "").replace(',', '.');
                asDecimal.append(mended);
                asThousands.append(either ? run.replace(",", "") : mended);
            }
            i = end;
        }
        if (doubtful) {
            throw QuantityException.doubtfulComma(asDecimal.toString(), asThousands.toString());
        }
        if (decimal) {
            throw QuantityException.decimalComma(
                    BLANK_IN_NUMBER.matcher(asDecimal).replaceAll(""));
        }
        if (thousands) {
            throw QuantityException.commaBetweenThousands(asDecimal.toString());
        }
    }

    /** 5' 3" is an error whose message shows it in ft and in, where those marks are all that is wrong. */
    private void refuseMarks(String plain) throws QuantityException {
        if (expected != Dimension.LENGTH) {
            return;
        }
        String words =
                FOOT_MARK.matcher(INCH_MARK.matcher(plain).replaceAll(" in ")).replaceAll(" ft ");
        if (words.equals(plain)) {
            return;
        }
        String mended = BLANKS.matcher(words).replaceAll(" ").strip();
        try {
            new QuantityReader(mended, expected, largest).read();
        } catch (QuantityException more) {
            return; // said by its own message
        }
        throw QuantityException.marks(mended);
    }

    private static boolean isMark(String text, int i) {
        return text.charAt(i) == ',' || text.charAt(i) == '.';
    }

    private static boolean isDigit(String text, int i) {
        return i < text.length() && text.charAt(i) >= '0' && text.charAt(i) <= '9';
    }

    private static int afterDigits(String text, int start) {
        int i = start;
        while (isDigit(text, i)) {
            i++;
        }
        return i;
    }

    private static int afterBlanks(String text, int start) {
        int i = start;
        while (i < text.length() && text.charAt(i) == ' ') {
            i++;
        }
        return i;
    }
}
