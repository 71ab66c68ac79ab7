package evenhand.choice;

import evenhand.answers.Aim;
import evenhand.answers.Answers;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.catalogue.Entries;
import evenhand.turn.TurnAnswer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.function.DoubleFunction;
import java.util.function.DoublePredicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.random.SobolSequenceGenerator;

/**
 * The search for the smallest changes that meet an aim and keep what is to be kept.
 *
 * <p>Each change is measured by its range: a move is the way from the present value over the width of the range, and the sum of
 * the moves' squares is to be least. There may be several least places, where what meets the aim is curved or kinked. So the
 * search starts from the present car and from the best of evenly scattered ones, each start walks to its {@link LeastMoves}, and
 * the least of all is taken. Where none of them does what it should, the place that misses least is looked for without slopes.
 */
public final class SeveralChanges {
    private static final int SCATTERED = 64;
    private static final int STARTS = 5;
    /** Corners of the ranges are all asked up to so many changes. */
    private static final int MOST_FOR_CORNERS = 6;

    /** With so many stepped changes, more steps than the two next to each are tried. */
    private static final int FEW_STEPPED = 4;
    /** The steps to either side are tried of so many changes. */
    private static final int MOST_STEPPED = 8;

    /** Less than this part of what is noticeable is no bend. */
    private static final double RIPPLE = 1e-3;
    /** A move that is at its end to this part of the range is at it. */
    private static final double AT_END = 1e-3;

    /** Parts of the way to what was found, at which the front is looked at. */
    private static final int ON_THE_WAY = 16;

    /** How much of the work is done when; about. */
    private static final double SCATTERED_ASKED = 0.05;

    private static final double REACH_KNOWN = 0.2;
    private static final double SOLVED = 0.9;

    private final Variation variation;
    private final Progress progress;
    private final List<Span> spans;
    private final Aim aim;
    private final List<Aim> keeps;
    private final Moves moves;

    private SeveralChanges(Variation variation, Aim aim, List<Aim> keeps) {
        this.variation = variation;
        this.progress = variation.progress();
        this.spans = variation.spans();
        this.aim = aim;
        this.keeps = keeps;
        this.moves = new Moves(
                variation, Stream.concat(Stream.of(aim), keeps.stream()).toList());
    }

    /**
     * Searches.
     *
     * @param steps that can be built, SI, in the order of the spans: only whole multiples are found; none for any value
     * @throws CancellationException if it is no longer wanted
     */
    public static Finding find(
            Entries car,
            List<Span> spans,
            Aim aim,
            List<Aim> keeps,
            List<OptionalDouble> steps,
            Trial trial,
            Progress progress) {
        return new SeveralChanges(Variation.of(car, spans, aim, keeps, trial, progress), aim, keeps).find(steps);
    }

    private Finding find(List<OptionalDouble> steps) {
        List<double[]> scattered = scattered();
        progress.part(0, SCATTERED_ASKED).each(scattered, moves::figure);
        List<double[]> answered = scattered.stream()
                .filter(move -> moves.figure(move).isPresent())
                .toList();
        if (answered.isEmpty()) {
            return new Finding.NoValue(
                    aim,
                    aim.judged().criterion().ofLinks()
                            ? TurnAnswer.Reason.CANNOT_REACH
                            : TurnAnswer.Reason.NO_EQUILIBRIUM,
                    Variation.noSuchFigure(aim, "the ranges"),
                    bends());
        }
        Finding.Reach reach = reach(answered);
        progress.at(REACH_KNOWN);
        double[] exact = smallest(answered);
        progress.at(SOLVED);
        double[] found = exact;
        boolean stepped = steps.stream().anyMatch(OptionalDouble::isPresent);
        if (stepped) {
            found = rounded(exact, steps);
        }
        double[] values = moves.values(found);
        boolean turnsNothing = variation.turnsNothing();
        Answers there = (turnsNothing ? variation.inFullAt(values) : moves.answers(found)).orElseThrow();
        boolean met = moves.does(exact)
                && aim.off(there).isEmpty()
                && (!stepped || (keepsAt(found) && (isExact() || moves.does(found))));
        boolean alike = variation.trial().ways().isBoth() && (turnsNothing ? there.isAlike() : moves.isAlike());
        return new Finding.Several(
                spans,
                aim,
                met,
                Arrays.stream(values).boxed().toList(),
                moves.figure(found).orElseThrow(),
                stepped && !Arrays.equals(found, exact)
                        ? Optional.of(Arrays.stream(moves.values(exact)).boxed().toList())
                        : Optional.empty(),
                reach,
                Variation.kept(keeps, there),
                notes(found, reach),
                new Finding.AllRound(
                        there,
                        alike,
                        bends(),
                        turnsNothing || there.frontFirst() ? Optional.empty() : lastFrontFirst(found, steps)));
    }

    /** What the figure can be in each bend by itself, of all cars that were asked. */
    private List<Finding.InBend> bends() {
        List<Finding.InBend> bends = new ArrayList<>();
        List<Variation.Place> places = variation.places();
        for (int bend = 0; bend < places.size(); bend++) {
            Variation.Place place = places.get(bend);
            bends.add(new Finding.InBend(
                    place.radius(), place.direction(), moves.reach(bend), OptionalDouble.empty(), List.of()));
        }
        return bends;
    }

    /** On the straight way from the present car to what was found; in steps, beside that way towards the present car. */
    private Optional<Finding.FrontFirst> lastFrontFirst(double[] found, List<OptionalDouble> steps) {
        double[] start = present();
        DoubleFunction<double[]> onTheWay = part -> IntStream.range(0, found.length)
                .mapToDouble(k -> start[k] + part * (found[k] - start[k]))
                .toArray();
        DoublePredicate does = part -> isFrontFirst(onTheWay.apply(part));
        List<Double> parts = IntStream.rangeClosed(0, ON_THE_WAY)
                .mapToObj(i -> (double) i / ON_THE_WAY)
                .toList();
        List<Boolean> known = progress.part(1, 1).each(parts, does::test);
        TreeMap<Double, Boolean> places = new TreeMap<>();
        for (int i = 0; i < parts.size(); i++) {
            places.put(parts.get(i), known.get(i));
        }
        return new LastFrontFirst(places, 1, 0, does)
                .value().stream()
                        .mapToObj(part -> steppedBack(onTheWay.apply(part), steps))
                        .filter(this::isFrontFirst)
                        .map(move -> new Finding.FrontFirst(
                                Arrays.stream(moves.values(move)).boxed().toList(),
                                moves.answers(move).orElseThrow()))
                        .findFirst();
    }

    private boolean isFrontFirst(double[] move) {
        return moves.answers(move)
                .filter(answers -> LastFrontFirst.does(answers, keeps))
                .isPresent();
    }

    /** Every change that has steps at its last whole one on the way from the present car. */
    private double[] steppedBack(double[] move, List<OptionalDouble> steps) {
        double[] back = move.clone();
        for (int k = 0; k < back.length; k++) {
            if (steps.get(k).isPresent()) {
                double step = steps.get(k).getAsDouble();
                double counts = moves.values(move)[k] / step;
                double whole = move[k] > 0 ? Math.floor(counts) : Math.ceil(counts);
                back[k] = moves.move(k, spans.get(k).cut(whole * step));
            }
        }
        return back;
    }

    private boolean isExact() {
        return aim.sense() == Aim.Sense.EXACTLY;
    }

    private boolean keepsAt(double[] move) {
        return moves.answers(move)
                .filter(answers -> Variation.keeps(answers, keeps))
                .isPresent();
    }

    /** The present car, evenly scattered ones, and those at the corners of the ranges. */
    private List<double[]> scattered() {
        List<double[]> all = new ArrayList<>();
        all.add(present());
        SobolSequenceGenerator sobol = new SobolSequenceGenerator(spans.size());
        for (int i = 0; i < SCATTERED; i++) {
            double[] part = sobol.nextVector();
            all.add(at(k -> part[k]));
        }
        if (spans.size() <= MOST_FOR_CORNERS) {
            for (int corner = 0; corner < 1 << spans.size(); corner++) {
                int here = corner;
                all.add(at(k -> (here >> k & 1)));
            }
        }
        return all;
    }

    /** The present car, or the nearest to it within the ranges. */
    private double[] present() {
        double[] present = new double[spans.size()];
        moves.cut(present);
        return present;
    }

    private interface Part {
        double of(int span);
    }

    private double[] at(Part part) {
        double[] move = IntStream.range(0, spans.size())
                .mapToDouble(k -> moves.lowest(k) + part.of(k) * (moves.highest(k) - moves.lowest(k)))
                .toArray();
        moves.cut(move);
        return move;
    }

    private Finding.Reach reach(List<double[]> answered) {
        ToDoubleFunction<double[]> figure = move -> moves.figure(move).orElseThrow();
        double[] low = answered.stream().min(Comparator.comparingDouble(figure)).orElseThrow();
        double[] high =
                answered.stream().max(Comparator.comparingDouble(figure)).orElseThrow();
        double noticeable = aim.judged().criterion().noticeable();
        double least = figure.applyAsDouble(low);
        double greatest = figure.applyAsDouble(high);
        // Where there is no figure, it is no better than at the other end of what was seen.
        double[] lower = least(low, move -> moves.figure(move).orElse(greatest + noticeable) / noticeable);
        double[] higher = least(high, move -> -moves.figure(move).orElse(least - noticeable) / noticeable);
        return new Finding.Reach(
                Math.min(least, figure.applyAsDouble(lower)), Math.max(greatest, figure.applyAsDouble(higher)));
    }

    private double[] least(double[] start, ToDoubleFunction<double[]> function) {
        int all = spans.size();
        double[] lowest = IntStream.range(0, all).mapToDouble(moves::lowest).toArray();
        double[] highest = IntStream.range(0, all).mapToDouble(moves::highest).toArray();
        return Valley.lowest(start, lowest, highest, function);
    }

    /** The smallest moves that do; where there are none, those that miss least. */
    private double[] smallest(List<double[]> answered) {
        double[] present = present();
        if (moves.does(present)) {
            return present;
        }
        List<double[]> starts = new ArrayList<>(List.of(present));
        answered.stream()
                .sorted(Comparator.comparingDouble(move -> moves.missing(move) + moves.size(move)))
                .filter(move -> !Arrays.equals(move, present))
                .limit(STARTS - 1)
                .forEach(starts::add);
        List<double[]> ends = new ArrayList<>(
                progress.part(REACH_KNOWN, SOLVED).each(starts, start -> new LeastMoves(moves).from(start)));
        if (ends.stream().noneMatch(moves::does)) {
            double[] best = Stream.concat(ends.stream(), answered.stream())
                    .min(Comparator.comparingDouble(moves::missingAimMost))
                    .orElseThrow();
            double[] nearest = least(best, moves::missingAimMost);
            ends.add(nearest);
            ends.add(new LeastMoves(moves).from(nearest));
        }
        ends.addAll(answered);
        Comparator<double[]> doing = Comparator.comparing(move -> !moves.does(move));
        return ends.stream()
                .filter(move -> moves.figure(move).isPresent())
                .min(doing.thenComparingDouble(
                        move -> moves.does(move) ? moves.size(move) : moves.missingAimMost(move)))
                .orElseThrow();
    }

    /** The buildable steps about a place that do best; what is free of steps is solved again for each. */
    private double[] rounded(double[] exact, List<OptionalDouble> steps) {
        long stepped = steps.stream().filter(OptionalDouble::isPresent).count();
        int few = stepped <= FEW_STEPPED ? 4 : 2;
        List<double[]> candidates = new ArrayList<>(List.of(exact.clone()));
        boolean[] fixed = new boolean[spans.size()];
        for (int k = 0; k < spans.size(); k++) {
            int span = k;
            fixed[k] = steps.get(k).isPresent();
            if (fixed[k]) {
                double step = steps.get(k).getAsDouble();
                int tried = k < MOST_STEPPED ? few : 1; // of more together than can be tried, the nearest
                candidates = candidates.stream()
                        .flatMap(move -> stepsAbout(move, span, step, tried).stream())
                        .toList();
            }
        }
        LeastMoves rest = new LeastMoves(moves, fixed);
        Comparator<double[]> keeping = Comparator.comparing(move -> !keepsAt(move));
        Comparator<double[]> best = keeping.thenComparingDouble(moves::missing).thenComparingDouble(moves::size);
        return progress.part(SOLVED, 1).each(candidates, rest::near).stream()
                .filter(move -> moves.figure(move).isPresent())
                .min(best)
                .map(move -> Stream.of(move, rest.from(move)).min(best).orElseThrow())
                .orElse(exact);
    }

    /** The steps next to a place within the range, the nearest first. */
    private List<double[]> stepsAbout(double[] move, int span, double step, int most) {
        double value = moves.values(move)[span];
        double first = spans.get(span).firstStep(step);
        double last = spans.get(span).lastStep(step);
        return IntStream.rangeClosed(-2, 2)
                .mapToDouble(i -> Math.rint(value / step) + i)
                .filter(count -> count >= first && count <= last)
                .map(count -> count * step)
                .boxed()
                .sorted(Comparator.comparingDouble(place -> Math.abs(place - value)))
                .limit(most)
                .map(place -> {
                    double[] stepped = move.clone();
                    stepped[span] = moves.move(span, place);
                    return stepped;
                })
                .toList();
    }

    private List<Finding.Note> notes(double[] move, Finding.Reach reach) {
        List<Finding.Note> notes = new ArrayList<>();
        if (!aim.isYesOrNo()
                && progress.part(1, 1).each(changes(), k -> isKink(move, k)).contains(true)) {
            notes.add(Finding.Note.KINK);
        }
        if (changes().stream().anyMatch(k -> isAtEnd(move, k))) {
            notes.add(Finding.Note.END_OF_RANGE);
        }
        if (reach.highest() - reach.lowest() < aim.judged().criterion().noticeable()) {
            notes.add(Finding.Note.FLAT);
        }
        if (changes().stream().anyMatch(k -> spans.get(k).isUnusual(moves.values(move)[k]))) {
            notes.add(Finding.Note.UNUSUAL);
        }
        return notes;
    }

    private List<Integer> changes() {
        return IntStream.range(0, spans.size()).boxed().toList();
    }

    /** Whether the figure has a kink along one of the changes. */
    private boolean isKink(double[] move, int change) {
        double ripple = RIPPLE * aim.judged().criterion().noticeable();
        return Kink.isAt(move[change], moves.lowest(change), moves.highest(change), ripple, at -> {
            double[] beside = move.clone();
            beside[change] = at;
            return moves.figure(beside);
        });
    }

    /** Whether a change has gone to an end of its range. */
    private boolean isAtEnd(double[] move, int change) {
        return Math.min(move[change] - moves.lowest(change), moves.highest(change) - move[change]) < AT_END
                && Math.abs(move[change]) > AT_END;
    }
}
