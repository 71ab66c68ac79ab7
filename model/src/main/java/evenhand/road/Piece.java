package evenhand.road;

import java.util.List;
import java.util.stream.Stream;

/**
 * A stretch of road on which the height is smooth. Position along the road and height, m; the formula holds at both
 * ends and a little beyond, so that a road that jumps has a height on either side of the jump.
 */
public sealed interface Piece {
    /** Where the stretch begins, m along the road. */
    double from();

    /** Where it ends, m along the road. */
    double to();

    /** Height above the road before the event, m. */
    double height(double x);

    /** Rise per length, m/m. */
    double slope(double x);

    /** The same stretch farther along and higher, m. */
    Piece moved(double along, double up);

    /** A straight line that begins at a height. */
    record Line(double from, double to, double start, double slope) implements Piece {
        @Override
        public double height(double x) {
            return start + slope * (x - from);
        }

        @Override
        public double slope(double x) {
            return slope;
        }

        @Override
        public Piece moved(double along, double up) {
            return new Line(from + along, to + along, start + up, slope);
        }
    }

    /** {@code base + amplitude·sin(2π·(x − origin)/wavelength)}. */
    record Sine(double from, double to, double base, double amplitude, double origin, double wavelength)
            implements Piece {
        @Override
        public double height(double x) {
            return base + amplitude * Math.sin(2 * Math.PI / wavelength * (x - origin));
        }

        @Override
        public double slope(double x) {
            double number = 2 * Math.PI / wavelength;
            return amplitude * number * Math.cos(number * (x - origin));
        }

        @Override
        public Piece moved(double along, double up) {
            return new Sine(from + along, to + along, base + up, amplitude, origin + along, wavelength);
        }
    }

    /**
     * A sine whose wave number rises evenly over the stretch, from {@code first} to {@code last} cycles per m:
     * {@code base + amplitude·sin(2π·(first·s + (last − first)·s²/(2·length)))}, s = x − from.
     */
    record Sweep(double from, double to, double base, double amplitude, double first, double last) implements Piece {
        private double growth() {
            return (last - first) / (to - from);
        }

        @Override
        public double height(double x) {
            double s = x - from;
            return base + amplitude * Math.sin(2 * Math.PI * s * (first + growth() * s / 2));
        }

        @Override
        public double slope(double x) {
            double s = x - from;
            double phase = 2 * Math.PI * s * (first + growth() * s / 2);
            return amplitude * 2 * Math.PI * (first + growth() * s) * Math.cos(phase);
        }

        @Override
        public Piece moved(double along, double up) {
            return new Sweep(from + along, to + along, base + up, amplitude, first, last);
        }
    }

    /**
     * Path of the centre of a rigid wheel that turns over an edge: {@code base + √(radius² − (x − edge)²)}.
     *
     * @param edge where the edge is, m along the road
     */
    record Arc(double from, double to, double base, double edge, double radius) implements Piece {
        @Override
        public double height(double x) {
            double s = x - edge;
            return base + Math.sqrt(Math.max(0, radius * radius - s * s));
        }

        @Override
        public double slope(double x) {
            double s = x - edge;
            double up = Math.max(0, radius * radius - s * s);
            return up > 0 ? -s / Math.sqrt(up) : 0;
        }

        @Override
        public Piece moved(double along, double up) {
            return new Arc(from + along, to + along, base + up, edge + along, radius);
        }
    }

    /** A cubic, {@code c0 + c1·s + c2·s² + c3·s³}, s = x − from. */
    record Cubic(double from, double to, double c0, double c1, double c2, double c3) implements Piece {
        /** The cubic with these heights and slopes at its ends. */
        static Cubic through(double from, double to, double low, double lowSlope, double high, double highSlope) {
            double length = to - from;
            double chord = (high - low) / length;
            return new Cubic(
                    from,
                    to,
                    low,
                    lowSlope,
                    (3 * chord - 2 * lowSlope - highSlope) / length,
                    (lowSlope + highSlope - 2 * chord) / (length * length));
        }

        @Override
        public double height(double x) {
            double s = x - from;
            return c0 + s * (c1 + s * (c2 + s * c3));
        }

        @Override
        public double slope(double x) {
            double s = x - from;
            return c1 + s * (2 * c2 + s * 3 * c3);
        }

        @Override
        public Piece moved(double along, double up) {
            return new Cubic(from + along, to + along, c0 + up, c1, c2, c3);
        }
    }

    /** Several laid on top of each other; each holds over the whole stretch. */
    record Sum(double from, double to, List<Piece> parts) implements Piece {
        public Sum {
            parts = List.copyOf(parts);
        }

        @Override
        public double height(double x) {
            double height = 0;
            for (int i = 0; i < parts.size(); i++) {
                height += parts.get(i).height(x);
            }
            return height;
        }

        @Override
        public double slope(double x) {
            double slope = 0;
            for (int i = 0; i < parts.size(); i++) {
                slope += parts.get(i).slope(x);
            }
            return slope;
        }

        @Override
        public Piece moved(double along, double up) {
            Piece first = parts.get(0).moved(along, up);
            return new Sum(
                    from + along,
                    to + along,
                    Stream.concat(Stream.of(first), parts.stream().skip(1).map(part -> part.moved(along, 0)))
                            .toList());
        }
    }
}
