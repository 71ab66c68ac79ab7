package evenhand.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** An axle on links is followed when somebody wants to know where it goes, and then once. */
class FollowedOnceTest {
    private final AtomicInteger times = new AtomicInteger();

    private LiveAxleMotion motion() {
        double[] leftOut = new double[LiveAxleMotion.FIGURES];
        Arrays.fill(leftOut, 1e-9);
        return new LiveAxleMotion(
                () -> {
                    times.incrementAndGet();
                    Surfaces still = Surfaces.fit(
                                    new Surfaces.Box(-0.1, 0.1, -0.1, 0.1), 5, 5, leftOut, (x, y, into) -> true)
                            .orElseThrow()
                            .surfaces();
                    return new LiveAxleMotion.Followed(still, new LinkMotion.Reach(0.09, -0.08, 0.1, "links"));
                },
                new LiveAxleMotion.Made(1.4, 1, true, false, false));
    }

    @Test
    void whoWantsToKnowOfItsPartsAloneDoesNotWait() {
        LiveAxleMotion motion = motion();
        assertThat(motion.guidesSprings()).isTrue();
        assertThat(motion.mirrored().sunk(0.02, 0).guidesDampers()).isFalse();
        assertThat(times).hasValue(0);
    }

    @Test
    void everyPlaceAndItsMirrorImageShareWhatWasFollowed() {
        LiveAxleMotion motion = motion();
        assertThat(motion.sunk(0.02, 0).mirrored().reach().bump()).isEqualTo(0.09 - 0.02);
        assertThat(motion.reach().droop()).isEqualTo(-0.08);
        assertThat(motion.isFollowed(0.05, 0)).isTrue();
        assertThat(motion.alikeBothWays()).isTrue();
        assertThat(times).hasValue(1);
    }
}
