package evenhand.words.effects;

import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.choice.Effect;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.words.ChangeWords;
import evenhand.words.JudgedWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.find.FindWords;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What one step of an adjustment does, in words. */
public final class EffectWords {
    /** More side effects than these are not read out. */
    private static final int MOST = 3;

    private static final int STEP_DIGITS = 4;

    private EffectWords() {}

    /** The step as a shop says it: "+10 mm", or to another setting. */
    public static String step(Effect effect, Units units) {
        return step(effect.step(), units);
    }

    /** The same of a step whose effect is told elsewhere: "+10 mm", "to \"3 clicks\"", "of 60 N·m/deg". */
    public static String step(Effect.Step step, Units units) {
        if (step instanceof Effect.ToSetting setting) {
            return "to \"" + setting.to() + "\"";
        }
        if (step instanceof Effect.ByBar bar) {
            return "of " + units.show(bar.rollStiffness(), Dimension.ROLL_STIFFNESS, 0);
        }
        Effect.ByNumber number = (Effect.ByNumber) step;
        Unit unit = FindWords.unit(number.adjustable(), units);
        String size = Numbers.significant(unit.fromSi(number.size()), STEP_DIGITS);
        return (number.size() > 0 ? "+" : "") + size + (unit.symbol().isEmpty() ? "" : " " + unit.symbol());
    }

    /** A change of a figure with its sign and unit: "−0.12 deg/g". */
    public static String difference(Effect.Move move, Units units) {
        Unit unit = units.of(move.judged().criterion());
        String number = Numbers.signed(
                unit.fromSi(move.difference()), move.judged().criterion().digits());
        return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
    }

    /** What helps most against a complaint, and what comes with it. */
    public static List<String> help(Complaint complaint, List<Effect> helping, Units units) {
        return help(complaint, helping, "", units);
    }

    /**
     * The same of a car that was asked both ways round.
     *
     * @param turning the worse way, which is the one that is told of: "turning right"; empty where there is no other
     */
    static List<String> help(Complaint complaint, List<Effect> helping, String turning, Units units) {
        String worse = turning.isEmpty() ? "" : ", " + turning + ", the worse way";
        if (helping.isEmpty()) {
            return List.of("No single usual step moves " + figure(complaint.judged()) + " that way.");
        }
        Effect best = helping.get(0);
        Effect.Move move = best.move(complaint.judged()).orElseThrow();
        List<String> sentences = new ArrayList<>();
        Unit unit = units.of(move.judged().criterion());
        int digits = move.judged().criterion().digits();
        Optional<String> without = withoutCause(complaint, move, units);
        without.ifPresent(sentences::add);
        sentences.add((without.isPresent() ? "If it is to go that way all the same: " : "Change first: ")
                + ChangeWords.name(best.step().path())
                + (best.step() instanceof Effect.ByNumber ? " by " : " ") + step(best, units)
                + ". It moves " + figure(complaint.judged()) + (worse.isEmpty() ? "" : worse + ",") + " by "
                + difference(move, units) + ", from "
                + Numbers.fixed(unit.fromSi(move.base()), digits) + " to "
                + units.show(move.base() + move.difference(), move.judged().criterion()) + ".");
        List<String> others = sideEffects(best, complaint.judged(), units);
        sentences.add(
                others.isEmpty()
                        ? "Nothing else moves noticeably with it."
                        : "It also moves " + String.join("; ", others) + ".");
        if (without.isEmpty()) {
            past(complaint, move, units).ifPresent(sentences::add);
        }
        return sentences;
    }

    /** A step and what it moves, in a line: "rear.spring.rate +2.8 N/mm: −0.31 deg/g; also ...". */
    public static String line(Effect effect, Complaint complaint, Units units) {
        List<String> others = sideEffects(effect, complaint.judged(), units);
        return effect.step().path() + " " + step(effect, units) + ": "
                + effect.move(complaint.judged())
                        .map(move -> difference(move, units))
                        .orElse("no figure")
                + (others.isEmpty() ? "" : "; also " + String.join(", ", others));
    }

    /** What one step of each adjustment does to a figure: the largest two, and how many hardly matter. */
    public static List<String> each(Judged judged, List<Effect> effects, Units units) {
        List<Effect> largest = byMove(judged, effects);
        if (largest.isEmpty()) {
            return List.of("No adjustment of this car has an answer for " + figure(judged) + ".");
        }
        String first = "Of " + largest.size() + " adjustments, each moved by its usual step, " + moved(largest.get(0))
                + " moves " + figure(judged) + " most, by " + difference(move(largest.get(0), judged), units);
        String second = largest.size() > 1
                ? "; next " + moved(largest.get(1)) + ", by " + difference(move(largest.get(1), judged), units)
                : "";
        long noticeable = largest.stream()
                .filter(effect -> move(effect, judged).size() >= 1)
                .count();
        String rest = noticeable == 0
                ? "None of them can be noticed."
                : noticeable == largest.size()
                        ? "All of them can be noticed."
                        : noticeable + " of them can be noticed ("
                                + units.show(judged.criterion().noticeable(), judged.criterion())
                                + " or more); the others hardly matter for it.";
        return List.of(first + second + ".", rest);
    }

    /** The effects that have a figure, the largest move of it first. */
    public static List<Effect> byMove(Judged judged, List<Effect> effects) {
        return effects.stream()
                .filter(effect -> effect.move(judged).isPresent())
                .sorted(Comparator.comparingDouble(
                        effect -> -move(effect, judged).size()))
                .toList();
    }

    private static Effect.Move move(Effect effect, Judged judged) {
        return effect.move(judged).orElseThrow();
    }

    private static String moved(Effect effect) {
        return "the " + ChangeWords.name(effect.step().path());
    }

    /** Said where the car does the opposite of what is complained of: more of the remedy makes that worse. */
    private static Optional<String> withoutCause(Complaint complaint, Effect.Move move, Units units) {
        if (!ofBalance(complaint) || pushes(move.base()) == !complaint.up()) {
            return Optional.empty();
        }
        String where = JudgedWords.pace(complaint.judged());
        return Optional.of("By the sums it does not " + (complaint.up() ? "slide " : "push ") + where + ": "
                + sums(complaint, move.base(), units) + ". What helps against "
                + (complaint.up() ? "sliding makes it push more." : "pushing lets the tail go sooner: mind that."));
    }

    /** Said where one step goes past neutral. */
    public static Optional<String> past(Complaint complaint, Effect.Move move, Units units) {
        double after = move.base() + move.difference();
        return !ofBalance(complaint) || pushes(after) == pushes(move.base())
                ? Optional.empty()
                : Optional.of("That whole step is past neutral " + JudgedWords.pace(complaint.judged()) + ": "
                        + sums(complaint, after, units) + " then. Take less of it.");
    }

    private static boolean ofBalance(Complaint complaint) {
        return complaint.judged().criterion().equals(Criterion.NEAR_UNDERSTEER)
                || complaint.judged().criterion().equals(Criterion.UNDERSTEER);
    }

    private static boolean pushes(double balance) {
        return balance > 0;
    }

    private static String sums(Complaint complaint, double balance, Units units) {
        Criterion criterion = complaint.judged().criterion();
        return "it " + (pushes(balance) ? "under" : "over") + "steers by " + units.show(Math.abs(balance), criterion);
    }

    /** The noticeable moves of other figures, largest first. */
    public static List<String> sideEffects(Effect effect, Judged wish, Units units) {
        return effect.moves().stream()
                .filter(move -> !move.judged().equals(wish) && move.size() >= 1)
                .sorted(Comparator.comparingDouble(move -> -move.size()))
                .limit(MOST)
                .map(move -> figure(move.judged()) + " by " + difference(move, units))
                .toList();
    }

    private static String figure(Judged judged) {
        return "the " + JudgedWords.figure(judged);
    }
}
