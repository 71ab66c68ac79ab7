package evenhand.suspension;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * A force over travel (m) or speed (m/s) as straight lines between corners, the outermost going on: a spring with its
 * stops, or a damper, for whoever follows it in time and has to know where it bends.
 *
 * <p>On piece p, between {@link #low} and {@link #high}, the force is {@code intercept(p) + slope(p)·v}, and with it
 * what runs along no line, if there is any: {@link CurvedForce}. It is then good for one thread.
 */
public final class ForceLines {
    /** Corners closer than this are one. */
    private static final double SAME = 1e-9;

    private static final int MOST_STEPS = 50;

    private final double[] corners;
    private final double[] slopes;
    private final double[] intercepts;
    private final Optional<CurvedForce> curve;
    private final boolean isStraight;

    private ForceLines(double[] corners, DoubleUnaryOperator law, Optional<CurvedForce> curve) {
        this.corners = corners;
        this.curve = curve;
        isStraight = curve.isEmpty();
        int pieces = corners.length + 1;
        slopes = new double[pieces];
        intercepts = new double[pieces];
        for (int p = 0; p < pieces; p++) {
            double from = p == 0 ? corners[0] - 1 : corners[p - 1];
            double to = p == corners.length ? corners[corners.length - 1] + 1 : corners[p];
            slopes[p] = chordSlope(law, from, to);
            double corner = p == 0 ? to : from;
            intercepts[p] = law.applyAsDouble(corner) - slopes[p] * corner;
        }
    }

    /** Slope of the line between two places of a law, (F(to) − F(from))/(to − from), N/m or N·s/m. */
    private static double chordSlope(DoubleUnaryOperator law, double from, double to) {
        return (law.applyAsDouble(to) - law.applyAsDouble(from)) / (to - from);
    }

    /**
     * The lines of a law that bends at these places and nowhere else.
     *
     * @param corners in any order; infinite ones stand for none
     */
    static ForceLines of(DoubleUnaryOperator law, double... corners) {
        return with(Optional.empty(), law, corners);
    }

    /** The same with a force beside the lines, whose own corners are among them. */
    static ForceLines with(Optional<CurvedForce> curve, DoubleUnaryOperator law, double... corners) {
        double[] sorted =
                Arrays.stream(corners).filter(Double::isFinite).sorted().toArray();
        double[] apart = new double[Math.max(1, sorted.length)];
        int count = 0;
        for (double corner : sorted) {
            if (count == 0 || corner - apart[count - 1] > SAME) {
                apart[count++] = corner;
            }
        }
        return new ForceLines(Arrays.copyOf(apart, Math.max(1, count)), law, curve);
    }

    /** No force anywhere. */
    public static ForceLines none() {
        return of(v -> 0);
    }

    public int pieces() {
        return slopes.length;
    }

    /** The piece that holds at a place. */
    public int pieceAt(double v) {
        int p = 0;
        while (p < corners.length && v > corners[p]) {
            p++;
        }
        return p;
    }

    /** Lower end of a piece, −∞ of the first. */
    public double low(int piece) {
        return piece == 0 ? Double.NEGATIVE_INFINITY : corners[piece - 1];
    }

    /** Upper end of a piece, ∞ of the last. */
    public double high(int piece) {
        return piece == corners.length ? Double.POSITIVE_INFINITY : corners[piece];
    }

    /** Slope of the line of a piece. */
    public double slope(int piece) {
        return slopes[piece];
    }

    /** Slope of the force at a place on a piece. */
    public double slope(int piece, double v) {
        if (isStraight) {
            return slopes[piece];
        }
        curve.orElseThrow().at(v);
        return slopes[piece] + curve.orElseThrow().rate;
    }

    public double force(double v) {
        return force(pieceAt(v), v);
    }

    private double curved(double v) {
        curve.orElseThrow().at(v);
        return curve.orElseThrow().force;
    }

    /** The force that a piece has at a place, or would have, did it go on so far. */
    public double force(int piece, double v) {
        double onLine = intercepts[piece] + slopes[piece] * v;
        return isStraight ? onLine : onLine + curved(v);
    }

    /** Integral of the force from one place to another, N·m over travel. */
    public double work(double from, double to) {
        if (to < from) {
            return -work(to, from);
        }
        double work = curve.map(force -> energyBetween(force, from, to)).orElse(0.0);
        double at = from;
        for (int p = pieceAt(from); at < to; p++) {
            double end = Math.min(to, high(p));
            work += workOnPiece(p, at, end);
            at = end;
        }
        return work;
    }

    private static double energyBetween(CurvedForce force, double from, double to) {
        force.at(from);
        double before = force.energy;
        force.at(to);
        return force.energy - before;
    }

    /** Work along one straight piece, N·m: its force half way, times the way. */
    private double workOnPiece(int piece, double from, double to) {
        return (intercepts[piece] + slopes[piece] * (from + to) / 2) * (to - from);
    }

    /** The place where the force comes to a value, the one nearest to zero where there are several. */
    public OptionalDouble placeOf(double force) {
        return isStraight ? placeOnLines(force) : placeOnCurve(force);
    }

    /** By Newton's method from zero: springs and stops only grow stiffer or end. */
    private OptionalDouble placeOnCurve(double force) {
        double place = 0;
        for (int i = 0; i < MOST_STEPS; i++) {
            int p = pieceAt(place);
            double step = (force - force(p, place)) / slope(p, place);
            if (!Double.isFinite(step)) {
                return OptionalDouble.empty();
            }
            place += step;
            if (Math.abs(step) < SAME) {
                return OptionalDouble.of(place);
            }
        }
        return OptionalDouble.empty();
    }

    private OptionalDouble placeOnLines(double force) {
        OptionalDouble nearest = OptionalDouble.empty();
        for (int p = 0; p < slopes.length; p++) {
            double place = (force - intercepts[p]) / slopes[p];
            boolean holds = Double.isFinite(place) && place >= low(p) - SAME && place <= high(p) + SAME;
            if (holds && (nearest.isEmpty() || Math.abs(place) < Math.abs(nearest.getAsDouble()))) {
                nearest = OptionalDouble.of(place);
            }
        }
        return nearest;
    }
}
