package evenhand.words.balance;

import evenhand.car.Weights;
import evenhand.turn.Along;
import evenhand.turn.Limit;
import evenhand.turn.PaceAnswer;
import evenhand.turn.TurnAnswer;
import evenhand.words.BothWays;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What becomes of a turning car as its driver lifts off, presses on or brakes, in sentences. */
public final class AlongWords {
    /** Degrees of steer at the road wheel that nobody feels: common practice, no source. */
    private static final double UNFELT = 0.02;

    /** Change of the limit that is none, g. */
    private static final double AS_BEFORE = 0.005;

    /** What is said once beside all of it. */
    public static final String CAUTION =
            "Lifting off, power and brakes in a bend are tried on a closed course alone, from low speed first.";

    private static final String NEITHER = "neither";

    private AlongWords() {}

    /** What the driver does: "Lifting off (0.20 g, by the engine)". */
    public static String what(Along along) {
        String size = Numbers.fixed(Math.abs(along.acceleration()) / Weights.GRAVITY, 2) + " g";
        if (along.by() == Along.By.BRAKES) {
            return "Braking in the bend (" + size + ", clutch down)";
        }
        return (along.acceleration() < 0 ? "Lifting off (slowed " : "Pressing on (quicker by ")
                + size
                + (along.acceleration() < 0 ? " by the driven axle)" : ")");
    }

    /** All of it, one way round and, where that is another turn, the other; nothing of a steady turn. */
    public static List<String> of(TurnAnswer.Turns turn, Optional<TurnAnswer> other) {
        List<String> sentences = new ArrayList<>(of(turn, ""));
        other.ifPresent(answer -> {
            if (answer instanceof TurnAnswer.Turns turns) {
                sentences.addAll(
                        of(turns, "T" + BothWays.turning(turns.direction()).substring(1) + ", "));
            }
        });
        if (!sentences.isEmpty()) {
            sentences.add(CAUTION);
        }
        return sentences;
    }

    private static List<String> of(TurnAnswer.Turns turn, String opening) {
        List<String> sentences = new ArrayList<>();
        for (PaceAnswer pace : turn.paces()) {
            if (pace instanceof PaceAnswer.InBalance here) {
                AgainstSteady.of(here).ifPresent(against -> sentences.add(said(opening, pace(against))));
            }
        }
        turn.steadyLimit().ifPresent(steady -> sentences.add(said(opening, limit(turn.limit(), steady))));
        return sentences;
    }

    private static String said(String opening, String sentence) {
        return opening.isEmpty()
                ? sentence
                : opening + sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
    }

    /** "At 0.40 g it tightens its line: it needs 0.44 deg less steer at the road wheel than at a steady speed; …". */
    public static String pace(AgainstSteady against) {
        double degrees = against.moreInDegrees();
        String line = Math.abs(degrees) < UNFELT
                ? "it keeps its line, to " + Numbers.fixed(UNFELT, 2) + " deg of steer"
                : (degrees < 0 ? "it tightens its line" : "it runs wide") + ": it needs "
                        + Numbers.fixed(Math.abs(degrees), 2) + " deg " + (degrees < 0 ? "less" : "more")
                        + " steer at the road wheel than at a steady speed";
        return "At " + Units.pace(against.row().lateralAcceleration()) + " " + line + "; grip balance "
                + Numbers.signedPercent(against.row().gripBalance(), 1) + " instead of "
                + Numbers.signedPercent(against.steady().gripBalance(), 1) + " ("
                + (against.row().gripBalance() < 0 ? "the rear" : "the front") + " uses more of its grip).";
    }

    /** "Its limit falls from 0.79 g to 0.66 g, and the rear goes first instead of the front." */
    public static String limit(Limit limit, Limit steady) {
        double now = limit.lateralAcceleration() / Weights.GRAVITY;
        double before = steady.lateralAcceleration() / Weights.GRAVITY;
        String first = LimitWords.first(limit);
        String firstBefore = LimitWords.first(steady);
        String ends = first.equals(firstBefore)
                ? (first.equals(NEITHER) ? "" : ", and the " + first + " still goes first")
                : ", and " + end(first) + " goes first instead of " + end(firstBefore);
        String moved = Math.abs(now - before) < AS_BEFORE
                ? "Its limit stays at " + Numbers.fixed(now, 2) + " g"
                : "Its limit " + (now < before ? "falls" : "rises") + " from " + Numbers.fixed(before, 2) + " g to "
                        + Numbers.fixed(now, 2) + " g";
        String locks = limit.spinningWheel()
                .filter(wheel -> LimitWords.brakes(limit))
                .map(wheel -> "; the " + wheel.words() + " wheel locks there")
                .orElse("");
        return moved + ends + locks + ".";
    }

    private static String end(String first) {
        return first.equals(NEITHER) ? "neither end" : "the " + first;
    }
}
