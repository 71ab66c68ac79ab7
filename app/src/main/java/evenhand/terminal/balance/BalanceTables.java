package evenhand.terminal.balance;

import evenhand.answers.Figure;
import evenhand.answers.HandSumFigures;
import evenhand.answers.Trial;
import evenhand.answers.TurnFigures;
import evenhand.answers.Ways;
import evenhand.car.End;
import evenhand.forms.Columns;
import evenhand.forms.Table;
import evenhand.quantity.Dimension;
import evenhand.scenario.Scenario;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.Page;
import evenhand.terminal.reply.Reply;
import evenhand.terminal.reply.SetupNotes;
import evenhand.terminal.reply.SetupTurn;
import evenhand.turn.Direction;
import evenhand.turn.PaceAnswer;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnEvent;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import evenhand.words.BothWays;
import evenhand.words.EventWords;
import evenhand.words.LoadWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.balance.AlongWords;
import evenhand.words.balance.BalanceWords;
import evenhand.words.balance.LimitWords;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The answers of {@code balance} for people: set-ups side by side, then in words. */
final class BalanceTables {
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

    private final Page page;
    private final Units units;

    BalanceTables(Console console, Units units) {
        this.page = new Page(console);
        this.units = units;
    }

    String write(BalanceReply answer) {
        Scenario scenario = answer.scenario();
        page.title(scenario.title());
        scenario.story().ifPresent(story -> page.paragraph("", story));
        for (BalanceReply.AtRadius circle : answer.circles()) {
            String on = answer.atRadius().isEmpty() ? "" : ", on " + units.radius(circle.radius());
            for (SetupTurn.Turned turned : Reply.only(SetupTurn.Turned.class, circle.setups())) {
                turned.split()
                        .ifPresent(split ->
                                page.paragraph(BothWays.WARNING, turned.setup().name() + on + ": " + split));
            }
        }
        answer.trial().load().ifPresent(load -> page.paragraph("", LoadWords.aboard(load, units)));
        answer.circles().forEach(circle -> circle(answer, circle));
        SetupNotes notes = new SetupNotes(page, units);
        notes.estimated(answer.setups());
        notes.notGiven(answer.setups().stream().map(SetupTurn::setup).toList());
        return page.text();
    }

    /** All that the set-ups answer on one circle. */
    private void circle(BalanceReply answer, BalanceReply.AtRadius circle) {
        Trial trial = answer.trial();
        page.blank();
        page.paragraph(
                "",
                "A steady " + trial.direction().key() + " turn on a circle of " + units.radius(circle.radius())
                        + " radius"
                        + (trial.ways() == Ways.BOTH
                                ? "; where the other way is another turn, the words say so."
                                : "."));
        List<SetupTurn.Turned> turned = Reply.only(SetupTurn.Turned.class, circle.setups());
        if (!turned.isEmpty()) {
            page.table(table(turned, trial.direction()));
        }
        for (SetupTurn one : circle.setups()) {
            words(answer, circle.radius(), one);
        }
        events(turned);
    }

    private Table table(List<SetupTurn.Turned> answers, Direction direction) {
        Columns<SetupTurn.Turned> table =
                new Columns<>(answers, answer -> answer.setup().name(), units);
        table.heading("Hand sums, as lateral acceleration begins");
        HandSumFigures.ALL.forEach(figure -> table.figure(figure, SetupTurn.Turned::sums));
        table.heading("Understeer gradient of the hand sums, part by part");
        HandSumFigures.BUDGET.forEach(
                figure -> table.figure(figure, answer -> answer.sums().budget()));
        List<PaceAnswer> paces = answers.get(0).turn().paces();
        for (int i = 0; i < paces.size(); i++) {
            int index = i;
            table.heading("At " + Units.pace(paces.get(i).lateralAcceleration()));
            pace(table, answers, direction, answer -> inBalance(answer, index));
        }
        limit(table, direction);
        return table.table();
    }

    private static Optional<PaceAnswer.InBalance> inBalance(SetupTurn.Turned answer, int pace) {
        return answer.turn().paces().get(pace) instanceof PaceAnswer.InBalance balance
                ? Optional.of(balance)
                : Optional.empty();
    }

    private static void pace(
            Columns<SetupTurn.Turned> table,
            List<SetupTurn.Turned> answers,
            Direction direction,
            Function<SetupTurn.Turned, Optional<PaceAnswer.InBalance>> pace) {
        if (answers.stream().anyMatch(answer -> pace.apply(answer).isEmpty())) {
            table.row("can it be driven?", "", answer -> pace.apply(answer).isPresent() ? "" : "beyond the limit");
        }
        if (answers.stream().allMatch(answer -> pace.apply(answer).isEmpty())) {
            return;
        }
        Function<SetupTurn.Turned, Optional<TurnRow>> row =
                answer -> pace.apply(answer).map(PaceAnswer.InBalance::row);
        for (Figure<TurnRow> figure : AT_A_PACE) {
            table.figureOf(figure, row);
            if (figure.equals(TurnFigures.UNDERSTEER_GRADIENT)) {
                TurnFigures.BUDGET.forEach(part -> table.figureOf(
                        "  " + part.words(), part, answer -> pace.apply(answer).map(PaceAnswer.InBalance::budget)));
            }
        }
        inside(table, direction, row);
    }

    private static void limit(Columns<SetupTurn.Turned> table, Direction direction) {
        Function<SetupTurn.Turned, Optional<TurnRow>> row =
                answer -> Optional.of(answer.turn().limit().row());
        table.heading("At the limit");
        table.figureOf(TurnFigures.LATERAL_ACCELERATION, row);
        table.row(
                "gives out first", "", answer -> LimitWords.first(answer.turn().limit()));
        table.row("cause", "", answer -> LimitWords.cause(answer.turn().limit()));
        table.rowIfAny(
                "spinning wheel",
                "",
                answer ->
                        answer.turn().limit().spinningWheel().map(Wheel::words).orElse(Table.NOTHING));
        table.figure(TurnFigures.NEAR_UNDERSTEER, answer -> answer.turn().limit());
        table.figureOf("limit balance", TurnFigures.GRIP_BALANCE, row);
        AT_THE_LIMIT.forEach(figure -> table.figureOf(figure, row));
        inside(table, direction, row);
    }

    private static void inside(
            Columns<SetupTurn.Turned> table, Direction direction, Function<SetupTurn.Turned, Optional<TurnRow>> rows) {
        for (End end : End.values()) {
            Wheel wheel = Wheel.inside(end, direction);
            table.figureOf(
                    "load of the inside " + EventWords.end(wheel.end()),
                    TurnFigures.LOAD,
                    answer -> rows.apply(answer).map(row -> row.wheel(wheel)));
        }
    }

    private void words(BalanceReply answer, double radius, SetupTurn one) {
        page.heading(one.setup().name());
        one.setup().note().ifPresent(note -> page.paragraph("  ", "(" + note + ")"));
        for (BalanceReply.Silence silence : answer.silences(one, radius, units)) {
            page.paragraph("  ", "No answer: " + silence.why() + ".");
        }
        if (one instanceof SetupTurn.Turned turned) {
            turned.sits(units).ifPresent(sits -> page.paragraph("  ", sits));
            page.sentences(AlongWords.of(turned.turn(), turned.otherTurn()));
            page.sentences(BalanceWords.ofTurn(
                    turned.sums(), turned.turn(), turned.otherTurn().orElse(turned.turn()), units));
        } else if (one instanceof SetupTurn.OnlyTheOtherWay other) {
            TurnAnswer.Turns turns = other.turns();
            page.paragraph(
                    "  ",
                    "T" + BothWays.turning(turns.direction()).substring(1) + " " + LimitWords.brief(turns.limit())
                            + ".");
        }
    }

    private void events(List<SetupTurn.Turned> answers) {
        if (answers.isEmpty()) {
            return;
        }
        page.heading("On the way to the limit");
        for (SetupTurn.Turned answer : answers) {
            TurnAnswer.Turns turn = answer.turn();
            page.line("  " + answer.setup().name());
            if (turn.eventsToLimit().isEmpty()) {
                page.line("    nothing touches a stop, comes loose or lifts");
            }
            for (TurnEvent event : turn.eventsToLimit()) {
                String at = Numbers.fixed(Dimension.ACCELERATION.metric().fromSi(event.lateralAcceleration()), 3);
                page.paragraph("    " + at + " g  ", EventWords.happening(event));
            }
        }
    }
}
