package evenhand.choice;

import evenhand.answers.Answers;
import evenhand.answers.Judged;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;

/**
 * The differences between two cars in one trial, each shared out to the changes between them.
 *
 * <p>Every combination of the changes is built and asked, so that what two changes do only together is split fairly. A
 * combination that has no answer, or none at a pace, is avoided: see {@link Shapley}.
 *
 * @param changes from the base to the other car
 * @param differences where both cars have a value
 * @param missing what only one of the cars has a value of, or neither
 * @param combinations how many cars were asked
 * @param withoutAnswer how many of them do not turn
 */
public record Comparison(
        List<Change> changes, List<Difference> differences, List<Judged> missing, int combinations, int withoutAnswer) {
    /** A change whose largest step on the way stays below this part of what is noticeable has no effect. */
    private static final double NO_EFFECT = 1e-6;

    /**
     * One figure of both cars, SI.
     *
     * @param shares in the order of the changes; none where no order of the changes has a value all the way
     */
    public record Difference(Judged judged, double base, double value, Optional<Shapley> shares) {
        public double difference() {
            return value - base;
        }
    }

    public Comparison {
        changes = List.copyOf(changes);
        differences = List.copyOf(differences);
        missing = List.copyOf(missing);
    }

    /** Compares two cars that both build, while nobody waits. */
    public static Comparison of(Entries base, Entries other, Trial trial) {
        return of(base, other, trial, Progress.NONE);
    }

    /**
     * Compares two cars that both build.
     *
     * @throws CancellationException if it is no longer wanted
     */
    public static Comparison of(Entries base, Entries other, Trial trial, Progress progress) {
        List<Change> changes = Change.between(base, other);
        List<Integer> sets = IntStream.range(0, 1 << changes.size()).boxed().toList();
        List<Optional<Answers>> answers = progress.each(
                sets, set -> Catalogue.build(with(base, changes, set)).value().map(trial::ask));
        List<Difference> differences = new ArrayList<>();
        List<Judged> missing = new ArrayList<>();
        for (Judged judged : judged(trial, answers)) {
            List<OptionalDouble> values = answers.stream()
                    .map(answer -> answer.map(judged::si).orElseGet(OptionalDouble::empty))
                    .toList();
            OptionalDouble first = values.get(0);
            OptionalDouble last = values.get(values.size() - 1);
            if (first.isPresent() && last.isPresent()) {
                differences.add(new Difference(
                        judged, first.getAsDouble(), last.getAsDouble(), Shapley.of(changes.size(), values::get)));
            } else {
                missing.add(judged);
            }
        }
        int silent = (int) answers.stream()
                .filter(answer -> answer.isEmpty() || answer.get().noTurn().isPresent())
                .count();
        return new Comparison(changes, differences, missing, answers.size(), silent);
    }

    /** What is judged; the ride where the first or the last car has dampers. */
    private static List<Judged> judged(Trial trial, List<Optional<Answers>> answers) {
        Optional<Answers> last = answers.get(answers.size() - 1);
        return last.isPresent() && last.get().isDamped()
                ? trial.judged(last.get())
                : answers.get(0).map(trial::judged).orElseGet(trial::judged);
    }

    private static Entries with(Entries base, List<Change> changes, int set) {
        Entries car = base;
        for (int i = 0; i < changes.size(); i++) {
            if ((set & 1 << i) != 0) {
                car = changes.get(i).on(car);
            }
        }
        return car;
    }

    /** The changes that move none of the figures, whatever else is changed. */
    public List<Change> withoutEffect() {
        List<Change> idle = new ArrayList<>();
        for (int i = 0; i < changes.size(); i++) {
            if (!differences.isEmpty() && !moves(i)) {
                idle.add(changes.get(i));
            }
        }
        return idle;
    }

    private boolean moves(int change) {
        return differences.stream()
                .anyMatch(difference -> difference.shares().isEmpty()
                        || difference.shares().get().largest().get(change)
                                > NO_EFFECT * difference.judged().criterion().noticeable());
    }

    /** The figures whose shares rest on some of the orders only, or that have none. */
    public List<Difference> notByAllOrders() {
        return differences.stream()
                .filter(difference -> difference.shares().map(Shapley::avoids).orElse(true))
                .toList();
    }
}
