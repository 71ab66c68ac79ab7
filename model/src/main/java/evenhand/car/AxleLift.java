package evenhand.car;

import static evenhand.quantity.InvalidValue.require;

import java.util.List;

/**
 * Weighing with one axle raised, suspension blocked, to find the height of the centre of gravity.
 *
 * @param liftedAxle the axle that was raised
 * @param readings at least one pair of rise and gain
 */
public record AxleLift(End liftedAxle, List<Reading> readings) {
    /**
     * @param rise height by which the wheel centres of the lifted axle rose, m
     * @param otherAxleGain what the other axle's scales gained, kg
     */
    public record Reading(double rise, double otherAxleGain) {
        public Reading {
            require(rise > 0, "rise", "must be above zero");
        }
    }

    public AxleLift {
        readings = List.copyOf(readings);
        require(!readings.isEmpty(), "readings", "needs at least one reading of rise and otherAxleGain");
    }

    /**
     * Height of the centre of gravity, m, the least-squares line through all readings and the level car:
     * <pre>  h = r + L·ΔW/(m·g·tan θ),  sin θ = rise/L,  r = (r_f·b + r_r·a)/L </pre>
     * Source: ISO 10392 axle lift; Jazar 2008 eq. 2.32.
     *
     * @throws evenhand.quantity.InvalidValue if a rise is not less than the wheelbase
     */
    public double cgHeight(
            double mass, double wheelbase, double frontWeightFraction, double frontRadius, double rearRadius) {
        double sumGain = 0;
        double sumTan = 0;
        for (Reading reading : readings) {
            require(reading.rise() < wheelbase, "readings", "has a rise that is not less than the wheelbase");
            double sin = reading.rise() / wheelbase;
            double tan = sin / Math.sqrt(1 - sin * sin);
            sumGain += tan * reading.otherAxleGain() * wheelbase / mass;
            sumTan += tan * tan;
        }
        double radius = frontRadius * frontWeightFraction + rearRadius * (1 - frontWeightFraction);
        return radius + sumGain / sumTan;
    }
}
