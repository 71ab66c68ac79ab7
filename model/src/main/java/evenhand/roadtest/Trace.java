package evenhand.roadtest;

import java.util.List;

/**
 * A log that says how fast the car went, with what was steady in it.
 *
 * @param test name of its road test
 * @param file that it was read from
 * @param times s, rising
 * @param lateralAcceleration at each of them, m/s², left positive
 * @param pieces all that was steady, in the order of time
 * @param leftOut moments, s, whose pieces count for nothing
 */
public record Trace(
        String test,
        String file,
        List<Double> times,
        List<Double> lateralAcceleration,
        List<SteadyPieces.Steady> pieces,
        List<Double> leftOut) {
    public Trace {
        times = List.copyOf(times);
        lateralAcceleration = List.copyOf(lateralAcceleration);
        pieces = List.copyOf(pieces);
        leftOut = List.copyOf(leftOut);
    }

    /** Whether a piece is not to count. */
    public boolean leavesOut(SteadyPieces.Steady piece) {
        return leftOut.stream().anyMatch(piece::holds);
    }
}
