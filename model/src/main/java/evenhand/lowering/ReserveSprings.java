package evenhand.lowering;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.LoadCase;
import evenhand.car.Side;
import evenhand.car.Weights;
import evenhand.load.Laden;
import evenhand.ride.Standing;
import evenhand.suspension.AxleSuspension;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Springs that live with the travel which is left: so stiff that n g of further load, on top of the load at rest, just reach
 * the bump stop.
 *
 * <pre>  bump travel to the stop = n·W/K,  f = √(K·g/W)/2π = √(n·g/travel)/2π  </pre>
 * W load on the springs of one wheel at rest, K wheel rate in heave, both of the car as it has settled. A spring that is
 * stiff enough already stays. An end without a bump stop keeps its springs: there is nothing to be kept off.
 *
 * <p>Source: statics; the reserve in g as a measure of travel is common practice, no source.
 *
 * @param reserve n
 * @param front rate of one front spring along its line, N/m
 * @param rear the same behind
 * @param frontNeeds undamped frequency on the wheel rate that the reserve asks for, Hz; none without a bump stop
 * @param rearNeeds the same behind
 * @param tooMuch why no spring keeps it, as a clause, where none does
 */
public record ReserveSprings(
        double reserve,
        double front,
        double rear,
        OptionalDouble frontNeeds,
        OptionalDouble rearNeeds,
        Optional<String> tooMuch) {
    /** No spring of a car holds its wheel stiffer against the body than this, Hz. */
    private static final double STIFFEST = 5;

    /** Stiffer than any that can be asked for, over the rate that is fitted: the search begins between them. */
    private static final double STIFFEST_TIMES = 1e4;

    /** Halvings: down to the last digits of a rate. */
    private static final int STEPS = 60;

    /** Springs for a car as read from a file, with a load aboard or none. */
    static ReserveSprings of(Car car, Optional<LoadCase> load, double reserve) {
        double stiffFront = car.front().spring().rate() * STIFFEST_TIMES;
        double stiffRear = car.rear().spring().rate() * STIFFEST_TIMES;
        Optional<Car> stiff = atRest(car.onSpringsOf(stiffFront, stiffRear), load);
        Optional<String> tooMuch = Optional.empty();
        OptionalDouble[] needs = {OptionalDouble.empty(), OptionalDouble.empty()};
        double[] rates = {car.front().spring().rate(), car.rear().spring().rate()};
        for (End end : End.values()) {
            if (car.axle(end).stops().bump().isEmpty() || tooMuch.isPresent()) {
                continue;
            }
            double travel = stiff.map(one -> travel(one, end)).orElse(0.0);
            if (frequency(reserve, travel) > STIFFEST) {
                tooMuch = Optional.of(tooMuch(reserve, travel, end));
                continue;
            }
            int i = end.ordinal();
            double rate = rate(car, load, end, reserve, end == End.FRONT ? stiffRear : stiffFront);
            double left = atRest(fitted(car, end, rate, end == End.FRONT ? stiffRear : stiffFront), load)
                    .map(one -> travel(one, end))
                    .orElse(0.0);
            needs[i] = OptionalDouble.of(frequency(reserve, left));
            rates[i] = rate;
            if (needs[i].getAsDouble() > STIFFEST) {
                tooMuch = Optional.of(tooMuch(reserve, left, end));
            }
        }
        return new ReserveSprings(reserve, rates[0], rates[1], needs[0], needs[1], tooMuch);
    }

    /** The least rate, not below the one that is fitted, that keeps the reserve at one end; the other end stands stiff. */
    private static double rate(Car car, Optional<LoadCase> load, End end, double reserve, double other) {
        double low = car.axle(end).spring().rate();
        if (keeps(fitted(car, end, low, other), load, end, reserve)) {
            return low;
        }
        double high = low * STIFFEST_TIMES;
        for (int step = 0; step < STEPS; step++) {
            double middle = Math.sqrt(low * high);
            if (keeps(fitted(car, end, middle, other), load, end, reserve)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private static boolean keeps(Car car, Optional<LoadCase> load, End end, double reserve) {
        Optional<Car> rest = atRest(car, load);
        if (rest.isEmpty()) {
            return false;
        }
        AxleSuspension suspension = AxleSuspension.of(rest.get(), end);
        double carried = (suspension.springLoadAtRest(Side.LEFT) + suspension.springLoadAtRest(Side.RIGHT)) / 2;
        double travel = travel(rest.get(), end);
        return travel > 0 && suspension.heaveRate() * travel >= reserve * carried;
    }

    private static Optional<Car> atRest(Car car, Optional<LoadCase> load) {
        return Laden.of(car, load) instanceof Laden.AtRest rest ? Optional.of(rest.car()) : Optional.empty();
    }

    private static Car fitted(Car car, End end, double rate, double other) {
        return end == End.FRONT ? car.onSpringsOf(rate, other) : car.onSpringsOf(other, rate);
    }

    private static double travel(Car car, End end) {
        return Standing.of(car, end).bumpTravelToStop().orElse(0);
    }

    /** Undamped frequency of a body whose springs keep n g in a travel, Hz; without end where there is none. */
    public static double frequency(double reserve, double travel) {
        return travel > 0 ? Math.sqrt(reserve * Weights.GRAVITY / travel) / (2 * Math.PI) : Double.POSITIVE_INFINITY;
    }

    private static String tooMuch(double reserve, double travel, End end) {
        String its = end.key();
        return travel > Stance.TOUCHING
                ? String.format(
                        Locale.ROOT,
                        "a reserve of %s g in the %.0f mm that are left to its %s bump stops asks for %.1f Hz, and no"
                                + " road spring holds so hard",
                        Double.toString(reserve),
                        1000 * travel,
                        its,
                        frequency(reserve, travel))
                : "it stands on its " + its + " bump stops, so no spring keeps a reserve there";
    }

    /** A car with these springs. */
    Car fitted(Car car) {
        return car.onSpringsOf(front, rear);
    }

    public double rate(End end) {
        return end == End.FRONT ? front : rear;
    }

    public OptionalDouble needs(End end) {
        return end == End.FRONT ? frontNeeds : rearNeeds;
    }

    /** Whether this end of a car got stiffer springs than it had. */
    public boolean stiffened(Axle had, End end) {
        return rate(end) > had.spring().rate();
    }
}
