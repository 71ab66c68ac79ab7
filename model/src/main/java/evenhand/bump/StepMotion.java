package evenhand.bump;

/**
 * How travel and wheel move within the step last attempted, and where what is watched comes to a value. Set by {@link
 * #set}; allocates nothing.
 */
final class StepMotion {
    /** What a step is watched for. */
    enum Watched {
        TRAVEL,
        TRAVEL_RATE,
        TRAVEL_PULL,
        DEFLECTION,
        DEFLECTION_RATE,
        BODY_PULL,
        BODY_JERK
    }

    private static final int MOST_LOOKS = 60;

    /** Parts of a step. */
    private static final double PRECISION = 1e-13;

    final Quintic travel = new Quintic();
    private final Quintic wheel = new Quintic();
    private final QuarterCarStep step;
    private final double tyreFree; // height of the road above the wheel at which the tyre is just off it, negative

    double length;

    StepMotion(QuarterCarStep step) {
        this.step = step;
        tyreFree = -step.station.tyreHeld() / step.station.tyreRate();
    }

    /** Takes the motions of the last attempt. */
    void set(double length) {
        this.length = length;
        travel.through(
                length,
                step.travel(),
                step.travelRate(),
                step.travelPull(),
                step.nextTravel(),
                step.nextTravelRate(),
                step.nextTravelPull());
        wheel.through(
                length,
                step.wheel,
                step.wheelSpeed,
                step.wheelPull,
                step.nextWheel,
                step.nextWheelSpeed,
                step.nextWheelPull);
    }

    /** A watched quantity at a part of the step from 0 to 1; rates per s. */
    double at(Watched what, double part) {
        return switch (what) {
            case TRAVEL -> travel.place(part);
            case TRAVEL_RATE -> travel.speed(part);
            case TRAVEL_PULL -> travel.pull(part);
            case DEFLECTION -> step.roadHeight(part * length) - wheel.place(part) - tyreFree;
            case DEFLECTION_RATE -> step.roadRise(part * length) - wheel.speed(part);
            case BODY_PULL -> step.bodyPull(travel.place(part), travel.speed(part));
            case BODY_JERK -> step.bodyJerk(travel.place(part), travel.speed(part), travel.pull(part));
        };
    }

    /** Farther than this a quantity with these rates at both ends of a step does not get in it: to look only where it matters. */
    double reach(double startRate, double endRate) {
        return length * Math.max(Math.abs(startRate), Math.abs(endRate));
    }

    /** Whether a rate with these values at both ends of the step changes its sign in between. */
    static boolean turns(double startRate, double endRate) {
        return (startRate < 0 && endRate > 0) || (startRate > 0 && endRate < 0);
    }

    /** Where a rate changes its sign, which it has in the beginning of the step and no longer at its end. */
    double turningPoint(Watched rate) {
        return root(rate, 0, 1);
    }

    /**
     * Where a quantity comes to a bound: just beyond it, between the beginning of the step and a part of it, at which it
     * stands on the other side. Regula falsi, the weight of an end that stays halved.
     */
    double root(Watched what, double bound, double until) {
        double low = 0;
        double high = until;
        double atLow = at(what, low) - bound;
        double atHigh = at(what, high) - bound;
        boolean above = atLow > 0;
        int stayed = 0;
        for (int i = 0; i < MOST_LOOKS && high - low > PRECISION; i++) {
            double middle = low + (high - low) * atLow / (atLow - atHigh);
            if (!(middle > low && middle < high)) {
                middle = (low + high) / 2;
            }
            double there = at(what, middle) - bound;
            if (there == 0) {
                return middle;
            }
            if (there > 0 == above) {
                low = middle;
                atLow = there;
                atHigh = stayed == -1 ? atHigh / 2 : atHigh;
                stayed = -1;
            } else {
                high = middle;
                atHigh = there;
                atLow = stayed == 1 ? atLow / 2 : atLow;
                stayed = 1;
            }
        }
        return high;
    }
}
