package evenhand.words.doubt;

import evenhand.answers.Criterion;
import evenhand.answers.Ways;
import evenhand.doubt.Doubt;
import evenhand.doubt.Measurement;
import evenhand.doubt.Spread;
import evenhand.turn.Direction;
import evenhand.words.BothWays;
import evenhand.words.ChangeWords;
import evenhand.words.JudgedWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What doubt leaves of the figures that matter, in a line for each set-up. */
public final class DoubtVerdict {
    /** What matters, in the order that it is said; at a pace the briskest. */
    public static final List<Criterion> MATTERS =
            List.of(Criterion.NEAR_UNDERSTEER, Criterion.UNDERSTEER, Criterion.LIMIT);

    private static final int CAUSES = 2;
    private static final double WORTH_SAYING = 0.1;

    private DoubtVerdict() {}

    /** What is left of a figure, at the briskest pace where it has one. */
    public static Optional<Spread> of(Doubt.Left left, Criterion criterion) {
        return left.spreads().stream()
                .filter(spread -> spread.judged().criterion().equals(criterion))
                .max(Comparator.comparingDouble(spread -> spread.judged().pace().orElse(0)));
    }

    /**
     * Whether it pushes or slides, as far as that is sure, and whose fault the doubt is.
     *
     * @param ways what is left each way round; one where both are alike
     */
    public static List<String> phrases(Map<Direction, Doubt.Left> ways) {
        List<String> phrases = new ArrayList<>();
        for (Criterion criterion : List.of(Criterion.NEAR_UNDERSTEER, Criterion.UNDERSTEER)) {
            List<String> said = new ArrayList<>();
            List<String> where = new ArrayList<>();
            ways.forEach((direction, left) -> of(left, criterion).ifPresent(spread -> {
                where.add(JudgedWords.pace(spread.judged()));
                said.add(sign(spread) + (ways.size() > 1 ? " " + BothWays.turning(direction) : ""));
            }));
            if (!said.isEmpty()) {
                List<String> signs = said.stream()
                        .map(one -> one.replaceFirst(" turning (left|right)$", ""))
                        .distinct()
                        .toList();
                phrases.add(where.get(0) + " it " + (signs.size() == 1 ? signs.get(0) : String.join(", ", said)));
            }
        }
        ways.values().stream()
                .findFirst()
                .flatMap(left -> of(left, Criterion.NEAR_UNDERSTEER))
                .flatMap(DoubtVerdict::causes)
                .ifPresent(phrases::add);
        return phrases.isEmpty() ? List.of("too few samples turn to say anything") : phrases;
    }

    /** "chance of front first both ways 54 %". */
    public static String frontFirst(double chance, Ways ways) {
        return "chance of front first " + (ways.isBoth() ? "both ways" : BothWays.turning(ways.first())) + " "
                + Numbers.percent(chance, 0);
    }

    private static String sign(Spread spread) {
        if (spread.low() > 0) {
            return "pushes for sure";
        }
        return spread.high() < 0 ? "slides for sure" : "may push or slide";
    }

    private static Optional<String> causes(Spread spread) {
        List<String> causes = spread.causes().stream()
                .filter(cause -> cause.share() >= WORTH_SAYING)
                .limit(CAUSES)
                .map(cause -> ChangeWords.name(cause.path()) + " " + Numbers.percent(cause.share(), 0))
                .toList();
        return causes.isEmpty()
                ? Optional.empty()
                : Optional.of("doubt near the limit from " + String.join(", ", causes));
    }

    /** "To know the understeer near the limit better, measure rear tyre pressure (to ±0.05 bar: 5.1 to 8.9 deg/g) ...". */
    public static String measureNext(List<Measurement> measurements, Spread narrowed, Units units) {
        String figure = "the " + JudgedWords.figure(narrowed.judged());
        if (measurements.isEmpty()) {
            return "No better measurement of a single value would narrow " + figure + " noticeably.";
        }
        List<String> each = measurements.stream()
                .map(one -> ChangeWords.name(one.tolerance().path()) + " (then "
                        + between(narrowed, one.low(), one.high(), units) + ")")
                .toList();
        return "To know " + figure + " better (now " + between(narrowed, narrowed.low(), narrowed.high(), units)
                + "), measure " + String.join(", ", each) + ".";
    }

    private static String between(Spread spread, double low, double high, Units units) {
        Criterion criterion = spread.judged().criterion();
        return Numbers.fixed(units.of(criterion).fromSi(low), units.digits(criterion)) + " to "
                + units.show(high, criterion);
    }
}
