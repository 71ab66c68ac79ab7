package evenhand.roadtest;

import evenhand.car.Weights;
import evenhand.turn.Direction;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The steady pieces of a log, as readings: the longest first, none over another, each at least two seconds and above 0.05 g. Steady
 * is where straight lines fitted through it rise by less than 0.02 g a second in lateral acceleration and 5 degrees a second in
 * steering wheel: through the whole piece, and through every two seconds of it, for over a whole run any slope is small.
 *
 * <p>A piece's reading is its mean. Its standard error is that of its four quarters' means, {@code s/2}, joined in quadrature with
 * the instrument's.
 *
 * <p>Source: ISO 4138 for what is steady, its bounds as common practice; batch means for the error, from memory.
 */
public final class SteadyPieces {
    private static final double SHORTEST = 2;
    private static final double GENTLEST = 0.05 * Weights.GRAVITY;
    private static final double ACCELERATION_SLOPE = 0.02 * Weights.GRAVITY;
    private static final double WHEEL_SLOPE = Math.toRadians(5);
    private static final int QUARTERS = 4;
    /** So many places a piece may begin or end at: the work grows with their square. */
    private static final int MOST_PLACES = 2000;

    /**
     * A steady piece.
     *
     * @param from s
     * @param to s
     * @param lateralAcceleration mean, m/s², left positive
     * @param readings what it says, a channel each
     */
    public record Steady(double from, double to, double lateralAcceleration, List<Observation.Reading> readings) {
        public Steady {
            readings = List.copyOf(readings);
        }

        /** Whether a moment, s, lies in it. */
        public boolean holds(double time) {
            return from <= time && time <= to;
        }
    }

    private final double[] times;
    private final double[] acceleration;
    private final Optional<Sums> wheel;
    private final Sums lateral;
    private final Log log;
    private final Optional<Double> radius;
    private final int stride;

    private SteadyPieces(Log log, Optional<Double> radius) {
        this.log = log;
        this.radius = radius;
        times = log.times().stream().mapToDouble(Double::doubleValue).toArray();
        acceleration = acceleration(log, radius);
        lateral = new Sums(times, acceleration);
        wheel = log.column(Log.Kind.STEERING_WHEEL).map(one -> new Sums(times, array(one)));
        stride = 1 + times.length / MOST_PLACES;
    }

    private static double[] array(Log.Series series) {
        return series.values().stream().mapToDouble(Double::doubleValue).toArray();
    }

    /**
     * Readings of a log.
     *
     * @param radius of the circle, m, where one was driven
     * @return none where it says nothing of the pace, or nothing was steady
     */
    public static List<Observation.Reading> of(Log log, Optional<Double> radius) {
        return all(log, radius).stream()
                .flatMap(piece -> piece.readings().stream())
                .toList();
    }

    /** The same, each piece with its place in the log, in the order of time. */
    public static List<Steady> all(Log log, Optional<Double> radius) {
        if (!tellsPace(log, radius) || log.times().size() < QUARTERS) {
            return List.of();
        }
        return new SteadyPieces(log, radius).pieces();
    }

    /** Lateral acceleration at each moment of a log that tells the pace, m/s², left positive. */
    public static List<Double> lateralAcceleration(Log log, Optional<Double> radius) {
        return Arrays.stream(acceleration(log, radius)).boxed().toList();
    }

    /** Whether a log says how fast the car went. */
    public static boolean tellsPace(Log log, Optional<Double> radius) {
        boolean speed = log.column(Log.Kind.SPEED).isPresent();
        return (speed && (radius.isPresent() || log.column(Log.Kind.YAW_RATE).isPresent()))
                || log.column(Log.Kind.LATERAL_ACCELERATION).isPresent();
    }

    /** Lateral acceleration, left positive: v²/R by the side that the other columns tell, v times the yaw rate, or as it was felt. */
    private static double[] acceleration(Log log, Optional<Double> radius) {
        int n = log.times().size();
        double[] all = new double[n];
        Optional<Log.Series> speed = log.column(Log.Kind.SPEED);
        Optional<Log.Series> yaw = log.column(Log.Kind.YAW_RATE);
        for (int i = 0; i < n; i++) {
            if (speed.isPresent() && radius.isPresent()) {
                double v = speed.get().values().get(i);
                all[i] = side(log, i) * v * v / radius.get();
            } else if (speed.isPresent() && yaw.isPresent()) {
                all[i] = speed.get().values().get(i) * yaw.get().values().get(i);
            } else {
                all[i] = log.column(Log.Kind.LATERAL_ACCELERATION)
                        .orElseThrow()
                        .values()
                        .get(i);
            }
        }
        return all;
    }

    private static double side(Log log, int i) {
        for (Log.Kind kind : List.of(Log.Kind.YAW_RATE, Log.Kind.LATERAL_ACCELERATION)) {
            if (log.column(kind).isPresent()) {
                return Math.signum(log.column(kind).get().values().get(i));
            }
        }
        for (Log.Kind kind : List.of(Log.Kind.STEERING_WHEEL, Log.Kind.ROLL)) {
            if (log.column(kind).isPresent()) {
                return Math.signum(log.column(kind).get().values().get(i));
            }
        }
        return 0;
    }

    /** From one place to another, the second not in it. */
    private record Piece(int from, int to) {}

    private List<Steady> pieces() {
        List<Piece> pieces = new ArrayList<>();
        longest(runs(), pieces);
        return pieces.stream()
                .sorted(Comparator.comparingInt(Piece::from))
                .map(piece -> new Steady(
                        times[piece.from()],
                        times[piece.to() - 1],
                        lateral.mean(piece.from(), piece.to()),
                        readings(piece)))
                .toList();
    }

    /** Where two seconds are steady, for each place the place at which they end; the place itself where they are not. */
    private int[] runs() {
        int[] ends = new int[times.length];
        int to = 0;
        for (int from = 0; from < times.length; from++) {
            to = Math.max(to, from);
            while (to < times.length && times[to] - times[from] < SHORTEST) {
                to++;
            }
            ends[from] = to < times.length && isSteady(from, to + 1) ? to + 1 : from;
        }
        return ends;
    }

    private boolean isSteady(int from, int to) {
        return Math.abs(lateral.mean(from, to)) > GENTLEST
                && Math.abs(lateral.slope(from, to)) < ACCELERATION_SLOPE
                && (wheel.isEmpty() || Math.abs(wheel.get().slope(from, to)) < WHEEL_SLOPE);
    }

    /** Looks within each run of places from which two seconds are steady, the longest pieces first. */
    private void longest(int[] ends, List<Piece> pieces) {
        int from = 0;
        while (from < times.length) {
            if (ends[from] == from) {
                from++;
                continue;
            }
            int last = from;
            while (last + 1 < times.length && ends[last + 1] > last + 1) {
                last++;
            }
            within(from, ends[last], pieces);
            from = last + 1;
        }
    }

    /** The longest steady piece between two places, and then before and behind it. */
    private void within(int from, int to, List<Piece> pieces) {
        Optional<Piece> best = Optional.empty();
        double longest = 0;
        for (int start = from; start < to; start += stride) {
            for (int end = to; end > start + QUARTERS; end -= stride) {
                double length = times[end - 1] - times[start];
                if (length < SHORTEST || length <= longest) {
                    break;
                }
                if (isSteady(start, end)) {
                    best = Optional.of(new Piece(start, end));
                    longest = length;
                    break;
                }
            }
        }
        if (best.isPresent()) {
            pieces.add(best.get());
            within(from, best.get().from(), pieces);
            within(best.get().to(), to, pieces);
        }
    }

    private List<Observation.Reading> readings(Piece piece) {
        Direction turn = lateral.mean(piece.from(), piece.to()) > 0 ? Direction.LEFT : Direction.RIGHT;
        double into = turn == Direction.LEFT ? 1 : -1;
        List<Observation.Reading> readings = new ArrayList<>();
        log.column(Log.Kind.STEERING_WHEEL)
                .ifPresent(one -> readings.add(new Observation.Reading(
                        turn,
                        pace(piece),
                        Channel.STEERING_WHEEL,
                        measured(piece, array(one), into, one.tolerance()))));
        log.column(Log.Kind.ROLL)
                .ifPresent(one -> readings.add(new Observation.Reading(
                        turn, pace(piece), Channel.ROLL, measured(piece, array(one), into, one.tolerance()))));
        return readings;
    }

    private Pace pace(Piece piece) {
        Optional<Log.Series> speed = log.column(Log.Kind.SPEED);
        Optional<Log.Series> yaw = log.column(Log.Kind.YAW_RATE);
        double into = Math.signum(lateral.mean(piece.from(), piece.to()));
        if (speed.isPresent() && radius.isPresent()) {
            return new Pace.Speed(
                    measured(piece, array(speed.get()), 1, speed.get().tolerance()));
        }
        if (speed.isPresent() && yaw.isPresent()) {
            double v = new Sums(times, array(speed.get())).mean(piece.from(), piece.to());
            double rate = new Sums(times, array(yaw.get())).mean(piece.from(), piece.to());
            double instruments =
                    Math.hypot(speed.get().tolerance() * rate, yaw.get().tolerance() * v);
            return new Pace.Acceleration(measured(piece, acceleration, into, instruments));
        }
        return new Pace.Accelerometer(measured(
                piece,
                acceleration,
                into,
                log.column(Log.Kind.LATERAL_ACCELERATION).orElseThrow().tolerance()));
    }

    private Measured measured(Piece piece, double[] values, double sign, double tolerance) {
        int n = piece.to() - piece.from();
        double[] means = new double[QUARTERS];
        double mean = 0;
        for (int quarter = 0; quarter < QUARTERS; quarter++) {
            int from = piece.from() + n * quarter / QUARTERS;
            int to = piece.from() + n * (quarter + 1) / QUARTERS;
            for (int i = from; i < to; i++) {
                means[quarter] += values[i] / (to - from);
                mean += values[i] / n;
            }
        }
        double middle = 0;
        for (double one : means) {
            middle += one / QUARTERS;
        }
        double square = 0;
        for (double one : means) {
            square += (one - middle) * (one - middle) / (QUARTERS - 1);
        }
        return new Measured(sign * mean, tolerance).joined(2 * Math.sqrt(square) / 2);
    }

    /** Sums over a series, so that the line through any piece of it costs nothing. */
    private static final class Sums {
        private final double start;
        private final double[] t;
        private final double[] tt;
        private final double[] y;
        private final double[] ty;

        Sums(double[] times, double[] values) {
            int n = times.length;
            start = n == 0 ? 0 : times[0];
            t = new double[n + 1];
            tt = new double[n + 1];
            y = new double[n + 1];
            ty = new double[n + 1];
            for (int i = 0; i < n; i++) {
                double time = times[i] - start;
                t[i + 1] = t[i] + time;
                tt[i + 1] = tt[i] + time * time;
                y[i + 1] = y[i] + values[i];
                ty[i + 1] = ty[i] + time * values[i];
            }
        }

        double mean(int from, int to) {
            return (y[to] - y[from]) / (to - from);
        }

        double slope(int from, int to) {
            double n = to - from;
            double meanTime = (t[to] - t[from]) / n;
            double spread = tt[to] - tt[from] - n * meanTime * meanTime;
            return spread > 0 ? (ty[to] - ty[from] - meanTime * (y[to] - y[from])) / spread : 0;
        }
    }
}
