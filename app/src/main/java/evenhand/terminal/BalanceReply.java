package evenhand.terminal;

import evenhand.answers.HandSumFigures;
import evenhand.answers.Trial;
import evenhand.answers.TurnFigures;
import evenhand.car.LoadCase;
import evenhand.forms.Contents;
import evenhand.forms.CsvForm;
import evenhand.forms.JsonForm;
import evenhand.handsums.HandSums;
import evenhand.handsums.UndersteerBudget;
import evenhand.scenario.Scenario;
import evenhand.turn.Limit;
import evenhand.turn.PaceAnswer;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnEvent;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import evenhand.turn.WheelState;
import evenhand.words.EventWords;
import evenhand.words.Units;
import java.util.List;
import java.util.Optional;

/** What {@code balance} answers. */
record BalanceReply(Scenario scenario, Trial trial, List<SetupTurn> setups) implements Reply {
    private static final String BUDGET = TurnFigures.BUDGET_KEY;

    private static final Contents<WheelState> WHEEL =
            Contents.of(WheelState.class).figures(TurnFigures.WHEEL);

    private static final Contents<TurnRow> WHEELS = wheels();

    private static final Contents<TurnRow> ROW =
            Contents.of(TurnRow.class).figures(TurnFigures.ROW).part("wheels", row -> row, WHEELS);

    private static final Contents<PaceAnswer> PACE = Contents.of(PaceAnswer.class)
            .where(
                    PaceAnswer.InBalance.class,
                    Contents.of(PaceAnswer.InBalance.class)
                            .with(PaceAnswer.InBalance::row, ROW)
                            .part(
                                    BUDGET,
                                    PaceAnswer.InBalance::budget,
                                    Contents.of(PaceAnswer.Budget.class).named(TurnFigures.BUDGET)))
            .where(
                    PaceAnswer.BeyondLimit.class,
                    Contents.of(PaceAnswer.BeyondLimit.class)
                            .number(
                                    SharedParts.LATERAL_ACCELERATION,
                                    pace -> SharedParts.inG(pace.lateralAcceleration()))
                            .mark("beyondLimit", pace -> true));

    private static final Contents<Limit> LIMIT = Contents.of(Limit.class)
            .number(SharedParts.LATERAL_ACCELERATION, limit -> SharedParts.inG(limit.lateralAcceleration()))
            .text("firstAxle", limit -> EventWords.end(limit.firstAxle()))
            .text("cause", limit -> limit.spinningWheel().isPresent() ? "wheelspin" : "sideslip")
            .textIfAny("wheel", limit -> limit.spinningWheel().map(Wheel::key))
            .numberIfAny("limitBalance", limit -> TurnFigures.GRIP_BALANCE.value(limit.row()))
            .with(
                    Limit::row,
                    Contents.of(TurnRow.class)
                            .figure(TurnFigures.FRONT_GRIP_USED)
                            .figure(TurnFigures.REAR_GRIP_USED));

    private static final Contents<TurnEvent> EVENT = Contents.of(TurnEvent.class)
            .number(SharedParts.LATERAL_ACCELERATION, event -> SharedParts.inG(event.lateralAcceleration()))
            .text("kind", event -> event.kind().key())
            .textIfAny("axle", event -> event.axle().map(EventWords::end))
            .textIfAny("wheel", event -> event.wheel().map(Wheel::key))
            .text("text", EventWords::sentence);

    /** One way round. */
    private static final Contents<TurnAnswer.Turns> TURN = Contents.of(TurnAnswer.Turns.class)
            .list("paces", TurnAnswer.Turns::paces, PACE)
            .part("limit", TurnAnswer.Turns::limit, LIMIT)
            .list("events", TurnAnswer.Turns::events, EVENT);

    private static final Contents<HandSums> HAND_SUMS = Contents.of(HandSums.class)
            .figures(HandSumFigures.ALL)
            .part(BUDGET, HandSums::budget, Contents.of(UndersteerBudget.class).named(HandSumFigures.BUDGET));

    private static final Contents<SetupTurn.Turned> TURNED = Contents.of(SetupTurn.Turned.class)
            .sentences("words", turned -> turned.words(Units.METRIC))
            .part("handSums", SetupTurn.Turned::sums, HAND_SUMS)
            .with(SetupTurn.Turned::turn, TURN)
            .list("turn", turned -> turned.turn().rows(), ROW);

    private static final Contents<BalanceReply> REPLY = Contents.of(BalanceReply.class)
            .with(reply -> reply, SharedParts.OPENING)
            .number("radius_m", reply -> reply.trial().radius())
            .text("turn", reply -> SharedParts.way(reply.trial().direction()))
            .list(
                    "setups",
                    BalanceReply::setups,
                    SharedParts.setup(
                            SetupTurn.class, Contents.of(SetupTurn.class).where(SetupTurn.Turned.class, TURNED)));

    /** In CSV a row per lateral acceleration. */
    private static final Contents<SetupTurn.Turned> ROWS = Contents.of(SetupTurn.Turned.class)
            .text("setup", turned -> turned.setup().name())
            .list(
                    "turn",
                    turned -> turned.turn().rows(),
                    Contents.of(TurnRow.class).figures(TurnFigures.ROW).with(row -> row, WHEELS));

    BalanceReply {
        setups = List.copyOf(setups);
    }

    private static Contents<TurnRow> wheels() {
        Contents<TurnRow> wheels = Contents.of(TurnRow.class);
        for (Wheel wheel : Wheel.values()) {
            wheels = wheels.part(wheel.key(), row -> row.wheel(wheel), WHEEL);
        }
        return wheels;
    }

    @Override
    public Optional<LoadCase> load() {
        return trial.load();
    }

    @Override
    public String command() {
        return "balance";
    }

    @Override
    public byte[] json() {
        return JsonForm.write(command(), REPLY, this);
    }

    @Override
    public String csv(Units units) {
        return CsvForm.write(ROWS, turned(), units);
    }

    @Override
    public String text(Console console, Units units) {
        return new BalanceTables(console, units).write(this);
    }

    /** The set-ups that turn. */
    List<SetupTurn.Turned> turned() {
        return Reply.only(SetupTurn.Turned.class, setups);
    }
}
