package evenhand.forms;

import evenhand.answers.BrakeFigures;
import evenhand.answers.Figure;
import evenhand.car.Weights;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.straight.BrakeRule;
import evenhand.straight.Braking;
import evenhand.words.EventWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.brakes.BrakedSetup.Braked;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The figures of set-ups that brake, beside one another. */
public final class BrakesTable {
    private static final List<Figure<Braking.Row>> AT_A_DECELERATION =
            BrakeFigures.ROW.subList(1, BrakeFigures.ROW.size());

    private BrakesTable() {}

    /** @param all asked the same */
    public static Table of(List<Braked> all, Units units) {
        Braking.Asked asked = all.get(0).asked();
        Columns<Braked> table = new Columns<>(all, Braked::name, units);
        for (double deceleration : asked.decelerations()) {
            table.heading("At " + Units.pace(deceleration));
            AT_A_DECELERATION.forEach(
                    figure -> table.figureIfAny(figure, one -> one.answer().at(deceleration)));
        }
        table.heading("First to lock");
        for (int i = 0; i <= asked.frictions().size(); i++) {
            lock(table, asked, i);
        }
        table.row("both ends use as much at", "g", one -> listed(one.answer().crossings()));
        table.heading("Rules for passenger cars, a yardstick and no approval");
        List<BrakeRule> rules = all.get(0).answer().rules();
        for (int i = 0; i < rules.size(); i++) {
            rule(table, rules.get(i), i);
        }
        List<Double> feet = asked.pedalForces();
        if (all.stream().anyMatch(one -> !one.answer().stops().isEmpty())) {
            Unit unit = units == Units.METRIC ? Unit.of("m") : Unit.of("ft");
            table.heading("Stop from " + units.show(asked.speed(), Dimension.SPEED, 0));
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

    private static void lock(Columns<Braked> table, Braking.Asked asked, int i) {
        boolean own = i == asked.frictions().size();
        table.row(
                own
                        ? "on its own tyres"
                        : "at friction " + Numbers.plain(asked.frictions().get(i), 3),
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

    private static void rule(Columns<Braked> table, BrakeRule first, int i) {
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
