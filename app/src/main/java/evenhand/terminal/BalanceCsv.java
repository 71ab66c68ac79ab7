package evenhand.terminal;

import evenhand.answers.Figure;
import evenhand.answers.TurnFigures;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import evenhand.turn.WheelState;
import evenhand.words.Units;
import java.util.List;
import java.util.OptionalDouble;

/** The turn of each set-up as CSV, a row per lateral acceleration. */
final class BalanceCsv {
    private BalanceCsv() {}

    static String write(List<SetupAnswer> answers, Units units) {
        StringBuilder csv = new StringBuilder("setup");
        for (Figure<TurnRow> figure : TurnFigures.ROW) {
            csv.append(',').append(figure.key(units.ofColumn(figure)));
        }
        for (Wheel wheel : Wheel.values()) {
            for (Figure<WheelState> figure : TurnFigures.WHEEL) {
                csv.append(',').append(wheel.key()).append('.').append(figure.key(units.ofColumn(figure)));
            }
        }
        csv.append('\n');
        for (SetupAnswer answer : answers) {
            if (answer instanceof SetupAnswer.Turned turned) {
                for (TurnRow row : turned.turn().rows()) {
                    row(csv, turned.setup().name(), row, units);
                }
            }
        }
        return csv.toString();
    }

    private static void row(StringBuilder csv, String setup, TurnRow row, Units units) {
        csv.append(quoted(setup));
        for (Figure<TurnRow> figure : TurnFigures.ROW) {
            cell(csv, figure.in(units.ofColumn(figure), row));
        }
        for (Wheel wheel : Wheel.values()) {
            for (Figure<WheelState> figure : TurnFigures.WHEEL) {
                cell(csv, figure.in(units.ofColumn(figure), row.wheel(wheel)));
            }
        }
        csv.append('\n');
    }

    private static void cell(StringBuilder csv, OptionalDouble value) {
        csv.append(',');
        if (value.isPresent()) {
            csv.append(value.getAsDouble() + 0.0); // + 0.0 makes -0.0 a plain zero
        }
    }

    /** Text as RFC 4180 wants it. */
    static String quoted(String text) {
        boolean plain =
                text.indexOf(',') < 0 && text.indexOf('"') < 0 && text.indexOf('\n') < 0 && text.indexOf('\r') < 0;
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
