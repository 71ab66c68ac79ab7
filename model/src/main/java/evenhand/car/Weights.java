package evenhand.car;

import static evenhand.quantity.InvalidValue.require;

import evenhand.quantity.Unit;

/** What the car weighs and where its weight stands on the ground. */
public sealed interface Weights permits Weights.Whole, Weights.Corners {
    /** Standard gravity, m/s², exactly. */
    double GRAVITY = Unit.GRAVITY;

    /** Mass of the whole car, kg. */
    double mass();

    /** Part of the weight that the front tyres carry. */
    double frontFraction();

    /** Part of an axle's weight that its left tyre carries. */
    double leftFraction(End end);

    /** Part of an axle's weight that its tyre on one side carries. */
    default double fraction(End end, Side side) {
        return side == Side.LEFT ? leftFraction(end) : 1 - leftFraction(end);
    }

    /** The same weights seen in a mirror. */
    Weights mirrored();

    /** Weighed as a whole, left and right alike. */
    record Whole(double mass, double frontFraction) implements Weights {
        public Whole {
            require(mass > 0, "mass", "must be above zero");
            require(
                    frontFraction > 0 && frontFraction < 1,
                    "frontWeightFraction",
                    "must lie between 0 and 1: the centre of gravity stands between the axles");
        }

        @Override
        public double leftFraction(End end) {
            return 0.5;
        }

        @Override
        public Weights mirrored() {
            return this;
        }
    }

    /** Weighed on four scales, kg. */
    record Corners(double frontLeft, double frontRight, double rearLeft, double rearRight) implements Weights {
        public Corners {
            require(frontLeft > 0, "frontLeft", "must be above zero");
            require(frontRight > 0, "frontRight", "must be above zero");
            require(rearLeft > 0, "rearLeft", "must be above zero");
            require(rearRight > 0, "rearRight", "must be above zero");
        }

        @Override
        public double mass() {
            return frontLeft + frontRight + rearLeft + rearRight;
        }

        @Override
        public double frontFraction() {
            return (frontLeft + frontRight) / mass();
        }

        @Override
        public double leftFraction(End end) {
            return end == End.FRONT ? frontLeft / (frontLeft + frontRight) : rearLeft / (rearLeft + rearRight);
        }

        @Override
        public Weights mirrored() {
            return new Corners(
                    /* frontLeft= */ frontRight,
                    /* frontRight= */ frontLeft,
                    /* rearLeft= */ rearRight,
                    /* rearRight= */ rearLeft);
        }
    }
}
