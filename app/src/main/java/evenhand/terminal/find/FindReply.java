package evenhand.terminal.find;

import evenhand.answers.Aim;
import evenhand.answers.Answers;
import evenhand.answers.Criterion;
import evenhand.answers.Trial;
import evenhand.car.LoadCase;
import evenhand.choice.Finding;
import evenhand.choice.Obstacle;
import evenhand.choice.Span;
import evenhand.forms.Contents;
import evenhand.quantity.Unit;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.terminal.reply.Reply;
import evenhand.terminal.reply.SetupAnswer;
import evenhand.terminal.reply.SharedParts;
import evenhand.terminal.reply.Written;
import evenhand.turn.Direction;
import evenhand.words.AimText;
import evenhand.words.Units;
import evenhand.words.find.FindWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * What {@code find} answers.
 *
 * @param obstacles what stands in the way where the aim is not met
 * @param silent why there is no figure, of each bend that has none anywhere in the range; empty where something was found
 */
record FindReply(
        Scenario scenario,
        Trial trial,
        Setup setup,
        Finding finding,
        List<Obstacle> obstacles,
        List<Optional<SetupAnswer.NoAnswer>> silent)
        implements Reply {
    FindReply {
        obstacles = List.copyOf(obstacles);
        silent = List.copyOf(silent);
    }

    /** One change, and what was found for it, SI. */
    private record Changed(Span change, double value) {
        static List<Changed> of(Finding.Found found) {
            return of(found, found.values());
        }

        static List<Changed> of(Finding.Found found, List<Double> values) {
            List<Changed> all = new ArrayList<>();
            for (int i = 0; i < values.size(); i++) {
                all.add(new Changed(found.spans().get(i), values.get(i)));
            }
            return all;
        }
    }

    /** What the aim's figure is and can be in one bend. */
    private record Bend(
            Aim aim, Finding.InBend bend, OptionalDouble achieved, Optional<SetupAnswer.NoAnswer> noAnswer) {
        Criterion criterion() {
            return aim.judged().criterion();
        }
    }

    /**
     * One circle.
     *
     * @param ways round, in the order that they were asked
     */
    private record Circle(Setup setup, double radius, boolean alike, List<Bend> ways) {
        Bend first() {
            return ways.get(0);
        }

        Optional<Bend> other() {
            return ways.size() > 1 && !alike ? Optional.of(ways.get(1)) : Optional.empty();
        }

        Criterion criterion() {
            return first().criterion();
        }

        OptionalDouble achieved(Direction direction) {
            return ways.stream()
                    .filter(way -> way.bend().direction() == direction)
                    .map(Bend::achieved)
                    .findFirst()
                    .orElseGet(OptionalDouble::empty);
        }
    }

    private static final Contents<Changed> CHANGE = Contents.of(Changed.class)
            .text("change", changed -> changed.change().path());

    private static final Contents<Changed> VALUE = Contents.of(Changed.class)
            .number("value", Changed::value)
            .text(
                    "valueUnit",
                    changed -> changed.change().adjustable().dimension().jsonUnit());

    private static final Contents<Changed> CHANGES = CHANGE.with(changed -> changed, VALUE);

    private static final Contents<Finding.Found> AIM = Contents.of(Finding.Found.class)
            .with(found -> found.aim().judged(), SharedParts.JUDGED)
            .judged("aim", FindReply::criterion, found -> found.aim().value())
            .text("status", found -> found.met() ? "met" : "nearest");

    private static final Contents<Bend> LOWEST_AND_HIGHEST = Contents.of(Bend.class)
            .judgedIfAny("lowest", Bend::criterion, bend -> end(bend, Finding.Reach::lowest))
            .judgedIfAny("highest", Bend::criterion, bend -> end(bend, Finding.Reach::highest));

    private static final Contents<Bend> REACH = Contents.of(Bend.class)
            .partIfAny("reach", bend -> bend.bend().reach().map(reach -> bend), LOWEST_AND_HIGHEST);

    private static final Contents<Bend> SLOPE = Contents.of(Bend.class)
            .judgedIfAny("slopeAtValue", Bend::criterion, bend -> bend.bend().slope());

    private static final Contents<Bend> CURVE = Contents.of(Bend.class).curveIfAny("curve", FindReply::curve);

    private static final Contents<Circle> BOTH_ACHIEVED = Contents.of(Circle.class)
            .judgedIfAny("achievedLeft", Circle::criterion, circle -> circle.achieved(Direction.LEFT))
            .judgedIfAny("achievedRight", Circle::criterion, circle -> circle.achieved(Direction.RIGHT));

    private static final Contents<Circle> ACHIEVED = Contents.of(Circle.class)
            .judgedIfAny("achieved", Circle::criterion, circle -> circle.first().achieved())
            .with(circle -> circle, BOTH_ACHIEVED);

    private static final Contents<Circle> OTHER = Contents.of(Circle.class)
            .mark("alike", Circle::alike)
            .partIfAny(
                    "otherTurn",
                    Circle::other,
                    Contents.of(Bend.class)
                            .text("turn", way -> way.bend().direction().key())
                            .judgedIfAny("achieved", Bend::criterion, Bend::achieved)
                            .with(way -> way, REACH.with(way -> way, SLOPE).with(way -> way, CURVE))
                            .partIfAny("noAnswer", Bend::noAnswer, SharedParts.NO_ANSWER));

    /** All of a circle that stands in one place. */
    private static final Contents<Circle> CIRCLE = Contents.of(Circle.class)
            .number("radius_m", Circle::radius)
            .text("setup", circle -> circle.setup().name())
            .with(circle -> circle, ACHIEVED)
            .with(Circle::first, REACH.with(way -> way, SLOPE).with(way -> way, CURVE))
            .partIfAny("noAnswer", circle -> circle.first().noAnswer(), SharedParts.NO_ANSWER)
            .with(circle -> circle, OTHER);

    private static final Contents<Finding.Kept> KEPT = Contents.of(Finding.Kept.class)
            .text("keep", kept -> AimText.write(kept.keep(), Units.METRIC))
            .judgedIfAny("value", kept -> kept.keep().judged().criterion(), Finding.Kept::value)
            .text("unit", kept -> kept.keep().judged().criterion().unit().symbol())
            .flag("ok", Finding.Kept::ok);

    private static final Contents<Obstacle> OBSTACLE = Contents.of(Obstacle.class)
            .flag("blocks", Obstacle::blocks)
            .texts(
                    "leftOut",
                    one -> one.leftOut().stream()
                            .map(keep -> AimText.write(keep, Units.METRIC))
                            .toList())
            .list("changes", one -> Changed.of(one.without()), CHANGES)
            .judged(
                    "achieved",
                    one -> criterion(one.without()),
                    one -> one.without().achieved())
            .list("stand", Obstacle::stand, KEPT);

    /** Beside what was found, where the front does not go first there. */
    private record StillFrontFirst(Setup setup, Trial trial, Finding.Found found, Finding.FrontFirst last) {
        Circle circle() {
            return circles(
                            setup,
                            trial,
                            found.aim(),
                            found.allRound().bends(),
                            false,
                            List.of(),
                            Optional.of(last.answers()))
                    .get(0);
        }

        List<Changed> changed() {
            return Changed.of(found, last.values());
        }
    }

    private static final Contents<StillFrontFirst> STILL_FRONT_FIRST = Contents.of(StillFrontFirst.class)
            .withIfAny(
                    still -> still.found() instanceof Finding.One
                            ? Optional.of(still.changed().get(0))
                            : Optional.empty(),
                    VALUE)
            .listIfAny(
                    "changes", still -> still.found() instanceof Finding.Several ? still.changed() : List.of(), CHANGES)
            .with(StillFrontFirst::circle, ACHIEVED);

    private static final Contents<Finding.Found> REST = Contents.of(Finding.Found.class)
            .listIfAny("kept", Finding.Found::kept, KEPT)
            .texts(
                    "notes",
                    found -> found.notes().stream().map(Finding.Note::key).toList());

    /** What was found, and the first circle that it was found on. */
    private record On<F extends Finding.Found>(F found, Circle circle) {
        Changed changed() {
            return Changed.of(found).get(0);
        }
    }

    private static final Contents<On<Finding.One>> ONE = FindReply.<On<Finding.One>>any()
            .with(On::changed, CHANGE)
            .with(On::found, AIM)
            .with(On::changed, VALUE)
            .with(On::circle, ACHIEVED)
            .with(on -> on.circle().first(), REACH)
            .numbers("solutions", on -> on.found().solutions())
            .with(on -> on.circle().first(), SLOPE.with(way -> way, CURVE))
            .with(On::found, REST)
            .with(On::circle, OTHER);

    private static final Contents<On<Finding.Several>> SEVERAL = FindReply.<On<Finding.Several>>any()
            .list("changes", on -> Changed.of(on.found()), CHANGES)
            .with(On::found, AIM)
            .with(On::circle, ACHIEVED)
            .with(on -> on.circle().first(), REACH)
            .with(On::found, REST)
            .with(On::circle, OTHER);

    private static final Contents<Circle> NOTHING = Contents.of(Circle.class)
            .with(Circle::first, REACH.with(way -> way, CURVE))
            .with(circle -> circle, OTHER);

    private static final Contents<FindReply> REPLY = Contents.of(FindReply.class)
            .with(reply -> reply, SharedParts.OPENING)
            .number("radius_m", reply -> reply.trial().radius())
            .text("turn", reply -> reply.trial().direction().key())
            .text("setup", reply -> reply.setup().name())
            .withIfAny(reply -> reply.on(Finding.One.class), ONE)
            .withIfAny(reply -> reply.on(Finding.Several.class), SEVERAL)
            .withIfAny(reply -> reply.finding() instanceof Finding.NoValue ? reply.circle() : Optional.empty(), NOTHING)
            .partIfAny("frontFirst", FindReply::stillFrontFirst, STILL_FRONT_FIRST)
            .listIfAny("withoutKeeps", FindReply::obstacles, OBSTACLE)
            .partIfAny("noAnswer", FindReply::firstSilent, SharedParts.NO_ANSWER)
            .listIfAny("atRadius", FindReply::furtherCircles, CIRCLE)
            .sentences("words", reply -> reply.words(Units.METRIC))
            .with(
                    reply -> SharedParts.Remarks.of(
                            reply.setup(),
                            reply.setup().estimated(),
                            FindWords.warnings(reply.finding(), Units.METRIC)),
                    SharedParts.REMARKS);

    /** What is said of it: what was found, and what stands in the way of more. */
    List<String> words(Units units) {
        return Stream.of(
                        FindWords.of(finding, units),
                        FindWords.turns(finding, setup.entries()),
                        FindWords.obstacles(obstacles, units))
                .flatMap(List::stream)
                .toList();
    }

    private static <T> Contents<T> any() {
        return Contents.ofAny();
    }

    private static Criterion criterion(Finding.Found found) {
        return found.aim().judged().criterion();
    }

    private static OptionalDouble end(Bend bend, ToDoubleFunction<Finding.Reach> end) {
        return bend.bend().reach().stream().mapToDouble(end).findFirst();
    }

    /** What the figure is on each circle of a trial, where the car answers something. */
    private static List<Circle> circles(
            Setup setup,
            Trial trial,
            Aim aim,
            List<Finding.InBend> bends,
            boolean turnsAlike,
            List<Optional<SetupAnswer.NoAnswer>> silent,
            Optional<Answers> answers) {
        boolean alike =
                turnsAlike || (trial.ways().isBoth() && aim.judged().criterion().needsNoTurn());
        int ways = trial.ways().directions().size();
        List<Circle> circles = new ArrayList<>();
        for (int first = 0; first < bends.size(); first += ways) {
            List<Bend> there = new ArrayList<>();
            for (int bend = first; bend < first + ways; bend++) {
                int one = bend;
                there.add(new Bend(
                        aim,
                        bends.get(bend),
                        answers.map(all -> aim.judged().si(all, one)).orElseGet(OptionalDouble::empty),
                        bend < silent.size() ? silent.get(bend) : Optional.empty()));
            }
            circles.add(new Circle(setup, bends.get(first).radius(), alike, there));
        }
        return circles;
    }

    private List<Circle> circles() {
        if (finding instanceof Finding.Found found) {
            Finding.AllRound round = found.allRound();
            return circles(
                    setup, trial, found.aim(), round.bends(), round.alike(), silent, Optional.of(round.answers()));
        }
        Finding.NoValue none = (Finding.NoValue) finding;
        return circles(setup, trial, none.aim(), none.bends(), false, silent, Optional.empty());
    }

    private Optional<Circle> circle() {
        return circles().stream().findFirst();
    }

    private List<Circle> furtherCircles() {
        return circles().stream().skip(1).toList();
    }

    private <F extends Finding.Found> Optional<On<F>> on(Class<F> kind) {
        return kind.isInstance(finding)
                ? circle().map(circle -> new On<>(kind.cast(finding), circle))
                : Optional.empty();
    }

    private Optional<StillFrontFirst> stillFrontFirst() {
        return finding instanceof Finding.Found found
                ? found.allRound().frontFirst().map(last -> new StillFrontFirst(setup, trial, found, last))
                : Optional.empty();
    }

    /** Why the first way round has no answer; where each has one by itself, why they have none together. */
    private Optional<SetupAnswer.NoAnswer> firstSilent() {
        if (!(finding instanceof Finding.NoValue none)) {
            return Optional.empty();
        }
        return silent.stream().allMatch(Optional::isEmpty)
                ? Optional.of(new SetupAnswer.NoAnswer(none.reason(), none.text()))
                : silent.get(0);
    }

    /** A change as CSV has it, in the unit that a person would write. */
    private record Row(Setup setup, Changed changed, Finding.Found found, Circle circle) {
        Unit unit(Units units) {
            return units == Units.METRIC
                    ? changed.change().adjustable().unit()
                    : units.of(changed.change().adjustable().dimension());
        }
    }

    private static final Contents<Row> ROWS = Contents.of(Row.class)
            .text("setup", row -> row.setup().name())
            .with(Row::changed, CHANGE)
            .numberIn(
                    units -> "value",
                    (row, units) -> row.unit(units).fromSi(row.changed().value()))
            .textIn("valueUnit", (row, units) -> row.unit(units).symbol())
            .with(Row::found, AIM)
            .judgedIfAny(
                    "achieved",
                    row -> criterion(row.found()),
                    row -> row.circle().first().achieved())
            .with(row -> row.circle().first(), LOWEST_AND_HIGHEST)
            .with(Row::circle, BOTH_ACHIEVED);

    private static List<List<Double>> curve(Bend bend) {
        Unit unit = bend.criterion().unit();
        return bend.bend().curve().stream()
                .map(point -> List.of(point.at(), unit.fromSi(point.figure())))
                .toList();
    }

    private List<Row> rows() {
        return finding instanceof Finding.Found found
                ? Changed.of(found).stream()
                        .map(changed -> new Row(setup, changed, found, circles().get(0)))
                        .toList()
                : List.of();
    }

    @Override
    public Optional<LoadCase> load() {
        return trial.load();
    }

    /** CSV has no room for warnings either. */
    @Override
    public List<String> silent(Units units) {
        return Stream.concat(
                        FindWords.warnings(finding, units).stream()
                                .map(warning -> "evenhand " + written().command() + ": warning for \"" + setup.name()
                                        + "\": " + warning),
                        Reply.super.silent(units).stream())
                .toList();
    }

    @Override
    public List<SetupAnswer.None> setups() {
        return noAnswer().map(why -> new SetupAnswer.None(setup, why)).stream().toList();
    }

    private Optional<SetupAnswer.NoAnswer> noAnswer() {
        return finding instanceof Finding.NoValue none
                ? Optional.of(new SetupAnswer.NoAnswer(none.reason(), none.text()))
                : Optional.empty();
    }

    @Override
    public Written written() {
        return Written.of(
                "find",
                REPLY,
                this,
                Written.Csv.of(ROWS, this::rows),
                (console, units) -> new FindTables(console, units).write(this));
    }
}
