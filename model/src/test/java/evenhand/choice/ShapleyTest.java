package evenhand.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ShapleyTest {
    @Test
    void twoChangesThatWorkOnlyTogetherShareEvenly() {
        Shapley shapley = of(2, 1, 1, 1, 7);
        assertThat(shapley.shares()).containsExactly(3.0, 3.0);
        assertThat(shapley.avoids()).isFalse();
    }

    @Test
    void sharesAreTheMeanOverAllOrders() {
        SplittableRandom random = new SplittableRandom(11);
        for (int n = 1; n <= 6; n++) {
            double[] values = random.doubles(1 << n, -5, 5).toArray();
            List<Double> expected = bruteForce(n, values);
            Shapley shapley = of(n, values);
            for (int i = 0; i < n; i++) {
                assertThat(shapley.shares().get(i)).isCloseTo(expected.get(i), within(1e-12));
            }
        }
    }

    @Test
    void sharesOfTwelveChangesAddUp() {
        double[] values = new SplittableRandom(3).doubles(1 << 12, -5, 5).toArray();
        Shapley shapley = of(12, values);
        double sum = shapley.shares().stream().mapToDouble(Double::doubleValue).sum();
        assertThat(sum).isCloseTo(values[values.length - 1] - values[0], within(1e-12));
        assertThat(shapley.orders()).isEqualTo(479_001_600);
    }

    @Test
    void aChangeWithoutEffectGetsNothingAndEqualOnesGetTheSame() {
        // value = 5 a b + 2 (a + b), change c does nothing
        Shapley shapley = of(3, 0, 2, 2, 9, 0, 2, 2, 9);
        assertThat(shapley.shares()).containsExactly(4.5, 4.5, 0.0);
        assertThat(shapley.largest()).containsExactly(7.0, 7.0, 0.0);
    }

    @Test
    void ordersThroughACarWithoutAnswerAreLeftOut() {
        // With change b alone there is no answer: only "a first" remains.
        OptionalDouble[] values = {
            OptionalDouble.of(0), OptionalDouble.of(1), OptionalDouble.empty(), OptionalDouble.of(10)
        };
        Shapley shapley = Shapley.of(2, set -> values[set]).orElseThrow();
        assertThat(shapley.shares()).containsExactly(1.0, 9.0);
        assertThat(shapley.avoids()).isTrue();
        values[1] = OptionalDouble.empty();
        assertThat(Shapley.of(2, set -> values[set])).isEmpty();
    }

    /** Of random games: shares of a sum are the sums of shares, twins share alike, an idler gets nothing, all add up. */
    @Test
    void sharesAreAdditiveSymmetricAndNothingForAnIdler() {
        SplittableRandom random = new SplittableRandom(29);
        for (int game = 0; game < 200; game++) {
            int n = 3 + game % 5;
            double[] one = random.doubles(1 << n, -5, 5).toArray();
            double[] other = random.doubles(1 << n, -5, 5).toArray();
            double[] sum = new double[1 << n];
            double[] special = new double[1 << n];
            int twins = 1 << (n - 3);
            for (int set = 0; set < sum.length; set++) {
                sum[set] = one[set] + 2 * other[set];
                // The first change does nothing; the second and third are worth the same to everybody.
                int pair = (set >> 1 & 1) + (set >> 2 & 1);
                special[set] = one[(set >> 3) + twins * pair];
            }
            Shapley a = of(n, one);
            Shapley b = of(n, other);
            Shapley both = of(n, sum);
            for (int i = 0; i < n; i++) {
                double expected = a.shares().get(i) + 2 * b.shares().get(i);
                assertThat(both.shares().get(i)).isCloseTo(expected, within(1e-12));
            }
            double all = both.shares().stream().mapToDouble(Double::doubleValue).sum();
            assertThat(all).isCloseTo(sum[sum.length - 1] - sum[0], within(1e-12));
            Shapley even = of(n, special);
            assertThat(even.shares().get(0)).isZero();
            assertThat(even.shares().get(1)).isCloseTo(even.shares().get(2), within(1e-12));
        }
    }

    @Test
    void noChangesAndTooMany() {
        assertThat(of(0, 4).shares()).isEmpty();
        assertThatThrownBy(() -> Shapley.of(13, set -> OptionalDouble.of(set)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static Shapley of(int changes, double... values) {
        return Shapley.of(changes, set -> OptionalDouble.of(values[set])).orElseThrow();
    }

    private static List<Double> bruteForce(int n, double[] values) {
        double[] sums = new double[n];
        int orders = walk(n, values, 0, sums);
        List<Double> shares = new ArrayList<>();
        for (double sum : sums) {
            shares.add(sum / orders);
        }
        return shares;
    }

    /** Goes every order on from a set; adds each step as often as orders lead through it. */
    private static int walk(int n, double[] values, int set, double[] sums) {
        if (set == (1 << n) - 1) {
            return 1;
        }
        int orders = 0;
        for (int i = 0; i < n; i++) {
            int with = set | 1 << i;
            if (with != set) {
                int onwards = walk(n, values, with, sums);
                sums[i] += onwards * (values[with] - values[set]);
                orders += onwards;
            }
        }
        return orders;
    }
}
