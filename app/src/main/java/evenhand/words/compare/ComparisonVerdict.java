package evenhand.words.compare;

import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.choice.Change;
import evenhand.choice.Comparison;
import evenhand.choice.Comparison.Difference;
import evenhand.quantity.Unit;
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
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What a driver would notice of a comparison, both ways round, in a phrase for each figure that matters. */
public final class ComparisonVerdict {
    /** What matters, in the order that it is said; at a pace the briskest. */
    public static final List<Criterion> MATTERS =
            List.of(Criterion.NEAR_UNDERSTEER, Criterion.UNDERSTEER, Criterion.LIMIT, Criterion.ROLL_GRADIENT);

    private static final int CAUSES = 2;
    /** A cause smaller than this part of all causes together is not spoken of. */
    private static final double WORTH_SAYING = 0.1;

    private ComparisonVerdict() {}

    /** The difference of a figure, at the briskest pace where it has one. */
    public static Optional<Difference> of(Comparison comparison, Criterion criterion) {
        return comparison.differences().stream()
                .filter(difference -> difference.judged().criterion().equals(criterion))
                .max(Comparator.comparingDouble(
                        difference -> difference.judged().pace().orElse(0)));
    }

    /**
     * The phrases, the first to be said first.
     *
     * @param ways what was compared each way round, in order; one where both are alike
     */
    public static List<String> phrases(Map<Direction, Comparison> ways, Units units) {
        List<String> phrases = new ArrayList<>();
        for (Criterion criterion : MATTERS) {
            List<Found> found = found(ways, criterion);
            if (found.stream().anyMatch(Found::isNoticeable)) {
                phrases.add(phrase(found, ways.size() > 1, units));
            }
        }
        if (phrases.isEmpty()) {
            phrases.add("nothing that a driver would notice");
        }
        links(ways, units).ifPresent(phrases::add);
        return phrases;
    }

    /** "its links at rest: roll steer −0.52 %, pinion slope +0.38 deg": what is noticeable of them, the same in any turn. */
    private static Optional<String> links(Map<Direction, Comparison> ways, Units units) {
        String moved = ways.values().stream()
                .limit(1)
                .flatMap(comparison -> comparison.differences().stream())
                .filter(difference -> difference.judged().criterion().ofLinks())
                .filter(difference -> Math.abs(difference.difference())
                        >= difference.judged().criterion().noticeable())
                .map(difference -> {
                    Criterion criterion = difference.judged().criterion();
                    Unit unit = units.of(criterion);
                    return criterion.name() + " "
                            + Numbers.signed(unit.fromSi(difference.difference()), units.digits(criterion)) + " "
                            + unit.symbol();
                })
                .collect(Collectors.joining(", "));
        return moved.isEmpty() ? Optional.empty() : Optional.of("its links at rest: " + moved);
    }

    /** The first phrase without its sizes, where they stand in a table below; nothing where nothing is noticeable. */
    public static Optional<String> brief(Map<Direction, Comparison> ways, Units units) {
        return MATTERS.stream()
                .map(criterion -> found(ways, criterion).stream()
                        .filter(Found::isNoticeable)
                        .toList())
                .filter(told -> !told.isEmpty())
                .findFirst()
                .map(told -> {
                    Found first = told.get(0);
                    Found last = told.get(told.size() - 1);
                    boolean alike = moving(first.difference()).equals(moving(last.difference()));
                    return JudgedWords.pace(first.difference().judged()) + " " + moving(first.difference())
                            + (alike && told.size() == ways.size() ? "" : " " + BothWays.turning(first.direction()))
                            + (alike
                                    ? ""
                                    : ", and " + moving(last.difference()) + " " + BothWays.turning(last.direction()))
                            + causes(first, 1, units);
                });
    }

    private static List<Found> found(Map<Direction, Comparison> ways, Criterion criterion) {
        List<Found> found = new ArrayList<>();
        ways.forEach((direction, comparison) -> of(comparison, criterion)
                .ifPresent(difference -> found.add(new Found(direction, comparison, difference))));
        return found;
    }

    private static String phrase(List<Found> found, boolean both, Units units) {
        List<Found> told = found.stream().filter(Found::isNoticeable).toList();
        Found first = told.get(0);
        StringBuilder text = new StringBuilder(
                        JudgedWords.pace(first.difference().judged()))
                .append(' ')
                .append(moved(first, both && told.size() < 2, units));
        if (told.size() > 1) {
            Found second = told.get(1);
            String same = moving(first.difference());
            text = new StringBuilder(JudgedWords.pace(first.difference().judged())).append(' ');
            text.append(
                    same.equals(moving(second.difference()))
                            ? same + ", by " + sizes(first, second, units)
                            : moved(first, true, units) + ", and " + moved(second, true, units));
        }
        return text + causes(first, CAUSES, units);
    }

    private static String moved(Found found, boolean oneWay, Units units) {
        return moving(found.difference()) + (oneWay ? " " + BothWays.turning(found.direction()) : "") + ", by "
                + size(found, units);
    }

    private static String sizes(Found first, Found second, Units units) {
        String one = size(first, units);
        String other = size(second, units);
        return one.equals(other)
                ? one
                : one + " " + first.direction().key() + ", " + other + " "
                        + second.direction().key();
    }

    private static String moving(Difference difference) {
        return ComparisonWords.moved(
                difference.judged().criterion(), difference.base(), difference.value(), difference.difference() > 0);
    }

    private static String size(Found found, Units units) {
        return units.show(
                Math.abs(found.difference().difference()),
                found.difference().judged().criterion());
    }

    /** " (rear bar roll stiffness −1.93, front spring rate −0.64)", the largest first. */
    private static String causes(Found found, int atMost, Units units) {
        List<Change> changes = found.comparison().changes();
        if (changes.size() < 2 || found.difference().shares().isEmpty()) {
            return "";
        }
        Judged judged = found.difference().judged();
        List<Double> shares = found.difference().shares().get().shares();
        double all = shares.stream().mapToDouble(Math::abs).sum();
        List<String> causes = IntStream.range(0, shares.size())
                .boxed()
                .filter(i -> Math.abs(shares.get(i)) >= WORTH_SAYING * all)
                .sorted(Comparator.comparingDouble(i -> -Math.abs(shares.get(i))))
                .limit(atMost)
                .map(i -> ChangeWords.name(changes.get(i)) + " "
                        + Numbers.signed(
                                units.of(judged.criterion()).fromSi(shares.get(i)), units.digits(judged.criterion())))
                .toList();
        return causes.isEmpty() ? "" : " (" + String.join(", ", causes) + ")";
    }

    private record Found(Direction direction, Comparison comparison, Difference difference) {
        boolean isNoticeable() {
            return Math.abs(difference.difference())
                    >= difference.judged().criterion().noticeable();
        }
    }
}
