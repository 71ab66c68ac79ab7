package evenhand.terminal.doubt;

import evenhand.answers.Aim;
import evenhand.answers.Criterion;
import evenhand.answers.Trial;
import evenhand.answers.Ways;
import evenhand.car.LoadCase;
import evenhand.doubt.Doubt;
import evenhand.doubt.Measurement;
import evenhand.doubt.Spread;
import evenhand.forms.Contents;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.terminal.reply.EachWay;
import evenhand.terminal.reply.Reply;
import evenhand.terminal.reply.SharedParts;
import evenhand.terminal.reply.Written;
import evenhand.turn.Direction;
import evenhand.words.AimText;
import evenhand.words.Units;
import evenhand.words.doubt.DoubtWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What {@code doubt} answers: set-ups and what doubt leaves of their answers.
 *
 * @param circles in the trial's order
 * @param full whether people get all figures
 */
record DoubtReply(
        Scenario scenario, Trial trial, Optional<Aim> aim, int samples, long seed, List<Circle> circles, boolean full)
        implements Reply {
    /**
     * What is left on one circle.
     *
     * @param radius m
     * @param turns what is left of the differences, each way that is told of
     * @param measureNext nothing where no set-up turns
     */
    record Circle(
            double radius,
            List<EachWay<Doubted>> setups,
            List<Turn> turns,
            Optional<List<Measurement>> measureNext,
            Optional<Spread> narrowed) {
        Circle {
            setups = List.copyOf(setups);
            turns = List.copyOf(turns);
        }

        private List<Apart> differences() {
            return turns.isEmpty() ? List.of() : turns.get(0).differences();
        }

        private Optional<Turn> otherTurn() {
            return turns.stream()
                    .skip(1)
                    .filter(turn -> !turn.differences().isEmpty())
                    .findFirst();
        }

        private Optional<List<Next>> next() {
            return measureNext.map(all -> all.stream()
                    .map(one -> new Next(one, narrowed.orElseThrow()))
                    .toList());
        }
    }

    /**
     * One set-up one way round.
     *
     * @param ways that were asked which end goes first
     */
    record Doubted(Optional<Aim> aim, Ways ways, Doubt.Left left) {
        List<String> words(Units units) {
            return DoubtWords.alone(left, aim, ways, units);
        }
    }

    /** The differences one way round. */
    record Turn(Direction direction, List<Apart> differences) {
        Turn {
            differences = List.copyOf(differences);
        }
    }

    /** A set-up against the first one. */
    record Apart(Setup setup, Setup base, Doubt.Left left, Doubt.Left alone) {
        List<String> words(Units units) {
            return DoubtWords.apart(setup.name(), base.name(), left, alone, units);
        }
    }

    /** What is to be measured next, for the sake of a figure. */
    private record Next(Measurement measurement, Spread spread) {
        Criterion criterion() {
            return spread.judged().criterion();
        }
    }

    private static final Contents<Spread.Cause> CAUSE = Contents.of(Spread.Cause.class)
            .text("path", Spread.Cause::path)
            .number("share", Spread.Cause::share)
            .number("standardError", Spread.Cause::standardError);

    private static final Contents<Spread> FIGURE = Contents.of(Spread.class)
            .with(Spread::judged, SharedParts.JUDGED)
            .judgedIfAny("nominal", DoubtReply::criterion, Spread::nominal)
            .judged("low", DoubtReply::criterion, Spread::low)
            .judged("high", DoubtReply::criterion, Spread::high)
            .judged("median", DoubtReply::criterion, Spread::median)
            .judged("sd", DoubtReply::criterion, Spread::standardDeviation)
            .number("noAnswerShare", Spread::noAnswerShare)
            .list("causes", Spread::causes, CAUSE);

    private static final Contents<Doubt.Left> FIGURES =
            Contents.of(Doubt.Left.class).list("figures", Doubt.Left::spreads, FIGURE);

    /** An aim and the chance that it is met. */
    private record Chance(Aim aim, OptionalDouble chance) {}

    private static final Contents<Chance> CHANCE = Contents.of(Chance.class)
            .text("text", chance -> AimText.write(chance.aim(), Units.METRIC))
            .numberIfAny("chance", Chance::chance);

    private static final Contents<Doubted> LEFT =
            Contents.of(Doubted.class).with(Doubted::left, FIGURES.number("noAnswerShare", Doubt.Left::noAnswerShare));

    private static final Contents<EachWay<Doubted>> SETUP = EachWay.contents(
            LEFT.numberIfAny("frontFirstChance", doubted -> doubted.left().frontFirst())
                    .partIfAny(
                            "aim",
                            doubted -> doubted.aim()
                                    .map(aim -> new Chance(aim, doubted.left().chance())),
                            CHANCE),
            LEFT,
            doubted -> doubted.words(Units.METRIC));

    private static final Contents<Apart> DIFFERENCE = Contents.of(Apart.class)
            .text("name", apart -> apart.setup().name())
            .text("base", apart -> apart.base().name())
            .with(Apart::left, FIGURES)
            .sentences("words", apart -> apart.words(Units.METRIC));

    private static final Contents<Turn> OTHER_TURN = Contents.of(Turn.class)
            .text("turn", turn -> turn.direction().key())
            .list("differences", Turn::differences, DIFFERENCE);

    private static final Contents<Next> NEXT = Contents.of(Next.class)
            .text("path", next -> next.measurement().tolerance().path())
            .text("how", next -> next.measurement().tolerance().number().slot().how())
            .number("tolerance", next -> next.measurement().halfWidth())
            .text(
                    "toleranceUnit",
                    next -> next.measurement().tolerance().number().dimension().jsonUnit())
            .with(next -> next.spread().judged(), SharedParts.JUDGED)
            .judged("low", Next::criterion, next -> next.measurement().low())
            .judged("high", Next::criterion, next -> next.measurement().high());

    private static final Contents<Circle> ON_CIRCLE = Contents.of(Circle.class)
            .list("setups", Circle::setups, SETUP)
            .listIfAny("differences", Circle::differences, DIFFERENCE)
            .partIfAny("otherTurn", Circle::otherTurn, OTHER_TURN)
            .listIfKnown("measureNext", Circle::next, NEXT);

    private static final Contents<DoubtReply> REPLY = Contents.of(DoubtReply.class)
            .with(reply -> reply, SharedParts.OPENING)
            .whole("samples", DoubtReply::samples)
            .whole("seed", DoubtReply::seed)
            .with(reply -> reply.circles().get(0), ON_CIRCLE)
            .listIfAny(
                    "atRadius",
                    reply -> reply.circles().subList(1, reply.circles().size()),
                    Contents.of(Circle.class).number("radius_m", Circle::radius).with(circle -> circle, ON_CIRCLE));

    /** In CSV a row per figure and cause; a difference has its base in its row. */
    private record Row(String setup, Optional<String> base, Doubt.Left left) {}

    private static final Contents<Row> ROWS = Contents.of(Row.class)
            .text("setup", Row::setup)
            .textIfAny("base", Row::base)
            .with(Row::left, FIGURES);

    DoubtReply {
        circles = List.copyOf(circles);
    }

    private static Criterion criterion(Spread spread) {
        return spread.judged().criterion();
    }

    /** On the first circle, in the order of the file. */
    @Override
    public List<EachWay<Doubted>> setups() {
        return circles.get(0).setups();
    }

    @Override
    public List<String> silent(Units units) {
        return EachWay.silent(eachWay(), this, units);
    }

    /** The set-ups on each circle. */
    List<EachWay.Circle<Doubted>> eachWay() {
        return circles.stream()
                .map(circle -> new EachWay.Circle<>(circle.radius(), circle.setups()))
                .toList();
    }

    @Override
    public boolean complete() {
        return EachWay.isComplete(eachWay());
    }

    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (EachWay<Doubted> one : setups()) {
            one.found().ifPresent(doubted -> rows.add(new Row(one.setup().name(), Optional.empty(), doubted.left())));
        }
        for (Apart apart : circles.get(0).differences()) {
            rows.add(new Row(apart.setup().name(), Optional.of(apart.base().name()), apart.left()));
        }
        return rows.stream().filter(row -> !row.left().spreads().isEmpty()).toList();
    }

    @Override
    public Optional<LoadCase> load() {
        return trial.load();
    }

    @Override
    public Written written() {
        return Written.of(
                "doubt",
                REPLY,
                this,
                Written.Csv.of(ROWS, this::rows),
                (console, units) ->
                        full ? new DoubtTables(console, units).write(this) : new DoubtPage(console, units).write(this));
    }
}
