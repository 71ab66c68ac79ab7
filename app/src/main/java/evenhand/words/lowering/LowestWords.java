package evenhand.words.lowering;

import evenhand.advice.Refused;
import evenhand.lowering.LoweringStudy;
import evenhand.lowering.Need;
import evenhand.lowering.Stance;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How low a car can stand and what stops it: the end of the story of a lowering. */
public final class LowestWords {
    /** Of the last digit: a height that was found by halving is not whole. */
    private static final double ROUNDING = 0.02; // the search closes in to a thousandth of a mm

    /** What misses its bound by less is told with so many digits more than usual. */
    private static final int MOST_MORE_DIGITS = 3;

    private LowestWords() {}

    /** The bound of a need: "at least 25 mm", "the front". */
    public static String bound(Need need, Units units) {
        if (!need.isNumber()) {
            return value(need, need.bound(), units);
        }
        return (need.atLeast() ? "at least " : "at most ") + value(need, need.bound(), units);
    }

    /** How low it can go and what stops it: the end of the story. */
    public static String of(LoweringStudy study, Units units) {
        Optional<LoweringStudy.Ending> stop = study.stop();
        if (stop.isEmpty()) {
            return notGiven(study)
                    + "othing that a road car needs stops it down to "
                    + down(study.last().lowered(), units) + ", the lowest that was asked for.";
        }
        Need need = stop.get().need();
        if (stop.get().atOnce()) {
            return notEvenFirst(study, units);
        }
        double lowered = stop.get().lowered().orElse(0);
        if (need.equals(Need.ANSWER)) {
            return "The lowest that works is " + down(lowered, units) + ": below it there is no answer ("
                    + study.rows().stream()
                            .flatMap(row -> row.noAnswer().stream())
                            .findFirst()
                            .orElse("within less than a step")
                    + ").";
        }
        if (need.equals(Need.FRONT_FIRST)) {
            return "The lowest that works is " + down(lowered, units) + ". Any lower, and " + need.why() + ".";
        }
        return "The lowest that works is " + down(lowered, units) + ": there the " + need.words() + " comes to "
                + value(need, need.bound(), units) + ", the " + (need.atLeast() ? "least" : "most")
                + " by common practice. Any lower, and " + need.why() + ".";
    }

    /** That it cannot be told, where the file does not give how far the wheels may travel: nobody shall take silence for room. */
    private static String notGiven(LoweringStudy study) {
        List<String> missing = Need.ALL.stream()
                .filter(need -> need.isNumber() && need.dimension() == Dimension.LENGTH)
                .filter(need ->
                        study.rows().stream().allMatch(row -> need.value(row).isEmpty()))
                .map(Need::words)
                .toList();
        return missing.isEmpty()
                ? "N"
                : "How low it can stand cannot be told: the file does not give the " + String.join(", the ", missing)
                        + ". Of what it gives, n";
    }

    private static String notEvenFirst(LoweringStudy study, Units units) {
        Stance first = study.first();
        StringBuilder text = new StringBuilder("It does not even work ");
        text.append(first.lowered() == 0 ? "as it stands" : down(first.lowered(), units))
                .append(": ");
        List<String> fails = new ArrayList<>();
        for (LoweringStudy.Ending end : study.ends()) {
            if (end.atOnce()) {
                fails.add(fails(end.need(), first, fails.isEmpty(), units));
            }
        }
        text.append(String.join("; ", fails)).append(". ");
        text.append(
                study.higher().isPresent()
                        ? "It would have to stand " + height(-study.higher().getAsDouble(), units)
                                + " higher for all that a" + " road car needs."
                        : "Raising it alone does not mend that.");
        return text.toString();
    }

    /** That a need is not met, as a clause. */
    private static String fails(Need need, Stance stance, boolean andWhy, Units units) {
        if (need.equals(Need.ANSWER)) {
            return "there is no answer (" + stance.noAnswer().orElse("") + ")";
        }
        String wanted = need.equals(Need.FRONT_FIRST)
                ? "it is not the front that goes first at the limit, as is wanted by common practice"
                : "the " + need.words() + " is "
                        + missed(need, need.value(stance).orElse(0), units) + ", and " + bound(need, units)
                        + " is wanted by common practice";
        return wanted + (andWhy ? ", or " + need.why() : "");
    }

    static String value(Need need, double si, Units units) {
        if (need.equals(Need.FRONT_FIRST)) {
            return si >= need.bound() ? "the front" : "not the front";
        }
        return units.show(si, need.dimension(), digits(need, units));
    }

    /** A value that misses its bound, with more digits where it would print like the bound: "0.497 g" where 0.50 g is wanted. */
    static String missed(Need need, double si, Units units) {
        int digits = digits(need, units);
        for (int more = 0; more < MOST_MORE_DIGITS; more++) {
            String shown = units.show(si, need.dimension(), digits + more);
            if (!shown.equals(units.show(need.bound(), need.dimension(), digits + more))) {
                return shown;
            }
        }
        return units.show(si, need.dimension(), digits + MOST_MORE_DIGITS);
    }

    /** What a car would not have after a step, as a clause: "the front bump travel to the stop would be 18 mm, and ...". */
    public static String missed(Refused.Missed missed, Units units) {
        Need need = missed.need();
        if (missed.value().isEmpty()) {
            return need.equals(Need.FRONT_FIRST) ? "the tail would go first at the limit" : need.why();
        }
        return "the " + need.words() + " would be "
                + missed(need, missed.value().getAsDouble(), units) + ", and " + bound(need, units) + " is wanted";
    }

    private static int digits(Need need, Units units) {
        return need.dimension() == Dimension.LENGTH ? digitsOfLength(units) : need.digits();
    }

    private static int digitsOfLength(Units units) {
        return units == Units.METRIC ? 0 : 2;
    }

    public static String length(double metres, Units units) {
        return units.show(metres, Dimension.LENGTH, digitsOfLength(units));
    }

    /** "28 mm down", "15.1 mm up". */
    public static String down(double lowered, Units units) {
        return height(lowered, units) + (lowered < 0 ? " up" : " down");
    }

    /**
     * How far a car is let down, or up, without the word: to a tenth of a mm where it is no whole one, and never lower than
     * what was worked out, so that what is said to work there does.
     */
    public static String height(double lowered, Units units) {
        Unit unit = units.of(Dimension.LENGTH);
        int digits = units == Units.METRIC ? 1 : 2;
        double scale = Math.pow(10, digits);
        double higher = Math.floor(unit.fromSi(lowered) * scale + ROUNDING) / scale;
        boolean whole = units == Units.METRIC && Math.rint(higher) == higher;
        return Numbers.fixed(Math.abs(higher), whole ? 0 : digits) + " " + unit.symbol();
    }
}
