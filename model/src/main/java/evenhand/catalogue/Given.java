package evenhand.catalogue;

import evenhand.car.Axle;
import evenhand.car.Bar;
import evenhand.car.End;
import evenhand.car.LateralLocator;
import evenhand.car.Spring;
import evenhand.car.links.BarArm;
import evenhand.car.links.Dampers;
import evenhand.car.links.Locator;
import evenhand.car.links.Pair;
import evenhand.car.links.SpringLine;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;

/**
 * Parts of an axle as a file gives them: by coefficients, or by points of which only the axle's links make coefficients.
 */
final class Given {
    private Given() {}

    /** An axle that knows at which end of the car it stands only when the car is built. */
    interface OnAxle {
        Axle at(End end);
    }

    /**
     * @param known by coefficients
     * @param line by points
     * @param windUp stiffness of leaves under the axle's torque, N·m/rad
     */
    record OfSpring<S extends Spring>(
            double rate, Spring.Lengths lengths, Optional<S> known, Optional<SpringLine> line, OptionalDouble windUp) {}

    /** @param known with its forces; without a ratio where it is given by points */
    record OfDamper(evenhand.car.Damper known, Optional<Dampers> points) {}

    /**
     * @param made of its link ratio, which a bar of known stiffness does not need
     * @param linkRatio where it is needed and given
     */
    record OfBar(
            DoubleFunction<Bar> made, OptionalDouble linkRatio, boolean needsRatio, Optional<Pair<BarArm>> points) {}

    /** @param known by its height */
    record OfLocator(Optional<LateralLocator> known, Optional<Locator> points) {}
}
