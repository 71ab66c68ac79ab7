package evenhand.chart;

import evenhand.chart.Part.Line;
import evenhand.chart.Part.Point;
import evenhand.chart.Part.Rule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * What other set-ups have more of something than the base, made of the chart that shows it of them all: where curves hardly part,
 * their distance is what is to be seen.
 */
final class Difference {
    /** Values up to this part of the way that base and other have in common decide the scale: at the limit some grow beyond all bounds. */
    private static final double UP_TO = 0.93;

    /** Where they do not, there is room for the whole: where the scale grows by no more than this. */
    private static final double ALL_OF_IT = 2.5;

    /** Of all curves' span, the least that is shown of differences: smaller ones are no difference. */
    private static final double NOTHING = 0.02;

    private final Chart chart;
    private final String base;

    private Difference(Chart chart, String base) {
        this.chart = chart;
        this.base = base;
    }

    /**
     * The differences of a chart's curves from those of the base; the chart itself, with a note, where it has the base alone or has
     * no curve of the base.
     *
     * @param chart the plain chart, over a measured axis
     * @param base name of the set-up that the others are compared with
     * @param words of the axis: "understeer gradient"
     */
    static Chart from(Chart chart, String base, String words) {
        List<Chart.Setup> setups = chart.setups();
        if (setups.stream().noneMatch(setup -> setup.name().equals(base))) {
            return setups.isEmpty() || !chart.notes().isEmpty()
                    ? chart
                    : chart.noting("The base is not shown: there is nothing to take a difference from.");
        }
        if (setups.size() == 1) {
            return chart.noting(
                    "Only \"" + base + "\" is shown: beside another set-up the difference between them stands here.");
        }
        return new Difference(chart, base).chart(words);
    }

    private Chart chart(String words) {
        List<Part> parts = new ArrayList<>();
        List<Line> lines = new ArrayList<>();
        chart.rules().stream().filter(rule -> rule.along() == Rule.Along.ACROSS).forEach(parts::add);
        parts.add(new Rule(Rule.Kind.ZERO, Rule.Along.UP, 0, "as \"" + base + "\", the base"));
        for (Line line : chart.lines()) {
            if (line.style().ofSetup() && !line.name().equals(base)) {
                ofBase(line.part())
                        .map(own -> less(line, own))
                        .filter(less -> less.points().size() > 1)
                        .ifPresent(lines::add);
            }
        }
        parts.addAll(lines);
        Axis.Measure up = (Axis.Measure) chart.up();
        double least = NOTHING * up.span().width();
        Span usual = Span.around(lines.stream().flatMapToDouble(line -> upTo(UP_TO, line)))
                .including(-least)
                .including(least);
        Span all = usual.including(Span.around(lines.stream().flatMapToDouble(line -> upTo(1, line))));
        Span span = (all.width() <= ALL_OF_IT * usual.width() ? all : usual)
                .loosened(0.08)
                .rounded();
        Axis.Measure more = new Axis.Measure(
                "more " + words + " than the base (below zero: less)", up.unit(), up.digits(), span, Axis.Scale.LINEAR);
        return new Chart(chart.title() + ": difference from the base", chart.across(), more, parts, chart.notes());
    }

    private Optional<Line> ofBase(String part) {
        return chart.line(base, part).findFirst();
    }

    /** A line less another, as far as both go. */
    private static Line less(Line line, Line other) {
        List<Point> points = new ArrayList<>();
        Stream.concat(line.points().stream(), other.points().stream())
                .mapToDouble(Point::x)
                .sorted()
                .distinct()
                .forEach(x -> CrossHair.value(line.points(), x)
                        .ifPresent(more -> CrossHair.value(other.points(), x)
                                .ifPresent(less -> points.add(new Point(x, more - less)))));
        return new Line(line.name(), line.part(), "", line.style(), line.weight(), points);
    }

    /** Its values up to a part of its way. */
    private static DoubleStream upTo(double part, Line line) {
        double end = line.points().get(line.points().size() - 1).x();
        return line.points().stream().filter(point -> point.x() <= part * end).mapToDouble(Point::y);
    }
}
