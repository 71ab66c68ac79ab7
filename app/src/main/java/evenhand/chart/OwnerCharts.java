package evenhand.chart;

import evenhand.car.End;
import evenhand.chart.Part.Bar;
import evenhand.chart.Part.Hatch;
import evenhand.chart.Part.Rule;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.turn.PaceAnswer;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnRow;
import evenhand.words.EventWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;

/** Charts that need no training to read: a row for each question, a bar for each set-up. */
public final class OwnerCharts {
    /** Grip used is nearly the same at both ends: the bar is short, and so is the axis. Per cent. */
    private static final double LEAST_BALANCE = 10;

    private OwnerCharts() {}

    /**
     * Which end works harder, at each pace and at the limit: grip used at the front less that at the rear. To the right the front,
     * to the left the rear. (Their ratio would grow out of bounds where a locked differential leaves the rear little to do.)
     */
    public static Chart whichEnd(List<Shown> cars, Units units) {
        Unit unit = units.of(Dimension.RATIO);
        return atPaces(
                "Which end works harder",
                "left: the rear works harder; right: the front",
                unit,
                0,
                cars,
                row -> unit.fromSi(row.frontGripUsed() - row.rearGripUsed()),
                value -> Numbers.signed(value, 0) + " %",
                LEAST_BALANCE);
    }

    /** How far the body leans, at each pace and at the limit. */
    public static Chart lean(List<Shown> cars, Units units) {
        Unit unit = units.of(Dimension.ANGLE);
        return atPaces(
                "How far the body leans",
                "lean",
                unit,
                1,
                cars,
                row -> unit.fromSi(Math.abs(row.roll())),
                value -> Numbers.fixed(value, 1) + " deg",
                1);
    }

    private static Chart atPaces(
            String title,
            String words,
            Unit unit,
            int digits,
            List<Shown> cars,
            ToDoubleFunction<TurnRow> reading,
            Function<Double, String> said,
            double least) {
        Map<String, Function<TurnAnswer.Turns, Optional<TurnRow>>> rows = new LinkedHashMap<>();
        cars.stream()
                .flatMap(car -> car.turns().stream())
                .flatMap(turn -> turn.paces().stream())
                .mapToDouble(PaceAnswer::lateralAcceleration)
                .distinct()
                .sorted()
                .forEach(pace -> rows.put("at " + Units.pace(pace), turn -> row(turn, pace)));
        rows.put("at the limit", turn -> Optional.of(turn.limit().row()));
        List<Part> parts = new ArrayList<>();
        int index = 0;
        for (Function<TurnAnswer.Turns, Optional<TurnRow>> at : rows.values()) {
            for (int lane = 0; lane < cars.size(); lane++) {
                Shown car = cars.get(lane);
                Optional<TurnRow> row = car.turns().flatMap(at);
                if (row.isPresent()) {
                    double value = reading.applyAsDouble(row.get());
                    parts.add(bar(index, lane, cars, value, said.apply(value)));
                }
            }
            index++;
        }
        return chart(title, words, unit, digits, List.copyOf(rows.keySet()), parts, least, TurnCharts.notes(cars));
    }

    private static Optional<TurnRow> row(TurnAnswer.Turns turn, double pace) {
        return turn.paces().stream()
                .filter(one -> one.lateralAcceleration() == pace)
                .flatMap(one -> one instanceof PaceAnswer.InBalance in
                        ? java.util.stream.Stream.of(in.row())
                        : java.util.stream.Stream.empty())
                .findFirst();
    }

    /**
     * A figure in a row of a strip.
     *
     * @param value SI; none where the set-up has no such figure
     * @param doubt half-width that holds nineteen times in twenty, SI; none where it is not known
     * @param words beside it
     */
    public record Doubted(Shown car, OptionalDouble value, OptionalDouble doubt, String words) {}

    /**
     * A strip of figures, before above now, each with its whisker.
     *
     * @param rows by what stands before them
     */
    public static Chart strip(String title, String across, Unit unit, int digits, Map<String, List<Doubted>> rows) {
        List<Part> parts = new ArrayList<>();
        Span span = Span.around(DoubleStream.of(0));
        int index = 0;
        for (List<Doubted> row : rows.values()) {
            for (int lane = 0; lane < row.size(); lane++) {
                Doubted one = row.get(lane);
                if (one.value().isPresent()) {
                    double value = unit.fromSi(one.value().getAsDouble());
                    double half = unit.fromSi(one.doubt().orElse(0));
                    parts.add(new Part.Whisker(
                            index,
                            lane,
                            row.size(),
                            one.car().name(),
                            one.car().style(),
                            value - half,
                            value,
                            value + half,
                            one.words()));
                    span = span.including(value - half).including(value + half);
                }
            }
            index++;
        }
        parts.add(new Rule(Rule.Kind.ZERO, Rule.Along.ACROSS, 0, ""));
        return new Chart(
                title,
                Axis.Measure.of(across, unit, digits, span.loosened(0.3).rounded()),
                new Axis.Rows(
                        "",
                        rows.keySet().stream().map(row -> new Axis.Row(row, "")).toList()),
                parts,
                List.of());
    }

    /** Room to the bump stops at rest; below zero where the car stands on them. */
    public static Chart travelLeft(List<Shown> cars, Units units) {
        Unit unit = units.of(Dimension.LENGTH);
        int digits = units == Units.METRIC ? 0 : 2;
        List<Part> parts = new ArrayList<>();
        List<String> rows = new ArrayList<>();
        for (End end : End.values()) {
            for (int lane = 0; lane < cars.size(); lane++) {
                OptionalDouble gap = cars.get(lane).car().axle(end).stops().bump().stream()
                        .mapToDouble(stop -> stop.gap())
                        .findFirst();
                if (gap.isPresent()) {
                    double value = unit.fromSi(gap.getAsDouble());
                    parts.add(bar(rows.size(), lane, cars, value, Numbers.fixed(value, digits) + " " + unit.symbol()));
                }
            }
            rows.add(EventWords.end(end));
        }
        return chart("Travel left before the bump stops", "room at rest", unit, digits, rows, parts, 1, List.of());
    }

    private static Bar bar(int row, int lane, List<Shown> cars, double value, String words) {
        Shown car = cars.get(lane);
        return new Bar(row, lane, cars.size(), car.name(), "", car.style(), Hatch.FULL, 0, value, words);
    }

    private static Chart chart(
            String title,
            String words,
            Unit unit,
            int digits,
            List<String> rows,
            List<Part> parts,
            double least,
            List<String> notes) {
        Span span = Span.around(parts.stream()
                        .flatMapToDouble(
                                part -> part instanceof Bar bar ? DoubleStream.of(bar.to()) : DoubleStream.empty()))
                .including(0)
                .atLeast(least)
                .loosened(0.25)
                .rounded();
        parts.add(new Rule(Rule.Kind.ZERO, Rule.Along.ACROSS, 0, ""));
        return new Chart(
                title,
                Axis.Measure.of(words, unit, digits, span),
                new Axis.Rows(
                        "", rows.stream().map(row -> new Axis.Row(row, "")).toList()),
                parts,
                notes);
    }
}
