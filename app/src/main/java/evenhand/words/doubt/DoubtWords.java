package evenhand.words.doubt;

import evenhand.answers.Aim;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Ways;
import evenhand.catalogue.Adjustable;
import evenhand.doubt.Doubt;
import evenhand.doubt.Measurement;
import evenhand.doubt.Spread;
import evenhand.doubt.Tolerance;
import evenhand.quantity.Unit;
import evenhand.words.AimText;
import evenhand.words.BothWays;
import evenhand.words.ChangeWords;
import evenhand.words.JudgedWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.find.FindWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What doubt leaves, in sentences: what is sure of a difference, what is not of an answer, and what to measure. */
public final class DoubtWords {
    /** Figures worth a sentence of their own; the table has them all. */
    private static final List<Criterion> SAID =
            List.of(Criterion.UNDERSTEER, Criterion.ROLL_GRADIENT, Criterion.LIMIT, Criterion.NEAR_UNDERSTEER);

    private static final int TOLERANCE_DIGITS = 2;
    private static final double ALMOST_ALL = 0.9;
    private static final double MOST = 0.5;
    /** Of what is noticeable. */
    private static final double ROUNDING = 1e-6;

    private DoubtWords() {}

    /**
     * Of one set-up by itself.
     *
     * @param ways that were asked which end goes first
     */
    public static List<String> alone(Doubt.Left left, Optional<Aim> aim, Ways ways, Units units) {
        List<String> sentences = new ArrayList<>();
        for (Spread spread : said(left.spreads())) {
            sentences.add(interval(spread, units) + "." + silent(spread, left.noAnswerShare()));
        }
        if (left.frontFirst().isPresent()) {
            sentences.add("The chance that the front goes first at the limit, "
                    + (ways.isBoth() ? "both ways round" : BothWays.turning(ways.first())) + ", is "
                    + Numbers.percent(left.frontFirst().getAsDouble(), 0) + ".");
        }
        if (aim.isPresent()
                && !aim.get().equals(Aim.frontFirst())
                && left.chance().isPresent()) {
            sentences.add(
                    "The chance that \"" + AimText.write(aim.get(), units) + "\" is met" + within(aim.get(), units)
                            + " is " + Numbers.percent(left.chance().getAsDouble(), 0) + ".");
        }
        if (left.noAnswerShare() > 0) {
            sentences.add(percent(left.noAnswerShare())
                    + " of the sampled cars do not turn at all; the intervals are of" + " the others.");
        }
        return sentences;
    }

    /** No sample meets an exact value; near it is met. */
    private static String within(Aim aim, Units units) {
        Criterion criterion = aim.judged().criterion();
        return aim.sense() == Aim.Sense.EXACTLY
                ? ", to within " + units.show(criterion.noticeable(), criterion) + ","
                : "";
    }

    /** Of the difference between a set-up and the first. */
    public static List<String> apart(String name, String base, Doubt.Left differences, Doubt.Left own, Units units) {
        List<String> sentences = new ArrayList<>();
        for (Spread spread : said(differences.spreads())) {
            sentences.add(difference(name, base, spread, own, units));
        }
        return sentences;
    }

    private static List<Spread> said(List<Spread> spreads) {
        double brisk = spreads.stream()
                .flatMap(spread -> spread.judged().pace().stream().boxed())
                .mapToDouble(pace -> pace)
                .max()
                .orElse(0);
        return spreads.stream()
                .filter(spread -> SAID.contains(spread.judged().criterion())
                        && spread.judged().pace().orElse(brisk) == brisk)
                .toList();
    }

    private static String interval(Spread spread, Units units) {
        Criterion criterion = spread.judged().criterion();
        Unit unit = units.of(criterion);
        if (stands(spread)) {
            return "The " + JudgedWords.figure(spread.judged()) + " comes out at "
                    + show(spread.judged(), spread.median(), units) + ", and nothing that it rests on is in doubt";
        }
        String answer = spread.nominal().isPresent()
                ? " comes out at " + show(spread.judged(), spread.nominal().getAsDouble(), units) + " and lies"
                : " lies";
        return "The " + JudgedWords.figure(spread.judged()) + answer + " between "
                + Numbers.fixed(unit.fromSi(spread.low()), units.digits(criterion)) + " and "
                + show(spread.judged(), spread.high(), units) + ", nineteen times in twenty" + blame(spread);
    }

    /** Whether a figure varies by no more than the solver's rounding. */
    private static boolean stands(Spread spread) {
        return Math.max(spread.width(), spread.standardDeviation())
                < ROUNDING * spread.judged().criterion().noticeable();
    }

    /** What part of the cars that turn lack this figure. */
    private static String silent(Spread spread, double noTurn) {
        double lacking = spread.noAnswerShare() - noTurn;
        return lacking <= 0
                ? ""
                : " " + percent(lacking) + " of the sampled cars do not get there, and are left out of it.";
    }

    /** Whose fault it is: as many as make up most of it, three at most. */
    private static String blame(Spread spread) {
        List<String> named = new ArrayList<>();
        double sum = 0;
        for (Spread.Cause cause : spread.causes()) {
            if (named.size() == 3 || sum > ALMOST_ALL || (cause.share() < 0.1 && !named.isEmpty())) {
                break;
            }
            named.add(ChangeWords.name(cause.path()) + " (" + percent(cause.share()) + ")");
            sum += cause.share();
        }
        if (named.isEmpty()) {
            return "; no single input is to blame";
        }
        return "; " + (sum > MOST ? "most" : "part") + " of the doubt comes from " + and(named);
    }

    private static String and(List<String> names) {
        return names.size() == 1
                ? names.get(0)
                : String.join(", ", names.subList(0, names.size() - 1)) + " and " + names.get(names.size() - 1);
    }

    private static String difference(String name, String base, Spread spread, Doubt.Left own, Units units) {
        Judged judged = spread.judged();
        double nominal = spread.nominal().orElse(spread.median());
        // Beside a kink the car as given can lie outside of what its neighbours do.
        double middle = Math.max(spread.low(), Math.min(spread.high(), nominal));
        boolean sure = spread.low() > 0 || spread.high() < 0;
        if (Math.max(Math.abs(spread.low()), Math.abs(spread.high()))
                < ROUNDING * judged.criterion().noticeable()) {
            return "The " + JudgedWords.figure(judged) + " is the same in \"" + name + "\" as in \"" + base
                    + "\", whatever" + " was guessed.";
        }
        String size = show(judged, Math.abs(middle), units);
        boolean more = sure ? spread.low() > 0 : middle > 0;
        String direction = more ? "more" : "less";
        double low = more ? spread.low() : -spread.high();
        double high = more ? spread.high() : -spread.low();
        Criterion criterion = judged.criterion();
        String said = sure
                ? "The " + figure(judged) + " of \"" + name + "\" is " + size + " " + direction + " than that of \""
                        + base + "\", and between "
                        + Numbers.fixed(units.of(criterion).fromSi(low), units.digits(criterion)) + " and "
                        + show(judged, high, units) + " " + direction + ", nineteen times in twenty"
                : "Whether the " + figure(judged) + " of \"" + name + "\" is more or less than that of \"" + base
                        + "\" is not sure: it comes out " + size + " " + direction + ", and lies between "
                        + show(judged, -spread.low(), units) + " less and " + show(judged, spread.high(), units)
                        + " more, nineteen times in twenty";
        return said + narrower(spread, own, units) + ".";
    }

    /** A slope is told apart from the lean itself, which may go the other way. */
    private static String figure(Judged judged) {
        return JudgedWords.figure(judged)
                + (judged.criterion().equals(Criterion.ROLL_GRADIENT) ? ", the lean that each further g adds," : "");
    }

    /** How much of the doubt cancels between two set-ups of one car. */
    private static String narrower(Spread difference, Doubt.Left own, Units units) {
        Optional<Spread> alone = own.spreads().stream()
                .filter(spread -> spread.judged().equals(difference.judged()))
                .findFirst();
        if (alone.isEmpty() || alone.get().width() < 2 * difference.width()) {
            return "";
        }
        return "; either figure alone is only known to ±"
                + show(difference.judged(), alone.get().width() / 2, units);
    }

    /** What to measure next, and what it would do. */
    public static List<String> measureNext(List<Measurement> measurements, Spread first, Units units) {
        List<String> sentences = new ArrayList<>();
        if (measurements.isEmpty()) {
            sentences.add("No better measurement of a single value would narrow the "
                    + JudgedWords.figure(first.judged()) + " noticeably.");
            return sentences;
        }
        Criterion criterion = first.judged().criterion();
        Unit unit = units.of(criterion);
        sentences.add("To know the " + JudgedWords.figure(first.judged()) + " better, measure:");
        for (Measurement one : measurements) {
            Adjustable number = one.tolerance().number();
            sentences.add(ChangeWords.name(one.tolerance().path()) + ", now " + tolerance(one.tolerance(), units)
                    + ", to ±" + plain(number, one.halfWidth(), units) + ", by: "
                    + number.slot().how() + ". It would then lie between "
                    + Numbers.fixed(unit.fromSi(one.low()), units.digits(criterion)) + " and "
                    + show(first.judged(), one.high(), units) + " instead of "
                    + Numbers.fixed(unit.fromSi(first.low()), units.digits(criterion)) + " and "
                    + show(first.judged(), first.high(), units) + ".");
        }
        return sentences;
    }

    /** "±25 mm", with "estimated" where it is a guess of ours. */
    public static String tolerance(Tolerance tolerance, Units units) {
        String half = "±" + plain(tolerance.number(), tolerance.halfWidth(), units);
        return tolerance.number().origin() == Adjustable.Origin.ESTIMATED ? "estimated, " + half : half;
    }

    private static String plain(Adjustable number, double si, Units units) {
        Unit unit = FindWords.unit(number, units);
        String symbol = unit.symbol();
        return Numbers.significant(unit.fromSi(si), TOLERANCE_DIGITS) + (symbol.isEmpty() ? "" : " " + symbol);
    }

    private static String percent(double part) {
        return Numbers.percent(part, part < 0.1 ? 1 : 0);
    }

    private static String show(Judged judged, double si, Units units) {
        return units.show(si, judged.criterion());
    }
}
