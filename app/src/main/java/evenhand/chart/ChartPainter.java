package evenhand.chart;

import evenhand.chart.Part.Band;
import evenhand.chart.Part.Guide;
import evenhand.chart.Part.Line;
import evenhand.chart.Part.Mark;
import evenhand.chart.Part.Point;
import evenhand.chart.Part.Rule;
import evenhand.look.Picture;
import evenhand.look.SetupStyle;
import evenhand.look.Theme;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.List;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleEdge;

/**
 * Paints charts. Axes and grid are JFreeChart's; lines, bars, marks and words are painted over them here, as a word can only
 * be put where nothing else is when all of it is known.
 */
public final class ChartPainter {
    /** So many of all places of markers farther on is the next look: those seen together most often are far apart. */
    private static final int MARKER_STRIDE = 5;

    /** Between two markers on a line, in sizes of type. */
    private static final double MARKER_EVERY = 9;

    private final Sheet sheet;

    private ChartPainter(Sheet sheet) {
        this.sheet = sheet;
    }

    /** Words in a painted chart, and where. */
    public record Label(String words, Rectangle2D place) {}

    /**
     * A chart as it was painted, for reading values off it. All px.
     *
     * @param plot where values stand
     * @param labels all words but the numbers on the axes
     */
    public record Painted(Rectangle2D plot, List<Label> labels, Place x, Place y) {
        public Painted {
            labels = List.copyOf(labels);
        }
    }

    /** Between values and places in px along one axis. */
    public interface Place {
        double px(double value);

        double value(double px);
    }

    /** A chart as a picture of a size, to be kept or pasted elsewhere. */
    public static Picture picture(Chart chart, Theme theme, int width, int height) {
        return new Picture(width, height, g -> paint(chart, theme, g, new Rectangle2D.Double(0, 0, width, height)));
    }

    /** Paints all of a chart into an area. */
    public static Painted paint(Chart chart, Theme theme, Graphics2D g, Rectangle2D area) {
        return paint(chart, Zoom.all(chart), theme, g, area);
    }

    /** Paints part of a chart into an area. */
    public static Painted paint(Chart chart, Zoom zoom, Theme theme, Graphics2D g, Rectangle2D area) {
        return paint(chart, zoom, theme, g, area, 0);
    }

    /**
     * The same, with something else in the upper right corner.
     *
     * @param corner its width, px
     */
    static Painted paint(Chart chart, Zoom zoom, Theme theme, Graphics2D g, Rectangle2D area, double corner) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(theme.background());
        g.fill(area);

        Layout layout = Layout.of(chart, zoom, theme, g.getFontRenderContext(), area, corner);
        Ruling across = layout.across();
        Ruling up = layout.up();
        XYPlot plot = new XYPlot(null, across, up, new XYLineAndShapeRenderer()) /* without one it draws no grid */;
        plot.setInsets(layout.insets());
        plot.setAxisOffset(org.jfree.chart.ui.RectangleInsets.ZERO_INSETS);
        plot.setOutlineVisible(false);
        plot.setBackgroundPaint(null);
        plot.setDomainGridlinePaint(theme.grid());
        plot.setRangeGridlinePaint(theme.grid());
        BasicStroke hair = new BasicStroke(1);
        plot.setDomainGridlineStroke(hair);
        plot.setRangeGridlineStroke(hair);
        plot.setRangeGridlinesVisible(chart.up() instanceof Axis.Measure);
        JFreeChart axes = new JFreeChart(null, null, plot, false);
        axes.setBackgroundPaint(null);
        axes.setPadding(org.jfree.chart.ui.RectangleInsets.ZERO_INSETS);
        ChartRenderingInfo info = new ChartRenderingInfo(null);
        axes.draw(g, area, info);
        Rectangle2D inner = info.getPlotInfo().getDataArea();

        Sheet sheet = new Sheet(g, theme, chart, area, inner, across, up);
        new ChartPainter(sheet).parts(layout);
        return new Painted(
                inner, sheet.labels, place(across, inner, RectangleEdge.BOTTOM), place(up, inner, RectangleEdge.LEFT));
    }

    private static Place place(Ruling ruling, Rectangle2D plot, RectangleEdge edge) {
        return new Place() {
            @Override
            public double px(double value) {
                return ruling.valueToJava2D(value, plot, edge);
            }

            @Override
            public double value(double px) {
                return ruling.java2DToValue(px, plot, edge);
            }
        };
    }

    private void parts(Layout layout) {
        Graphics2D g = sheet.g;
        layout.heads(sheet);
        // Below the plot are the numbers of its axis.
        double below = sheet.plot.getMaxY() + 1;
        sheet.room.take(
                new Rectangle2D.Double(sheet.area.getX(), below, sheet.area.getWidth(), sheet.area.getMaxY() - below));
        if (sheet.chart.up() instanceof Axis.Measure) {
            // And left of it those of the other.
            double left = sheet.plot.getX() - 1 - sheet.area.getX();
            sheet.room.take(new Rectangle2D.Double(
                    sheet.area.getX(), sheet.plot.getY(), Math.max(0, left), sheet.plot.getHeight()));
        }
        Shape clip = g.getClip();
        g.clip(new Rectangle2D.Double(
                sheet.plot.getX() - 1, sheet.plot.getY() - 1, sheet.plot.getWidth() + 2, sheet.plot.getHeight() + 2));
        for (Part part : sheet.chart.parts()) {
            if (part instanceof Band band) {
                band(band);
            } else if (part instanceof Rule rule && rule.kind() != Rule.Kind.ZERO) {
                rule(rule);
            } else if (part instanceof Guide guide) {
                guide(guide);
            }
        }
        for (Band band : sheet.chart.bands()) {
            edge(band, band.low());
            edge(band, band.high());
        }
        BarPainter.bars(sheet);
        WhiskerPainter.whiskers(sheet);
        for (Part part : sheet.chart.parts()) {
            if (part instanceof Rule rule && rule.kind() == Rule.Kind.ZERO) {
                rule(rule);
            } else if (part instanceof Line line) {
                line(line);
            }
        }
        g.setClip(clip);
        for (Mark mark : sheet.chart.marks()) {
            mark(mark);
        }
        layout.lineLabels().paint(sheet);
        BarPainter.words(sheet);
        WhiskerPainter.words(sheet);
        for (Rule rule : sheet.chart.rules()) {
            ruleWords(rule);
        }
        for (Mark mark : sheet.chart.marks()) {
            markWords(mark);
        }
        // What a guide says is part of the plot; right of it stand names of lines.
        double right = sheet.plot.getMaxX() + 1;
        sheet.room.take(new Rectangle2D.Double(
                right, sheet.area.getY(), Math.max(0, sheet.area.getMaxX() - right), sheet.area.getHeight()));
        for (Guide guide : sheet.chart.guides()) {
            wordsBeside(guide.at(), guide.words(), sheet.theme.quiet());
        }
    }

    private void band(Band band) {
        if (band.low().isEmpty()) {
            return;
        }
        Path2D path = new Path2D.Double();
        append(path, band.low(), false);
        for (int i = band.high().size() - 1; i >= 0; i--) {
            Point point = band.high().get(i);
            path.lineTo(sheet.x(point.x()), sheet.y(point.y()));
        }
        path.closePath();
        sheet.g.setColor(sheet.theme.soft(band.style(), 0.16));
        sheet.g.fill(path);
    }

    /** An edge of a band, seen where bands lie over one another. */
    private void edge(Band band, List<Point> points) {
        if (points.isEmpty()) {
            return;
        }
        Path2D path = new Path2D.Double();
        append(path, points, false);
        sheet.g.setStroke(band.style().stroke(sheet.width(Part.Weight.THREAD.width())));
        sheet.g.setColor(sheet.theme.soft(band.style(), 0.6));
        sheet.g.draw(path);
    }

    private void append(Path2D path, List<Point> points, boolean takeRoom) {
        double beforeX = 0;
        double beforeY = 0;
        for (int i = 0; i < points.size(); i++) {
            double x = sheet.x(points.get(i).x());
            double y = sheet.y(points.get(i).y());
            if (i == 0) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
                if (takeRoom && sheet.plot.intersectsLine(beforeX, beforeY, x, y)) {
                    sheet.room.avoid(beforeX, beforeY, x, y);
                }
            }
            beforeX = x;
            beforeY = y;
        }
    }

    private void line(Line line) {
        if (line.points().isEmpty()) {
            return;
        }
        Path2D path = new Path2D.Double();
        append(path, line.points(), true);
        sheet.g.setStroke(line.style().stroke(sheet.width(line.weight().width())));
        sheet.g.setColor(sheet.theme.colour(line.style()));
        sheet.g.draw(path);
        if (line.style().ofSetup() && line.weight() != Part.Weight.THREAD) {
            markers(line);
        }
    }

    /** Markers at even distances, those of another set-up between them. */
    private void markers(Line line) {
        double every = MARKER_EVERY * sheet.em();
        double shift = (MARKER_STRIDE * line.style().index() % SetupStyle.DISTINCT + 0.5) / SetupStyle.DISTINCT * every;
        if (line.weight() == Part.Weight.FINE) {
            shift = (shift + every / 2) % every; // where it runs with the set-up's other line
        }
        double size = sheet.width(line.weight() == Part.Weight.HEAVY ? 7.5 : 6);
        Point first = line.points().get(0);
        double from = Math.max(sheet.x(first.x()), sheet.plot.getX());
        int next = 0;
        for (double x = sheet.plot.getX() + shift; x < sheet.plot.getMaxX(); x += every) {
            if (x < from) {
                continue;
            }
            while (next < line.points().size()
                    && sheet.x(line.points().get(next).x()) < x) {
                next++;
            }
            if (next == 0 || next >= line.points().size()) {
                continue;
            }
            double x0 = sheet.x(line.points().get(next - 1).x());
            double x1 = sheet.x(line.points().get(next).x());
            double y0 = sheet.y(line.points().get(next - 1).y());
            double y1 = sheet.y(line.points().get(next).y());
            sheet.marker(line.style(), x, x1 > x0 ? y0 + (x - x0) / (x1 - x0) * (y1 - y0) : y0, size);
        }
    }

    private void rule(Rule rule) {
        Rectangle2D plot = sheet.plot;
        boolean upright = rule.along() == Rule.Along.ACROSS;
        double at = upright ? sheet.x(rule.value()) : sheet.y(rule.value());
        Line2D line = upright
                ? new Line2D.Double(at, plot.getY(), at, plot.getMaxY())
                : new Line2D.Double(plot.getX(), at, plot.getMaxX(), at);
        float width = (float) sheet.width(rule.kind() == Rule.Kind.AIM ? 1.6 : 1);
        float dash = (float) sheet.width(4);
        boolean through = rule.kind() == Rule.Kind.ZERO || rule.kind() == Rule.Kind.AIM;
        sheet.g.setStroke(
                through
                        ? new BasicStroke(width)
                        : new BasicStroke(
                                width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {dash, dash}, 0));
        sheet.g.setColor(
                rule.kind() == Rule.Kind.ZERO || rule.kind() == Rule.Kind.AIM
                        ? sheet.theme.ink()
                        : sheet.theme.quiet());
        sheet.g.draw(line);
        if (sheet.plot.intersectsLine(line)) {
            sheet.room.avoid(line.getX1(), line.getY1(), line.getX2(), line.getY2());
        }
    }

    private void ruleWords(Rule rule) {
        if (rule.words().isEmpty()) {
            return;
        }
        Rectangle2D plot = sheet.plot;
        Rectangle2D size = sheet.size(rule.words(), sheet.theme.small());
        double w = size.getWidth();
        double h = size.getHeight();
        double gap = 0.3 * sheet.em();
        boolean upright = rule.along() == Rule.Along.ACROSS;
        double at = upright ? sheet.x(rule.value()) : sheet.y(rule.value());
        if (upright
                ? at < plot.getX() - 1 || at > plot.getMaxX() + 1
                : at < plot.getY() - 1 || at > plot.getMaxY() + 1) {
            return;
        }
        double[][] corners = upright
                ? new double[][] {
                    {at + gap, plot.getY()},
                    {at - gap - w, plot.getY()},
                    {at + gap, plot.getMaxY() - h - gap},
                    {at - gap - w, plot.getMaxY() - h - gap},
                    {at + gap, plot.getY() + 1.2 * h}
                }
                : new double[][] {
                    {plot.getX() + gap, at - h - 1},
                    {plot.getX() + gap, at + 1},
                    {plot.getMaxX() - w - gap, at - h - 1},
                    {plot.getMaxX() - w - gap, at + 1},
                    {plot.getCenterX() - w / 2, at - h - 1}
                };
        List<Rectangle2D> places = Arrays.stream(corners)
                .<Rectangle2D>map(corner -> new Rectangle2D.Double(corner[0], corner[1], w, h))
                .toList();
        places.stream()
                .filter(sheet.room::isClear)
                .findFirst()
                .or(() -> places.stream().filter(sheet.room::isFree).findFirst())
                .ifPresent(place -> {
                    sheet.room.take(place);
                    sheet.writeOver(rule.words(), sheet.theme.small(), sheet.theme.quiet(), place);
                });
    }

    private void guide(Guide guide) {
        Path2D path = new Path2D.Double();
        append(path, guide.points(), true);
        float dash = (float) sheet.width(2);
        sheet.g.setStroke(new BasicStroke(
                (float) sheet.width(Part.Weight.THREAD.width()),
                BasicStroke.CAP_BUTT,
                BasicStroke.JOIN_ROUND,
                10,
                new float[] {3 * dash, dash},
                0));
        sheet.g.setColor(sheet.theme.quiet());
        sheet.g.draw(path);
    }

    private boolean isInside(Point at) {
        double x = sheet.x(at.x());
        double y = sheet.y(at.y());
        Rectangle2D plot = sheet.plot;
        return x >= plot.getX() - 1 && x <= plot.getMaxX() + 1 && y >= plot.getY() - 1 && y <= plot.getMaxY() + 1;
    }

    private void mark(Mark mark) {
        if (!isInside(mark.at())) {
            return;
        }
        double x = sheet.x(mark.at().x());
        double y = sheet.y(mark.at().y());
        double r = sheet.width(5);
        Graphics2D g = sheet.g;
        g.setStroke(new BasicStroke((float) sheet.width(1.6)));
        g.setColor(sheet.theme.colour(mark.style()));
        switch (mark.kind()) {
            case LIMIT -> g.draw(new Line2D.Double(x, y - 1.3 * r, x, y + 1.3 * r));
            case EVENT, ANSWER, NOW -> {
                Shape ring = mark.style().marker().at(x, y, 2 * r);
                g.setColor(sheet.theme.background());
                g.fill(ring);
                g.setColor(sheet.theme.colour(mark.style()));
                g.draw(ring);
                if (mark.kind() != Mark.Kind.EVENT) {
                    g.fill(new Ellipse2D.Double(x - r / 2, y - r / 2, r, r));
                }
            }
        }
        sheet.room.take(new Rectangle2D.Double(x - r, y - r, 2 * r, 2 * r));
    }

    private void markWords(Mark mark) {
        wordsBeside(mark.at(), mark.words(), sheet.theme.ink());
    }

    private void wordsBeside(Point place, String words, Color colour) {
        if (words.isEmpty() || !isInside(place)) {
            return;
        }
        Rectangle2D size = sheet.size(words, sheet.theme.small());
        Point2D at = new Point2D.Double(sheet.x(place.x()), sheet.y(place.y()));
        sheet.room
                .beside(at, size.getWidth(), size.getHeight(), sheet.width(7))
                .ifPresent(free -> sheet.writeOver(words, sheet.theme.small(), colour, free));
    }
}
