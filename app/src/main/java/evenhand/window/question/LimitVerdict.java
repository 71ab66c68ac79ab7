package evenhand.window.question;

import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.catalogue.Entries;
import evenhand.choice.Comparison;
import evenhand.doubt.SlopeDoubt;
import evenhand.doubt.SlopeSpread;
import evenhand.doubt.Tolerance;
import evenhand.quantity.Unit;
import evenhand.turn.Direction;
import evenhand.turn.Limit;
import evenhand.turn.TurnAnswer;
import evenhand.window.desk.Question;
import evenhand.window.desk.TurnedSetup;
import evenhand.window.desk.Verdict;
import evenhand.words.EventWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.balance.BalanceWords;
import evenhand.words.balance.LimitWords;
import evenhand.words.balance.OtherWay;
import evenhand.words.balance.VerdictWords;
import evenhand.words.effects.NearLimitWords;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Which end lets go first, at what pace, and what the other end has in hand, both ways round: a line for each set-up. */
final class LimitVerdict {
    private static final Judged LIMIT = new Judged(Criterion.LIMIT, OptionalDouble.empty());
    private static final Judged BALANCE = new Judged(Criterion.LIMIT_BALANCE, OptionalDouble.empty());
    private static final Judged NEAR = new Judged(Criterion.NEAR_UNDERSTEER, OptionalDouble.empty());

    private static final String FIRST_MEANS = "The end that has no grip left first, as the pace rises slowly on this"
            + " circle, and where. The bar is what the other end still has: the longer, the further from neutral."
            + " The front first: the car runs wide and slows; the rear first: the tail comes round.";
    private static final String NEAR_MEANS =
            "How much more the wheels have to be turned for each g, at nine tenths of the limit, the worse way round:"
                    + " above zero it pushes, below zero it slides, near zero it is neutral.";

    private final Question.Asked asked;
    private final List<TurnedSetup> shown;

    /** By way round, what doubt leaves of the set-ups that turn; nothing until it is worked out. */
    private final Map<Direction, SlopeDoubt> doubts = new EnumMap<>(Direction.class);

    private LimitVerdict(Question.Asked asked) {
        this.asked = asked;
        shown = asked.shown();
    }

    /** The verdict, with no word on how sure it is. */
    static Verdict of(Question.Asked asked) {
        return new LimitVerdict(asked).verdict();
    }

    /** The same with what measuring errors and guesses leave of it, to first order. */
    static Verdict withDoubt(Question.Asked asked, Progress progress) {
        LimitVerdict verdict = new LimitVerdict(asked);
        List<Entries> cars = verdict.turning().map(one -> one.setup().entries()).toList();
        if (!cars.isEmpty()) {
            Trial trial = asked.work().usualTrial();
            for (Direction way : verdict.ways()) {
                verdict.doubts.put(
                        way,
                        SlopeDoubt.of(
                                cars,
                                trial.turning(way),
                                List.of(LIMIT, BALANCE, NEAR),
                                Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES,
                                progress));
            }
        }
        return verdict.verdict();
    }

    /** Why the active set-up is another one than the base near the limit; where it is the base, what it comes from. */
    static List<String> because(Question.Asked asked, Progress progress) {
        TurnedSetup active = asked.active();
        TurnedSetup base = asked.base();
        if (active.turn().isEmpty()) {
            return List.of();
        }
        if (active.equals(base) || base.turn().isEmpty()) {
            return BalanceWords.largestCauses(active.turn().get()).stream().toList();
        }
        LimitVerdict verdict = new LimitVerdict(asked);
        List<Direction> ways = verdict.ways();
        Direction worse = verdict.worse(active, ways).orElse(asked.work().direction());
        Comparison comparison = Comparison.ofFew(
                base.setup().entries(),
                active.setup().entries(),
                asked.work().usualTrial().turning(worse),
                List.of(NEAR),
                progress);
        String turning = ways.size() > 1 ? ", turning " + worse.key() : "";
        return NearLimitWords.why(comparison).stream()
                .map(why -> Said.named(active.setup()) + " against " + Said.named(base.setup()) + turning + ": " + why)
                .toList();
    }

    private Stream<TurnedSetup> turning() {
        return shown.stream().filter(one -> one.turn().isPresent());
    }

    /** The ways round that have a column: one where all set-ups go round alike. */
    private List<Direction> ways() {
        Direction way = asked.work().direction();
        boolean alike = turning().allMatch(one -> isAlike(one.turn().orElseThrow(), asked.turnedBack(one)));
        return alike ? List.of(way) : List.of(way, way.other());
    }

    private static boolean isAlike(TurnAnswer.Turns turn, TurnAnswer back) {
        return back instanceof TurnAnswer.Turns there
                && !OtherWay.differs(turn.limit(), there.limit())
                && Math.abs(turn.limit().nearUndersteer().orElse(0)
                                - there.limit().nearUndersteer().orElse(0))
                        < Criterion.NEAR_UNDERSTEER.noticeable();
    }

    private Verdict verdict() {
        List<Direction> ways = ways();
        List<Verdict.Column> columns = new ArrayList<>();
        for (Direction way : ways) {
            String round = ways.size() == 1 ? "both ways" : "turning " + way.key();
            columns.add(new Verdict.Column("lets go first, " + round, FIRST_MEANS, Verdict.Kind.WORDS));
        }
        columns.add(new Verdict.Column("near limit, deg/g", NEAR_MEANS, Verdict.Kind.NUMBER_WITH_DOUBT));
        List<String> warnings = new ArrayList<>(beyond().stream().toList());
        List<Verdict.Line> lines = new ArrayList<>();
        int turned = 0;
        for (TurnedSetup one : shown) {
            String name = one.setup().name();
            List<Verdict.Cell> cells = new ArrayList<>();
            if (one.turn().isEmpty()) {
                ways.forEach(way -> cells.add(Verdict.Cell.of("no answer")));
                cells.add(Verdict.Cell.of(""));
                warnings.add(Said.named(one.setup()) + " has no answer: "
                        + one.silence().orElse("it falls over") + ".");
            } else {
                int car = turned++;
                for (Direction way : ways) {
                    cells.add(limit(one, car, way));
                }
                cells.add(near(one, car, ways));
                LimitWords.split(one.turn().get(), asked.turnedBack(one))
                        .ifPresent(split -> warnings.add(Said.named(one.setup()) + ": " + split));
            }
            lines.add(new Verdict.Line(name, one.setup().look(), cells));
        }
        return new Verdict(warnings, columns, lines, sure());
    }

    /** What is shown where the pace that was chosen is beyond the limit of the set-up that is adjusted. */
    private Optional<String> beyond() {
        TurnedSetup active = asked.active();
        double pace = asked.work().pace();
        return active.turn()
                .filter(turn -> !active.reaches(pace))
                .map(turn -> Said.named(active.setup()) + " does not reach " + Units.pace(pace)
                        + ": what is drawn is at its limit, "
                        + Units.exactPace(turn.limit().lateralAcceleration())
                        + ".");
    }

    private TurnAnswer turn(TurnedSetup one, Direction way) {
        return way == asked.work().direction() ? one.turn().orElseThrow() : asked.turnedBack(one);
    }

    private Verdict.Cell limit(TurnedSetup one, int car, Direction way) {
        if (!(turn(one, way) instanceof TurnAnswer.Turns turn)) {
            return Verdict.Cell.of("no answer");
        }
        Limit limit = turn.limit();
        Optional<Verdict.Bar> bar = VerdictWords.other(limit)
                .map(end -> new Verdict.Bar(
                        VerdictWords.gripInHand(limit, end),
                        halfWidth(way, car, BALANCE),
                        EventWords.end(end) + " has " + VerdictWords.inHand(limit, end)));
        return new Verdict.Cell(VerdictWords.inACell(limit), doubt(way, car, LIMIT, 2), bar, !limit.frontFirst());
    }

    /** The understeer near the limit, of the way round where it pushes or slides more. */
    private Verdict.Cell near(TurnedSetup one, int car, List<Direction> ways) {
        return worse(one, ways)
                .map(way -> new Verdict.Cell(
                        Numbers.signed(
                                Criterion.NEAR_UNDERSTEER
                                        .unit()
                                        .fromSi(nearLimit(one, way).getAsDouble()),
                                1),
                        doubt(way, car, NEAR, 1),
                        Optional.empty(),
                        false))
                .orElse(Verdict.Cell.of(""));
    }

    private OptionalDouble nearLimit(TurnedSetup one, Direction way) {
        return turn(one, way) instanceof TurnAnswer.Turns turn ? turn.limit().nearUndersteer() : OptionalDouble.empty();
    }

    /** The way round where it pushes or slides more near its limit. */
    private Optional<Direction> worse(TurnedSetup one, List<Direction> ways) {
        return ways.stream()
                .filter(way -> nearLimit(one, way).isPresent())
                .reduce((here, there) -> Math.abs(nearLimit(one, there).getAsDouble())
                                > Math.abs(nearLimit(one, here).getAsDouble())
                        ? there
                        : here);
    }

    private Optional<SlopeSpread> spread(Direction way, int car, Judged figure) {
        return Optional.ofNullable(doubts.get(way)).flatMap(doubt -> doubt.of(car, figure));
    }

    private OptionalDouble halfWidth(Direction way, int car, Judged figure) {
        return spread(way, car, figure)
                .map(spread -> OptionalDouble.of(spread.halfWidth()))
                .orElse(OptionalDouble.empty());
    }

    private Optional<String> doubt(Direction way, int car, Judged figure, int digits) {
        Unit unit = figure.criterion().unit();
        return spread(way, car, figure).map(spread -> "± " + Numbers.fixed(unit.fromSi(spread.halfWidth()), digits));
    }

    private Optional<String> sure() {
        if (doubts.isEmpty()) {
            return Optional.empty();
        }
        int cars = (int) turning().count();
        boolean fair = doubts.values().stream()
                .allMatch(doubt -> Stream.iterate(0, car -> car + 1)
                        .limit(cars)
                        .flatMap(car ->
                                Stream.of(LIMIT, BALANCE, NEAR).flatMap(figure -> doubt.of(car, figure).stream()))
                        .allMatch(SlopeSpread::isFair));
        return Optional.of("± by first-order doubt, nineteen times in twenty"
                + (fair ? "." : "; wider in truth, as a stop or the limit is near."));
    }
}
