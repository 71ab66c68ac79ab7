package evenhand.forms;

import evenhand.answers.Answers;
import evenhand.car.Weights;
import evenhand.level.Levelling;
import evenhand.level.Posture;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.turn.Limit;
import evenhand.turn.PacesAnswer;
import evenhand.turn.Wheel;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.balance.LimitWords;
import evenhand.words.level.LevelledSetup.Levelled;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** The turns of the perches corner by corner, and the car before and after. */
public final class LevelTable {
    private static final Unit DEG_PER_G = Dimension.UNDERSTEER_GRADIENT.metric();

    private LevelTable() {}

    /** A column for each corner. */
    public static Table of(Levelled one, Units units) {
        Unit mass = units.of(Dimension.MASS);
        Unit length = units.of(Dimension.LENGTH);
        int lengthDigits = units == Units.METRIC ? 1 : 2;
        Levelling level = one.levelling();
        Columns<Wheel> table = new Columns<>(List.of(Wheel.values()), Wheel::words, units);
        Function<Wheel, Boolean> turned = wheel -> level.perTurn().containsKey(wheel);
        table.row(
                "turns, + up", "", wheel -> turned.apply(wheel) ? Numbers.signed(level.turns(wheel), 2) : "no thread");
        table.row(
                "in quarters",
                "",
                wheel -> turned.apply(wheel) ? Numbers.signed(level.rounded().get(wheel.index()), 2) : Table.NOTHING);
        if (one.weighed()) {
            table.row(
                    "weighs now",
                    mass.symbol(),
                    wheel -> kg(level.now().corner(wheel).load(), mass, false));
            table.row(
                    "then",
                    mass.symbol(),
                    wheel -> kg(level.after().corner(wheel).load(), mass, false));
        }
        table.row(
                "change of load",
                mass.symbol(),
                wheel -> kg(
                        level.after().corner(wheel).load()
                                - level.now().corner(wheel).load(),
                        mass,
                        true));
        table.rowIfAny("height now", length.symbol(), wheel -> number(one.height(wheel), length, lengthDigits));
        if (!one.wanted().measured().isEmpty()) {
            table.rowIfAny(
                    "asked for", length.symbol(), wheel -> number(one.wantedHeight(wheel), length, lengthDigits));
        }
        table.rowIfAny("then", length.symbol(), wheel -> number(one.heightAfter(wheel), length, lengthDigits));
        table.row(
                "comes up by",
                length.symbol(),
                wheel ->
                        Numbers.signed(length.fromSi(level.after().corner(wheel).rise()), lengthDigits));
        table.heading("One turn up there");
        table.rowIfAny(
                "moves cross weight by",
                "%",
                wheel -> one.weighed()
                        ? perTurn(level, wheel, each -> Numbers.signed(100 * each.crossWeight(), 2))
                        : Table.NOTHING);
        table.row("loads it by", mass.symbol(), wheel -> perTurn(level, wheel, each -> kg(each.load(), mass, true)));
        table.row(
                "raises it by",
                length.symbol(),
                wheel -> perTurn(level, wheel, each -> Numbers.signed(length.fromSi(each.rise()), lengthDigits)));
        table.heading("Left when it is done");
        table.rowIfAny("thread to go up", "turns", wheel -> thread(one, wheel, true));
        table.rowIfAny("thread to go down", "turns", wheel -> thread(one, wheel, false));
        table.rowIfAny(
                "to the bump stop",
                length.symbol(),
                wheel -> number(level.after().corner(wheel).bumpGap(), length, lengthDigits));
        table.rowIfAny(
                "between coils as metal meets",
                length.symbol(),
                wheel -> number(level.after().corner(wheel).coilMargin(), length, lengthDigits));
        return table.table();
    }

    private record Moment(String name, Posture posture, Answers answers) {}

    /** Now and then beside one another; none where the corners were not weighed. */
    public static Optional<Table> balance(Levelled one, Units units) {
        return one.turns().map(turns -> {
            List<Moment> moments = List.of(
                    new Moment("now", one.levelling().now(), turns.before()),
                    new Moment("then", one.levelling().after(), turns.after()));
            Columns<Moment> table = new Columns<>(moments, Moment::name, units);
            table.row(
                    "cross weight",
                    "%",
                    each -> Numbers.fixed(100 * each.posture().crossWeight(), 2));
            table.row(
                    "on the left",
                    "%",
                    each -> Numbers.fixed(100 * each.posture().leftFraction(), 2));
            for (int bend = 0; bend < turns.before().bends().size(); bend++) {
                int at = bend;
                Answers.Bend asked = turns.before().bends().get(bend);
                table.heading("Turning " + asked.direction().key() + " on " + units.radius(asked.radius()));
                table.row(
                        "limit",
                        "g",
                        each -> limit(
                                each, at, limit -> Numbers.fixed(limit.lateralAcceleration() / Weights.GRAVITY, 3)));
                table.row("goes first", "", each -> limit(each, at, LimitWords::first));
                table.row(
                        "understeer near the limit",
                        DEG_PER_G.symbol(),
                        each -> limit(
                                each,
                                at,
                                limit -> limit.nearUndersteer().isPresent()
                                        ? Numbers.fixed(
                                                DEG_PER_G.fromSi(
                                                        limit.nearUndersteer().getAsDouble()),
                                                2)
                                        : Table.NOTHING));
            }
            return table.table();
        });
    }

    private static String limit(Moment moment, int bend, Function<Limit, String> read) {
        return moment.answers().bends().get(bend).turn() instanceof PacesAnswer.Paces paces
                ? read.apply(paces.limit())
                : Table.NOTHING;
    }

    private static String perTurn(Levelling level, Wheel wheel, Function<Levelling.PerTurn, String> read) {
        return Optional.ofNullable(level.perTurn().get(wheel)).map(read).orElse(Table.NOTHING);
    }

    private static String thread(Levelled one, Wheel wheel, boolean up) {
        OptionalDouble left = one.threadLeft(wheel, up);
        return left.isPresent() ? Numbers.fixed(left.getAsDouble(), 1) : Table.NOTHING;
    }

    private static String kg(double newtons, Unit mass, boolean signed) {
        double shown = mass.fromSi(newtons / Weights.GRAVITY);
        return signed ? Numbers.signed(shown, 1) : Numbers.fixed(shown, 1);
    }

    private static String number(OptionalDouble si, Unit unit, int digits) {
        return si.isPresent() ? Numbers.fixed(unit.fromSi(si.getAsDouble()), digits) : Table.NOTHING;
    }
}
