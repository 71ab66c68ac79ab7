package evenhand.load;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.LoadCase;
import evenhand.car.Stops;
import java.util.List;
import java.util.Optional;

/** Loads put into cars, and how they come to rest. */
final class Loads {
    private Loads() {}

    static LoadCase one(double mass, double behindFrontAxle, double height) {
        return new LoadCase("one", List.of(new LoadCase.Added("ballast", mass, behindFrontAxle, height)));
    }

    static Laden.AtRest atRest(Car car, LoadCase load) {
        Laden laden = Laden.of(car, Optional.of(load));
        assertThat(laden).isInstanceOf(Laden.AtRest.class);
        return (Laden.AtRest) laden;
    }

    static String noRest(Car car, LoadCase load) {
        Laden laden = Laden.of(car, Optional.of(load));
        assertThat(laden).isInstanceOf(Laden.NoRest.class);
        return ((Laden.NoRest) laden).text();
    }

    static double gap(Axle axle) {
        return axle.stops().bump().map(Stops.Bump::gap).orElse(Double.POSITIVE_INFINITY);
    }
}
