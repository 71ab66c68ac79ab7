package evenhand.terminal.lower;

import evenhand.answers.Figure;
import evenhand.answers.Trial;
import evenhand.answers.Ways;
import evenhand.car.End;
import evenhand.car.LoadCase;
import evenhand.forms.Contents;
import evenhand.lowering.LoweringFigures;
import evenhand.lowering.LoweringStudy;
import evenhand.lowering.Need;
import evenhand.lowering.Stance;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.terminal.reply.Reply;
import evenhand.terminal.reply.SetupAnswer;
import evenhand.terminal.reply.SharedParts;
import evenhand.terminal.reply.Written;
import evenhand.turn.Direction;
import evenhand.turn.PaceAnswer;
import evenhand.turn.TurnAnswer;
import evenhand.words.Units;
import evenhand.words.lowering.LoweringWarnings;
import evenhand.words.lowering.LoweringWords;
import evenhand.words.lowering.LowestWords;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What {@code lower} answers.
 *
 * @param reserve that the springs were to keep, g
 * @param full whether all figures are for people to read, or the verdict on one screen
 */
record LowerReply(
        Scenario scenario, Setup setup, Trial trial, OptionalDouble reserve, LoweringStudy study, boolean full)
        implements Reply {
    private static final Contents<Stance.Stands> BEFORE_PACES =
            Contents.of(Stance.Stands.class).figures(LoweringFigures.TRAVEL).figures(LoweringFigures.ROLL);

    private static final Contents<Stance.Stands> AFTER_PACES = Contents.of(Stance.Stands.class)
            .figures(LoweringFigures.TURN)
            .figures(LoweringFigures.ROLL_CENTRES)
            .figures(LoweringFigures.COMFORT)
            .figures(LoweringFigures.METAL)
            .figures(LoweringFigures.LEVER)
            .figures(LoweringFigures.CAMBER)
            .figures(LoweringFigures.FREQUENCIES)
            .figure(LoweringFigures.NEAR_UNDERSTEER)
            .figures(LoweringFigures.LINKS);

    /** One height. The understeer stands in the order of the paces; those beyond the limit are named beside. */
    private static final Contents<Stance> ROW = Contents.of(Stance.class)
            .figure(LoweringFigures.LOWERED)
            .where(
                    Stance.Stands.class,
                    BEFORE_PACES
                            .numbersIfKnown(LoweringFigures.UNDERSTEER.key(), LowerReply::understeer)
                            .numbersIfAny("beyondLimit_g", LowerReply::beyondLimit)
                            .with(stands -> stands, AFTER_PACES)
                            .figures(LoweringFigures.SPRINGS)
                            .textIfAny("firstAxle", LowerReply::firstAxle))
            .partIfAny("noAnswer", LowerReply::noAnswer, SharedParts.NO_ANSWER);

    private static final Contents<LoweringStudy> LOWEST = Contents.of(LoweringStudy.class)
            .numberIfAny(LoweringFigures.LOWERED.key(), LoweringStudy::lowest)
            .textIfAny(
                    "stoppedBy", study -> study.stop().map(stop -> stop.need().key()))
            .text("text", study -> LowestWords.of(study, Units.METRIC))
            .numberIfAny("higher_m", LoweringStudy::higher);

    private static final Contents<Need> BOUND = Contents.of(Need.class)
            .text("key", Need::key)
            .numberIfAny("atLeast", need -> bound(need, true))
            .numberIfAny("atMost", need -> bound(need, false))
            .textIfAny(
                    "unit",
                    need -> Optional.of(need.dimension().metric().symbol()).filter(symbol -> need.isNumber()))
            .text("basis", need -> "common practice");

    private static final Contents<LoweringStudy.Ending> NEED = Contents.of(LoweringStudy.Ending.class)
            .with(LoweringStudy.Ending::need, BOUND)
            .flag("metAtFirst", end -> !end.atOnce())
            .numberIfAny("metDownTo_m", LoweringStudy.Ending::lowered);

    private static final Contents<LoweringStudy> HEIGHTS = Contents.of(LoweringStudy.class)
            .list("rows", LoweringStudy::inFirstBend, ROW)
            .part("lowest", study -> study, LOWEST);

    /** The other way round by itself. */
    private static final Contents<LoweringStudy> OTHER_TURN = Contents.of(LoweringStudy.class)
            .text("turn", study -> turn(study).key())
            .with(study -> study, HEIGHTS)
            .partIfAny("noAnswer", LowerReply::nowhere, SharedParts.NO_ANSWER);

    private static final Contents<LoweringStudy> BOTH_WAYS = Contents.of(LoweringStudy.class)
            .mark("alike", LoweringStudy::alike)
            .partIfAny("otherTurn", LoweringStudy::otherTurn, OTHER_TURN);

    private static final Contents<LoweringStudy> STUDY = Contents.of(LoweringStudy.class)
            .with(study -> study, HEIGHTS)
            .list("needs", LowerReply::needs, NEED)
            .with(study -> study, BOTH_WAYS)
            .listIfAny(
                    "atRadius",
                    LoweringStudy::atRadius,
                    Contents.of(LoweringStudy.OnCircle.class)
                            .number("radius_m", LoweringStudy.OnCircle::radius)
                            .with(
                                    LoweringStudy.OnCircle::study,
                                    Contents.of(LoweringStudy.class)
                                            .with(study -> study, HEIGHTS)
                                            .with(study -> study, BOTH_WAYS)));

    private static final Contents<LowerReply> REPLY = Contents.of(LowerReply.class)
            .with(reply -> reply, SharedParts.OPENING)
            .text("setup", reply -> reply.setup().name())
            .number("radius_m", reply -> reply.trial().radius())
            .text("turn", reply -> reply.trial().direction().key())
            .numbers(
                    "paces_g",
                    reply ->
                            reply.trial().paces().stream().map(SharedParts::inG).toList())
            .numberIfAny("keepReserve_g", LowerReply::reserve)
            .with(LowerReply::study, STUDY)
            .sentences("words", reply -> reply.words(Units.METRIC))
            .with(LowerReply::remarks, SharedParts.REMARKS);

    /** Which way round a study of one way is. */
    private static Direction turn(LoweringStudy study) {
        return study.rows().stream()
                .flatMap(row -> row instanceof Stance.Stands stands ? stands.bends().stream() : Stream.empty())
                .map(Stance.Bend::direction)
                .findFirst()
                .orElse(Ways.BOTH.first().other()); // where it stands at no height, neither way has a bend
    }

    /** In CSV a row per height, with a column per pace. */
    private Contents<Stance> rows() {
        Contents<Stance.Stands> stands = BEFORE_PACES;
        for (int i = 0; i < trial.paces().size(); i++) {
            int index = i;
            stands = stands.partIfAny(
                    Units.pace(trial.paces().get(i)).replace(' ', '_'),
                    stance -> LoweringFigures.paces(stance).stream().skip(index).findFirst(),
                    Contents.of(PaceAnswer.class).figure(LoweringFigures.UNDERSTEER));
        }
        stands = stands.with(stance -> stance, AFTER_PACES);
        return Contents.of(Stance.class)
                .text("setup", stance -> setup.name())
                .figure(LoweringFigures.LOWERED)
                .where(Stance.Stands.class, reserve.isPresent() ? stands.figures(LoweringFigures.SPRINGS) : stands);
    }

    private static Optional<List<Double>> understeer(Stance.Stands stands) {
        Figure<PaceAnswer> figure = LoweringFigures.UNDERSTEER;
        return Optional.of(LoweringFigures.paces(stands))
                .filter(paces -> !paces.isEmpty())
                .map(paces -> paces.stream()
                        .flatMap(pace -> figure.value(pace).stream().boxed())
                        .toList());
    }

    private static List<Double> beyondLimit(Stance.Stands stands) {
        return LoweringFigures.paces(stands).stream()
                .filter(pace -> LoweringFigures.UNDERSTEER.value(pace).isEmpty())
                .map(pace -> SharedParts.inG(pace.lateralAcceleration()))
                .toList();
    }

    private static Optional<SetupAnswer.NoAnswer> noAnswer(Stance stance) {
        TurnAnswer.Reason reason =
                stance instanceof Stance.Stands stands && stands.turn() instanceof TurnAnswer.NoTurn none
                        ? none.reason()
                        : TurnAnswer.Reason.NO_EQUILIBRIUM;
        return stance.noAnswer().map(text -> new SetupAnswer.NoAnswer(reason, text));
    }

    /** Why there is no answer at any height; nothing where there is one at some. */
    private static Optional<SetupAnswer.NoAnswer> nowhere(LoweringStudy study) {
        return answersSomewhere(study)
                ? Optional.empty()
                : noAnswer(study.inFirstBend().get(0));
    }

    private static boolean answersSomewhere(LoweringStudy study) {
        return study.inFirstBend().stream().anyMatch(stance -> stance.noAnswer().isEmpty());
    }

    private static Optional<String> firstAxle(Stance.Stands stands) {
        return stands.turns().flatMap(turn -> turn.limit().firstAxle()).map(End::key);
    }

    private static OptionalDouble bound(Need need, boolean atLeast) {
        return need.isNumber() && need.atLeast() == atLeast
                ? OptionalDouble.of(need.dimension().metric().fromSi(need.bound()))
                : OptionalDouble.empty();
    }

    private static List<LoweringStudy.Ending> needs(LoweringStudy study) {
        return study.ends().stream()
                .filter(end -> !end.need().equals(Need.ANSWER))
                .toList();
    }

    private SharedParts.Remarks remarks() {
        return SharedParts.Remarks.of(setup, setup.estimated(), warnings(Units.METRIC));
    }

    /** What is said before all else. */
    List<String> warnings(Units units) {
        return LoweringWarnings.of(study, units);
    }

    List<String> words(Units units) {
        return LoweringWords.of(study, setup.car(), reserve, units);
    }

    @Override
    public Optional<LoadCase> load() {
        return trial.load();
    }

    @Override
    public List<SetupAnswer> setups() {
        return List.of(() -> setup);
    }

    @Override
    public List<String> silent(Units units) {
        return study.rows().stream()
                .flatMap(stance -> stance
                        .noAnswer()
                        .map(why -> "evenhand lower: no answer let down by "
                                + LowerTables.height(stance.lowered(), units) + ": " + why)
                        .stream())
                .toList();
    }

    /** Whether the car has an answer at any height, each way round and on each circle that was asked. */
    @Override
    public boolean complete() {
        return Stream.concat(Stream.of(study), study.atRadius().stream().map(LoweringStudy.OnCircle::study))
                .flatMap(one -> Stream.concat(Stream.of(one), one.otherTurn().stream()))
                .allMatch(LowerReply::answersSomewhere);
    }

    @Override
    public Written written() {
        return Written.of(
                "lower",
                REPLY,
                this,
                Written.Csv.of(rows(), study::inFirstBend),
                (console, units) -> full
                        ? new LowerTables(console, units).write(this)
                        : new LowerPage(console, units, this).write());
    }
}
