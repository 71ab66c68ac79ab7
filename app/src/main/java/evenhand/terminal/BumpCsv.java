package evenhand.terminal;

import evenhand.answers.BumpFigures;
import evenhand.answers.Figure;
import evenhand.bump.Bump;
import evenhand.words.Units;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** The answers of {@code bump} as CSV, a row per axle, or in mid-corner per wheel. */
final class BumpCsv {
    private BumpCsv() {}

    static String write(List<BumpCommand.Answer> answers, Units units) {
        StringBuilder csv = new StringBuilder("setup,wheel");
        heads(csv, BumpFigures.PEAKS, units);
        csv.append(",stopTouched");
        heads(csv, BumpFigures.GRIP_AND_ROOM, units);
        csv.append(",metalTouched,droopStopReached,settled\n");
        for (BumpCommand.Answer answer : answers) {
            for (Map.Entry<String, Bump> one : BumpJson.byKey(answer.bump()).entrySet()) {
                Bump bump = one.getValue();
                csv.append(BalanceCsv.quoted(answer.setup().name())).append(',').append(one.getKey());
                cells(csv, BumpFigures.PEAKS, bump, units);
                csv.append(',').append(bump.stopTouched());
                cells(csv, BumpFigures.GRIP_AND_ROOM, bump, units);
                csv.append(',').append(bump.metalTouched());
                csv.append(',').append(bump.droopStopReached());
                csv.append(',').append(bump.settled()).append('\n');
            }
        }
        return csv.toString();
    }

    private static void heads(StringBuilder csv, List<Figure<Bump>> figures, Units units) {
        for (Figure<Bump> figure : figures) {
            csv.append(',').append(figure.key(units.ofColumn(figure)));
        }
    }

    private static void cells(StringBuilder csv, List<Figure<Bump>> figures, Bump bump, Units units) {
        for (Figure<Bump> figure : figures) {
            csv.append(',');
            OptionalDouble value = figure.in(units.ofColumn(figure), bump);
            if (value.isPresent()) {
                csv.append(value.getAsDouble() + 0.0); // + 0.0 makes -0.0 a plain zero
            }
        }
    }
}
