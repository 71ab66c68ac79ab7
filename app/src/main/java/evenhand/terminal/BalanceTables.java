package evenhand.terminal;

import evenhand.answers.Figure;
import evenhand.answers.HandSumFigures;
import evenhand.answers.Trial;
import evenhand.answers.TurnFigures;
import evenhand.car.End;
import evenhand.handsums.HandSums;
import evenhand.handsums.UndersteerBudget;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.scenario.Scenario;
import evenhand.turn.Direction;
import evenhand.turn.Limit;
import evenhand.turn.PaceAnswer;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnEvent;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import evenhand.turn.WheelState;
import evenhand.words.BalanceWords;
import evenhand.words.EventWords;
import evenhand.words.GripText;
import evenhand.words.LimitWords;
import evenhand.words.LoadWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** The answers of {@code balance} for people: set-ups side by side, then in words. */
final class BalanceTables {
    private static final String NOTHING = "–";

    private static final List<Figure<TurnRow>> AT_A_PACE = List.of(
            TurnFigures.UNDERSTEER_GRADIENT,
            TurnFigures.STEER,
            TurnFigures.SIDESLIP,
            TurnFigures.ROLL,
            TurnFigures.ROLL_GRADIENT,
            TurnFigures.FRONT_LOAD_TRANSFER,
            TurnFigures.REAR_LOAD_TRANSFER,
            TurnFigures.FRONT_LOAD_TRANSFER_SHARE,
            TurnFigures.FRONT_GRIP_USED,
            TurnFigures.REAR_GRIP_USED,
            TurnFigures.GRIP_BALANCE,
            TurnFigures.FRONT_ROLL_CENTRE_HEIGHT,
            TurnFigures.REAR_ROLL_CENTRE_HEIGHT,
            TurnFigures.SPEED);

    private static final List<Figure<TurnRow>> AT_THE_LIMIT = List.of(
            TurnFigures.FRONT_GRIP_USED,
            TurnFigures.REAR_GRIP_USED,
            TurnFigures.STEER,
            TurnFigures.SIDESLIP,
            TurnFigures.ROLL,
            TurnFigures.FRONT_LOAD_TRANSFER_SHARE,
            TurnFigures.SPEED);

    private final Console console;
    private final Units units;
    private final StringBuilder text = new StringBuilder();

    BalanceTables(Console console, Units units) {
        this.console = console;
        this.units = units;
    }

    String write(BalanceReply answer) {
        Scenario scenario = answer.scenario();
        Trial trial = answer.trial();
        List<SetupTurn> answers = answer.setups();
        text.append(Paint.bold(Console.oneLine(scenario.title()), console)).append('\n');
        scenario.story().ifPresent(story -> Paragraph.append(text, "", story, console.columns()));
        Direction direction = trial.direction();
        text.append("\nA steady ").append(direction.key());
        text.append(" turn on a circle of ").append(radius(trial.radius())).append(" radius.\n");
        trial.load().ifPresent(load -> Paragraph.append(text, "", LoadWords.aboard(load, units), console.columns()));
        List<SetupTurn.Turned> turned = answer.turned();
        if (!turned.isEmpty()) {
            text.append('\n').append(table(turned, direction).text(console));
        }
        words(answers);
        events(turned);
        SetupNotes notes = new SetupNotes(text, console, units);
        notes.estimated(answers);
        notes.warnings(answers);
        return text.toString();
    }

    private String radius(double radius) {
        Unit unit = Unit.of(units == Units.METRIC ? "m" : "ft");
        return Numbers.plain(unit.fromSi(radius), 1) + " " + unit.symbol();
    }

    private Table table(List<SetupTurn.Turned> answers, Direction direction) {
        List<String> names = new ArrayList<>();
        for (SetupTurn.Turned answer : answers) {
            names.add(answer.setup().name());
        }
        Table table = new Table(names);
        table.heading("Hand sums, as lateral acceleration begins");
        for (Figure<HandSums> figure : HandSumFigures.ALL) {
            row(table, figure, answers, SetupTurn.Turned::sums);
        }
        table.heading("Understeer gradient of the hand sums, part by part");
        for (Figure<UndersteerBudget> figure : HandSumFigures.BUDGET) {
            row(table, figure, answers, answer -> answer.sums().budget());
        }
        List<PaceAnswer> paces = answers.get(0).turn().paces();
        for (int i = 0; i < paces.size(); i++) {
            pace(table, answers, direction, i, Units.pace(paces.get(i).lateralAcceleration()));
        }
        limit(table, answers, direction);
        return table;
    }

    private void pace(Table table, List<SetupTurn.Turned> answers, Direction direction, int index, String pace) {
        List<PaceAnswer> paces = new ArrayList<>();
        List<TurnRow> rows = new ArrayList<>();
        for (SetupTurn.Turned answer : answers) {
            PaceAnswer one = answer.turn().paces().get(index);
            paces.add(one);
            if (one instanceof PaceAnswer.InBalance balance) {
                rows.add(balance.row());
            }
        }
        table.heading("At " + pace);
        if (rows.size() < paces.size()) {
            List<String> cells = new ArrayList<>();
            for (PaceAnswer one : paces) {
                cells.add(one instanceof PaceAnswer.InBalance ? "" : "beyond the limit");
            }
            table.row("can it be driven?", "", cells);
        }
        if (rows.isEmpty()) {
            return;
        }
        for (Figure<TurnRow> figure : AT_A_PACE) {
            table.row(figure.words(), symbol(figure), paceCells(figure, paces, PaceAnswer.InBalance::row));
            if (figure.equals(TurnFigures.UNDERSTEER_GRADIENT)) {
                for (Figure<PaceAnswer.Budget> part : TurnFigures.BUDGET) {
                    table.row("  " + part.words(), symbol(part), paceCells(part, paces, PaceAnswer.InBalance::budget));
                }
            }
        }
        for (Wheel wheel : inside(direction)) {
            table.row(
                    insideLoad(wheel),
                    symbol(TurnFigures.LOAD),
                    paceCells(TurnFigures.LOAD, paces, balance -> balance.row().wheel(wheel)));
        }
    }

    private <T> List<String> paceCells(
            Figure<T> figure, List<PaceAnswer> paces, Function<PaceAnswer.InBalance, T> part) {
        List<String> cells = new ArrayList<>();
        for (PaceAnswer pace : paces) {
            cells.add(pace instanceof PaceAnswer.InBalance balance ? cell(figure, part.apply(balance)) : NOTHING);
        }
        return cells;
    }

    private void limit(Table table, List<SetupTurn.Turned> answers, Direction direction) {
        table.heading("At the limit");
        row(table, TurnFigures.LATERAL_ACCELERATION, answers, BalanceTables::limitRow);
        List<String> first = new ArrayList<>();
        List<String> cause = new ArrayList<>();
        List<String> wheel = new ArrayList<>();
        for (SetupTurn.Turned answer : answers) {
            Limit limit = answer.turn().limit();
            first.add(LimitWords.first(limit));
            cause.add(LimitWords.cause(limit));
            wheel.add(limit.spinningWheel().map(Wheel::words).orElse(NOTHING));
        }
        table.row("gives out first", "", first);
        table.row("cause", "", cause);
        if (!wheel.stream().allMatch(NOTHING::equals)) {
            table.row("spinning wheel", "", wheel);
        }
        List<String> balance = new ArrayList<>();
        for (SetupTurn.Turned answer : answers) {
            balance.add(cell(TurnFigures.GRIP_BALANCE, limitRow(answer)));
        }
        table.row("limit balance", symbol(TurnFigures.GRIP_BALANCE), balance);
        for (Figure<TurnRow> figure : AT_THE_LIMIT) {
            row(table, figure, answers, BalanceTables::limitRow);
        }
        for (Wheel inside : inside(direction)) {
            List<String> cells = new ArrayList<>();
            for (SetupTurn.Turned answer : answers) {
                WheelState state = limitRow(answer).wheel(inside);
                cells.add(cell(TurnFigures.LOAD, state));
            }
            table.row(insideLoad(inside), symbol(TurnFigures.LOAD), cells);
        }
    }

    private static TurnRow limitRow(SetupTurn.Turned answer) {
        return answer.turn().limit().row();
    }

    private static List<Wheel> inside(Direction direction) {
        return List.of(Wheel.inside(End.FRONT, direction), Wheel.inside(End.REAR, direction));
    }

    private static String insideLoad(Wheel wheel) {
        return "load of the inside " + EventWords.end(wheel.end());
    }

    private <T> void row(
            Table table, Figure<T> figure, List<SetupTurn.Turned> answers, Function<SetupTurn.Turned, T> part) {
        List<String> cells = new ArrayList<>();
        for (SetupTurn.Turned answer : answers) {
            cells.add(cell(figure, part.apply(answer)));
        }
        table.row(figure.words(), symbol(figure), cells);
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

    private void words(List<SetupTurn> answers) {
        for (SetupTurn answer : answers) {
            text.append('\n').append(Paint.bold(answer.setup().name(), console)).append('\n');
            answer.setup().note().ifPresent(note -> Paragraph.append(text, "  ", "(" + note + ")", console.columns()));
            if (answer instanceof SetupTurn.Turned turned) {
                turned.sits(units).ifPresent(sits -> Paragraph.append(text, "  ", sits, console.columns()));
                for (String sentence : BalanceWords.ofTurn(
                        turned.sums(), turned.turn(), turned.otherTurn().orElse(turned.turn()), units)) {
                    Paragraph.append(text, "  ", sentence, console.columns());
                }
            } else if (answer instanceof SetupAnswer.None none) {
                Paragraph.append(text, "  ", none.sentence(), console.columns());
            }
        }
    }

    private void events(List<SetupTurn.Turned> answers) {
        if (answers.isEmpty()) {
            return;
        }
        text.append('\n').append(Paint.bold("On the way to the limit", console)).append('\n');
        for (SetupTurn.Turned answer : answers) {
            TurnAnswer.Turns turn = answer.turn();
            text.append("  ").append(answer.setup().name()).append('\n');
            if (turn.events().isEmpty()) {
                text.append("    nothing touches a stop, comes loose or lifts\n");
            }
            for (TurnEvent event : turn.events()) {
                String at = Numbers.fixed(Dimension.ACCELERATION.metric().fromSi(event.lateralAcceleration()), 3);
                Paragraph.append(text, "    " + at + " g  ", EventWords.happening(event), console.columns());
            }
        }
    }
}
