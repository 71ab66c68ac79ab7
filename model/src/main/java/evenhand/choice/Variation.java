package evenhand.choice;

import evenhand.answers.Aim;
import evenhand.answers.Answers;
import evenhand.answers.Judged;
import evenhand.answers.LinkCriteria;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.turn.Direction;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;

/**
 * A car with some of its values free.
 *
 * @param car all else
 * @param spans what is free
 * @param trial in which each car is asked
 * @param asked figures of the aim and of what is to be kept; where all are of links, no car turns while it is searched
 * @param progress of whoever waits for it
 */
record Variation(Entries car, List<Span> spans, Trial trial, List<Judged> asked, Progress progress) {
    Variation {
        spans = List.copyOf(spans);
        asked = List.copyOf(asked);
    }

    /** Of an aim and what is to be kept. */
    static Variation of(Entries car, List<Span> spans, Aim aim, List<Aim> keeps, Trial trial, Progress progress) {
        List<Judged> asked = Stream.concat(Stream.of(aim), keeps.stream())
                .map(Aim::judged)
                .distinct()
                .toList();
        return new Variation(car, spans, trial, asked, progress);
    }

    /** Whether only links are asked, or only what is straight ahead. */
    boolean turnsNothing() {
        return !asked.isEmpty()
                && asked.stream().allMatch(one -> one.criterion().needsNoTurn());
    }

    /**
     * What the car answers with these values, in the order of the spans; nothing where they make no car.
     *
     * @throws CancellationException if it is no longer wanted
     */
    Optional<Answers> at(double... values) {
        return turnsNothing() ? at(values, asked) : inFullAt(values);
    }

    /** The same, with all that can be judged: also what somebody wants to know of it afterwards. */
    Optional<Answers> inFullAt(double... values) {
        return at(
                values,
                trial.judgedAlso(Stream.concat(LinkCriteria.JUDGED.stream(), asked.stream())
                        .toList()));
    }

    private Optional<Answers> at(double[] values, List<Judged> figures) {
        progress.goOn();
        Entries changed = car;
        for (int i = 0; i < values.length; i++) {
            changed = Catalogue.with(changed, spans.get(i).path(), values[i]);
        }
        return Catalogue.build(changed).value().map(built -> trial.ask(built, figures));
    }

    /** Why nothing is found. */
    static String noSuchFigure(Aim aim, String range) {
        return aim.judged().criterion().ofLinks()
                ? "nowhere in " + range + " do the links reach so far"
                : "the car has no such figure anywhere in " + range + "; is its pace beyond the limit?";
    }

    /** The figure that decides an aim with these values, SI. */
    OptionalDouble figure(Aim aim, double... values) {
        return at(values).map(aim::figure).orElseGet(OptionalDouble::empty);
    }

    /** Whether what is to be kept is kept. */
    static boolean keeps(Answers answers, List<Aim> keeps) {
        for (Aim keep : keeps) {
            if (!keep.holds(answers)) {
                return false;
            }
        }
        return true;
    }

    /** How each thing to be kept stands in a car. */
    static List<Finding.Kept> kept(List<Aim> keeps, Answers answers) {
        return keeps.stream()
                .map(keep -> new Finding.Kept(keep, keep.figure(answers), keep.off(answers), keep.holds(answers)))
                .toList();
    }

    /**
     * One circle, one way round.
     *
     * @param radius m
     */
    record Place(double radius, Direction direction) {}

    /** Where the trial takes place, in the order of its answers' bends. */
    List<Place> places() {
        return trial.radii().stream()
                .flatMap(radius -> trial.ways().directions().stream().map(direction -> new Place(radius, direction)))
                .toList();
    }

    /** The same values free in one bend. */
    Variation in(Place place) {
        return new Variation(car, spans, trial.onCircle(place.radius()).turning(place.direction()), asked, progress);
    }
}
