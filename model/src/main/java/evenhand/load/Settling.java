package evenhand.load;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Sinking;
import evenhand.car.Spring;
import evenhand.car.Stops;
import evenhand.car.Weights;
import evenhand.suspension.AxleSuspension;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** One axle coming to rest under more load, or less. */
final class Settling {
    /** Nothing sinks further without something solid in the way, m. */
    private static final double DEEPEST = 1;

    /** Rounding of a sum of forces, as a part of them. */
    private static final double ROUNDING = 1e-12;

    /** Room for all corners of the stops, and for halvings in between down to the last digit. */
    private static final int MOST_STEPS = 100;

    private Settling() {}

    /** The bump travel at which springs and stops carry what stands on them, if it can be had within {@link #DEEPEST}. */
    static OptionalDouble travel(Car car, End end, double added) {
        AxleSuspension suspension = AxleSuspension.of(car, end);
        double rollCentre = car.axle(end).geometry().rollCentreHeight();
        double carried = car.axleLoad(end) - car.axle(end).unsprung().mass() * Weights.GRAVITY + added;
        double low = -DEEPEST;
        double high = DEEPEST;
        double travel = 0;
        for (int step = 0; step < MOST_STEPS; step++) {
            suspension.at(travel, 0, rollCentre);
            double over = suspension.force - carried;
            if (Math.abs(over) <= ROUNDING * carried) {
                return OptionalDouble.of(travel);
            }
            low = over < 0 ? travel : low;
            high = over > 0 ? travel : high;
            travel = next(travel, over, suspension.forceByTravel, low, high);
        }
        return OptionalDouble.empty();
    }

    /** Where the slope meets it, which is at once where no corner lies between, or half way where it leads astray. */
    private static double next(double travel, double over, double slope, double low, double high) {
        double next = travel - over / slope;
        return next > low && next < high ? next : (low + high) / 2;
    }

    /** What solid thing meets before the springs carry the load. */
    static Optional<String> solid(Axle axle, Sinking sinking) {
        double metal = axle.stops().metal().map(Stops.Metal::gap).orElse(DEEPEST);
        double bound = travelToBind(axle);
        if (sinking.travel() <= Math.max(0, Math.min(metal, bound))) {
            return Optional.empty();
        }
        String what = metal < bound ? "metal meets metal" : "the springs are coil-bound";
        return Optional.of(String.format(
                Locale.ROOT,
                "suspension would have to go %.0f mm into bump, and %s after %.0f mm",
                1000 * sinking.travel(),
                what,
                1000 * Math.max(0, Math.min(metal, bound))));
    }

    private static double travelToBind(Axle axle) {
        Spring.Lengths lengths = axle.spring().lengths();
        return lengths.installed().isPresent() && lengths.solid().isPresent()
                ? (lengths.installed().getAsDouble() - lengths.solid().getAsDouble())
                        / axle.geometry().springs().ratio()
                : DEEPEST;
    }
}
