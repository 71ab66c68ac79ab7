package evenhand.words.balance;

import evenhand.answers.HandSumFigures;
import evenhand.answers.TurnFigures;
import evenhand.car.End;
import evenhand.handsums.HandSums;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.turn.Direction;
import evenhand.turn.Limit;
import evenhand.turn.PaceAnswer;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnEvent;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import evenhand.words.EventWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a steady turn says about a car, in plain sentences. They follow the numbers: where a sign turns round, so does
 * the sentence. Every number has its unit and every verdict its pace.
 */
public final class BalanceWords {
    /** Understeer gradients smaller than this are called near neutral, deg/g: a driver hardly feels them. */
    public static final double NEAR_NEUTRAL = 0.15;

    /** Where one end uses so much more of its grip than the other, the gradient alone is no verdict. */
    private static final double GRADIENT_HIDES = 0.3;

    /** Beyond it the other end has next to nothing to do, and how many times is no measure. */
    private static final double MANY_TIMES = 100;

    /** Steer in excess of what the gradient tells is spoken of from here, deg. */
    private static final double STEER_WORTH_SAYING = 0.3;

    /** Sideslip is spoken of from here, deg. */
    private static final double MUCH_SIDESLIP = 12;

    private static final Unit DEG_PER_G = Dimension.UNDERSTEER_GRADIENT.metric();
    private static final Unit DEG = Dimension.ANGLE.metric();

    private final HandSums sums;
    private final TurnAnswer.Turns turn;
    private final Units units;

    private BalanceWords(HandSums sums, TurnAnswer.Turns turn, Units units) {
        this.sums = sums;
        this.turn = turn;
        this.units = units;
    }

    /**
     * The sentences of one set-up, in the order to be read.
     *
     * @param other the answer of the same car to a turn in the other direction; the turn itself where that was not asked
     */
    public static List<String> of(HandSums sums, TurnAnswer.Turns turn, TurnAnswer other, Units units) {
        List<String> sentences = ofTurn(sums, turn, other, units);
        for (TurnEvent event : turn.eventsToLimit()) {
            sentences.add(EventWords.sentence(event));
        }
        if (turn.eventsToLimit().isEmpty()) {
            sentences.add("Up to the limit nothing touches a stop, comes loose or lifts.");
        }
        return sentences;
    }

    /** The one sentence on the limit: which end gives out first, where, why, and what the other end has left. */
    public static String ofLimit(TurnAnswer.Turns turn, Units units) {
        return LimitWords.sentence(turn.limit(), turn.direction(), units);
    }

    /** What is another thing in a turn the other way; nothing where the car goes round both ways alike. */
    public static List<String> ofOtherWay(TurnAnswer.Turns turn, TurnAnswer other) {
        return OtherWay.of(turn, other);
    }

    /** The one sentence on how much it leans. */
    public static String ofRoll(HandSums sums, TurnAnswer.Turns turn, Units units) {
        List<String> sentence = new ArrayList<>();
        new BalanceWords(sums, turn, units).roll(sentence);
        return sentence.get(0);
    }

    /** The same without what happens on the way. */
    public static List<String> ofTurn(HandSums sums, TurnAnswer.Turns turn, TurnAnswer other, Units units) {
        BalanceWords words = new BalanceWords(sums, turn, units);
        List<String> sentences = new ArrayList<>();
        words.paces(sentences);
        words.hiddenByTheGradient(sentences);
        sentences.addAll(LimitWords.near(turn.limit()));
        sentences.add(ofLimit(turn, units));
        words.steerAndSideslipAtTheLimit(sentences);
        sentences.addAll(OtherWay.of(turn, other));
        words.changeOfMind(sentences);
        causes(turn, sentences);
        words.roll(sentences);
        words.insideWheels(sentences);
        return sentences;
    }

    /** The verdict on an understeer gradient in rad per m/s²: "understeers by 1.93 deg/g". */
    public static String verdict(double understeerGradient) {
        double k = DEG_PER_G.fromSi(understeerGradient);
        return verb(k) + " " + amount(k);
    }

    private static String verb(double k) {
        return Math.abs(k) < NEAR_NEUTRAL ? "is near neutral" : k > 0 ? "understeers" : "oversteers";
    }

    private static String amount(double k) {
        return Math.abs(k) < NEAR_NEUTRAL
                ? "(" + Numbers.signed(k, 2) + " deg/g)"
                : "by " + Numbers.fixed(Math.abs(k), 2) + " deg/g";
    }

    /** Whether the gradient alone is no verdict here, because one end works far harder than the other. */
    private static boolean hides(TurnRow row) {
        return Math.abs(row.gripBalance()) > GRADIENT_HIDES;
    }

    /** An angle to the left, counted into the turn. */
    private double intoTheTurn(double angle) {
        return turn.direction() == Direction.LEFT ? angle : -angle;
    }

    /** Steer into the turn in excess of what the circle alone asks, deg. */
    private double excessSteer(TurnRow row) {
        return DEG.fromSi(intoTheTurn(row.steer() - row.ackermannSteer()));
    }

    private void paces(List<String> sentences) {
        StringBuilder sentence = new StringBuilder();
        String before = "";
        for (PaceAnswer answer : turn.paces()) {
            if (answer instanceof PaceAnswer.InBalance pace) {
                OptionalDouble gradient = TurnFigures.UNDERSTEER_GRADIENT.si(pace.row());
                double k = DEG_PER_G.fromSi(gradient.orElse(0));
                boolean hidden = gradient.isPresent() && hides(pace.row());
                String verb = hidden ? "has a gradient of" : gradient.isPresent() ? verb(k) : "is at its limit";
                sentence.append(sentence.isEmpty() ? "At " : ", at ").append(Units.pace(pace.lateralAcceleration()));
                if (!verb.equals(before)) {
                    sentence.append(" it ").append(verb);
                }
                if (gradient.isPresent()) {
                    sentence.append(' ').append(hidden ? Numbers.signed(k, 2) + " deg/g" : amount(k));
                }
                before = verb;
            }
        }
        if (!sentence.isEmpty()) {
            sentences.add(sentence.append('.').toString());
        }
        for (PaceAnswer answer : turn.paces()) {
            if (answer instanceof PaceAnswer.BeyondLimit beyond) {
                sentences.add("A pace of " + Units.pace(beyond.lateralAcceleration()) + " is beyond its limit"
                        + (beyond.steered().isPresent()
                                ? ": only steering against the turn would hold it there."
                                : "."));
            }
        }
    }

    /** Said at each pace where the gradient, a slope, does not tell how much steer or grip it takes. */
    private void hiddenByTheGradient(List<String> sentences) {
        for (PaceAnswer answer : turn.paces()) {
            if (answer instanceof PaceAnswer.InBalance pace) {
                TurnRow row = pace.row();
                OptionalDouble gradient = TurnFigures.UNDERSTEER_GRADIENT.si(row);
                if (gradient.isPresent()) {
                    grip(row, sentences);
                    steer(row, DEG.fromSi(gradient.getAsDouble() * pace.lateralAcceleration()), sentences);
                }
            }
        }
    }

    private static void grip(TurnRow row, List<String> sentences) {
        if (hides(row)) {
            boolean front = row.gripBalance() > 0;
            sentences.add("At " + Units.pace(row.lateralAcceleration()) + " that gradient alone is no verdict: the "
                    + (front ? "front" : "rear") + " already uses "
                    + perCent(front ? row.frontGripUsed() : row.rearGripUsed(), false) + " of its grip, the "
                    + (front ? "rear" : "front") + " only "
                    + perCent(front ? row.rearGripUsed() : row.frontGripUsed(), false) + harder(row, front) + ".");
        }
    }

    /** How many times as hard the harder end works, while that is a number that says something. */
    private static String harder(TurnRow row, boolean front) {
        double times = front ? row.frontGripUsed() / row.rearGripUsed() : row.rearGripUsed() / row.frontGripUsed();
        return times < MANY_TIMES
                ? " (the " + (front ? "front" : "rear") + " works " + Numbers.fixed(times, 1) + " times as hard)"
                : "";
    }

    private void steer(TurnRow row, double ofGradient, List<String> sentences) {
        double excess = excessSteer(row);
        double unexplained = (excess - ofGradient) * Math.signum(excess);
        if (Math.abs(excess) > STEER_WORTH_SAYING && unexplained > STEER_WORTH_SAYING) {
            sentences.add("At " + Units.pace(row.lateralAcceleration()) + " its steer is " + degrees(Math.abs(excess))
                    + (excess > 0 ? " more" : " less") + " than the circle alone asks ("
                    + Numbers.fixed(DEG.fromSi(intoTheTurn(row.steer())), 2) + " against "
                    + degrees(DEG.fromSi(intoTheTurn(row.ackermannSteer())))
                    + "), and the gradient at that pace would account for "
                    + Numbers.signed(ofGradient, 2) + " deg of it.");
        }
    }

    /** Said where the driver has his hands full at the limit: steer against the turn, or a nose far off the course. */
    private void steerAndSideslipAtTheLimit(List<String> sentences) {
        TurnRow row = turn.limit().row();
        String pace = Units.exactPace(row.lateralAcceleration());
        double steer = DEG.fromSi(intoTheTurn(row.steer()));
        if (steer < 0) {
            StringBuilder text = new StringBuilder("At the limit of ").append(pace);
            text.append(" it needs countersteer, ").append(degrees(-steer)).append(" against the turn");
            OptionalDouble before = turn.rowsToLimit().stream()
                    .filter(one -> intoTheTurn(one.steer()) >= 0)
                    .mapToDouble(TurnRow::lateralAcceleration)
                    .max();
            if (before.isPresent()) {
                text.append("; up to ").append(Units.exactPace(before.getAsDouble()));
                text.append(" it is steered into the turn");
            }
            sentences.add(text.append('.').toString());
        }
        double sideslip = DEG.fromSi(intoTheTurn(row.sideslip()));
        if (Math.abs(sideslip) > MUCH_SIDESLIP) {
            sentences.add("At the limit of " + pace + " its nose points " + degrees(Math.abs(sideslip))
                    + (sideslip < 0 ? " into" : " out of") + " the turn from the way that it goes (sideslip).");
        }
    }

    /** Said where the car behaves one way at a pace, or near its limit, and the other way at its limit. */
    private void changeOfMind(List<String> sentences) {
        Limit limit = turn.limit();
        if (LimitWords.tips(limit) || limit.firstAxle().isEmpty()) {
            return;
        }
        for (PaceAnswer answer : turn.paces()) {
            if (answer instanceof PaceAnswer.InBalance pace
                    && !hides(pace.row())
                    && TurnFigures.UNDERSTEER_GRADIENT.si(pace.row()).isPresent()) {
                double k = DEG_PER_G.fromSi(
                        TurnFigures.UNDERSTEER_GRADIENT.si(pace.row()).getAsDouble());
                boolean steerAgrees = excessSteer(pace.row()) > 0 == k > 0;
                if (steerAgrees && turnsRound(k)) {
                    turnsRound(k, "at " + Units.pace(pace.lateralAcceleration()), sentences);
                    return;
                }
            }
        }
        double near = DEG_PER_G.fromSi(limit.nearUndersteer().orElse(0));
        if (turnsRound(near)) {
            turnsRound(near, "near its limit", sentences);
        }
    }

    /** Whether a gradient, deg/g, that a driver feels promises another end than that which goes. */
    private boolean turnsRound(double k) {
        return Math.abs(k) >= NEAR_NEUTRAL && k > 0 != turn.limit().frontFirst();
    }

    private void turnsRound(double k, String where, List<String> sentences) {
        Limit limit = turn.limit();
        String at = Units.exactPace(limit.lateralAcceleration());
        sentences.add("So its balance turns round: it " + (k > 0 ? "understeers " : "oversteers ") + where
                + (limit.cause() == Limit.Cause.SPIN
                        ? ", and past the limit of " + at + " the tail comes round."
                        : ", and at the limit of " + at + " the " + LimitWords.first(limit) + " goes first."));
    }

    /** What the understeer gradient is made of at the fastest pace that is answered, largest part first. */
    public static Optional<String> largestCauses(TurnAnswer.Turns turn) {
        List<String> sentences = new ArrayList<>();
        causes(turn, sentences);
        return sentences.isEmpty() ? Optional.empty() : Optional.of(sentences.get(sentences.size() - 1));
    }

    private static void causes(TurnAnswer.Turns turn, List<String> sentences) {
        for (PaceAnswer answer : turn.paces()) {
            if (answer instanceof PaceAnswer.InBalance pace) {
                OptionalDouble gradient = TurnFigures.UNDERSTEER_GRADIENT.si(pace.row());
                if (gradient.isPresent()) {
                    CauseWords.say(pace, gradient.getAsDouble(), hides(pace.row()), sentences);
                }
            }
        }
    }

    private void roll(List<String> sentences) {
        StringBuilder text = new StringBuilder("It rolls ");
        text.append(Numbers.fixed(
                DEG_PER_G.fromSi(HandSumFigures.ROLL_GRADIENT.si(sums).orElse(0)), 2));
        text.append(" deg/g by the hand sums, as lateral acceleration begins");
        for (PaceAnswer answer : turn.paces()) {
            if (answer instanceof PaceAnswer.InBalance pace) {
                text.append(", ")
                        .append(Numbers.fixed(Math.abs(DEG.fromSi(pace.row().roll())), 2));
                text.append(" deg at ").append(Units.pace(pace.lateralAcceleration()));
            }
        }
        text.append(" and ")
                .append(Numbers.fixed(Math.abs(DEG.fromSi(turn.limit().row().roll())), 2));
        text.append(" deg at the limit of ").append(Units.exactPace(turn.limit().lateralAcceleration()));
        OptionalDouble share = HandSumFigures.FRONT_SHARE.si(sums);
        if (share.isPresent()) {
            text.append("; by the hand sums the front takes ").append(perCent(share.getAsDouble(), false));
            text.append(" of the load transfer");
        }
        sentences.add(text.append('.').toString());
    }

    private void insideWheels(List<String> sentences) {
        Wheel front = inside().get(0);
        Wheel rear = inside().get(1);
        StringBuilder text = new StringBuilder("The inside wheels, ");
        text.append(front.words()).append(" and ").append(rear.words()).append(", carry ");
        for (PaceAnswer answer : turn.paces()) {
            if (answer instanceof PaceAnswer.InBalance pace) {
                loads(pace.row(), front, rear, text);
                text.append(" at ")
                        .append(Units.pace(pace.lateralAcceleration()))
                        .append(", ");
            }
        }
        loads(turn.limit().row(), front, rear, text);
        text.append(" at the limit of ")
                .append(Units.exactPace(turn.limit().lateralAcceleration()))
                .append('.');
        sentences.add(text.toString());
    }

    private List<Wheel> inside() {
        return List.of(Wheel.inside(End.FRONT, turn.direction()), Wheel.inside(End.REAR, turn.direction()));
    }

    private void loads(TurnRow row, Wheel front, Wheel rear, StringBuilder text) {
        text.append(units.show(row.wheel(front).load(), Dimension.FORCE, 0)).append(" and ");
        text.append(units.show(row.wheel(rear).load(), Dimension.FORCE, 0));
    }

    private static String degrees(double angle) {
        return Numbers.fixed(angle, 2) + " deg";
    }

    static String perCent(double ratio, boolean signed) {
        return signed ? Numbers.signedPercent(ratio, 1) : Numbers.percent(ratio, 1);
    }
}
