package evenhand.terminal.level;

import evenhand.answers.Answers;
import evenhand.answers.Figure;
import evenhand.answers.TurnFigures;
import evenhand.car.LoadCase;
import evenhand.car.Weights;
import evenhand.forms.Contents;
import evenhand.forms.LevelTable;
import evenhand.level.Levelling;
import evenhand.level.Posture;
import evenhand.quantity.Dimension;
import evenhand.scenario.Scenario;
import evenhand.terminal.asked.FormOptions;
import evenhand.terminal.asked.Status;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.Page;
import evenhand.terminal.reply.Reply;
import evenhand.terminal.reply.SetupNotes;
import evenhand.terminal.reply.SharedParts;
import evenhand.terminal.reply.Written;
import evenhand.turn.Limit;
import evenhand.turn.PacesAnswer;
import evenhand.turn.Wheel;
import evenhand.words.LoadWords;
import evenhand.words.Units;
import evenhand.words.level.LevelledSetup;
import evenhand.words.level.LevelledSetup.Levelled;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;

/** What {@code level} answers. */
record LevelReply(Scenario scenario, Optional<LoadCase> load, SetupLevel answer) implements Reply {
    /** One corner of a levelled car. */
    private record Corner(Levelled car, Wheel wheel) {
        Posture.Corner now() {
            return car.levelling().now().corner(wheel);
        }

        Posture.Corner after() {
            return car.levelling().after().corner(wheel);
        }

        OptionalDouble weighs(Posture.Corner corner) {
            return car.weighed() ? OptionalDouble.of(corner.load() / Weights.GRAVITY) : OptionalDouble.empty();
        }

        OptionalDouble turnedBy(boolean inQuarters) {
            Levelling level = car.levelling();
            return level.perTurn().containsKey(wheel)
                    ? OptionalDouble.of(inQuarters ? level.rounded().get(wheel.index()) : level.turns(wheel))
                    : OptionalDouble.empty();
        }

        Optional<Levelling.PerTurn> perTurn() {
            return Optional.ofNullable(car.levelling().perTurn().get(wheel));
        }
    }

    /** One bend, before or after. */
    private record Bend(Answers.Bend asked) {
        Optional<Limit> limit() {
            return asked.turn() instanceof PacesAnswer.Paces paces ? Optional.of(paces.limit()) : Optional.empty();
        }
    }

    private static final Contents<Levelling.PerTurn> PER_TURN = Contents.of(Levelling.PerTurn.class)
            .number("crossWeight", Levelling.PerTurn::crossWeight)
            .figure(Figure.of("mass", "load", Dimension.MASS, "kg", 2, each -> each.load() / Weights.GRAVITY))
            .figure(Figure.of("height", "height", Dimension.LENGTH, "m", 1, Levelling.PerTurn::rise));

    private static final Contents<Corner> CORNER = Contents.of(Corner.class)
            .text("corner", corner -> corner.wheel().key())
            .numberIfAny("turns", corner -> corner.turnedBy(false))
            .numberIfAny("turnsInQuarters", corner -> corner.turnedBy(true))
            .figure(mass("weighs", corner -> corner.weighs(corner.now())))
            .figure(mass("weighsAfter", corner -> corner.weighs(corner.after())))
            .figure(mass(
                    "change",
                    corner -> OptionalDouble.of(
                            (corner.after().load() - corner.now().load()) / Weights.GRAVITY)))
            .figure(length("height", corner -> corner.car().height(corner.wheel())))
            .figure(length("heightWanted", corner -> corner.car().wantedHeight(corner.wheel())))
            .figure(length("heightAfter", corner -> corner.car().heightAfter(corner.wheel())))
            .figure(length("rise", corner -> OptionalDouble.of(corner.after().rise())))
            .numberIfAny("turnsLeftUp", corner -> corner.car().threadLeft(corner.wheel(), true))
            .numberIfAny("turnsLeftDown", corner -> corner.car().threadLeft(corner.wheel(), false))
            .figure(length("bumpTravelToStop", corner -> corner.after().bumpGap()))
            .figure(length("coilBindMargin", corner -> corner.after().coilMargin()))
            .partIfAny("perTurn", Corner::perTurn, PER_TURN);

    private static final Contents<Levelling.Hold> HOLD = Contents.of(Levelling.Hold.class)
            .text("corner", hold -> hold.wheel().key())
            .text("limit", hold -> key(hold.limit()));

    private static final Contents<Bend> BEND = Contents.of(Bend.class)
            .text("turn", bend -> bend.asked().direction().key())
            .number("radius_m", bend -> bend.asked().radius())
            .withIfAny(
                    Bend::limit,
                    Contents.of(Limit.class)
                            .number(
                                    SharedParts.LATERAL_ACCELERATION,
                                    limit -> SharedParts.inG(limit.lateralAcceleration()))
                            .textIfAny("firstAxle", limit -> limit.firstAxle().map(end -> end.key()))
                            .figure(TurnFigures.NEAR_UNDERSTEER));

    private static final Contents<LevelledSetup.Turned> TURNED = Contents.of(LevelledSetup.Turned.class)
            .list("limitNow", turned -> bends(turned.before()), BEND)
            .list("limitAfter", turned -> bends(turned.after()), BEND);

    private static final Contents<Levelled> LEVELLED = Contents.of(Levelled.class)
            .sentences("words", levelled -> levelled.words(Units.METRIC))
            .text("bars", levelled -> levelled.wanted().barsHooked() ? "hooked" : "unhooked")
            .text("status", levelled -> levelled.levelling().status().name().toLowerCase(Locale.ROOT))
            .numberIfAny(
                    "crossWeight",
                    levelled -> cross(levelled, levelled.levelling().now()))
            .numberIfAny("crossWeightWanted", levelled -> levelled.wanted().crossWeight())
            .numberIfAny(
                    "crossWeightAfter",
                    levelled -> cross(levelled, levelled.levelling().after()))
            .numberIfAny(
                    "crossWeightInQuarters",
                    levelled -> levelled.levelling()
                            .afterRounded()
                            .map(after -> cross(levelled, after))
                            .orElseGet(OptionalDouble::empty))
            .listIfAny("heldBy", levelled -> levelled.levelling().heldBy(), HOLD)
            .list("corners", LevelReply::corners, CORNER)
            .withIfAny(Levelled::turns, TURNED);

    private static final Contents<LevelReply> REPLY = Contents.of(LevelReply.class)
            .with(reply -> reply, SharedParts.OPENING)
            .list(
                    "setups",
                    LevelReply::setups,
                    SharedParts.setup(
                            SetupLevel.class, Contents.of(SetupLevel.class).withIfAny(SetupLevel::levelled, LEVELLED)));

    private static final Contents<Corner> ROWS = Contents.of(Corner.class)
            .text("setup", corner -> corner.car().setup().name())
            .with(corner -> corner, CORNER);

    private static Figure<Corner> mass(String name, Function<Corner, OptionalDouble> reading) {
        return Figure.ofOptional(name, name, Dimension.MASS, "kg", 1, reading);
    }

    private static Figure<Corner> length(String name, Function<Corner, OptionalDouble> reading) {
        return Figure.ofOptional(name, name, Dimension.LENGTH, "m", 1, reading);
    }

    private static String key(Levelling.Limit limit) {
        return switch (limit) {
            case THREAD_UP -> "threadUp";
            case THREAD_DOWN -> "threadDown";
            case COILS -> "coilBind";
            case HEIGHT -> "height";
        };
    }

    private static OptionalDouble cross(Levelled levelled, Posture posture) {
        return levelled.weighed() ? OptionalDouble.of(posture.crossWeight()) : OptionalDouble.empty();
    }

    private static List<Bend> bends(Answers answers) {
        return answers.bends().stream().map(Bend::new).toList();
    }

    private static List<Corner> corners(Levelled car) {
        return Stream.of(Wheel.values()).map(wheel -> new Corner(car, wheel)).toList();
    }

    @Override
    public List<SetupLevel> setups() {
        return List.of(answer);
    }

    private boolean met() {
        return answer.levelled()
                .filter(one -> one.levelling().status() == Levelling.Status.MET)
                .isPresent();
    }

    @Override
    public Status give(FormOptions.Form form, Console console, Units units) {
        Status status = Reply.super.give(form, console, units);
        return met() ? status : Status.NO_ANSWER;
    }

    @Override
    public Written written() {
        return Written.of(
                "level",
                REPLY,
                this,
                Written.Csv.of(
                        ROWS,
                        () -> new ArrayList<>(
                                answer.levelled().map(LevelReply::corners).orElse(List.of()))),
                this::page);
    }

    private String page(Console console, Units units) {
        Page page = new Page(console);
        page.title(scenario.title() + ": " + answer.setup().name());
        load.ifPresent(aboard -> page.paragraph("", LoadWords.aboard(aboard, units)));
        page.blank();
        answer.noAnswer().ifPresent(none -> page.paragraph("", "No answer: " + none.text() + "."));
        answer.levelled().ifPresent(levelled -> {
            levelled.words(units).forEach(sentence -> page.paragraph("", sentence));
            page.table(LevelTable.of(levelled, units));
            LevelTable.balance(levelled, units).ifPresent(page::table);
        });
        SetupNotes notes = new SetupNotes(page, units);
        notes.notGiven(List.of(answer.setup()));
        return page.text();
    }
}
