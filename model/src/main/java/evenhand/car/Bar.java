package evenhand.car;

import static evenhand.quantity.InvalidValue.require;

/** An anti-roll bar. */
public sealed interface Bar permits Bar.Measured, Bar.Round {
    /** Roll moment between body and axle per suspension roll, N·m/rad. */
    double rollStiffness(double track);

    /** A bar whose stiffness is known at the wheels. */
    record Measured(double rollStiffness) implements Bar {
        public Measured {
            require(rollStiffness >= 0, "rollStiffness", "must not be below zero");
        }

        @Override
        public double rollStiffness(double track) {
            return rollStiffness;
        }
    }

    /**
     * A solid round steel bar with stiff arms.
     *
     * @param diameter m
     * @param armLength lever of the drop link about the bar, m
     * @param activeLength length that twists, m
     * @param linkRatio travel of the drop link over travel of the wheel
     * @param bushFactor part of the stiffness that bushes and links leave
     */
    record Round(double diameter, double armLength, double activeLength, double linkRatio, double bushFactor)
            implements Bar {
        /** Shear modulus of spring steel, Pa. Source: Barton &amp; Fieldhouse 2018, p. 213. */
        public static final double SHEAR_MODULUS = 79.3e9;

        /** The rule in one line, for an answer. */
        public static final String RULE =
                "worked out as G*J/activeLength*(linkRatio*track/armLength)^2*bushFactor with G = 79.3 GPa";

        public Round {
            require(diameter > 0, "diameter", "must be above zero");
            require(armLength > 0, "armLength", "must be above zero");
            require(activeLength > 0, "activeLength", "must be above zero");
            require(linkRatio > 0, "linkRatio", "must be above zero");
            require(bushFactor > 0 && bushFactor <= 1, "bushFactor", "must be above 0 and not above 1");
        }

        /**
         * <pre>  K = G·J/l·(i·t/a)²·bushFactor,  J = π·d⁴/32 </pre>
         * G shear modulus, l active length, i link ratio, t track, a arm length.
         *
         * <p>Source: torsion of round bars; Milliken &amp; Milliken 1995 ch. 16.
         */
        @Override
        public double rollStiffness(double track) {
            double polar = Math.PI * diameter * diameter * diameter * diameter / 32;
            double lever = linkRatio * track / armLength;
            return SHEAR_MODULUS * polar / activeLength * lever * lever * bushFactor;
        }
    }
}
