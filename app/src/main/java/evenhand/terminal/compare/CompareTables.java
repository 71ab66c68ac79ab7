package evenhand.terminal.compare;

import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.choice.Change;
import evenhand.choice.Comparison;
import evenhand.forms.Table;
import evenhand.quantity.Unit;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.Page;
import evenhand.terminal.reply.EachWay;
import evenhand.terminal.reply.SetupNotes;
import evenhand.words.BothWays;
import evenhand.words.ChangeWords;
import evenhand.words.GripText;
import evenhand.words.JudgedWords;
import evenhand.words.LoadWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.compare.ComparisonWords;
import java.util.ArrayList;
import java.util.List;

/** The answers of {@code compare} for people: the differences, whose they are, and the same in words. */
final class CompareTables {
    private final Page page;
    private final Units units;

    CompareTables(Console console, Units units) {
        this.page = new Page(console);
        this.units = units;
    }

    String write(CompareReply compared) {
        page.title(compared.scenario().title());
        compared.trial().load().ifPresent(load -> page.paragraph("", LoadWords.aboard(load, units)));
        for (EachWay.Shown<CompareReply.Answered> shown : EachWay.shown(compared.circles(), units)) {
            page.heading(
                    shown.setup().name() + ", compared with " + compared.base().name() + shown.where());
            shown.warnings().forEach(warning -> page.paragraph(BothWays.WARNING, warning));
            shown.way().found().ifPresent(answered -> comparison(answered.comparison()));
            shown.noAnswer().ifPresent(none -> page.paragraph("  ", none));
        }
        new SetupNotes(page, units).notGiven(compared.asked());
        return page.text();
    }

    private void comparison(Comparison comparison) {
        page.sentences(ComparisonWords.of(comparison, units));
        if (comparison.changes().isEmpty()) {
            return;
        }
        List<Change> changes = comparison.changes();
        List<String> heads = new ArrayList<>(List.of("base", "now", "difference"));
        page.blank();
        page.line("  The changes");
        for (int i = 0; i < changes.size(); i++) {
            Change change = changes.get(i);
            String line = change.path() + ": " + ChangeWords.fromTo(change);
            page.paragraph("    (" + (i + 1) + ") ", line);
            heads.add("by (" + (i + 1) + ")");
        }
        page.table(table(comparison, heads));
    }

    private String cell(Criterion criterion, double si) {
        return GripText.times(criterion, si)
                .orElseGet(() -> Numbers.fixed(units.of(criterion).fromSi(si), units.digits(criterion)));
    }

    private Table table(Comparison comparison, List<String> heads) {
        Table.Builder table = new Table.Builder(heads);
        String before = "";
        for (Comparison.Difference difference : comparison.differences()) {
            Judged judged = difference.judged();
            String pace = JudgedWords.pace(judged);
            if (!pace.equals(before)) {
                table.heading(JudgedWords.heading(judged));
                before = pace;
            }
            Criterion criterion = judged.criterion();
            Unit unit = units.of(criterion);
            List<String> cells = new ArrayList<>();
            cells.add(cell(criterion, difference.base()));
            cells.add(cell(criterion, difference.value()));
            boolean apart = GripText.times(criterion, Math.max(difference.base(), difference.value()))
                    .isEmpty();
            cells.add(
                    apart
                            ? Numbers.signed(unit.fromSi(difference.difference()), units.digits(criterion))
                            : Table.NOTHING);
            for (int i = 0; i < comparison.changes().size(); i++) {
                int change = i;
                cells.add(difference
                        .shares()
                        .filter(shares -> apart)
                        .map(shares ->
                                Numbers.signed(unit.fromSi(shares.shares().get(change)), units.digits(criterion)))
                        .orElse(Table.NOTHING));
            }
            table.row(criterion.name(), unit.symbol(), cells);
        }
        return table.build();
    }
}
