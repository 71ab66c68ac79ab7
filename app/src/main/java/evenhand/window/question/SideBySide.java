package evenhand.window.question;

import evenhand.answers.Figure;
import evenhand.answers.TurnFigures;
import evenhand.car.End;
import evenhand.chart.Shown;
import evenhand.forms.Columns;
import evenhand.forms.Table;
import evenhand.turn.Direction;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import evenhand.window.desk.Question;
import evenhand.window.desk.TurnedSetup;
import evenhand.words.EventWords;
import evenhand.words.Units;
import evenhand.words.balance.LimitWords;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What is shown of several set-ups beside one another: figures, and cars for charts. */
final class SideBySide {

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
        return Shown.of(one.setup().name(), one.setup().look(), one.standing(), one.balance());
    }

    /** The look of a set-up: its colour, line and marker. */
    static int look(Question.Asked asked, String name) {
        return asked.work().scenario().setup(name).orElseThrow().look();
    }

    /** The figures at a pace and at the limit. */
    Table figures(double pace, Direction direction) {
        Columns<TurnedSetup> table = new Columns<>(cars, car -> car.setup().name(), units);
        table.heading("At " + Units.pace(pace));
        AT_THE_PACE.forEach(figure -> table.figureOf(figure, car -> paceRow(car, pace)));
        inside(table, direction, car -> paceRow(car, pace));
        table.heading("At the limit");
        table.figureOf(TurnFigures.LATERAL_ACCELERATION, SideBySide::limitRow);
        table.row(
                "gives out first",
                "",
                car -> car.turn()
                        .map(turn ->
                                LimitWords.tips(turn.limit()) ? "neither: tips over" : LimitWords.first(turn.limit()))
                        .orElse(Table.NOTHING));
        table.figureIfAny(TurnFigures.NEAR_UNDERSTEER, car -> car.turn().map(TurnAnswer.Turns::limit));
        table.figureOf("limit balance", TurnFigures.GRIP_BALANCE, SideBySide::limitRow);
        table.figureOf(TurnFigures.ROLL, SideBySide::limitRow);
        table.figureOf(TurnFigures.SPEED, SideBySide::limitRow);
        inside(table, direction, SideBySide::limitRow);
        return table.table();
    }

    private static void inside(
            Columns<TurnedSetup> table, Direction direction, Function<TurnedSetup, Optional<TurnRow>> rows) {
        for (End end : End.values()) {
            Wheel wheel = Wheel.inside(end, direction);
            table.figureOf(
                    "load of the inside " + EventWords.end(end),
                    TurnFigures.LOAD,
                    car -> rows.apply(car).map(row -> row.wheel(wheel)));
        }
    }

    private static Optional<TurnRow> paceRow(TurnedSetup car, double pace) {
        return car.reaches(pace) ? car.row(pace) : Optional.empty();
    }

    private static Optional<TurnRow> limitRow(TurnedSetup car) {
        return car.turn().map(turn -> turn.limit().row());
    }
}
