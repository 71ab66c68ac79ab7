package evenhand.chart;

import evenhand.car.Curve;
import evenhand.car.Damper;
import evenhand.car.End;
import evenhand.chart.Part.Line;
import evenhand.chart.Part.Mark;
import evenhand.chart.Part.Point;
import evenhand.chart.Part.Rule;
import evenhand.chart.Part.Weight;
import evenhand.chart.RideCharts.Riding;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.ride.AxleRide;
import evenhand.ride.DamperChoice;
import evenhand.ride.DamperChoice.Fitted;
import evenhand.ride.DampingSweep;
import evenhand.ride.Ride;
import evenhand.words.EventWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.ride.DamperWords;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** The dampers of set-ups: what each setting gives on the road, and its forces. */
public final class DamperCharts {
    /** Of a curve: enough to look round. */
    private static final int POINTS = 60;

    /** Damping ratios that are marked along a curve on which no setting lies. */
    private static final List<Double> SCALE = List.of(0.15, 0.2, 0.3, 0.5, 0.7, 1.0);

    /** What damps the body less is not drawn: no damper is so weak. */
    private static final double LEAST_DRAWN = 0.1;

    private static final Unit ACCELERATION = Unit.of("m/s^2");
    private static final Unit SHARE = Unit.of("%");

    private DamperCharts() {}

    /** A set-up's ride and what its dampers of one axle can be set to. */
    public record Damped(Riding riding, DamperChoice choice) {}

    /**
     * Comfort against grip over the damping of an axle: every setting by its name, today's one marked as such. A curve on which
     * there is one damper or none has a scale of damping ratios, so that another damper can be placed on it.
     */
    public static Chart comfortAgainstGrip(List<Damped> cars, End end) {
        List<Part> parts = new ArrayList<>();
        Set<Object> named = new HashSet<>();
        boolean scaled = false;
        for (Damped car : cars) {
            Riding riding = car.riding();
            Ride ride = riding.ride();
            List<Fitted> settings = car.choice().settings();
            double least = settings.isEmpty()
                    ? LEAST_DRAWN
                    : Math.min(LEAST_DRAWN, settings.get(0).bodyRatio());
            List<DampingSweep.Point> curve = DampingSweep.of(ride.axle(end), ride.road(), ride.speed(), POINTS).stream()
                    .filter(point -> point.dampingRatio() >= least)
                    .toList();
            parts.add(new Line(
                    riding.name(),
                    "",
                    "",
                    riding.style(),
                    Weight.THREAD,
                    curve.stream().map(DamperCharts::point).toList()));
            if (settings.size() < 2 && !scaled) {
                scaled = true;
                scale(riding, ride.axle(end), curve, parts);
            }
            for (Fitted one : settings) {
                Point at = point(one.point());
                // Set-ups with the same springs and dampers lie on one another: one name is enough.
                String words = named.add(List.of(at, words(one))) ? words(one) : "";
                parts.add(new Mark(
                        one.set() ? Mark.Kind.NOW : Mark.Kind.EVENT, riding.name(), riding.style(), at, words));
            }
        }
        return new Chart(
                "Comfort against grip over the " + EventWords.end(end) + " dampers",
                Axis.Measure.of("weighted acceleration, less is softer", ACCELERATION, 3, span(parts, true)),
                Axis.Measure.of("change of the tyre's load, less is more grip", SHARE, 1, span(parts, false)),
                parts,
                scaled
                        ? List.of("Ticks along the curve: damping ratio of the body, were the damper another.")
                        : List.of());
    }

    private static String words(Fitted one) {
        return one.name().isEmpty() ? "as it is" : one.name().get() + (one.set() ? ", set now" : "");
    }

    /** Ticks along a curve where the body is damped by round ratios. */
    private static void scale(Riding riding, AxleRide axle, List<DampingSweep.Point> curve, List<Part> parts) {
        Ride ride = riding.ride();
        for (double ratio : SCALE) {
            for (int i = 1; i < curve.size(); i++) {
                DampingSweep.Point less = curve.get(i - 1);
                DampingSweep.Point more = curve.get(i);
                if (less.dampingRatio() < ratio && more.dampingRatio() >= ratio) {
                    double part = (ratio - less.dampingRatio()) / (more.dampingRatio() - less.dampingRatio());
                    double rate = less.dampingRate() + part * (more.dampingRate() - less.dampingRate());
                    parts.add(new Mark(
                            Mark.Kind.LIMIT,
                            riding.name(),
                            riding.style(),
                            point(DampingSweep.at(axle, rate, ride.road(), ride.speed())),
                            Numbers.plain(ratio, 2)));
                    break; // what lies beyond creeps, and is no ratio of the body any more
                }
            }
        }
    }

    private static Point point(DampingSweep.Point point) {
        return new Point(ACCELERATION.fromSi(point.weightedAcceleration()), SHARE.fromSi(point.tyreLoadVariation()));
    }

    private static Span span(List<Part> parts, boolean across) {
        return Span.around(parts.stream()
                        .flatMap(part -> part instanceof Line line
                                ? line.points().stream()
                                : part instanceof Mark mark ? Stream.of(mark.at()) : Stream.empty())
                        .mapToDouble(point -> across ? point.x() : point.y()))
                .loosened(0.12)
                .rounded();
    }

    /**
     * Force over speed at the damper, one line from rebound to bump for each damper: what is set in each set-up heavy, the other
     * settings of one set-up thin.
     *
     * @param foremost the set-up whose other settings are shown
     */
    public static Chart forces(List<Damped> cars, End end, String foremost, Units units) {
        Unit speed = Unit.of(units == Units.METRIC ? "m/s" : "in/s");
        Unit force = units.of(Dimension.FORCE);
        List<Part> parts = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        Map<Damper.Forces, String> shown = new LinkedHashMap<>();
        List<Damped> foremostFirst = new ArrayList<>(cars);
        foremostFirst.sort(Comparator.comparing(car -> !car.riding().name().equals(foremost)));
        for (Damped car : foremostFirst) {
            String name = car.riding().name();
            for (Fitted one : car.choice().settings()) {
                if (!one.set() && !name.equals(foremost)) {
                    continue;
                }
                String before = shown.get(one.forces());
                if (before == null || before.equals(name)) {
                    shown.put(one.forces(), name);
                    String part = one.name().isPresent() ? DamperWords.named(one) : "";
                    parts.add(new Line(
                            name,
                            part,
                            "",
                            car.riding().style(),
                            one.set() ? Weight.HEAVY : Weight.THREAD,
                            points(one.forces(), speed, force)));
                } else if (one.set()) {
                    notes.add("\"" + name + "\" has the dampers of \"" + before + "\".");
                }
            }
        }
        List<Point> all =
                parts.stream().flatMap(part -> ((Line) part).points().stream()).toList();
        parts.add(0, new Rule(Rule.Kind.ZERO, Rule.Along.UP, 0, ""));
        parts.add(0, new Rule(Rule.Kind.ZERO, Rule.Along.ACROSS, 0, ""));
        return new Chart(
                "Forces of the " + EventWords.end(end) + " dampers",
                Axis.Measure.of(
                        "speed of the damper, rebound left, bump right",
                        speed,
                        units == Units.METRIC ? 2 : 1,
                        Span.around(all.stream().mapToDouble(Point::x)).rounded()),
                Axis.Measure.of(
                        "force of the damper, rebound down, bump up",
                        force,
                        0,
                        Span.around(all.stream().mapToDouble(Point::y))
                                .loosened(0.05)
                                .rounded()),
                parts,
                notes);
    }

    private static List<Point> points(Damper.Forces forces, Unit speed, Unit force) {
        List<Point> points = new ArrayList<>();
        for (Curve.Point one : forces.rebound().points()) {
            points.add(new Point(-speed.fromSi(one.at()), -force.fromSi(one.force())));
        }
        Collections.reverse(points);
        for (Curve.Point one : forces.bump().points()) {
            if (one.at() > 0) {
                points.add(new Point(speed.fromSi(one.at()), force.fromSi(one.force())));
            }
        }
        return points;
    }
}
