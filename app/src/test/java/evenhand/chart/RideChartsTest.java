package evenhand.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.answers.Trial;
import evenhand.car.Car;
import evenhand.chart.Part.Line;
import evenhand.chart.RideCharts.Riding;
import evenhand.look.SetupStyle;
import evenhand.ride.Ride;
import evenhand.scenario.Demo;
import evenhand.scenario.Setup;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RideChartsTest {
    private static List<Riding> riding(String demo) {
        List<Riding> cars = new ArrayList<>();
        for (Setup setup : Demo.read(demo).setups()) {
            Car car = setup.car().settled();
            if (Ride.of(car, Trial.USUAL_ROAD, Trial.USUAL_SPEED) instanceof Ride ride) {
                cars.add(new Riding(setup.name(), new SetupStyle(cars.size()), car, ride));
            }
        }
        return cars;
    }

    @ParameterizedTest
    @MethodSource("evenhand.scenario.Demo#names")
    void onLongWavesTheBodyGoesWithTheRoadAndOnShortOnesItDoesNot(String demo) {
        List<Riding> cars = riding(demo);
        Chart chart = RideCharts.bodyOverRoad(cars);
        assertThat(chart.lines()).hasSize(2 * cars.size()).isNotEmpty();
        for (Line line : chart.lines()) {
            assertThat(line.points().get(0).y()).isBetween(100.0, 140.0);
            assertThat(line.points().get(line.points().size() - 1).y()).isLessThan(15);
        }
    }

    @ParameterizedTest
    @MethodSource("evenhand.scenario.Demo#names")
    void thirdsOfAnOctaveMakeUpTheWeightedAcceleration(String demo) {
        int met = 0;
        for (Riding car : riding(demo)) {
            if (car.ride().seat().isEmpty()) {
                continue;
            }
            double sum = 0;
            for (int i = -12; i < 30; i++) {
                double third = RideCharts.third(car.ride().seat().get(), car.ride(), 0.5 * Math.pow(2, i / 3.0));
                sum += third * third;
            }
            double whole = car.ride().seatComfort().orElseThrow();
            assertThat(Math.sqrt(sum)).isCloseTo(whole, within(0.005 * whole));
            met++;
        }
        assertThat(met).isPositive();
    }
}
