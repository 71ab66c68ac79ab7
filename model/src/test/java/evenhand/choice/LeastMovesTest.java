package evenhand.choice;

import static evenhand.answers.Trials.judged;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.answers.Aim;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.answers.Trials;
import evenhand.catalogue.CatalogueTest;
import evenhand.catalogue.Entries;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The least moves by what marks them: no way along what is asked, within the ranges, is any shorter. */
class LeastMovesTest {
    private static final Entries CAR = CatalogueTest.car();
    private static final Trial TRIAL = Trials.at(0.5);
    private static final Judged ROLL = judged(Criterion.ROLL_GRADIENT, 0.5);
    private static final Judged SHARE = judged(Criterion.FRONT_SHARE, 0.5);
    private static final List<Span> SPANS = List.of(
            Span.of(CAR, "rear.lateralLocator.height", 0.2, 0.34),
            Span.of(CAR, "front.spring.rate", 40_000, 90_000),
            Span.of(CAR, "rear.spring.rate", 20_000, 40_000));
    private static final double[] PRESENT = {0, 0, 0};

    private static Moves moves(Trial trial, Aim... asked) {
        return new Moves(new Variation(CAR, SPANS, trial, List.of(), Progress.NONE), List.of(asked));
    }

    private static double at(Judged judged, double... move) {
        return moves(TRIAL, new Aim(judged, Aim.Sense.EXACTLY, 0)).figure(move).orElseThrow();
    }

    /** An aim by so many times what is noticeable above the present car. */
    private static Aim above(Judged judged, Aim.Sense sense, double times) {
        return new Aim(
                judged, sense, at(judged, PRESENT) + times * judged.criterion().noticeable());
    }

    private static double[] slopes(Judged judged, double[] move) {
        double[] slopes = new double[move.length];
        for (int k = 0; k < move.length; k++) {
            double[] up = move.clone();
            double[] down = move.clone();
            up[k] += 1e-3;
            down[k] -= 1e-3;
            slopes[k] = (at(judged, up) - at(judged, down))
                    / 2e-3
                    / judged.criterion().noticeable();
        }
        return slopes;
    }

    private static double length(double... way) {
        double squares = 0;
        for (double one : way) {
            squares += one * one;
        }
        return Math.sqrt(squares);
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    @Test
    void oneDemandIsMetStraightAcrossItsLevels() {
        Aim aim = above(ROLL, Aim.Sense.EXACTLY, 1);
        double[] least = new LeastMoves(moves(TRIAL, aim)).near(PRESENT);
        assertThat(at(ROLL, least)).isCloseTo(aim.value(), within(1e-9));
        double[] slopes = slopes(ROLL, least);
        assertThat(length(cross(least, slopes))).isLessThan(1e-4 * length(least) * length(slopes));
        assertThat(length(least)).isGreaterThan(1e-2);
    }

    /** Off both demands by no more than they ask: the way lies in the plane of their slopes. */
    @Test
    void twoDemandsAreMetInThePlaneOfTheirSlopes() {
        Aim aim = above(ROLL, Aim.Sense.EXACTLY, 1);
        Aim keep = above(SHARE, Aim.Sense.EXACTLY, 0.3);
        double[] least = new LeastMoves(moves(TRIAL, aim, keep)).near(PRESENT);
        assertThat(at(ROLL, least)).isCloseTo(aim.value(), within(1e-9));
        assertThat(at(SHARE, least)).isCloseTo(keep.value(), within(1e-9));
        double[] across = cross(slopes(ROLL, least), slopes(SHARE, least));
        double off = least[0] * across[0] + least[1] * across[1] + least[2] * across[2];
        assertThat(Math.abs(off)).isLessThan(1e-4 * length(least) * length(across));
        assertThat(length(across)).isGreaterThan(1e-2 * length(slopes(ROLL, least)) * length(slopes(SHARE, least)));
    }

    @Test
    void aBoundThatIsKeptByFarIsNotInTheWay() {
        Aim aim = above(ROLL, Aim.Sense.EXACTLY, 1);
        double[] alone = new LeastMoves(moves(TRIAL, aim)).near(PRESENT);
        for (Aim.Sense sense : List.of(Aim.Sense.AT_MOST, Aim.Sense.AT_LEAST)) {
            Aim far = above(SHARE, sense, sense == Aim.Sense.AT_MOST ? 50 : -50);
            assertThat(new LeastMoves(moves(TRIAL, aim, far)).near(PRESENT)).containsExactly(alone, within(1e-9));
        }
    }

    @Test
    void aMoveThatWouldLeaveItsRangeEndsThereAndTheOthersGoOnStraight() {
        Moves moves = moves(TRIAL, above(ROLL, Aim.Sense.EXACTLY, 0));
        double[] free = new LeastMoves(moves(TRIAL, above(ROLL, Aim.Sense.EXACTLY, 1))).near(PRESENT);
        int most = 0;
        for (int k = 1; k < free.length; k++) {
            double here = room(moves, free, k);
            most = here < room(moves, free, most) ? k : most;
        }
        // Farther than what first goes out of its range can go.
        Aim far = above(ROLL, Aim.Sense.EXACTLY, 1.7 * room(moves, free, most));
        double[] least = new LeastMoves(moves(TRIAL, far)).near(PRESENT);
        assertThat(at(ROLL, least)).isCloseTo(far.value(), within(1e-9));
        assertThat(least[most]).isEqualTo(free[most] > 0 ? moves.highest(most) : moves.lowest(most));
        int one = (most + 1) % 3;
        int other = (most + 2) % 3;
        double[] slopes = slopes(ROLL, least);
        double across = least[one] * slopes[other] - least[other] * slopes[one];
        assertThat(Math.abs(across))
                .isLessThan(1e-4 * length(least[one], least[other]) * length(slopes[one], slopes[other]));
    }

    /** How often a way can be gone until a move is at its end. */
    private static double room(Moves moves, double[] way, int k) {
        return (way[k] > 0 ? moves.highest(k) : moves.lowest(k)) / way[k];
    }

    @Test
    void aFixedMoveStaysAndTheOthersGoStraight() {
        Aim aim = above(ROLL, Aim.Sense.EXACTLY, 1);
        double[] start = {0.1, 0, 0};
        double[] least = new LeastMoves(moves(TRIAL, aim), new boolean[] {true, false, false}).near(start);
        assertThat(least[0]).isEqualTo(0.1);
        assertThat(at(ROLL, least)).isCloseTo(aim.value(), within(1e-9));
        double[] slopes = slopes(ROLL, least);
        assertThat(least[1] * slopes[2]).isCloseTo(least[2] * slopes[1], within(1e-4 * length(slopes)));
    }

    /** All of a fifth of a micrometre moves the lean by next to nothing, yet evenly: three tenths of the range are three tenths. */
    @Test
    void aRangeThatHardlyMovesTheFigureIsWalkedLikeAnother() {
        double pivot = SPANS.get(0).adjustable().si();
        Span narrow = Span.of(CAR, SPANS.get(0).path(), pivot - 1e-7, pivot + 1e-7);
        Variation variation = new Variation(CAR, List.of(narrow), TRIAL, List.of(), Progress.NONE);
        double wanted = variation
                .figure(new Aim(ROLL, Aim.Sense.EXACTLY, 0), pivot + 0.6e-7)
                .orElseThrow();
        Moves moves = new Moves(variation, List.of(new Aim(ROLL, Aim.Sense.EXACTLY, wanted)));
        assertThat(new LeastMoves(moves).near(new double[] {0})[0]).isCloseTo(0.3, within(1e-3));
    }

    @Test
    void aMoveIsTheWayFromThePresentValueInWidthsOfTheRange() {
        Moves moves = moves(TRIAL, above(ROLL, Aim.Sense.EXACTLY, 1));
        double pivot = SPANS.get(0).adjustable().si();
        double rate = SPANS.get(1).adjustable().si();
        assertThat(moves.move(0, pivot + 0.035)).isCloseTo(0.25, within(1e-12));
        assertThat(moves.lowest(0)).isCloseTo((0.2 - pivot) / 0.14, within(1e-12));
        assertThat(moves.highest(1)).isCloseTo((90_000 - rate) / 50_000, within(1e-12));
        double[] values = moves.values(new double[] {0.25, -0.1, 9});
        assertThat(values[0]).isCloseTo(pivot + 0.035, within(1e-12));
        assertThat(values[1]).isCloseTo(rate - 5_000, within(1e-8));
        assertThat(values[2]).isEqualTo(40_000);
        assertThat(moves.size(new double[] {0.3, -0.4, 1.2})).isCloseTo(1.69, within(1e-12));
    }

    @Test
    void whatIsMissingIsCountedInWhatIsNoticeableAndSquared() {
        Aim aim = above(ROLL, Aim.Sense.EXACTLY, 2);
        Aim most = above(SHARE, Aim.Sense.AT_MOST, -3);
        Aim least = above(ROLL, Aim.Sense.AT_LEAST, 1);
        Moves moves = moves(TRIAL, aim, most, least);
        assertThat(moves.lacking(PRESENT)).containsExactly(new double[] {2, -3, 1}, within(1e-9));
        assertThat(moves.missing(PRESENT)).isCloseTo(4 + 9 + 1, within(1e-8));
        Moves kept = moves(TRIAL, aim, above(SHARE, Aim.Sense.AT_MOST, 3), above(ROLL, Aim.Sense.AT_LEAST, -1));
        assertThat(kept.missing(PRESENT)).isCloseTo(4, within(1e-9));
        assertThat(kept.missingAimMost(PRESENT)).isCloseTo(4, within(1e-9));
    }

    /** What is just kept counts a tenth of what is noticeable of the aim, 0.1² = 10⁴·0.001²; and by 1 more 10⁴·1.001². */
    @Test
    void keepingComesBeforeTheAimWithALittleToSpare() {
        Aim aim = above(ROLL, Aim.Sense.EXACTLY, 0);
        for (Aim.Sense sense : List.of(Aim.Sense.AT_MOST, Aim.Sense.AT_LEAST)) {
            double out = sense == Aim.Sense.AT_MOST ? -1 : 1;
            assertThat(moves(TRIAL, aim, above(SHARE, sense, 0)).missingAimMost(PRESENT))
                    .isCloseTo(0.01, within(1e-9));
            assertThat(moves(TRIAL, aim, above(SHARE, sense, out)).missingAimMost(PRESENT))
                    .isCloseTo(10_020.01, within(1e-4));
            assertThat(moves(TRIAL, above(SHARE, sense, out)).missingAimMost(PRESENT))
                    .isCloseTo(1, within(1e-9));
        }
    }

    @Test
    void aPlaceWithoutAnAnswerMissesFarMoreAndMoreTheFartherItIs() {
        Trial beyond = Trials.at(1.5);
        Judged none = judged(Criterion.UNDERSTEER, 1.5);
        Moves moves = moves(
                beyond,
                new Aim(none, Aim.Sense.EXACTLY, 0),
                new Aim(none, Aim.Sense.AT_MOST, 0),
                new Aim(none, Aim.Sense.AT_LEAST, 0));
        assertThat(moves.lacking(PRESENT)).containsExactly(1000, -1000, 1000);
        assertThat(moves.lacking(new double[] {0.3, -0.4, 0})).containsExactly(1250, -1250, 1250);
    }
}
