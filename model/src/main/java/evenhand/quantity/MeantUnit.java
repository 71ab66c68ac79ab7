package evenhand.quantity;

import static java.util.Map.entry;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** What was probably meant by a unit that is not known. It goes into the message; nothing is read by a guess. */
final class MeantUnit {
    /** A unit longer than this is not looked up among the nearest: nobody mistypes one so badly. */
    private static final int LONGEST_UNIT = 20;
    /** More slips than this in one unit, and the nearest unit is no more than a guess. */
    private static final int MOST_SLIPS = 2;

    private static final Unit NO_UNIT = Unit.of("");
    private static final Unit PERCENT = Unit.of("%");
    private static final Pattern WORD = Pattern.compile("[A-Za-z]+|#");
    private static final Pattern TO_ONE = Pattern.compile("(:|to) ?1");
    private static final Pattern MASS = Pattern.compile("(lb|kg)(?!f)");

    /** What units are called in the shop. */
    private static final Map<String, String> SPOKEN = Map.ofEntries(
            entry("inch", "in"),
            entry("inches", "in"),
            entry("foot", "ft"),
            entry("feet", "ft"),
            entry("millimetre", "mm"),
            entry("millimetres", "mm"),
            entry("millimeter", "mm"),
            entry("millimeters", "mm"),
            entry("metre", "m"),
            entry("metres", "m"),
            entry("meter", "m"),
            entry("meters", "m"),
            entry("lbs", "lb"),
            entry("pound", "lb"),
            entry("pounds", "lb"),
            entry("#", "lb"),
            entry("kgs", "kg"),
            entry("kilo", "kg"),
            entry("kilos", "kg"),
            entry("tonne", "t"),
            entry("tonnes", "t"),
            entry("newton", "N"),
            entry("newtons", "N"),
            entry("degree", "deg"),
            entry("degrees", "deg"),
            entry("degs", "deg"),
            entry("radians", "rad"),
            entry("percent", "%"),
            entry("kph", "km/h"),
            entry("kmh", "km/h"),
            entry("second", "s"),
            entry("seconds", "s"),
            entry("sec", "s"));

    private MeantUnit() {}

    /** Why a unit cannot be read, with what to write instead where that is sure. */
    static QuantityException refusal(String typed, String written, Dimension expected) {
        if (expected == Dimension.RATIO && TO_ONE.matcher(written).matches()) {
            return QuantityException.ratioToOne(typed, written);
        }
        String plain = WORD.matcher(written)
                .replaceAll(word -> SPOKEN.getOrDefault(word.group().toLowerCase(Locale.ROOT), word.group()));
        Optional<Unit> said = Unit.find(plain);
        if (said.isPresent()) {
            boolean belongs =
                    said.get().dimension() == expected || said.get().equals(PERCENT); // a tolerance may be in %
            return belongs
                    ? QuantityException.otherName(written, said.get())
                    : QuantityException.wrongDimension(typed, said.get().dimension(), expected);
        }
        Optional<Unit> force = force(plain, expected);
        if (force.isPresent()) {
            return MASS.matcher(plain).find()
                    ? QuantityException.forceFromMass(written, force.get())
                    : QuantityException.otherName(written, force.get());
        }
        return QuantityException.unknownUnit(written, expected, nearest(written, expected));
    }

    /** The unit of force, stiffness or moment that is meant by "lb/in", "kg/mm", "lb-ft" or "N-m", if it belongs here. */
    private static Optional<Unit> force(String written, Dimension expected) {
        String meant = written.replace("lbf", "lb").replace("lb", "lbf");
        meant = meant.replace("kgf", "kg").replace("kg", "kgf").replace('-', '*');
        return Unit.find(meant).filter(unit -> unit.dimension() == expected);
    }

    /** The expected unit that differs least from what was written; none if all differ much. Upper and lower case differ least. */
    private static List<Unit> nearest(String written, Dimension expected) {
        if (written.length() > LONGEST_UNIT) {
            return List.of();
        }
        List<Unit> nearest = List.of();
        int least = Math.min(MOST_SLIPS, written.length() - 1);
        int leastWithCase = Integer.MAX_VALUE;
        String lowerCase = written.toLowerCase(Locale.ROOT);
        for (Unit unit : expected.units()) {
            int slips = slips(lowerCase, unit.symbol().toLowerCase(Locale.ROOT));
            int withCase = slips(written, unit.symbol());
            if (!unit.equals(NO_UNIT) && (slips < least || (slips == least && withCase < leastWithCase))) {
                least = slips;
                leastWithCase = withCase;
                nearest = List.of(unit);
            }
        }
        return nearest;
    }

    /** Letters to insert, leave out or replace to make one word of the other (Levenshtein 1966). */
    private static int slips(String one, String other) {
        int[] above = new int[other.length() + 1];
        for (int j = 0; j < above.length; j++) {
            above[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int[] row = new int[above.length];
            row[0] = i;
            for (int j = 1; j < row.length; j++) {
                int replaced = above[j - 1] + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(replaced, 1 + Math.min(above[j], row[j - 1]));
            }
            above = row;
        }
        return above[other.length()];
    }
}
