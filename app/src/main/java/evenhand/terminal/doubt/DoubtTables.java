package evenhand.terminal.doubt;

import evenhand.answers.Criterion;
import evenhand.doubt.Doubt;
import evenhand.doubt.Spread;
import evenhand.forms.Table;
import evenhand.quantity.Unit;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.Page;
import evenhand.terminal.reply.EachWay;
import evenhand.terminal.reply.SetupAnswer;
import evenhand.terminal.reply.SetupNotes;
import evenhand.words.BothWays;
import evenhand.words.ChangeWords;
import evenhand.words.JudgedWords;
import evenhand.words.LoadWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.doubt.DoubtWords;
import java.util.Comparator;
import java.util.List;

/** The answers of {@code doubt} for people: first what is sure of the differences, then every interval and its cause. */
final class DoubtTables {
    private final Page page;
    private final Units units;

    DoubtTables(Console console, Units units) {
        this.page = new Page(console);
        this.units = units;
    }

    String write(DoubtReply doubted) {
        page.title(doubted.scenario().title());
        doubted.trial().load().ifPresent(load -> page.paragraph("", LoadWords.aboard(load, units)));
        List<EachWay.Circle<DoubtReply.Doubted>> circles = doubted.eachWay();
        for (EachWay.Shown<DoubtReply.Doubted> shown : EachWay.shown(circles, units)) {
            shown.way().found().ifPresent(found -> {
                page.heading(shown.setup().name() + shown.where());
                shown.warnings().forEach(warning -> page.paragraph(BothWays.WARNING, warning));
                page.sentences(found.words(units));
                page.table(table(found.left(), false));
            });
            shown.noAnswer().ifPresent(none -> {
                page.heading(shown.setup().name() + shown.where());
                page.paragraph("  ", none);
            });
        }
        for (DoubtReply.Circle circle : doubted.circles()) {
            String on = circles.size() > 1 ? ", on a circle of " + units.radius(circle.radius()) : "";
            for (DoubtReply.Turn turn : circle.turns()) {
                String turning = circle.turns().size() > 1 ? ", " + BothWays.turning(turn.direction()) : "";
                for (DoubtReply.Apart apart : turn.differences()) {
                    page.heading(apart.setup().name() + ", compared with "
                            + apart.base().name() + on + turning);
                    page.sentences(apart.words(units));
                    page.table(table(apart.left(), true));
                }
            }
            circle.narrowed().ifPresent(narrowed -> {
                page.heading("Measure next" + on);
                page.sentences(DoubtWords.measureNext(circle.measureNext().orElseThrow(), narrowed, units));
            });
        }
        new SetupNotes(page, units)
                .notGiven(doubted.setups().stream().map(SetupAnswer::setup).toList());
        return page.text();
    }

    private Table table(Doubt.Left left, boolean difference) {
        Table.Builder table =
                new Table.Builder(List.of(difference ? "difference" : "answer", "from", "to", "most from"));
        String before = "";
        List<Spread> byPace = left.spreads().stream()
                .sorted(Comparator.comparingDouble(
                        spread -> spread.judged().pace().orElse(Double.MAX_VALUE)))
                .toList();
        for (Spread spread : byPace) {
            String pace = JudgedWords.pace(spread.judged());
            if (!pace.equals(before)) {
                table.heading(JudgedWords.heading(spread.judged()));
                before = pace;
            }
            Criterion criterion = spread.judged().criterion();
            Unit unit = units.of(criterion);
            String low = number(unit.fromSi(spread.low()), criterion, difference);
            String high = number(unit.fromSi(spread.high()), criterion, difference);
            table.row(
                    criterion.name(),
                    unit.symbol(),
                    List.of(
                            spread.nominal().isPresent()
                                    ? number(unit.fromSi(spread.nominal().getAsDouble()), criterion, difference)
                                    : Table.NOTHING,
                            low,
                            high,
                            spread.causes().isEmpty() || low.equals(high)
                                    ? Table.NOTHING
                                    : cause(spread.causes().get(0))));
        }
        return table.build();
    }

    private static String cause(Spread.Cause cause) {
        return ChangeWords.name(cause.path()) + " " + Numbers.percent(cause.share(), 0);
    }

    private String number(double value, Criterion criterion, boolean signed) {
        return signed ? Numbers.signed(value, units.digits(criterion)) : Numbers.fixed(value, units.digits(criterion));
    }
}
