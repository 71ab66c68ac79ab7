package evenhand.bump;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.End;
import evenhand.road.Piece;
import evenhand.road.Profile;
import evenhand.road.RandomRoad;
import evenhand.suspension.DamperLines;
import evenhand.suspension.ForceLines;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Optional;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/** The quarter car in time, against other routes to the same numbers. */
class CrossingTest {
    private static final double SPEED = 50 / 3.6;
    private static final double TIGHT = 1e-13;
    private static final double ROW = 1e-3;

    private static final List<Profile> EVENTS = List.of(
            Profile.step(0.02),
            Profile.step(-0.08),
            Profile.ramp(0.05, 1),
            Profile.kerb(0.06, 0.29),
            Profile.hump(0.08, 3.7),
            Profile.hump(-0.06, 2),
            Profile.pothole(0.05, 0.6, 0.29),
            Profile.ripples(0.01, 1.2, 8),
            RandomRoad.of(256e-6, 2, 30));

    private static Crossing driven(WheelStation station, Profile road, double tolerance) {
        Crossing crossing = new Crossing(station, tolerance, ROW);
        assertThat(crossing.drive(road, SPEED)).isTrue();
        return crossing;
    }

    private static double damping(DamperLines damper, double travel, double speed) {
        return damper.force(damper.pieceAt(damper.over(travel, speed)), travel, speed);
    }

    /** State and forcing matrix of the linear car: body, its speed, wheel, its speed; road, its rate, 1. */
    private static RealMatrix linearCar(WheelStation station, QuarterCarStep step) {
        double k = station.suspension().slope(step.springPiece);
        double c = station.damper().forceRate(step.damperPiece, 0, 0, 1);
        double tyre = station.tyreRate();
        double ms = station.bodyMass();
        double mu = station.wheelMass();
        return MatrixUtils.createRealMatrix(new double[][] {
            {0, 1, 0, 0, 0, 0},
            {-k / ms, -c / ms, k / ms, c / ms, 0, 0},
            {0, 0, 0, 1, 0, 0},
            {k / mu, c / mu, -(k + tyre) / mu, -c / mu, tyre / mu, 0},
            {0, 0, 0, 0, 0, 1},
            {0, 0, 0, 0, 0, 0}
        });
    }

    @Test
    void inTheLinearRangeItMeetsTheMatrixExponential() {
        int compared = 0;
        for (long seed = 0; seed < 200; seed++) {
            WheelStation station = Stations.random(seed, seed % 2 == 0 ? End.FRONT : End.REAR);
            double slope = 5e-4;
            double end = 0.01; // the wheel still closes on the body, no stop, no lift, the damper on its first slope
            Crossing crossing = new Crossing(station, TIGHT, ROW);
            Profile slight = new Profile(List.of(new Piece.Line(0, SPEED * end, 0, slope)), 0);
            assertThat(crossing.overEvent(slight, SPEED)).isTrue();
            QuarterCarStep step = crossing.step;
            RealMatrix matrix = linearCar(station, step);
            double[] state = MatrixUtils.matrixExponential(matrix.scalarMultiply(end))
                    .operate(new double[] {0, 0, 0, 0, 0, slope * SPEED});
            if (step.damperPiece == station.damper().pieceAt(1e-9) && step.travelRate() > 0) {
                compared++;
                assertThat(step.body).as("seed %d", seed).isCloseTo(state[0], within(1e-8 * state[4]));
                assertThat(step.wheel).as("seed %d", seed).isCloseTo(state[2], within(1e-8 * state[4]));
                assertThat(step.wheelSpeed).isCloseTo(state[3], within(1e-8 * state[5]));
            }
        }
        assertThat(compared).isGreaterThan(150);
    }

    @Test
    void theStepIsOfOrderFive() {
        WheelStation station = Stations.random(1, End.FRONT);
        Piece wave = new Piece.Sine(0, 10, 0, 1e-4, 0, 1.5);
        double[] exact = afterSteps(station, wave, 4000);
        double coarse = farthest(afterSteps(station, wave, 60), exact);
        double fine = farthest(afterSteps(station, wave, 120), exact);
        double finer = farthest(afterSteps(station, wave, 240), exact);
        assertThat(Math.log(coarse / fine) / Math.log(2)).isBetween(4.7, 5.4);
        assertThat(Math.log(fine / finer) / Math.log(2)).isBetween(4.7, 5.4);
    }

    /** Places of body and wheel at twenty times of a quarter of a second, the steps being even. */
    private static double[] afterSteps(WheelStation station, Piece road, int steps) {
        QuarterCarStep step = new QuarterCarStep(station, TIGHT);
        step.enter(road, SPEED, 0);
        double length = 0.25 / steps;
        double[] places = new double[40];
        for (int i = 1; i <= steps; i++) {
            step.attempt(length);
            step.keep(i * length);
            if (i % (steps / 20) == 0) {
                int time = i / (steps / 20) - 1;
                places[2 * time] = step.body;
                places[2 * time + 1] = step.wheel;
            }
        }
        return places;
    }

    private static double farthest(double[] places, double[] exact) {
        double farthest = 0;
        for (int i = 0; i < places.length; i++) {
            farthest = Math.max(farthest, Math.abs(places[i] - exact[i]));
        }
        return farthest;
    }

    @Test
    void theLibrarysIntegratorFindsTheSameMotion() {
        for (long seed = 0; seed < 24; seed++) {
            meetsTheLibrary(Stations.random(seed, seed % 2 == 0 ? End.FRONT : End.REAR), seed);
        }
    }

    @Test
    void onLinksWhoseLeverageChangesToo() {
        int met = 0;
        for (long seed = 0; seed < 16; seed++) {
            Optional<WheelStation> station = Stations.onLinks(seed, seed % 2 == 0 ? End.FRONT : End.REAR);
            if (station.isPresent()) {
                meetsTheLibrary(station.get(), seed);
                met++;
            }
        }
        assertThat(met).isGreaterThan(8);
    }

    private static void meetsTheLibrary(WheelStation station, long seed) {
        Profile road = EVENTS.get((int) (2 + seed % 6)); // no jumps, few stretches
        Crossing crossing = new Crossing(station, 1e-11, ROW);
        assertThat(crossing.overEvent(road, SPEED)).isTrue();
        double[] library = byLibrary(station, road, crossing.step.time);
        QuarterCarStep step = crossing.step;
        double scale = 0.02;
        assertThat(step.body).as("seed %d", seed).isCloseTo(library[0], within(1e-6 * scale));
        assertThat(step.wheel).as("seed %d", seed).isCloseTo(library[2], within(1e-6 * scale));
        assertThat(step.bodySpeed).as("seed %d", seed).isCloseTo(library[1], within(1e-5 * scale * 10));
    }

    /** The whole law at every evaluation, corners and all, by very small steps of another method. */
    private static double[] byLibrary(WheelStation station, Profile road, double end) {
        OrdinaryDifferentialEquation car = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 4;
            }

            @Override
            public double[] computeDerivatives(double t, double[] y) {
                double rest = station.suspension().force(station.travel());
                double push = station.suspension().force(station.travel() + y[2] - y[0])
                        + damping(station.damper(), station.travel() + y[2] - y[0], y[3] - y[1])
                        - rest;
                double tyre = Math.max(0, station.tyreHeld() + station.tyreRate() * (road.height(SPEED * t) - y[2]));
                return new double[] {
                    y[1], push / station.bodyMass(), y[3], (tyre - station.tyreHeld() - push) / station.wheelMass()
                };
            }
        };
        ODEStateAndDerivative found = new DormandPrince853Integrator(1e-9, 5e-5, 1e-12, 1e-12)
                .integrate(car, new ODEState(0, new double[4]), end);
        return found.getPrimaryState();
    }

    @Test
    void whatTheRoadDoesIsDampedOrLeft() {
        int lifted = 0;
        for (long seed = 0; seed < 300; seed++) {
            WheelStation station = Stations.random(seed, seed % 2 == 0 ? End.FRONT : End.REAR);
            Profile road = EVENTS.get((int) (seed % EVENTS.size()));
            Crossing crossing = driven(station, road, DriveOver.USUAL_TOLERANCE);
            QuarterCarStep step = crossing.step;
            lifted += crossing.witness.offGround > 0 ? 1 : 0;
            double scale = step.damped + Math.abs(step.roadWork);
            assertThat(scale).as("seed %d", seed).isBetween(0.01, 1e5);
            assertThat(step.roadWork - step.damped).as("seed %d", seed).isCloseTo(step.energy(), within(1e-6 * scale));
        }
        assertThat(lifted).as("wheels that left the ground").isGreaterThan(100);
    }

    @Test
    void answersAreSureToAMillionthLandingsIncluded() {
        for (long seed = 0; seed < 150; seed++) {
            WheelStation station = Stations.random(seed, seed % 2 == 0 ? End.FRONT : End.REAR);
            Profile road = EVENTS.get((int) (seed % EVENTS.size()));
            Witness usual = driven(station, road, DriveOver.USUAL_TOLERANCE).witness;
            Witness tight = driven(station, road, TIGHT).witness;
            assertThat(usual.peakBodyPull)
                    .as("seed %d", seed)
                    .isCloseTo(tight.peakBodyPull, within(2e-6 * tight.peakBodyPull));
            assertThat(usual.mostTravel).isCloseTo(tight.mostTravel, within(1e-7));
            assertThat(usual.leastTravel).isCloseTo(tight.leastTravel, within(1e-7));
            assertThat(usual.offGround).as("seed %d", seed).isCloseTo(tight.offGround, within(1e-6));
            assertThat(usual.gripLost().orElseThrow())
                    .as("seed %d", seed)
                    .isCloseTo(tight.gripLost().orElseThrow(), within(1e-5));
        }
    }

    @Test
    void noAnswerDependsOnTheRowsThatAreRecorded() {
        WheelStation station = Stations.random(8, End.FRONT);
        for (Profile road : EVENTS) {
            Bump fine = DriveOver.over(station, road, SPEED, 1e-9, 1e-4).orElseThrow();
            Bump coarse = DriveOver.over(station, road, SPEED, 1e-9, 0.013).orElseThrow();
            assertThat(fine.peakBodyAcceleration()).isEqualTo(coarse.peakBodyAcceleration());
            assertThat(fine.leastTyreLoad()).isEqualTo(coarse.leastTyreLoad());
            assertThat(fine.gripLost()).isEqualTo(coarse.gripLost());
            assertThat(fine.timeOffGround()).isEqualTo(coarse.timeOffGround());
            double highest = fine.series().bodyAcceleration().stream()
                    .mapToDouble(Math::abs)
                    .max()
                    .orElseThrow();
            assertThat(highest).isLessThanOrEqualTo(fine.peakBodyAcceleration() * (1 + 1e-9));
            assertThat(highest).isGreaterThan(0.97 * fine.peakBodyAcceleration());
            double mostTravel = fine.series().travel().stream()
                    .mapToDouble(Double::doubleValue)
                    .max()
                    .orElseThrow();
            assertThat(Math.max(0, mostTravel)).isCloseTo(fine.peakBumpTravel(), within(1e-5));
            double inAir =
                    fine.series().tyreLoad().stream().filter(load -> load == 0).count()
                            * fine.series().time().get(1);
            assertThat(inAir).isCloseTo(fine.timeOffGround(), within(2e-3));
        }
    }

    @Test
    void aLongRecordIsThinnedToEvenRows() {
        WheelStation station = Stations.random(8, End.FRONT);
        Series series = DriveOver.over(station, RandomRoad.of(16e-6, 1, 400), 8, 1e-8, ROW)
                .orElseThrow()
                .series();
        assertThat(series.time()).hasSizeBetween(Series.MOST / 2, Series.MOST);
        double step = series.time().get(1);
        assertThat(step).isIn(0.008, 0.016);
        for (int i = 0; i < series.time().size(); i++) {
            assertThat(series.time().get(i)).isCloseTo(i * step, within(1e-9));
        }
    }

    @Test
    void aCarOnALevelRoadStandsStill() {
        for (long seed = 0; seed < 50; seed++) {
            WheelStation station = Stations.random(seed, End.REAR);
            Crossing crossing = new Crossing(station, 1e-9, ROW);
            assertThat(crossing.overEvent(new Profile(List.of(new Piece.Line(0, 20, 0, 0)), 0), SPEED))
                    .isTrue();
            assertThat(crossing.witness.peakBodyPull).isLessThan(1e-9);
            assertThat(crossing.step.body).isCloseTo(0, within(1e-12));
        }
    }

    @Test
    void withoutADamperItNeverComesToRestAndLosesNothing() {
        WheelStation damped = Stations.random(4, End.FRONT);
        WheelStation station = new WheelStation(
                damped.bodyMass(),
                damped.wheelMass(),
                damped.suspension(),
                DamperLines.atWheel(ForceLines.none()),
                damped.tyreRate(),
                damped.tyreHeld(),
                damped.travel(),
                0,
                damped.touches(),
                damped.metal(),
                damped.droopEnd(),
                damped.grip());
        Crossing crossing = driven(station, Profile.hump(0.01, 3), 1e-11);
        assertThat(crossing.settled()).isFalse();
        assertThat(crossing.step.time).isBetween(10.0, 11.0);
        assertThat(crossing.step.damped).isZero();
        assertThat(crossing.step.roadWork).isBetween(0.01, 1e5);
        assertThat(crossing.step.energy())
                .isCloseTo(crossing.step.roadWork, within(1e-6 * Math.abs(crossing.step.roadWork)));
    }

    /** Energy goes with the square of the size: a hundredth of the size is a ten-thousandth of it. */
    @Test
    void itIsAtRestWhereAHundredthOfTheMotionIsLeft() {
        for (double energy : new double[] {0.2, 5, 300}) {
            assertThat(Crossing.atRest(0.99e-4 * energy, energy)).isTrue();
            assertThat(Crossing.atRest(1.01e-4 * energy, energy)).isFalse();
        }
        assertThat(Crossing.atRest(1e-10, 0)).isTrue();
        assertThat(Crossing.atRest(1e-8, 0)).isFalse();
    }

    @Test
    void aSettledCarIsBackAtItsTravelOnTheNewHeight() {
        WheelStation station = Stations.random(12, End.FRONT);
        Crossing crossing = driven(station, Profile.ramp(0.05, 1), 1e-9);
        assertThat(crossing.settled()).isTrue();
        assertThat(crossing.step.body).isCloseTo(0.05, within(2e-3));
        assertThat(crossing.step.wheel).isCloseTo(0.05, within(2e-3));
    }

    @Test
    void nothingButRowsIsAllocatedOnTheWay() {
        com.sun.management.ThreadMXBean threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        Profile road = RandomRoad.of(1024e-6, 1, 60);
        WheelStation station = Stations.random(3, End.FRONT);
        long least = Long.MAX_VALUE;
        for (int i = 0; i < 60; i++) {
            Crossing crossing = new Crossing(station, 1e-8, 0.01); // few rows: they are the only ones that need room
            long before = threads.getCurrentThreadAllocatedBytes();
            crossing.overEvent(road, SPEED);
            least = Math.min(least, threads.getCurrentThreadAllocatedBytes() - before);
        }
        assertThat(least).isZero();
    }
}
