package evenhand.terminal.reply;

import evenhand.answers.Judged;
import evenhand.answers.TurnFigures;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Assumed;
import evenhand.forms.Contents;
import evenhand.quantity.Dimension;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** What the answers of several commands contain, declared once for all. */
public final class SharedParts {
    /** Key of a lateral acceleration, in g. */
    public static final String LATERAL_ACCELERATION = TurnFigures.LATERAL_ACCELERATION.key();

    /** What every answer about a scenario opens with. */
    public static final Contents<Reply> OPENING = Contents.of(Reply.class)
            .text("scenario", answer -> answer.scenario().title())
            .textIfAny("load", answer -> answer.load().map(load -> load.name()))
            .textsIfAny(
                    "tested",
                    answer -> answer.scenario()
                            .tested()
                            .map(Scenario.Tested::tests)
                            .orElse(List.of()))
            .mark(
                    "testedDisagrees",
                    answer -> answer.scenario()
                            .tested()
                            .filter(tested -> !tested.agrees())
                            .isPresent());

    /** Stands in place of an answer. */
    public static final Contents<SetupAnswer.NoAnswer> NO_ANSWER = Contents.of(SetupAnswer.NoAnswer.class)
            .text("reason", none -> none.reason().key())
            .text("text", SetupAnswer.NoAnswer::text);

    /** What is said of a set-up besides its answer. */
    public record Remarks(Setup setup, List<Adjustable> estimated, List<String> warnings) {
        /** @param ownWarnings of the answer itself */
        public static Remarks of(Setup setup, List<Adjustable> estimated, List<String> ownWarnings) {
            Stream<String> ofSetup = setup.warnings().stream().map(warning -> warning.where() + ": " + warning.what());
            return new Remarks(
                    setup,
                    estimated,
                    Stream.concat(ownWarnings.stream(), ofSetup).toList());
        }
    }

    /** What was not given and was taken as none. */
    public static final Contents<Setup> ASSUMED = Contents.of(Setup.class)
            .listIfAny(
                    "assumed",
                    Setup::assumed,
                    Contents.of(Assumed.class)
                            .text("path", Assumed::path)
                            .numberIfAny("value", Assumed::value)
                            .text("text", Assumed::text));

    public static final Contents<Remarks> REMARKS = Contents.of(Remarks.class)
            .listIfAny(
                    "estimated",
                    Remarks::estimated,
                    Contents.of(Adjustable.class)
                            .text("path", Adjustable::path)
                            .number("value", Adjustable::si)
                            .numberIfAny("tolerance", SharedParts::tolerance)
                            .text("rule", Adjustable::rule))
            .with(Remarks::setup, ASSUMED)
            .textsIfAny("warnings", Remarks::warnings);

    /** A set-up by its name, what it answers or why it does not, and the remarks. */
    public static <A extends SetupAnswer> Contents<A> setup(Class<A> kind, Contents<A> answer) {
        return Contents.of(kind)
                .text("name", one -> one.setup().name())
                .with(one -> one, answer)
                .partIfAny("noAnswer", SetupAnswer::noAnswer, NO_ANSWER)
                .with(SetupAnswer::remarks, REMARKS);
    }

    /** Which figure, at which pace, in which unit; straight ahead the pace is along the car, under the same key. */
    public static final Contents<Judged> JUDGED = Contents.of(Judged.class)
            .text("figure", judged -> judged.criterion().name())
            .numberIfAny(LATERAL_ACCELERATION, judged -> inG(judged.pace()))
            .textIn("unit", (judged, units) -> units.of(judged.criterion()).symbol());

    private SharedParts() {}

    /** How far an estimate may be off; none where it follows from other numbers without a doubt of its own. */
    private static OptionalDouble tolerance(Adjustable estimate) {
        return estimate.tolerance() > 0 ? OptionalDouble.of(estimate.tolerance()) : OptionalDouble.empty();
    }

    public static double inG(double lateralAcceleration) {
        return Dimension.ACCELERATION.metric().fromSi(lateralAcceleration);
    }

    public static OptionalDouble inG(OptionalDouble lateralAcceleration) {
        return lateralAcceleration.isPresent()
                ? OptionalDouble.of(inG(lateralAcceleration.getAsDouble()))
                : lateralAcceleration;
    }
}
