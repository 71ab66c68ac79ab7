package evenhand.terminal.roadtest;

import evenhand.answers.Trial;
import evenhand.forms.RoadTestTable;
import evenhand.forms.Table;
import evenhand.roadtest.Findings;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.Page;
import evenhand.words.Units;
import evenhand.words.roadtest.RoadTestWords;

/** What road tests say, for people: the verdict, then what was read beside what was expected, and what is left of doubt. */
final class RoadTestPage {
    private final Page page;
    private final Units units;
    private final RoadTestReply reply;
    private final RoadTestTable tables;

    RoadTestPage(Console console, Units units, RoadTestReply reply) {
        page = new Page(console);
        this.units = units;
        this.reply = reply;
        tables = new RoadTestTable(reply.found(), units);
    }

    String write() {
        page.title(reply.scenario().title());
        reply.words(units).forEach(sentence -> page.paragraph("", sentence));
        reply.silent().forEach(why -> page.paragraph("", "Left out: " + why + "."));
        for (Findings.OfTest test : reply.found().tests()) {
            page.heading("\"" + test.test().name() + "\", with \"" + test.test().setup() + "\"");
            page.tableAtOnce(RoadTestTable.readings(test));
            if (!test.gradients().isEmpty()) {
                page.table(RoadTestTable.gradients(test.gradients()));
            }
        }
        page.heading(
                "Numbers that have moved most, of " + reply.found().inputs().size());
        page.tableAtOnce(tables.inputs());
        for (Findings.OfSetup setup : reply.found().setups()) {
            Table table = tables.figures(setup);
            if (!table.lines().isEmpty()) {
                page.heading(
                        "\"" + setup.name() + "\" to the left on " + units.radius(Trial.USUAL_RADIUS) + ", grip 1");
                page.tableAtOnce(table);
            }
        }
        page.blank();
        if (reply.found().agreement().agrees()) {
            page.paragraph("", RoadTestWords.goOn(reply.scenario().file()));
        }
        page.paragraph("", RoadTestWords.CAUTION);
        return page.text();
    }
}
