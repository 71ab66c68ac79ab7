package evenhand.terminal.effects;

import evenhand.advice.Advice;
import evenhand.advice.Price;
import evenhand.advice.Refused;
import evenhand.advice.Remedy;
import evenhand.answers.Answers;
import evenhand.answers.Trial;
import evenhand.answers.Ways;
import evenhand.car.Car;
import evenhand.car.LoadCase;
import evenhand.catalogue.Slot;
import evenhand.choice.Effect;
import evenhand.forms.Contents;
import evenhand.quantity.Dimension;
import evenhand.scenario.Scenario;
import evenhand.terminal.reply.EachWay;
import evenhand.terminal.reply.Reply;
import evenhand.terminal.reply.SharedParts;
import evenhand.terminal.reply.Written;
import evenhand.words.Units;
import evenhand.words.effects.Complaint;
import evenhand.words.effects.RemedyWords;
import java.util.List;
import java.util.Map;
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
     * @param before what the car answers as it stands
     * @param alike whether both ways round are alike
     */
    record Against(Complaint complaint, Car car, Answers before, Advice advice, Ways ways, boolean alike) {
        RemedyWords said(Units units) {
            return new RemedyWords(complaint, ways, alike, units);
        }

        List<String> words(Units units) {
            return said(units).help(car, before, advice);
        }

        /** Whether there is something to be told: a step that helps, or that there is nothing to be helped. */
        boolean answered() {
            return !complaint.shown() || !advice.remedies().isEmpty();
        }
    }

    /** An effect, and what it is worth against a complaint. */
    private record Told(Effect effect, Optional<Remedy> remedy) {
        static List<Told> of(Found found) {
            List<Remedy> remedies =
                    found.against().map(against -> against.advice().remedies()).orElse(List.of());
            return found.effects().stream()
                    .map(effect -> new Told(
                            effect,
                            remedies.stream()
                                    .filter(remedy -> remedy.step().equals(effect.step()))
                                    .findFirst()))
                    .toList();
        }
    }

    private static final String SETTING = "setting";

    private static final Map<Slot.WayBack, String> WAYS_BACK =
            Map.of(Slot.WayBack.TURNED_BACK, "turnedBack", Slot.WayBack.OLD_PART, "oldPart", Slot.WayBack.NONE, "none");

    /** The largest of the usual sizes. */
    private static final Contents<Effect.Step> UP_TO = Contents.of(Effect.Step.class)
            .where(Effect.ByBar.class, Contents.of(Effect.ByBar.class).number("upTo", Effect.ByBar::rollStiffness));

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
                            .text("to", Effect.ToSetting::to))
            .where(
                    Effect.ByForces.class,
                    Contents.of(Effect.ByForces.class)
                            .number("step", forces -> forces.factor() - 1)
                            .text("stepUnit", forces -> ""))
            .where(
                    Effect.ByBar.class,
                    Contents.of(Effect.ByBar.class)
                            .number("step", Effect.ByBar::rollStiffness)
                            .text("stepUnit", bar -> Dimension.ROLL_STIFFNESS.jsonUnit()));

    private static final Contents<Effect.Move> MOVE = Contents.of(Effect.Move.class)
            .with(Effect.Move::judged, SharedParts.JUDGED)
            .judged("base", move -> move.judged().criterion(), Effect.Move::base)
            .judged("difference", move -> move.judged().criterion(), Effect.Move::difference);

    private static final Contents<Price.Earlier> EARLIER = Contents.of(Price.Earlier.class)
            .numberIfAny("from_g", one -> SharedParts.inG(one.was()))
            .number("to_g", one -> SharedParts.inG(one.is()));

    private static final Contents<Price.LessLow> LESS_LOW = Contents.of(Price.LessLow.class)
            .number("lowered_m", Price.LessLow::lowest)
            .text("need", one -> one.missed().need().key())
            .numberIfAny("value", one -> one.missed().value());

    private static final Contents<Remedy> WORTH = Contents.of(Remedy.class)
            .withIfAny(Remedy::upTo, Contents.of(Remedy.class).with(Remedy::step, UP_TO))
            .text("work", remedy -> remedy.step().work() == Slot.Work.SETTING ? SETTING : "rebuilding")
            .text("wayBack", remedy -> WAYS_BACK.get(remedy.step().wayBack()))
            .number("worth", Remedy::worth)
            .mark("tooSmallToFeel", Remedy::tooSmall)
            .partIfAny("firstStop", remedy -> remedy.price().earlier(), EARLIER)
            .partIfAny("noLongerWorks", remedy -> remedy.price().lessLow(), LESS_LOW);

    private static final Contents<Found> FOUND = Contents.of(Found.class)
            .list(
                    "effects",
                    Told::of,
                    Contents.of(Told.class)
                            .text("change", told -> told.effect().step().path())
                            .with(told -> told.effect().step(), STEP)
                            .withIfAny(Told::remedy, WORTH)
                            .list("differences", told -> told.effect().moves(), MOVE));

    private static final Contents<Refused> REFUSED = Contents.of(Refused.class)
            .text("change", refused -> refused.step().path())
            .with(Refused::step, STEP)
            .text("reason", refused -> refused.reason().key())
            .textIfAny(
                    "need",
                    refused -> refused.missed().map(missed -> missed.need().key()));

    private static final Contents<Against> COMPLAINT = Contents.of(Against.class)
            .part(
                    "complaint",
                    against -> against,
                    Contents.of(Against.class)
                            .with(against -> against.complaint().judged(), SharedParts.JUDGED)
                            .judgedIfAny(
                                    "value",
                                    against -> against.complaint().judged().criterion(),
                                    against -> against.complaint().wish().worstValue(against.before()))
                            .flag("shown", against -> against.complaint().shown()));

    private static final Contents<Against> NOT_ADVISED = Contents.of(Against.class)
            .listIfAny("notAdvised", against -> against.advice().refused(), REFUSED);

    private static final Contents<Found> FIRST = Contents.of(Found.class)
            .withIfAny(Found::against, COMPLAINT)
            .with(found -> found, FOUND)
            .withIfAny(Found::against, NOT_ADVISED);

    private static final Contents<EachWay<Found>> SETUP = EachWay.contents(
            FIRST,
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
        if (step instanceof Effect.ToSetting setting) {
            return setting.to();
        }
        double size = step instanceof Effect.ByNumber number
                ? number.size()
                : step instanceof Effect.ByBar bar ? bar.rollStiffness() : ((Effect.ByForces) step).factor() - 1;
        return String.valueOf(
                (units == Units.METRIC ? size : dimension(step).imperial().fromSi(size)) + 0.0);
    }

    private static String unit(Effect.Step step, Units units) {
        if (step instanceof Effect.ToSetting) {
            return SETTING;
        }
        return units == Units.METRIC
                ? dimension(step).jsonUnit()
                : dimension(step).imperial().symbol();
    }

    private static Dimension dimension(Effect.Step step) {
        return step instanceof Effect.ByNumber number
                ? number.adjustable().dimension()
                : step instanceof Effect.ByBar ? Dimension.ROLL_STIFFNESS : Dimension.RATIO;
    }

    @Override
    public Optional<LoadCase> load() {
        return trial.load();
    }

    /** Whether every set-up has an effect to tell, each way round. */
    @Override
    public boolean complete() {
        return EachWay.isComplete(circles)
                && circles.stream()
                        .flatMap(circle -> circle.setups().stream())
                        .flatMap(one -> one.ways().stream())
                        .flatMap(way -> way.found().stream())
                        .allMatch(found -> found.against()
                                .map(Against::answered)
                                .orElse(!found.effects().isEmpty()));
    }

    @Override
    public Written written() {
        return Written.of(
                "effects",
                REPLY,
                this,
                Written.Csv.of(ROWS, () -> EachWay.answered(setups())),
                (console, units) -> full
                        ? new EffectsTables(console, units).write(this)
                        : new EffectsPage(console, units).write(this));
    }
}
