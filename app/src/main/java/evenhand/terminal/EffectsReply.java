package evenhand.terminal;

import evenhand.answers.Trial;
import evenhand.car.LoadCase;
import evenhand.choice.Effect;
import evenhand.forms.Contents;
import evenhand.forms.CsvForm;
import evenhand.forms.JsonForm;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.words.Complaint;
import evenhand.words.EffectWords;
import evenhand.words.Units;
import java.util.List;
import java.util.Optional;

/** What {@code effects} answers. */
record EffectsReply(Scenario scenario, Trial trial, List<Answer> setups) implements Reply {
    /** What one set-up answers. */
    sealed interface Answer extends SetupAnswer permits Found, SetupAnswer.None {}

    /** Its effects, in order; with the complaint that they help against, where one was made. */
    record Found(Setup setup, Optional<Complaint> complaint, List<Effect> effects) implements Answer {
        Found {
            effects = List.copyOf(effects);
        }

        private Optional<String> words() {
            return complaint.map(wish -> String.join(" ", EffectWords.help(wish, effects, Units.METRIC)));
        }
    }

    private static final String SETTING = "setting";

    private static final Contents<Effect.Step> STEP = Contents.of(Effect.Step.class)
            .where(
                    Effect.ByNumber.class,
                    Contents.of(Effect.ByNumber.class)
                            .number("step", Effect.ByNumber::size)
                            .text(
                                    "stepUnit",
                                    number -> number.adjustable().dimension().jsonUnit()))
            .where(
                    Effect.ToSetting.class,
                    Contents.of(Effect.ToSetting.class)
                            .whole("step", setting -> 1)
                            .text("stepUnit", setting -> SETTING)
                            .text("from", Effect.ToSetting::from)
                            .text("to", Effect.ToSetting::to));

    private static final Contents<Effect.Move> MOVE = Contents.of(Effect.Move.class)
            .with(Effect.Move::judged, SharedParts.JUDGED)
            .judged("base", move -> move.judged().criterion(), Effect.Move::base)
            .judged("difference", move -> move.judged().criterion(), Effect.Move::difference);

    private static final Contents<Found> FOUND = Contents.of(Found.class)
            .list(
                    "effects",
                    Found::effects,
                    Contents.of(Effect.class)
                            .text("change", effect -> effect.step().path())
                            .with(Effect::step, STEP)
                            .list("differences", Effect::moves, MOVE))
            .textIfAny("words", Found::words);

    private static final Contents<EffectsReply> REPLY = Contents.of(EffectsReply.class)
            .with(reply -> reply, SharedParts.OPENING)
            .list(
                    "setups",
                    EffectsReply::setups,
                    SharedParts.setup(Answer.class, Contents.of(Answer.class).where(Found.class, FOUND)));

    /** In CSV a row per difference; a step to a setting has its name for a number. */
    private static final Contents<Found> ROWS = Contents.of(Found.class)
            .text("setup", found -> found.setup().name())
            .list(
                    "effects",
                    Found::effects,
                    Contents.of(Effect.class)
                            .text("change", effect -> effect.step().path())
                            .textIn("step", (effect, units) -> size(effect.step(), units))
                            .textIn("stepUnit", (effect, units) -> unit(effect.step(), units))
                            .list("differences", Effect::moves, MOVE));

    EffectsReply {
        setups = List.copyOf(setups);
    }

    /** Metric as in JSON, in SI. */
    private static String size(Effect.Step step, Units units) {
        if (!(step instanceof Effect.ByNumber number)) {
            return ((Effect.ToSetting) step).to();
        }
        double size = units == Units.METRIC
                ? number.size()
                : number.adjustable().dimension().imperial().fromSi(number.size());
        return String.valueOf(size + 0.0);
    }

    private static String unit(Effect.Step step, Units units) {
        if (!(step instanceof Effect.ByNumber number)) {
            return SETTING;
        }
        return units == Units.METRIC
                ? number.adjustable().dimension().jsonUnit()
                : number.adjustable().dimension().imperial().symbol();
    }

    @Override
    public Optional<LoadCase> load() {
        return trial.load();
    }

    @Override
    public String command() {
        return "effects";
    }

    @Override
    public byte[] json() {
        return JsonForm.write(command(), REPLY, this);
    }

    @Override
    public String csv(Units units) {
        return CsvForm.write(ROWS, Reply.only(Found.class, setups), units);
    }

    @Override
    public String text(Console console, Units units) {
        return new EffectsTables(console, units).write(this);
    }

    /** Whether every set-up has an effect to tell. */
    @Override
    public boolean complete() {
        return setups.stream()
                .allMatch(answer ->
                        answer instanceof Found found && !found.effects().isEmpty());
    }
}
