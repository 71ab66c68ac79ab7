package evenhand.terminal.roadtest;

import evenhand.answers.Criterion;
import evenhand.car.LoadCase;
import evenhand.doubt.Spread;
import evenhand.forms.Contents;
import evenhand.quantity.Dimension;
import evenhand.roadtest.Findings;
import evenhand.roadtest.Gradient;
import evenhand.roadtest.Observation;
import evenhand.roadtest.Repeats;
import evenhand.roadtest.RoadTest;
import evenhand.roadtest.Unknowns;
import evenhand.scenario.Scenario;
import evenhand.terminal.reply.Reply;
import evenhand.terminal.reply.SetupAnswer;
import evenhand.terminal.reply.SharedParts;
import evenhand.terminal.reply.Written;
import evenhand.words.Units;
import evenhand.words.roadtest.RoadTestWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What {@code roadtest} answers.
 *
 * @param silent what was left out, and why
 */
record RoadTestReply(Scenario scenario, Findings found, int samples, long seed, List<String> silent) implements Reply {
    /** A reading in its test. */
    private record Seen(RoadTest test, Findings.Seen seen) {
        private Observation.Reading reading() {
            return (Observation.Reading) seen.observation();
        }

        private Observation.Limit limit() {
            return (Observation.Limit) seen.observation();
        }

        private Observation.Bounce bounce() {
            return (Observation.Bounce) seen.observation();
        }

        private double degrees(double si) {
            return Dimension.ANGLE.metric().fromSi(si);
        }
    }

    private static final Contents<Seen> JUDGEMENT = Contents.of(Seen.class)
            .number("residual", one -> one.seen().residual())
            .flag("fits", one -> one.seen().fits())
            .mark("beyondLimit", one -> one.seen().after().beyondLimit());

    private static final Contents<Seen> READING = Contents.of(Seen.class)
            .text("turn", one -> one.reading().turn().key())
            .number(
                    "lateralAcceleration_g",
                    one -> SharedParts.inG(one.seen().after().lateralAcceleration()))
            .text("channel", one -> one.reading().channel().key())
            .text("unit", one -> "deg")
            .number("measured", one -> one.degrees(one.reading().measured().value()))
            .number("tolerance", one -> one.degrees(one.reading().measured().tolerance()))
            .number("before", one -> one.degrees(one.seen().before().expected()))
            .number(
                    "beforeLow",
                    one -> one.degrees(
                            one.seen().before().expected() - one.seen().beforeHalfWidth()))
            .number(
                    "beforeHigh",
                    one -> one.degrees(
                            one.seen().before().expected() + one.seen().beforeHalfWidth()))
            .number("after", one -> one.degrees(one.seen().after().expected()))
            .with(one -> one, JUDGEMENT);

    private static final Contents<Gradient> GRADIENT = Contents.of(Gradient.class)
            .text("figure", gradient -> gradient.figure().key())
            .text("turn", gradient -> gradient.turn().map(turn -> turn.key()).orElse("both"))
            .text("unit", gradient -> "deg/g")
            .number("measured", gradient -> degPerG(gradient.measured()))
            .number("standardError", gradient -> degPerG(gradient.standardError()))
            .number("before", gradient -> degPerG(gradient.before()))
            .number("after", gradient -> degPerG(gradient.after()))
            .whole("readings", Gradient::readings);

    private static final Contents<Seen> LIMIT = Contents.of(Seen.class)
            .text("turn", one -> one.limit().turn().key())
            .number(
                    "measured_g",
                    one -> SharedParts.inG(
                            one.limit().pace().acceleration(one.test().radius())))
            .number("tolerance_g", one -> SharedParts.inG(2 * one.seen().after().sigma()))
            .number("before_g", one -> SharedParts.inG(one.seen().before().expected()))
            .number("after_g", one -> SharedParts.inG(one.seen().after().expected()))
            .with(one -> one, JUDGEMENT)
            .textIfAny("firstAxle", one -> one.limit().firstAxle().map(end -> end.key()))
            .textIfAny("firstAxleAfter", one -> one.seen().after().firstAxle().map(end -> end.key()));

    private static final Contents<Seen> BOUNCE = Contents.of(Seen.class)
            .text("axle", one -> one.bounce().axle().key())
            .text("channel", one -> one.bounce().swing().key())
            .number("measured", one -> one.bounce().measured().value())
            .number("tolerance", one -> one.bounce().measured().tolerance())
            .number("before", one -> one.seen().before().expected())
            .number("after", one -> one.seen().after().expected())
            .with(one -> one, JUDGEMENT);

    private static final Contents<Findings.Own> OWN = Contents.of(Findings.Own.class)
            .text("what", own -> own.what().key())
            .number("before", own -> shown(own.what(), own.before()))
            .number("beforeTolerance", own -> shown(own.what(), own.beforeTolerance()))
            .number("after", own -> shown(own.what(), own.after()))
            .number("afterTolerance", own -> shown(own.what(), own.afterTolerance()))
            .number("moved", Findings.Own::moved)
            .flag("suspect", Findings.Own::suspect);

    private static final Contents<Findings.OfTest> TEST = Contents.of(Findings.OfTest.class)
            .text("name", one -> one.test().name())
            .text("setup", one -> one.test().setup())
            .listIfAny("readings", one -> only(one, Observation.Reading.class), READING)
            .listIfAny("gradients", Findings.OfTest::gradients, GRADIENT)
            .listIfAny("limits", one -> only(one, Observation.Limit.class), LIMIT)
            .listIfAny("bounce", one -> only(one, Observation.Bounce.class), BOUNCE)
            .listIfAny("unknowns", Findings.OfTest::own, OWN);

    private static final Contents<Findings.Agreement> AGREEMENT = Contents.of(Findings.Agreement.class)
            .number("chiSquare", Findings.Agreement::chiSquare)
            .whole("degrees", Findings.Agreement::degrees)
            .number("probability", Findings.Agreement::probability)
            .flag("agrees", Findings.Agreement::agrees);

    private static final Contents<Findings.Input> INPUT = Contents.of(Findings.Input.class)
            .text("path", input -> input.number().path())
            .text("unit", input -> input.number().dimension().jsonUnit())
            .number("before", input -> input.number().si())
            .number("beforeTolerance", Findings.Input::beforeTolerance)
            .number("after", Findings.Input::after)
            .number("afterTolerance", Findings.Input::afterTolerance)
            .number("moved", Findings.Input::moved)
            .flag("suspect", Findings.Input::suspect);

    private static final Contents<Findings.Together> TOGETHER = Contents.of(Findings.Together.class)
            .text("one", Findings.Together::one)
            .text("other", Findings.Together::other)
            .number("correlation", Findings.Together::correlation);

    private static final Contents<Findings.Figure> FIGURE = Contents.of(Findings.Figure.class)
            .with(figure -> figure.after().judged(), SharedParts.JUDGED)
            .judgedIfAny(
                    "before",
                    RoadTestReply::criterion,
                    figure -> figure.before().nominal())
            .judged(
                    "beforeLow",
                    RoadTestReply::criterion,
                    figure -> figure.before().low())
            .judged(
                    "beforeHigh",
                    RoadTestReply::criterion,
                    figure -> figure.before().high())
            .judgedIfAny(
                    "after", RoadTestReply::criterion, figure -> figure.after().nominal())
            .judged("low", RoadTestReply::criterion, figure -> figure.after().low())
            .judged("high", RoadTestReply::criterion, figure -> figure.after().high());

    private static final Contents<Findings.OfSetup> SETUP = Contents.of(Findings.OfSetup.class)
            .text("name", Findings.OfSetup::name)
            .list("figures", Findings.OfSetup::figures, FIGURE);

    /** A next reading and the figure that it narrows. */
    private record Next(Findings.Next next, Spread narrowed) {
        private Criterion criterion() {
            return narrowed.judged().criterion();
        }
    }

    private static final Contents<Next> NEXT = Contents.of(Next.class)
            .text("channel", one -> one.next().channel())
            .textIfAny("turn", one -> one.next().turn().map(turn -> turn.key()))
            .numberIfAny(
                    "lateralAcceleration_g", one -> SharedParts.inG(one.next().pace()))
            .textIfAny("axle", one -> one.next().axle().map(end -> end.key()))
            .text("figure", one -> one.criterion().name())
            .textIn("unit", (one, units) -> units.of(one.criterion()).symbol())
            .judged("low", Next::criterion, one -> one.next().low())
            .judged("high", Next::criterion, one -> one.next().high());

    private static final Contents<Repeats.Spread> REPEAT = Contents.of(Repeats.Spread.class)
            .text("setup", Repeats.Spread::setup)
            .text("figure", one -> one.figure().key())
            .texts("tests", Repeats.Spread::tests)
            .number("spread_deg_per_g", one -> degPerG(one.spread()));

    private static final Contents<Repeats.Difference> DIFFERENCE = Contents.of(Repeats.Difference.class)
            .text("setup", Repeats.Difference::setup)
            .text("base", Repeats.Difference::from)
            .text("figure", one -> one.figure().key())
            .number("difference_deg_per_g", one -> degPerG(one.difference()))
            .number("standardError_deg_per_g", one -> degPerG(one.standardError()))
            .numberIfAny(
                    "needed_deg_per_g",
                    one -> one.needed().isPresent()
                            ? OptionalDouble.of(degPerG(one.needed().getAsDouble()))
                            : one.needed())
            .flag("real", Repeats.Difference::isReal);

    private static final Contents<Repeats.Drift> DRIFT = Contents.of(Repeats.Drift.class)
            .text("setup", Repeats.Drift::setup)
            .text("figure", one -> one.figure().key())
            .text("first", Repeats.Drift::first)
            .text("last", Repeats.Drift::last)
            .number("drift_deg_per_g", one -> degPerG(one.drift()));

    private static final Contents<RoadTestReply> REPLY = Contents.of(RoadTestReply.class)
            .with(reply -> reply, SharedParts.OPENING)
            .whole("samples", RoadTestReply::samples)
            .whole("seed", RoadTestReply::seed)
            .list("tests", reply -> reply.found().tests(), TEST)
            .part("agreement", reply -> reply.found().agreement(), AGREEMENT)
            .list("inputs", reply -> reply.found().inputs(), INPUT)
            .listIfAny("together", reply -> reply.found().together(), TOGETHER)
            .list("setups", reply -> reply.found().setups(), SETUP)
            .number("effectiveShare", reply -> reply.found().effectiveShare())
            .listIfAny("nextReadings", RoadTestReply::next, NEXT)
            .listIfAny("repeats", reply -> reply.found().repeats().spreads(), REPEAT)
            .listIfAny("differences", reply -> reply.found().repeats().differences(), DIFFERENCE)
            .listIfAny("drifts", reply -> reply.found().repeats().drifts(), DRIFT)
            .textsIfAny("leftOut", RoadTestReply::silent)
            .sentences("words", reply -> reply.words(Units.METRIC));

    /** In CSV a row per reading. */
    private record Row(String test, Findings.Seen seen) {}

    private static final Contents<Row> ROW = Contents.of(Row.class)
            .text("test", Row::test)
            .text("reading", row -> RoadTestWords.place(row.seen()))
            .text("unit", row -> RoadTestWords.unit(row.seen()).symbol())
            .number("measured", row -> shown(row, RoadTestWords.measured(row.seen())))
            .number("before", row -> shown(row, row.seen().before().expected()))
            .number("after", row -> shown(row, row.seen().after().expected()))
            .number("residual", row -> row.seen().residual());

    RoadTestReply {
        silent = List.copyOf(silent);
    }

    private static double shown(Row row, double si) {
        return RoadTestWords.unit(row.seen()).fromSi(si);
    }

    private static List<Seen> only(Findings.OfTest test, Class<? extends Observation> kind) {
        return test.seen().stream()
                .filter(one -> kind.isInstance(one.observation()))
                .map(one -> new Seen(test.test(), one))
                .toList();
    }

    private static double degPerG(double si) {
        return Dimension.UNDERSTEER_GRADIENT.metric().fromSi(si);
    }

    private static double shown(Unknowns.OfTest what, double si) {
        return what == Unknowns.OfTest.STRAIGHT_AHEAD ? Dimension.ANGLE.metric().fromSi(si) : si;
    }

    private static Criterion criterion(Findings.Figure figure) {
        return figure.after().judged().criterion();
    }

    private List<Next> next() {
        return found.narrowed()
                .map(narrowed -> found.nextReadings().stream()
                        .map(one -> new Next(one, narrowed))
                        .toList())
                .orElse(List.of());
    }

    List<String> words(Units units) {
        return new RoadTestWords(units).all(found);
    }

    @Override
    public Optional<LoadCase> load() {
        return Optional.empty();
    }

    @Override
    public List<? extends SetupAnswer> setups() {
        return List.of();
    }

    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (Findings.OfTest test : found.tests()) {
            test.seen().forEach(seen -> rows.add(new Row(test.test().name(), seen)));
        }
        return rows;
    }

    @Override
    public Written written() {
        return Written.of(
                "roadtest",
                REPLY,
                this,
                Written.Csv.of(ROW, this::rows),
                (console, units) -> new RoadTestPage(console, units, this).write());
    }
}
