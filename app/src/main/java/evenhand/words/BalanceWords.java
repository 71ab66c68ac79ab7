package evenhand.words;

import evenhand.answers.Figure;
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
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a steady turn says about a car, in plain sentences. They follow the numbers: where a sign turns round, so does
 * the sentence. Every number has its unit and every verdict its pace.
 */
public final class BalanceWords {
    /** Understeer gradients smaller than this are called near neutral, deg/g: a driver hardly feels them. */
    static final double NEAR_NEUTRAL = 0.15;

    /** Limit balances smaller than this are called near neutral, as a ratio. */
    static final double NEAR_NEUTRAL_AT_LIMIT = 0.01;

    /** A part of the budget smaller than this share of all its parts is not spoken of. */
    private static final double WORTH_SAYING = 0.15;

    /** More causes than these make no plain sentence. */
    private static final int MOST_CAUSES = 3;

    /** A cause with its part of the understeer gradient, deg/g. */
    private record Cause(String words, double part) {}

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

    /** The sentences of one set-up, in the order to be read. */
    public static List<String> of(HandSums sums, TurnAnswer.Turns turn, Units units) {
        List<String> sentences = ofTurn(sums, turn, units);
        for (TurnEvent event : turn.events()) {
            sentences.add(EventWords.sentence(event));
        }
        if (turn.events().isEmpty()) {
            sentences.add("Up to the limit nothing touches a stop, comes loose or lifts.");
        }
        return sentences;
    }

    /** The same without what happens on the way. */
    public static List<String> ofTurn(HandSums sums, TurnAnswer.Turns turn, Units units) {
        BalanceWords words = new BalanceWords(sums, turn, units);
        List<String> sentences = new ArrayList<>();
        words.paces(sentences);
        sentences.add(limit(turn.limit()));
        words.changeOfMind(sentences);
        words.causes(sentences);
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

    private void paces(List<String> sentences) {
        StringBuilder sentence = new StringBuilder();
        String before = "";
        for (PaceAnswer answer : turn.paces()) {
            if (answer instanceof PaceAnswer.InBalance pace) {
                OptionalDouble gradient = TurnFigures.UNDERSTEER_GRADIENT.si(pace.row());
                double k = DEG_PER_G.fromSi(gradient.orElse(0));
                String verb = gradient.isPresent() ? verb(k) : "is at its limit";
                sentence.append(sentence.isEmpty() ? "At " : ", at ").append(Units.pace(pace.lateralAcceleration()));
                if (!verb.equals(before)) {
                    sentence.append(" it ").append(verb);
                }
                if (gradient.isPresent()) {
                    sentence.append(' ').append(amount(k));
                }
                before = verb;
            }
        }
        if (!sentence.isEmpty()) {
            sentences.add(sentence.append('.').toString());
        }
        for (PaceAnswer answer : turn.paces()) {
            if (answer instanceof PaceAnswer.BeyondLimit beyond) {
                sentences.add("A pace of " + Units.pace(beyond.lateralAcceleration()) + " is beyond its limit.");
            }
        }
    }

    /** Which end gives out first, where, why, and what the other end has left. */
    static String limit(Limit limit) {
        double front = limit.row().frontGripUsed();
        double rear = limit.row().rearGripUsed();
        double balance = limit.limitBalance();
        boolean frontFirst = limit.firstAxle() == End.FRONT;
        String first = EventWords.end(limit.firstAxle());
        String other = frontFirst ? "rear" : "front";
        double firstUsed = frontFirst ? front : rear;
        double otherUsed = frontFirst ? rear : front;
        String pace = Units.pace(limit.lateralAcceleration());
        boolean even = Math.abs(balance) < NEAR_NEUTRAL_AT_LIMIT;
        boolean agree = even || frontFirst == balance > 0;
        String ofBalance = "limit balance " + perCent(balance, true);

        StringBuilder text = new StringBuilder("At its limit, ").append(pace).append(", ");
        if (limit.spinningWheel().isPresent()) {
            Wheel wheel = limit.spinningWheel().get();
            text.append("the ").append(wheel.words()).append(" wheel has spent its grip on drive and spins");
            text.append(wheel.end() == limit.firstAxle() ? ", so the " : ", while the ")
                    .append(first);
            text.append(" gives out first. ");
            text.append("Of the side grip that drive leaves them, the ")
                    .append(first)
                    .append(" uses ");
            text.append(perCent(firstUsed, false))
                    .append(" and the ")
                    .append(other)
                    .append(' ');
            text.append(perCent(otherUsed, false));
        } else {
            text.append("the ").append(first).append(" gives out first, by sideslip: it uses ");
            text.append(perCent(firstUsed, false))
                    .append(" of its grip and the ")
                    .append(other)
                    .append(' ');
            text.append(perCent(otherUsed, false));
        }
        if (even) {
            text.append(", which is near neutral (").append(ofBalance).append(").");
        } else if (agree) {
            text.append(", so the ").append(other).append(" has ").append(perCent(1 - otherUsed, false));
            text.append(" in hand (").append(ofBalance).append(").");
        } else {
            text.append(". By grip used, then, the ")
                    .append(other)
                    .append(" has less in hand (")
                    .append(ofBalance);
            text.append("), yet the ").append(first).append(" goes first: the two measures disagree at this limit.");
        }
        return text.toString();
    }

    /** Said where the car behaves one way at a gentle pace and the other way at its limit. */
    private void changeOfMind(List<String> sentences) {
        for (PaceAnswer answer : turn.paces()) {
            if (answer instanceof PaceAnswer.InBalance pace
                    && TurnFigures.UNDERSTEER_GRADIENT.si(pace.row()).isPresent()) {
                double k = DEG_PER_G.fromSi(
                        TurnFigures.UNDERSTEER_GRADIENT.si(pace.row()).getAsDouble());
                boolean frontFirst = turn.limit().firstAxle() == End.FRONT;
                if (Math.abs(k) >= NEAR_NEUTRAL && k > 0 != frontFirst) {
                    sentences.add("So its balance turns round: it " + (k > 0 ? "understeers" : "oversteers") + " at "
                            + Units.pace(pace.lateralAcceleration()) + ", and at the limit of "
                            + Units.pace(turn.limit().lateralAcceleration()) + " the "
                            + EventWords.end(turn.limit().firstAxle()) + " goes first.");
                }
                return;
            }
        }
    }

    private void causes(List<String> sentences) {
        for (PaceAnswer answer : turn.paces()) {
            if (answer instanceof PaceAnswer.InBalance pace) {
                OptionalDouble gradient = TurnFigures.UNDERSTEER_GRADIENT.si(pace.row());
                if (gradient.isPresent()) {
                    cause(Units.pace(pace.lateralAcceleration()), gradient.getAsDouble(), pace.budget(), sentences);
                }
            }
        }
    }

    private static void cause(String pace, double gradient, PaceAnswer.Budget budget, List<String> sentences) {
        double k = DEG_PER_G.fromSi(gradient);
        List<Cause> with = new ArrayList<>();
        List<Cause> against = new ArrayList<>();
        double all = 0;
        for (Figure<PaceAnswer.Budget> figure : TurnFigures.BUDGET) {
            all += Math.abs(figure.value(budget).orElse(0));
        }
        for (Figure<PaceAnswer.Budget> figure : TurnFigures.BUDGET) {
            double part = figure.value(budget).orElse(0);
            if (Math.abs(part) >= WORTH_SAYING * all && part != 0) {
                (part > 0 == k > 0 ? with : against).add(new Cause(figure.words(), part));
            }
        }
        Comparator<Cause> largestFirst = Comparator.comparingDouble(cause -> -Math.abs(cause.part()));
        with.sort(largestFirst);
        against.sort(largestFirst);
        if (Math.abs(k) >= NEAR_NEUTRAL && !with.isEmpty()) {
            StringBuilder text = new StringBuilder("At ").append(pace);
            text.append(k > 0 ? " the understeer comes from " : " the oversteer comes from ");
            list(with, text);
            if (!against.isEmpty()) {
                text.append("; against it ").append(against.size() == 1 ? "works " : "work ");
                list(against, text);
            }
            sentences.add(text.append('.').toString());
        } else if (Math.abs(k) < NEAR_NEUTRAL && !with.isEmpty() && !against.isEmpty()) {
            StringBuilder text = new StringBuilder("At ").append(pace).append(' ');
            with.addAll(against);
            list(with, text);
            sentences.add(text.append(" all but cancel.").toString());
        }
    }

    private static void list(List<Cause> causes, StringBuilder text) {
        int said = Math.min(causes.size(), MOST_CAUSES);
        for (int i = 0; i < said; i++) {
            text.append(i == 0 ? "" : i < said - 1 ? ", " : " and ");
            text.append(causes.get(i).words()).append(" (");
            text.append(Numbers.signed(causes.get(i).part(), 2)).append(" deg/g)");
        }
    }

    private void roll(List<String> sentences) {
        StringBuilder text = new StringBuilder("It rolls ");
        text.append(Numbers.fixed(
                DEG_PER_G.fromSi(HandSumFigures.ROLL_GRADIENT.si(sums).orElse(0)), 2));
        text.append(" deg/g by the hand sums");
        for (PaceAnswer answer : turn.paces()) {
            if (answer instanceof PaceAnswer.InBalance pace) {
                text.append(", ")
                        .append(Numbers.fixed(Math.abs(DEG.fromSi(pace.row().roll())), 2));
                text.append(" deg at ").append(Units.pace(pace.lateralAcceleration()));
            }
        }
        text.append(" and ")
                .append(Numbers.fixed(Math.abs(DEG.fromSi(turn.limit().row().roll())), 2));
        text.append(" deg at the limit of ").append(Units.pace(turn.limit().lateralAcceleration()));
        OptionalDouble share = HandSumFigures.FRONT_SHARE.si(sums);
        if (share.isPresent()) {
            text.append("; by the hand sums the front takes ").append(perCent(share.getAsDouble(), false));
            text.append(" of the load transfer");
        }
        sentences.add(text.append('.').toString());
    }

    private void insideWheels(List<String> sentences) {
        boolean left = turn.direction() == Direction.LEFT;
        Wheel front = left ? Wheel.FRONT_LEFT : Wheel.FRONT_RIGHT;
        Wheel rear = left ? Wheel.REAR_LEFT : Wheel.REAR_RIGHT;
        StringBuilder text = new StringBuilder("The inside wheels, ");
        text.append(front.words()).append(" and ").append(rear.words()).append(", still carry ");
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
                .append(Units.pace(turn.limit().lateralAcceleration()))
                .append('.');
        sentences.add(text.toString());
    }

    private void loads(TurnRow row, Wheel front, Wheel rear, StringBuilder text) {
        text.append(units.show(row.wheel(front).load(), Dimension.FORCE, 0)).append(" and ");
        text.append(units.show(row.wheel(rear).load(), Dimension.FORCE, 0));
    }

    private static String perCent(double ratio, boolean signed) {
        return (signed ? Numbers.signed(ratio * 100, 1) : Numbers.plain(ratio * 100, 1)) + " %";
    }
}
