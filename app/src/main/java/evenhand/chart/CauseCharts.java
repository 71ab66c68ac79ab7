package evenhand.chart;

import evenhand.answers.Figure;
import evenhand.answers.TurnFigures;
import evenhand.car.Axle;
import evenhand.car.End;
import evenhand.chart.Part.Bar;
import evenhand.chart.Part.Hatch;
import evenhand.chart.Part.Mark;
import evenhand.chart.Part.Point;
import evenhand.chart.Part.Rule;
import evenhand.handsums.HandSums;
import evenhand.handsums.HandSums.AxleSums;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.turn.PaceAnswer;
import evenhand.words.EventWords;
import evenhand.words.InPrint;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** What load transfer and understeer are made of, as bars. */
public final class CauseCharts {
    private static final Hatch[] HATCHES = {
        Hatch.FULL, Hatch.RISING, Hatch.EMPTY, Hatch.CROSSED, Hatch.UPRIGHT, Hatch.DOTTED
    };

    private CauseCharts() {}

    /**
     * Load transfer of each axle by its paths, by the hand sums. They grow with lateral acceleration, so any pace shows the same
     * picture.
     *
     * @param pace lateral acceleration, m/s²
     */
    public static Chart loadTransfer(List<Shown> cars, double pace, Units units) {
        Unit unit = units.of(Dimension.FORCE);
        List<Axis.Row> rows = new ArrayList<>();
        List<Part> parts = new ArrayList<>();
        for (End end : End.values()) {
            for (Shown car : cars) {
                if (car.sums().isEmpty()) {
                    continue;
                }
                HandSums sums = car.sums().get();
                Axle axle = car.car().axle(end);
                AxleSums of = end == End.FRONT ? sums.front() : sums.rear();
                double scale = pace / sums.lateralAcceleration() / axle.track();
                Sum sum = new Sum(rows.size(), car, unit);
                sum.add("springs and bar", scale * of.elasticMoment(), parts);
                sum.add("links, by the roll centre", scale * of.geometricMoment(), parts);
                sum.add("unsprung mass", scale * of.unsprungMoment(), parts);
                sum.add(
                        "weight that leans with the tyres",
                        scale * (of.tyreRollStiffness() - of.tyreRollStiffnessLeft()) * of.tyreTilt(),
                        parts);
                parts.add(sum.total(Numbers.fixed(sum.all(), 0) + " " + InPrint.symbol(unit)));
                rows.add(new Axis.Row(EventWords.end(end) + ", " + car.name(), ""));
            }
        }
        List<String> notes = new ArrayList<>(TurnCharts.notes(cars));
        notes.add("By the hand sums, which know no stops: where one carries, the tyres' loads tell.");
        return bars(
                "How the load is moved across, at " + Units.pace(pace), "load transfer", unit, 0, rows, parts, notes);
    }

    /**
     * What the understeer gradient at a pace is made of: causes of understeer to the right, of oversteer to the left.
     *
     * @param pace lateral acceleration, m/s², one of those that the cars were asked at
     */
    public static Chart budget(List<Shown> cars, double pace, Units units) {
        Unit unit = units.of(Dimension.UNDERSTEER_GRADIENT);
        List<Axis.Row> rows = new ArrayList<>();
        List<Part> parts = new ArrayList<>();
        List<String> notes = new ArrayList<>(TurnCharts.notes(cars));
        for (Shown car : cars) {
            if (car.turns().isEmpty()) {
                continue;
            }
            boolean answered = false;
            for (PaceAnswer answer : car.turns().get().paces()) {
                if (answer instanceof PaceAnswer.InBalance balance
                        && Math.abs(answer.lateralAcceleration() - pace) < 1e-9 * Math.max(1, pace)) {
                    Sum sum = new Sum(rows.size(), car, unit);
                    for (Figure<PaceAnswer.Budget> figure : TurnFigures.BUDGET) {
                        sum.add(figure.words(), figure.si(balance.budget()).orElse(0), parts);
                    }
                    parts.add(sum.total(Numbers.signed(sum.all(), 2) + " " + InPrint.symbol(unit)));
                    rows.add(new Axis.Row(car.name(), ""));
                    answered = true;
                }
            }
            if (!answered) {
                notes.add(car.name() + " is not shown: it does not reach " + Units.pace(pace) + ".");
            }
        }
        return bars(
                "What the understeer gradient at " + Units.pace(pace) + " is made of",
                "oversteer to the left, understeer to the right",
                unit,
                2,
                rows,
                parts,
                notes);
    }

    private static Chart bars(
            String title,
            String words,
            Unit unit,
            int digits,
            List<Axis.Row> rows,
            List<Part> parts,
            List<String> notes) {
        Span span = Span.around(parts.stream()
                        .flatMapToDouble(part ->
                                part instanceof Bar bar ? DoubleStream.of(bar.from(), bar.to()) : DoubleStream.empty()))
                .including(0)
                .loosened(0.12)
                .rounded();
        List<Part> all = Stream.concat(parts.stream(), Stream.of(new Rule(Rule.Kind.ZERO, Rule.Along.ACROSS, 0, "")))
                .toList();
        return new Chart(title, Axis.Measure.of(words, unit, digits, span), new Axis.Rows("", rows), all, notes);
    }

    /** Parts of a sum laid end to end, those above zero to the right and those below to the left. */
    private static final class Sum {
        private final int row;
        private final Shown car;
        private final Unit unit;
        private double above;
        private double below;
        private int count;

        Sum(int row, Shown car, Unit unit) {
            this.row = row;
            this.car = car;
            this.unit = unit;
        }

        void add(String words, double si, List<Part> parts) {
            double value = unit.fromSi(si);
            double from = value > 0 ? above : below;
            Hatch hatch = HATCHES[count++ % HATCHES.length];
            parts.add(new Bar(row, 0, 1, car.name(), words, car.style(), hatch, from, from + value, ""));
            if (value > 0) {
                above += value;
            } else {
                below += value;
            }
        }

        double all() {
            return above + below;
        }

        Mark total(String words) {
            return new Mark(Mark.Kind.ANSWER, car.name(), car.style(), new Point(all(), row), words);
        }
    }
}
