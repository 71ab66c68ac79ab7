package evenhand.linkage;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.car.links.LinkedAxle;
import evenhand.car.links.LinkedAxles;
import evenhand.car.links.LinkedAxles.Kind;
import java.util.SplittableRandom;
import java.util.function.DoubleSupplier;
import java.util.function.UnaryOperator;

/** Random axles of every kind that stand, places to move them to, and slopes told from poses that are apart. */
final class RandomAxles {
    private static final int[] PLACES = {-2, -1, 1, 2};
    private static final double[] WEIGHTS = {1.0 / 12, -8.0 / 12, 8.0 / 12, -1.0 / 12};

    interface Claim {
        void of(Kind kind, long seed, AxleLinkage axle, SplittableRandom random);
    }

    private RandomAxles() {}

    /** Every kind, each with this many seeds; those that do not stand are counted and their share asserted. */
    static void always(int each, Claim claim) {
        always(each, UnaryOperator.identity(), claim);
    }

    /** The same of axles of which something is changed. */
    static void always(int each, UnaryOperator<LinkedAxle> change, Claim claim) {
        int without = 0;
        int all = 0;
        for (Kind kind : Kind.values()) {
            for (long seed = 0; seed < each; seed++) {
                all++;
                Assembly assembly = Assembly.of(change.apply(LinkedAxles.of(kind, seed)));
                if (assembly instanceof Assembly.Standing standing) {
                    claim.of(kind, seed, standing.linkage(), new SplittableRandom(seed));
                } else {
                    without++;
                }
            }
        }
        assertThat((double) without / all).as("share that does not stand").isLessThan(0.01);
    }

    static double[] somewhere(SplittableRandom random) {
        return new double[] {0.05 * (2 * random.nextDouble() - 1), 0.05 * (2 * random.nextDouble() - 1)};
    }

    /** Central differences of order 4 along a direction of both travels, with two strides. */
    static double slope(AxleLinkage axle, double[] at, double left, double right, DoubleSupplier figure) {
        double wide = slope(axle, at, left, right, 1e-3, figure);
        double narrow = slope(axle, at, left, right, 5e-4, figure);
        return narrow + (narrow - wide) / 15; // what order 4 leaves
    }

    private static double slope(
            AxleLinkage axle, double[] at, double left, double right, double stride, DoubleSupplier figure) {
        double h = stride / Math.max(Math.abs(left), Math.abs(right));
        double sum = 0;
        for (int i = 0; i < PLACES.length; i++) {
            assertThat(axle.moveTo(at[0] + PLACES[i] * h * left, at[1] + PLACES[i] * h * right))
                    .isTrue();
            sum += WEIGHTS[i] * figure.getAsDouble();
        }
        axle.moveTo(at[0], at[1]);
        return sum / h;
    }

    /** How fast the point of a part that is at a place now goes, along both travels: told from its places in poses apart. */
    static Place velocity(AxleLinkage axle, Part part, Place point, double[] at, double left, double right) {
        Place measured = new Place(
                part.measuredXAt(point.x(), point.y(), point.z()),
                part.measuredYAt(point.x(), point.y(), point.z()),
                part.measuredZAt(point.x(), point.y(), point.z()));
        return new Place(
                slope(axle, at, left, right, () -> part.placeOf(measured).x()),
                slope(axle, at, left, right, () -> part.placeOf(measured).y()),
                slope(axle, at, left, right, () -> part.placeOf(measured).z()));
    }
}
