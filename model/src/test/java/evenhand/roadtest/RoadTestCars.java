package evenhand.roadtest;

import evenhand.car.Weights;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.CatalogueTest;
import evenhand.catalogue.Content;
import evenhand.catalogue.Entries;
import evenhand.doubt.Tolerance;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.turn.Direction;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A car with tolerances, and tests of it whose readings are what a car that is off shows. */
final class RoadTestCars {
    static final double G = Weights.GRAVITY;
    static final Tolerance.Unsaid EXACT = Tolerance.Unsaid.EXACT;

    private RoadTestCars() {}

    static Entries with(Entries car, String path, String quantity) {
        try {
            return Catalogue.with(
                    car,
                    path,
                    Quantity.parse(
                            quantity,
                            ((Content.Measure) Catalogue.slot(car, path).content()).dimension()));
        } catch (QuantityException e) {
            throw new IllegalArgumentException(quantity, e);
        }
    }

    /** A car whose tyres were measured, with a few numbers that may be off. */
    static Entries car() {
        Entries car = CatalogueTest.car();
        car = with(car, "steering.ratio", "17 ± 0.3");
        car = with(car, "cgHeight", "520 mm ± 30 mm");
        car = with(car, "front.spring.rate", "60 N/mm ± 4 N/mm");
        for (String end : List.of("front", "rear")) {
            car = with(car, end + ".tyre.corneringStiffness", "1000 N/deg ± 120 N/deg");
            car = with(car, end + ".tyre.friction", "0.95 ± 0.06");
            car = with(car, end + ".tyre.frictionLoadSensitivity", "0.12");
            car = with(car, end + ".tyre.referenceLoad", "3300 N");
            car = with(car, end + ".tyre.stiffnessPeakLoadRatio", "2");
            car = with(car, end + ".tyre.shape", "1.35");
            car = with(car, end + ".tyre.curvature", "-0.6");
            car = with(car, end + ".tyre.verticalRate", "200 N/mm");
            car = with(car, end + ".tyre.loadedRadius", "300 mm");
            car = with(car, end + ".tyre.longitudinalFrictionRatio", "1");
        }
        return car;
    }

    static Measured degrees(double value, double tolerance) {
        return new Measured(Math.toRadians(value), Math.toRadians(tolerance));
    }

    static Pace pace(double inG) {
        return new Pace.Acceleration(new Measured(inG * G, 0.02 * G));
    }

    static RoadTest test(String name, Entries car, List<Observation> observations) {
        return new RoadTest(
                name,
                "As it is",
                car,
                Optional.empty(),
                RoadTest.USUAL_GRIP,
                RoadTest.USUAL_STRAIGHT_AHEAD,
                Optional.of(new Measured(30, 0.3)),
                observations);
    }

    /** Steering wheel and lean both ways at some paces, nothing read yet. */
    static List<Observation> toRead(double... paces) {
        List<Observation> all = new ArrayList<>();
        for (Direction turn : Direction.values()) {
            for (double one : paces) {
                all.add(new Observation.Reading(turn, pace(one), Channel.STEERING_WHEEL, degrees(0, 2)));
                all.add(new Observation.Reading(turn, pace(one), Channel.ROLL, degrees(0, 0.3)));
            }
        }
        return all;
    }

    /** The test with readings of a car that is off, each off by some of its standard deviations. */
    static RoadTest read(RoadTest empty, Unknowns unknowns, int place, double[] z, double[] errors) {
        Unknowns own = new Unknowns(List.of(empty.car()), List.of(empty), EXACT);
        List<Predicted> shown = new OnTheRoad(List.of(empty), own)
                .predicted(alone(own, unknowns, place, z))
                .orElseThrow();
        List<Observation> read = new ArrayList<>();
        for (int i = 0; i < shown.size(); i++) {
            Predicted one = shown.get(i);
            double value = one.expected() + errors[i] * one.sigma();
            Observation observation = empty.observations().get(i);
            if (observation instanceof Observation.Reading reading) {
                read.add(new Observation.Reading(
                        reading.turn(),
                        reading.pace(),
                        reading.channel(),
                        new Measured(value, reading.measured().tolerance())));
            } else if (observation instanceof Observation.Limit limit) {
                read.add(new Observation.Limit(
                        limit.turn(),
                        new Pace.Acceleration(new Measured(value, 0.02 * G)),
                        limit.tolerance(),
                        limit.firstAxle()));
            }
        }
        return empty.with(read);
    }

    /** The unknowns of one test alone, of those of all. */
    private static double[] alone(Unknowns own, Unknowns all, int place, double[] z) {
        double[] alone = new double[own.count()];
        for (int k = 0; k < own.numbers().size(); k++) {
            String path = own.numbers().get(k).path();
            for (int j = 0; j < all.numbers().size(); j++) {
                if (all.numbers().get(j).path().equals(path)) {
                    alone[k] = z[j];
                }
            }
        }
        for (Unknowns.OfTest what : Unknowns.OfTest.values()) {
            alone[own.place(0, what).orElseThrow()] = z[all.place(place, what).orElseThrow()];
        }
        return alone;
    }
}
