package evenhand.roadtest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LineFitTest {
    /** y, x of the data set Norris of the NIST Statistical Reference Datasets (linear regression, lower difficulty). */
    private static final double[] NORRIS = {
        0.1, 0.2, 338.8, 337.4, 118.1, 118.2, 888.0, 884.6, 9.2, 10.1, 228.1, 226.5, 668.5, 666.3, 998.5, 996.3, 449.1,
        448.6, 778.9, 777.0, 559.2, 558.2, 0.3, 0.4, 0.1, 0.6, 778.1, 775.5, 668.8, 666.9, 339.3, 338.0, 448.9, 447.5,
        10.8, 11.6, 557.7, 556.0, 228.3, 228.1, 998.0, 995.8, 888.8, 887.6, 119.6, 120.2, 0.3, 0.3, 0.6, 0.3, 557.6,
        556.8, 339.3, 339.1, 888.0, 887.2, 998.5, 999.0, 778.9, 779.0, 10.2, 11.1, 117.6, 118.3, 228.9, 229.2, 668.4,
        669.1, 449.2, 448.9, 0.2, 0.5
    };

    private static List<LineFit.Point> norris(double sigma) {
        List<LineFit.Point> points = new ArrayList<>();
        for (int i = 0; i < NORRIS.length; i += 2) {
            points.add(new LineFit.Point(NORRIS[i + 1], NORRIS[i], sigma));
        }
        return points;
    }

    /** Certified: intercept, slope, its standard deviation and the residual one. */
    @Test
    void ofACertifiedDataSetItIsTheCertifiedLine() {
        LineFit fit = LineFit.through(List.of(norris(0.01))).orElseThrow();
        assertThat(fit.points()).isEqualTo(36);
        assertThat(fit.slope()).isCloseTo(1.00211681802045, within(1e-12));
        assertThat(fit.intercepts().get(0)).isCloseTo(-0.262323073774029, within(1e-11));
        assertThat(fit.standardError()).isCloseTo(0.429796848199937e-3, within(1e-14));
        assertThat(0.01 * Math.sqrt(fit.chiSquare() / 34)).isCloseTo(0.884796396144373, within(1e-12));
    }

    /** Points that scatter by less than they are said to be off are not better for it. */
    @Test
    void whatEachPointMayBeOffCountsWhereTheyScatterLess() {
        double sigma = 10;
        LineFit fit = LineFit.through(List.of(norris(sigma))).orElseThrow();
        double certified = 0.429796848199937e-3 / 0.884796396144373; // over the residual standard deviation
        assertThat(fit.standardError()).isCloseTo(certified * sigma, within(1e-12));
    }

    @Test
    void groupsShareTheSlopeAndHaveTheirOwnIntercepts() {
        List<LineFit.Point> low = List.of(new LineFit.Point(1, 3, 0.1), new LineFit.Point(3, 7, 0.2));
        List<LineFit.Point> high = List.of(new LineFit.Point(2, 14, 0.3), new LineFit.Point(5, 20, 0.1));
        LineFit fit = LineFit.through(List.of(low, high)).orElseThrow();
        assertThat(fit.slope()).isCloseTo(2, within(1e-12));
        assertThat(fit.intercepts().get(0)).isCloseTo(1, within(1e-12));
        assertThat(fit.intercepts().get(1)).isCloseTo(10, within(1e-12));
    }

    @Test
    void aPointOfGreaterWeightDrawsTheLine() {
        List<LineFit.Point> even =
                List.of(new LineFit.Point(0, 0, 1), new LineFit.Point(1, 1, 1), new LineFit.Point(2, 0, 1));
        List<LineFit.Point> last =
                List.of(new LineFit.Point(0, 0, 1), new LineFit.Point(1, 1, 1), new LineFit.Point(2, 0, 0.1));
        assertThat(LineFit.through(List.of(even)).orElseThrow().slope()).isCloseTo(0, within(1e-12));
        // w = 1, 1, 100: the weighted mean of x is 201/102, and b = Σw(x − x̄)(y − ȳ)/Σw(x − x̄)²
        assertThat(LineFit.through(List.of(last)).orElseThrow().slope())
                .isCloseTo(-(99.0 / 102) / (401 - 201.0 * 201 / 102), within(1e-12));
    }

    @Test
    void tooFewPointsOrOnePlaceTellNoSlope() {
        LineFit.Point here = new LineFit.Point(1, 2, 1);
        LineFit.Point there = new LineFit.Point(2, 3, 1);
        assertThat(LineFit.through(List.of(List.of(here, there)))).isEmpty();
        assertThat(LineFit.through(List.of(List.of(here, here, here)))).isEmpty();
        assertThat(LineFit.through(List.of(List.of(here, here), List.of(there, there))))
                .isEmpty();
        assertThat(LineFit.through(List.of(List.of(here, here, there), List.of())))
                .isEmpty();
    }
}
