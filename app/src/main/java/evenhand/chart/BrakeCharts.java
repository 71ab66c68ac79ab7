package evenhand.chart;

import evenhand.car.Weights;
import evenhand.chart.Part.Guide;
import evenhand.chart.Part.Line;
import evenhand.chart.Part.Mark;
import evenhand.chart.Part.Point;
import evenhand.chart.Part.Weight;
import evenhand.look.SetupStyle;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.straight.BrakeRule;
import evenhand.straight.Braking;
import evenhand.words.EventWords;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** How brakes share their force, and what both ends use of the road. */
public final class BrakeCharts {
    private static final Unit G = Unit.of("g");

    /** Between two lines of equal deceleration, g. */
    private static final double APART = 0.2;

    /** Ideal forces of two set-ups that are nearer than this everywhere are one curve, N. */
    private static final double ONE_CURVE = 2;

    /** Lines of equal deceleration are nobody else's where masses differ by more than this part. */
    private static final double ONE_MASS = 0.002;

    /** Nobody looks at an end that would have to use more of the road than this. */
    private static final double MOST_DRAWN = 1.4;

    private BrakeCharts() {}

    /** A set-up that brakes. */
    public record Stopping(String name, SetupStyle style, Braking.Answer answer) {
        private List<Point> curve(ToDoubleFunction<Braking.Row> across, ToDoubleFunction<Braking.Row> up) {
            return Stream.concat(
                            Stream.of(new Point(0, 0)),
                            answer.rows().stream()
                                    .map(row -> new Point(across.applyAsDouble(row), up.applyAsDouble(row))))
                    .toList();
        }

        /** Its weight, N: what the ideal forces of a row add up to at 1 g. */
        private double weight() {
            Braking.Row row = answer.rows().get(0);
            return (row.front().idealForce() + row.rear().idealForce()) / G.fromSi(row.deceleration());
        }

        /** Whether its ideal forces are another's. */
        private boolean idealAs(Stopping other) {
            int both = Math.min(answer.rows().size(), other.answer.rows().size());
            for (int i = 0; i < both; i++) {
                Braking.Row one = answer.rows().get(i);
                Braking.Row two = other.answer.rows().get(i);
                if (Math.abs(one.front().idealForce() - two.front().idealForce()) > ONE_CURVE
                        || Math.abs(one.rear().idealForce() - two.rear().idealForce()) > ONE_CURVE) {
                    return false;
                }
            }
            return true;
        }
    }

    /**
     * Rear against front brake force: each set-up's own line, the ideal one at which both ends would lock together, and lines of
     * equal deceleration. Above the ideal curve the rear locks first.
     */
    public static Chart forces(List<Stopping> cars, Units units) {
        Unit unit = units.of(Dimension.FORCE);
        ToDoubleFunction<Braking.Row> front = row -> unit.fromSi(row.front().force());
        ToDoubleFunction<Braking.Row> rear = row -> unit.fromSi(row.rear().force());
        ToDoubleFunction<Braking.Row> idealFront =
                row -> unit.fromSi(row.front().idealForce());
        ToDoubleFunction<Braking.Row> idealRear = row -> unit.fromSi(row.rear().idealForce());
        boolean oneIdeal = cars.stream().allMatch(car -> car.idealAs(cars.get(0)));
        List<Part> lines = new ArrayList<>();
        List<Part> marks = new ArrayList<>();
        for (Stopping car : cars) {
            List<Point> own = car.curve(front, rear);
            Optional<Mark> lock = firstLock(car, own, cars.size() == 1);
            lock.ifPresent(marks::add);
            lines.add(new Line(
                    car.name(),
                    oneIdeal ? "" : "brakes",
                    cars.size() > 1 && lock.isPresent() ? words(car) : "",
                    car.style(),
                    Weight.HEAVY,
                    own));
            if (!oneIdeal) {
                lines.add(
                        new Line(car.name(), "ideal", "", car.style(), Weight.FINE, car.curve(idealFront, idealRear)));
            }
        }
        if (oneIdeal && !cars.isEmpty()) {
            lines.add(new Line(
                    "", "ideal", "", SetupStyle.PLAIN, Weight.FINE, cars.get(0).curve(idealFront, idealRear)));
        }
        Span across = span(lines, Point::x);
        Span up = span(lines, Point::y);
        List<Part> parts = new ArrayList<>(cars.isEmpty() ? List.of() : equalDeceleration(cars.get(0), unit, across));
        parts.addAll(lines);
        parts.addAll(marks);
        List<String> notes = new ArrayList<>();
        notes.add("Above the ideal curve the rear locks first, below it the front. Stroke: first lock.");
        cars.stream()
                .filter(car -> Math.abs(car.weight() / cars.get(0).weight() - 1) > ONE_MASS)
                .findFirst()
                .ifPresent(other -> notes.add(
                        "Lines of equal deceleration: of \"" + cars.get(0).name() + "\"."));
        return new Chart(
                "How the brakes share their force",
                Axis.Measure.of("front brake force", unit, 0, across),
                Axis.Measure.of("rear brake force", unit, 0, up),
                parts,
                notes);
    }

    private static Span span(List<Part> lines, Function<Point, Double> reading) {
        return Span.around(lines.stream()
                        .flatMap(part -> ((Line) part).points().stream())
                        .mapToDouble(reading::apply))
                .including(0)
                .loosened(0.04)
                .rounded();
    }

    /** Where the forces of both ends add up to the same: a straight line for each deceleration. */
    private static List<Guide> equalDeceleration(Stopping car, Unit unit, Span across) {
        List<Guide> guides = new ArrayList<>();
        int last = (int) Math.round(
                G.fromSi(car.answer().rows().get(car.answer().rows().size() - 1).deceleration()) / APART);
        for (int i = 1; i <= last; i++) {
            double g = i * APART;
            double sum = unit.fromSi(g * car.weight());
            double right = Math.min(sum, across.high());
            guides.add(new Guide(
                    List.of(new Point(0, sum), new Point(sum, 0)),
                    new Point(right, sum - right),
                    Units.pace(g * Weights.GRAVITY)));
        }
        return guides;
    }

    /** Where the first wheel locks on its own tyres, on the line of its forces. */
    private static Optional<Mark> firstLock(Stopping car, List<Point> own, boolean said) {
        List<Braking.Row> rows = car.answer().rows();
        return car.answer().own().locks().flatMap(locks -> {
            for (int i = 0; i < rows.size(); i++) {
                double after = rows.get(i).deceleration();
                if (after >= locks.deceleration()) {
                    double before = i == 0 ? 0 : rows.get(i - 1).deceleration();
                    double part = (locks.deceleration() - before) / (after - before);
                    Point from = own.get(i);
                    Point to = own.get(i + 1);
                    return Optional.of(new Mark(
                            Mark.Kind.LIMIT,
                            car.name(),
                            car.style(),
                            new Point(from.x() + part * (to.x() - from.x()), from.y() + part * (to.y() - from.y())),
                            said ? words(car) : ""));
                }
            }
            return Optional.empty();
        });
    }

    private static String words(Stopping car) {
        return car.answer()
                .own()
                .locks()
                .map(locks -> EventWords.end(locks.axle()) + " locks at " + Units.exactPace(locks.deceleration()))
                .orElse("");
    }

    /** What front and rear use of the road over the deceleration, with what the rules for passenger cars ask as a yardstick. */
    public static Chart adhesion(List<Stopping> cars, Units units) {
        Unit unit = units.of(Dimension.RATIO);
        List<Part> lines = new ArrayList<>();
        for (Stopping car : cars) {
            lines.add(used(car, "front", Weight.HEAVY, unit, Braking.Row::front));
            lines.add(used(car, "rear", Weight.FINE, unit, Braking.Row::rear));
        }
        List<Part> parts = new ArrayList<>(yardsticks(unit));
        parts.addAll(lines);
        Span across = Span.around(lines.stream()
                        .flatMap(part -> ((Line) part).points().stream())
                        .mapToDouble(Point::x))
                .including(0)
                .including(1)
                .rounded();
        Span up = Span.around(lines.stream()
                        .flatMap(part -> ((Line) part).points().stream())
                        .mapToDouble(Point::y))
                .including(0)
                .including(unit.fromSi(1))
                .within(0, unit.fromSi(MOST_DRAWN))
                .rounded();
        return new Chart(
                "What each end uses of the road",
                Axis.Measure.of("deceleration", G, 2, across),
                Axis.Measure.of("adhesion used", unit, 1, up),
                parts,
                List.of("Rear line above: the rear locks first. Rules are a yardstick only."));
    }

    private static Line used(
            Stopping car, String end, Weight weight, Unit unit, Function<Braking.Row, Braking.OfAxle> axle) {
        List<Point> points = new ArrayList<>(List.of(new Point(0, 0)));
        for (Braking.Row row : car.answer().rows()) {
            axle.apply(row)
                    .adhesion()
                    .ifPresent(adhesion -> points.add(new Point(G.fromSi(row.deceleration()), unit.fromSi(adhesion))));
        }
        return new Line(car.name(), end, "", car.style(), weight, points);
    }

    /** Both ends alike; the most that an axle may use at a deceleration by each rule; what the rear may where it leads. */
    private static List<Guide> yardsticks(Unit unit) {
        List<Guide> guides = new ArrayList<>();
        Point alike = new Point(MOST_DRAWN, unit.fromSi(MOST_DRAWN));
        guides.add(new Guide(List.of(new Point(0, 0), alike), new Point(0.93, unit.fromSi(0.93)), "both ends alike"));
        for (BrakeRule.Bound bound : BrakeRule.BOUNDS) {
            Point from = bound(bound, BrakeRule.LEAST_USED, unit);
            Point to = bound(bound, BrakeRule.MOST_USED, unit);
            guides.add(new Guide(List.of(from, to), to, "at most, " + bound.name()));
        }
        Point from = new Point(BrakeRule.INVERSION_FROM, unit.fromSi(BrakeRule.INVERSION_FROM + BrakeRule.INVERSION));
        Point to = new Point(BrakeRule.INVERSION_TO, unit.fromSi(BrakeRule.INVERSION_TO + BrakeRule.INVERSION));
        guides.add(new Guide(List.of(from, to), to, ""));
        return guides;
    }

    private static Point bound(BrakeRule.Bound bound, double used, Unit unit) {
        return new Point(bound.deceleration(used), unit.fromSi(used));
    }
}
