package evenhand.roadtest;

import evenhand.car.End;
import evenhand.catalogue.Adjustable;
import evenhand.doubt.Learnt;
import evenhand.doubt.Spread;
import evenhand.turn.Direction;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What road tests say of the file, SI.
 *
 * @param tests in the order in which they were asked
 * @param inputs numbers of the car, those first that moved most in their standard deviations
 * @param together unknowns that the readings cannot tell apart
 * @param setups every set-up of the file, before and after
 * @param effectiveShare part of the draws that counts where each is weighted by its true density
 * @param narrowed the figure that next readings narrow, where the first set-up has it
 * @param learnt what every other question can be asked with
 */
public record Findings(
        List<OfTest> tests,
        Agreement agreement,
        List<Input> inputs,
        List<Together> together,
        List<OfSetup> setups,
        double effectiveShare,
        Optional<Spread> narrowed,
        List<Next> nextReadings,
        Repeats repeats,
        Learnt learnt) {
    /** The effective part of the draws below which the intervals are rough. */
    public static final double ROUGH = 0.2;

    public Findings {
        tests = List.copyOf(tests);
        inputs = List.copyOf(inputs);
        together = List.copyOf(together);
        setups = List.copyOf(setups);
        nextReadings = List.copyOf(nextReadings);
    }

    /**
     * A reading beside what was expected of it.
     *
     * @param beforeHalfWidth of what the car as given was expected to show, by its own doubt, to first order
     * @param residual what was read less what the corrected car shows, in the standard deviations of reading and pace
     * @param fits whether that is within what readings scatter, the part of it that went into the correction allowed for
     */
    public record Seen(
            Observation observation,
            Predicted before,
            double beforeHalfWidth,
            Predicted after,
            double residual,
            boolean fits) {}

    /** What a test says. */
    public record OfTest(RoadTest test, List<Seen> seen, List<Gradient> gradients, List<Own> own, List<End> tooDamped) {
        public OfTest {
            seen = List.copyOf(seen);
            gradients = List.copyOf(gradients);
            own = List.copyOf(own);
            tooDamped = List.copyOf(tooDamped);
        }
    }

    /** What belongs to the day. */
    public record Own(
            Unknowns.OfTest what,
            double before,
            double beforeTolerance,
            double after,
            double afterTolerance,
            double moved,
            boolean suspect) {}

    /**
     * Whether file and road agree: the sum of squares as χ².
     *
     * @param settled whether the correction came to rest
     */
    public record Agreement(double chiSquare, int degrees, double probability, boolean settled) {
        /** Less probable, and they do not agree. */
        public static final double UNLIKELY = 0.01;

        public boolean agrees() {
            return settled && probability >= UNLIKELY;
        }
    }

    /**
     * A number of the car.
     *
     * @param number as the file has it, in the first set-up that has it
     * @param moved z, in the standard deviations that it had
     */
    public record Input(
            Adjustable number,
            double beforeTolerance,
            double after,
            double afterTolerance,
            double moved,
            boolean suspect) {}

    /** Two unknowns that go together. */
    public record Together(String one, String other, double correlation) {}

    /** A set-up's figures. */
    public record OfSetup(String name, List<Figure> figures) {
        public OfSetup {
            figures = List.copyOf(figures);
        }
    }

    /** A figure before and after; either is missing where the set-up does not have it. */
    public record Figure(Spread before, Spread after) {}

    /**
     * A reading that would narrow most what is asked for.
     *
     * @param pace m/s²; none of a bounce
     * @param low end of the figure's interval with this reading and those before it, SI
     */
    public record Next(
            String channel,
            Optional<Direction> turn,
            OptionalDouble pace,
            Optional<End> axle,
            double low,
            double high) {}
}
