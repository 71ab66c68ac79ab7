package evenhand.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Bar;
import evenhand.car.Car;
import evenhand.car.Curve;
import evenhand.car.Damper;
import evenhand.car.End;
import evenhand.car.RoadCars;
import evenhand.car.Spring;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class DamperChoiceTest {
    private static final int CARS = 200;
    private static final double SPEED = 80 / 3.6;

    private static Ride ride(Car car) {
        return (Ride) Ride.of(car, RoadClass.C, SPEED);
    }

    @Test
    void noDamperOfTheSweepIsSofterThanTheSoftestOrSteadierThanTheSteadiest() {
        int inside = 0;
        for (long seed = 0; seed < CARS; seed++) {
            Ride ride = ride(RoadCars.damped(seed).settled());
            for (End end : End.values()) {
                AxleRide axle = ride.axle(end);
                List<DampingSweep.Point> fine = DampingSweep.of(axle, RoadClass.C, SPEED, 200);
                Optional<DampingSweep.Point> softest = DampingSweep.softest(axle, RoadClass.C, SPEED);
                Optional<DampingSweep.Point> steadiest = DampingSweep.steadiest(axle, RoadClass.C, SPEED);
                if (softest.isPresent() && steadiest.isPresent()) {
                    inside++;
                    assertThat(fine).as("car %d", seed).allSatisfy(point -> {
                        assertThat(point.weightedAcceleration())
                                .isGreaterThan(softest.get().weightedAcceleration() * (1 - 1e-6));
                        assertThat(point.tyreLoadVariation())
                                .isGreaterThan(steadiest.get().tyreLoadVariation() * (1 - 1e-6));
                    });
                    // Comfort asks for less damping than grip: the trade that the question is about.
                    assertThat(softest.get().dampingRate())
                            .isLessThan(steadiest.get().dampingRate());
                }
            }
        }
        assertThat(inside).isGreaterThan(CARS);
    }

    @Test
    void theDamperThatIsThereIsTheOnlyChoiceWhereNoSettingHasAName() {
        for (long seed = 0; seed < CARS; seed++) {
            Car car = RoadCars.damped(seed).settled();
            Ride ride = ride(car);
            for (End end : End.values()) {
                AxleRide axle = ride.axle(end);
                DamperChoice choice = DamperChoice.of(car, axle, RoadClass.C, SPEED);
                assertThat(choice.settings()).as("car %d", seed).hasSize(1);
                DamperChoice.Fitted only = choice.now().orElseThrow();
                assertThat(only.name()).isEmpty();
                assertThat(choice.forComfort()).contains(only);
                assertThat(choice.forGrip()).contains(only);
                assertThat(choice.firmer()).isEmpty();
                assertThat(choice.lessFirm()).isEmpty();
                assertThat(only.bodyRatio()).isCloseTo(axle.dampingRatio().orElseThrow(), within(1e-12));
                assertThat(only.bySpeed().mean()).isCloseTo(only.bodyRatio(), within(1e-12));
                assertThat(only.bodyRatio())
                        .isBetween(
                                Math.min(only.bySpeed().bump(), only.bySpeed().rebound()),
                                Math.max(only.bySpeed().bump(), only.bySpeed().rebound()));
            }
        }
    }

    private static Damper.Setting setting(String name, double force) {
        Curve curve =
                new Curve(List.of(new Curve.Point(0, 0), new Curve.Point(0.1, force), new Curve.Point(0.6, 3 * force)));
        return new Damper.Setting(name, new Damper.Forces(curve, curve));
    }

    /** Settings as the file has them, not by their force: 150, 50, 300 and 100 N at 0.1 m/s. */
    private static DamperChoice settings(String set) {
        List<Damper.Setting> settings =
                List.of(setting("third", 150), setting("first", 50), setting("last", 300), setting("second", 100));
        Damper damper = new Damper(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(0.8),
                settings.stream()
                        .filter(one -> one.name().equals(set))
                        .map(Damper.Setting::forces)
                        .findFirst(),
                settings,
                Optional.of(set));
        Car plain = LiveAxleByHandTest.car();
        Car car = LiveAxleByHandTest.withRear(
                plain,
                new Spring.Upright(25e3, 1.0, 1, Spring.Lengths.UNKNOWN),
                plain.rear().bar(),
                Optional.of(damper));
        return DamperChoice.of(car, ride(car).rear(), RoadClass.C, SPEED);
    }

    private static Optional<String> name(Optional<DamperChoice.Fitted> one) {
        return one.flatMap(DamperChoice.Fitted::name);
    }

    @Test
    void theNextSettingsAreTheNeighboursByTheirForce() {
        assertThat(settings("second").settings().stream().map(one -> one.name().orElseThrow()))
                .containsExactly("first", "second", "third", "last");
        assertThat(name(settings("second").now())).contains("second");
        assertThat(name(settings("second").lessFirm())).contains("first");
        assertThat(name(settings("second").firmer())).contains("third");
        assertThat(settings("first").lessFirm()).isEmpty();
        assertThat(name(settings("first").firmer())).contains("second");
        assertThat(name(settings("last").lessFirm())).contains("third");
        assertThat(settings("last").firmer()).isEmpty();
    }

    @Test
    void aSweepGoesFromATwentiethOfCriticalDampingToSixFifthsByEqualRatios() {
        AxleRide axle = ride(RoadCars.damped(2).settled()).front();
        // Critical is 2·√(k·m) of the sprung mass alone on its wheel rate.
        double critical = 2 * Math.sqrt(axle.rates().heave() * axle.undamped().sprungMass());
        List<DampingSweep.Point> points = DampingSweep.of(axle, RoadClass.C, SPEED, 4);
        assertThat(points.get(0).dampingRate()).isCloseTo(0.05 * critical, within(1e-9 * critical));
        assertThat(points.get(3).dampingRate()).isCloseTo(1.2 * critical, within(1e-9 * critical));
        double ratio = Math.cbrt(24); // three steps make 1.2/0.05
        for (int i = 1; i < 4; i++) {
            assertThat(points.get(i).dampingRate() / points.get(i - 1).dampingRate())
                    .isCloseTo(ratio, within(1e-9));
        }
    }

    @Test
    void dampersThatStandInboardDampRollByTheSquareOfTheirPlaceAndSpringsByTheirs() {
        // Springs 25 N/mm 1.0 m apart, dampers of 1000 N·s/m 0.8 m apart, at the track t: (1/t)²·25 N/mm and the bar,
        // and
        // (0.8/t)²·1000 N·s/m; the body's ratio is near c/(2·√(k·m)), which the tyre's give moves by a few per cent.
        Car plain = LiveAxleByHandTest.car();
        Car car = LiveAxleByHandTest.withRear(
                plain,
                new Spring.Upright(25e3, 1.0, 1, Spring.Lengths.UNKNOWN),
                Optional.of(new Bar.Measured(4000)),
                Optional.of(new Damper(
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.of(0.8),
                        Optional.of(setting("only", 100).forces()),
                        List.of(),
                        Optional.empty())));
        AxleRide axle = ride(car).rear();
        double t = car.rear().track();
        double mass = axle.undamped().sprungMass();
        double rate = 25e3 / (t * t) + 2 * 4000 / (t * t);
        double expected = 1000 * 0.64 / (t * t) / (2 * Math.sqrt(rate * mass));
        List<DampingAtSpeed> found = axle.dampingBySpeed(car);
        assertThat(found.get(1).damperSpeed()).isEqualTo(0.1);
        assertThat(found.get(1).rollMean()).isCloseTo(expected, within(0.15 * expected));
    }
}
