package evenhand.words.effects;

import static java.util.stream.Collectors.joining;

import evenhand.answers.Criterion;
import evenhand.choice.Change;
import evenhand.choice.Comparison;
import evenhand.choice.Effect;
import evenhand.choice.Lever;
import evenhand.doubt.SlopeSpread;
import evenhand.words.ChangeWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What stands behind the understeer near the limit, each in a line or two: why, what would move it, how sure it is. */
public final class NearLimitWords {
    private static final Criterion NEAR = Criterion.NEAR_UNDERSTEER;

    /** A share smaller than this part of the largest is not told. */
    private static final double SMALL_SHARE = 0.1;

    private static final int MOST_CAUSES = 3;

    /** Stands between the paths of changes that are taken together. */
    private static final String TOGETHER = ", ";

    private NearLimitWords() {}

    /** Why one set-up differs from another near the limit: the largest causes with their shares. */
    public static Optional<String> why(Comparison comparison) {
        return comparison.differences().stream()
                .filter(difference -> difference.judged().criterion().equals(NEAR))
                .findFirst()
                .map(difference -> {
                    String whole = signed(difference.difference()) + " deg/g near the limit ("
                            + number(difference.base()) + " to " + number(difference.value()) + ")";
                    if (Math.abs(difference.difference()) < NEAR.noticeable()
                            || difference.shares().isEmpty()) {
                        return whole + ".";
                    }
                    List<Double> shares = difference.shares().get().shares();
                    return whole + ": " + causes(comparison.changes(), shares) + ".";
                });
    }

    /** The largest causes, and what is left of the difference where that is worth a word. */
    private static String causes(List<Change> changes, List<Double> shares) {
        List<Integer> largest = IntStream.range(0, shares.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -Math.abs(shares.get(i))))
                .toList();
        double first = Math.abs(shares.get(largest.get(0)));
        List<String> told = new ArrayList<>();
        double rest = 0;
        for (int i : largest) {
            boolean together = changes.get(i).path().contains(TOGETHER);
            if (!together && told.size() < MOST_CAUSES && Math.abs(shares.get(i)) >= SMALL_SHARE * first) {
                told.add(ChangeWords.name(changes.get(i)) + " " + signed(shares.get(i)));
            } else {
                rest += shares.get(i);
            }
        }
        if (Math.abs(rest) >= NEAR.noticeable() / 2) {
            told.add("all else " + signed(rest));
        }
        return String.join(" · ", told);
    }

    /** What would move it most, each by one usual step. */
    public static Optional<String> levers(List<Lever> levers, Units units) {
        return levers.isEmpty()
                ? Optional.empty()
                : Optional.of(levers.stream().map(lever -> lever(lever, units)).collect(joining(" · "))
                        + " deg/g near the limit; `effects --complaint` tells what of it is sound.");
    }

    private static String lever(Lever lever, Units units) {
        String name = lever.step() instanceof Effect.ByBar
                ? ChangeWords.name(
                        lever.step().path().substring(0, lever.step().path().lastIndexOf('.')))
                : ChangeWords.name(lever.step().path());
        return name + " " + EffectWords.step(lever.step(), units) + " → " + signed(lever.difference());
    }

    /** How sure it is to first order: the set-up by itself, and its difference from the first. */
    public static String sure(Optional<SlopeSpread> alone, Optional<SlopeSpread> apart) {
        List<String> parts = new ArrayList<>();
        alone.ifPresent(spread -> parts.add("near the limit " + width(spread)));
        apart.ifPresent(spread -> parts.add("the difference from the first " + width(spread)));
        if (parts.isEmpty()) {
            return "no first-order doubt here; `doubt` draws cars and tells.";
        }
        boolean fair = Stream.of(alone, apart).flatMap(Optional::stream).allMatch(SlopeSpread::isFair);
        return String.join("; ", parts) + " by first-order doubt"
                + (fair
                        ? ". `doubt` tells why."
                        : ", which is too small where a stop or the limit is near; `doubt` tells.");
    }

    private static String width(SlopeSpread spread) {
        return (spread.isFair() ? "± " : "at least ± ") + number(spread.halfWidth()) + " deg/g";
    }

    private static String signed(double si) {
        return Numbers.signed(NEAR.unit().fromSi(si), 1);
    }

    private static String number(double si) {
        return Numbers.fixed(NEAR.unit().fromSi(si), 1);
    }
}
