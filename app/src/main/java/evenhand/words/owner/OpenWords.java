package evenhand.words.owner;

import evenhand.bump.BumpAnswer;
import evenhand.doubt.SlopeSpread;
import evenhand.lowering.Need;
import evenhand.quantity.Dimension;
import evenhand.scenario.Judge;
import evenhand.turn.TurnAnswer;
import evenhand.words.ChangeWords;
import evenhand.words.InPrint;
import evenhand.words.Units;
import evenhand.words.doubt.DoubtWords;
import evenhand.words.lowering.CostWords;
import evenhand.words.lowering.LowestWords;
import java.util.List;

/** What is still open: what falls short, what a driver has to mind, and what to measure better. */
public final class OpenWords {
    /** So many numbers are worth measuring next. */
    private static final int NEXT = 3;

    /** Of the variance; a smaller part is not worth the work. */
    private static final double WORTH_IT = 0.05;

    private OpenWords() {}

    /** What a need is called for somebody who has not seen the word. */
    public static String need(Need need) {
        return need.words()
                .replace("bump travel to the stop", "travel to the rubber")
                .replace("bump travel to metal", "travel to metal")
                .replace("pace at which the first bump stop is touched", "cornering at which the first rubber is met")
                .replace("pace from which the steering is let back", "cornering from which the steering is let back");
    }

    /** "The rear travel to metal is 46 mm; at least 60 mm is wanted." */
    public static String shortOf(CostWords.Cost cost, Units units) {
        return GotWords.capital("the " + need(cost.need())) + " is " + CostWords.value(cost.need(), cost.now(), units)
                + (CostWords.value(cost.need(), cost.now(), units)
                                .equals(CostWords.value(cost.need(), cost.before(), units))
                        ? " as before"
                        : "")
                + "; " + LowestWords.bound(cost.need(), units) + " is wanted.";
    }

    /** That metal meets over a bump, as the sums drive over it. */
    public static String blow(Judge.Over over, BumpAnswer.Straight now, Units units) {
        return "Over a " + over.event() + " at " + units.show(over.speed(), Dimension.SPEED, 0) + ", "
                + AskedWords.struck(now) + ": take such a place slower.";
    }

    /** That it did not before. */
    public static String newBlow(Judge.Over over, BumpAnswer.Straight now) {
        return "Over a " + over.event() + " " + AskedWords.struck(now) + ", which it did not before.";
    }

    /** That the tail is the end that goes. */
    public static String tail(TurnAnswer.Turns way) {
        return "Turning " + way.direction().key() + ", " + GotWords.ends(way.limit()) + ".";
    }

    /** What got worse, no stronger than its doubt: "it probably shakes more at the seat". */
    public static String more(String what, Known known, Units units) {
        String said = switch (known.sureness()) {
            case SURE -> what;
            case LIKELY -> "probably " + what;
            case OPEN -> "it may be that " + what;
        };
        return said + " (" + GotWords.nowAndBefore(known, units) + ")";
    }

    /** What to measure better, each with how well it is known and how to do better. */
    public static List<String> measure(List<SlopeSpread.Cause> causes, Units units) {
        return causes.stream()
                .filter(cause -> cause.share() >= WORTH_IT)
                .limit(NEXT)
                .map(cause -> GotWords.capital(ChangeWords.name(cause.path())) + " ("
                        + InPrint.symbol(DoubtWords.tolerance(cause.tolerance(), units)) + "): "
                        + cause.tolerance().number().slot().how() + ".")
                .toList();
    }
}
