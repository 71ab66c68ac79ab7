package evenhand.report;

import evenhand.answers.Judged;
import evenhand.chart.OwnerCharts;
import evenhand.chart.TurnCharts;
import evenhand.choice.Comparison;
import evenhand.quantity.Unit;
import evenhand.report.Block.Column;
import evenhand.report.Block.Figures;
import evenhand.report.Block.Heading;
import evenhand.report.Block.Plot;
import evenhand.report.Block.Points;
import evenhand.report.Block.Row;
import evenhand.report.Block.Table;
import evenhand.report.Block.Text;
import evenhand.words.ComparisonWords;
import evenhand.words.JudgedWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;

/** All set-ups side by side, so many at a time as a sheet is wide. */
final class ComparisonPages {
    /** Set-ups beside the base in one table and one chart. */
    private static final int BESIDE = 4;

    private ComparisonPages() {}

    static List<Section> of(Findings findings) {
        List<Section> sections = new ArrayList<>();
        List<Findings.Against> all = findings.against();
        for (int from = 0; from < all.size(); from += BESIDE) {
            List<Findings.Against> some = all.subList(from, Math.min(all.size(), from + BESIDE));
            sections.add(new Section(
                    from == 0 ? "All set-ups side by side" : "More set-ups side by side",
                    true,
                    blocks(findings, some)));
        }
        return sections;
    }

    private static List<Block> blocks(Findings findings, List<Findings.Against> some) {
        Units units = findings.question().units();
        List<Candidate> shown = new ArrayList<>(List.of(findings.base()));
        some.forEach(one -> shown.add(one.candidate()));
        List<Block> blocks = new ArrayList<>();
        blocks.add(Figures.even(
                0.5,
                new Plot(OwnerCharts.whichEnd(Candidate.shown(shown), units)),
                new Plot(TurnCharts.steer(Candidate.shown(shown), units))));
        blocks.add(table(findings, some, units));
        blocks.add(Text.quiet(
                "In brackets: the difference from \"" + findings.base().name() + "\"."));
        for (Findings.Against one : some) {
            if (!findings.hasChosen(one.candidate())) {
                blocks.add(new Heading("\"" + one.candidate().name() + "\" against \""
                        + findings.base().name() + "\""));
                one.candidate().setup().note().ifPresent(note -> blocks.add(Text.plain(note)));
                blocks.add(new Points(SheetText.printed(ComparisonWords.of(one.comparison(), units))));
            }
        }
        return blocks;
    }

    private static Table table(Findings findings, List<Findings.Against> some, Units units) {
        List<Column> columns = new ArrayList<>();
        columns.add(Column.words("figure", 2.2));
        columns.add(Column.number(findings.base().name(), 1.6));
        some.forEach(one -> columns.add(Column.number(one.candidate().name(), 1.6)));
        List<Row> rows = new ArrayList<>();
        for (Judged judged : findings.question().trial().judged()) {
            List<String> cells = new ArrayList<>();
            String base = "";
            for (Findings.Against one : some) {
                Comparison.Difference difference = one.comparison().differences().stream()
                        .filter(each -> each.judged().equals(judged))
                        .findFirst()
                        .orElse(null);
                if (difference == null) {
                    cells.add("none");
                } else {
                    base = SheetText.symbol(units.show(difference.base(), judged.criterion()));
                    cells.add(show(difference, units));
                }
            }
            if (!base.isEmpty()) {
                cells.add(0, base);
                cells.add(0, JudgedWords.figure(judged));
                rows.add(new Row(cells, false));
            }
        }
        return new Table(columns, rows);
    }

    private static String show(Comparison.Difference difference, Units units) {
        Unit unit = units.of(difference.judged().criterion());
        int digits = difference.judged().criterion().digits();
        return Numbers.fixed(unit.fromSi(difference.value()), digits) + " ("
                + Numbers.signed(unit.fromSi(difference.difference()), digits) + ")";
    }
}
