package evenhand.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Links that are known by coefficients, and leaning springs, against what they mean on an axle that bumps and rolls. */
class StraightLinksTest {
    private static Linear links(double rollCamber, double track) {
        return new Linear(
                0.062,
                -1.25,
                0.04,
                rollCamber,
                Linear.leanByTravel(rollCamber, track),
                Lever.upright(0.8, 0.5),
                Optional.empty());
    }

    /** Per millimetre of bump it comes down by a quarter more: a swing arm's pivot comes down by that millimetre itself. */
    @Test
    void aRollCentreThatFallsFasterThanTheBodyNearsTheGroundInBump() {
        assertThat(links(0.8, 1.4).rollCentreHeight(0.02)).isCloseTo(0.037, within(1e-15));
        assertThat(links(0.8, 1.4).rollCentreHeight(-0.02)).isCloseTo(0.087, within(1e-15));
        assertThat(links(0.8, 1.4).rollCentreHeight(0)).isEqualTo(0.062);
    }

    /** In roll a wheel travels by half the track times the roll; against the road it leans by rollCamber of the roll alone. */
    @Test
    void inRollAWheelLeansAgainstTheRoadByItsRollCamber() {
        double roll = 0.03;
        for (double track : new double[] {1.2, 1.6}) {
            for (double rollCamber : new double[] {-0.1, 0, 0.6, 1}) {
                double outerTopInwards = links(rollCamber, track).lean(track / 2 * roll);
                assertThat(roll - outerTopInwards).isCloseTo(rollCamber * roll, within(1e-15));
                assertThat(links(rollCamber, track).lean(-track / 2 * roll)).isEqualTo(-outerTopInwards);
            }
        }
    }

    @Test
    void linksSteerByTheirPartOfTheRoll() {
        assertThat(links(1, 1.4).steer(0.05)).isCloseTo(0.002, within(1e-15));
        assertThat(links(1, 1.4).steer(-0.05)).isCloseTo(-0.002, within(1e-15));
    }

    /** At the height of its lower mount a leaning spring works at half its base, where the lines of both meet it has no arm. */
    @Test
    void aLeaningSpringWorksAtItsMountByHalfItsBaseAndNotAtAllWhereBothLinesMeet() {
        double lean = Math.toRadians(25);
        Lever spring = Lever.leaning(0.45, 0.3, lean, OptionalDouble.empty());
        assertThat(spring.arm().at(0.3)).isCloseTo(0.45, within(1e-15));
        assertThat(spring.arm().at(0.3 + 0.45 / Math.tan(lean))).isCloseTo(0, within(1e-15));
        assertThat(spring.ratio()).isCloseTo(Math.sin(Math.toRadians(65)), within(1e-15));
        assertThat(Lever.upright(0.8, 0.45).arm().at(0.7)).isEqualTo(0.45);
    }
}
