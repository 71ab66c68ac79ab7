package evenhand.roadtest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** How a pressed corner swings out. */
class DecayTest {
    private record Series(List<Double> times, List<Double> values) {}

    /** A hundred moments a second over four seconds, held down for the first. */
    private static Series of(DoubleUnaryOperator released, double held, SplittableRandom noise, double scatter) {
        List<Double> times = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < 400; i++) {
            double t = i / 100.0;
            times.add(t);
            double error = scatter * (noise.nextDouble() + noise.nextDouble() + noise.nextDouble() - 1.5) * 2;
            values.add((t < 1 ? held : released.applyAsDouble(t - 1)) + error);
        }
        return new Series(times, values);
    }

    /** Free swing of one mass from a held place: closed form, Thomson ch. 2. */
    private static DoubleUnaryOperator swing(double hertz, double zeta, double rest, double from) {
        double damped = 2 * Math.PI * hertz;
        double lambda = zeta * damped / Math.sqrt(1 - zeta * zeta);
        return t -> rest
                + (from - rest)
                        * Math.exp(-lambda * t)
                        * (Math.cos(damped * t) + lambda / damped * Math.sin(damped * t));
    }

    @Test
    void aFreeSwingGivesItsFrequencyAndItsNextSwingBack() {
        for (double zeta : new double[] {0.1, 0.22, 0.35}) {
            for (double hertz : new double[] {0.9, 1.32, 2.1}) {
                Series record = of(swing(hertz, zeta, 352, 300), 300, new SplittableRandom(1), 0);
                Decay decay = Decay.of(record.times(), record.values()).orElseThrow();
                assertThat(decay.frequency().value()).isCloseTo(hertz, within(1e-4 * hertz));
                assertThat(decay.nextSwing().value())
                        .isCloseTo(Math.exp(-2 * Math.PI * zeta / Math.sqrt(1 - zeta * zeta)), within(1e-3));
            }
        }
    }

    /** Of a hundred noisy records the truth lies within the tolerances of 95 at least. */
    @Test
    void itsTolerancesHoldTheTruth() {
        SplittableRandom random = new SplittableRandom(20261130);
        int held = 0;
        for (int i = 0; i < 100; i++) {
            double hertz = 1 + random.nextDouble();
            double zeta = 0.1 + 0.25 * random.nextDouble();
            Series record = of(swing(hertz, zeta, 0, -0.05), -0.05, random, 0.002);
            Decay decay = Decay.of(record.times(), record.values()).orElseThrow();
            double swing = Math.exp(-2 * Math.PI * zeta / Math.sqrt(1 - zeta * zeta));
            held += Math.abs(decay.frequency().value() - hertz)
                                    <= decay.frequency().tolerance()
                            && Math.abs(decay.nextSwing().value() - swing)
                                    <= decay.nextSwing().tolerance()
                    ? 1
                    : 0;
        }
        assertThat(held).isGreaterThanOrEqualTo(95);
    }

    /** Acceleration of the same swing, by its closed form: it dies out and swings alike. */
    @Test
    void heightAndAccelerationTellTheSame() {
        DoubleUnaryOperator height = swing(1.4, 0.2, 0, -0.05);
        double h = 1e-4;
        DoubleUnaryOperator acceleration =
                t -> (height.applyAsDouble(t + h) - 2 * height.applyAsDouble(t) + height.applyAsDouble(Math.abs(t - h)))
                        / (h * h);
        Series record = of(acceleration, 0, new SplittableRandom(1), 0);
        Decay decay = Decay.of(record.times(), record.values()).orElseThrow();
        assertThat(decay.frequency().value()).isCloseTo(1.4, within(2e-3));
        assertThat(decay.nextSwing().value()).isCloseTo(Math.exp(-2 * Math.PI * 0.2 / Math.sqrt(0.96)), within(2e-3));
    }

    @Test
    void whatDoesNotSwingTellsNothing() {
        Series creeps = of(t -> -0.05 * Math.exp(-3 * t), -0.05, new SplittableRandom(1), 0);
        assertThat(Decay.of(creeps.times(), creeps.values())).isEmpty();
        Series noise = of(t -> 0, 0, new SplittableRandom(2), 0.01);
        assertThat(Decay.of(noise.times(), noise.values())).isEmpty();
        assertThat(Decay.of(List.of(0.0, 0.1), List.of(0.0, 1.0))).isEmpty();
        Series flat = of(t -> 1, 1, new SplittableRandom(1), 0);
        assertThat(Decay.of(flat.times(), flat.values())).isEmpty();
    }
}
