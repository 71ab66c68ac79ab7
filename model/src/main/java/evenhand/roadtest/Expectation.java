package evenhand.roadtest;

import evenhand.car.LoadCase;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.doubt.Learnt;
import evenhand.doubt.Tolerance;
import evenhand.turn.Direction;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a car is expected to show at one pace on a circle that is still to be driven, and between what: the half-width
 * <pre>  2·√(∂h/∂z·C·∂h/∂zᵀ)  </pre>
 * over all {@link Unknowns} of the car and of the day; C is what earlier road tests have left of the car's ({@link Learnt}), one where
 * nothing was learnt. What the reading itself may be off by is not in it.
 *
 * @param pace lateral acceleration, m/s²
 * @param steeringWheel rad into the turn; none where the steering's ratio is not known
 * @param roll rad outwards
 */
public record Expectation(Direction turn, double pace, Optional<Between> steeringWheel, Between roll) {
    /**
     * A value that holds nineteen times in twenty within some half-width.
     *
     * @param value rad
     * @param halfWidth rad
     */
    public record Between(double value, double halfWidth) {
        public double low() {
            return value - halfWidth;
        }

        public double high() {
            return value + halfWidth;
        }
    }

    /** A place on the sheet: which way, how fast. */
    private record Run(Direction turn, double pace) {}

    /**
     * Of each pace both ways, in the order of the paces, left first; a pace that the car does not reach is left out.
     *
     * @param circle its radius, m
     * @param paces lateral accelerations, m/s²
     * @return none where the car neither stands nor turns
     */
    public static Optional<List<Expectation>> of(
            Entries car, Optional<LoadCase> load, Measured circle, List<Double> paces, Tolerance.Unsaid unsaid) {
        boolean hasRatio = Catalogue.entry(car, "steering.ratio").isPresent();
        List<Run> all = new ArrayList<>();
        for (double pace : paces) {
            for (Direction turn : Direction.values()) {
                all.add(new Run(turn, pace));
            }
        }
        int channels = hasRatio ? 2 : 1;
        return road(car, load, circle, all, hasRatio, unsaid).shown().map(shown -> {
            List<Run> reached = new ArrayList<>();
            for (int i = 0; i < all.size(); i++) {
                if (!shown.get(i * channels).beyondLimit()) {
                    reached.add(all.get(i));
                }
            }
            return reached.isEmpty()
                    ? List.of()
                    : expected(road(car, load, circle, reached, hasRatio, unsaid), reached, hasRatio);
        });
    }

    /** A test that is still to be driven. */
    private record Road(OnTheRoad road, double[] z, double[][] left) {
        Optional<List<Predicted>> shown() {
            return road.predicted(z);
        }
    }

    private static Road road(
            Entries car,
            Optional<LoadCase> load,
            Measured circle,
            List<Run> runs,
            boolean hasRatio,
            Tolerance.Unsaid unsaid) {
        List<Observation> asked = new ArrayList<>();
        for (Run run : runs) {
            Pace pace = new Pace.Acceleration(new Measured(run.pace(), Usual.LATERAL_ACCELERATION));
            for (Channel channel : List.of(Channel.ROLL, Channel.STEERING_WHEEL)) {
                if (hasRatio || channel == Channel.ROLL) {
                    asked.add(new Observation.Reading(run.turn(), pace, channel, new Measured(0, Usual.of(channel))));
                }
            }
        }
        RoadTest test = new RoadTest(
                "", "", car, load, RoadTest.USUAL_GRIP, RoadTest.USUAL_STRAIGHT_AHEAD, Optional.of(circle), asked);
        Unknowns unknowns = new Unknowns(List.of(car), List.of(test), unsaid);
        Optional<Learnt> learnt = car.off() instanceof Learnt known ? Optional.of(known) : Optional.empty();
        return new Road(new OnTheRoad(List.of(test), unknowns), unknowns.moved(learnt), unknowns.left(learnt));
    }

    private static List<Expectation> expected(Road asked, List<Run> runs, boolean hasRatio) {
        List<Predicted> shown = asked.shown().orElseThrow();
        double[][] slopes =
                asked.road().slopes(asked.z(), asked.road().at(asked.z()).orElseThrow());
        List<Expectation> all = new ArrayList<>();
        int channels = hasRatio ? 2 : 1;
        for (int i = 0; i < runs.size(); i++) {
            int at = i * channels;
            all.add(new Expectation(
                    runs.get(i).turn(),
                    runs.get(i).pace(),
                    hasRatio ? Optional.of(between(shown, slopes, at + 1, asked.left())) : Optional.empty(),
                    between(shown, slopes, at, asked.left())));
        }
        return all;
    }

    private static Between between(List<Predicted> shown, double[][] slopes, int at, double[][] left) {
        return new Between(shown.get(at).expected(), 2 * Math.sqrt(Correction.spread(slopes[at], left)));
    }
}
