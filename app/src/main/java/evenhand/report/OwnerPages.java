package evenhand.report;

import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.car.End;
import evenhand.car.LoadCase;
import evenhand.catalogue.Adjustable;
import evenhand.chart.OwnerCharts;
import evenhand.chart.OwnerCharts.Doubted;
import evenhand.drawing.Detail;
import evenhand.drawing.RearView;
import evenhand.drawing.SideView;
import evenhand.lowering.Need;
import evenhand.quantity.Dimension;
import evenhand.report.Block.Column;
import evenhand.report.Block.Fact;
import evenhand.report.Block.Facts;
import evenhand.report.Block.Figures;
import evenhand.report.Block.Plot;
import evenhand.report.Block.Points;
import evenhand.report.Block.Row;
import evenhand.report.Block.Table;
import evenhand.report.Block.Text;
import evenhand.report.Block.Tone;
import evenhand.report.Block.View;
import evenhand.ride.RoadClass;
import evenhand.scenario.Setup;
import evenhand.words.EventWords;
import evenhand.words.InPrint;
import evenhand.words.LoadWords;
import evenhand.words.NotGiven;
import evenhand.words.Units;
import evenhand.words.lowering.CostWords;
import evenhand.words.owner.ChangedWords;
import evenhand.words.owner.DriveWords;
import evenhand.words.owner.GotWords;
import evenhand.words.owner.Known;
import evenhand.words.owner.OpenWords;
import evenhand.words.owner.Rounded;
import evenhand.words.owner.Term;
import evenhand.words.owner.TravelWords;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What the owner of the car gets to read, on three pages: what he asked and what he got; the same in pictures; how sure it is and
 * what the words mean.
 */
final class OwnerPages {
    /** Of what was not given, so many are named. */
    private static final int MOST_NOT_GIVEN = 4;

    /** A part's effects that are told. */
    private static final int EFFECTS = 2;

    /** So many parts leave room for the rest on three pages. */
    private static final int MOST_PARTS = 12;

    /** Of more parts one effect each. */
    private static final int FEW = 4;

    /** A value of which somebody may ask what it costs: travel lost by less is not told, m. */
    private static final double TRAVEL_LOST = 0.003;

    private final Findings findings;
    private final OwnerFacts facts;
    private final Question question;
    private final Units units;
    private final Set<Term> terms =
            new LinkedHashSet<>(List.of(Term.G, Term.PUSH, Term.PUSH_NEAR, Term.LIMIT, Term.FIRST));

    private OwnerPages(Findings findings, OwnerFacts facts) {
        this.findings = findings;
        this.facts = facts;
        question = findings.question();
        units = question.units();
    }

    static List<Section> of(Findings findings) {
        List<Section> sections = new ArrayList<>(findings.owned()
                .map(facts -> new OwnerPages(findings, facts).pages())
                .orElseGet(() -> silent(findings)));
        findings.complained().map(one -> ComplaintPages.of(findings, one)).ifPresent(sections::add);
        return sections;
    }

    /** What was asked, and what came of it: all that goes with the car when it is handed over. */
    static List<Section> first(Findings findings) {
        return findings.owned()
                .map(facts -> new OwnerPages(findings, facts))
                .map(pages -> List.of(pages.asked(), pages.got()))
                .orElseGet(() -> silent(findings).subList(0, 1));
    }

    /** Of a set-up that the sums have no answer for. */
    private static List<Section> silent(Findings findings) {
        return List.of(
                new Section(
                        "What the sums say",
                        false,
                        List.of(new Text(
                                noAnswer(findings.chosen()) + " Nothing else can be told of it.", Tone.WARNING))),
                cautions());
    }

    private static String noAnswer(Candidate one) {
        return "\"" + one.name() + "\" has no answer: "
                + InPrint.sentence(one.silence().orElse("")) + ".";
    }

    private List<Section> pages() {
        List<Section> sections = new ArrayList<>();
        sections.add(asked());
        sections.add(got());
        if (findings.compares()) {
            sections.add(changed());
        }
        sections.add(firstDrive());
        sections.add(pictures());
        sections.add(stands());
        loads().ifPresent(sections::add);
        sections.add(sure());
        sections.add(cautions());
        sections.add(words());
        return sections;
    }

    private Section asked() {
        List<Block> blocks = new ArrayList<>();
        question.trial().load().ifPresent(load -> blocks.add(Text.plain(LoadWords.aboard(load, units))));
        if (findings.compares() && facts.before().isEmpty()) {
            blocks.add(new Text(noAnswer(findings.base()) + " So nothing is compared with it.", Tone.WARNING));
        }
        List<AskedAnswer> answers = AskedAnswer.of(facts);
        if (answers.isEmpty()) {
            blocks.add(Text.plain("The file does not say what was asked."));
            question.scenario()
                    .story()
                    .ifPresent(story -> story.lines()
                            .filter(line -> !line.isBlank())
                            .map(Text::plain)
                            .forEach(blocks::add));
            return new Section("What you asked", false, blocks);
        }
        boolean before = facts.before().isPresent();
        List<Column> columns = new ArrayList<>(List.of(Column.words("you asked", 2.6), Column.words("judged by", 2.3)));
        if (before) {
            columns.add(Column.words("before", 1.7));
        }
        columns.addAll(List.of(Column.words("now", 1.8), Column.words("the answer", 2.8)));
        List<Row> rows = new ArrayList<>();
        for (AskedAnswer one : answers) {
            List<String> cells = new ArrayList<>(List.of(one.text(), one.judge()));
            if (before) {
                cells.add(one.before());
            }
            cells.addAll(List.of(one.now(), one.answer()));
            rows.add(new Row(cells.stream().map(InPrint::sentence).toList(), false));
            terms.addAll(one.terms());
        }
        blocks.add(new Table(columns, rows));
        return new Section("What you asked, and the answer", false, blocks);
    }

    private Section got() {
        List<Block> blocks = new ArrayList<>();
        List<Fact> got = new ArrayList<>();
        terms.addAll(List.of(Term.LEAN, Term.SHAKING, Term.ROAD, Term.TRAVEL, Term.DOUBT));
        String bend = GotWords.bend(List.of(facts.atBrisk(Criterion.LEAN), facts.atBrisk(Criterion.UNDERSTEER)), units);
        List<String> limit = GotWords.limit(
                facts.isTwoSided() ? facts.ways() : facts.ways().subList(0, 1),
                facts.waysBefore(),
                facts.known(OwnerFacts.LIMIT),
                facts.known(OwnerFacts.NEAR),
                units);
        got.add(new Fact("Round a bend", (bend + " " + String.join(" ", limit)).strip(), Tone.PLAIN));
        Known shaking = facts.known(OwnerFacts.SHAKING);
        got.add(new Fact(
                "Ride",
                shaking.now().isPresent()
                        ? GotWords.ride(shaking, RoadClass.B, question.trial().speed(), units)
                        : "The file gives no dampers at one end, so the sums say nothing of comfort.",
                Tone.PLAIN));
        got.add(new Fact("Travel", TravelWords.of(ends(), facts.before().isPresent(), units), Tone.PLAIN));
        open().forEach(warning -> got.add(new Fact("Open", warning, Tone.WARNING)));
        blocks.add(new Facts(got));
        String circle = "Circle of " + units.radius(question.trial().radius())
                + (facts.isTwoSided()
                        ? ". Turning left and turning right are two things for this car: figures without a side are of the"
                                + " worse one for it now, turning "
                                + facts.worse().key() + "."
                        : question.bothWays()
                                ? ", both ways round alike."
                                : ", turning " + facts.worse().key() + ".");
        blocks.add(Text.quiet(circle));
        return new Section("What you got" + (findings.compares() ? "" : ", as the car stands"), false, blocks);
    }

    /** Both ends' room and where their rubber is met, before and now. */
    private List<TravelWords.Room> ends() {
        List<TravelWords.Room> rooms = new ArrayList<>();
        for (End end : End.values()) {
            Candidate now = facts.now();
            if (now.room(end).isPresent()) {
                Optional<Candidate> before = facts.before();
                rooms.add(new TravelWords.Room(
                        EventWords.end(end),
                        before.map(one -> one.room(end)).orElse(OptionalDouble.empty()),
                        now.room(end),
                        tolerance(end),
                        before.map(one -> one.firstStop(end)).orElse(OptionalDouble.empty()),
                        now.firstStop(end)));
            }
        }
        return rooms;
    }

    private OptionalDouble tolerance(End end) {
        return facts.now().setup().values().stream()
                .filter(value -> value.path().equals(end.key() + ".bumpStop.gap"))
                .mapToDouble(Adjustable::tolerance)
                .filter(value -> value > 0)
                .findFirst();
    }

    /** What is still short, and what nobody may miss. */
    private List<String> open() {
        List<String> open = new ArrayList<>();
        for (CostWords.Cost cost : findings.costs()) {
            if (cost.isShort() && !cost.need().equals(Need.FRONT_FIRST)) {
                // of a car by itself nothing is as before
                open.add(OpenWords.shortOf(findings.compares() ? cost : cost.alone(), units));
            }
        }
        open.addAll(facts.blows().stream()
                .map(blow -> OpenWords.blow(blow.judge(), blow.now(), units))
                .toList());
        facts.ways().stream()
                .filter(way -> !way.limit().frontFirst())
                .map(OpenWords::tail)
                .distinct()
                .forEach(open::add);
        open.addAll(NotGiven.cautions(List.of(facts.now().setup())));
        return open;
    }

    private Section changed() {
        List<Block> blocks = new ArrayList<>();
        List<String> notes = ChangedWords.steps(steps());
        if (!notes.isEmpty()) {
            blocks.add(Text.plain(String.join(" ", notes)));
        }
        List<Row> rows = new ArrayList<>();
        List<OwnerFacts.PartChanged> parts = facts.changed();
        for (OwnerFacts.PartChanged one : parts.subList(0, Math.min(MOST_PARTS, parts.size()))) {
            List<String> values = ChangedWords.values(
                    one.part(),
                    one.changes().stream()
                            .flatMap(change -> change.differences().stream())
                            .toList(),
                    units);
            if (!values.isEmpty()) {
                rows.add(Row.of(
                        ChangedWords.part(one.part()),
                        String.join("; ", values),
                        does(one, parts.size() > FEW ? 1 : EFFECTS)));
            }
        }
        if (rows.isEmpty()) {
            blocks.add(Text.plain("Nothing: both set-ups are the same car."));
        } else {
            blocks.add(new Table(
                    List.of(
                            Column.words("changed", 2.2),
                            Column.words("from → to", 3.6),
                            Column.words("by itself, against the car without it", 4.4)),
                    rows));
            if (parts.size() > MOST_PARTS) {
                blocks.add(
                        Text.quiet("And " + (parts.size() - MOST_PARTS) + " more, which the engineer's paper lists."));
            }
        }
        List<String> costs = costs();
        blocks.add(new Facts(List.of(new Fact(
                "What it costs",
                costs.isEmpty()
                        ? "Nothing that the sums show; money and work they do not know."
                        : String.join(" ", costs),
                Tone.PLAIN))));
        return new Section("What was changed, and why", false, blocks);
    }

    /** Notes of the set-ups that led from the base to the one that is handed over, the first step first. */
    private List<String> steps() {
        List<String> notes = new ArrayList<>();
        Optional<Setup> step = Optional.of(findings.chosen().setup());
        while (step.isPresent() && !step.get().equals(findings.base().setup())) {
            step.get().note().ifPresent(note -> notes.add(0, note));
            step = step.get().basedOn().flatMap(question.scenario()::setup);
        }
        return notes;
    }

    private String does(OwnerFacts.PartChanged part, int effects) {
        List<String> told = part.without().entrySet().stream()
                .sorted((one, other) -> Double.compare(weight(other), weight(one)))
                .flatMap(one -> GotWords.does(one.getKey(), one.getValue(), units).stream())
                .limit(effects)
                .toList();
        return told.isEmpty() ? "nothing that you would feel" : String.join("; ", told);
    }

    /** How much a driver notices of it. */
    private static double weight(Map.Entry<Judged, Double> moved) {
        return Math.abs(moved.getValue()) / moved.getKey().criterion().noticeable();
    }

    private List<String> costs() {
        List<String> costs = new ArrayList<>();
        if (facts.before().isEmpty()) {
            return costs;
        }
        Known shaking = facts.known(OwnerFacts.SHAKING);
        if (shaking.isNoticed() && shaking.difference().getAsDouble() > 0) {
            costs.add("Comfort: " + OpenWords.more("it shakes more at the seat", shaking, units) + ".");
        }
        Known limit = facts.known(OwnerFacts.LIMIT);
        if (limit.isNoticed() && limit.difference().getAsDouble() < 0) {
            costs.add("Grip: " + OpenWords.more("the cornering limit is lower", limit, units) + ".");
        }
        Known lean = facts.atBrisk(Criterion.LEAN);
        if (lean.isNoticed() && lean.difference().getAsDouble() > 0) {
            costs.add("Lean: " + OpenWords.more("it leans more in a brisk bend", lean, units) + ".");
        }
        facts.blows().stream()
                .filter(OwnerFacts.Blow::isNew)
                .map(blow -> OpenWords.newBlow(blow.judge(), blow.now()))
                .forEach(costs::add);
        for (End end : End.values()) {
            OptionalDouble was = facts.before().get().room(end);
            OptionalDouble is = facts.now().room(end);
            if (was.isPresent() && is.isPresent() && was.getAsDouble() - is.getAsDouble() > TRAVEL_LOST) {
                costs.add(
                        "Travel: " + TravelWords.lost(EventWords.end(end), was.getAsDouble(), is.getAsDouble(), units));
            }
        }
        return costs;
    }

    private Section firstDrive() {
        List<Known> feels = new ArrayList<>(List.of(
                facts.atBrisk(Criterion.LEAN),
                facts.atBrisk(Criterion.UNDERSTEER),
                facts.known(OwnerFacts.NEAR),
                facts.known(OwnerFacts.SHAKING)));
        return new Section(
                "What to feel for on the first drive",
                false,
                List.of(new Points(DriveWords.of(
                        feels,
                        TravelWords.inTheBend(ends()),
                        facts.isTwoSided() ? facts.ways() : facts.ways().subList(0, 1),
                        units))));
    }

    private Section pictures() {
        Map<String, List<Doubted>> push = new LinkedHashMap<>();
        Map<String, List<Doubted>> lean = new LinkedHashMap<>();
        for (double pace : facts.paces()) {
            push.put("at " + Units.pace(pace), doubted(new Judged(Criterion.UNDERSTEER, OptionalDouble.of(pace))));
            lean.put("at " + Units.pace(pace), doubted(new Judged(Criterion.LEAN, OptionalDouble.of(pace))));
        }
        push.put("near the limit", doubted(OwnerFacts.NEAR));
        String side = facts.isTwoSided() ? ", turning " + facts.worse().key() : "";
        List<Block> blocks = new ArrayList<>();
        blocks.add(Figures.even(
                0.27,
                new Plot(OwnerCharts.strip(
                        "How much it pushes" + side, "push", units.of(Criterion.UNDERSTEER), 1, push)),
                new Plot(OwnerCharts.strip("How far it leans" + side, "lean", units.of(Criterion.LEAN), 1, lean))));
        blocks.add(Text.quiet(
                "The line through a mark is what doubt leaves (±). Push to the right of 0 runs wide, to the left"
                        + " of 0 the tail leads. Where the lines of before and now overlap, the difference can still be sure, for the"
                        + " same errors are in both."));
        hardly().ifPresent(text -> blocks.add(Text.plain(text)));
        return new Section(findings.compares() ? "Before and now" : "Round a bend", false, blocks);
    }

    private List<Doubted> doubted(Judged judged) {
        Known known = facts.known(judged);
        List<Doubted> row = new ArrayList<>();
        facts.before().ifPresent(one -> row.add(doubted(one, known.judged(), known.before(), known.doubtBefore())));
        row.add(doubted(facts.now(), known.judged(), known.now(), known.doubt()));
        return row;
    }

    private Doubted doubted(Candidate one, Judged judged, OptionalDouble value, OptionalDouble doubt) {
        return new Doubted(
                one.shown(),
                value,
                doubt,
                value.isPresent() ? Rounded.number(judged.criterion(), value.getAsDouble(), doubt, units) : "");
    }

    /** What the changes left as it was. */
    private Optional<String> hardly() {
        if (facts.before().isEmpty()) {
            return Optional.empty();
        }
        List<String> same = new ArrayList<>();
        for (Known one : List.of(
                facts.atBrisk(Criterion.LEAN),
                facts.known(new Judged(
                        Criterion.UNDERSTEER, OptionalDouble.of(facts.paces().get(0)))),
                facts.atBrisk(Criterion.UNDERSTEER),
                facts.known(OwnerFacts.NEAR),
                facts.known(OwnerFacts.LIMIT),
                facts.known(OwnerFacts.SHAKING))) {
            if (one.difference().isPresent() && !one.isNoticed()) {
                same.add(Term.figure(one.judged()));
            }
        }
        return same.isEmpty() ? Optional.empty() : Optional.of("Hardly changed: " + String.join(", ", same) + ".");
    }

    private Section stands() {
        Detail detail = new Detail(units, units.of(Dimension.FORCE), true);
        List<Block> blocks = new ArrayList<>();
        terms.add(Term.CENTRE);
        List<Block.Figure> pair = new ArrayList<>();
        pair.add(new View(SideView.of(facts.now().stance(), detail, List.of())));
        facts.now()
                .at(facts.brisk())
                .ifPresent(row -> pair.add(new View(
                        RearView.of(facts.now().stance().turning(row), End.REAR, Detail.usual(units), List.of()))));
        blocks.add(new Figures(pair, 0.56, 0.29));
        blocks.add(Text.quiet(
                "\"" + facts.now().name() + "\". Outline for orientation; wheels, heights and links to scale."));
        blocks.add(needs());
        blocks.add(Text.quiet(
                "What is wanted is common practice of those who set up cars for the road, no standard. Set bold on"
                        + " a tint: short of it now."));
        return new Section("How it stands", false, blocks);
    }

    private Table needs() {
        List<Column> columns = new ArrayList<>(
                List.of(Column.words("what a car for the road should keep", 4), Column.number("wanted", 1.7)));
        boolean before = facts.before().isPresent();
        if (before) {
            columns.add(Column.number("before", 1.6));
        }
        columns.add(Column.number("now", 1.6));
        List<Row> rows = new ArrayList<>();
        for (CostWords.Cost cost : findings.costs()) {
            if (cost.need().dimension() == Dimension.FREQUENCY
                    || cost.need().words().contains("roll centre")) {
                continue; // the engineer's
            }
            List<String> cells = new ArrayList<>(List.of(
                    OpenWords.need(cost.need()), evenhand.words.lowering.LowestWords.bound(cost.need(), units)));
            if (before) {
                cells.add(CostWords.value(cost.need(), cost.before(), units));
            }
            cells.add(CostWords.value(cost.need(), cost.now(), units));
            rows.add(new Row(cells, cost.isShort()));
        }
        return new Table(columns, rows);
    }

    /** The load cases of the file. */
    private Optional<Section> loads() {
        List<LoadCase> loads = question.scenario().loadCases();
        if (loads.isEmpty() || question.trial().load().isPresent()) {
            return Optional.empty();
        }
        boolean before = facts.before().isPresent();
        List<Column> columns = new ArrayList<>(List.of(Column.words("aboard", 2)));
        if (before) {
            columns.add(Column.words("before", 3.6));
        }
        columns.add(Column.words("now", 3.6));
        List<Row> rows = new ArrayList<>();
        for (LoadCase load : loads) {
            List<String> cells = new ArrayList<>(List.of(load.name()));
            facts.before()
                    .ifPresent(
                            one -> cells.add(LoadedStance.of(facts, one, load).brief(units)));
            cells.add(LoadedStance.of(facts, facts.now(), load).brief(units));
            rows.add(new Row(cells, false));
        }
        return Optional.of(new Section("With people and luggage", false, List.of(new Table(columns, rows))));
    }

    private Section sure() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Text.plain(
                "Every number of this car was measured, taken from a catalogue or estimated, and may be off; what"
                        + " that leaves open stands behind ±. \"Probably\" is wrong once in six times at most, \"open\" may be the other way"
                        + " round."));
        List<String> next = OpenWords.measure(facts.causes(OwnerFacts.NEAR), units);
        if (!next.isEmpty()) {
            blocks.add(Text.plain("What leaves the push near the limit most in doubt, and how to measure it better:"));
            blocks.add(new Points(next));
        }
        NotGiven.inShort(List.of(facts.now().setup()), MOST_NOT_GIVEN)
                .ifPresent(none -> blocks.add(Text.quiet(none + " The engineer's paper lists all.")));
        return new Section("How sure this is", false, blocks);
    }

    private Section words() {
        return new Section(
                "What the words mean",
                false,
                List.of(new Facts(terms.stream()
                        .sorted(Comparator.comparing(Term::name))
                        .map(term -> new Fact(term.name(), GotWords.capital(term.means()), Tone.QUIET))
                        .toList())));
    }

    /** What everybody who drives the car must know. */
    static Section cautions() {
        return CarPages.cautions();
    }
}
