package evenhand.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.links.LinkedAxle;
import evenhand.car.links.LinkedAxles;
import evenhand.car.links.LinkedAxles.Kind;
import evenhand.linkage.Assembly;
import evenhand.linkage.AxleState.WheelFigures;
import org.junit.jupiter.api.Test;

/** A bar of known dimensions is worked by its drop links as they lean once the body has come down. */
class BarOfALoweredCarTest {
    private static final double LOWERED = 0.03;

    @Test
    void takesTheLeverageThatItHasThere() {
        int asked = 0;
        double moved = 0;
        for (Kind kind : Kind.values()) {
            for (long seed = 0; seed < 8; seed++) {
                LinkedAxle axle = LinkedAxles.of(kind, seed).down(0);
                if (!(Assembly.of(axle) instanceof Assembly.Standing standing)
                        || !(Assembly.of(axle.down(LOWERED)) instanceof Assembly.Standing)) {
                    continue;
                }
                double there = LinksAtRest.of(axle, LOWERED).barRatio();
                double drawn = LinksAtRest.of(axle, 0).barRatio();
                standing.linkage().rest();
                assertThat(standing.linkage().moveTo(LOWERED, LOWERED)).isTrue();
                double along = (ratio(kind, standing.linkage().state().left())
                                + ratio(kind, standing.linkage().state().right()))
                        / 2;
                assertThat(there).as("%s, seed %d", kind, seed).isCloseTo(along, within(1e-8));
                moved = Math.max(moved, Math.abs(there - drawn));
                asked++;
            }
        }
        assertThat(asked).isGreaterThan(20);
        assertThat(moved).isGreaterThan(0.01);
    }

    private static double ratio(Kind kind, WheelFigures wheel) {
        return (kind.isLive() ? wheel.barRollRatio() : wheel.barRatio()).orElseThrow();
    }
}
