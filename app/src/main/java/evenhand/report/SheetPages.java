package evenhand.report;

import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.doubt.Spread;
import evenhand.quantity.Unit;
import evenhand.report.Block.Column;
import evenhand.report.Block.Fields;
import evenhand.report.Block.Heading;
import evenhand.report.Block.Row;
import evenhand.report.Block.Table;
import evenhand.report.Block.Text;
import evenhand.words.InPrint;
import evenhand.words.JudgedWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The set-up sheet as it is printed, with boxes for the workshop's pen. */
final class SheetPages {
    private SheetPages() {}

    static Section of(Findings findings) {
        Units units = findings.question().units();
        SetupSheet sheet = SetupSheet.of(
                findings.chosen().setup(),
                findings.compares() ? java.util.Optional.of(findings.base().setup()) : java.util.Optional.empty(),
                units);
        List<Block> blocks = new ArrayList<>();
        blocks.add(Text.plain("\"" + sheet.setup().name() + "\""
                + sheet.before()
                        .map(before -> ". What is changed against \"" + before.name() + "\" is set bold on a tint.")
                        .orElse(".")
                + " Heights and gaps: car at rest on level ground, as it was weighed."));
        blocks.add(new Fields(List.of("job", "odometer", "measured by, floor, scales")));
        blocks.add(table("Whole car", sheet.weights(), sheet.before().isPresent(), false));
        blocks.add(table("Front axle", sheet.front(), sheet.before().isPresent(), true));
        blocks.add(figures(findings, units));
        blocks.add(table("Rear axle", sheet.rear(), sheet.before().isPresent(), true));
        if (!sheet.freeWords().isEmpty()) {
            blocks.add(new Table(
                    List.of(Column.words("Also", 2), Column.words("", 6)),
                    sheet.freeWords().stream()
                            .map(note -> Row.of(note.head(), note.text()))
                            .toList()));
        }
        blocks.add(new Heading("Torque and re-check"));
        blocks.add(new Table(
                List.of(
                        Column.words("fasteners", 3),
                        Column.blank("torque", 1.3),
                        Column.blank("marked by", 1.3),
                        Column.blank("re-check due", 1.3),
                        Column.blank("re-checked", 1.3)),
                List.of(
                        blank("axle location, links and brackets"),
                        blank("springs, perches and dampers"),
                        blank("anti-roll bars and drop links"),
                        blank("steering and brakes"),
                        blank("wheels"),
                        blank(""))));
        blocks.add(new Fields(List.of(
                "built and measured: date, signature",
                "road tested: date, signature",
                "handed over to: date, signature")));
        return new Section("Set-up sheet", true, blocks);
    }

    private static Row blank(String what) {
        return Row.of(what, "", "", "", "");
    }

    private static Table table(String head, List<SetupSheet.Item> items, boolean compared, boolean twoSides) {
        List<Column> columns = new ArrayList<>(
                List.of(Column.words(head, 3.4), Column.number("set to", 2.3), Column.number("within", 0.9)));
        if (compared) {
            columns.add(Column.number("before", 1.7));
        }
        columns.add(Column.blank(twoSides ? "left, as measured" : "as measured", 1.4));
        if (twoSides) {
            columns.add(Column.blank("right, as measured", 1.4));
        }
        List<Row> rows = new ArrayList<>();
        for (SetupSheet.Item item : items) {
            List<String> cells = new ArrayList<>(List.of(item.what(), item.value(), item.tolerance()));
            if (compared) {
                cells.add(item.changed() ? item.before() : "");
            }
            cells.add("");
            if (twoSides) {
                cells.add("");
            }
            rows.add(new Row(cells, item.changed()));
        }
        return new Table(columns, rows);
    }

    /** What the sums say of the set-up as it stands on the sheet. */
    private static Table figures(Findings findings, Units units) {
        List<Judged> judged = new ArrayList<>();
        for (double pace : findings.question().trial().paces()) {
            judged.add(new Judged(Criterion.UNDERSTEER, OptionalDouble.of(pace)));
        }
        findings.question().trial().paces().stream().max(Double::compare).ifPresent(pace -> {
            judged.add(new Judged(Criterion.ROLL_GRADIENT, OptionalDouble.of(pace)));
            judged.add(new Judged(Criterion.FRONT_SHARE, OptionalDouble.of(pace)));
            judged.add(new Judged(Criterion.INSIDE_REAR_LOAD, OptionalDouble.of(pace)));
        });
        for (Criterion criterion : List.of(
                Criterion.LIMIT, Criterion.LIMIT_BALANCE, Criterion.FRONT_FREQUENCY, Criterion.REAR_FREQUENCY)) {
            judged.add(new Judged(criterion, OptionalDouble.empty()));
        }
        List<Row> rows = new ArrayList<>();
        for (Judged one : judged) {
            findings.spread(one).ifPresent(spread -> rows.add(row(one, spread, units)));
        }
        return new Table(
                List.of(
                        Column.words("What the sums say of it", 3.4),
                        Column.number("answer", 1.5),
                        Column.number("19 of 20 between", 2.2),
                        Column.blank("found on the road", 2)),
                rows);
    }

    private static Row row(Judged judged, Spread spread, Units units) {
        Criterion criterion = judged.criterion();
        Unit unit = units.of(criterion);
        return Row.of(
                JudgedWords.figure(judged),
                spread.nominal().isPresent()
                        ? InPrint.symbol(units.show(spread.nominal().getAsDouble(), criterion))
                        : "none",
                Numbers.fixed(unit.fromSi(spread.low()), criterion.digits()) + " and "
                        + InPrint.symbol(units.show(spread.high(), criterion)),
                "");
    }
}
