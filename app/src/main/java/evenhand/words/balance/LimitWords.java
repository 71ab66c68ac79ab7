package evenhand.words.balance;

import evenhand.answers.Answers;
import evenhand.car.End;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.turn.Direction;
import evenhand.turn.Limit;
import evenhand.turn.PacesAnswer;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import evenhand.turn.WheelState;
import evenhand.words.EventWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The limit that a driver meets, in words: what ends the turn, where, and what each end has left. Which end goes is said by
 * the limit's first axle, never by the sign of its balance.
 */
public final class LimitWords {
    /** A car that uses less than this of the grip of both its ends at the fold does not slide there. */
    static final double SLIDES_FROM = 0.9;

    /** A wheel that carries less than this share of the weight carries nothing. */
    private static final double NOTHING_OF_THE_WEIGHT = 0.01;

    private static final Unit DEG = Dimension.ANGLE.metric();
    private static final Unit DEG_PER_G = Dimension.UNDERSTEER_GRADIENT.metric();

    private LimitWords() {}

    /** Whether a car comes to its limit because it tips over, with grip in hand at both ends. */
    public static boolean tips(Limit limit) {
        return limit.cause() == Limit.Cause.SIDESLIP
                && limit.row().frontGripUsed() < SLIDES_FROM
                && limit.row().rearGripUsed() < SLIDES_FROM;
    }

    /** Whether the brakes are on there. */
    static boolean brakes(Limit limit) {
        return limit.row().changing().map(TurnRow.Changing::brakeForce).orElse(0.0) > 0;
    }

    /** Which end goes first, in a word: "front", "rear", "neither". */
    public static String first(Limit limit) {
        return tips(limit) ? "neither" : limit.firstAxle().map(EventWords::end).orElse("neither");
    }

    /** What ends the turn, in a word or two: "sideslip", "spin", "critical speed". */
    public static String cause(Limit limit) {
        return switch (limit.cause()) {
            case SIDESLIP -> tips(limit) ? "tips over" : "sideslip";
            case WHEELSPIN -> brakes(limit) ? "wheel locks" : "wheelspin";
            case SPIN -> "spin";
            case CRITICAL_SPEED -> "critical speed";
            case LINKS -> "links end";
            case GAVE_UP -> "search gave up";
        };
    }

    /**
     * The whole sentence on a limit: "At its limit, 0.790 g, the tail comes round unless the driver steers against it: the
     * rear uses 97.1 % of its grip, the front 92.0 % (limit balance −5.3 %)."
     */
    public static String sentence(Limit limit, Direction direction, Units units) {
        TurnRow row = limit.row();
        String at = "At its limit, " + Units.exactPace(limit.lateralAcceleration()) + ", ";
        return switch (limit.cause()) {
            case SIDESLIP ->
                tips(limit)
                        ? at + tipping(row, direction)
                        : at + "the " + first(limit) + " gives out first, by sideslip: " + used(limit) + ".";
            case WHEELSPIN ->
                at + "the " + limit.spinningWheel().map(Wheel::words).orElse("driven")
                        + (brakes(limit)
                                ? " wheel has spent its grip on its brake and locks"
                                : " wheel has spent its grip on drive and spins")
                        + limit.firstAxle()
                                .map(end -> ", and the " + EventWords.end(end) + " gives out first")
                                .orElse("")
                        + ". Of the side grip that " + (brakes(limit) ? "the brakes leave" : "drive leaves") + ", "
                        + used(limit) + ".";
            case SPIN -> at + "the tail comes round unless the driver steers against it: " + used(limit) + ".";
            case CRITICAL_SPEED ->
                at + "neither end slides, but past " + units.show(row.speed(), Dimension.SPEED, 0)
                        + " on this circle the steering wheel has to be held against the turn; "
                        + inHand(row.frontGripUsed()) + " of the front's grip and " + inHand(row.rearGripUsed())
                        + " of the rear's is still in hand.";
            case LINKS ->
                at + ends(limit)
                        + " no further: no tyre slides yet, but beyond it nothing here holds. Look at `travel`.";
            case GAVE_UP ->
                "The search gave up at " + Units.exactPace(limit.lateralAcceleration())
                        + " before it met a limit; what is said up to there holds.";
        };
    }

    /** The same in half a sentence, for a line beside others: "the tail comes round past 0.790 g". */
    public static String brief(Limit limit) {
        String at = Units.exactPace(limit.lateralAcceleration());
        return switch (limit.cause()) {
            case SIDESLIP ->
                tips(limit)
                        ? "it tips over rather than slides, at " + at
                        : "the " + first(limit) + " goes first, at " + at;
            case WHEELSPIN ->
                "the " + limit.spinningWheel().map(Wheel::words).orElse("driven")
                        + (brakes(limit) ? " wheel locks, at " : " wheel spins, at ") + at
                        + limit.firstAxle()
                                .map(end -> ", and the " + EventWords.end(end) + " goes first")
                                .orElse("");
            case SPIN -> "the tail comes round past " + at + " unless the driver steers against it";
            case CRITICAL_SPEED ->
                "the steering wheel has to be held against the turn past " + at + ", though neither end slides";
            case LINKS -> ends(limit) + " no further than " + at;
            case GAVE_UP -> "the search gave up at " + at;
        };
    }

    /** What is met at the limit, in a few words for a picture; nothing where one end simply gives no more. */
    public static String mark(Limit limit) {
        return switch (limit.cause()) {
            case SPIN -> "the tail comes round";
            case CRITICAL_SPEED -> "steering held against the turn";
            case LINKS -> "links end";
            case GAVE_UP -> "search gave up";
            case SIDESLIP, WHEELSPIN -> "";
        };
    }

    /** What ends the travel: "the rear links reach". */
    public static String ends(Limit limit) {
        return limit.endOfLinks()
                .map(end -> "the " + EventWords.end(end.axle())
                        + (end.part().equals("lateralLocator")
                                ? " lateral locator's crank is over centre and reaches"
                                : " links reach"))
                .orElse("the links reach");
    }

    /**
     * The warning that comes before all else: "Turning left the front goes first, turning right the rear: the tail comes round
     * past 0.820 g unless the driver steers against it." Nothing where the same end goes both ways, or one way has no answer.
     */
    public static Optional<String> split(TurnAnswer.Turns turn, TurnAnswer other) {
        return other instanceof TurnAnswer.Turns there
                ? split(turn.direction(), turn.limit(), there.limit())
                : Optional.empty();
    }

    /** The same of a car that was asked for its paces and its limit alone, on one circle. */
    public static Optional<String> split(Answers answers) {
        return answers.bends().size() > 1
                        && answers.in(0).turn() instanceof PacesAnswer.Paces turn
                        && answers.in(1).turn() instanceof PacesAnswer.Paces there
                ? split(turn.direction(), turn.limit(), there.limit())
                : Optional.empty();
    }

    private static Optional<String> split(Direction direction, Limit limit, Limit otherWay) {
        if (limit.frontFirst() == otherWay.frontFirst()) {
            return Optional.empty();
        }
        Direction front = limit.frontFirst() ? direction : direction.other();
        Limit rear = limit.frontFirst() ? otherWay : limit;
        return Optional.of("Turning " + front.key() + " the front goes first, turning "
                + front.other().key() + " " + brief(rear) + ".");
    }

    /** "the front uses 98.0 % of its grip, the rear 92.1 % (limit balance +6.4 %)", the end that goes first. */
    private static String used(Limit limit) {
        boolean rearFirst = limit.firstAxle().isPresent() && limit.firstAxle().get() == End.REAR;
        String front = BalanceWords.perCent(limit.row().frontGripUsed(), false);
        String rear = BalanceWords.perCent(limit.row().rearGripUsed(), false);
        return "the " + (rearFirst ? "rear" : "front") + " uses " + (rearFirst ? rear : front) + " of its grip, the "
                + (rearFirst ? "front " + front : "rear " + rear) + " (limit balance "
                + BalanceWords.perCent(limit.limitBalance(), true) + ")";
    }

    private static String inHand(double gripUsed) {
        return Numbers.percent(Math.max(0, 1 - gripUsed), 0);
    }

    /** "Near its limit, at 0.711 g, it understeers by 7.10 deg/g."; nothing where it has no value there. */
    public static List<String> near(Limit limit) {
        OptionalDouble gradient = limit.nearUndersteer();
        if (gradient.isEmpty()) {
            return List.of();
        }
        return List.of("Near its limit, at " + Units.exactPace(Limit.NEAR * limit.lateralAcceleration()) + ", it "
                + BalanceWords.verdict(gradient.getAsDouble()) + ".");
    }

    /** Whether a car pushes near its limit: its gradient there is positive beyond what a driver feels. */
    public static boolean pushesNear(Limit limit) {
        return limit.nearUndersteer().isPresent()
                && DEG_PER_G.fromSi(limit.nearUndersteer().getAsDouble()) > BalanceWords.NEAR_NEUTRAL;
    }

    private static String tipping(TurnRow row, Direction direction) {
        StringBuilder text = new StringBuilder("it tips over rather than slides: neither axle is out of grip (front ");
        text.append(BalanceWords.perCent(row.frontGripUsed(), false)).append(", rear ");
        text.append(BalanceWords.perCent(row.rearGripUsed(), false)).append("), and ");
        double weight = 0;
        for (WheelState wheel : row.wheels()) {
            weight += wheel.load();
        }
        List<Wheel> empty = new ArrayList<>();
        for (End end : End.values()) {
            Wheel wheel = Wheel.inside(end, direction);
            if (row.wheel(wheel).load() < NOTHING_OF_THE_WEIGHT * weight) {
                empty.add(wheel);
            }
        }
        if (empty.isEmpty()) {
            text.append("its roll of ").append(Numbers.fixed(Math.abs(DEG.fromSi(row.roll())), 2));
            return text.append(" deg can be held no longer.").toString();
        }
        text.append("the ").append(empty.get(0).words());
        return empty.size() == 1
                ? text.append(" wheel carries nothing.").toString()
                : text.append(" and ")
                        .append(empty.get(1).words())
                        .append(" wheels carry nothing.")
                        .toString();
    }
}
