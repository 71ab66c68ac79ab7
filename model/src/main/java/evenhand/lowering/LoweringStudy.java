package evenhand.lowering;

import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.car.Car;
import evenhand.quantity.InvalidValue;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.function.Predicate;

/**
 * A car let down step by step on its own links and springs, and the lowest height at which it meets every {@link Need}.
 *
 * <p>Where a need ends is looked for downwards from the first height in steps of its own, whatever steps are to be shown, and
 * halved to a micrometre; so it does not depend on them. A need that fails and comes back within such a step is not seen.
 *
 * <p>A need must be met in every bend that was asked: both ways round and on every circle.
 *
 * @param rows the heights to be shown, from high to low
 * @param ends for each need, in their order, where it ends
 * @param works the car at the lowest height that meets every need, or where not even the first does, at the least one above
 *     it that does; none where none was found
 * @param alike whether both ways round were asked and one is the mirror image of the other
 * @param otherTurn the other way round by itself, on the first circle; none where it was not asked or is alike
 * @param atRadius each further circle by itself
 */
public record LoweringStudy(
        List<Stance> rows,
        List<Ending> ends,
        Optional<Stance> works,
        boolean alike,
        Optional<LoweringStudy> otherTurn,
        List<OnCircle> atRadius) {
    /** Steps of the search, m. */
    private static final double SEARCH_STEP = 0.002;

    /** A height is told to this, m. */
    private static final double NEAR_ENOUGH = 1e-6;

    /** Nobody raises a car further than this to make it work, m. */
    private static final double HIGHEST = 0.1;

    /** Within this part of a step, a height is the last one. */
    private static final double ROUNDING = 1e-6;

    public LoweringStudy {
        rows = List.copyOf(rows);
        ends = List.copyOf(ends);
        atRadius = List.copyOf(atRadius);
    }

    /**
     * The same car on one circle.
     *
     * @param radius m
     */
    public record OnCircle(double radius, LoweringStudy study) {}

    /**
     * How far a need is met.
     *
     * @param need what must be
     * @param lowered how far it can be let down with it, m; none where it is met all the way
     * @param atOnce whether it is not even met at the first height
     */
    public record Ending(Need need, OptionalDouble lowered, boolean atOnce) {
        static Ending never(Need need) {
            return new Ending(need, OptionalDouble.empty(), false);
        }
    }

    /**
     * Lets a car down.
     *
     * @param car as read from a file
     * @param from first height, m of lowering; below zero raised
     * @param to last height
     * @param step between rows, above zero; the last height is always a row
     * @param reserve that springs are to keep, g
     * @throws InvalidValue if the first or the last height is further than a body can go
     * @throws CancellationException if it is no longer wanted
     */
    public static LoweringStudy of(
            Car car, double from, double to, double step, OptionalDouble reserve, Trial trial, Progress progress) {
        Search search = new Search(car, from, to, step, reserve, trial, progress);
        LoweringStudy all = search.study(bend -> true);
        List<OnCircle> further = new ArrayList<>();
        for (double radius : trial.radii().subList(1, trial.radii().size())) {
            LoweringStudy circle = search.study(bend -> bend.radius() == radius);
            further.add(new OnCircle(radius, circle.with(search.otherTurn(circle, radius), List.of())));
        }
        return all.with(search.otherTurn(all, trial.radius()), further);
    }

    /**
     * The {@link #lowest()} of a study by itself, which ends at the first need that is not met.
     *
     * @throws InvalidValue if the last height is further than a body can go before a need ends
     */
    public static OptionalDouble lowest(Car car, double from, double to, Trial trial) {
        return new Search(car, from, to, to - from, OptionalDouble.empty(), trial, Progress.NONE).lowest();
    }

    private LoweringStudy with(Optional<LoweringStudy> other, List<OnCircle> circles) {
        return new LoweringStudy(rows, ends, works, alike, other, circles);
    }

    /** Steps between two heights, the last one shorter where they do not divide. */
    private static int steps(double from, double to, double step) {
        return (int) Math.ceil((to - from) / step - ROUNDING);
    }

    /** What stops it first; none where every need is met all the way down. */
    public Optional<Ending> stop() {
        return stop(ends);
    }

    /** The lowest that works of the heights that were asked for, m; none where not even the first does. */
    public OptionalDouble lowest() {
        return works.isPresent() && works.get().lowered() >= first().lowered()
                ? OptionalDouble.of(works.get().lowered())
                : OptionalDouble.empty();
    }

    /** How much higher than the first height it has to stand where that does not do, m. */
    public OptionalDouble higher() {
        return works.isPresent() && works.get().lowered() < first().lowered()
                ? OptionalDouble.of(first().lowered() - works.get().lowered())
                : OptionalDouble.empty();
    }

    private static Optional<Ending> stop(List<Ending> ends) {
        Optional<Ending> atOnce = ends.stream().filter(Ending::atOnce).findFirst();
        return atOnce.isPresent()
                ? atOnce
                : ends.stream()
                        .filter(end -> end.lowered().isPresent())
                        .min(Comparator.comparingDouble(end -> end.lowered().getAsDouble()));
    }

    /** The heights to be shown as they are in the first bend that was asked. */
    public List<Stance> inFirstBend() {
        return rows.stream()
                .map(row -> row instanceof Stance.Stands stands
                        ? stands.in(stands.bends().get(0)::equals)
                        : row)
                .toList();
    }

    public Stance first() {
        return rows.get(0);
    }

    public Stance last() {
        return rows.get(rows.size() - 1);
    }

    /** Asks one car at height after height, each height once. */
    private static final class Search {
        private final Car car;
        private final double from;
        private final double to;
        private final double step;
        private final OptionalDouble reserve;
        private final Trial trial;
        private final Progress progress;
        private final Map<Double, Stance> known = new HashMap<>();
        private final Map<Double, Stance> judged = new HashMap<>();
        private Predicate<Stance.Bend> seen = bend -> true;

        Search(Car car, double from, double to, double step, OptionalDouble reserve, Trial trial, Progress progress) {
            this.car = car;
            this.from = from;
            this.to = to;
            this.step = step;
            this.reserve = reserve;
            this.trial = trial;
            this.progress = progress;
        }

        /** The study of some of the bends alone. */
        LoweringStudy study(Predicate<Stance.Bend> bends) {
            seen = bends;
            List<Stance> rows = new ArrayList<>();
            int steps = steps(from, to, step);
            int searched = steps(from, to, SEARCH_STEP);
            double work = steps + searched + 2;
            for (int i = 0; i <= steps; i++) {
                rows.add(at(i == steps ? to : from + i * step));
                progress.at(rows.size() / work);
            }
            List<Need> met = new ArrayList<>(Need.ALL);
            Ending[] ends = new Ending[Need.ALL.size()];
            double above = from;
            for (int i = 0; i <= searched && !met.isEmpty(); i++) {
                double here = i == searched ? to : from + i * SEARCH_STEP;
                Stance stance = judgedAt(here);
                for (Need need : List.copyOf(met)) {
                    if (!need.metBy(stance)) {
                        met.remove(need);
                        OptionalDouble lowered =
                                i == 0 ? OptionalDouble.empty() : OptionalDouble.of(end(need, above, here));
                        ends[Need.ALL.indexOf(need)] = new Ending(need, lowered, i == 0);
                    }
                }
                above = here;
                progress.at((rows.size() + i + 1) / work);
            }
            for (Need need : met) {
                ends[Need.ALL.indexOf(need)] = Ending.never(need);
            }
            List<Ending> all = List.of(ends);
            boolean alike =
                    rows.stream().allMatch(row -> row instanceof Stance.Stands stands && trial.isAlike(stands.car()));
            return new LoweringStudy(rows, all, works(all), alike, Optional.empty(), List.of());
        }

        /** The lowest height down to which every need is met, m; none where not even the first does. */
        OptionalDouble lowest() {
            int searched = steps(from, to, SEARCH_STEP);
            double above = from;
            for (int i = 0; i <= searched; i++) {
                double here = i == searched ? to : from + i * SEARCH_STEP;
                Stance stance = judgedAt(here);
                double met = above;
                OptionalDouble first = Need.ALL.stream()
                        .filter(need -> !need.metBy(stance))
                        .mapToDouble(need -> end(need, met, here))
                        .min();
                if (first.isPresent()) {
                    return i == 0 ? OptionalDouble.empty() : first;
                }
                above = here;
            }
            return OptionalDouble.of(to);
        }

        private Optional<Stance> works(List<Ending> ends) {
            Optional<Ending> stop = stop(ends);
            if (stop.isPresent() && stop.get().atOnce()) {
                return higher();
            }
            return Optional.of(
                    at(stop.map(Ending::lowered).orElse(OptionalDouble.of(to)).orElse(to)));
        }

        /** The other way round by itself, where both were asked and it is another turn. */
        Optional<LoweringStudy> otherTurn(LoweringStudy study, double radius) {
            return !trial.ways().isBoth() || study.alike()
                    ? Optional.empty()
                    : Optional.of(study(bend -> bend.radius() == radius
                            && bend.direction() == trial.direction().other()));
        }

        Stance at(double lowered) {
            progress.goOn();
            return known.computeIfAbsent(lowered, down -> Stance.of(car, down, reserve, trial))
                    .in(seen);
        }

        /** The same as far as needs are judged: a height that is only tried need not be told of. */
        Stance judgedAt(double lowered) {
            progress.goOn();
            Stance told = known.get(lowered);
            return (told != null
                            ? told
                            : judged.computeIfAbsent(lowered, down -> Stance.judged(car, down, reserve, trial)))
                    .in(seen);
        }

        /** The lowest height that still meets a need which is met above and not below, m. */
        double end(Need need, double above, double below) {
            double met = above;
            double missed = below;
            while (missed - met > NEAR_ENOUGH) {
                double middle = (met + missed) / 2;
                Stance stance = need.atRest() ? Stance.atRest(car, middle, reserve, trial) : judgedAt(middle);
                if (need.metBy(stance)) {
                    met = middle;
                } else {
                    missed = middle;
                }
            }
            return met;
        }

        /** The least height above one that meets every need. */
        Optional<Stance> higher() {
            double below = 0;
            for (double up = SEARCH_STEP; up <= HIGHEST; up += SEARCH_STEP) {
                try {
                    if (meetsAll(from - up)) {
                        double met = up;
                        while (met - below > NEAR_ENOUGH) {
                            double middle = (met + below) / 2;
                            if (meetsAll(from - middle)) {
                                met = middle;
                            } else {
                                below = middle;
                            }
                        }
                        return Optional.of(at(from - met));
                    }
                } catch (InvalidValue e) {
                    return Optional.empty(); // the axle would hang
                }
                below = up;
            }
            return Optional.empty();
        }

        private boolean meetsAll(double lowered) {
            Stance stance = judgedAt(lowered);
            return Need.ALL.stream().allMatch(need -> need.metBy(stance));
        }
    }
}
