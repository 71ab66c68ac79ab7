package evenhand.road;

import static evenhand.quantity.InvalidValue.require;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * The height of a road along a wheel's path: level before the event, smooth stretches that follow each other, level
 * behind. Heights and positions, m; the wheel meets the event at x = 0. Where a stretch does not begin at the height
 * at which the one before ended, the road jumps.
 *
 * @param pieces the first begins at 0, each where the one before ends
 * @param after height of the road behind the event
 */
public record Profile(List<Piece> pieces, double after) {
    /** A rise in no length that is smaller than this is the rounding of a sum, m. */
    private static final double JUMP = 1e-9;

    public Profile {
        pieces = List.copyOf(pieces);
        double end = 0;
        for (Piece piece : pieces) {
            if (piece.from() != end || !(piece.to() > piece.from())) {
                throw new IllegalArgumentException("a stretch of road must begin where the one before ends");
            }
            end = piece.to();
        }
        require(Double.isFinite(after) && Double.isFinite(end), "profile", "must be of finite height and length");
    }

    /** A rise of the whole road in no length; below zero a drop. */
    public static Profile step(double height) {
        return new Profile(List.of(), notZero(height, "height"));
    }

    /** A straight slope to another height. */
    public static Profile ramp(double height, double length) {
        above(length, "length");
        return new Profile(List.of(new Piece.Line(0, length, 0, notZero(height, "height") / length)), height);
    }

    /** Half a sine wave, up or (below zero) down: {@code h·sin(π·x/length)}. */
    public static Profile hump(double height, double length) {
        above(length, "length");
        return new Profile(List.of(new Piece.Sine(0, length, 0, notZero(height, "height"), 0, 2 * length)), 0);
    }

    /** Whole sine waves: {@code a·sin(2π·x/wavelength)}. */
    public static Profile ripples(double amplitude, double wavelength, int times) {
        above(wavelength, "length");
        require(times >= 1, "times", "must be 1 or more");
        return new Profile(
                List.of(new Piece.Sine(0, times * wavelength, 0, notZero(amplitude, "height"), 0, wavelength)), 0);
    }

    /** Waves that grow shorter or longer along the road, wave numbers in cycles per m. */
    public static Profile sweep(double amplitude, double length, double firstNumber, double lastNumber) {
        above(length, "length");
        Piece sweep = new Piece.Sweep(0, length, 0, notZero(amplitude, "height"), firstNumber, lastNumber);
        return new Profile(List.of(sweep), sweep.height(length));
    }

    /**
     * Path of the centre of a rigid wheel up a square edge. It begins where the wheel meets the edge, √(2·radius·height
     * − height²) before it, and turns about the edge.
     */
    public static Profile kerb(double height, double radius) {
        above(height, "height");
        above(radius, "radius");
        require(
                height < radius,
                "height",
                "must be less than the wheel's loaded radius: no wheel climbs a higher edge");
        double reach = Math.sqrt(height * (2 * radius - height));
        return new Profile(List.of(new Piece.Arc(0, reach, height - radius, reach, radius)), height);
    }

    /**
     * Path of the centre of a rigid wheel through a hole with square edges. It turns about the near edge down to the
     * bottom, or until it meets the far edge, and about the far edge up again.
     */
    public static Profile pothole(double depth, double length, double radius) {
        above(depth, "depth");
        above(length, "length");
        above(radius, "radius");
        boolean spanned = length / 2 < radius;
        require(
                spanned || depth < radius,
                "depth",
                "must be less than the wheel's loaded radius: no wheel climbs out of a deeper hole");
        double reach = depth < radius ? Math.sqrt(depth * (2 * radius - depth)) : radius;
        if (2 * reach >= length) {
            double middle = length / 2;
            return new Profile(
                    List.of(
                            new Piece.Arc(0, middle, -radius, 0, radius),
                            new Piece.Arc(middle, length, -radius, length, radius)),
                    0);
        }
        return new Profile(
                List.of(
                        new Piece.Arc(0, reach, -radius, 0, radius),
                        new Piece.Line(reach, length - reach, -depth, 0),
                        new Piece.Arc(length - reach, length, -radius, length, radius)),
                0);
    }

    /** This road, then another, from the height that this one left. */
    public Profile then(Profile next) {
        List<Piece> both = new ArrayList<>(pieces);
        double end = length();
        for (Piece piece : next.pieces) {
            Piece moved = piece.moved(end, after);
            both.add(
                    joined(moved, both.isEmpty() ? 0 : both.get(both.size() - 1).to()));
        }
        return new Profile(both, after + next.after);
    }

    /** Sums of lengths differ in the last digit: a stretch begins exactly where the one before ended. */
    private static Piece joined(Piece piece, double end) {
        return piece.from() == end ? piece : new Piece.Sum(end, piece.to(), List.of(piece));
    }

    /** This road with another laid on top, both beginning at 0. */
    public Profile plus(Profile other) {
        TreeSet<Double> ends = new TreeSet<>();
        pieces.forEach(piece -> ends.add(piece.to()));
        other.pieces.forEach(piece -> ends.add(piece.to()));
        List<Piece> sums = new ArrayList<>();
        double from = 0;
        for (double to : ends) {
            sums.add(new Piece.Sum(from, to, List.of(over(from, to), other.over(from, to))));
            from = to;
        }
        return new Profile(sums, after + other.after);
    }

    private Piece over(double from, double to) {
        double middle = (from + to) / 2;
        for (Piece piece : pieces) {
            if (middle < piece.to()) {
                return piece;
            }
        }
        return new Piece.Line(from, to, after, 0);
    }

    /** Length of the event, m. */
    public double length() {
        return pieces.isEmpty() ? 0 : pieces.get(pieces.size() - 1).to();
    }

    /** Height at a place, m; at a jump that behind it. */
    public double height(double x) {
        if (x < 0) {
            return 0;
        }
        int low = 0;
        int high = pieces.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (x < pieces.get(middle).to()) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low < pieces.size() ? pieces.get(low).height(x) : after;
    }

    /** Whether the road jumps somewhere, as no wheel of any size would. */
    public boolean jumps() {
        double height = 0;
        for (Piece piece : pieces) {
            if (Math.abs(piece.height(piece.from()) - height) > JUMP) {
                return true;
            }
            height = piece.height(piece.to());
        }
        return Math.abs(after - height) > JUMP;
    }

    private static double notZero(double height, String component) {
        require(Double.isFinite(height) && height != 0, component, "must not be zero");
        return height;
    }

    private static void above(double length, String component) {
        require(length > 0, component, "must be above zero");
    }
}
