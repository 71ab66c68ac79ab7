package evenhand.lowering;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Stops;
import evenhand.linkage.AxleState;
import evenhand.linkage.Ranges;
import evenhand.linkage.Travel;
import evenhand.linkage.TravelAnswer;
import evenhand.linkage.TravelLimit;
import java.util.Optional;

/**
 * What the links of an axle do where the body stands.
 *
 * @param rest the axle at rest there
 * @param firstInBump what ends the travel upwards first, within what the stops leave
 */
public record StandingLinks(AxleState rest, Optional<TravelLimit> firstInBump) {
    /** Rows in between are not asked for. */
    private static final double NO_STEPS = 1;

    /** Of a car settled at its height; none where the axle has no points. */
    static Optional<StandingLinks> of(Car car, End end) {
        return car.linked(end).flatMap(links -> {
            Stops stops = car.axle(end).stops();
            Ranges range = new Ranges(stops.bumpTravel().orElse(Ranges.USUAL.bump()), 0, 0, 0, NO_STEPS);
            return Travel.of(links, range) instanceof TravelAnswer.Followed followed
                    ? Optional.of(new StandingLinks(
                            followed.rest(),
                            followed.limits().stream()
                                    .filter(limit -> limit.motion() == TravelLimit.Motion.BUMP)
                                    .findFirst()))
                    : Optional.empty();
        });
    }
}
