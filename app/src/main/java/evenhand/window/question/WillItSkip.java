package evenhand.window.question;

import evenhand.answers.BumpFigures;
import evenhand.answers.Figure;
import evenhand.answers.Progress;
import evenhand.bump.Bump;
import evenhand.bump.BumpAnswer;
import evenhand.bump.DriveOver;
import evenhand.bump.SeatMotion;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.chart.BumpCharts;
import evenhand.chart.BumpCharts.Driven;
import evenhand.chart.Chart;
import evenhand.forms.BumpTable;
import evenhand.forms.Table;
import evenhand.look.SetupStyle;
import evenhand.quantity.InvalidValue;
import evenhand.road.RoadEvent;
import evenhand.scenario.EventReading;
import evenhand.scenario.EventText;
import evenhand.scenario.Setup;
import evenhand.turn.Direction;
import evenhand.turn.TurnAnswer;
import evenhand.window.desk.Asking;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TurnedSetup;
import evenhand.window.desk.Verdict;
import evenhand.window.desk.Work;
import evenhand.words.Alike;
import evenhand.words.Units;
import evenhand.words.road.BumpWheel;
import evenhand.words.road.BumpWords;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** What one event of the road does in time: whether a tyre skips, a stop is struck, how hard it jolts. */
final class WillItSkip implements Question {
    /** On smaller circles no car turns. m */
    private static final double LEAST_RADIUS = 4;

    private static final String IN_THE_TURN = "in the turn, at the pace below";
    private static final String STRAIGHT = "straight ahead";

    private static final Field OVER = new Field("over", "over", List.of(), "ripples 5 mm by 1.2 m times 8");
    private static final Field SPEED = SpeedField.at("50 km/h");
    private static final Field WHERE = new Field("where", "going", List.of(IN_THE_TURN, STRAIGHT), IN_THE_TURN);

    private record Over(TurnedSetup setup, Car car, BumpAnswer answer) {}

    @Override
    public String key() {
        return "bump";
    }

    @Override
    public String words() {
        return "Will it skip over a bump?";
    }

    @Override
    public List<Field> fields(Asking asking) {
        return List.of(OVER, SPEED, WHERE);
    }

    @Override
    public List<String> adjustments(Setup active) {
        return Knobs.here(
                active,
                Stream.of(
                        "front.spring.rate",
                        "rear.spring.rate",
                        "front.bumpStop.gap",
                        "rear.bumpStop.gap",
                        "front.lowered",
                        "rear.lowered"));
    }

    @Override
    public boolean drawsTheCar() {
        return false;
    }

    @Override
    public Reply answer(Asked asked, Progress progress) {
        String over = asked.wish(OVER).strip();
        Optional<String> noSpeed = SpeedField.refusal(asked.wish(SPEED));
        EventReading reading = EventText.read(over, folder(asked.work()));
        Optional<String> wrong = wrong(over, reading).or(() -> noSpeed);
        if (wrong.isPresent() || !(reading instanceof EventReading.Found found)) {
            return Reply.only(wrong.orElse(""));
        }
        double speed = SpeedField.speed(asked.wish(SPEED));
        OptionalDouble pace = asked.wish(WHERE).equals(STRAIGHT)
                ? OptionalDouble.empty()
                : OptionalDouble.of(asked.work().pace());
        if (pace.isPresent() && speed * speed / pace.getAsDouble() < LEAST_RADIUS) {
            return Reply.only(
                    Units.pace(pace.getAsDouble()) + " at " + asked.wish(SPEED).strip()
                            + " is a circle of less than 4 m, which no car drives: take a higher speed or a gentler pace.");
        }
        List<Over> answers = new ArrayList<>();
        List<TurnedSetup> shown = asked.shown();
        for (TurnedSetup one : shown) {
            progress.goOn();
            progress.at((double) answers.size() / shown.size());
            try {
                answers.add(answer(asked, one, found.event(), speed, pace, progress));
            } catch (InvalidValue cannot) {
                return Reply.only(Said.named(one.setup()) + ": \"" + over + "\": " + cannot.component() + " "
                        + cannot.getMessage() + ".");
            }
        }
        return reply(
                asked, answers, BumpWords.where(over, speed, pace, asked.work().direction(), asked.units()), pace);
    }

    /** Measured roads are looked for beside the scenario. */
    private static Path folder(Work work) {
        Path beside = Path.of(work.scenario().file()).toAbsolutePath().getParent();
        return beside == null ? Path.of("") : beside;
    }

    private static Optional<String> wrong(String over, EventReading reading) {
        if (reading instanceof EventReading.Unclear unclear) {
            return Optional.of("\"" + over + "\" cannot be driven over: " + unclear.what() + ".");
        }
        return reading instanceof EventReading.Unread unread
                ? Optional.of(unread.problems().get(0) + ".")
                : Optional.empty();
    }

    private static Over answer(
            Asked asked, TurnedSetup one, RoadEvent event, double speed, OptionalDouble pace, Progress progress) {
        Optional<String> noRest = Said.noRest(asked, one);
        if (noRest.isPresent()) {
            return new Over(one, one.standing(), new BumpAnswer.None(TurnAnswer.Reason.NO_EQUILIBRIUM, noRest.get()));
        }
        Car car = one.standing();
        return new Over(
                one,
                car,
                pace.isPresent()
                        ? DriveOver.inCorner(
                                car,
                                event,
                                speed,
                                pace.getAsDouble(),
                                asked.work().direction(),
                                progress::goOn)
                        : DriveOver.straight(car, event, speed, progress::goOn));
    }

    private static Reply reply(Asked asked, List<Over> answers, String where, OptionalDouble pace) {
        Direction direction = asked.work().direction();
        List<String> headlines = new ArrayList<>();
        Map<String, List<String>> each = new LinkedHashMap<>();
        headlines.add(where);
        for (Over one : answers) {
            String name = one.setup().setup().name();
            String said = BumpWords.inShort(one.answer(), direction, asked.units());
            List<String> sentences = new ArrayList<>(BumpWords.of(one.car(), one.answer(), direction, asked.units()));
            // The one that is adjusted is said large; the others are read below, and compared in the figures.
            if (name.equals(asked.work().active()) || one.answer() instanceof BumpAnswer.None) {
                headlines.add(Said.named(one.setup().setup()) + ": " + said);
            } else if (!sentences.contains(said)) {
                sentences.add(0, said.substring(0, 1).toUpperCase(Locale.ROOT) + said.substring(1));
            }
            each.put(name, sentences);
        }
        List<Reply.Paragraph> more = new ArrayList<>();
        Alike.of(each).forEach(some -> more.add(new Reply.Paragraph(some.heading(), some.saidOfAll())));
        more.add(new Reply.Paragraph("What the figures mean", List.of(BumpWords.gripLost(pace.isPresent()))));
        more.add(new Reply.Paragraph("What can be driven over", List.of("Write " + EventText.KNOWN + ".")));
        return new Reply(headlines, more, charts(asked, answers), table(asked, answers), List.of())
                .with(verdict(asked, answers));
    }

    private static Optional<Verdict> verdict(Asked asked, List<Over> answers) {
        Lines<Over> lines = new Lines<>(
                answers.stream().filter(one -> !wheels(asked, one).isEmpty()).toList(),
                one -> one.setup().setup(),
                asked.units());
        for (End end : End.values()) {
            lines.figure(
                    end.key() + " off the ground",
                    "How long a wheel of this axle has no load; of both wheels the longer.",
                    BumpFigures.TIME_OFF_GROUND,
                    one -> worst(asked, one, end, BumpFigures.TIME_OFF_GROUND));
        }
        for (End end : End.values()) {
            lines.figure(
                    end.key() + " jolts",
                    "The hardest jolt that the body gets above this axle.",
                    BumpFigures.PEAK_BODY_ACCELERATION,
                    one -> worst(asked, one, end, BumpFigures.PEAK_BODY_ACCELERATION));
        }
        return lines.verdict();
    }

    private static List<BumpWheel> wheels(Asked asked, Over one) {
        return BumpWheel.of(one.answer(), asked.work().direction());
    }

    private static Optional<Bump> worst(Asked asked, Over one, End end, Figure<Bump> figure) {
        return wheels(asked, one).stream()
                .filter(wheel -> wheel.end() == end)
                .map(BumpWheel::bump)
                .max(Comparator.comparingDouble(bump -> figure.si(bump).orElse(0)));
    }

    private static List<Chart> charts(Asked asked, List<Over> answers) {
        List<Driven> driven = new ArrayList<>();
        for (Over one : answers) {
            List<BumpWheel> wheels = BumpWheel.of(one.answer(), asked.work().direction());
            if (!wheels.isEmpty()) {
                String name = one.setup().setup().name();
                driven.add(new Driven(name, new SetupStyle(SideBySide.look(asked, name)), wheels, seat(one.answer())));
            }
        }
        List<Chart> charts = new ArrayList<>();
        if (!driven.isEmpty()) {
            for (End end : End.values()) {
                charts.add(BumpCharts.tyreLoads(driven, end, asked.units()));
            }
            for (End end : End.values()) {
                charts.add(BumpCharts.travels(driven, end, asked.units()));
            }
            for (End end : End.values()) {
                charts.add(BumpCharts.jolts(driven, end, asked.units()));
            }
            for (End end : End.values()) {
                charts.add(BumpCharts.movements(driven, end, asked.units()));
            }
        }
        if (driven.stream().anyMatch(one -> one.seat().isPresent())) {
            charts.add(BumpCharts.seat(driven, asked.units()));
        }
        return charts;
    }

    private static Optional<SeatMotion> seat(BumpAnswer answer) {
        return answer instanceof BumpAnswer.Straight straight ? Optional.of(straight.seat()) : Optional.empty();
    }

    private static Table table(Asked asked, List<Over> answers) {
        return BumpTable.inShort(
                answers,
                one -> one.setup().setup().name(),
                Over::answer,
                asked.work().direction(),
                asked.units());
    }
}
