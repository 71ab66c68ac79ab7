package evenhand.roadtest;

import evenhand.answers.Judged;
import evenhand.answers.Trial;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Weights;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.catalogue.OneNumber;
import evenhand.doubt.Learnt;
import evenhand.doubt.Tolerance;
import evenhand.ride.BodySwing;
import evenhand.turn.Direction;
import evenhand.turn.SteadyTurn;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Which three readings of a new test would narrow a figure of the first set-up most, one after the other, each with the former in C:
 * a reading's row j takes away
 * <pre>  C jᵀ j C/(1 + j C jᵀ)  </pre>
 * of C, so that of the figure's variance g C gᵀ, g its slopes, goes (g C jᵀ)²/(1 + j C jᵀ). The new test has a grip, a mark and a circle
 * of its own, as unsure as they usually are.
 *
 * <p>Source: Bayesian experimental design for linear models, Chaloner &amp; Verdinelli 1995, from memory.
 */
final class NextReadings {
    private static final int COUNT = 3;
    private static final double PACE_STEP = 0.1 * Weights.GRAVITY;
    private static final int PACES = 7;
    /** Of the limit, up to which a reading is asked for. */
    private static final double WITHIN = 0.9;
    /** A step for the figure's slopes, in standard deviations. */
    private static final double STEP = 1e-3;

    private final Entries car;
    private final RoadTest pattern;
    private final List<Tolerance> numbers;
    private final Correction correction;
    private final Learnt learnt;
    private final Judged figure;
    private final Tolerance.Unsaid unsaid;
    private final Trial trial;

    NextReadings(
            Entries car,
            RoadTest pattern,
            List<Tolerance> numbers,
            Correction correction,
            Learnt learnt,
            Judged figure,
            Tolerance.Unsaid unsaid) {
        this.car = car;
        this.pattern = pattern;
        this.numbers = numbers;
        this.correction = correction;
        this.learnt = learnt;
        this.figure = figure;
        this.unsaid = unsaid;
        trial = Trial.usual().with(figure);
    }

    /** None where the set-up has no such figure. */
    List<Findings.Next> three() {
        OneNumber now = new OneNumber(car.off(learnt));
        Optional<Car> built = now.asGiven();
        OptionalDouble value = built.map(this::figure).orElseGet(OptionalDouble::empty);
        if (value.isEmpty()) {
            return List.of();
        }
        RoadTest test = next(built.orElseThrow());
        Unknowns unknowns = new Unknowns(List.of(car), List.of(test), unsaid);
        OnTheRoad road = new OnTheRoad(List.of(test), unknowns);
        double[] z = moved(unknowns);
        Optional<Misses.At> here = road.at(z);
        if (test.observations().isEmpty() || here.isEmpty()) {
            return List.of();
        }
        double[][] rows = road.slopes(z, here.get());
        for (int i = 0; i < rows.length; i++) {
            for (int k = 0; k < rows[i].length; k++) {
                rows[i][k] /= here.get().sigmas()[i];
            }
        }
        return best(test, rows, covariance(unknowns), slopes(now, unknowns, value.getAsDouble()), value.getAsDouble());
    }

    private List<Findings.Next> best(
            RoadTest test, double[][] rows, double[][] covariance, double[] slopes, double now) {
        List<Findings.Next> next = new ArrayList<>();
        double[][] c = covariance;
        for (int count = 0; count < COUNT; count++) {
            int best = -1;
            double most = 0;
            for (int i = 0; i < rows.length; i++) {
                double[] told = product(c, rows[i]);
                double less = Math.pow(dot(slopes, told), 2) / (1 + dot(rows[i], told));
                if (less > most) {
                    most = less;
                    best = i;
                }
            }
            if (best < 0) {
                break;
            }
            c = with(c, rows[best]);
            double half = 2 * Math.sqrt(Math.max(0, dot(slopes, product(c, slopes))));
            next.add(told(test.observations().get(best), now - half, now + half));
        }
        return next;
    }

    private static Findings.Next told(Observation one, double low, double high) {
        if (one instanceof Observation.Reading reading) {
            return new Findings.Next(
                    reading.channel().key(),
                    Optional.of(reading.turn()),
                    OptionalDouble.of(reading.pace().acceleration(1)),
                    Optional.empty(),
                    low,
                    high);
        }
        Observation.Bounce bounce = (Observation.Bounce) one;
        return new Findings.Next(
                bounce.swing().key(), Optional.empty(), OptionalDouble.empty(), Optional.of(bounce.axle()), low, high);
    }

    /** All that could be read. */
    private RoadTest next(Car built) {
        List<Observation> all = new ArrayList<>();
        Measured radius = new Measured(pattern.radius(), RoadTest.USUAL_RADIUS_TOLERANCE * pattern.radius());
        boolean hasRatio = Catalogue.entry(car, "steering.ratio").isPresent();
        double limit = SteadyTurn.limit(built.settled(), radius.value()).orElse(0);
        for (int i = 1; i <= PACES; i++) {
            double pace = i * PACE_STEP;
            if (pace < WITHIN * limit) {
                for (Direction turn : Direction.values()) {
                    for (Channel channel : Channel.values()) {
                        if (hasRatio || channel != Channel.STEERING_WHEEL) {
                            all.add(new Observation.Reading(
                                    turn,
                                    new Pace.Acceleration(new Measured(pace, Usual.LATERAL_ACCELERATION)),
                                    channel,
                                    new Measured(0, Usual.of(channel))));
                        }
                    }
                }
            }
        }
        for (End axle : End.values()) {
            BodySwing.of(built.settled(), axle).ifPresent(swing -> {
                swing.frequency()
                        .ifPresent(frequency -> all.add(new Observation.Bounce(
                                axle,
                                Observation.Swing.FREQUENCY,
                                new Measured(frequency, Usual.FREQUENCY * frequency))));
                if (!Prediction.isTooDamped(built.settled(), axle)) {
                    all.add(new Observation.Bounce(
                            axle, Observation.Swing.NEXT_SWING, new Measured(0, Usual.NEXT_SWING)));
                }
            });
        }
        return new RoadTest(
                "",
                "",
                car,
                Optional.empty(),
                RoadTest.USUAL_GRIP,
                RoadTest.USUAL_STRAIGHT_AHEAD,
                Optional.of(radius),
                all);
    }

    /** Places of the new unknowns among those that were corrected; below zero of the new test's own. */
    private int[] places(Unknowns unknowns) {
        List<String> known = numbers.stream().map(Tolerance::path).toList();
        int[] places = new int[unknowns.count()];
        Arrays.setAll(
                places,
                k -> k < unknowns.numbers().size()
                        ? known.indexOf(unknowns.numbers().get(k).path())
                        : -1);
        return places;
    }

    private double[] moved(Unknowns unknowns) {
        return Arrays.stream(places(unknowns))
                .mapToDouble(place -> place < 0 ? 0 : correction.moved()[place])
                .toArray();
    }

    private double[][] covariance(Unknowns unknowns) {
        int[] places = places(unknowns);
        double[][] c = new double[places.length][places.length];
        for (int k = 0; k < places.length; k++) {
            for (int j = 0; j < places.length; j++) {
                c[k][j] = places[k] < 0 || places[j] < 0
                        ? (k == j ? 1 : 0)
                        : correction.covariance()[places[k]][places[j]];
            }
        }
        return c;
    }

    private OptionalDouble figure(Car built) {
        return figure.si(trial.ask(built, List.of(figure)));
    }

    private double[] slopes(OneNumber now, Unknowns unknowns, double value) {
        double[] slopes = new double[unknowns.count()];
        double[] z = moved(unknowns);
        List<Integer> all =
                IntStream.range(0, unknowns.numbers().size()).boxed().toList();
        all.parallelStream().forEach(k -> {
            double[] beside = z.clone();
            beside[k] += STEP;
            String path = unknowns.numbers().get(k).path();
            Optional<Adjustable> number = now.number(path);
            number.flatMap(own -> now.with(path, si -> unknowns.car(beside).of(own)))
                    .map(this::figure)
                    .filter(OptionalDouble::isPresent)
                    .ifPresent(there -> slopes[k] = (there.getAsDouble() - value) / STEP);
        });
        return slopes;
    }

    private static double[] product(double[][] c, double[] row) {
        return Arrays.stream(c).mapToDouble(one -> dot(one, row)).toArray();
    }

    private static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int k = 0; k < one.length; k++) {
            sum += one[k] * other[k];
        }
        return sum;
    }

    /** C with one reading more. */
    static double[][] with(double[][] c, double[] row) {
        double[] told = product(c, row);
        double all = 1 + dot(row, told);
        double[][] less = new double[c.length][c.length];
        for (int k = 0; k < c.length; k++) {
            for (int j = 0; j < c.length; j++) {
                less[k][j] = c[k][j] - told[k] * told[j] / all;
            }
        }
        return less;
    }
}
