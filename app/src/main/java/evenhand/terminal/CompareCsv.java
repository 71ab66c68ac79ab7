package evenhand.terminal;

import evenhand.answers.Judged;
import evenhand.choice.Change;
import evenhand.choice.Comparison;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.words.Units;
import java.util.List;

/** The answers of {@code compare} as CSV, a row per share. */
final class CompareCsv {
    private static final String HEAD =
            "setup,figure,lateralAcceleration_g,unit,base,value,difference,change,from,to,share\n";

    private CompareCsv() {}

    static String write(Compared compared, Units units) {
        StringBuilder csv = new StringBuilder(HEAD);
        for (Compared.Against against : compared.setups()) {
            if (against.answer() instanceof Compared.Answered answered) {
                for (Comparison.Difference difference : answered.comparison().differences()) {
                    rows(csv, against.setup().name(), answered.comparison(), difference, units);
                }
            }
        }
        return csv.toString();
    }

    private static void rows(
            StringBuilder csv, String setup, Comparison comparison, Comparison.Difference difference, Units units) {
        Unit unit = unit(difference.judged(), units);
        String start = BalanceCsv.quoted(setup) + "," + judged(difference.judged(), units) + ","
                + number(unit, difference.base()) + "," + number(unit, difference.value()) + ","
                + number(unit, difference.difference());
        if (difference.shares().isEmpty() || comparison.changes().isEmpty()) {
            csv.append(start).append(",,,,\n");
            return;
        }
        List<Double> shares = difference.shares().get().shares();
        for (int i = 0; i < shares.size(); i++) {
            Change change = comparison.changes().get(i);
            csv.append(start).append(',').append(BalanceCsv.quoted(change.path()));
            csv.append(',').append(BalanceCsv.quoted(change.from()));
            csv.append(',').append(BalanceCsv.quoted(change.to()));
            csv.append(',').append(number(unit, shares.get(i))).append('\n');
        }
    }

    /** Figure, pace and unit. */
    static String judged(Judged judged, Units units) {
        String pace = judged.pace().isPresent()
                ? number(Dimension.ACCELERATION.metric(), judged.pace().getAsDouble())
                : "";
        return judged.criterion().name() + "," + pace + ","
                + unit(judged, units).symbol();
    }

    static Unit unit(Judged judged, Units units) {
        return units == Units.METRIC ? judged.criterion().unit() : units.of(judged.criterion());
    }

    static String number(Unit unit, double si) {
        return Double.toString(unit.fromSi(si) + 0.0); // + 0.0 makes -0.0 a plain zero
    }
}
