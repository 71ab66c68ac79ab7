package evenhand.car.links;

import static evenhand.quantity.InvalidValue.require;

import evenhand.car.Side;

/** What holds each wheel of an independent axle: exactly five constraints. */
public sealed interface WheelLinks permits WheelLinks.DoubleWishbone, WheelLinks.StrutAndArm {
    Pair<Arm> lowerArm();

    Pair<TieRod> tieRod();

    /** Two arms and a tie rod. */
    record DoubleWishbone(Pair<Arm> lowerArm, Pair<Arm> upperArm, Pair<TieRod> tieRod) implements WheelLinks {
        public DoubleWishbone {
            for (Side side : Side.values()) {
                require(
                        upperArm.of(side).outer().up()
                                > lowerArm.of(side).outer().up(),
                        "upperArm",
                        "its outer ball joint must stand above the lower arm's");
            }
        }
    }

    /** A lower arm, a strut and a tie rod. */
    record StrutAndArm(Pair<Arm> lowerArm, Pair<Strut> strut, Pair<TieRod> tieRod) implements WheelLinks {
        public StrutAndArm {
            for (Side side : Side.values()) {
                require(
                        strut.of(side).top().up() > lowerArm.of(side).outer().up(),
                        "strut",
                        "its top must stand above the lower arm's outer ball joint");
            }
        }
    }
}
