package evenhand.terminal.roadtest;

import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Trial;
import evenhand.forms.Table;
import evenhand.roadtest.Findings;
import evenhand.roadtest.Gradient;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.Page;
import evenhand.words.JudgedWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.roadtest.RoadTestWords;
import java.util.List;
import java.util.OptionalDouble;

/** What road tests say, for people: the verdict, then what was read beside what was expected, and what is left of doubt. */
final class RoadTestPage {
    private static final List<Criterion> FIGURES =
            List.of(Criterion.UNDERSTEER, Criterion.ROLL_GRADIENT, Criterion.LIMIT, Criterion.NEAR_UNDERSTEER);
    private static final int MOST_INPUTS = 10;

    private final Page page;
    private final Units units;
    private final RoadTestReply reply;
    private final RoadTestWords words;

    RoadTestPage(Console console, Units units, RoadTestReply reply) {
        page = new Page(console);
        this.units = units;
        this.reply = reply;
        words = new RoadTestWords(units);
    }

    String write() {
        page.title(reply.scenario().title());
        reply.words(units).forEach(sentence -> page.paragraph("", sentence));
        reply.silent().forEach(why -> page.paragraph("", "Left out: " + why + "."));
        for (Findings.OfTest test : reply.found().tests()) {
            page.heading("\"" + test.test().name() + "\", with \"" + test.test().setup() + "\"");
            page.tableAtOnce(readings(test));
            if (!test.gradients().isEmpty()) {
                page.table(gradients(test.gradients()));
            }
        }
        page.heading(
                "Numbers that have moved most, of " + reply.found().inputs().size());
        page.tableAtOnce(inputs());
        for (Findings.OfSetup setup : reply.found().setups()) {
            Table table = figures(setup);
            if (!table.lines().isEmpty()) {
                page.heading(
                        "\"" + setup.name() + "\" to the left on " + units.radius(Trial.USUAL_RADIUS) + ", grip 1");
                page.tableAtOnce(table);
            }
        }
        return page.text();
    }

    private Table readings(Findings.OfTest test) {
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

    private static Table gradients(List<Gradient> gradients) {
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

    private Table inputs() {
        Table.Builder table = new Table.Builder(List.of("in the file", "±", "corrected", "±", "moved, σ"));
        for (Findings.Input one :
                reply.found().inputs().stream().limit(MOST_INPUTS).toList()) {
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
        for (Findings.OfTest test : reply.found().tests()) {
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

    private Table figures(Findings.OfSetup setup) {
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
