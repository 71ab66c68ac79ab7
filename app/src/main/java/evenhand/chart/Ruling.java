package evenhand.chart;

import evenhand.look.Theme;
import evenhand.words.Numbers;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;

/** An axis with round numbers, as many as there is room for, and a true minus sign. */
final class Ruling extends NumberAxis {
    private static final int MOST_STEPS = 12;
    private static final double[] OF_A_DECADE = {1, 2, 5};

    private final transient List<Tick> marks;
    private final boolean logarithmic;

    /** A number on the axis. */
    record Tick(double value, String words) {}

    private Ruling(Span span, boolean logarithmic, List<Tick> marks, Theme theme, boolean across) {
        this.marks = marks;
        this.logarithmic = logarithmic;
        setAutoRange(false);
        setRange(span.low(), span.high());
        setTickLabelFont(theme.plain());
        setTickLabelPaint(theme.quiet());
        setTickMarksVisible(false);
        setAxisLineVisible(across);
        setAxisLinePaint(theme.quiet());
        setAxisLineStroke(new BasicStroke(1));
        double em = theme.size();
        setTickLabelInsets(
                across ? new RectangleInsets(0.3 * em, 0, 0.1 * em, 0) : new RectangleInsets(0, 0, 0, 0.4 * em));
    }

    /** For a measure, with at most so many steps. */
    static Ruling of(Axis.Measure measure, Span span, int steps, Theme theme, boolean across) {
        boolean logarithmic = measure.scale() == Axis.Scale.LOGARITHMIC;
        return new Ruling(span, logarithmic, logarithmic ? decades(span, steps) : even(span, steps), theme, across);
    }

    /** For rows, whose names are set apart. */
    static Ruling ofRows(Axis.Rows rows, Theme theme) {
        Ruling ruling = new Ruling(rows.span(), false, List.of(), theme, false);
        ruling.setInverted(true);
        return ruling;
    }

    /** Round numbers; where so few steps leave none but one, as many more as it takes to have two. */
    private static List<Tick> even(Span span, int steps) {
        List<Tick> ticks = even(span, span.step(steps));
        for (int more = steps + 1; ticks.size() < 2 && more <= MOST_STEPS; more++) {
            ticks = even(span, span.step(more));
        }
        return ticks;
    }

    private static List<Tick> even(Span span, double step) {
        int digits = Math.max(0, Math.min(6, (int) Math.ceil(-Math.log10(step) - 1e-9)));
        List<Tick> ticks = new ArrayList<>();
        double tiny = 1e-9 * step;
        for (long i = (long) Math.ceil(span.low() / step - 1e-9); i * step <= span.high() + tiny; i++) {
            ticks.add(new Tick(i * step, Numbers.fixed(i * step, digits)));
        }
        return ticks;
    }

    private static List<Tick> decades(Span span, int steps) {
        List<Tick> ticks = new ArrayList<>();
        double decades = Math.log10(span.high() / span.low());
        boolean sparse = 3 * decades > steps;
        for (int power = (int) Math.floor(Math.log10(span.low())); power <= Math.log10(span.high()); power++) {
            for (double lead : OF_A_DECADE) {
                double value = lead * Math.pow(10, power);
                if (span.holds(value) && (lead == 1 || !sparse)) {
                    ticks.add(new Tick(value, Numbers.plain(value, 6)));
                }
            }
        }
        return ticks;
    }

    List<Tick> marks() {
        return marks;
    }

    @Override
    @SuppressWarnings("rawtypes") // as the library has it
    public List refreshTicks(Graphics2D g, AxisState state, Rectangle2D dataArea, RectangleEdge edge) {
        boolean across = RectangleEdge.isTopOrBottom(edge);
        List<NumberTick> ticks = new ArrayList<>();
        for (Tick tick : marks) {
            TextAnchor anchor = across ? TextAnchor.TOP_CENTER : TextAnchor.CENTER_RIGHT;
            ticks.add(new NumberTick(tick.value(), tick.words(), anchor, anchor, 0));
        }
        return ticks;
    }

    @Override
    public double valueToJava2D(double value, Rectangle2D area, RectangleEdge edge) {
        return super.valueToJava2D(logarithmic ? even(value) : value, area, edge);
    }

    @Override
    public double java2DToValue(double place, Rectangle2D area, RectangleEdge edge) {
        double value = super.java2DToValue(place, area, edge);
        if (!logarithmic) {
            return value;
        }
        double low = getRange().getLowerBound();
        double part = (value - low) / getRange().getLength();
        return low * Math.pow(getRange().getUpperBound() / low, part);
    }

    /** Where a value of a logarithmic axis would stand if the axis were even. */
    private double even(double value) {
        double low = getRange().getLowerBound();
        double high = getRange().getUpperBound();
        return low + Math.log(Math.max(value, 1e-12) / low) / Math.log(high / low) * (high - low);
    }

    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }
}
