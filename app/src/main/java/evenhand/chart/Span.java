package evenhand.chart;

import java.util.stream.DoubleStream;

/** From low to high, in the unit of an axis. */
public record Span(double low, double high) {
    public Span {
        if (!(low < high) || !Double.isFinite(high - low)) {
            throw new IllegalArgumentException("no span from " + low + " to " + high);
        }
    }

    /** Just around some values; a unit wide where there are none, or one only. */
    public static Span around(DoubleStream values) {
        double[] finite = values.filter(Double::isFinite).toArray();
        double low = DoubleStream.of(finite).min().orElse(0);
        double high = DoubleStream.of(finite).max().orElse(1);
        double least = 1e-6 * Math.max(1, Math.max(Math.abs(low), Math.abs(high)));
        return high - low > least ? new Span(low, high) : new Span(low - 0.5, low + 0.5);
    }

    /** Wide enough for a value too. */
    public Span including(double value) {
        return new Span(Math.min(low, value), Math.max(high, value));
    }

    /** Wide enough for another too. */
    public Span including(Span other) {
        return new Span(Math.min(low, other.low), Math.max(high, other.high));
    }

    /** At least so wide, about its middle. */
    public Span atLeast(double width) {
        double more = (width - (high - low)) / 2;
        return more > 0 ? new Span(low - more, high + more) : this;
    }

    /** No more than this. */
    public Span within(double least, double most) {
        double from = Math.max(low, least);
        double to = Math.min(high, most);
        return from < to ? new Span(from, to) : new Span(least, most);
    }

    /** With air of a part of its width on both sides; a side that is zero stays zero. */
    public Span loosened(double part) {
        double air = part * (high - low);
        return new Span(low == 0 ? 0 : low - air, high == 0 ? 0 : high + air);
    }

    /** Out to the next round numbers, so that an axis does not tremble while a value is dragged. */
    public Span rounded() {
        double step = step(12);
        double tiny = 1e-9; // a bound that is round but for its last digits stays
        return new Span(step * Math.floor(low / step + tiny), step * Math.ceil(high / step - tiny));
    }

    /** The round step (1, 2 or 5 of a power of ten) that cuts it into no more than so many parts. */
    public double step(int parts) {
        double rough = (high - low) / Math.max(1, parts);
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        double lead = rough / power;
        double slack = 1 + 1e-9;
        return power * (lead <= slack ? 1 : lead <= 2 * slack ? 2 : lead <= 5 * slack ? 5 : 10);
    }

    public double width() {
        return high - low;
    }

    public boolean holds(double value) {
        return value >= low && value <= high;
    }
}
