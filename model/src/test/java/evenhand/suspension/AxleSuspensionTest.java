package evenhand.suspension;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.Curve;
import evenhand.car.End;
import evenhand.car.RoadCars;
import evenhand.car.Side;
import evenhand.car.Spring;
import evenhand.car.Stops;
import evenhand.geometry.RollArm;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class AxleSuspensionTest {
    private static final double MM = 1e-3;

    private static Car independentRear() {
        return LongStream.range(0, 1000)
                .mapToObj(RoadCars::plain)
                .filter(car -> car.rear() instanceof Axle.Independent)
                .findFirst()
                .orElseThrow();
    }

    private static Car withRearStops(Car car, Stops stops) {
        Axle.Independent rear = (Axle.Independent) car.rear();
        return new Car(
                car.weights(),
                car.wheelbase(),
                car.cgHeight(),
                car.chassisTorsionalStiffness(),
                car.steering(),
                car.air(),
                car.rollingResistance(),
                car.front(),
                new Axle.Independent(
                        rear.track(),
                        rear.unsprung(),
                        rear.rollCentre(),
                        rear.spring(),
                        rear.bar(),
                        stops,
                        rear.damper(),
                        rear.lowered(),
                        rear.rollCamber(),
                        rear.alignment(),
                        rear.tyre(),
                        rear.rollInertia()),
                car.drive(),
                car.pitchInertia(),
                car.seat());
    }

    /** Points a millimetre apart, each piece steeper than the one before. */
    private static Curve manyPoints(int points) {
        List<Curve.Point> all = new ArrayList<>();
        for (int i = 0; i < points; i++) {
            all.add(new Curve.Point(i * MM, 0.5 * i * i));
        }
        return new Curve(all);
    }

    /** Digits that are too small for the curve let a corner pass unseen: two states had one number. */
    @Test
    void everyPairOfPiecesOfAFinelyMeasuredBumpStopHasItsOwnNumber() {
        int points = 40;
        Stops stops = new Stops(
                Optional.of(new Stops.Bump(5 * MM, manyPoints(points), OptionalDouble.empty())),
                Optional.of(new Stops.Droop(40 * MM, 1e6, OptionalDouble.empty())),
                Optional.empty());
        Car car = withRearStops(independentRear(), stops);
        AxleSuspension suspension = AxleSuspension.of(car, End.REAR);
        double track = car.rear().track();
        Map<Long, String> states = new HashMap<>();
        for (int onLeft = -1; onLeft < points; onLeft++) {
            for (int onRight = -1; onRight < points; onRight++) {
                double left = middleOf(onLeft);
                double right = middleOf(onRight);
                suspension.at((left + right) / 2, (right - left) / track, 0.1);
                assertThat(suspension.pieces).isBetween(0L, suspension.pieceCount() - 1);
                assertThat(states.put(suspension.pieces, onLeft + " and " + onRight))
                        .as("the state of pieces %d and %d", onLeft, onRight)
                        .isNull();
            }
        }
    }

    /** Travel in the middle of a piece of the bump stop; 0: clear of both stops; −1: on the droop stop. */
    private static double middleOf(int piece) {
        return piece < 0 ? -45 * MM : (5 + piece - 0.5) * MM;
    }

    @Test
    void rollingToTheRightLoadsTheRightSpringAndBringsItsStopsNearer() {
        Stops stops = new Stops(
                Optional.of(new Stops.Bump(30 * MM, manyPoints(3), OptionalDouble.empty())),
                Optional.of(new Stops.Droop(40 * MM, 1e6, OptionalDouble.empty())),
                Optional.of(new Stops.Metal(60 * MM, OptionalDouble.empty())));
        Car car = withRearStops(independentRear(), stops);
        AxleSuspension suspension = AxleSuspension.of(car, End.REAR);
        double lever = car.rear().track() / 2;
        double roll = 10 * MM / lever;
        assertThat(suspension.bumpDeflection(0, roll, Side.RIGHT)).isCloseTo(-20 * MM, within(1e-12));
        assertThat(suspension.bumpDeflection(0, roll, Side.LEFT)).isCloseTo(-40 * MM, within(1e-12));
        assertThat(suspension.droopExcess(0, roll, Side.RIGHT)).isCloseTo(-50 * MM, within(1e-12));
        assertThat(suspension.droopExcess(0, roll, Side.LEFT)).isCloseTo(-30 * MM, within(1e-12));
        assertThat(suspension.metalDeflection(0, roll, Side.RIGHT)).isCloseTo(-50 * MM, within(1e-12));
        assertThat(suspension.metalDeflection(0, roll, Side.LEFT)).isCloseTo(-70 * MM, within(1e-12));
        double more = suspension.heaveRate() * 10 * MM;
        assertThat(suspension.springLoad(0, roll, 0.1, Side.RIGHT) - suspension.springLoadAtRest(Side.RIGHT))
                .isCloseTo(more, within(1e-8));
        assertThat(suspension.springLoad(0, roll, 0.1, Side.LEFT) - suspension.springLoadAtRest(Side.LEFT))
                .isCloseTo(-more, within(1e-8));
        suspension.at(0, roll, 0.1);
        assertThat(suspension.moment).isCloseTo(2 * lever * more + car.rear().barRollStiffness() * roll, within(1e-7));
    }

    @Test
    void slopesAreTheCentralDifferences() {
        double step = 1e-7;
        int compared = 0;
        for (long seed = 0; seed < 400; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            AxleSuspension axle = AxleSuspension.of(RoadCars.any(seed).settled(), End.REAR);
            double[] place = {
                0.2 * (random.nextDouble() - 0.5), 0.12 * (random.nextDouble() - 0.5), 0.3 * random.nextDouble()
            };
            axle.at(place[0], place[1], place[2]);
            long pieces = axle.pieces;
            double[] forceBy = {axle.forceByTravel, axle.forceByRoll, axle.forceByRollCentre};
            double[] momentBy = {axle.momentByTravel, axle.momentByRoll, axle.momentByRollCentre};
            assertThat(Arrays.stream(forceBy).allMatch(Double::isFinite))
                    .as("seed %d", seed)
                    .isTrue();
            assertThat(Arrays.stream(momentBy).allMatch(Double::isFinite))
                    .as("seed %d", seed)
                    .isTrue();
            for (int i = 0; i < 3; i++) {
                double[] high = place.clone();
                double[] low = place.clone();
                high[i] += step;
                low[i] -= step;
                axle.at(high[0], high[1], high[2]);
                double force = axle.force;
                double moment = axle.moment;
                boolean same = axle.pieces == pieces;
                axle.at(low[0], low[1], low[2]);
                if (same && axle.pieces == pieces) {
                    compared++;
                    assertThat((force - axle.force) / (2 * step))
                            .as("force, seed %d, %d", seed, i)
                            .isCloseTo(forceBy[i], within(0.05 + 1e-6 * Math.abs(forceBy[i])));
                    assertThat((moment - axle.moment) / (2 * step))
                            .as("moment, seed %d, %d", seed, i)
                            .isCloseTo(momentBy[i], within(0.05 + 1e-6 * Math.abs(momentBy[i])));
                }
            }
        }
        assertThat(compared).isGreaterThan(1100);
    }

    @Test
    void ratesAndArmsAreThoseWorkedOutOnPaper() {
        assertThat(SpringRates.wheelRate(40_000, 0.5)).isCloseTo(10_000, within(1e-9));
        double lean = Math.toRadians(30);
        // 1500 N along the spring, a quarter of it (sin² 30°) over 0.3 m
        assertThat(SpringRates.rateLostByTurning(1500 * Math.cos(lean), lean, 0.3))
                .isCloseTo(1250, within(1e-9));
        assertThat(SpringRates.axleRollStiffness(0.5, 60_000, 5000)).isCloseTo(20_000, within(1e-9));
        assertThat(SpringRates.elasticMoment(0.5, 400, 10_000, 0.03)).isCloseTo(500, within(1e-9));
        RollArm arm = RollArm.leaning(0.5, 0.2, Math.atan(0.25));
        assertThat(arm.at(0.2)).isCloseTo(0.5, within(1e-15));
        assertThat(arm.at(0.4)).isCloseTo(0.45, within(1e-15)); // it leans inwards going up
    }

    @Test
    void aLeaningSpringIsSofterInHeaveThanInRoll() {
        int seen = 0;
        for (long seed = 0; seed < 300; seed++) {
            Axle axle = RoadCars.any(seed).settled().rear();
            if (axle.spring() instanceof Spring.Leaning leaning) {
                boolean known = leaning.lengths().installed().isPresent();
                double heave =
                        SpringRates.heaveRate(leaning.rate(), axle.geometry().springs(), 2500);
                assertThat(heave < SpringRates.wheelRate(leaning.rate(), Math.cos(leaning.lean())))
                        .isEqualTo(known);
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(20);
    }
}
