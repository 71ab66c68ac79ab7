package evenhand.terminal;

import evenhand.doubt.Doubt;
import evenhand.doubt.Spread;
import evenhand.quantity.Unit;
import evenhand.words.Units;
import java.util.List;

/** The answers of {@code doubt} as CSV, a row per figure and cause; a difference has its base in its row. */
final class DoubtCsv {
    private static final String HEAD = "setup,base,figure,lateralAcceleration_g,unit,nominal,low,high,median,sd,"
            + "noAnswerShare,path,share,standardError\n";

    private DoubtCsv() {}

    static String write(Doubted doubted, Units units) {
        StringBuilder csv = new StringBuilder(HEAD);
        if (doubted.answer().isPresent()) {
            Doubt.Answer answer = doubted.answer().get();
            for (int i = 0; i < answer.cars().size(); i++) {
                rows(csv, doubted.answered().get(i).name(), "", answer.cars().get(i), units);
            }
            for (int i = 0; i < answer.differences().size(); i++) {
                rows(
                        csv,
                        doubted.answered().get(i + 1).name(),
                        doubted.answered().get(0).name(),
                        answer.differences().get(i),
                        units);
            }
        }
        return csv.toString();
    }

    private static void rows(StringBuilder csv, String setup, String base, Doubt.Left left, Units units) {
        for (Spread spread : left.spreads()) {
            Unit unit = CompareCsv.unit(spread.judged(), units);
            StringBuilder start = new StringBuilder(BalanceCsv.quoted(setup)).append(',');
            start.append(base.isEmpty() ? "" : BalanceCsv.quoted(base)).append(',');
            start.append(CompareCsv.judged(spread.judged(), units)).append(',');
            if (spread.nominal().isPresent()) {
                start.append(CompareCsv.number(unit, spread.nominal().getAsDouble()));
            }
            for (double value : List.of(spread.low(), spread.high(), spread.median(), spread.standardDeviation())) {
                start.append(',').append(CompareCsv.number(unit, value));
            }
            start.append(',').append(spread.noAnswerShare()).append(',');
            if (spread.causes().isEmpty()) {
                csv.append(start).append(",,\n");
            }
            for (Spread.Cause cause : spread.causes()) {
                csv.append(start).append(BalanceCsv.quoted(cause.path())).append(',');
                csv.append(cause.share())
                        .append(',')
                        .append(cause.standardError())
                        .append('\n');
            }
        }
    }
}
