package evenhand.roadtest;

import evenhand.answers.Trial;
import evenhand.car.LoadCase;
import evenhand.catalogue.Entries;
import java.util.List;
import java.util.Optional;

/**
 * A road test of one set-up.
 *
 * @param setup name of what was driven
 * @param car its entries
 * @param load what was aboard besides what the car was weighed with
 * @param grip factor on the friction of all four tyres on that day's surface
 * @param straightAhead where the mark on the rim stands on a straight road, to the left positive, rad
 * @param circle radius of it, m, where one was driven
 */
public record RoadTest(
        String name,
        String setup,
        Entries car,
        Optional<LoadCase> load,
        Measured grip,
        Measured straightAhead,
        Optional<Measured> circle,
        List<Observation> observations) {
    /** Of a surface of which nothing is said. Common practice, no source. */
    public static final Measured USUAL_GRIP = new Measured(1, 0.1);
    /** Where a mark on the rim stands that was stuck on by eye, rad. Common practice, no source. */
    public static final Measured USUAL_STRAIGHT_AHEAD = new Measured(0, Math.toRadians(3));
    /** A circle that was laid out by a tape: so much of its radius it may be off. Common practice, no source. */
    public static final double USUAL_RADIUS_TOLERANCE = 0.01;

    public RoadTest {
        observations = List.copyOf(observations);
    }

    /** Radius of the circle, m; where none was driven, that of the usual one, of which what may then be read hardly depends. */
    public double radius() {
        return circle.map(Measured::value).orElse(Trial.USUAL_RADIUS);
    }

    /** Whether a turn must be followed to its limit, or as far as something was felt. */
    boolean isFollowed() {
        return observations.stream()
                .anyMatch(one -> one instanceof Observation.Limit
                        || (one instanceof Observation.Reading reading
                                && reading.pace() instanceof Pace.Accelerometer));
    }

    /** The same with other readings. */
    public RoadTest with(List<Observation> others) {
        return new RoadTest(name, setup, car, load, grip, straightAhead, circle, others);
    }
}
