package evenhand.quantity;

import static java.util.stream.Collectors.joining;

import java.util.List;

/** A text is not the quantity that belongs there. The message says what is wrong and how to mend it, in one line, without the place. */
public final class QuantityException extends Exception {
    private static final long serialVersionUID = 1L;

    /** Longest piece of foreign text in a message, in characters; enough to recognise it by. */
    private static final int LONGEST_QUOTE = 60;

    /** The message up to its example, which ends it; the whole of it where it shows none. */
    private final String opening;

    private final boolean showsExample;

    private QuantityException(String message) {
        super(message);
        opening = message;
        showsExample = false;
    }

    /** A message that ends with an example of what belongs there. */
    private QuantityException(String opening, Dimension expected) {
        super(opening + expected.example());
        this.opening = opening;
        showsExample = true;
    }

    /** The message with an example of the place at hand, where it shows one; the dimension's own is of a part of a car. */
    public String message(String example) {
        return showsExample ? opening + example : opening;
    }

    /** A number stands where a quantity with a unit belongs. For bare JSON numbers too. */
    public static QuantityException needsUnit(Dimension expected) {
        return new QuantityException(
                "needs a " + (expected == Dimension.RATIO ? "number" : "unit") + ", for example ", expected);
    }

    static QuantityException empty(Dimension expected) {
        return new QuantityException("is empty; write " + expected.words() + ", for example ", expected);
    }

    static QuantityException noNumber(String text, Dimension expected) {
        return new QuantityException(
                quoted(text) + " does not begin with a number; write " + expected.words() + ", for example ", expected);
    }

    static QuantityException noNumberInTolerance(String text) {
        return new QuantityException(
                quoted(text) + " has no number after the ±; write for example \"± 5 %\", or leave it out");
    }

    static QuantityException secondTolerance(String text) {
        return new QuantityException(quoted(text) + " has more than one ±; write one tolerance, the half-width");
    }

    static QuantityException negativeTolerance(String text) {
        return new QuantityException(
                quoted(text) + " has a negative tolerance; write the half-width without a sign after the ±");
    }

    static QuantityException notFinite(String text) {
        return new QuantityException(quoted(text) + " is not a finite number; write the number that was measured");
    }

    static QuantityException decimalComma(String mended) {
        return new QuantityException("has a decimal comma; write " + quoted(mended));
    }

    static QuantityException commaBetweenThousands(String mended) {
        return new QuantityException("has a comma between thousands; write " + quoted(mended));
    }

    static QuantityException doubtfulComma(String asDecimal, String asThousands) {
        return new QuantityException("has a decimal comma; write " + quoted(asDecimal) + ", or " + quoted(asThousands)
                + " if the comma parts the thousands");
    }

    static QuantityException blankInNumber(String mended) {
        return new QuantityException("has a blank inside the number; write " + quoted(mended));
    }

    static QuantityException secondNumber(String text, Dimension expected) {
        return new QuantityException(
                quoted(text) + " has a second number where its unit belongs; write for example ", expected);
    }

    static QuantityException fractionNotInInches(String text, Dimension expected) {
        return new QuantityException(
                quoted(text) + " has a fraction, which only in and ft can have; write a decimal, for example ",
                expected);
    }

    static QuantityException badFraction(String text) {
        return new QuantityException(
                quoted(text) + " has a fraction that cannot be read; write for example \"55 29/32 in\"");
    }

    static QuantityException inchesExpected(String text) {
        return new QuantityException(
                quoted(text) + " has a number after the feet that is not in inches; write for example \"5 ft 3.5 in\"");
    }

    static QuantityException afterUnit(String text, Unit unit, String rest) {
        return new QuantityException(
                quoted(text) + " has " + quoted(rest) + " after the unit " + quoted(unit.symbol()) + "; leave it out");
    }

    static QuantityException wrongDimension(String text, Dimension found, Dimension expected) {
        return new QuantityException(
                quoted(text) + " is " + found.words() + ", but " + expected.words() + " belongs here, for example ",
                expected);
    }

    static QuantityException wrongTolerance(String tolerance, Dimension found, Dimension expected) {
        return new QuantityException("has the tolerance " + quoted(tolerance) + ", which is " + found.words() + ", but "
                + expected.words() + " or % belongs there, for example \"± 5 %\"");
    }

    static QuantityException forceFromMass(String written, Unit meant) {
        return new QuantityException(
                "has the unit " + quoted(written) + ", of a mass instead of a force; write " + quoted(meant.symbol()));
    }

    static QuantityException otherName(String written, Unit meant) {
        return new QuantityException("has the unit " + quoted(written) + "; write " + quoted(meant.symbol()));
    }

    static QuantityException marks(String mended) {
        return new QuantityException("has feet or inches by their marks; write " + quoted(mended));
    }

    static QuantityException ratioToOne(String text, String rest) {
        return new QuantityException(quoted(text) + " has " + quoted(rest) + " after the number; leave it out");
    }

    static QuantityException unknownUnit(String written, Dimension expected, List<Unit> nearest) {
        String known = expected.units().stream()
                .map(Unit::symbol)
                .filter(symbol -> !symbol.isEmpty())
                .collect(joining(", "));
        String hint = nearest.isEmpty()
                ? ""
                : "; the nearest is " + quoted(nearest.get(0).symbol());
        return new QuantityException(
                "has the unknown unit " + quoted(written) + "; " + expected.words()
                        + " is written in " + known + (expected == Dimension.RATIO ? " or without unit" : "") + hint
                        + ", for example ",
                expected);
    }

    static QuantityException tooGreat(String text, Dimension expected, double largest) {
        String bound = (Quantity.numeral(largest) + " " + expected.jsonUnit()).strip();
        return new QuantityException(quoted(text) + " is more than can be: " + expected.words() + " here is at most "
                + bound + "; look at the unit and the decimal point");
    }

    /** In quotes, on one line, and no longer than a message can bear. */
    private static String quoted(String text) {
        return text.codePointCount(0, text.length()) <= LONGEST_QUOTE
                ? '"' + Unseen.shown(text) + '"'
                : '"' + Unseen.shown(text.substring(0, text.offsetByCodePoints(0, LONGEST_QUOTE))) + "…\"";
    }
}
