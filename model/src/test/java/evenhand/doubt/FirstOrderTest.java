package evenhand.doubt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FirstOrderTest {
    /** Ishigami's function with a = 7 and b = 0.1: first-order shares 0.3139, 0.4424 and 0 (Saltelli et al. 2008, ch. 4). */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void sharesOfIshigamisFunctionAreThoseOfTheBook(long seed) {
        int n = 16_384;
        double[][] chances = NormalPoints.chances(3, n, seed);
        double[] figure = new double[n];
        for (int i = 0; i < n; i++) {
            double[] x = {angle(chances[0][i]), angle(chances[1][i]), angle(chances[2][i])};
            figure[i] = Math.sin(x[0]) + 7 * Math.pow(Math.sin(x[1]), 2) + 0.1 * Math.pow(x[2], 4) * Math.sin(x[0]);
        }
        double[] expected = {0.3139, 0.4424, 0};
        for (int k = 0; k < 3; k++) {
            FirstOrder.Share share = new FirstOrder(chances[k]).share(Samples.of(figure));
            assertThat(share.share()).isCloseTo(expected[k], within(0.01));
            assertThat(share.standardError()).isLessThan(0.01);
        }
    }

    private static double angle(double chance) {
        return Math.PI * (2 * chance - 1);
    }

    /** Of a sum of independent inputs each has its own variance's share; the error stated holds about two thirds of the cases. */
    @ParameterizedTest
    @ValueSource(doubles = {0.02, 0.2, 0.5, 0.9})
    void theErrorStatedIsTheErrorMade(double share) {
        SplittableRandom random = new SplittableRandom(8);
        int n = 600;
        int runs = 400;
        int within = 0;
        int withinTwo = 0;
        double mean = 0;
        for (int run = 0; run < runs; run++) {
            double[] input = new double[n];
            double[] figure = new double[n];
            for (int i = 0; i < n; i++) {
                input[i] = NormalPoints.deviate(NormalPoints.inside(random.nextDouble()));
                figure[i] = 5
                        + Math.sqrt(share) * input[i]
                        + Math.sqrt(1 - share) * NormalPoints.deviate(NormalPoints.inside(random.nextDouble()));
            }
            FirstOrder.Share found = new FirstOrder(input).share(Samples.of(figure));
            double error = Math.abs(found.share() - share);
            within += error <= found.standardError() ? 1 : 0;
            withinTwo += error <= 2 * found.standardError() ? 1 : 0;
            mean += found.share() / runs;
        }
        assertThat((double) within / runs).isBetween(0.55, 0.85);
        assertThat((double) withinTwo / runs).isGreaterThan(0.9);
        assertThat(mean).isCloseTo(share, within(0.012));
    }

    @Test
    void aFigureThatStandsStillHasNoShares() {
        double[] input = new SplittableRandom(1).doubles(200).toArray();
        assertThat(new FirstOrder(input).share(Samples.of(new double[200])).share())
                .isZero();
        double[] three = {1, 2, 3};
        assertThat(new FirstOrder(three).share(Samples.of(three)).share()).isZero();
    }

    @Test
    void samplesWithoutTheFigureAreLeftOut() {
        double[] input = new SplittableRandom(1).doubles(2000, -1, 1).toArray();
        double[] figure = input.clone();
        boolean[] has = new boolean[2000];
        for (int i = 0; i < has.length; i++) {
            has[i] = i % 2 == 0;
            figure[i] = has[i] ? 3 * input[i] : 1e9;
        }
        assertThat(new FirstOrder(input).share(Samples.of(figure, has)).share()).isCloseTo(1, within(1e-9));
    }

    @Test
    void quantilesLieStraightBetweenNeighbours() {
        Samples samples = Samples.of(new double[] {4, 1, 3, 2, 5});
        assertThat(samples.quantiles(0, 0.25, 0.5, 0.625, 1)).containsExactly(1, 2, 3, 3.5, 5);
        assertThat(samples.standardDeviation()).isCloseTo(Math.sqrt(2.5), within(1e-12));
        assertThat(Samples.of(new double[] {7, 0}, new boolean[] {true, false}).quantiles(0.025, 0.975))
                .containsExactly(7, 7);
    }

    /** Of 230 samples, four pieces: the library's line through each, and the part that they explain as textbooks adjust it. */
    @Test
    void shareAndErrorAreThoseOfTheLinesThroughEachPiece() {
        int n = 230;
        SplittableRandom random = new SplittableRandom(31);
        double[] input = random.doubles(n, -2, 3).toArray();
        double[] figure = new double[n];
        boolean[] has = new boolean[n];
        for (int i = 0; i < n; i++) {
            figure[i] = 40 + 2 * Math.sin(2 * input[i]) + random.nextDouble();
            has[i] = i % 5 != 2;
        }
        int[] order = IntStream.range(0, n)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> input[i]))
                .mapToInt(i -> i)
                .toArray();
        SummaryStatistics all = new SummaryStatistics();
        IntStream.range(0, n).filter(i -> has[i]).forEach(i -> all.addValue(figure[i]));
        double[] line = new FirstOrder(input).line(Samples.of(figure, has));
        double left = 0;
        for (int piece = 0; piece < 4; piece++) {
            SimpleRegression through = new SimpleRegression();
            int[] members = Arrays.copyOfRange(order, n * piece / 4, n * (piece + 1) / 4);
            for (int i : members) {
                if (has[i]) {
                    through.addData(input[i], figure[i]);
                }
            }
            for (int i : members) {
                assertThat(line[i]).isCloseTo(through.predict(input[i]) - all.getMean(), within(1e-10));
            }
            left += through.getSumSquaredErrors();
        }
        double count = all.getN();
        double share = 1 - left / (count - 8) / all.getVariance();
        double error = Math.sqrt(
                4 * share * Math.pow(1 - share, 2) / count + 2 * 8 * Math.pow(1 - share, 2) / (count * count));
        FirstOrder.Share found = new FirstOrder(input).share(Samples.of(figure, has));
        assertThat(share).isBetween(0.7, 0.98);
        assertThat(found.share()).isCloseTo(share, within(1e-10));
        assertThat(found.standardError()).isCloseTo(error, within(1e-10));
    }

    @Test
    void somethingIsAddedToEachSample() {
        Samples sums = Samples.of(new double[] {1, 5, 9}).plus(new double[] {10, 20, 40});
        assertThat(sums.quantiles(0, 0.5, 1)).containsExactly(11, 25, 49);
    }

    @Test
    void asManySamplesAsParametersTellNothing() {
        double[] nine = {1, 2, 3, 4, 5, 6, 7, 8, 9};
        double[] figure = {1, 4, 9, 16, 25, 36, 49, 64, 81};
        assertThat(new FirstOrder(nine).share(Samples.of(figure)).share()).isGreaterThan(0.9);
        boolean[] three = {true, true, true, false, false, false, false, false, false};
        assertThat(new FirstOrder(nine).share(Samples.of(figure, three)).share())
                .isZero();
        boolean[] four = {true, true, true, true, false, false, false, false, false};
        assertThat(new FirstOrder(nine).share(Samples.of(figure, four)).share()).isPositive();
    }
}
