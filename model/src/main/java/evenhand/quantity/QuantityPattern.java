package evenhand.quantity;

import static java.util.stream.Collectors.joining;

import java.util.stream.Stream;

/**
 * How quantities are written, as regular expressions that JSON Schema knows (ECMA-262), for editors that look over a file while
 * it is typed. They admit what {@link Quantity#parse} reads: numbers, fractions of an inch, units in all their spellings,
 * tolerances, look-alikes of signs. Only how great a number is they cannot tell.
 */
public final class QuantityPattern {
    private static final String BLANK =
            "[\\s\\u00a0\\u2000-\\u200a\\u202f]"; // the latter are not blank to every program
    private static final String BLANKS = BLANK + "*";
    private static final String MINUS = "\\u2212\\u2013-";
    private static final String SIGN = "[+" + MINUS + "]?";
    private static final String DECIMAL = "(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE]" + SIGN + "[0-9]+)?";
    private static final String FRACTION = "(?:[0-9]+" + BLANK + "+)?[0-9]+/0*[1-9][0-9]*";
    private static final String ANY = "(?:" + FRACTION + "|" + DECIMAL + ")";
    private static final String PLUS_MINUS = "(?:\\u00b1|\\+/?[" + MINUS + "])";

    private QuantityPattern() {}

    /** All texts that are a quantity of this dimension. */
    public static String of(Dimension dimension) {
        String inUnit = DECIMAL + BLANKS + "(?:" + units(dimension) + ")";
        String inNone = DECIMAL;
        String inShares = DECIMAL + BLANKS + "%?";
        if (dimension == Dimension.LENGTH) {
            String inFeetAndInches = ANY + BLANKS + "ft" + BLANKS + ANY + BLANKS + "in";
            inUnit = "(?:" + inUnit + "|" + FRACTION + BLANKS + "(?:in|ft)|" + inFeetAndInches + ")";
            inNone = ANY;
            inShares = FRACTION + "|" + inShares;
        }
        String plusMinus = BLANKS + PLUS_MINUS + BLANKS + "(?:\\+" + BLANKS + ")?";
        String unitFirst = inUnit + "(?:" + plusMinus + "(?:" + inUnit + "|" + inShares + "))?";
        String unitLast = inNone + plusMinus + inUnit;
        return "^" + BLANKS + SIGN + BLANKS + "(?:" + unitFirst + "|" + unitLast + ")" + BLANKS + "$";
    }

    /** All texts that are a tolerance of this dimension alone. */
    public static String ofTolerance(Dimension dimension) {
        return "^" + BLANKS + "(?:" + PLUS_MINUS + BLANKS + ")?" + DECIMAL + BLANKS + "(?:" + units(dimension) + ")"
                + BLANKS + "$";
    }

    private static String units(Dimension dimension) {
        return dimension.units().stream()
                .flatMap(unit -> Stream.concat(Stream.of(unit.symbol()), unit.variants()))
                .map(QuantityPattern::unit)
                .collect(joining("|"));
    }

    /** A spelling with all that {@link Unit#plain} makes one of, and blanks where they do not count. */
    private static String unit(String spelling) {
        StringBuilder pattern = new StringBuilder();
        for (int i = 0; i < spelling.length(); i++) {
            char c = spelling.charAt(i);
            if (spelling.startsWith("deg", i)) {
                pattern.append("(?:deg|[\\u00b0\\u00ba])");
                i += 2;
            } else if (spelling.startsWith("^2", i)) {
                pattern.append(BLANKS).append("(?:\\^").append(BLANKS).append("2|\\u00b2)");
                i += 1;
            } else {
                pattern.append(
                        switch (c) {
                            case '*' -> BLANKS + "[*\\u00b7\\u22c5\\u2219]" + BLANKS;
                            case '/' -> BLANKS + "/" + BLANKS;
                            case '(' -> BLANKS + "\\(" + BLANKS;
                            case ')' -> BLANKS + "\\)";
                            case ' ' -> BLANK + "+";
                            default -> String.valueOf(c);
                        });
            }
        }
        return pattern.toString();
    }
}
