package evenhand.car;

import static evenhand.quantity.InvalidValue.require;

import java.util.Optional;

/** The brakes from the pedal to the wheels. SI units; both wheels of an axle alike. */
public record BrakeParts(
        Pedal pedal,
        Optional<Booster> booster,
        MasterCylinder masterCylinder,
        WheelBrake front,
        WheelBrake rear,
        Optional<RearValve> rearValve) {
    /** The pedal: travel of the foot over travel of its rod, and the part of the force that its friction leaves. */
    public record Pedal(double ratio, double efficiency) {
        public Pedal {
            require(ratio > 0, "ratio", "must be above zero");
            require(efficiency > 0 && efficiency <= 1, "efficiency", "must be above 0 and at most 1");
        }
    }

    /**
     * The booster.
     *
     * @param gain force of its rod over that of the pedal's
     * @param runOut force of the pedal's rod beyond which it helps no further, N; infinite without an end
     */
    public record Booster(double gain, double runOut) {
        public Booster {
            require(gain >= 1, "gain", "must be 1 or more");
            require(runOut > 0, "runOut", "must be above zero");
        }
    }

    /** What makes pressure of the rod's force. */
    public sealed interface MasterCylinder permits OneCylinder, BalanceBar {
        /** Pressure in the front lines over the rod's force, 1/m². */
        double frontPressureByForce();

        /** The same of the rear lines, before their valve. */
        double rearPressureByForce();
    }

    /** One bore for both circuits, m. */
    public record OneCylinder(double bore) implements MasterCylinder {
        public OneCylinder {
            require(bore > 0, "bore", "must be above zero");
        }

        @Override
        public double frontPressureByForce() {
            return 1 / area(bore);
        }

        @Override
        public double rearPressureByForce() {
            return 1 / area(bore);
        }
    }

    /** A cylinder for each end, m, and a bar that gives the front one this share of the force. */
    public record BalanceBar(double frontBore, double rearBore, double frontShare) implements MasterCylinder {
        public BalanceBar {
            require(frontBore > 0, "frontBore", "must be above zero");
            require(rearBore > 0, "rearBore", "must be above zero");
            require(frontShare > 0 && frontShare < 1, "frontShare", "must lie between 0 and 1");
        }

        @Override
        public double frontPressureByForce() {
            return frontShare / area(frontBore);
        }

        @Override
        public double rearPressureByForce() {
            return (1 - frontShare) / area(rearBore);
        }
    }

    /** The brake of one wheel. */
    public sealed interface WheelBrake permits Disc, Drum {
        /** Pressure below which it does not bite, Pa. */
        double thresholdPressure();

        /**
         * Brake torque at the wheel over the pressure above the threshold, m³: {@code c·n·(π/4)·bore²·radius}, c = twice the
         * friction of the pads, which press on both sides of the disc, or the drum's factor.
         */
        double torqueByPressure();
    }

    /**
     * A disc.
     *
     * @param bore of a piston, m
     * @param number of pistons on one side of the disc
     * @param radius at which the pads pull, m
     * @param padFriction of pad on disc
     */
    public record Disc(double bore, double number, double radius, double padFriction, double thresholdPressure)
            implements WheelBrake {
        public Disc {
            require(bore > 0, "bore", "must be above zero");
            require(number >= 1, "number", "must be 1 or more");
            require(radius > 0, "radius", "must be above zero");
            require(padFriction > 0, "padFriction", "must be above zero");
            require(thresholdPressure >= 0, "thresholdPressure", "must not be below zero");
        }

        @Override
        public double torqueByPressure() {
            return 2 * padFriction * number * area(bore) * radius;
        }
    }

    /**
     * A drum.
     *
     * @param bore of the wheel cylinder, m
     * @param radius of the drum, m
     * @param factor drag of both shoes at the drum over the force on one shoe
     */
    public record Drum(double bore, double radius, double factor, double thresholdPressure) implements WheelBrake {
        public Drum {
            require(bore > 0, "bore", "must be above zero");
            require(radius > 0, "radius", "must be above zero");
            require(factor > 0, "factor", "must be above zero");
            require(thresholdPressure >= 0, "thresholdPressure", "must not be below zero");
        }

        @Override
        public double torqueByPressure() {
            return factor * area(bore) * radius;
        }
    }

    /**
     * A valve that lets the rear pressure rise less from its knee on.
     *
     * @param knee pressure where it begins, the rear axle at rest, Pa
     * @param slope of the pressure behind it over that before it, beyond the knee
     * @param kneePerBump rise of the knee per mean bump travel of the rear axle, Pa/m; zero where it does not feel the load
     */
    public record RearValve(double knee, double slope, double kneePerBump) {
        public RearValve {
            require(knee >= 0 || kneePerBump > 0, "knee", "must not be below zero");
            require(slope >= 0 && slope <= 1, "slope", "must lie between 0 and 1");
            require(kneePerBump >= 0, "kneePerBump", "must not be below zero");
        }
    }

    private static double area(double bore) {
        return Math.PI / 4 * bore * bore;
    }

    BrakeParts rearSunk(double travel) {
        if (travel == 0 || rearValve.isEmpty() || rearValve.get().kneePerBump() == 0) {
            return this;
        }
        RearValve valve = rearValve.get();
        return new BrakeParts(
                pedal,
                booster,
                masterCylinder,
                front,
                rear,
                Optional.of(new RearValve(
                        valve.knee() + valve.kneePerBump() * travel, valve.slope(), valve.kneePerBump())));
    }
}
