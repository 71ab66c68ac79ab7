package evenhand.window.question;

import evenhand.answers.Figure;
import evenhand.answers.TurnFigures;
import evenhand.car.End;
import evenhand.chart.Shown;
import evenhand.scenario.Setup;
import evenhand.turn.Direction;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import evenhand.window.desk.Figures;
import evenhand.window.desk.Question;
import evenhand.window.desk.TurnedSetup;
import evenhand.words.EventWords;
import evenhand.words.GripText;
import evenhand.words.LimitWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** What is shown of several set-ups beside one another: figures, and cars for charts. */
final class SideBySide {
    private static final String NOTHING = "–";

    private static final List<Figure<TurnRow>> AT_THE_PACE = List.of(
            TurnFigures.UNDERSTEER_GRADIENT,
            TurnFigures.STEER,
            TurnFigures.SIDESLIP,
            TurnFigures.ROLL,
            TurnFigures.FRONT_LOAD_TRANSFER_SHARE,
            TurnFigures.FRONT_GRIP_USED,
            TurnFigures.REAR_GRIP_USED,
            TurnFigures.GRIP_BALANCE,
            TurnFigures.FRONT_ROLL_CENTRE_HEIGHT,
            TurnFigures.REAR_ROLL_CENTRE_HEIGHT,
            TurnFigures.SPEED);

    private final List<TurnedSetup> cars;
    private final Units units;

    SideBySide(List<TurnedSetup> cars, Units units) {
        this.cars = List.copyOf(cars);
        this.units = units;
    }

    static SideBySide of(Question.Asked asked) {
        return new SideBySide(asked.shown(), asked.units());
    }

    /** The set-ups as charts show them. */
    static List<Shown> cars(Question.Asked asked) {
        return asked.shown().stream().map(one -> shown(asked, one)).toList();
    }

    static Shown shown(Question.Asked asked, TurnedSetup one) {
        return Shown.of(one.setup().name(), index(asked, one.setup().name()), one.standing(), one.balance());
    }

    /** The place of a set-up in the list: it decides its colour, line and marker. */
    static int index(Question.Asked asked, String name) {
        return asked.work().scenario().setups().stream()
                .map(Setup::name)
                .toList()
                .indexOf(name);
    }

    /** The figures at a pace and at the limit. */
    Figures figures(double pace, Direction direction) {
        Figures.Builder table =
                new Figures.Builder(cars.stream().map(car -> car.setup().name()).toList());
        table.heading("At " + Units.pace(pace));
        for (Figure<TurnRow> figure : AT_THE_PACE) {
            table.row(
                    figure.words(),
                    symbol(figure),
                    cells(car -> paceRow(car, pace).map(row -> cell(figure, row))));
        }
        inside(table, direction, car -> paceRow(car, pace));
        table.heading("At the limit");
        table.row(
                "lateral acceleration",
                symbol(TurnFigures.LATERAL_ACCELERATION),
                cells(car -> limitRow(car).map(row -> cell(TurnFigures.LATERAL_ACCELERATION, row))));
        table.row(
                "gives out first",
                "",
                cells(car -> car.turn()
                        .map(turn -> LimitWords.tips(turn.limit())
                                ? "neither: tips over"
                                : LimitWords.first(turn.limit()))));
        table.row(
                TurnFigures.NEAR_UNDERSTEER.words(),
                symbol(TurnFigures.NEAR_UNDERSTEER),
                cells(car -> car.turn().map(turn -> cell(TurnFigures.NEAR_UNDERSTEER, turn.limit()))));
        table.row(
                "limit balance",
                symbol(TurnFigures.GRIP_BALANCE),
                cells(car -> limitRow(car).map(row -> cell(TurnFigures.GRIP_BALANCE, row))));
        for (Figure<TurnRow> figure : List.of(TurnFigures.ROLL, TurnFigures.SPEED)) {
            table.row(figure.words(), symbol(figure), cells(car -> limitRow(car).map(row -> cell(figure, row))));
        }
        inside(table, direction, SideBySide::limitRow);
        return table.build();
    }

    private void inside(Figures.Builder table, Direction direction, Function<TurnedSetup, Optional<TurnRow>> rows) {
        for (End end : End.values()) {
            Wheel wheel = Wheel.inside(end, direction);
            table.row(
                    "load of the inside " + EventWords.end(end),
                    symbol(TurnFigures.LOAD),
                    cells(car -> rows.apply(car).map(row -> cell(TurnFigures.LOAD, row.wheel(wheel)))));
        }
    }

    private List<String> cells(Function<TurnedSetup, Optional<String>> cell) {
        List<String> cells = new ArrayList<>();
        for (TurnedSetup car : cars) {
            cells.add(cell.apply(car).orElse(NOTHING));
        }
        return cells;
    }

    private static Optional<TurnRow> paceRow(TurnedSetup car, double pace) {
        return car.reaches(pace) ? car.row(pace) : Optional.empty();
    }

    private static Optional<TurnRow> limitRow(TurnedSetup car) {
        return car.turn().map(turn -> turn.limit().row());
    }

    private <T> String cell(Figure<T> figure, T part) {
        OptionalDouble value = figure.in(units.of(figure.dimension()), part);
        Optional<String> times = figure.equals(TurnFigures.GRIP_BALANCE) ? times(figure.si(part)) : Optional.empty();
        if (times.isPresent()) {
            return times.get();
        }
        return value.isPresent() ? Numbers.fixed(value.getAsDouble(), units.digits(figure)) : NOTHING;
    }

    private static Optional<String> times(OptionalDouble balance) {
        return balance.isPresent() ? GripText.times(balance.getAsDouble()) : Optional.empty();
    }

    private String symbol(Figure<?> figure) {
        return figure.symbol(units.of(figure.dimension()));
    }
}
