package evenhand.terminal.brakes;

import evenhand.answers.BrakeFigures;
import evenhand.answers.Figure;
import evenhand.car.Weights;
import evenhand.forms.Columns;
import evenhand.forms.Table;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.straight.BrakeRule;
import evenhand.straight.Braking;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.Page;
import evenhand.terminal.reply.SetupNotes;
import evenhand.words.EventWords;
import evenhand.words.LoadWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.brakes.BrakeWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The answers of {@code brakes} for people: each set-up in words, the verdict first, then all side by side. */
final class BrakesTables {
    private static final List<Figure<Braking.Row>> AT_A_DECELERATION =
            BrakeFigures.ROW.subList(1, BrakeFigures.ROW.size());

    private final Page page;
    private final Units units;
    private final BrakesReply reply;

    BrakesTables(Console console, Units units, BrakesReply reply) {
        page = new Page(console);
        this.units = units;
        this.reply = reply;
    }

    String write() {
        page.title(reply.scenario().title());
        reply.scenario().story().ifPresent(story -> page.paragraph("", story));
        reply.load().ifPresent(aboard -> page.paragraph("", LoadWords.aboard(aboard, units)));
        for (SetupBrakes one : reply.setups()) {
            page.heading(one.setup().name());
            one.setup().note().ifPresent(note -> page.paragraph("  ", "(" + note + ")"));
            one.braked().ifPresent(braked -> page.sentences(words(braked)));
            one.noAnswer().ifPresent(none -> page.paragraph("  ", "No answer: " + none.text() + "."));
        }
        List<SetupBrakes.Braked> braked =
                reply.setups().stream().flatMap(one -> one.braked().stream()).toList();
        if (!braked.isEmpty()) {
            page.table(table(braked));
        }
        page.blank();
        BrakeWords.CAUTIONS.forEach(caution -> page.paragraph("", caution));
        SetupNotes notes = new SetupNotes(page, units);
        notes.estimated(reply.setups());
        notes.notGiven(reply.setups().stream().map(SetupBrakes::setup).toList());
        return page.text();
    }

    /** The sentences of a set-up; where an earlier one brakes alike to the last digit, only that. */
    private List<String> words(SetupBrakes.Braked braked) {
        return reply.setups().stream()
                .flatMap(one -> one.braked().stream())
                .takeWhile(earlier -> !earlier.setup().equals(braked.setup()))
                .filter(earlier -> earlier.answer().equals(braked.answer()))
                .findFirst()
                .map(earlier -> List.of("Brakes as \"" + earlier.setup().name() + "\" does."))
                .orElseGet(() -> braked.words(units));
    }

    private Table table(List<SetupBrakes.Braked> all) {
        Columns<SetupBrakes.Braked> table =
                new Columns<>(all, one -> one.setup().name(), units);
        for (double deceleration : reply.asked().decelerations()) {
            table.heading("At " + Units.pace(deceleration));
            AT_A_DECELERATION.forEach(
                    figure -> table.figureIfAny(figure, one -> one.answer().at(deceleration)));
        }
        table.heading("First to lock");
        for (int i = 0; i <= reply.asked().frictions().size(); i++) {
            lock(table, i);
        }
        table.row("both ends use as much at", "g", one -> listed(one.answer().crossings()));
        table.heading("Rules for passenger cars, a yardstick and no approval");
        List<BrakeRule> rules = all.get(0).answer().rules();
        for (int i = 0; i < rules.size(); i++) {
            rule(table, rules.get(i), i);
        }
        List<Double> feet = reply.asked().pedalForces();
        if (all.stream().anyMatch(one -> !one.answer().stops().isEmpty())) {
            Unit unit = units == Units.METRIC ? Unit.of("m") : Unit.of("ft");
            table.heading("Stop from " + units.show(reply.asked().speed(), Dimension.SPEED, 0));
            for (int i = 0; i < feet.size(); i++) {
                int at = i;
                table.row(
                        "with " + units.show(feet.get(i), Dimension.FORCE, 0),
                        unit.symbol(),
                        one -> one.answer().stops().stream()
                                .skip(at)
                                .findFirst()
                                .map(stop -> stop(stop, unit))
                                .orElse(Table.NOTHING));
            }
        }
        return table.table();
    }

    private static String stop(Braking.Stop stop, Unit unit) {
        return stop.distance().isEmpty()
                ? Table.NOTHING
                : Numbers.fixed(unit.fromSi(stop.distance().getAsDouble()), 1) + (stop.locks() ? " (locks)" : "");
    }

    private void lock(Columns<SetupBrakes.Braked> table, int i) {
        boolean own = i == reply.asked().frictions().size();
        table.row(
                own
                        ? "on its own tyres"
                        : "at friction "
                                + Numbers.plain(reply.asked().frictions().get(i), 3),
                "g",
                one -> one.answer()
                        .locks()
                        .get(i)
                        .locks()
                        .map(locks -> EventWords.end(locks.axle()) + " "
                                + Numbers.fixed(locks.deceleration() / Weights.GRAVITY, 3))
                        .orElse(Table.NOTHING));
    }

    private static String listed(List<Braking.Crossing> crossings) {
        List<String> at = new ArrayList<>();
        crossings.forEach(crossing -> at.add(Numbers.fixed(crossing.deceleration() / Weights.GRAVITY, 3)));
        return at.isEmpty() ? Table.NOTHING : String.join(", ", at);
    }

    private static void rule(Columns<SetupBrakes.Braked> table, BrakeRule first, int i) {
        table.row(first.name(), "", one -> one.answer().rules().get(i).met() ? "met" : "not met");
        table.row(
                "  front before rear, least",
                "",
                one -> margin(one.answer().rules().get(i).order()));
        table.row(
                "  braked for what it uses, least",
                "",
                one -> margin(one.answer().rules().get(i).use()));
    }

    private static String margin(Optional<BrakeRule.Margin> margin) {
        return margin.map(least -> Numbers.signed(least.margin(), 3) + " at " + Numbers.fixed(least.at(), 2) + " g")
                .orElse(Table.NOTHING);
    }
}
