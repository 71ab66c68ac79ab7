package evenhand.terminal.bump;

import evenhand.answers.BumpFigures;
import evenhand.bump.Bump;
import evenhand.bump.BumpAnswer;
import evenhand.bump.DriveOver;
import evenhand.bump.Series;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.LoadCase;
import evenhand.forms.Contents;
import evenhand.forms.CsvForm;
import evenhand.forms.JsonForm;
import evenhand.road.RoadEvent;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.terminal.page.Console;
import evenhand.terminal.reply.Reply;
import evenhand.terminal.reply.SetupAnswer;
import evenhand.terminal.reply.SharedParts;
import evenhand.turn.Direction;
import evenhand.turn.Wheel;
import evenhand.words.EventWords;
import evenhand.words.Units;
import evenhand.words.road.BumpWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What {@code bump} answers. */
record BumpReply(Scenario scenario, Optional<LoadCase> load, Question question, List<SetupAnswer> setups)
        implements Reply {
    /**
     * What was asked.
     *
     * @param over as written
     * @param speed m/s
     * @param pace m/s², where one was given
     */
    record Question(String over, RoadEvent event, double speed, OptionalDouble pace, Direction direction) {
        BumpAnswer ask(Car car) {
            return pace.isPresent()
                    ? DriveOver.inCorner(car, event, speed, pace.getAsDouble(), direction)
                    : DriveOver.straight(car, event, speed);
        }

        /** Of the circle that the pace makes with the speed, m. */
        private double radius() {
            return speed * speed / pace.getAsDouble();
        }
    }

    /** A set-up, its car as it stands, and what it answers. */
    record Answer(Setup setup, Car car, Question question, BumpAnswer bump) implements SetupAnswer {
        List<String> words(Units units) {
            return BumpWords.of(car, bump, question.direction(), units);
        }

        private Optional<BumpAnswer.BeyondLimit> beyondLimit() {
            return bump instanceof BumpAnswer.BeyondLimit beyond ? Optional.of(beyond) : Optional.empty();
        }

        private Optional<String> said() {
            return beyondLimit().isPresent() ? Optional.empty() : Optional.of(String.join(" ", words(Units.METRIC)));
        }
    }

    private static final Contents<Series> SERIES = Contents.of(Series.class)
            .numbers("time_s", Series::time)
            .numbers("road_m", Series::road)
            .numbers("bodyAcceleration_m_per_s2", Series::bodyAcceleration)
            .numbers("travel_m", Series::travel)
            .numbers("tyreLoad_N", Series::tyreLoad);

    /** One wheel. */
    private static final Contents<Bump> BUMP = Contents.of(Bump.class)
            .figures(BumpFigures.PEAKS)
            .flag("stopTouched", Bump::stopTouched)
            .figures(BumpFigures.GRIP_AND_ROOM)
            .flag("metalTouched", Bump::metalTouched)
            .flag("droopStopReached", Bump::droopStopReached)
            .flag("settled", Bump::settled)
            .part("series", Bump::series, SERIES);

    /** Axles straight ahead, wheels in mid-corner. */
    private static final Contents<BumpAnswer> WHEELS = wheels();

    private static final Contents<BumpAnswer.BeyondLimit> BEYOND_LIMIT = Contents.of(BumpAnswer.BeyondLimit.class)
            .number(SharedParts.LATERAL_ACCELERATION, beyond -> SharedParts.inG(beyond.lateralAcceleration()))
            .mark("beyondLimit", beyond -> true);

    private static final Contents<Answer> ANSWER = Contents.of(Answer.class)
            .withIfAny(Answer::beyondLimit, BEYOND_LIMIT)
            .textIfAny("words", Answer::said)
            .with(Answer::bump, WHEELS);

    private static final Contents<Question> IN_CORNER = Contents.of(Question.class)
            .numberIfAny(SharedParts.LATERAL_ACCELERATION, question -> SharedParts.inG(question.pace()))
            .number("radius_m", Question::radius)
            .text("turn", question -> question.direction().key());

    private static final Contents<BumpReply> REPLY = Contents.of(BumpReply.class)
            .with(reply -> reply, SharedParts.OPENING)
            .text("over", reply -> reply.question().over())
            .number("speed_m_per_s", reply -> reply.question().speed())
            .withIfAny(
                    reply -> Optional.of(reply.question())
                            .filter(question -> question.pace().isPresent()),
                    IN_CORNER)
            .list(
                    "setups",
                    BumpReply::setups,
                    SharedParts.setup(
                            SetupAnswer.class, Contents.of(SetupAnswer.class).where(Answer.class, ANSWER)));

    /** In CSV a row per axle, or in mid-corner per wheel. */
    private record Row(Answer answer, String wheel, Bump bump) {}

    private static final Contents<Row> ROWS = Contents.of(Row.class)
            .text("setup", row -> row.answer().setup().name())
            .text("wheel", Row::wheel)
            .with(Row::bump, BUMP);

    BumpReply {
        setups = List.copyOf(setups);
    }

    private static Contents<BumpAnswer> wheels() {
        Contents<BumpAnswer> wheels = Contents.of(BumpAnswer.class);
        for (End end : End.values()) {
            wheels = wheels.partIfAny(EventWords.end(end), answer -> axle(answer, end), BUMP);
        }
        for (Wheel wheel : Wheel.values()) {
            wheels = wheels.partIfAny(wheel.key(), answer -> wheel(answer, wheel), BUMP);
        }
        return wheels;
    }

    private static Optional<Bump> axle(BumpAnswer answer, End end) {
        return answer instanceof BumpAnswer.Straight straight
                ? Optional.ofNullable(straight.axles().get(end))
                : Optional.empty();
    }

    private static Optional<Bump> wheel(BumpAnswer answer, Wheel wheel) {
        return answer instanceof BumpAnswer.InCorner corner
                ? Optional.ofNullable(corner.wheels().get(wheel))
                : Optional.empty();
    }

    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (Answer answer : answers()) {
            for (End end : End.values()) {
                axle(answer.bump(), end).ifPresent(bump -> rows.add(new Row(answer, EventWords.end(end), bump)));
            }
            for (Wheel wheel : Wheel.values()) {
                wheel(answer.bump(), wheel).ifPresent(bump -> rows.add(new Row(answer, wheel.key(), bump)));
            }
        }
        return rows;
    }

    @Override
    public String command() {
        return "bump";
    }

    @Override
    public byte[] json() {
        return JsonForm.write(command(), REPLY, this);
    }

    @Override
    public String csv(Units units) {
        return CsvForm.write(ROWS, rows(), units);
    }

    @Override
    public String text(Console console, Units units) {
        return new BumpTables(console, units).write(this);
    }

    /** Those with an answer, even if it is that they do not hold the pace. */
    List<Answer> answers() {
        return Reply.only(Answer.class, setups);
    }

    @Override
    public List<String> silent(Units units) {
        List<String> silent = new ArrayList<>();
        for (SetupAnswer answer : setups) {
            String name = answer.setup().name();
            if (answer instanceof SetupAnswer.None none) {
                silent.add(noAnswer(name, none.why().text()));
            } else if (answer instanceof Answer bumped && bumped.beyondLimit().isPresent()) {
                silent.add("evenhand bump: \"" + name + "\" does not hold this pace: it is beyond its limit");
            }
        }
        return silent;
    }
}
