package evenhand.chart;

/**
 * What part of a chart is looked at.
 *
 * @param across along the axis from left to right
 * @param up along the axis upwards
 */
public record Zoom(Span across, Span up) {
    /** Nothing is magnified more than this many times. */
    private static final double MOST = 200;

    /** All of a chart. */
    public static Zoom all(Chart chart) {
        return new Zoom(chart.across().span(), chart.up().span());
    }

    /**
     * Closer by a factor above one, farther below it, about a place that stays where it is; no farther than the whole chart. Rows
     * are always shown whole.
     */
    public Zoom by(double factor, double x, double y, Chart chart) {
        Zoom all = all(chart);
        Span wide = chart.across().scale() == Axis.Scale.LOGARITHMIC
                ? logarithmic(across, factor, x, all.across())
                : linear(across, factor, x, all.across());
        Span high = chart.up() instanceof Axis.Measure measure
                ? measure.scale() == Axis.Scale.LOGARITHMIC
                        ? logarithmic(up, factor, y, all.up())
                        : linear(up, factor, y, all.up())
                : all.up();
        return new Zoom(wide, high);
    }

    /** To the rectangle between two places, in any order; itself where that is no rectangle to speak of. */
    public Zoom to(double x1, double y1, double x2, double y2, Chart chart) {
        Zoom all = all(chart);
        boolean rows = chart.up() instanceof Axis.Rows;
        if (Math.abs(x1 - x2) < all.across().width() / MOST
                || (!rows && Math.abs(y1 - y2) < all.up().width() / MOST)) {
            return this;
        }
        Span wide = new Span(Math.min(x1, x2), Math.max(x1, x2));
        Span high = rows ? all.up() : new Span(Math.min(y1, y2), Math.max(y1, y2));
        return new Zoom(
                wide.within(all.across().low(), all.across().high()),
                rows ? high : high.within(all.up().low(), all.up().high()));
    }

    /** Whether something of the chart lies outside. */
    public boolean isPart(Chart chart) {
        return !equals(all(chart));
    }

    private static Span linear(Span span, double factor, double fixed, Span all) {
        double width = Math.max(span.width() / factor, all.width() / MOST);
        if (width >= all.width()) {
            return all;
        }
        double part = (fixed - span.low()) / span.width();
        double low = Math.min(Math.max(fixed - part * width, all.low()), all.high() - width);
        return new Span(low, low + width);
    }

    private static Span logarithmic(Span span, double factor, double fixed, Span all) {
        Span zoomed = linear(logs(span), factor, Math.log(fixed), logs(all));
        return zoomed.equals(logs(all)) ? all : new Span(Math.exp(zoomed.low()), Math.exp(zoomed.high()));
    }

    private static Span logs(Span span) {
        return new Span(Math.log(span.low()), Math.log(span.high()));
    }
}
