package evenhand.terminal.find;

import evenhand.answers.Criterion;
import evenhand.catalogue.Adjustable;
import evenhand.choice.Finding;
import evenhand.forms.Table;
import evenhand.quantity.Unit;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.Page;
import evenhand.terminal.reply.SetupNotes;
import evenhand.words.ChangeWords;
import evenhand.words.JudgedWords;
import evenhand.words.LoadWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.find.FindWords;
import java.util.List;

/** The answer of {@code find} for people: the words, then the curve or the changes. */
final class FindTables {
    /** Of the curve about so many places are shown. */
    private static final int PLACES = 12;

    private final Page page;
    private final Units units;

    FindTables(Console console, Units units) {
        this.page = new Page(console);
        this.units = units;
    }

    String write(FindReply reply) {
        Finding finding = reply.finding();
        page.title(reply.scenario().title());
        reply.load().ifPresent(load -> page.paragraph("", LoadWords.aboard(load, units)));
        page.blank();
        page.title(reply.setup().name());
        page.sentences(reply.words(units));
        if (finding instanceof Finding.One one) {
            page.table(curve(one));
        } else if (finding instanceof Finding.Several several) {
            page.table(changes(several));
        }
        new SetupNotes(page, units).notGiven(List.of(reply.setup()));
        return page.text();
    }

    private Table curve(Finding.One one) {
        Criterion criterion = one.aim().judged().criterion();
        Unit unit = units.of(criterion);
        String pace = criterion.hasPace() ? " " + JudgedWords.pace(one.aim().judged()) : "";
        Table.Builder table = new Table.Builder(List.of(criterion.name() + pace));
        List<Finding.Point> points = one.curve();
        double next = one.change().from();
        for (Finding.Point point : points) {
            boolean found = point.at() == one.value();
            boolean last = point.at() == one.change().to();
            if (found || last || point.at() >= next) {
                table.row(
                        FindWords.value(one.change().adjustable(), point.at(), units)
                                + (found ? (one.met() ? "  found" : "  nearest") : ""),
                        unit.symbol(),
                        List.of(JudgedWords.cell(criterion, point.figure(), units)));
                next = point.at() < next ? next : point.at() + one.change().width() / PLACES * 0.999;
            }
        }
        return table.build();
    }

    private Table changes(Finding.Several several) {
        Table.Builder table = new Table.Builder(List.of("now", "found", "of its range"));
        for (int i = 0; i < several.changes().size(); i++) {
            Adjustable now = several.changes().get(i).adjustable();
            double value = several.values().get(i);
            double part = (value - now.si()) / several.changes().get(i).width();
            table.row(
                    ChangeWords.name(now.path()),
                    "",
                    List.of(
                            FindWords.now(several.changes().get(i), units),
                            FindWords.value(now, value, units),
                            Numbers.signedPercent(part, 0)));
        }
        return table.build();
    }
}
