package evenhand.terminal.brakes;

import evenhand.answers.BrakeFigures;
import evenhand.car.LoadCase;
import evenhand.forms.Contents;
import evenhand.scenario.Scenario;
import evenhand.straight.BrakeRule;
import evenhand.straight.Braking;
import evenhand.terminal.reply.Reply;
import evenhand.terminal.reply.SharedParts;
import evenhand.terminal.reply.Written;
import evenhand.words.Units;
import evenhand.words.brakes.BrakeWords;
import evenhand.words.brakes.BrakedSetup.Braked;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** What {@code brakes} answers. */
record BrakesReply(Scenario scenario, Optional<LoadCase> load, Braking.Asked asked, List<SetupBrakes> setups)
        implements Reply {
    /** A row of a spreadsheet. */
    private record SetupRow(String setup, Braking.Row row) {}

    private static final Contents<Braking.Row> ROW =
            Contents.of(Braking.Row.class).figures(BrakeFigures.ROW);

    private static final Contents<Braking.Lock> LOCK = Contents.of(Braking.Lock.class)
            .numberIfAny("friction", Braking.Lock::friction)
            .mark("tyres", lock -> lock.friction().isEmpty())
            .withIfAny(
                    Braking.Lock::locks,
                    Contents.of(Braking.Locks.class)
                            .text("firstAxle", locks -> locks.axle().key())
                            .text("firstWheel", locks -> locks.wheel().key())
                            .figure(BrakeFigures.LOCK_AT))
            .numberIfAny("efficiency", Braking.Lock::efficiency);

    private static final Contents<BrakeRule> RULE = Contents.of(BrakeRule.class)
            .text("rule", BrakeRule::name)
            .flag("met", BrakeRule::met)
            .numberIfAny("orderMargin", rule -> margin(rule.order()))
            .numberIfAny("orderAt_g", rule -> at(rule.order()))
            .numberIfAny("inversionMargin", BrakeRule::inversionMargin)
            .numberIfAny("useMargin", rule -> margin(rule.use()))
            .numberIfAny("useAt_g", rule -> at(rule.use()))
            .textIfAny("useAxle", rule -> rule.use().map(margin -> margin.axle().key()));

    private static final Contents<Braking.Stop> STOP = Contents.of(Braking.Stop.class)
            .figure(BrakeFigures.STOP_PEDAL)
            .figure(BrakeFigures.STOP_AT)
            .flag("locks", Braking.Stop::locks)
            .numberIfAny("distance_m", Braking.Stop::distance);

    private static final Contents<Braking.Answer> ANSWER = Contents.of(Braking.Answer.class)
            .list("rows", Braking.Answer::rows, ROW)
            .list("lock", Braking.Answer::locks, LOCK)
            .numbers(
                    "crossings_g",
                    answer -> answer.crossings().stream()
                            .map(crossing -> SharedParts.inG(crossing.deceleration()))
                            .toList())
            .numberIfAny("rearLocksAbove_g", answer -> SharedParts.inG(answer.rearLocksAbove()))
            .list("rules", Braking.Answer::rules, RULE)
            .listIfAny("stops", Braking.Answer::stops, STOP);

    private static final Contents<Braked> BRAKED = Contents.of(Braked.class)
            .sentences(
                    "words",
                    braked -> Stream.concat(braked.words(Units.METRIC).stream(), BrakeWords.CAUTIONS.stream())
                            .toList())
            .with(Braked::answer, ANSWER);

    private static final Contents<BrakesReply> REPLY = Contents.of(BrakesReply.class)
            .with(reply -> reply, SharedParts.OPENING)
            .number("speed_m_per_s", reply -> reply.asked().speed())
            .flag("booster", reply -> reply.asked().boosted())
            .list(
                    "setups",
                    BrakesReply::setups,
                    SharedParts.setup(
                            SetupBrakes.class, Contents.of(SetupBrakes.class).withIfAny(SetupBrakes::braked, BRAKED)));

    private static final Contents<SetupRow> ROWS =
            Contents.of(SetupRow.class).text("setup", SetupRow::setup).with(SetupRow::row, ROW);

    BrakesReply {
        setups = List.copyOf(setups);
    }

    private static OptionalDouble margin(Optional<BrakeRule.Margin> of) {
        return of.map(margin -> OptionalDouble.of(margin.margin())).orElseGet(OptionalDouble::empty);
    }

    private static OptionalDouble at(Optional<BrakeRule.Margin> of) {
        return of.map(margin -> OptionalDouble.of(margin.at())).orElseGet(OptionalDouble::empty);
    }

    private List<SetupRow> rows() {
        return setups.stream()
                .flatMap(one -> one.braked().stream())
                .flatMap(braked -> braked.answer().rows().stream()
                        .map(row -> new SetupRow(braked.setup().name(), row)))
                .toList();
    }

    @Override
    public Written written() {
        return Written.of(
                "brakes",
                REPLY,
                this,
                Written.Csv.of(ROWS, this::rows),
                (console, units) -> new BrakesTables(console, units, this).write());
    }
}
