package evenhand.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class BodySwingTest {
    /** A mass that swings by x'' + 2ζω·x' + ω²·x = 0, followed step by step: how high it comes the second time. */
    @Test
    void theNextSwingIsThatOfAMassThatIsLetGo() {
        double omega = 8;
        double damping = 0.2;
        BodySwing swing = new BodySwing(new Modes.Mode(omega, damping));
        double x = 1;
        double v = 0;
        double dt = 1e-5;
        double first = 0;
        double second = 0;
        double firstAt = 0;
        double secondAt = 0;
        double before = v;
        for (int i = 0; i < 400_000 && second == 0; i++) {
            double half = v + dt / 2 * (-2 * damping * omega * v - omega * omega * x);
            double middle = x + dt / 2 * v;
            v += dt * (-2 * damping * omega * half - omega * omega * middle);
            x += dt * half;
            if (before < 0 && v >= 0) { // at the bottom, the same side each time
                if (first == 0) {
                    first = -x;
                    firstAt = i * dt;
                } else {
                    second = -x;
                    secondAt = i * dt;
                }
            }
            before = v;
        }
        assertThat(swing.nextSwing().orElseThrow()).isCloseTo(second / first, within(1e-4));
        assertThat(swing.frequency().orElseThrow()).isCloseTo(1 / (secondAt - firstAt), within(1e-3));
    }

    @Test
    void whatCreepsBackHasNeither() {
        BodySwing swing = new BodySwing(new Modes.Mode(8, 1.2));
        assertThat(swing.nextSwing()).isEmpty();
        assertThat(swing.frequency()).isEmpty();
    }
}
