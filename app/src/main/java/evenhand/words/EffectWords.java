package evenhand.words;

import evenhand.answers.Judged;
import evenhand.catalogue.Adjustable;
import evenhand.choice.Effect;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What one step of an adjustment does, in words. */
public final class EffectWords {
    /** More side effects than these are not read out. */
    private static final int MOST = 3;

    private static final int STEP_DIGITS = 4;

    private EffectWords() {}

    /** The step as a shop says it: "+10 mm". */
    public static String step(Effect effect, Units units) {
        Adjustable adjustable = effect.adjustable();
        Unit unit =
                adjustable.dimension() == Dimension.RATIO ? Dimension.RATIO.metric() : units.of(adjustable.dimension());
        String number = Numbers.significant(unit.fromSi(effect.step()), STEP_DIGITS);
        return (effect.step() > 0 ? "+" : "") + number + (unit.symbol().isEmpty() ? "" : " " + unit.symbol());
    }

    /** A change of a figure with its sign and unit: "−0.12 deg/g". */
    public static String difference(Effect.Move move, Units units) {
        Unit unit = units.of(move.judged().criterion().dimension());
        return Numbers.signed(
                        unit.fromSi(move.difference()),
                        move.judged().criterion().digits()) + " " + unit.symbol();
    }

    /** What helps most against a complaint, and what comes with it. */
    public static List<String> help(Complaint complaint, List<Effect> helping, Units units) {
        if (helping.isEmpty()) {
            return List.of("No single usual step moves " + figure(complaint.judged()) + " that way.");
        }
        Effect best = helping.get(0);
        Effect.Move move = best.move(complaint.judged()).orElseThrow();
        List<String> sentences = new ArrayList<>();
        Unit unit = units.of(move.judged().criterion().dimension());
        int digits = move.judged().criterion().digits();
        sentences.add("Change first: " + ChangeWords.name(best.adjustable().path()) + " by " + step(best, units)
                + ". It moves " + figure(complaint.judged()) + " by " + difference(move, units) + ", from "
                + Numbers.fixed(unit.fromSi(move.base()), digits) + " to "
                + Numbers.fixed(unit.fromSi(move.base() + move.difference()), digits) + " " + unit.symbol() + ".");
        List<String> others = sideEffects(best, complaint.judged(), units);
        sentences.add(
                others.isEmpty()
                        ? "Nothing else moves noticeably with it."
                        : "With it moves " + String.join("; ", others) + ".");
        return sentences;
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
        String name = judged.criterion().name();
        return (name.startsWith("limit") ? "the " + name : "the " + name + " " + JudgedWords.pace(judged));
    }
}
