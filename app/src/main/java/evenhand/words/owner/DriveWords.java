package evenhand.words.owner;

import evenhand.answers.Criterion;
import evenhand.turn.TurnAnswer;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What to feel for on the first drive: what the sums promise, so that a driver notices where they were wrong. */
public final class DriveWords {
    private DriveWords() {}

    /**
     * What should be felt, the limit first.
     *
     * @param feels figures that are felt
     * @param stops what became of the rubber in a bend, as a sentence, where it changed
     */
    public static List<String> of(List<Known> feels, Optional<String> stops, List<TurnAnswer.Turns> ways, Units units) {
        List<String> sentences = new ArrayList<>();
        for (TurnAnswer.Turns way : ways) {
            if (!way.limit().frontFirst()) {
                sentences.add("Turning " + way.direction().key() + ", stay well below "
                        + GotWords.about(way.limit().lateralAcceleration())
                        + ": there the tail is the end that goes.");
            }
        }
        feels.stream()
                .filter(one -> one.isNoticed() && one.sureness() != Sureness.OPEN)
                .flatMap(one -> should(one, units).stream())
                .forEach(sentences::add);
        stops.ifPresent(sentences::add);
        sentences.add(
                sentences.isEmpty()
                        ? "It should feel as it did. If it does not, stop and tell the workshop."
                        : "If it does something else, stop and tell the workshop: then a measurement was wrong.");
        return sentences;
    }

    private static Optional<String> should(Known known, Units units) {
        Criterion criterion = known.judged().criterion();
        boolean more = known.difference().orElseThrow() > 0;
        String by =
                Rounded.plain(criterion, Math.abs(known.difference().getAsDouble()), known.doubtOfDifference(), units);
        if (criterion.equals(Criterion.LEAN)) {
            return Optional.of("In a brisk bend the body should lean " + (more ? "more" : "less") + ", by " + by + ".");
        }
        if (criterion.equals(Criterion.UNDERSTEER)) {
            return Optional.of(
                    more
                            ? "In a brisk bend it should ask for more steering as you go faster."
                            : "In a brisk bend it should ask for less steering as you go faster.");
        }
        if (criterion.equals(Criterion.NEAR_UNDERSTEER)) {
            return Optional.of(
                    more
                            ? "Near its limit it should run wide more plainly, and come back when you ease off."
                            : "Near its limit it should run wide less plainly: there is less warning than before.");
        }
        return criterion.equals(Criterion.SEAT_COMFORT)
                ? Optional.of("On a bumpy road it should be " + (more ? "firmer" : "softer") + " than it was.")
                : Optional.empty();
    }
}
