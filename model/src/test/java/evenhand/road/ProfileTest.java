package evenhand.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import evenhand.quantity.InvalidValue;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class ProfileTest {
    private static final double RADIUS = 0.29;

    /** Height of the centre of a rigid wheel that stands on a ground: as high as some part of it must be. */
    private static double rolled(DoubleUnaryOperator ground, double x) {
        double highest = Double.NEGATIVE_INFINITY;
        int parts = 200_000;
        for (int i = 0; i <= parts; i++) {
            double s = RADIUS * (2.0 * i / parts - 1);
            highest = Math.max(
                    highest, ground.applyAsDouble(x + s) + Math.sqrt(Math.max(0, RADIUS * RADIUS - s * s)) - RADIUS);
        }
        return highest;
    }

    @Test
    void aKerbIsThePathOfAWheelThatRollsOverASquareEdge() {
        double height = 0.06;
        Profile kerb = Profile.kerb(height, RADIUS);
        double edge = kerb.length();
        for (double x : new double[] {0.02, 0.07, 0.12, edge - 1e-3, edge + 0.1}) {
            assertThat(kerb.height(x))
                    .as("at %f m", x)
                    .isCloseTo(rolled(at -> at >= edge ? height : 0, x), within(2e-6));
        }
        assertThat(kerb.jumps()).isFalse();
        assertThat(kerb.after()).isEqualTo(height);
    }

    @Test
    void aPotholeIsThePathOfAWheelThroughAHoleWithSquareEdges() {
        for (double length : new double[] {0.9, 0.3, 0.05}) {
            double depth = 0.05;
            Profile hole = Profile.pothole(depth, length, RADIUS);
            for (int i = 1; i < 20; i++) {
                double x = length * i / 20;
                assertThat(hole.height(x))
                        .as("%f m long, at %f m", length, x)
                        .isCloseTo(rolled(at -> at > 0 && at < length ? -depth : 0, x), within(2e-6));
            }
            assertThat(hole.jumps()).isFalse();
            assertThat(hole.after()).isZero();
        }
    }

    @Test
    void eventsHaveTheHeightsThatTheirNamesSay() {
        assertThat(Profile.hump(0.08, 3.7).height(1.85)).isCloseTo(0.08, within(1e-12));
        assertThat(Profile.hump(-0.08, 3.7).height(1.85)).isCloseTo(-0.08, within(1e-12));
        assertThat(Profile.ramp(0.05, 2).height(0.5)).isCloseTo(0.0125, within(1e-15));
        assertThat(Profile.ramp(0.05, 2).height(7)).isEqualTo(0.05);
        assertThat(Profile.ripples(0.01, 1.2, 8).length()).isCloseTo(9.6, within(1e-12));
        assertThat(Profile.ripples(0.01, 1.2, 8).height(1.2 * 3.25)).isCloseTo(0.01, within(1e-12));
        assertThat(Profile.step(0.02).height(-1e-9)).isZero();
        assertThat(Profile.step(0.02).height(0)).isEqualTo(0.02);
        assertThat(Profile.step(0.02).jumps()).isTrue();
    }

    @Test
    void slopesAgreeWithCentralDifferences() {
        Profile all = Profile.kerb(0.06, RADIUS)
                .then(Profile.pothole(0.04, 0.5, RADIUS))
                .then(Profile.sweep(0.01, 9, 0.3, 1.4))
                .then(Profile.hump(0.05, 2))
                .plus(RandomRoad.of(64e-6, 4, 12));
        boolean someDigitDiffers = false;
        for (Piece piece : all.pieces()) {
            double x = piece.from() + 0.4 * (piece.to() - piece.from());
            double difference = (piece.height(x + 1e-6) - piece.height(x - 1e-6)) / 2e-6;
            someDigitDiffers |= difference != piece.slope(x);
            assertThat(piece.slope(x)).as("at %f m", x).isCloseTo(difference, within(1e-6));
        }
        assertThat(someDigitDiffers).as("the two routes are not one").isTrue();
    }

    @Test
    void oneRoadAfterAnotherGoesOnAtTheHeightThatTheFirstLeft() {
        Profile both = Profile.ramp(0.05, 1).then(Profile.hump(0.02, 2)).then(Profile.step(-0.05));
        assertThat(both.length()).isCloseTo(3, within(1e-12));
        assertThat(both.height(2)).isCloseTo(0.07, within(1e-12));
        assertThat(both.after()).isCloseTo(0, within(1e-12));
        assertThat(both.jumps()).isTrue();
        assertThat(Profile.ramp(0.05, 1).then(Profile.hump(0.02, 2)).jumps()).isFalse();
    }

    @Test
    void roadsLaidOnTopOfEachOtherAddUpEverywhere() {
        Profile one = Profile.ramp(0.05, 1);
        Profile other = Profile.hump(0.02, 2.5);
        Profile sum = one.plus(other);
        for (double x = 0.05; x < 3; x += 0.1) {
            assertThat(sum.height(x)).isCloseTo(one.height(x) + other.height(x), within(1e-15));
        }
        assertThat(sum.then(other).height(sum.length() + 1.25)).isCloseTo(0.07, within(1e-12));
    }

    @Test
    void anEdgeThatNoWheelClimbsIsRefused() {
        assertThatThrownBy(() -> Profile.kerb(0.3, RADIUS))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("loaded radius");
        assertThatThrownBy(() -> Profile.pothole(0.3, 2, RADIUS)).isInstanceOf(InvalidValue.class);
        assertThat(Profile.pothole(0.3, 0.2, RADIUS).height(0.1))
                .as("a narrow hole is spanned, however deep")
                .isCloseTo(Math.sqrt(RADIUS * RADIUS - 0.01) - RADIUS, within(1e-12));
        assertThatThrownBy(() -> Profile.step(0)).hasMessageContaining("must not be zero");
        assertThatThrownBy(() -> Profile.hump(Double.NaN, 1)).isInstanceOf(InvalidValue.class);
        assertThatThrownBy(() -> Profile.ramp(0.1, -1)).isInstanceOf(InvalidValue.class);
    }

    @Test
    void aMeasuredProfileRunsStraightFromPointToPoint() {
        Profile profile = new MeasuredProfile(478, 0.25, List.of(583.1, 583.2, 583.15)).profile();
        assertThat(profile.height(0)).isZero();
        assertThat(profile.height(0.125)).isCloseTo(0.05, within(1e-12));
        assertThat(profile.height(0.375)).isCloseTo(0.075, within(1e-12));
        assertThat(profile.after()).isCloseTo(0.05, within(1e-12));
        assertThat(profile.jumps()).isFalse();
        assertThatThrownBy(() -> new MeasuredProfile(0, 0.25, List.of(1.0))).isInstanceOf(InvalidValue.class);
        assertThatThrownBy(() -> new MeasuredProfile(0, 0.25, List.of(1.0, Double.NaN)))
                .isInstanceOf(InvalidValue.class);
    }

    @Test
    void aSeedMakesOneRoadAndAnotherSeedAnother() {
        assertThat(RandomRoad.of(64e-6, 7, 50)).isEqualTo(RandomRoad.of(64e-6, 7, 50));
        assertThat(RandomRoad.of(64e-6, 7, 50).height(30))
                .isNotEqualTo(RandomRoad.of(64e-6, 8, 50).height(30));
        assertThat(RandomRoad.of(64e-6, 7, 50).height(0)).isZero();
    }

    @Test
    void aRandomRoadIsAsRoughAsItsClassInHeightAndInSlope() {
        double roughness = 256e-6;
        Profile road = RandomRoad.of(roughness, 3, 20_000);
        double heights = 0;
        double sum = 0;
        double slopes = 0;
        for (Piece piece : road.pieces()) {
            double x = (piece.from() + piece.to()) / 2;
            sum += piece.height(x);
            heights += piece.height(x) * piece.height(x);
            slopes += piece.slope(x) * piece.slope(x);
        }
        int count = road.pieces().size();
        double variance = heights / count - sum / count * (sum / count); // long waves
        double expected = roughness * 0.01 * (1 / 0.011 - 1 / 2.83);
        assertThat(variance).isCloseTo(expected, within(0.03 * expected));
        double slopeVariance = slopes / count; // short waves
        double expectedOfSlope = Math.pow(2 * Math.PI * 0.1, 2) * roughness * (2.83 - 0.011);
        assertThat(slopeVariance).isCloseTo(expectedOfSlope, within(0.02 * expectedOfSlope));
    }
}
