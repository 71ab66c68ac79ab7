package evenhand.terminal.balance;

import evenhand.answers.HandSumFigures;
import evenhand.answers.Trial;
import evenhand.answers.TurnFigures;
import evenhand.car.LoadCase;
import evenhand.forms.Contents;
import evenhand.handsums.HandSums;
import evenhand.handsums.UndersteerBudget;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.terminal.reply.Reply;
import evenhand.terminal.reply.SetupAnswer;
import evenhand.terminal.reply.SetupTurn;
import evenhand.terminal.reply.SharedParts;
import evenhand.terminal.reply.Written;
import evenhand.turn.Along;
import evenhand.turn.Limit;
import evenhand.turn.PaceAnswer;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnEvent;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import evenhand.turn.WheelState;
import evenhand.words.BothWays;
import evenhand.words.EventWords;
import evenhand.words.Units;
import evenhand.words.balance.AgainstSteady;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** What {@code balance} answers. */
record BalanceReply(
        Scenario scenario,
        Trial trial,
        Optional<Along> along,
        List<SetupTurn> setups,
        List<AtRadius> atRadius,
        boolean full)
        implements Reply {
    /** The same set-ups on another circle. */
    record AtRadius(double radius, List<SetupTurn> setups) {
        AtRadius {
            setups = List.copyOf(setups);
        }
    }

    private static final String BUDGET = TurnFigures.BUDGET_KEY;

    private static final Contents<WheelState> WHEEL =
            Contents.of(WheelState.class).figures(TurnFigures.WHEEL);

    private static final Contents<TurnRow> WHEELS = wheels();

    private static final Contents<TurnRow> CHANGING = Contents.of(TurnRow.class)
            .withIfAny(
                    TurnRow::changing,
                    Contents.of(TurnRow.Changing.class)
                            .number("alongAcceleration_g", changing -> SharedParts.inG(changing.acceleration()))
                            .number("brakeForce_N", TurnRow.Changing::brakeForce));

    private static final Contents<TurnRow> ROW = Contents.of(TurnRow.class)
            .figures(TurnFigures.ROW)
            .with(row -> row, CHANGING)
            .part("wheels", row -> row, WHEELS);

    private static final Contents<PaceAnswer.InBalance> IN_BALANCE = Contents.of(PaceAnswer.InBalance.class)
            .with(PaceAnswer.InBalance::row, ROW)
            .withIfAny(
                    AgainstSteady::of,
                    Contents.of(AgainstSteady.class)
                            .text("liftOff", AgainstSteady::key)
                            .number("liftOffSteer_deg", AgainstSteady::steerInDegrees))
            .part(
                    BUDGET,
                    PaceAnswer.InBalance::budget,
                    Contents.of(PaceAnswer.Budget.class).named(TurnFigures.BUDGET));

    /** Between the limit and the fold there is a balance, though the car does not hold it by itself. */
    private static final Contents<PaceAnswer.BeyondLimit> BEYOND_LIMIT = Contents.of(PaceAnswer.BeyondLimit.class)
            .withIfAny(PaceAnswer.BeyondLimit::steered, IN_BALANCE)
            .numberIfAny(
                    SharedParts.LATERAL_ACCELERATION,
                    pace -> pace.steered().isPresent()
                            ? OptionalDouble.empty()
                            : OptionalDouble.of(SharedParts.inG(pace.lateralAcceleration())))
            .mark("beyondLimit", pace -> true);

    private static final Contents<PaceAnswer> PACE = Contents.of(PaceAnswer.class)
            .where(PaceAnswer.InBalance.class, IN_BALANCE)
            .where(PaceAnswer.BeyondLimit.class, BEYOND_LIMIT);

    private static final Contents<Limit> LIMIT = Contents.of(Limit.class)
            .number(SharedParts.LATERAL_ACCELERATION, limit -> SharedParts.inG(limit.lateralAcceleration()))
            .textIfAny("firstAxle", limit -> limit.firstAxle().map(EventWords::end))
            .text("cause", limit -> limit.cause().key())
            .textIfAny("wheel", limit -> limit.spinningWheel().map(Wheel::key))
            .textIfAny("axle", limit -> limit.endOfLinks().map(end -> EventWords.end(end.axle())))
            .textIfAny("part", limit -> limit.endOfLinks().map(Limit.EndOfLinks::part))
            .numberIfAny("limitBalance", limit -> TurnFigures.GRIP_BALANCE.value(limit.row()))
            .with(
                    Limit::row,
                    Contents.of(TurnRow.class)
                            .figure(TurnFigures.FRONT_GRIP_USED)
                            .figure(TurnFigures.REAR_GRIP_USED))
            .figure(TurnFigures.NEAR_UNDERSTEER)
            .figure(TurnFigures.FOLD)
            .withIfAny(
                    limit -> limit.cause() == Limit.Cause.CRITICAL_SPEED ? Optional.of(limit.row()) : Optional.empty(),
                    Contents.of(TurnRow.class).figure(TurnFigures.SPEED));

    private static final Contents<Placed<TurnEvent>> EVENT = BalanceReply.<TurnEvent>placed()
            .with(
                    Placed::what,
                    Contents.of(TurnEvent.class)
                            .number(
                                    SharedParts.LATERAL_ACCELERATION,
                                    event -> SharedParts.inG(event.lateralAcceleration()))
                            .text("kind", event -> event.kind().key())
                            .textIfAny("axle", event -> event.axle().map(EventWords::end))
                            .textIfAny("wheel", event -> event.wheel().map(Wheel::key))
                            .text("text", EventWords::sentence))
            .mark("beyondLimit", Placed::beyondLimit);

    /** One way round. */
    private static final Contents<TurnAnswer.Turns> TURN = Contents.of(TurnAnswer.Turns.class)
            .list("paces", TurnAnswer.Turns::paces, PACE)
            .part("limit", TurnAnswer.Turns::limit, LIMIT)
            .list("events", BalanceReply::events, EVENT);

    private static final Contents<HandSums> HAND_SUMS = Contents.of(HandSums.class)
            .figures(HandSumFigures.ALL)
            .part(BUDGET, HandSums::budget, Contents.of(UndersteerBudget.class).named(HandSumFigures.BUDGET));

    private static final Contents<SetupTurn.Turned> TURNED = Contents.of(SetupTurn.Turned.class)
            .sentences("words", turned -> turned.words(Units.METRIC))
            .part("handSums", SetupTurn.Turned::sums, HAND_SUMS)
            .with(SetupTurn.Turned::turn, TURN)
            .list(
                    "turn",
                    turned -> rows(turned.turn()),
                    BalanceReply.<TurnRow>placed().with(Placed::what, ROW).mark("beyondLimit", Placed::beyondLimit));

    private static final Contents<TurnAnswer> OTHER_TURN = Contents.of(TurnAnswer.class)
            .where(
                    TurnAnswer.Turns.class,
                    Contents.of(TurnAnswer.Turns.class)
                            .text("turn", turn -> turn.direction().key())
                            .with(turn -> turn, TURN))
            .where(
                    TurnAnswer.NoTurn.class,
                    Contents.of(TurnAnswer.NoTurn.class)
                            .part("noAnswer", SetupAnswer.NoAnswer::of, SharedParts.NO_ANSWER));

    private static final Contents<SetupTurn> SETUP = SharedParts.setup(
            SetupTurn.class,
            Contents.of(SetupTurn.class)
                    .where(SetupTurn.Turned.class, TURNED)
                    .mark("alike", SetupTurn::alike)
                    .partIfAny("otherTurn", SetupTurn::otherTurn, OTHER_TURN));

    private static final Contents<BalanceReply> REPLY = Contents.of(BalanceReply.class)
            .with(reply -> reply, SharedParts.OPENING)
            .number("radius_m", reply -> reply.trial().radius())
            .text("turn", reply -> reply.trial().direction().key())
            .withIfAny(
                    BalanceReply::along,
                    Contents.of(Along.class)
                            .number("along_g", along -> SharedParts.inG(along.acceleration()))
                            .text("by", along -> along.by().key()))
            .list("setups", BalanceReply::setups, SETUP)
            .listIfAny(
                    "atRadius",
                    BalanceReply::atRadius,
                    Contents.of(AtRadius.class)
                            .number("radius_m", AtRadius::radius)
                            .list("setups", AtRadius::setups, SETUP));

    /** In CSV a row per lateral acceleration. */
    private static final Contents<SetupTurn.Turned> ROWS =
            rowsOf(Contents.of(TurnRow.class).figures(TurnFigures.ROW).with(row -> row, WHEELS));

    private static final Contents<SetupTurn.Turned> ROWS_ALONG = rowsOf(Contents.of(TurnRow.class)
            .figures(TurnFigures.ROW)
            .with(row -> row, CHANGING)
            .with(row -> row, WHEELS));

    private static Contents<SetupTurn.Turned> rowsOf(Contents<TurnRow> row) {
        return Contents.of(SetupTurn.Turned.class)
                .text("setup", turned -> turned.setup().name())
                .list(
                        "turn",
                        turned -> rows(turned.turn()),
                        BalanceReply.<TurnRow>placed()
                                .with(Placed::what, row)
                                .mark("beyondLimit", Placed::beyondLimit));
    }

    /** A row or an event, and whether it lies beyond the limit. */
    record Placed<T>(T what, boolean beyondLimit) {}

    private static <T> Contents<Placed<T>> placed() {
        return Contents.ofAny();
    }

    private static List<Placed<TurnRow>> rows(TurnAnswer.Turns turn) {
        return turn.rows().stream()
                .map(row -> new Placed<>(row, turn.isBeyondLimit(row.lateralAcceleration())))
                .toList();
    }

    private static List<Placed<TurnEvent>> events(TurnAnswer.Turns turn) {
        return turn.events().stream()
                .map(event -> new Placed<>(event, turn.isBeyondLimit(event.lateralAcceleration())))
                .toList();
    }

    BalanceReply {
        setups = List.copyOf(setups);
        atRadius = List.copyOf(atRadius);
    }

    /** Asks the set-ups of a scenario on every circle of a trial. */
    static BalanceReply of(Scenario scenario, List<Setup> setups, Trial trial, Optional<Along> along, boolean full) {
        List<AtRadius> circles = trial.radii().stream()
                .map(radius -> new AtRadius(
                        radius,
                        setups.stream()
                                .map(setup -> SetupTurn.of(setup, trial.onCircle(radius), along.orElse(Along.NONE)))
                                .toList()))
                .toList();
        return new BalanceReply(
                scenario, trial, along, circles.get(0).setups(), circles.subList(1, circles.size()), full);
    }

    /** Every set-up on every circle. */
    Stream<SetupTurn> everywhere() {
        return Stream.concat(setups.stream(), atRadius.stream().flatMap(circle -> circle.setups().stream()));
    }

    @Override
    public boolean complete() {
        return everywhere()
                .allMatch(one -> one.noAnswer().isEmpty() && one.silentWay().isEmpty());
    }

    /** Whether one way round alone has an answer, that is said with the way. */
    @Override
    public List<String> silent(Units units) {
        return circles().stream()
                .flatMap(circle ->
                        circle.setups().stream().flatMap(one -> silences(one, circle.radius(), units).stream()))
                .map(silence -> noAnswer(silence.setup(), silence.why()))
                .toList();
    }

    /** That a set-up has no answer, one way round or both, on a circle. */
    record Silence(String setup, String why) {}

    /** What is not answered of a set-up on a circle, with the way and the circle where there are others. */
    List<Silence> silences(SetupTurn one, double radius, Units units) {
        String on = atRadius.isEmpty() ? "" : " (on " + units.radius(radius) + ")";
        boolean half = one instanceof SetupTurn.OnlyTheOtherWay;
        List<Silence> silences = new ArrayList<>();
        one.noAnswer()
                .ifPresent(none -> silences.add(new Silence(
                        one.setup().name(),
                        (half ? BothWays.turning(trial.direction()) + ": " : "") + none.text() + on)));
        one.silentWay()
                .ifPresent(why -> silences.add(new Silence(
                        one.setup().name(), BothWays.turning(trial.direction().other()) + ": " + why + on)));
        return silences;
    }

    /** Every circle, the first one too. */
    List<AtRadius> circles() {
        return Stream.concat(Stream.of(new AtRadius(trial.radius(), setups)), atRadius.stream())
                .toList();
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

    /** The set-ups that turn. */
    List<SetupTurn.Turned> turned() {
        return Reply.only(SetupTurn.Turned.class, setups);
    }

    @Override
    public Written written() {
        return Written.of(
                "balance",
                REPLY,
                this,
                Written.Csv.of(along.isPresent() ? ROWS_ALONG : ROWS, this::turned),
                (console, units) ->
                        full ? new BalanceTables(console, units).write(this) : BalancePage.write(this, console, units));
    }
}
