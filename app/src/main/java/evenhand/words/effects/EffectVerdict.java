package evenhand.words.effects;

import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.choice.Effect;
import evenhand.turn.Direction;
import evenhand.words.BothWays;
import evenhand.words.ChangeWords;
import evenhand.words.JudgedWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/** The few steps that move a figure most, in a line. */
public final class EffectVerdict {
    private static final int MOST = 4;

    private EffectVerdict() {}

    /**
     * "Understeer near the limit, deg/g: rear bar +10 N·m/deg −0.52 · ...", at the briskest pace where it has one; two numbers
     * where the ways differ. Nothing where no step moves it noticeably.
     *
     * @param ways the effects each way round
     */
    public static Optional<String> strongest(Criterion criterion, List<List<Effect>> ways, Units units) {
        Optional<Judged> judged = ways.stream()
                .flatMap(List::stream)
                .flatMap(effect -> effect.moves().stream())
                .map(Effect.Move::judged)
                .filter(one -> one.criterion().equals(criterion))
                .max(Comparator.comparingDouble(one -> one.pace().orElse(0)));
        return judged.flatMap(one -> strongest(one, ways, units));
    }

    private static Optional<String> strongest(Judged judged, List<List<Effect>> ways, Units units) {
        ToDoubleFunction<Effect> size = effect -> largest(effect, ways, judged);
        Set<Effect.Step> told = new HashSet<>();
        List<String> steps = ways.stream()
                .flatMap(List::stream)
                .filter(effect -> size.applyAsDouble(effect) >= 1)
                .sorted(Comparator.comparingDouble(effect -> -size.applyAsDouble(effect)))
                .filter(effect -> told.add(effect.step()))
                .limit(MOST)
                .map(effect -> ChangeWords.name(effect.step().path()) + " " + EffectWords.step(effect, units) + " → "
                        + numbers(effect, ways, judged, units))
                .toList();
        String symbol = units.of(judged.criterion()).symbol();
        String name = JudgedWords.figure(judged);
        String head =
                Character.toUpperCase(name.charAt(0)) + name.substring(1) + (symbol.isEmpty() ? "" : ", " + symbol);
        return steps.isEmpty() ? Optional.empty() : Optional.of(head + ": " + String.join(" · ", steps));
    }

    private static List<Effect.Move> moves(Effect effect, List<List<Effect>> ways, Judged judged) {
        return ways.stream()
                .flatMap(all -> all.stream()
                        .filter(one -> one.step().equals(effect.step()))
                        .flatMap(one -> one.move(judged).stream()))
                .toList();
    }

    private static double largest(Effect effect, List<List<Effect>> ways, Judged judged) {
        return moves(effect, ways, judged).stream()
                .mapToDouble(Effect.Move::size)
                .max()
                .orElse(0);
    }

    /** "−0.52", or "−0.52 / −0.31" where the ways differ. */
    private static String numbers(Effect effect, List<List<Effect>> ways, Judged judged, Units units) {
        List<String> numbers = new ArrayList<>();
        for (Effect.Move move : moves(effect, ways, judged)) {
            numbers.add(Numbers.signed(
                    units.of(judged.criterion()).fromSi(move.difference()),
                    judged.criterion().digits()));
        }
        return numbers.stream().distinct().count() == 1 ? numbers.get(0) : String.join(" / ", numbers);
    }

    /** "the first is turning left, the other turning right". */
    public static String order(Direction first) {
        return "the first is " + BothWays.turning(first) + ", the other " + BothWays.turning(first.other());
    }
}
