package evenhand.chart;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.answers.Trial;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.chart.DamperCharts.Damped;
import evenhand.chart.Part.Line;
import evenhand.chart.Part.Mark;
import evenhand.look.SetupStyle;
import evenhand.ride.DamperChoice;
import evenhand.ride.Ride;
import evenhand.scenario.Demo;
import evenhand.scenario.Setup;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DamperChartsTest {
    private static List<Damped> damped(String demo, End end) {
        List<Damped> cars = new ArrayList<>();
        for (Setup setup : Demo.read(demo).setups()) {
            Car car = setup.car().settled();
            if (Ride.of(car, Trial.USUAL_ROAD, Trial.USUAL_SPEED) instanceof Ride ride) {
                cars.add(new Damped(
                        new RideCharts.Riding(setup.name(), new SetupStyle(cars.size()), car, ride),
                        DamperChoice.of(car, ride.axle(end), ride.road(), ride.speed())));
            }
        }
        return cars;
    }

    @ParameterizedTest
    @MethodSource("evenhand.scenario.Demo#names")
    void whatIsSetAndEveryTickOfTheScaleLiesOnItsCurve(String demo) {
        for (End end : End.values()) {
            List<Damped> cars = damped(demo, end);
            Chart chart = DamperCharts.comfortAgainstGrip(cars, end);
            assertThat(chart.lines()).hasSameSizeAs(cars);
            assertThat(chart.marks()).anyMatch(mark -> mark.kind() == Mark.Kind.NOW);
            for (Mark mark : chart.marks()) {
                Line line = chart.line(mark.name(), "").findFirst().orElseThrow();
                double nearest = line.points().stream()
                        .mapToDouble(point -> Math.hypot(
                                (point.x() - mark.at().x())
                                        / chart.across().span().width(),
                                (point.y() - mark.at().y()) / chart.up().span().width()))
                        .min()
                        .orElseThrow();
                assertThat(nearest).as("%s of %s", mark.words(), mark.name()).isLessThan(0.1);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("evenhand.scenario.Demo#names")
    void noTwoMarksAtOnePlaceHaveTheSameWords(String demo) {
        Chart chart = DamperCharts.comfortAgainstGrip(damped(demo, End.FRONT), End.FRONT);
        assertThat(chart.marks().stream()
                        .filter(mark -> !mark.words().isEmpty())
                        .map(mark -> List.of(mark.at(), mark.words())))
                .doesNotHaveDuplicates();
    }
}
