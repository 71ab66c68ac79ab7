package evenhand.car;

import static evenhand.quantity.InvalidValue.require;

/** What holds a live axle sideways; it sets the height about which the axle rolls. */
public sealed interface LateralLocator
        permits LateralLocator.WattsLinkage,
                LateralLocator.PanhardRod,
                LateralLocator.LeafSprings,
                LateralLocator.ByPoints {
    /** Height of the roll centre above the ground at rest, m. */
    double height();

    /** Rise of the roll centre over the ground per bump travel of the axle, with the axle held: −1 where the body carries it. */
    double perBump();

    /** The same locator with its roll centre at another height, m. */
    LateralLocator at(double height);

    /** The part of the car that carries the bell-crank. */
    enum CarriedBy {
        BODY,
        AXLE
    }

    /** A Watt's linkage; height of the bell-crank's pivot. */
    record WattsLinkage(double height, CarriedBy carriedBy) implements LateralLocator {
        public WattsLinkage {
            require(height > 0, "height", "must be above the ground");
        }

        @Override
        public double perBump() {
            return carriedBy == CarriedBy.BODY ? -1 : 0;
        }

        @Override
        public LateralLocator at(double height) {
            return new WattsLinkage(height, carriedBy);
        }
    }

    /** A Panhard rod; height at which it crosses the car's middle plane. */
    record PanhardRod(double height, double perBump) implements LateralLocator {
        public PanhardRod {
            require(height > 0, "height", "must be above the ground");
            require(perBump >= -1 && perBump <= 0, "perBump", "must lie between -1 and 0 for a rod from body to axle");
        }

        @Override
        public LateralLocator at(double height) {
            return new PanhardRod(height, perBump);
        }
    }

    /** Leaf springs that hold the axle sideways themselves. */
    record LeafSprings(double height, double perBump) implements LateralLocator {
        public LeafSprings {
            require(height > 0, "height", "must be above the ground");
            require(perBump >= -2 && perBump <= 1, "perBump", "must lie between -2 and 1");
        }

        @Override
        public LateralLocator at(double height) {
            return new LeafSprings(height, perBump);
        }
    }

    /** What links known by their points do at rest, whichever they are: nothing else is known of them here. */
    record ByPoints(double height, double perBump) implements LateralLocator {
        public ByPoints {
            require(Math.abs(height) < 2, "height", "must be less than two metres");
            require(Math.abs(perBump) <= 20, "perBump", "must lie between -20 and 20");
        }

        @Override
        public LateralLocator at(double height) {
            return new ByPoints(height, perBump);
        }
    }
}
