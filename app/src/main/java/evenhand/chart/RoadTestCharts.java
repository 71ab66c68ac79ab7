package evenhand.chart;

import evenhand.chart.Part.Bar;
import evenhand.chart.Part.Guide;
import evenhand.chart.Part.Hatch;
import evenhand.chart.Part.Line;
import evenhand.chart.Part.Mark;
import evenhand.chart.Part.Point;
import evenhand.chart.Part.Rule;
import evenhand.chart.Part.Weight;
import evenhand.look.SetupStyle;
import evenhand.quantity.Unit;
import evenhand.roadtest.Channel;
import evenhand.roadtest.Findings;
import evenhand.roadtest.Observation;
import evenhand.roadtest.SteadyPieces;
import evenhand.roadtest.Trace;
import evenhand.turn.Direction;
import evenhand.words.ChangeWords;
import evenhand.words.Numbers;
import evenhand.words.roadtest.RoadTestWords;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.DoubleStream;

/** What was read on the road beside what the car on paper shows, and what moved for it. */
public final class RoadTestCharts {
    private static final Unit G = Unit.of("g");
    private static final SetupStyle BY_FILE = new SetupStyle(1);
    private static final SetupStyle CORRECTED = new SetupStyle(0);
    private static final int MOST_MOVED = 10;

    /** A trace of more moments is drawn by every so many. */
    private static final int MOST_PLACES = 1500;

    private RoadTestCharts() {}

    /** One channel of a test over lateral acceleration, both ways round: readings with their errors, the car before and after. */
    public static Chart readings(Findings.OfTest test, Channel channel) {
        List<Part> parts = new ArrayList<>();
        Unit unit = Unit.of("deg");
        for (Direction direction : Direction.values()) {
            List<Findings.Seen> seen = test.seen().stream()
                    .filter(one -> one.observation() instanceof Observation.Reading reading
                            && reading.turn() == direction
                            && reading.channel() == channel)
                    .sorted(Comparator.comparingDouble(
                            (Findings.Seen one) -> one.after().lateralAcceleration()))
                    .toList();
            if (seen.isEmpty()) {
                continue;
            }
            parts.add(line(
                    "by the file", direction, BY_FILE, seen, one -> one.before().expected(), unit));
            parts.add(line(
                    "corrected", direction, CORRECTED, seen, one -> one.after().expected(), unit));
            for (Findings.Seen one : seen) {
                double x = G.fromSi(one.after().lateralAcceleration());
                double read = unit.fromSi(RoadTestWords.measured(one));
                double error = unit.fromSi(2 * one.after().sigma());
                parts.add(new Guide(
                        List.of(new Point(x, read - error), new Point(x, read + error)), new Point(x, read), ""));
                parts.add(new Mark(
                        Mark.Kind.ANSWER, "", SetupStyle.PLAIN, new Point(x, read), one.fits() ? "" : "does not fit"));
            }
        }
        Span wide =
                Span.around(points(parts).mapToDouble(Point::x)).loosened(0.08).rounded();
        Span high =
                Span.around(points(parts).mapToDouble(Point::y)).loosened(0.05).rounded();
        return new Chart(
                "\"" + test.test().name() + "\": " + channel.words() + " as read, and as the car on paper shows it",
                Axis.Measure.of("lateral acceleration", G, 2, wide),
                Axis.Measure.of(channel.words(), unit, 1, high),
                parts,
                List.of("Rings: what was read, with two standard deviations of reading and pace."));
    }

    private static java.util.stream.Stream<Point> points(List<Part> parts) {
        return parts.stream()
                .flatMap(part -> part instanceof Line line
                        ? line.points().stream()
                        : part instanceof Guide guide ? guide.points().stream() : java.util.stream.Stream.empty());
    }

    private static Line line(
            String name,
            Direction direction,
            SetupStyle style,
            List<Findings.Seen> seen,
            Function<Findings.Seen, Double> value,
            Unit unit) {
        return new Line(
                name,
                direction.key(),
                "",
                style,
                direction == Direction.LEFT ? Weight.HEAVY : Weight.FINE,
                seen.stream()
                        .map(one ->
                                new Point(G.fromSi(one.after().lateralAcceleration()), unit.fromSi(value.apply(one))))
                        .toList());
    }

    /** A log over its time, what was steady in it heavy; what is left out of that is dashed. */
    public static Chart trace(Trace trace) {
        List<Part> parts = new ArrayList<>();
        int n = trace.times().size();
        int stride = 1 + n / MOST_PLACES;
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < n; i += stride) {
            points.add(new Point(
                    trace.times().get(i), G.fromSi(trace.lateralAcceleration().get(i))));
        }
        parts.add(new Line("", "", "", SetupStyle.PLAIN, Weight.THREAD, points));
        boolean told = false;
        for (SteadyPieces.Steady piece : trace.pieces()) {
            double g = G.fromSi(piece.lateralAcceleration());
            boolean out = trace.leavesOut(piece);
            parts.add(new Line(
                    out ? "left out" : told ? "" : "steady",
                    "",
                    "",
                    out ? BY_FILE : CORRECTED,
                    Weight.HEAVY,
                    List.of(new Point(piece.from(), g), new Point(piece.to(), g))));
            told |= !out;
        }
        Span high = Span.around(points.stream().mapToDouble(Point::y))
                .including(0)
                .loosened(0.08)
                .rounded();
        parts.add(new Rule(Rule.Kind.ZERO, Rule.Along.ACROSS, 0, ""));
        return new Chart(
                "\"" + trace.test() + "\": " + trace.file() + ", and what was steady in it",
                Axis.Measure.of(
                        "time",
                        Unit.of("s"),
                        1,
                        Span.around(points.stream().mapToDouble(Point::x)).rounded()),
                Axis.Measure.of("lateral acceleration, left positive", G, 2, high),
                parts);
    }

    /** The numbers of the file that moved most, in standard deviations of their own tolerances. */
    public static Chart moved(Findings found) {
        List<Axis.Row> rows = new ArrayList<>();
        List<Part> bars = new ArrayList<>();
        found.inputs().stream().limit(MOST_MOVED).forEach(input -> {
            bars.add(new Bar(
                    rows.size(),
                    0,
                    1,
                    "",
                    input.suspect() ? "measure it again" : "",
                    input.suspect() ? BY_FILE : CORRECTED,
                    input.suspect() ? Hatch.CROSSED : Hatch.FULL,
                    0,
                    input.moved(),
                    Numbers.signed(input.moved(), 1)));
            rows.add(new Axis.Row(ChangeWords.name(input.number().path()), ""));
        });
        Span span = Span.around(bars.stream().flatMapToDouble(part -> DoubleStream.of(((Bar) part).to())))
                .including(0)
                .loosened(0.2)
                .rounded();
        List<Part> all = new ArrayList<>(bars);
        all.add(new Rule(Rule.Kind.ZERO, Rule.Along.ACROSS, 0, ""));
        return new Chart(
                "What moved, by how many of its own standard deviations",
                Axis.Measure.of("moved", Unit.of(""), 1, span),
                new Axis.Rows("", rows),
                all);
    }
}
