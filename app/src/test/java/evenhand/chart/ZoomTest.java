package evenhand.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import evenhand.quantity.Unit;
import evenhand.words.Units;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class ZoomTest {
    private static final Chart CHART = new Chart(
            "",
            Axis.Measure.of("x", Unit.of("g"), 1, new Span(0, 1)),
            Axis.Measure.of("y", Unit.of("deg"), 1, new Span(-10, 10)),
            List.of());

    @Test
    void thePlaceUnderTheMouseStaysWhereItIs() {
        Zoom closer = Zoom.all(CHART).by(2, 0.25, 5, CHART);
        assertThat(closer).isEqualTo(new Zoom(new Span(0.125, 0.625), new Span(-2.5, 7.5)));
        assertThat(closer.isPart(CHART)).isTrue();
        assertThat(closer.by(0.5, 0.25, 5, CHART)).isEqualTo(Zoom.all(CHART));
    }

    @Test
    void nothingBeyondTheChartIsEverSeen() {
        SplittableRandom random = new SplittableRandom(7);
        Zoom zoom = Zoom.all(CHART);
        for (int i = 0; i < 2000; i++) {
            Span across = zoom.across();
            Span up = zoom.up();
            double x = across.low() + random.nextDouble() * across.width();
            double y = up.low() + random.nextDouble() * up.width();
            zoom = zoom.by(Math.exp(random.nextDouble(-1, 1)), x, y, CHART);
            assertThat(zoom.across().low()).isGreaterThanOrEqualTo(-1e-12);
            assertThat(zoom.across().high()).isLessThanOrEqualTo(1 + 1e-12);
            assertThat(zoom.up().low()).isGreaterThanOrEqualTo(-10 - 1e-9);
            assertThat(zoom.up().high()).isLessThanOrEqualTo(10 + 1e-9);
        }
    }

    @Test
    void aRectangleInAnyDirectionIsLookedAtAndATinyOneIsNot() {
        Zoom all = Zoom.all(CHART);
        Zoom wanted = new Zoom(new Span(0.2, 0.4), new Span(-5, 0));
        assertThat(all.to(0.2, -5, 0.4, 0, CHART)).isEqualTo(wanted);
        assertThat(all.to(0.4, 0, 0.2, -5, CHART)).isEqualTo(wanted);
        assertThat(all.to(0.2, 0, 0.2001, 0.1, CHART)).isEqualTo(all);
        assertThat(all.to(-3, -50, 0.5, 0, CHART)).isEqualTo(new Zoom(new Span(0, 0.5), new Span(-10, 0)));
    }

    @Test
    void aFrequencyStaysUnderTheMouseByItsOctaves() {
        Chart chart = DemoCharts.frequencies(Units.METRIC);
        Zoom closer = Zoom.all(chart).by(2, 2, 0.5, chart);
        double before = Math.log(2 / 0.5) / Math.log(20 / 0.5);
        double after = Math.log(2 / closer.across().low())
                / Math.log(closer.across().high() / closer.across().low());
        assertThat(after).isCloseTo(before, within(1e-12));
    }

    @Test
    void rowsAreAlwaysShownWhole() {
        Chart bars = DemoCharts.effects("harbour-saloon", 4, Units.METRIC);
        assertThat(Zoom.all(bars).by(3, 0, 1, bars).up()).isEqualTo(new Span(-0.5, 3.5));
    }

    @Test
    void spansAreRoundAndHoldTheirValues() {
        assertThat(Span.around(DoubleStream.of(0.02, 0.793)).including(0).rounded())
                .isEqualTo(new Span(0, 0.8));
        assertThat(Span.around(DoubleStream.of(-3.62, 1.8)).rounded().low()).isEqualTo(-4.0);
        assertThat(Span.around(DoubleStream.empty())).isEqualTo(new Span(0, 1));
        assertThat(Span.around(DoubleStream.of(3, Double.NaN, 3))).isEqualTo(new Span(2.5, 3.5));
        assertThat(new Span(0, 1).step(10)).isCloseTo(0.1, within(1e-12));
        assertThat(new Span(0, 1).step(4)).isCloseTo(0.5, within(1e-12));
        assertThatThrownBy(() -> new Span(1, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aRoundedSpanNeverCutsAValueOff() {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 5000; i++) {
            double low = random.nextDouble(-1, 1) * Math.pow(10, random.nextInt(-6, 7));
            double high = low + random.nextDouble(1e-3, 1) * Math.abs(low) * Math.pow(10, random.nextInt(0, 5));
            Span span = new Span(low, high).rounded();
            double tiny = 1e-6 * (high - low);
            assertThat(span.low()).isLessThanOrEqualTo(low + tiny);
            assertThat(span.high()).isGreaterThanOrEqualTo(high - tiny);
            assertThat(span.width()).isLessThanOrEqualTo(1.5 * (high - low));
        }
    }
}
