package evenhand.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.chart.Part.Bar;
import evenhand.chart.Part.Mark;
import evenhand.handsums.HandSums;
import evenhand.quantity.Unit;
import evenhand.turn.Direction;
import evenhand.turn.PaceAnswer;
import evenhand.words.Units;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CauseChartsTest {
    @ParameterizedTest
    @MethodSource("evenhand.scenario.Demo#names")
    void thePathsOfLoadTransferAddUpToIt(String demo) {
        List<Shown> cars = DemoCharts.shown(demo, Direction.LEFT);
        Chart chart = CauseCharts.loadTransfer(cars, DemoCharts.BRISK, Units.METRIC);
        assertThat(((Axis.Rows) chart.up()).rows()).hasSize(2 * cars.size());
        for (int row = 0; row < 2 * cars.size(); row++) {
            HandSums sums = cars.get(row % cars.size()).sums().orElseThrow();
            double whole = (row < cars.size() ? sums.front() : sums.rear()).lateralLoadTransfer()
                    * DemoCharts.BRISK
                    / sums.lateralAcceleration();
            assertThat(sum(chart, row)).isCloseTo(whole, within(1e-9 * whole));
        }
    }

    @ParameterizedTest
    @MethodSource("evenhand.scenario.Demo#names")
    void thePartsOfTheBudgetAddUpToTheGradient(String demo) {
        List<Shown> cars = DemoCharts.shown(demo, Direction.LEFT);
        Chart chart = CauseCharts.budget(cars, DemoCharts.BRISK, Units.METRIC);
        for (int row = 0; row < cars.size(); row++) {
            PaceAnswer.InBalance at = (PaceAnswer.InBalance)
                    DemoCharts.turn(cars.get(row)).paces().get(1);
            double gradient =
                    Unit.of("deg/g").fromSi(at.row().understeerGradient().orElseThrow());
            assertThat(sum(chart, row)).isCloseTo(gradient, within(1e-6));
            int index = row;
            Mark total = chart.marks().stream()
                    .filter(mark -> mark.at().y() == index)
                    .findFirst()
                    .orElseThrow();
            assertThat(total.at().x()).isCloseTo(gradient, within(1e-6));
            assertThat(total.words()).endsWith("deg/g");
        }
    }

    private static double sum(Chart chart, int row) {
        return chart.bars().stream()
                .filter(bar -> bar.row() == row)
                .mapToDouble(bar -> bar.to() - bar.from())
                .sum();
    }

    @Test
    void partsOfOneSignLieEndToEndAndNeverOverOneAnother() {
        Chart chart =
                CauseCharts.budget(DemoCharts.shown("quarry-special", Direction.LEFT), DemoCharts.BRISK, Units.METRIC);
        for (Bar one : chart.bars()) {
            for (Bar other : chart.bars()) {
                if (!one.equals(other) && one.row() == other.row()) {
                    double shared = Math.min(Math.max(one.from(), one.to()), Math.max(other.from(), other.to()))
                            - Math.max(Math.min(one.from(), one.to()), Math.min(other.from(), other.to()));
                    assertThat(shared).isLessThan(1e-12);
                }
            }
        }
        assertThat(chart.bars()).extracting(Bar::hatch).doesNotContainNull();
    }

    @Test
    void aPaceThatIsNotReachedIsSaid() {
        List<Shown> cars = DemoCharts.shown("harbour-saloon", Direction.LEFT).subList(0, 1);
        Chart chart = CauseCharts.budget(cars, Unit.of("g").toSi(1.4), Units.METRIC);
        assertThat(chart.notes()).containsExactly("As bought is not shown: it does not reach 1.4 g.");
    }

    @Test
    void effectsAreSortedByTheirSizeAndSayWhatMovesToo() {
        Chart chart = DemoCharts.effects("harbour-saloon", 10, Units.METRIC);
        assertThat(chart.bars()).hasSize(10);
        for (int i = 1; i < 10; i++) {
            assertThat(Math.abs(chart.bars().get(i).to()))
                    .isLessThanOrEqualTo(Math.abs(chart.bars().get(i - 1).to()));
        }
        assertThat(chart.bars()).allMatch(bar -> bar.words().endsWith(" deg/g"));
        List<Axis.Row> rows = ((Axis.Rows) chart.up()).rows();
        assertThat(rows).extracting(Axis.Row::words).contains("rear spring rate +2.2 N/mm");
        assertThat(rows)
                .extracting(Axis.Row::beside)
                .anyMatch(words -> words.startsWith("also the understeer near the limit"));
    }
}
