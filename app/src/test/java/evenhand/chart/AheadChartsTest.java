package evenhand.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Weights;
import evenhand.chart.BrakeCharts.Stopping;
import evenhand.chart.LaunchCharts.Launching;
import evenhand.chart.Part.Bar;
import evenhand.chart.Part.Guide;
import evenhand.chart.Part.Line;
import evenhand.chart.Part.Mark;
import evenhand.chart.Part.Point;
import evenhand.straight.Braking;
import evenhand.straight.Driving;
import evenhand.turn.Direction;
import evenhand.turn.Wheel;
import evenhand.words.Units;
import java.util.List;
import org.junit.jupiter.api.Test;

class AheadChartsTest {
    private static final List<Shown> SALOON =
            DemoCharts.shown("harbour-saloon", Direction.LEFT).subList(0, 2);
    private static final List<Shown> SPECIAL =
            DemoCharts.shown("quarry-special", Direction.LEFT).subList(0, 2);

    @Test
    void whereBothEndsUseAsMuchTheBrakesAreIdealAndBeyondThemTheRearIsAboveTheCurve() {
        List<Stopping> cars = DemoCharts.stopping(SALOON);
        Chart chart = BrakeCharts.forces(cars, Units.METRIC);
        for (Stopping car : cars) {
            double crossing = car.answer().crossings().get(0).deceleration();
            Line own = chart.line(car.name(), "brakes").findFirst().orElseThrow();
            Line ideal = chart.line(car.name(), "ideal").findFirst().orElseThrow();
            for (int i = 1; i < own.points().size(); i++) {
                Point at = own.points().get(i);
                double curve = CrossHair.value(ideal.points(), at.x()).orElse(0);
                boolean beyond = car.answer().rows().get(i - 1).deceleration() > crossing;
                assertThat(at.y() > curve).as("%s at %s", car.name(), at).isEqualTo(beyond);
            }
            Mark lock = chart.marks().stream()
                    .filter(mark -> mark.name().equals(car.name()))
                    .findFirst()
                    .orElseThrow();
            double locks = car.answer().own().locks().orElseThrow().deceleration();
            // Both forces together slow the car by what it locks at.
            assertThat(lock.at().x() + lock.at().y())
                    .isCloseTo(SALOON.get(0).car().weights().mass() * locks, within(0.5));
            assertThat(own.ending()).isEqualTo("rear locks at " + Units.exactPace(locks));
        }
    }

    @Test
    void everyLineOfEqualDecelerationAddsUpToItsForce() {
        Chart chart = BrakeCharts.forces(DemoCharts.stopping(SPECIAL), Units.METRIC);
        double weight = SPECIAL.get(0).car().weights().mass() * Weights.GRAVITY;
        assertThat(chart.guides()).hasSize(6);
        Guide third = chart.guides().get(2);
        assertThat(third.words()).isEqualTo("0.6 g");
        assertThat(third.points())
                .allSatisfy(point -> assertThat(point.x() + point.y()).isCloseTo(0.6 * weight, within(0.01)));
        // Two set-ups of one mass and height have one ideal curve.
        assertThat(chart.lines()).extracting(Line::label).containsOnlyOnce("ideal");
    }

    @Test
    void adhesionIsThatOfTheRowsAndTheYardsticksAreTheRules() {
        Stopping car = DemoCharts.stopping(SPECIAL).get(0);
        Chart chart = BrakeCharts.adhesion(List.of(car), Units.METRIC);
        Braking.Row row = car.answer().at(0.6 * Weights.GRAVITY).orElseThrow();
        assertThat(value(chart, car.name(), "front", 0.6))
                .isCloseTo(100 * row.front().force() / row.front().load(), within(1e-6));
        assertThat(value(chart, car.name(), "rear", 0.6))
                .isCloseTo(100 * row.rear().force() / row.rear().load(), within(1e-6));
        assertThat(value(chart, car.name(), "front", 0.6)).isGreaterThan(value(chart, car.name(), "rear", 0.6));
        // z = 0.1 + 0.85·(k − 0.2) and 0.1 + 0.7·(k − 0.2), k from 20 to 80 %.
        assertThat(chart.guides().get(1).points().get(1).x()).isCloseTo(0.61, within(1e-9));
        assertThat(chart.guides().get(2).points().get(1).x()).isCloseTo(0.52, within(1e-9));
        assertThat(chart.guides().get(2).points().get(0)).isEqualTo(new Point(0.1, 20));
        assertThat(chart.guides().get(3).points().get(0).y()).isCloseTo(35, within(1e-9));
    }

    private static double value(Chart chart, String name, String part, double x) {
        return CrossHair.value(chart.line(name, part).findFirst().orElseThrow().points(), x)
                .orElseThrow();
    }

    @Test
    void whatAGearGivesBeyondGripStandsApartAndAddsUp() {
        List<Launching> cars = DemoCharts.launching(SPECIAL);
        Chart chart = LaunchCharts.gears(cars);
        Driving.Answer open = cars.get(1).answer();
        List<Bar> first = chart.bars().stream()
                .filter(bar -> bar.row() == 0 && bar.lane() == 1)
                .toList();
        assertThat(first).hasSize(2);
        double grip = open.launch().orElseThrow().grip().orElseThrow() / Weights.GRAVITY;
        assertThat(first.get(0).to()).isCloseTo(grip, within(1e-12));
        assertThat(first.get(1).from()).isEqualTo(first.get(0).to());
        assertThat(first.get(1).part()).isEqualTo("more than grip allows");
        assertThat(first.get(1).words()).isEqualTo("0.711 g");
        // From second gear on no wheel spins.
        assertThat(chart.bars())
                .filteredOn(bar -> bar.row() > 0)
                .allMatch(bar -> bar.part().isEmpty());
        assertThat(((Axis.Rows) chart.up()).rows()).hasSize(open.gears().size());
        assertThat(LaunchCharts.gears(DemoCharts.launching(DemoCharts.shown("orchard-estate", Direction.LEFT)))
                        .isEmpty())
                .isTrue();
    }

    @Test
    void theWheelThatTheShaftUnloadsGainsLessOverItsStroke() {
        Chart chart = LaunchCharts.wheelLoads(DemoCharts.launching(SALOON), Units.METRIC);
        assertThat(gain(chart, Wheel.REAR_RIGHT)).isPositive().isLessThan(gain(chart, Wheel.REAR_LEFT));
        assertThat(gain(chart, Wheel.FRONT_LEFT)).isNegative();
    }

    private static double gain(Chart chart, Wheel wheel) {
        Bar bar = chart.bars().stream()
                .filter(one -> one.row() == wheel.index() && one.lane() == 0)
                .findFirst()
                .orElseThrow();
        Mark rest = chart.marks().stream()
                .filter(mark -> mark.at().y() == bar.middle())
                .findFirst()
                .orElseThrow();
        return bar.to() - rest.at().x();
    }
}
