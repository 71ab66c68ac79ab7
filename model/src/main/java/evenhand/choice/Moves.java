package evenhand.choice;

import evenhand.answers.Aim;
import evenhand.answers.Answers;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;

/**
 * Changes as moves from the present car, each in widths of its range, and what is asked of them: the aim first, then what is to
 * be kept. Figures are in what is noticeable of them, so that all weigh alike. Every car is asked once.
 */
final class Moves {
    /** What a place without an answer misses, in what is noticeable; more the farther it is from the present car. */
    private static final double NO_ANSWER = 1e3;

    private static final double KEEPING = 1e4;
    /** In what is noticeable. */
    private static final double MARGIN = 1e-3;

    private final Variation variation;
    private final List<Aim> asked;
    private final Map<List<Double>, Optional<Answers>> answers = new ConcurrentHashMap<>();

    Moves(Variation variation, List<Aim> asked) {
        this.variation = variation;
        this.asked = asked;
    }

    int count() {
        return variation.spans().size();
    }

    List<Aim> asked() {
        return asked;
    }

    double lowest(int k) {
        return move(k, variation.spans().get(k).from());
    }

    double highest(int k) {
        return move(k, variation.spans().get(k).to());
    }

    /** The move to a value. */
    double move(int k, double value) {
        Span span = variation.spans().get(k);
        return (value - span.adjustable().si()) / span.width();
    }

    /** The values that moves lead to, SI. */
    double[] values(double[] move) {
        return IntStream.range(0, move.length)
                .mapToDouble(k -> {
                    Span span = variation.spans().get(k);
                    return span.cut(span.adjustable().si() + move[k] * span.width());
                })
                .toArray();
    }

    /** Puts moves back within their ranges. */
    void cut(double[] move) {
        for (int k = 0; k < move.length; k++) {
            move[k] = Math.max(lowest(k), Math.min(highest(k), move[k]));
        }
    }

    /** What the car answers there. */
    Optional<Answers> answers(double[] move) {
        return answers.computeIfAbsent(Arrays.stream(move).boxed().toList(), key -> variation.at(values(move)));
    }

    /** The figure of the aim, SI. */
    OptionalDouble figure(double[] move) {
        return answers(move).map(asked.get(0)::figure).orElseGet(OptionalDouble::empty);
    }

    /** Whether one way round is the mirror image of the other of every car that was asked. */
    boolean isAlike() {
        return answers.values().stream().flatMap(Optional::stream).allMatch(Answers::isAlike);
    }

    /** The least and the greatest that the figure of the aim was in one bend of the cars that were asked. */
    Optional<Finding.Reach> reach(int bend) {
        DoubleSummaryStatistics figures = answers.values().stream()
                .flatMap(Optional::stream)
                .flatMap(answered ->
                        asked.get(0).judged().si(answered, bend).stream().boxed())
                .mapToDouble(Double::doubleValue)
                .summaryStatistics();
        return figures.getCount() == 0
                ? Optional.empty()
                : Optional.of(new Finding.Reach(figures.getMin(), figures.getMax()));
    }

    /** What each thing asked for lacks, in what is noticeable of it: value wanted less value there. */
    double[] lacking(double[] move) {
        Optional<Answers> here = answers(move);
        double[] lacking = new double[asked.size()];
        for (int i = 0; i < lacking.length; i++) {
            Aim one = asked.get(i);
            OptionalDouble figure = here.map(one::figure).orElseGet(OptionalDouble::empty);
            double sign = one.sense() == Aim.Sense.AT_MOST ? -1 : 1;
            lacking[i] = figure.isPresent()
                    ? (one.value() - figure.getAsDouble())
                            / one.judged().criterion().noticeable()
                    : sign * NO_ANSWER * (1 + size(move));
        }
        return lacking;
    }

    /** Sum of the squares of what is missing; zero where all does. */
    double missing(double[] move) {
        return missing(move, 1, 0);
    }

    /** The same where keeping comes before the aim: what is to be kept weighs far more, and a little more is asked of it. */
    double missingAimMost(double[] move) {
        return missing(move, KEEPING, MARGIN);
    }

    private double missing(double[] move, double keeping, double margin) {
        double[] lacking = lacking(move);
        double sum = 0;
        for (int i = 0; i < lacking.length; i++) {
            double more = i == 0 ? 0 : margin;
            double missing = switch (asked.get(i).sense()) {
                case EXACTLY -> lacking[i];
                case AT_MOST -> Math.min(0, lacking[i] - more);
                case AT_LEAST -> Math.max(0, lacking[i] + more);
            };
            sum += (i == 0 ? 1 : keeping) * missing * missing;
        }
        return sum;
    }

    /** Whether the aim is met, an exact one on the mean of all bends, and all is kept. */
    boolean does(double[] move) {
        OptionalDouble figure = figure(move);
        return figure.isPresent()
                && asked.get(0).met(figure.getAsDouble())
                && Variation.keeps(answers(move).orElseThrow(), asked.subList(1, asked.size()));
    }

    /** Sum of the moves' squares. */
    double size(double[] move) {
        return Arrays.stream(move).map(one -> one * one).sum();
    }
}
