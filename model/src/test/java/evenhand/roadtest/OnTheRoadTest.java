package evenhand.roadtest;

import static evenhand.roadtest.RoadTestCars.EXACT;
import static evenhand.roadtest.RoadTestCars.G;
import static evenhand.roadtest.RoadTestCars.degrees;
import static evenhand.roadtest.RoadTestCars.pace;
import static evenhand.roadtest.RoadTestCars.read;
import static evenhand.roadtest.RoadTestCars.test;
import static evenhand.roadtest.RoadTestCars.toRead;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Car;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.turn.Direction;
import evenhand.turn.PaceAnswer;
import evenhand.turn.PacesAnswer;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnRow;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class OnTheRoadTest {
    private static final Entries CAR = RoadTestCars.car();

    private static OnTheRoad road(RoadTest... tests) {
        return new OnTheRoad(List.of(tests), unknowns(tests));
    }

    private static Unknowns unknowns(RoadTest... tests) {
        return new Unknowns(List.of(CAR), List.of(tests), EXACT);
    }

    private static double[] some(int count, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] z = new double[count];
        Arrays.setAll(z, k -> 0.7 * random.nextGaussian());
        return z;
    }

    private static TurnRow row(Car car, double pace, double radius, Direction turn) {
        PacesAnswer.Paces found = (PacesAnswer.Paces) SteadyTurn.atPaces(car, List.of(pace), radius, turn);
        return ((PaceAnswer.InBalance) found.paces().get(0)).row();
    }

    /** Into the turn and outwards are positive both ways; the mark's place adds to a left turn and takes away from a right one. */
    @Test
    void readingsHaveTheSignsOfTheShop() {
        List<Observation> asked = new ArrayList<>(toRead(0.3));
        for (Direction turn : Direction.values()) {
            asked.add(new Observation.Reading(turn, pace(0.3), Channel.SIDESLIP, degrees(0, 0.5)));
        }
        RoadTest test = test("t", CAR, asked);
        Unknowns unknowns = unknowns(test);
        double[] z = new double[unknowns.count()];
        z[unknowns.place(0, Unknowns.OfTest.STRAIGHT_AHEAD).orElseThrow()] = 2; // 3 deg to the left
        z[unknowns.place(0, Unknowns.OfTest.RADIUS).orElseThrow()] = 2; // 30.3 m
        List<Predicted> shown = road(test).predicted(z).orElseThrow();
        Car car = Catalogue.build(CAR).value().orElseThrow().settled();
        TurnRow left = row(car, 0.3 * G, 30.3, Direction.LEFT);
        TurnRow right = row(car, 0.3 * G, 30.3, Direction.RIGHT);
        double mark = Math.toRadians(3);
        assertThat(shown.get(0).expected()).isCloseTo(17 * left.steer() + mark, within(1e-9));
        assertThat(shown.get(1).expected()).isCloseTo(left.roll(), within(1e-9));
        assertThat(shown.get(2).expected()).isCloseTo(-17 * right.steer() - mark, within(1e-9));
        assertThat(shown.get(3).expected()).isCloseTo(-right.roll(), within(1e-9));
        assertThat(shown.get(4).expected()).isCloseTo(left.sideslip(), within(1e-9));
        assertThat(shown.get(5).expected()).isCloseTo(-right.sideslip(), within(1e-9));
        assertThat(shown.get(1).expected()).isPositive();
        assertThat(shown.get(3).expected()).isPositive();
        assertThat(shown.get(0).expected()).isGreaterThan(shown.get(2).expected() + 1.9 * mark);
    }

    /** The error of the pace comes through the slope over lateral acceleration. */
    @Test
    void aReadingsErrorIsThatOfInstrumentAndPace() {
        RoadTest test = test("t", CAR, toRead(0.3));
        List<Predicted> shown =
                road(test).predicted(new double[unknowns(test).count()]).orElseThrow();
        Car car = Catalogue.build(CAR).value().orElseThrow().settled();
        double step = 0.02;
        double steer = 17
                * (row(car, 0.3 * G + step, 30, Direction.LEFT).steer()
                        - row(car, 0.3 * G - step, 30, Direction.LEFT).steer())
                / (2 * step);
        double roll = (row(car, 0.3 * G + step, 30, Direction.LEFT).roll()
                        - row(car, 0.3 * G - step, 30, Direction.LEFT).roll())
                / (2 * step);
        double pace = 0.01 * G;
        assertThat(shown.get(0).sigma()).isCloseTo(Math.hypot(Math.toRadians(1), steer * pace), within(1e-6));
        assertThat(shown.get(1).sigma()).isCloseTo(Math.hypot(Math.toRadians(0.15), roll * pace), within(1e-7));
    }

    @Test
    void aPaceIsThatOfLapsOrSpeedOnTheCircle() {
        Pace laps = new Pace.Laps(3, new Measured(71.5, 0.5));
        double speed = 2 * Math.PI * 30 * 3 / 71.5;
        assertThat(laps.acceleration(30)).isCloseTo(speed * speed / 30, within(1e-12));
        assertThat(laps.acceleration(33) / laps.acceleration(30)).isCloseTo(1.1, within(1e-12));
        assertThat(laps.spread(30)).isCloseTo(laps.acceleration(30) * 2 * 0.25 / 71.5, within(1e-12));
        Pace held = new Pace.Speed(new Measured(10, 0.4));
        assertThat(held.acceleration(25)).isCloseTo(4, within(1e-12));
        assertThat(held.spread(25)).isCloseTo(4 * 2 * 0.2 / 10, within(1e-12));
    }

    /** An accelerometer on the body feels more than there is. */
    @Test
    void whatAnAccelerometerFeelsIsThePaceOfTheCarThatLeansSo() {
        double felt = 0.4 * G;
        RoadTest test = test(
                "t",
                CAR,
                List.of(new Observation.Reading(
                        Direction.RIGHT,
                        new Pace.Accelerometer(new Measured(felt, 0.02 * G)),
                        Channel.ROLL,
                        degrees(2, 0.3))));
        Predicted shown = road(test)
                .predicted(new double[unknowns(test).count()])
                .orElseThrow()
                .get(0);
        double pace = shown.lateralAcceleration();
        TurnRow row = row(Catalogue.build(CAR).value().orElseThrow().settled(), pace, 30, Direction.RIGHT);
        double roll = shown.expected();
        assertThat(roll).isCloseTo(Math.abs(row.roll()), within(1e-9));
        assertThat(pace * Math.cos(row.sideslip()) * Math.cos(roll) + G * Math.sin(roll))
                .isCloseTo(felt, within(1e-6));
        assertThat(pace).isLessThan(0.97 * felt);
    }

    @Test
    void gripMovesTheLimitAndHardlyAGentleTurn() {
        List<Observation> asked = new ArrayList<>(toRead(0.1));
        asked.add(new Observation.Limit(Direction.LEFT, pace(0.7), 0.03 * G, Optional.empty()));
        RoadTest test = test("t", CAR, asked);
        Unknowns unknowns = unknowns(test);
        OnTheRoad road = road(test);
        double[] z = new double[unknowns.count()];
        List<Predicted> dry = road.predicted(z).orElseThrow();
        z[unknowns.place(0, Unknowns.OfTest.GRIP).orElseThrow()] = -2; // 0.9
        List<Predicted> damp = road.predicted(z).orElseThrow();
        assertThat(damp.get(4).expected() / dry.get(4).expected()).isBetween(0.88, 0.93);
        assertThat(damp.get(0).expected() / dry.get(0).expected()).isBetween(0.99, 1.01);
        assertThat(dry.get(4).miss()).isCloseTo(0.7 * G - dry.get(4).expected(), within(1e-12));
    }

    /** Slopes from cars nearby are those of whole turns, by central differences. */
    @Test
    void slopesAreThoseOfWholeTurns() {
        List<Observation> asked = new ArrayList<>(toRead(0.2, 0.5));
        RoadTest test = test("t", CAR, asked);
        OnTheRoad road = road(test);
        double[] z = some(road.unknowns(), 4);
        double[][] slopes = road.slopes(z, road.at(z).orElseThrow());
        double step = 1e-3;
        for (int k = 0; k < z.length; k++) {
            double[] up = z.clone();
            double[] down = z.clone();
            up[k] += step;
            down[k] -= step;
            double[] above = road.at(up).orElseThrow().misses();
            double[] below = road.at(down).orElseThrow().misses();
            for (int i = 0; i < slopes.length; i++) {
                double central = -(above[i] - below[i]) / (2 * step);
                assertThat(slopes[i][k]).isCloseTo(central, within(2e-3 * Math.abs(central) + 1e-8));
            }
        }
    }

    /** Readings of a car that is off, without any error, are met by a car that is less off and as near as it must be. */
    @Test
    void theCorrectionIsWhereThePageSaysAndGoesTowardsTheTruth() {
        RoadTest empty = test("t", CAR, toRead(0.1, 0.3, 0.5));
        Unknowns unknowns = unknowns(empty);
        double[] truth = some(unknowns.count(), 9);
        RoadTest test = read(empty, unknowns, 0, truth, new double[12]);
        OnTheRoad road = road(test);
        Correction found = Correction.of(road).orElseThrow();
        Misses.At here = road.at(found.moved()).orElseThrow();
        assertThat(found.converged()).isTrue();
        for (int k = 0; k < truth.length; k++) {
            double sum = 0;
            for (int i = 0; i < 12; i++) {
                sum += found.slopes()[i][k] * here.misses()[i] / here.sigmas()[i];
            }
            assertThat(found.moved()[k]).isCloseTo(sum, within(1e-5));
        }
        double off = Correction.sum(
                new double[truth.length], road.at(new double[truth.length]).orElseThrow(), here.sigmas());
        assertThat(found.chiSquare()).isLessThan(0.8 * off);
    }

    @Test
    void theOrderOfReadingsAndTestsDoesNotMatter() {
        RoadTest one = test("one", CAR, toRead(0.15, 0.4));
        RoadTest two = test("two", CAR, toRead(0.3));
        Unknowns unknowns = unknowns(one, two);
        double[] truth = some(unknowns.count(), 12);
        double[] errors = some(12, 13);
        one = read(one, unknowns, 0, truth, errors);
        two = read(two, unknowns, 1, truth, errors);
        List<Observation> turned = new ArrayList<>(one.observations());
        Collections.reverse(turned);
        Correction first = Correction.of(road(one, two)).orElseThrow();
        Correction second = Correction.of(road(two, one.with(turned))).orElseThrow();
        for (int k = 0; k < unknowns.numbers().size(); k++) {
            assertThat(second.moved()[k]).isCloseTo(first.moved()[k], within(1e-5));
            assertThat(second.covariance()[k][k]).isCloseTo(first.covariance()[k][k], within(1e-5));
        }
        assertThat(second.chiSquare()).isCloseTo(first.chiSquare(), within(1e-5));
        int grip = unknowns.place(0, Unknowns.OfTest.GRIP).orElseThrow();
        int gripTurned = unknowns(two, one).place(1, Unknowns.OfTest.GRIP).orElseThrow();
        assertThat(second.moved()[gripTurned]).isCloseTo(first.moved()[grip], within(1e-5));
    }

    /** What cannot be had at the pace of a reading stands at its limit, and says so. */
    @Test
    void aReadingBeyondTheLimitCountsWithTheLimitsState() {
        RoadTest test = test(
                "t", CAR, List.of(new Observation.Reading(Direction.LEFT, pace(1.2), Channel.ROLL, degrees(5, 0.3))));
        Predicted shown = road(test)
                .predicted(new double[unknowns(test).count()])
                .orElseThrow()
                .get(0);
        PacesAnswer.Paces found = (PacesAnswer.Paces)
                SteadyTurn.atPaces(Catalogue.build(CAR).value().orElseThrow().settled(), List.of(), 30, Direction.LEFT);
        assertThat(shown.beyondLimit()).isTrue();
        assertThat(shown.expected()).isCloseTo(found.limit().row().roll(), within(1e-9));
    }
}
