package evenhand.report;

import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.chart.OwnerCharts;
import evenhand.chart.TurnCharts;
import evenhand.choice.Change;
import evenhand.quantity.Unit;
import evenhand.report.Block.Column;
import evenhand.report.Block.Figures;
import evenhand.report.Block.Heading;
import evenhand.report.Block.Plot;
import evenhand.report.Block.Points;
import evenhand.report.Block.Row;
import evenhand.report.Block.Table;
import evenhand.report.Block.Text;
import evenhand.turn.Direction;
import evenhand.turn.TurnAnswer;
import evenhand.words.ChangeWords;
import evenhand.words.GripText;
import evenhand.words.InPrint;
import evenhand.words.JudgedWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.balance.LimitWords;
import evenhand.words.compare.ComparisonWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** All set-ups side by side, so many at a time as a sheet is wide. */
final class ComparisonPages {
    /** Set-ups beside the base in one table and one chart. */
    private static final int BESIDE = 4;

    private final Findings findings;
    private final Candidate base;
    private final Units units;

    private ComparisonPages(Findings findings) {
        this.findings = findings;
        base = findings.base();
        units = findings.question().units();
    }

    static List<Section> of(Findings findings) {
        ComparisonPages pages = new ComparisonPages(findings);
        List<Candidate> others =
                findings.candidates().subList(1, findings.candidates().size());
        List<Section> sections = new ArrayList<>();
        for (int from = 0; from < others.size(); from += BESIDE) {
            List<Candidate> some = others.subList(from, Math.min(others.size(), from + BESIDE));
            sections.add(new Section(
                    from == 0 ? "All set-ups side by side" : "More set-ups side by side", true, pages.figures(some)));
        }
        sections.add(new Section(
                "What each changes against \"" + findings.base().name() + "\"", false, pages.changes(others)));
        return sections;
    }

    private List<Block> figures(List<Candidate> others) {
        List<Candidate> shown = new ArrayList<>(List.of(base));
        shown.addAll(others);
        List<Block> blocks = new ArrayList<>();
        if (shown.stream().anyMatch(one -> one.turns().isPresent())) {
            blocks.add(new Figures(
                    List.of(
                            new Plot(OwnerCharts.whichEnd(Candidate.shown(shown), units)),
                            new Plot(TurnCharts.steer(Candidate.shown(shown), units))),
                    0.42,
                    0.46));
        }
        blocks.add(table(shown));
        blocks.add(Text.quiet("In brackets: the difference from \"" + base.name() + "\"."));
        return blocks;
    }

    private List<Block> changes(List<Candidate> others) {
        List<Block> blocks = new ArrayList<>();
        for (Candidate one : others) {
            blocks.add(new Heading("\"" + one.name() + "\""));
            one.setup().note().ifPresent(note -> blocks.add(Text.plain(note)));
            List<String> changes = Change.between(
                            base.setup().entries(), one.setup().entries())
                    .stream()
                    .map(change -> ChangeWords.sentence(change) + ".")
                    .map(sentence -> Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1))
                    .toList();
            blocks.add(Text.plain(
                    changes.isEmpty()
                            ? "Nothing is changed: both are the same car."
                            : InPrint.sentence(String.join(" ", changes))));
            if (findings.hasChosen(one) && findings.comparison().isPresent()) {
                blocks.add(Text.plain("What that does, and how much of it each change did:"));
                blocks.add(new Points(InPrint.sentences(
                        ComparisonWords.of(findings.comparison().get(), units))));
            }
        }
        return blocks;
    }

    private Table table(List<Candidate> shown) {
        List<Column> columns = new ArrayList<>();
        columns.add(Column.words("figure", 2.2));
        shown.forEach(one -> columns.add(Column.number(one.name(), 1.6)));
        List<Row> rows = new ArrayList<>();
        for (Judged judged : findings.question().trial().judged()) {
            List<String> cells = new ArrayList<>(List.of(JudgedWords.figure(judged)));
            OptionalDouble before = findings.figure(base, judged);
            boolean some = false;
            for (Candidate one : shown) {
                OptionalDouble value = findings.figure(one, judged);
                some |= value.isPresent();
                cells.add(
                        cell(judged.criterion(), value, one.index() == base.index() ? OptionalDouble.empty() : before));
            }
            if (some) {
                rows.add(new Row(cells, false));
            }
        }
        Direction way = findings.question().trial().direction();
        List<String> first = new ArrayList<>(List.of("lets go first, " + way.key()
                + (findings.question().bothWays() ? " / " + way.other().key() : "")));
        shown.forEach(one -> first.add(first(one)));
        rows.add(new Row(first, false));
        return new Table(columns, rows);
    }

    /** Which end goes first, one way round and the other. */
    private String first(Candidate one) {
        return one.turns()
                .map(turn -> first(turn)
                        + findings.turnedBack(one)
                                .map(back -> " / " + first(back))
                                .orElse(""))
                .orElse("none");
    }

    private static String first(TurnAnswer answer) {
        return answer instanceof TurnAnswer.Turns turn ? LimitWords.first(turn.limit()) : "no answer";
    }

    /** A value, with its unit where it stands by itself, else with its difference. */
    private String cell(Criterion criterion, OptionalDouble value, OptionalDouble before) {
        if (value.isEmpty()) {
            return "none";
        }
        Optional<String> times = GripText.times(criterion, value.getAsDouble());
        if (times.isPresent()) {
            return times.get();
        }
        if (before.isEmpty()) {
            return InPrint.symbol(units.show(value.getAsDouble(), criterion));
        }
        Unit unit = units.of(criterion);
        double shown = unit.fromSi(value.getAsDouble());
        return Numbers.fixed(shown, units.digits(criterion)) + " ("
                + Numbers.signed(shown - unit.fromSi(before.getAsDouble()), units.digits(criterion)) + ")";
    }
}
