package evenhand.terminal;

import evenhand.answers.Figure;
import evenhand.lowering.LoweringFigures;
import evenhand.lowering.Stance;
import evenhand.turn.PaceAnswer;
import evenhand.words.Units;
import java.util.List;
import java.util.OptionalDouble;

/** The heights of a lowering study as CSV, a row each. */
final class LowerCsv {
    private static final List<List<Figure<Stance.Stands>>> BEFORE =
            List.of(LoweringFigures.TRAVEL, LoweringFigures.ROLL);
    private static final List<List<Figure<Stance.Stands>>> AFTER = List.of(
            LoweringFigures.TURN,
            LoweringFigures.ROLL_CENTRES,
            LoweringFigures.COMFORT,
            LoweringFigures.METAL,
            LoweringFigures.LEVER,
            LoweringFigures.CAMBER,
            LoweringFigures.FREQUENCIES);

    private final StringBuilder csv = new StringBuilder("setup");
    private final LowerCommand.Lowered lowered;
    private final Units units;

    private LowerCsv(LowerCommand.Lowered lowered, Units units) {
        this.lowered = lowered;
        this.units = units;
    }

    static String write(LowerCommand.Lowered lowered, Units units) {
        LowerCsv csv = new LowerCsv(lowered, units);
        csv.heads();
        lowered.study().rows().forEach(csv::row);
        return csv.csv.toString();
    }

    private void heads() {
        head("", LoweringFigures.LOWERED);
        BEFORE.forEach(figures -> figures.forEach(figure -> head("", figure)));
        for (double pace : lowered.trial().paces()) {
            head(Units.pace(pace).replace(' ', '_') + ".", LoweringFigures.UNDERSTEER);
        }
        AFTER.forEach(figures -> figures.forEach(figure -> head("", figure)));
        if (lowered.reserve().isPresent()) {
            LoweringFigures.SPRINGS.forEach(figure -> head("", figure));
        }
        csv.append('\n');
    }

    private void head(String prefix, Figure<?> figure) {
        csv.append(',').append(prefix).append(figure.key(units.ofColumn(figure)));
    }

    private void row(Stance stance) {
        csv.append(BalanceCsv.quoted(lowered.setup().name()));
        cell(LoweringFigures.LOWERED, stance);
        BEFORE.forEach(figures -> cells(figures, stance));
        List<PaceAnswer> paces = stance instanceof Stance.Stands stands ? LoweringFigures.paces(stands) : List.of();
        for (int i = 0; i < lowered.trial().paces().size(); i++) {
            if (paces.isEmpty()) {
                csv.append(',');
            } else {
                cell(LoweringFigures.UNDERSTEER, paces.get(i));
            }
        }
        AFTER.forEach(figures -> cells(figures, stance));
        if (lowered.reserve().isPresent()) {
            cells(LoweringFigures.SPRINGS, stance);
        }
        csv.append('\n');
    }

    private void cells(List<Figure<Stance.Stands>> figures, Stance stance) {
        for (Figure<Stance.Stands> figure : figures) {
            if (stance instanceof Stance.Stands stands) {
                cell(figure, stands);
            } else {
                csv.append(',');
            }
        }
    }

    private <T> void cell(Figure<T> figure, T part) {
        OptionalDouble value = figure.in(units.ofColumn(figure), part);
        csv.append(',');
        if (value.isPresent()) {
            csv.append(value.getAsDouble() + 0.0); // + 0.0 makes -0.0 a plain zero
        }
    }
}
