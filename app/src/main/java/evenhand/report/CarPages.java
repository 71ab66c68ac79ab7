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
import evenhand.turn.TurnAnswer;
import evenhand.words.BothWays;
import evenhand.words.ChangeWords;
import evenhand.words.InPrint;
import evenhand.words.JudgedWords;
import evenhand.words.LoadWords;
import evenhand.words.NotGiven;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.balance.LimitWords;
import evenhand.words.compare.ComparisonWords;
import evenhand.words.compare.RideComparisonWords;
import evenhand.words.doubt.DoubtWords;
import evenhand.words.lowering.CostWords;
import evenhand.words.lowering.LowestWords;
import evenhand.words.owner.OwnerWords;
import evenhand.words.ride.RideWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/** How the car behaves before and now, what the changes did to it, and how sure that is. */
final class CarPages {
    /** Figures whose doubt is told, at the briskest pace or the limit. */
    private static final List<Criterion> DOUBTED =
            List.of(Criterion.UNDERSTEER, Criterion.ROLL_GRADIENT, Criterion.LIMIT, Criterion.NEAR_UNDERSTEER);

    private final Findings findings;
    private final Question question;
    private final Candidate base;
    private final Candidate chosen;
    private final Units units;

    private CarPages(Findings findings) {
        this.findings = findings;
        question = findings.question();
        base = findings.base();
        chosen = findings.chosen();
        units = question.units();
    }

    static List<Section> of(Findings findings) {
        CarPages pages = new CarPages(findings);
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
                            "\"" + one.name() + "\" has no answer: " + InPrint.sentence(why)
                                    + ". What depends on it is left out below.",
                            Tone.WARNING)));
        }
        if (blocks.isEmpty()) {
            blocks.add(Text.plain("The file tells no story of this car."));
        }
        return new Section("What was asked", false, blocks);
    }

    private Section before() {
        return new Section("What the car was like: \"" + base.name() + "\"", false, behaviour(base));
    }

    /** How a car behaves; before all else that one end goes first one way round and the other end the other way. */
    private List<Block> behaviour(Candidate car) {
        if (car.turns().isEmpty()) {
            return List.of(new Text(
                    InPrint.sentence(
                            "There is no answer for it: " + car.silence().orElse("") + "."),
                    Tone.WARNING));
        }
        TurnAnswer.Turns turn = car.turns().get();
        Optional<TurnAnswer> back = findings.turnedBack(car);
        List<Block> blocks = new ArrayList<>();
        back.flatMap(other -> LimitWords.split(turn, other))
                .ifPresent(warning -> blocks.add(new Text(warning, Tone.WARNING)));
        NotGiven.cautions(List.of(car.setup())).forEach(caution -> blocks.add(new Text(caution, Tone.WARNING)));
        List<String> sentences = new ArrayList<>(OwnerWords.behaviour(turn, units));
        back.ifPresent(other -> sentences.addAll(OwnerWords.otherWay(turn, other, units)));
        blocks.add(new Points(sentences));
        return blocks;
    }

    /** What was changed, for a reader who is told no more of it. */
    static Section changes(Findings findings) {
        CarPages pages = new CarPages(findings);
        return new Section("What was changed: \"" + pages.chosen.name() + "\"", false, List.of(pages.changes()));
    }

    /** What it does to braking and driving stands on a page of its own. */
    private static Comparison inTheBend(Comparison comparison) {
        return new Comparison(
                comparison.changes(),
                comparison.differences().stream()
                        .filter(one -> one.judged().criterion().ahead().isEmpty())
                        .toList(),
                comparison.missing(),
                comparison.combinations(),
                comparison.withoutAnswer());
    }

    private Section changed() {
        List<Block> blocks = new ArrayList<>();
        chosen.setup().note().ifPresent(note -> blocks.add(Text.plain(note)));
        blocks.add(changes());
        findings.comparison().ifPresent(comparison -> {
            blocks.add(Text.plain("What that does, and which of the changes did it, the largest first:"));
            blocks.add(new Points(InPrint.sentences(ComparisonWords.noticed(inTheBend(comparison), lean(), units))));
        });
        return new Section("What was changed, and why: \"" + chosen.name() + "\"", false, blocks);
    }

    /** What is set by hand, value by value; of the others which they are. */
    private Table changes() {
        Set<String> byHand = SetupSheet.of(chosen.setup(), Optional.of(base.setup()), units).items().stream()
                .map(SetupSheet.Item::path)
                .collect(Collectors.toSet());
        List<Row> rows = new ArrayList<>();
        for (Change change :
                Change.between(base.setup().entries(), chosen.setup().entries())) {
            List<Change> each = change.differences().stream().map(Change::of).toList();
            List<Change> named = each.size() == 1
                    ? List.of(change)
                    : each.stream().filter(one -> byHand.contains(one.path())).toList();
            named.forEach(
                    one -> rows.add(Row.of(ChangeWords.name(one), InPrint.given(one.from()), InPrint.given(one.to()))));
            List<Change> others =
                    each.stream().filter(one -> !named.contains(one)).toList();
            if (!others.isEmpty()) {
                rows.add(Row.of(
                        ChangeWords.name(change) + (named.isEmpty() ? "" : ", also"), "", within(change, others)));
            }
        }
        return new Table(List.of(Column.words("changed", 3), Column.words("from", 2.5), Column.words("to", 2.5)), rows);
    }

    /** Which values of a part are changed, by what tells them apart within it. */
    private static String within(Change part, List<Change> values) {
        String before = part.path() + ".";
        return values.stream()
                .map(one -> ChangeWords.name(
                        one.path().startsWith(before) ? one.path().substring(before.length()) : one.path()))
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private double brisk() {
        return question.trial().paces().stream().mapToDouble(pace -> pace).max().orElse(0);
    }

    private Optional<ComparisonWords.Lean> lean() {
        return base.at(brisk())
                .flatMap(before -> chosen.at(brisk())
                        .map(now -> new ComparisonWords.Lean(Math.abs(before.roll()), Math.abs(now.roll()))));
    }

    private Section now() {
        List<Shown> shown = Candidate.shown(findings.beforeAndAfter());
        List<Block> blocks = new ArrayList<>();
        blocks.addAll(behaviour(chosen));
        if (findings.beforeAndAfter().stream().anyMatch(one -> one.turns().isPresent())) {
            blocks.add(Figures.even(
                    0.31, new Plot(OwnerCharts.whichEnd(shown, units)), new Plot(OwnerCharts.lean(shown, units))));
            blocks.add(
                    Text.quiet("A bar to the right: the front tyres use more of their grip than the rear ones. To the"
                            + " left: the rear ones do. The number is the one less the other: a short bar is a balanced"
                            + " car. Which end goes at the limit is said above: it is not always the one that works"
                            + " harder."));
            blocks.add(Figures.even(0.28, new Plot(TurnCharts.gripUsed(shown, units))));
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
            sentences.addAll(InPrint.sentences(OwnerWords.stance(ofOwner(base), ofOwner(chosen), units)));
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
                0.31,
                new View(
                        stances.size() == 1
                                ? SideView.of(stances.get(0), new Detail(units, detail.load(), true), List.of())
                                : SideView.of(stances, detail))));
        if (!sentences.isEmpty()) {
            blocks.add(new Points(sentences));
        }
        List<Block.Figure> pair = new ArrayList<>();
        chosen.at(brisk())
                .ifPresent(row ->
                        pair.add(new View(RearView.of(chosen.stance().turning(row), End.REAR, detail, List.of()))));
        if (findings.beforeAndAfter().stream()
                .anyMatch(one ->
                        one.room(End.FRONT).isPresent() || one.room(End.REAR).isPresent())) {
            pair.add(new Plot(OwnerCharts.travelLeft(Candidate.shown(findings.beforeAndAfter()), units)));
        }
        if (!pair.isEmpty()) {
            blocks.add(new Figures(pair, 0.58, 0.29));
        }
        if (!findings.costs().isEmpty()) {
            blocks.add(new Block.Heading(
                    "What a low car must keep" + (findings.compares() ? ", and what was done about it" : "")));
            blocks.add(costs());
            List<String> told = CostWords.of(findings.costs(), units);
            blocks.add(
                    told.isEmpty()
                            ? Text.plain("Nothing of it falls short" + (findings.compares() ? ", before or now." : "."))
                            : new Points(told));
            blocks.add(
                    Text.quiet("What is wanted is common practice of those who set up cars for the road, no standard."
                            + " Set bold on a tint: short of it now."));
        }
        return new Section("Stance, and what it costs", false, blocks);
    }

    private Table costs() {
        List<Column> columns = new ArrayList<>(List.of(Column.words("", 3.4), Column.number("wanted", 1.6)));
        if (findings.compares()) {
            columns.add(Column.number("before", 1.6));
        }
        columns.add(Column.number("now", 1.6));
        List<Row> rows = new ArrayList<>();
        for (CostWords.Cost cost : findings.costs()) {
            List<String> cells = new ArrayList<>(List.of(cost.need().words(), LowestWords.bound(cost.need(), units)));
            if (findings.compares()) {
                cells.add(CostWords.value(cost.need(), cost.before(), units));
            }
            cells.add(CostWords.value(cost.need(), cost.now(), units));
            rows.add(new Row(cells, cost.isShort()));
        }
        return new Table(columns, rows);
    }

    private static OwnerWords.Stance ofOwner(Candidate one) {
        return new OwnerWords.Stance(one.sums().orElseThrow(), one.room(End.FRONT), one.room(End.REAR));
    }

    private Section ride() {
        List<Block> blocks = new ArrayList<>();
        RoadClass road = RoadClass.B;
        String on = "a class " + road + " road (" + RideWords.like(road) + ")";
        List<List<String>> told = findings.beforeAndAfter().stream()
                .map(one -> one.ride()
                        .map(ride -> RideWords.forOwner(one.car(), ride, on, units))
                        .orElse(List.of("There is nothing to say of its ride: it does not stand on its springs.")))
                .toList();
        Optional<String> against = rideAgainstBase(); // which says what it was before
        against.ifPresent(sentence -> blocks.add(new Points(InPrint.sentences(List.of(sentence)))));
        if (told.size() == 2 && !told.get(0).equals(told.get(1))) {
            if (against.isEmpty()) {
                blocks.add(new Block.Heading("Before: \"" + base.name() + "\""));
                blocks.add(new Points(told.get(0)));
            }
            blocks.add(new Block.Heading("Now: \"" + chosen.name() + "\""));
        } else if (told.size() == 2) {
            blocks.add(Text.plain("The changes do not touch the ride; before as now:"));
        }
        blocks.add(new Points(told.get(told.size() - 1)));
        blocks.add(Text.quiet(RideWords.PRACTICE));
        return new Section("Ride and comfort", false, blocks);
    }

    /** What the changes do to the ride; nothing where they do nothing, or one of both has no answer. */
    private Optional<String> rideAgainstBase() {
        List<Candidate> both = findings.beforeAndAfter();
        if (both.size() < 2) {
            return Optional.empty();
        }
        return both.get(0)
                .ride()
                .flatMap(before ->
                        both.get(1).ride().map(now -> RideComparisonWords.against(base.name(), before, now, units)));
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
        frontFirst(doubt, blocks);
        doubt.cars().get(0).spreads().stream()
                .findFirst()
                .ifPresent(first -> measureNext(
                        InPrint.sentences(DoubtWords.measureNext(doubt.measureNext(), first, units)), blocks));
        blocks.add(Text.quiet("Between: nineteen of twenty such cars lie there. What was estimated, and by which rule,"
                + " and what was not given, is listed at the end."));
        return new Section("How sure this is", false, blocks);
    }

    private void frontFirst(Doubt.Answer doubt, List<Block> blocks) {
        OptionalDouble now = doubt.cars().get(doubt.cars().size() - 1).frontFirst();
        OptionalDouble before = doubt.cars().get(0).frontFirst();
        if (now.isPresent() && before.isPresent()) {
            blocks.add(Text.plain("That the front goes first at the limit, "
                    + (question.bothWays()
                            ? "both ways round"
                            : BothWays.turning(question.trial().direction()))
                    + ", has a chance of "
                    + Numbers.percent(now.getAsDouble(), 0)
                    + (doubt.cars().size() == 2 ? "; before it was " + Numbers.percent(before.getAsDouble(), 0) : "")
                    + "."));
        }
    }

    /** The first of several sentences says what for. */
    private static void measureNext(List<String> sentences, List<Block> blocks) {
        blocks.add(Text.plain(sentences.get(0)));
        if (sentences.size() > 1) {
            blocks.add(new Points(sentences.subList(1, sentences.size())));
        }
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
        List<Row> rows = new ArrayList<>();
        for (Spread spread : doubt.cars().get(doubt.cars().size() - 1).spreads()) {
            Judged judged = spread.judged();
            if (DOUBTED.contains(judged.criterion()) && judged.pace().orElse(brisk()) == brisk()) {
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
                        + number(unit.fromSi(spread.high()), criterion, signed) + " " + InPrint.symbol(unit))
                .orElse("none");
    }

    private static String number(double value, Criterion criterion, boolean signed) {
        return signed ? Numbers.signed(value, criterion.digits()) : Numbers.fixed(value, criterion.digits());
    }

    /** What everybody who drives the car must know. */
    static Section cautions() {
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
