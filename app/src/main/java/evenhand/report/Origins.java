package evenhand.report;

import evenhand.catalogue.Adjustable;
import evenhand.doubt.Tolerance;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.report.Block.Column;
import evenhand.report.Block.Row;
import evenhand.report.Block.Table;
import evenhand.report.Block.Text;
import evenhand.words.ChangeWords;
import evenhand.words.InPrint;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Every number that went in, how far it may be off, and where it came from. */
final class Origins {
    private Origins() {}

    static Section of(Findings findings) {
        Candidate chosen = findings.chosen();
        Units units = findings.question().units();
        List<Row> rows = new ArrayList<>();
        Stream.concat(
                        chosen.setup().values().stream().filter(value -> value.origin() != Adjustable.Origin.ESTIMATED),
                        chosen.setup().estimatedForRide(chosen.car()).stream())
                .map(value -> Row.of(
                        ChangeWords.name(value.path()),
                        value(value, units),
                        within(value, Tolerance.of(value, Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES), units),
                        from(value)))
                .forEach(rows::add);
        return new Section(
                "What went in, and what was estimated",
                true,
                List.of(
                        Text.plain(
                                "Every number of \"" + chosen.name() + "\". Within: nineteen times in twenty it is no"
                                        + " further off; a number without it was taken as exact."),
                        new Table(
                                List.of(
                                        Column.words("value", 2.6),
                                        Column.number("as it went in", 1.5),
                                        Column.number("within", 1.2),
                                        Column.words("where it came from", 4.2)),
                                rows)));
    }

    private static String from(Adjustable value) {
        String how = value.slot().how();
        return switch (value.origin()) {
            case ESTIMATED -> "estimated " + value.rule();
            case DEFAULT -> "as is usual: not given";
            case GIVEN ->
                value.tolerance() > 0
                        ? "given with its tolerance"
                        : value.usualTolerance() > 0
                                ? "given; tolerance as is usual" + (how.isEmpty() ? "" : " by " + how)
                                : "given, as exact";
        };
    }

    /** A number with its unit. */
    static String value(Adjustable value, Units units) {
        return shown(value.si(), value, units, 4);
    }

    /** How far it may be off; nothing where it is exact. */
    static String within(Adjustable value, double tolerance, Units units) {
        return tolerance > 0 ? "±" + shown(tolerance, value, units, 2) : "";
    }

    private static String shown(double si, Adjustable value, Units units, int digits) {
        Unit unit = value.dimension() == Dimension.RATIO ? Dimension.RATIO.metric() : units.of(value.dimension());
        String symbol = InPrint.symbol(unit);
        return Numbers.significant(unit.fromSi(si), digits) + (symbol.isEmpty() ? "" : " " + symbol);
    }
}
