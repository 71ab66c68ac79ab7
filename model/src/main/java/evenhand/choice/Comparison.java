package evenhand.choice;

import evenhand.answers.Answers;
import evenhand.answers.Judged;
import evenhand.answers.LinkCriteria;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.catalogue.Entries;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import java.util.stream.Stream;

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

    /** So many changes are told apart where a comparison stands beside other answers: 2 to this power is what is computed. */
    static final int FEW = 4;

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

    /** Compares two cars that both build in the first bend of a trial, while nobody waits. */
    public static Comparison of(Entries base, Entries other, Trial trial) {
        return of(base, other, trial, Progress.NONE);
    }

    /**
     * Compares two cars that both build, in the first bend of a trial.
     *
     * @throws CancellationException if it is no longer wanted
     */
    public static Comparison of(Entries base, Entries other, Trial trial, Progress progress) {
        return each(base, other, trial.firstBend(), progress).get(0);
    }

    /**
     * Compares two cars that both build in each bend of a trial, in its order; every combination is asked once for all.
     *
     * @throws CancellationException if it is no longer wanted
     */
    public static List<Comparison> each(Entries base, Entries other, Trial trial, Progress progress) {
        return each(base, other, new AskedOnce(trial), progress);
    }

    /**
     * The same, where other cars are compared in the trial too: of what they have been asked nothing is asked again.
     *
     * @throws CancellationException if it is no longer wanted
     */
    public static List<Comparison> each(Entries base, Entries other, AskedOnce asked, Progress progress) {
        Trial trial = asked.trial();
        List<Change> changes = Change.between(base, other);
        List<Optional<Answers>> answers = answers(base, changes, asked, progress);
        List<Judged> judged = judged(trial, answers);
        return IntStream.range(0, trial.bends())
                .mapToObj(bend -> of(
                        changes,
                        answers.stream()
                                .map(car -> car.map(all -> all.in(bend)))
                                .toList(),
                        judged))
                .toList();
    }

    /**
     * Compares some figures alone of two cars that both build, quick enough to stand beside other answers: where there are more than
     * {@link #FEW} changes, those that move the figures least by themselves, made first or undone last, are taken together.
     *
     * @throws CancellationException if it is no longer wanted
     */
    public static Comparison ofFew(Entries base, Entries other, Trial trial, List<Judged> figures, Progress progress) {
        Trial asked = trial;
        for (Judged figure : figures) {
            asked = asked.with(figure);
        }
        AskedOnce once = new AskedOnce(asked, figures);
        List<Change> changes = fewest(base, Change.between(base, other), once, figures, progress.part(0, 0.2));
        return of(changes, answers(base, changes, once, progress.part(0.2, 1)), figures);
    }

    private static List<Change> fewest(
            Entries base, List<Change> changes, AskedOnce asked, List<Judged> figures, Progress progress) {
        int n = changes.size();
        if (n <= FEW) {
            return changes;
        }
        int all = ~0;
        List<Integer> sets = new ArrayList<>(List.of(0, all));
        for (int i = 0; i < n; i++) {
            sets.add(1 << i);
            sets.add(all ^ 1 << i);
        }
        List<Optional<Answers>> answers = answers(base, changes, sets, asked, progress);
        List<Integer> largestFirst = IntStream.range(0, n)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -Math.max(
                        size(answers.get(0), answers.get(2 + 2 * i), figures),
                        size(answers.get(1), answers.get(3 + 2 * i), figures))))
                .toList();
        List<Integer> kept = largestFirst.subList(0, FEW - 1).stream().sorted().toList();
        List<Change> fewer = new ArrayList<>();
        List<Change> rest = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            (kept.contains(i) ? fewer : rest).add(changes.get(i));
        }
        fewer.add(Change.together(rest));
        return fewer;
    }

    /** How far apart two cars are in what is noticeable of the figures; infinitely where only one of them has a figure. */
    private static double size(Optional<Answers> one, Optional<Answers> other, List<Judged> figures) {
        double size = 0;
        for (Judged figure : figures) {
            OptionalDouble here = one.map(figure::si).orElseGet(OptionalDouble::empty);
            OptionalDouble there = other.map(figure::si).orElseGet(OptionalDouble::empty);
            double apart = here.isPresent() && there.isPresent()
                    ? Math.abs(there.getAsDouble() - here.getAsDouble())
                            / figure.criterion().noticeable()
                    : here.equals(there) ? 0 : Double.POSITIVE_INFINITY;
            size = Math.max(size, apart);
        }
        return size;
    }

    /** What every combination of the changes answers. */
    private static List<Optional<Answers>> answers(
            Entries base, List<Change> changes, AskedOnce asked, Progress progress) {
        List<Integer> sets = IntStream.range(0, 1 << changes.size()).boxed().toList();
        return answers(base, changes, sets, asked, progress);
    }

    private static List<Optional<Answers>> answers(
            Entries base, List<Change> changes, List<Integer> sets, AskedOnce asked, Progress progress) {
        return progress.each(sets, set -> asked.of(with(base, changes, set)));
    }

    private static Comparison of(List<Change> changes, List<Optional<Answers>> answers, List<Judged> figures) {
        List<Difference> differences = new ArrayList<>();
        List<Judged> missing = new ArrayList<>();
        for (Judged judged : figures) {
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

    /** What is judged; the ride, the links and what is straight ahead where the first or the last car has them. */
    private static List<Judged> judged(Trial trial, List<Optional<Answers>> answers) {
        Optional<Answers> first = answers.get(0);
        Optional<Answers> last = answers.get(answers.size() - 1);
        List<Judged> judged = new ArrayList<>(
                last.isPresent() && last.get().isDamped()
                        ? trial.judged(last.get())
                        : first.map(trial::judged).orElseGet(trial::judged));
        LinkCriteria.JUDGED.stream()
                .filter(one -> Stream.of(first, last)
                        .flatMap(Optional::stream)
                        .anyMatch(car -> one.si(car).isPresent()))
                .forEach(judged::add);
        first.stream()
                .flatMap(car -> car.ahead().judged().stream())
                .filter(one -> !judged.contains(one))
                .forEach(judged::add);
        return judged;
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
