package evenhand.report;

import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.car.End;
import evenhand.chart.OwnerCharts;
import evenhand.chart.Shown;
import evenhand.chart.TurnCharts;
import evenhand.choice.Change;
import evenhand.choice.Comparison;
import evenhand.doubt.Doubt;
import evenhand.doubt.Spread;
import evenhand.drawing.Detail;
import evenhand.drawing.RearView;
import evenhand.drawing.SideView;
import evenhand.drawing.Stance;
import evenhand.quantity.Unit;
import evenhand.report.Block.Column;
import evenhand.report.Block.Figures;
import evenhand.report.Block.Plot;
import evenhand.report.Block.Points;
import evenhand.report.Block.Row;
import evenhand.report.Block.Table;
import evenhand.report.Block.Text;
import evenhand.report.Block.Tone;
import evenhand.report.Block.View;
import evenhand.ride.RoadClass;
import evenhand.words.ChangeWords;
import evenhand.words.ComparisonWords;
import evenhand.words.DoubtWords;
import evenhand.words.JudgedWords;
import evenhand.words.LoadWords;
import evenhand.words.LowestWords;
import evenhand.words.Numbers;
import evenhand.words.OwnerWords;
import evenhand.words.RideWords;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the owner of the car gets to read. */
final class OwnerPages {
    /** Figures that the owner is told the doubt of, at the briskest pace or the limit. */
    private static final List<Criterion> DOUBTED =
            List.of(Criterion.UNDERSTEER, Criterion.ROLL_GRADIENT, Criterion.LIMIT, Criterion.LIMIT_BALANCE);

    private final Findings findings;
    private final Question question;
    private final Candidate base;
    private final Candidate chosen;
    private final Units units;

    private OwnerPages(Findings findings) {
        this.findings = findings;
        question = findings.question();
        base = findings.base();
        chosen = findings.chosen();
        units = question.units();
    }

    static List<Section> of(Findings findings) {
        OwnerPages pages = new OwnerPages(findings);
        List<Section> sections = new ArrayList<>();
        sections.add(pages.asked());
        if (findings.compares()) {
            sections.add(pages.before());
            sections.add(pages.changed());
        }
        sections.add(pages.now());
        sections.add(pages.stance());
        sections.add(pages.ride());
        sections.add(pages.sure());
        sections.add(cautions());
        return sections;
    }

    private Section asked() {
        List<Block> blocks = new ArrayList<>();
        question.scenario()
                .story()
                .ifPresent(story -> story.lines()
                        .filter(line -> !line.isBlank())
                        .map(Text::plain)
                        .forEach(blocks::add));
        question.trial().load().ifPresent(load -> blocks.add(Text.plain(LoadWords.aboard(load, units))));
        for (Candidate one : findings.candidates()) {
            one.silence()
                    .ifPresent(why -> blocks.add(new Text(
                            "\"" + one.name() + "\" has no answer: " + SheetText.printed(why)
                                    + ". What depends on it is left out below.",
                            Tone.WARNING)));
        }
        if (blocks.isEmpty()) {
            blocks.add(Text.plain("The file tells no story of this car."));
        }
        return new Section("What was asked", false, blocks);
    }

    private Section before() {
        return new Section("What the car was like: \"" + base.name() + "\"", false, List.of(behaviour(base)));
    }

    private Block behaviour(Candidate car) {
        return car.turns().isPresent()
                ? new Points(OwnerWords.behaviour(car.turns().get(), units))
                : new Text(
                        SheetText.printed(
                                "There is no answer for it: " + car.silence().orElse("") + "."),
                        Tone.WARNING);
    }

    private Section changed() {
        List<Block> blocks = new ArrayList<>();
        chosen.setup().note().ifPresent(note -> blocks.add(Text.plain(note)));
        List<Change> changes =
                Change.between(base.setup().entries(), chosen.setup().entries());
        blocks.add(new Table(
                List.of(Column.words("changed", 3), Column.words("from", 2.5), Column.words("to", 2.5)),
                changes.stream()
                        .map(change -> Row.of(
                                ChangeWords.name(change),
                                SheetText.symbol(change.from()),
                                SheetText.symbol(change.to())))
                        .toList()));
        Optional<Comparison> comparison = findings.comparison();
        if (comparison.isPresent()) {
            blocks.add(Text.plain("What that does, and how much of it each change did:"));
            blocks.add(new Points(SheetText.printed(ComparisonWords.of(comparison.get(), units))));
        }
        return new Section("What was changed, and why: \"" + chosen.name() + "\"", false, blocks);
    }

    private Section now() {
        List<Shown> shown = Candidate.shown(findings.beforeAndAfter());
        List<Block> blocks = new ArrayList<>();
        blocks.add(behaviour(chosen));
        if (findings.beforeAndAfter().stream().anyMatch(one -> one.turns().isPresent())) {
            blocks.add(Figures.even(
                    0.40, new Plot(OwnerCharts.whichEnd(shown, units)), new Plot(OwnerCharts.lean(shown, units))));
            blocks.add(
                    Text.quiet("A bar to the right: the front tyres use more of their grip than the rear ones, the car"
                            + " tends to run wide. To the left: the rear ones, the tail tends to come round. A short bar is a"
                            + " balanced car. Balance is three things, gentle, brisk and at the limit, and one number for all"
                            + " would mislead."));
            blocks.add(Figures.even(0.40, new Plot(TurnCharts.gripUsed(shown, units))));
        }
        return new Section("How it goes round a bend now: \"" + chosen.name() + "\"", false, blocks);
    }

    private Section stance() {
        Detail detail = Detail.usual(units);
        List<Stance> stances =
                findings.beforeAndAfter().stream().map(Candidate::stance).toList();
        List<Block> blocks = new ArrayList<>();
        List<String> sentences = new ArrayList<>();
        if (findings.compares() && base.sums().isPresent() && chosen.sums().isPresent()) {
            sentences.addAll(OwnerWords.stance(ofOwner(base), ofOwner(chosen), units));
        }
        if (base.turns().isPresent() && chosen.turns().isPresent()) {
            for (End end : End.values()) {
                if (base.room(end).isPresent() || chosen.room(end).isPresent()) {
                    sentences.add(OwnerWords.stops(end, base.firstStop(end), chosen.firstStop(end)));
                }
            }
        }
        findings.lower().ifPresent(study -> sentences.add("And lower still? " + LowestWords.of(study, units)));
        blocks.add(Figures.even(
                0.42,
                new View(
                        stances.size() == 1
                                ? SideView.of(stances.get(0), new Detail(units, detail.load(), true), List.of())
                                : SideView.of(stances, detail))));
        if (!sentences.isEmpty()) {
            blocks.add(new Points(sentences));
        }
        List<Block.Figure> pair = new ArrayList<>();
        double brisk = question.trial().paces().stream()
                .mapToDouble(pace -> pace)
                .max()
                .orElse(0);
        chosen.at(brisk)
                .ifPresent(row ->
                        pair.add(new View(RearView.of(chosen.stance().turning(row), End.REAR, detail, List.of()))));
        if (findings.beforeAndAfter().stream()
                .anyMatch(one ->
                        one.room(End.FRONT).isPresent() || one.room(End.REAR).isPresent())) {
            pair.add(new Plot(OwnerCharts.travelLeft(Candidate.shown(findings.beforeAndAfter()), units)));
        }
        if (!pair.isEmpty()) {
            blocks.add(new Figures(pair, 0.58, 0.38));
        }
        return new Section("Stance, and what it costs", false, blocks);
    }

    private static OwnerWords.Stance ofOwner(Candidate one) {
        return new OwnerWords.Stance(one.sums().orElseThrow(), one.room(End.FRONT), one.room(End.REAR));
    }

    private Section ride() {
        List<Block> blocks = new ArrayList<>();
        RoadClass road = RoadClass.B;
        String on = "a class " + road + " road (" + RideWords.like(road) + ")";
        for (Candidate one : findings.beforeAndAfter()) {
            if (findings.compares()) {
                blocks.add(
                        new Block.Heading((findings.hasChosen(one) ? "Now: " : "Before: ") + "\"" + one.name() + "\""));
            }
            blocks.add(
                    one.ride().isPresent()
                            ? new Points(
                                    RideWords.forOwner(one.car(), one.ride().get(), on, units))
                            : Text.plain("There is nothing to say of its ride: it does not stand on its springs."));
        }
        blocks.add(Text.quiet(RideWords.PRACTICE));
        return new Section("Ride and comfort", false, blocks);
    }

    private Section sure() {
        List<Block> blocks = new ArrayList<>();
        if (findings.doubt().isEmpty()) {
            blocks.add(Text.plain("Without an answer there is nothing to doubt."));
            return new Section("How sure this is", false, blocks);
        }
        Doubt.Answer doubt = findings.doubt().get();
        boolean both = doubt.cars().size() == 2;
        blocks.add(Text.plain("Every number of this car was measured or estimated, and may be off. So it was asked "
                + question.samples() + " times, each time with all of them a little off, as far as their tolerances go."
                + " Of two set-ups of one car the difference is much surer than either figure, since both share the same"
                + " errors."));
        if (both) {
            blocks.add(new Points(DoubtWords.apart(
                    chosen.name(),
                    base.name(),
                    doubt.differences().get(0),
                    doubt.cars().get(1),
                    units)));
        }
        blocks.add(table(doubt, both));
        doubt.cars().get(0).spreads().stream()
                .findFirst()
                .ifPresent(first ->
                        blocks.add(new Points(DoubtWords.measureNext(doubt.measureNext(), first, units).stream()
                                .filter(sentence -> !sentence.endsWith(":"))
                                .map(sentence -> "Worth measuring better: " + SheetText.printed(sentence))
                                .toList())));
        blocks.add(Text.quiet("Between: nineteen of twenty such cars lie there. What was estimated, and by which rule,"
                + " is listed at the end."));
        return new Section("How sure this is", false, blocks);
    }

    private Table table(Doubt.Answer doubt, boolean both) {
        List<Column> columns = new ArrayList<>();
        columns.add(Column.words("figure", 2.6));
        if (both) {
            columns.add(Column.number("before, between", 2.2));
        }
        columns.add(Column.number(both ? "now, between" : "between", 2.2));
        if (both) {
            columns.add(Column.number("the difference, between", 2.4));
        }
        double brisk = question.trial().paces().stream()
                .mapToDouble(pace -> pace)
                .max()
                .orElse(0);
        List<Row> rows = new ArrayList<>();
        for (Spread spread : doubt.cars().get(doubt.cars().size() - 1).spreads()) {
            Judged judged = spread.judged();
            if (DOUBTED.contains(judged.criterion()) && judged.pace().orElse(brisk) == brisk) {
                List<String> cells = new ArrayList<>();
                cells.add(JudgedWords.figure(judged));
                if (both) {
                    cells.add(between(doubt.cars().get(0), judged, false));
                }
                cells.add(between(doubt.cars().get(doubt.cars().size() - 1), judged, false));
                if (both) {
                    cells.add(between(doubt.differences().get(0), judged, true));
                }
                rows.add(new Row(cells, false));
            }
        }
        return new Table(columns, rows);
    }

    private String between(Doubt.Left left, Judged judged, boolean signed) {
        Criterion criterion = judged.criterion();
        Unit unit = units.of(criterion);
        return left.spreads().stream()
                .filter(spread -> spread.judged().equals(judged))
                .findFirst()
                .map(spread -> number(unit.fromSi(spread.low()), criterion, signed) + " and "
                        + number(unit.fromSi(spread.high()), criterion, signed) + " " + SheetText.symbol(unit))
                .orElse("none");
    }

    private static String number(double value, Criterion criterion, boolean signed) {
        return signed ? Numbers.signed(value, criterion.digits()) : Numbers.fixed(value, criterion.digits());
    }

    private static Section cautions() {
        return new Section(
                "Before you drive it",
                false,
                List.of(
                        new Text(
                                "All results here are estimates from a simplified model. A change to steering,"
                                        + " suspension or structure can hurt people.",
                                Tone.WARNING),
                        new Points(List.of(
                                "Have designs, welds and brackets checked by a licensed or suitably qualified engineer.",
                                "Follow the local rules for modified vehicles, get the certification that they ask for,"
                                        + " and tell the insurer.",
                                "Keep to what the makers of components allow.",
                                "Test at the limit only on a closed course, alone, after a mechanical check.",
                                "Load figures are for comparing designs. They are no proof of strength."))));
    }
}
