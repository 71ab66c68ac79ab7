package evenhand.forms;

import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.roadtest.Findings;
import evenhand.roadtest.Gradient;
import evenhand.words.JudgedWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.roadtest.RoadTestWords;
import java.util.List;
import java.util.OptionalDouble;

/** What road tests say in figures: readings beside what was expected, gradients, what moved, what is left of doubt. */
public final class RoadTestTable {
    private static final List<Criterion> FIGURES =
            List.of(Criterion.UNDERSTEER, Criterion.ROLL_GRADIENT, Criterion.LIMIT, Criterion.NEAR_UNDERSTEER);
    private static final int MOST_INPUTS = 10;

    private final Findings found;
    private final Units units;
    private final RoadTestWords words;

    public RoadTestTable(Findings found, Units units) {
        this.found = found;
        this.units = units;
        words = new RoadTestWords(units);
    }

    /** What a test read beside what the file and the corrected car show. */
    public static Table readings(Findings.OfTest test) {
        Table.Builder table = new Table.Builder(List.of("read", "±", "by the file", "±", "corrected", "off by, σ"));
        for (Findings.Seen seen : test.seen()) {
            table.row(
                    RoadTestWords.place(seen),
                    RoadTestWords.unit(seen).symbol(),
                    List.of(
                            RoadTestWords.cell(seen, RoadTestWords.measured(seen)),
                            RoadTestWords.cell(seen, 2 * seen.after().sigma()),
                            RoadTestWords.cell(seen, seen.before().expected()),
                            RoadTestWords.cell(seen, seen.beforeHalfWidth()),
                            RoadTestWords.cell(seen, seen.after().expected()),
                            Numbers.signed(seen.residual(), 1)));
        }
        return table.build();
    }

    /** Gradients as measured, by the file and corrected. */
    public static Table gradients(List<Gradient> gradients) {
        Table.Builder table = new Table.Builder(List.of("measured", "± (one σ)", "by the file", "corrected"));
        for (Gradient one : gradients) {
            table.row(
                    RoadTestWords.head(one),
                    "deg/g",
                    List.of(cell(one.measured()), cell(one.standardError()), cell(one.before()), cell(one.after())));
        }
        return table.build();
    }

    private static String cell(double si) {
        return RoadTestWords.gradient(si).replace(" deg/g", "");
    }

    /** Numbers of the file and of the days that moved most. */
    public Table inputs() {
        Table.Builder table = new Table.Builder(List.of("in the file", "±", "corrected", "±", "moved, σ"));
        for (Findings.Input one : found.inputs().stream().limit(MOST_INPUTS).toList()) {
            table.row(
                    one.number().path() + (one.suspect() ? " !" : ""),
                    "",
                    List.of(
                            words.shown(one.number().si(), one.number()),
                            words.shown(one.beforeTolerance(), one.number()),
                            words.shown(one.after(), one.number()),
                            words.shown(one.afterTolerance(), one.number()),
                            Numbers.signed(one.moved(), 2)));
        }
        for (Findings.OfTest test : found.tests()) {
            for (Findings.Own own : test.own()) {
                table.row(
                        own.what().key() + " of \"" + test.test().name() + "\"" + (own.suspect() ? " !" : ""),
                        "",
                        List.of(
                                words.own(own.what(), own.before()),
                                words.own(own.what(), own.beforeTolerance()),
                                words.own(own.what(), own.after()),
                                words.own(own.what(), own.afterTolerance()),
                                Numbers.signed(own.moved(), 2)));
            }
        }
        return table.build();
    }

    /** What is left of doubt in a set-up. */
    public Table figures(Findings.OfSetup setup) {
        Table.Builder table = new Table.Builder(List.of("by the file", "from", "to", "corrected", "from", "to"));
        for (Findings.Figure figure : setup.figures()) {
            Judged judged = figure.after().judged();
            if (FIGURES.contains(judged.criterion())) {
                Criterion criterion = judged.criterion();
                table.row(
                        JudgedWords.figure(judged),
                        units.of(criterion).symbol(),
                        List.of(
                                nominal(figure.before().nominal(), criterion),
                                JudgedWords.cell(criterion, figure.before().low(), units),
                                JudgedWords.cell(criterion, figure.before().high(), units),
                                nominal(figure.after().nominal(), criterion),
                                JudgedWords.cell(criterion, figure.after().low(), units),
                                JudgedWords.cell(criterion, figure.after().high(), units)));
            }
        }
        return table.build();
    }

    private String nominal(OptionalDouble si, Criterion criterion) {
        return si.isPresent() ? JudgedWords.cell(criterion, si.getAsDouble(), units) : Table.NOTHING;
    }
}
