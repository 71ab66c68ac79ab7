package evenhand.car.links;

import static evenhand.quantity.InvalidValue.require;

import evenhand.car.LateralLocator.CarriedBy;

/** What holds a live axle sideways, by its points or by the height of an ideal one. */
public sealed interface Locator permits Locator.WattPoints, Locator.PanhardPoints, Locator.Ideal {
    /**
     * A Watt's linkage: a bell-crank that turns about an axis along the car, and two rods to the other part.
     *
     * @param carriedBy the part to which the pivot belongs; the rods end on the other one
     * @param upper distance of the upper pin from the pivot, m
     * @param lower distance of the lower pin, m
     * @param tilt turn of the crank as measured, rad, top to the right positive
     */
    record WattPoints(
            CarriedBy carriedBy,
            MiddlePoint pivot,
            double upper,
            double lower,
            double tilt,
            WattRod upperRod,
            WattRod lowerRod)
            implements Locator {
        public WattPoints {
            require(upper >= 1e-3, "crank.upper", "must be at least a millimetre");
            require(lower >= 1e-3, "crank.lower", "must be at least a millimetre");
            require(Math.abs(tilt) < Math.PI / 2, "crank.tilt", "must be less than 90 deg");
            double upperReach =
                    upperRod.end().left() - upperPin(pivot, upper, tilt).left();
            double lowerReach =
                    lowerRod.end().left() - lowerPin(pivot, lower, tilt).left();
            require(
                    upperReach * lowerReach < 0,
                    "lowerRod",
                    "both rods go to one side; a Watt's linkage has one to the left and one to the right");
            upperRod.rod().fits(upperPin(pivot, upper, tilt).distanceTo(upperRod.end()), "upperRod");
            lowerRod.rod().fits(lowerPin(pivot, lower, tilt).distanceTo(lowerRod.end()), "lowerRod");
        }

        /** Where the upper pin stands as measured. */
        public MiddlePoint upperPin() {
            return upperPin(pivot, upper, tilt);
        }

        /** Where the lower pin stands as measured. */
        public MiddlePoint lowerPin() {
            return lowerPin(pivot, lower, tilt);
        }

        private static MiddlePoint upperPin(MiddlePoint pivot, double upper, double tilt) {
            return new MiddlePoint(
                    pivot.ahead(), pivot.left() - upper * Math.sin(tilt), pivot.up() + upper * Math.cos(tilt));
        }

        private static MiddlePoint lowerPin(MiddlePoint pivot, double lower, double tilt) {
            return new MiddlePoint(
                    pivot.ahead(), pivot.left() + lower * Math.sin(tilt), pivot.up() - lower * Math.cos(tilt));
        }
    }

    /** A rod of a Watt's linkage from its pin to its end on the part that does not carry the crank. */
    record WattRod(MiddlePoint end, Rod rod) {}

    /** A Panhard rod. */
    record PanhardPoints(MiddlePoint body, MiddlePoint axle, Rod rod) implements Locator {
        public PanhardPoints {
            rod.fits(body.distanceTo(axle), "axle");
        }
    }

    /**
     * A locator of which only the height is known: the axle's middle plane crosses the body's at
     * {@code height + (1 + perBump)·u}, u rise of the wheel centres' middle from where it was measured.
     *
     * @param byLeaves whether it stands for what leaf springs hold, so that their eyes carry it
     */
    record Ideal(double height, double perBump, boolean byLeaves) implements Locator {
        /** A rod or linkage of its own. */
        public Ideal(double height, double perBump) {
            this(height, perBump, false);
        }

        public Ideal {
            require(height > 0, "height", "must be above the ground");
            require(perBump >= -2 && perBump <= 1, "perBump", "must lie between -2 and 1");
        }
    }
}
