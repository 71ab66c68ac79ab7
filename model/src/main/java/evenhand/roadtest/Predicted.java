package evenhand.roadtest;

import evenhand.car.End;
import java.util.Optional;

/**
 * What a car is expected to show where something was read, SI.
 *
 * @param expected in terms of what was measured; of a limit the limit
 * @param miss what was measured, less that; of a limit the pace by the moved radius less the limit
 * @param sigma standard deviation of the miss for errors of reading and of pace
 * @param lateralAcceleration at which it was read, m/s²; zero of a bounce
 * @param beyondLimit whether the car has no answer at that pace; then it is its limit's state that is expected
 * @param firstAxle the end that goes, of a limit
 */
public record Predicted(
        double expected,
        double miss,
        double sigma,
        double lateralAcceleration,
        boolean beyondLimit,
        Optional<End> firstAxle) {
    /** The miss in its standard deviations. */
    public double weighted() {
        return miss / sigma;
    }
}
