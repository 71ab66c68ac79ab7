package evenhand.chart;

import evenhand.answers.BumpFigures;
import evenhand.answers.Figure;
import evenhand.bump.Bump;
import evenhand.bump.Series;
import evenhand.car.End;
import evenhand.chart.Part.Line;
import evenhand.chart.Part.Mark;
import evenhand.chart.Part.Point;
import evenhand.chart.Part.Rule;
import evenhand.chart.Part.Weight;
import evenhand.look.SetupStyle;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.words.EventWords;
import evenhand.words.Units;
import evenhand.words.road.BumpWheel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What an event of the road does to set-ups, in time from the moment at which the wheel meets it. */
public final class BumpCharts {
    /** Shown of what follows half a second after the event, s. */
    private static final double AND_THEN = 0.5;

    /** A line keeps the least and the greatest of each of so many pieces, so that no peak is lost. */
    private static final int PIECES = 300;

    /** No stop stands so far away, m. */
    private static final double FAR = 10;

    private static final Unit SECOND = Unit.of("s");

    private final List<Driven> cars;
    private final End end;
    private final Units units;
    private final double until;

    private BumpCharts(List<Driven> cars, End end, Units units) {
        this.cars = cars;
        this.end = end;
        this.units = units;
        this.until = cars.stream()
                .flatMap(car -> car.wheels().stream())
                .mapToDouble(wheel -> Math.min(wheel.bump().gripTime() + AND_THEN, last(wheel)))
                .max()
                .orElse(1);
    }

    private static double last(BumpWheel wheel) {
        List<Double> time = wheel.bump().series().time();
        return time.get(time.size() - 1);
    }

    /** A set-up and its wheels over the event. */
    public record Driven(String name, SetupStyle style, List<BumpWheel> wheels) {
        public Driven {
            wheels = List.copyOf(wheels);
        }
    }

    /** How the loads of the tyres go, and where contact is lost. */
    public static Chart tyreLoads(List<Driven> cars, End end, Units units) {
        return new BumpCharts(cars, end, units).tyreLoads();
    }

    /** How much of the travel is used, between its stops. */
    public static Chart travels(List<Driven> cars, End end, Units units) {
        return new BumpCharts(cars, end, units).travels();
    }

    /** How the body is jolted. */
    public static Chart jolts(List<Driven> cars, End end, Units units) {
        return new BumpCharts(cars, end, units).jolts();
    }

    /** Where road, wheel and body go; in a turn by the wheel of the axle that comes nearest to leaving the ground. */
    public static Chart movements(List<Driven> cars, End end, Units units) {
        return new BumpCharts(cars, end, units).movements();
    }

    /** A column of a series. */
    private interface Column extends Function<Series, List<Double>> {}

    private Chart tyreLoads() {
        Unit unit = units.of(Dimension.FORCE);
        List<Part> parts = new ArrayList<>(lines(Series::tyreLoad, unit));
        List<String> notes = new ArrayList<>();
        for (Driven car : cars) {
            List<String> off = new ArrayList<>();
            for (BumpWheel wheel : wheels(car)) {
                if (wheel.bump().timeOffGround() > 0) {
                    off.add((wheel.side().isEmpty() ? "" : wheel.side() + " ")
                            + units.show(wheel.bump().timeOffGround(), Dimension.TIME, 3));
                    longest(wheel.bump().series())
                            .ifPresent(time -> parts.add(new Mark(
                                    Mark.Kind.EVENT, car.name(), car.style(), new Point(SECOND.fromSi(time), 0), "")));
                }
            }
            if (!off.isEmpty()) {
                notes.add("Off the ground, \"" + car.name() + "\": " + String.join(", ", off)
                        + " in all; marked where it is longest.");
            }
        }
        return chart("Load of the " + EventWords.end(end) + " tyres", "load of a tyre", unit, 0, parts, notes);
    }

    /** The middle of the longest time without load, s; none where it is shorter than from row to row. */
    private static OptionalDouble longest(Series series) {
        int most = 0;
        int at = 0;
        int now = 0;
        for (int i = 0; i < series.tyreLoad().size(); i++) {
            now = series.tyreLoad().get(i) <= 0 ? now + 1 : 0;
            if (now > most) {
                most = now;
                at = i;
            }
        }
        return most == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(series.time().get(at - most / 2));
    }

    private Chart travels() {
        Unit unit = units.of(Dimension.LENGTH);
        List<Part> parts = new ArrayList<>(lines(Series::travel, unit));
        parts.addAll(
                stops("bump stop", unit, BumpFigures.BUMP_TRAVEL_TO_STOP, BumpFigures.LEFT_TO_STOP, 1, bump -> true));
        parts.addAll(stops(
                "metal", unit, BumpFigures.BUMP_TRAVEL_TO_METAL, BumpFigures.LEFT_TO_METAL, 1, Bump::stopTouched));
        parts.addAll(stops("droop stop", unit, BumpFigures.DROOP_TRAVEL, BumpFigures.LEFT_IN_DROOP, -1, bump -> true));
        return chart(
                "Travel of the " + EventWords.end(end) + " wheels",
                "travel from rest, bump up",
                unit,
                units == Units.METRIC ? 0 : 2,
                parts);
    }

    /**
     * Where the stops of a kind stand, for each set-up that of the wheel that comes nearest to it: one rule where all stand alike,
     * else each with its owner.
     *
     * @param near whether it is near enough to be drawn
     */
    private List<Rule> stops(
            String words, Unit unit, Figure<Bump> place, Figure<Bump> left, int sign, Predicate<Bump> near) {
        Map<Long, List<String>> owners = new LinkedHashMap<>();
        for (Driven car : cars) {
            wheels(car).stream()
                    .filter(wheel -> left.si(wheel.bump()).orElse(FAR) < FAR)
                    .filter(wheel -> near.test(wheel.bump()))
                    .min(Comparator.comparingDouble(
                            wheel -> left.si(wheel.bump()).orElse(FAR)))
                    .ifPresent(wheel -> owners.computeIfAbsent(
                                    Math.round(place.si(wheel.bump()).orElse(0) * 1000), key -> new ArrayList<>())
                            .add(wheel.side().isEmpty() ? car.name() : car.name() + " " + wheel.side()));
        }
        return owners.entrySet().stream()
                .map(one -> new Rule(
                        Rule.Kind.NOTE,
                        Rule.Along.UP,
                        sign * unit.fromSi(one.getKey() / 1000.0),
                        owners.size() == 1 ? words : words + ", " + String.join(" and ", one.getValue())))
                .toList();
    }

    private Chart jolts() {
        Unit unit = units.of(Dimension.ACCELERATION);
        return chart(
                "How the body is jolted over the " + EventWords.end(end) + " wheels",
                "acceleration of the body, up positive",
                unit,
                2,
                lines(Series::bodyAcceleration, unit));
    }

    private Chart movements() {
        Unit unit = units.of(Dimension.LENGTH);
        List<Part> parts = new ArrayList<>();
        String side = cars.stream()
                .flatMap(car -> wheels(car).stream())
                .min(Comparator.comparingDouble(wheel -> wheel.bump().leastTyreLoad()))
                .map(BumpWheel::side)
                .orElse("");
        for (Driven car : cars) {
            for (BumpWheel wheel : wheels(car)) {
                if (!wheel.side().equals(side)) {
                    continue;
                }
                Series series = wheel.bump().series();
                if (parts.isEmpty()) {
                    parts.add(line("", "road", SetupStyle.NONE, Weight.FINE, series.time(), series.road(), unit));
                }
                parts.add(line(car.name(), "wheel", car.style(), Weight.FINE, series.time(), series.wheel(), unit));
                parts.add(line(car.name(), "body", car.style(), Weight.HEAVY, series.time(), body(series), unit));
            }
        }
        return chart(
                "Road, wheel and body at the " + (side.isEmpty() ? "" : side + " ") + EventWords.end(end),
                "height above where it was",
                unit,
                units == Units.METRIC ? 0 : 2,
                parts);
    }

    /** How far the body has moved: as the wheel, less what the travel has grown by. */
    private static List<Double> body(Series series) {
        List<Double> body = new ArrayList<>();
        double before = series.travel().isEmpty() ? 0 : series.travel().get(0);
        for (int i = 0; i < series.wheel().size(); i++) {
            body.add(series.wheel().get(i) - (series.travel().get(i) - before));
        }
        return body;
    }

    private List<BumpWheel> wheels(Driven car) {
        return car.wheels().stream().filter(wheel -> wheel.end() == end).toList();
    }

    private List<Part> lines(Column column, Unit unit) {
        List<Part> parts = new ArrayList<>();
        for (Driven car : cars) {
            for (BumpWheel wheel : wheels(car)) {
                Series series = wheel.bump().series();
                Weight weight = wheel.side().equals("inner") ? Weight.FINE : Weight.HEAVY;
                parts.add(
                        line(car.name(), wheel.side(), car.style(), weight, series.time(), column.apply(series), unit));
            }
        }
        return parts;
    }

    private Line line(
            String name,
            String part,
            SetupStyle style,
            Weight weight,
            List<Double> time,
            List<Double> values,
            Unit unit) {
        int rows = 0;
        while (rows < time.size() && time.get(rows) <= until) {
            rows++;
        }
        int piece = Math.max(1, (rows + PIECES - 1) / PIECES);
        List<Point> points = new ArrayList<>();
        for (int from = 0; from < rows; from += piece) {
            int least = from;
            int greatest = from;
            for (int i = from; i < Math.min(rows, from + piece); i++) {
                least = values.get(i) < values.get(least) ? i : least;
                greatest = values.get(i) > values.get(greatest) ? i : greatest;
            }
            Stream.of(Math.min(least, greatest), Math.max(least, greatest))
                    .distinct()
                    .map(i -> new Point(SECOND.fromSi(time.get(i)), unit.fromSi(values.get(i))))
                    .forEach(points::add);
        }
        return new Line(name, part, "", style, weight, points);
    }

    private Chart chart(String title, String words, Unit unit, int digits, List<? extends Part> drawn) {
        return chart(title, words, unit, digits, drawn, List.of());
    }

    private Chart chart(
            String title, String words, Unit unit, int digits, List<? extends Part> drawn, List<String> notes) {
        List<Part> parts = new ArrayList<>(drawn);
        parts.add(0, new Rule(Rule.Kind.ZERO, Rule.Along.UP, 0, ""));
        Span up = Span.around(parts.stream()
                        .flatMapToDouble(part -> part instanceof Line line
                                ? line.points().stream().mapToDouble(Point::y)
                                : part instanceof Rule rule
                                        ? java.util.stream.DoubleStream.of(rule.value())
                                        : java.util.stream.DoubleStream.empty()))
                .loosened(0.04)
                .rounded();
        return new Chart(
                title,
                Axis.Measure.of("time", SECOND, 3, new Span(0, Math.max(until, 1e-3)).rounded()),
                Axis.Measure.of(words, unit, digits, up),
                parts,
                notes);
    }
}
