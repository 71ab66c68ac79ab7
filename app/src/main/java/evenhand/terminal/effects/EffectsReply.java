package evenhand.terminal.effects;

import evenhand.answers.Trial;
import evenhand.answers.Ways;
import evenhand.car.LoadCase;
import evenhand.choice.Effect;
import evenhand.choice.Remedy;
import evenhand.forms.Contents;
import evenhand.forms.CsvForm;
import evenhand.forms.JsonForm;
import evenhand.scenario.Scenario;
import evenhand.terminal.page.Console;
import evenhand.terminal.reply.EachWay;
import evenhand.terminal.reply.Reply;
import evenhand.terminal.reply.SharedParts;
import evenhand.words.Units;
import evenhand.words.effects.Complaint;
import evenhand.words.effects.RemedyWords;
import java.util.List;
import java.util.Optional;

/**
 * What {@code effects} answers.
 *
 * @param circles in the trial's order
 * @param full whether people get all figures
 */
public record EffectsReply(Scenario scenario, Trial trial, List<EachWay.Circle<Found>> circles, boolean full)
        implements Reply {
    /**
     * The effects on one set-up one way round, in order.
     *
     * @param against the complaint that they help against, where one was made
     */
    public record Found(Optional<Against> against, List<Effect> effects) {
        public Found {
            effects = List.copyOf(effects);
        }
    }

    /**
     * A complaint and what helps against it, judged by the worse way round.
     *
     * @param alike whether both ways round are alike
     */
    record Against(Complaint complaint, List<Remedy> remedies, Ways ways, boolean alike) {
        Against {
            remedies = List.copyOf(remedies);
        }

        List<String> words(Units units) {
            return RemedyWords.help(complaint, remedies, ways, alike, units);
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
                            .list("differences", Effect::moves, MOVE));

    private static final Contents<EachWay<Found>> SETUP = EachWay.contents(
            FOUND,
            found -> found.against().map(against -> against.words(Units.METRIC)).orElse(List.of()));

    private static final Contents<EffectsReply> REPLY = Contents.of(EffectsReply.class)
            .with(reply -> reply, SharedParts.OPENING)
            .list("setups", EffectsReply::setups, SETUP)
            .listIfAny(
                    "atRadius",
                    reply -> reply.circles().subList(1, reply.circles().size()),
                    EachWay.atRadius(SETUP));

    /** In CSV a row per difference; a step to a setting has its name for a number. */
    private static final Contents<EachWay<Found>> ROWS = Contents.<EachWay<Found>>ofAny()
            .text("setup", one -> one.setup().name())
            .withIfAny(
                    EachWay::found,
                    Contents.of(Found.class)
                            .list(
                                    "effects",
                                    Found::effects,
                                    Contents.of(Effect.class)
                                            .text(
                                                    "change",
                                                    effect -> effect.step().path())
                                            .textIn("step", (effect, units) -> size(effect.step(), units))
                                            .textIn("stepUnit", (effect, units) -> unit(effect.step(), units))
                                            .list("differences", Effect::moves, MOVE)));

    public EffectsReply {
        circles = List.copyOf(circles);
    }

    /** On the first circle. */
    @Override
    public List<EachWay<Found>> setups() {
        return circles.get(0).setups();
    }

    @Override
    public List<String> silent(Units units) {
        return EachWay.silent(circles, this, units);
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
        return CsvForm.write(ROWS, EachWay.answered(setups()), units);
    }

    @Override
    public String text(Console console, Units units) {
        return full ? new EffectsTables(console, units).write(this) : new EffectsPage(console, units).write(this);
    }

    /** Whether every set-up has an effect to tell, each way round. */
    @Override
    public boolean complete() {
        return EachWay.isComplete(circles)
                && circles.stream()
                        .flatMap(circle -> circle.setups().stream())
                        .flatMap(one -> one.ways().stream())
                        .flatMap(way -> way.found().stream())
                        .noneMatch(found -> found.effects().isEmpty());
    }
}
