package evenhand.window.question;

import evenhand.answers.BrakeFigures;
import evenhand.answers.Progress;
import evenhand.car.BrakeParts;
import evenhand.car.End;
import evenhand.chart.BrakeCharts;
import evenhand.chart.BrakeCharts.Stopping;
import evenhand.chart.Chart;
import evenhand.forms.BrakesTable;
import evenhand.forms.Table;
import evenhand.look.SetupStyle;
import evenhand.quantity.Dimension;
import evenhand.scenario.Setup;
import evenhand.straight.Braking;
import evenhand.window.desk.Asking;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TurnedSetup;
import evenhand.window.desk.Verdict;
import evenhand.words.Alike;
import evenhand.words.Units;
import evenhand.words.brakes.BrakeWords;
import evenhand.words.brakes.BrakedSetup;
import evenhand.words.brakes.BrakedSetup.Braked;
import evenhand.words.brakes.BrakesToGive;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Straight ahead: which end locks first, how hard the foot presses, how far it dives and takes to stop. */
final class WhichEndLocks implements Question {
    private static final AmountsField AT = new AmountsField(
            new Field("at", "told at", List.of(), "0.3 g, 0.6 g, 0.9 g"),
            "deceleration",
            Dimension.ACCELERATION,
            Braking.Asked.LEAST_DECELERATION,
            Braking.Asked.MOST_DECELERATION,
            "0.001 g and 2 g");
    private static final AmountsField FRICTION = new AmountsField(
            new Field("friction", "on roads of friction", List.of(), "0.3, 0.5, 0.8"),
            "friction",
            Dimension.RATIO,
            Braking.Asked.LEAST_FRICTION,
            Braking.Asked.MOST_FRICTION,
            "0.01 and 3");
    private static final AmountsField FOOT = new AmountsField(
            new Field("foot", "foot presses", List.of(), "200 N, 300 N, 400 N").beginningALine(),
            "force of the foot",
            Dimension.FORCE,
            Braking.Asked.LEAST_PEDAL,
            Braking.Asked.MOST_PEDAL,
            "1 N and 5000 N");
    private static final Field SPEED = new Field("speed", "stops from", List.of(), "80 km/h");
    private static final String HELPS = "helps";
    private static final Field BOOSTER = new Field("booster", "booster", List.of(HELPS, "gives no help"), HELPS);

    @Override
    public String key() {
        return "brakes";
    }

    @Override
    public String words() {
        return "Which end locks first?";
    }

    @Override
    public List<Field> fields(Asking asking) {
        Setup active = asking.work().activeSetup();
        if (!BrakesToGive.given(active.car())) {
            return List.of();
        }
        List<Field> fields = new ArrayList<>(List.of(AT.field(), FRICTION.field()));
        Optional<BrakeParts> parts = active.car().brakes().parts();
        if (parts.isPresent()) {
            fields.addAll(List.of(FOOT.field(), SPEED));
        }
        if (parts.flatMap(BrakeParts::booster).isPresent()) {
            fields.add(BOOSTER);
        }
        return fields;
    }

    @Override
    public List<String> adjustments(Setup active) {
        return Knobs.here(
                active,
                Stream.of(
                        "brakes.frontShare",
                        "brakes.masterCylinder.frontShare",
                        "brakes.rearValve.knee",
                        "brakes.rear.bore",
                        "brakes.front.padFriction",
                        "brakes.rear.padFriction",
                        "brakes.rear.factor",
                        "brakes.booster.gain",
                        "front.lowered",
                        "rear.lowered"));
    }

    @Override
    public boolean drawsTheCar() {
        return false;
    }

    @Override
    public Reply answer(Asked asked, Progress progress) {
        List<TurnedSetup> known = asked.shown().stream()
                .filter(one -> BrakesToGive.given(one.setup().car()))
                .toList();
        if (known.isEmpty()) {
            return notGiven();
        }
        Optional<String> refused = Stream.of(
                        AT.refusal(asked.wish(AT.field())),
                        FRICTION.refusal(asked.wish(FRICTION.field())),
                        FOOT.refusal(asked.wish(FOOT.field())),
                        SpeedField.refusal(asked.wish(SPEED)))
                .flatMap(Optional::stream)
                .findFirst();
        if (refused.isPresent()) {
            return Reply.only(refused.get());
        }
        Braking.Asked braking = new Braking.Asked(
                AT.amounts(asked.wish(AT.field())),
                FRICTION.amounts(asked.wish(FRICTION.field())),
                FOOT.amounts(asked.wish(FOOT.field())),
                SpeedField.speed(asked.wish(SPEED)),
                asked.wish(BOOSTER).equals(HELPS));
        Map<String, BrakedSetup> answers = new LinkedHashMap<>();
        for (TurnedSetup one : known) {
            progress.goOn();
            progress.at((double) answers.size() / known.size());
            answers.put(
                    one.setup().name(),
                    BrakedSetup.of(one.setup(), asked.work().trial().load(), braking));
        }
        return reply(asked, answers);
    }

    private static Reply notGiven() {
        return new Reply(
                List.of(BrakesToGive.LEAD),
                List.of(
                        new Reply.Paragraph("What to give", BrakesToGive.WHAT),
                        new Reply.Paragraph("Where to type it", BrakesToGive.WHERE)),
                List.of(),
                Table.NONE,
                List.of(Straight.toTheForm("give the brakes under \"The car itself\"")));
    }

    private static Reply reply(Asked asked, Map<String, BrakedSetup> answers) {
        List<Braked> braked = new ArrayList<>();
        Map<String, List<String>> said = new LinkedHashMap<>();
        answers.forEach((name, answer) -> {
            if (answer instanceof Braked brakes) {
                braked.add(brakes);
                said.put(name, brakes.words(asked.units()));
            } else if (answer instanceof BrakedSetup.NoAnswer none) {
                said.put(name, List.of("No answer: " + none.text() + "."));
            }
        });
        List<Alike> alike = Alike.of(said);
        List<Reply.Paragraph> more = new ArrayList<>(Straight.below(asked, alike));
        more.add(new Reply.Paragraph(Straight.MIND, BrakeWords.CAUTIONS));
        List<Stopping> stopping = braked.stream()
                .map(one -> new Stopping(
                        one.setup().name(),
                        new SetupStyle(SideBySide.look(asked, one.setup().name())),
                        one.answer()))
                .toList();
        List<Chart> charts = stopping.isEmpty()
                ? List.of()
                : List.of(BrakeCharts.forces(stopping, asked.units()), BrakeCharts.adhesion(stopping, asked.units()));
        return new Reply(
                        Straight.large(asked, alike),
                        more,
                        charts,
                        braked.isEmpty() ? Table.NONE : BrakesTable.of(braked, asked.units()),
                        List.of())
                .with(verdict(braked, asked.units()));
    }

    private static Optional<Verdict> verdict(List<Braked> braked, Units units) {
        return new Lines<>(braked, Braked::setup, units)
                .words(
                        "locks first",
                        "The wheels that lock first on these tyres as the pedal is pressed harder. The rear first is unsafe:"
                                + " the car comes round.",
                        one -> locks(one).map(locks -> locks.axle().key()).orElse("neither"),
                        one -> locks(one).map(locks -> locks.axle() == End.REAR).orElse(false))
                .figure(
                        "at",
                        "How hard the car slows as the first wheel locks.",
                        BrakeFigures.LOCK_AT,
                        WhichEndLocks::locks)
                .words(
                        "rear goes first",
                        "On some road the rear locks first where the car slows harder than this: wet grip is near 0.5,"
                                + " dry near 0.9.",
                        one -> one.answer().rearLocksAbove().isEmpty()
                                ? "never"
                                : one.answer().rearLocksAbove().getAsDouble() == 0
                                        ? "always"
                                        : "beyond "
                                                + Units.exactPace(one.answer()
                                                        .rearLocksAbove()
                                                        .getAsDouble()),
                        one -> one.answer().rearLocksAbove().isPresent())
                .verdict();
    }

    private static Optional<Braking.Locks> locks(Braked one) {
        return one.answer().own().locks();
    }
}
