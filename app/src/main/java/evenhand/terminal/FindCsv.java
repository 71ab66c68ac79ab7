package evenhand.terminal;

import evenhand.answers.Aim;
import evenhand.choice.Finding;
import evenhand.choice.Span;
import evenhand.quantity.Unit;
import evenhand.scenario.Setup;
import evenhand.words.Units;
import java.util.List;

/** The answers of {@code find} as CSV, a row per change. */
final class FindCsv {
    private static final String HEAD =
            "setup,change,value,valueUnit,figure,lateralAcceleration_g,unit,aim,status,achieved,lowest,highest\n";

    private FindCsv() {}

    static String write(Setup setup, Finding finding, Units units) {
        StringBuilder csv = new StringBuilder(HEAD);
        if (finding instanceof Finding.One one) {
            row(csv, setup, one.change(), one.value(), one.aim(), one.met(), one.achieved(), one.reach(), units);
        } else if (finding instanceof Finding.Several several) {
            List<Span> changes = several.changes();
            for (int i = 0; i < changes.size(); i++) {
                row(
                        csv,
                        setup,
                        changes.get(i),
                        several.values().get(i),
                        several.aim(),
                        several.met(),
                        several.achieved(),
                        several.reach(),
                        units);
            }
        }
        return csv.toString();
    }

    private static void row(
            StringBuilder csv,
            Setup setup,
            Span change,
            double value,
            Aim aim,
            boolean met,
            double achieved,
            Finding.Reach reach,
            Units units) {
        Unit of = units == Units.METRIC
                ? change.adjustable().unit()
                : units.of(change.adjustable().dimension());
        Unit unit = CompareCsv.unit(aim.judged(), units);
        csv.append(BalanceCsv.quoted(setup.name())).append(',');
        csv.append(BalanceCsv.quoted(change.path())).append(',');
        csv.append(CompareCsv.number(of, value)).append(',').append(of.symbol()).append(',');
        csv.append(CompareCsv.judged(aim.judged(), units)).append(',');
        csv.append(CompareCsv.number(unit, aim.value())).append(',');
        csv.append(met ? "met" : "nearest").append(',');
        csv.append(CompareCsv.number(unit, achieved)).append(',');
        csv.append(CompareCsv.number(unit, reach.lowest())).append(',');
        csv.append(CompareCsv.number(unit, reach.highest())).append('\n');
    }
}
