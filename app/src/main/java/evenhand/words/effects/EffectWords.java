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
        if (step instanceof Effect.ByForces forces) {
            return "all forces " + Numbers.signedPercent(forces.factor() - 1, 0);
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

    /** Said where one step goes past neutral. */
    public static Optional<String> past(Complaint complaint, Effect.Move move, Units units) {
        double after = move.base() + move.difference();
        return !ofBalance(complaint.judged().criterion()) || (after > 0) == (move.base() > 0)
                ? Optional.empty()
                : Optional.of("That whole step is past neutral " + JudgedWords.pace(complaint.judged()) + ": "
                        + sums(complaint, after, units) + " then. Take less of it.");
    }

    static boolean ofBalance(Criterion criterion) {
        return criterion.equals(Criterion.NEAR_UNDERSTEER) || criterion.equals(Criterion.UNDERSTEER);
    }

    /** "it oversteers by 0.17 deg/g". */
    static String sums(Complaint complaint, double balance, Units units) {
        Criterion criterion = complaint.judged().criterion();
        return "it " + (balance > 0 ? "under" : "over") + "steers by " + units.show(Math.abs(balance), criterion);
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
        return JudgedWords.spoken(judged);
    }
}
