package evenhand.suspension;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Axle;
import evenhand.car.Bar;
import evenhand.car.Car;
import evenhand.car.Curve;
import evenhand.car.End;
import evenhand.car.LateralLocator;
import evenhand.car.RoadCars;
import evenhand.car.Side;
import evenhand.car.Spring;
import evenhand.car.Stops;
import evenhand.car.Unsprung;
import evenhand.car.Weights;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A live axle that stands unevenly on springs and stops, with everything at a place of its own: numbers by hand. */
class AxleSuspensionByHandTest {
    private static final double RATE = 30e3;
    private static final double BASE = 1.0;
    private static final double BAR = 9_000; // N·m/rad
    private static final double G = Weights.GRAVITY;
    private static final Spring UPRIGHT = new Spring.Upright(RATE, BASE, 1, Spring.Lengths.UNKNOWN);

    /** 260 kg on its left and 240 kg on its right tyre, 100 kg of it the axle's own: 210 and 190 kg on the springs. */
    private static AxleSuspension suspension(Spring spring, Stops stops) {
        return AxleSuspension.of(car(spring, stops), End.REAR);
    }

    private static Car car(Spring spring, Stops stops) {
        Car any = RoadCars.plain(1);
        return new Car(
                new Weights.Corners(280, 270, 260, 240),
                any.wheelbase(),
                any.cgHeight(),
                any.chassisTorsionalStiffness(),
                any.steering(),
                any.air(),
                any.rollingResistance(),
                any.front(),
                new Axle.Live(
                        1.30,
                        new Unsprung(100, 0.3),
                        new LateralLocator.WattsLinkage(0.25, LateralLocator.CarriedBy.BODY),
                        spring,
                        Optional.of(new Bar.Measured(BAR)),
                        stops,
                        Optional.empty(),
                        0,
                        any.rear().alignment(),
                        any.rear().tyre(),
                        OptionalDouble.empty()),
                any.drive(),
                any.pitchInertia(),
                any.seat());
    }

    /** 40 N/mm for the first 10 mm, then 100 N/mm; its stops 0.8 m apart. */
    private static Stops.Bump bump(double gap) {
        return new Stops.Bump(
                gap,
                new Curve(List.of(new Curve.Point(0, 0), new Curve.Point(0.01, 400), new Curve.Point(0.02, 1400))),
                OptionalDouble.of(0.8));
    }

    /** 50 N/mm, 0.6 m apart. */
    private static Stops.Droop droop(double travel) {
        return new Stops.Droop(travel, 50e3, OptionalDouble.of(0.6));
    }

    private static Stops.Metal metal(double gap) {
        return new Stops.Metal(gap, OptionalDouble.of(0.7));
    }

    private static Stops stops(double bumpGap, double droopTravel, double metalGap) {
        return new Stops(Optional.of(bump(bumpGap)), Optional.of(droop(droopTravel)), Optional.of(metal(metalGap)));
    }

    private static final Stops FAR = stops(0.05, 0.06, 0.08);

    @Test
    void springsCarryWhatStandsOnThemLessWhatBumpStopsPushAndMoreByWhatDroopStopsPull() {
        AxleSuspension free = suspension(UPRIGHT, FAR);
        assertThat(free.springLoadAtRest(Side.LEFT)).isCloseTo(210 * G, within(1e-9));
        assertThat(free.springLoadAtRest(Side.RIGHT)).isCloseTo(190 * G, within(1e-9));
        // 5 mm into a rubber of 40 N/mm: 200 N each; 4 mm beyond the end of droop at 50 N/mm: 200 N down.
        AxleSuspension onStop = suspension(UPRIGHT, stops(-0.005, 0.06, 0.08));
        assertThat(onStop.springLoadAtRest(Side.LEFT)).isCloseTo(210 * G - 200, within(1e-9));
        assertThat(onStop.springLoadAtRest(Side.RIGHT)).isCloseTo(190 * G - 200, within(1e-9));
        assertThat(onStop.stopLoadAtRest()).isCloseTo(200, within(1e-9));
        AxleSuspension hanging = suspension(UPRIGHT, stops(0.05, -0.004, 0.08));
        assertThat(hanging.springLoadAtRest(Side.LEFT)).isCloseTo(210 * G + 200, within(1e-9));
        assertThat(hanging.springLoadAtRest(Side.RIGHT)).isCloseTo(190 * G + 200, within(1e-9));
        for (AxleSuspension one : List.of(free, onStop, hanging)) {
            one.at(0, 0, 0.25);
            assertThat(one.force).isCloseTo(400 * G, within(1e-8));
            assertThat(one.moment).isCloseTo(0, within(1e-8)); // counted from rest
        }
    }

    @Test
    void aSpringThatLeansLosesRateInHeaveByTheMeanLoadOfBothSides() {
        double lean = Math.toRadians(20);
        Spring leaning = new Spring.Leaning(
                RATE,
                BASE,
                lean,
                0.2,
                new Spring.Lengths(OptionalDouble.of(0.3), OptionalDouble.empty(), OptionalDouble.empty()));
        // 200 kg stand on each on average; along the spring 200·g/cos 20°, which turns aside by sin² 20° over 0.3 m.
        double lost = 200 * G / Math.cos(lean) * Math.pow(Math.sin(lean), 2) / 0.3;
        double rate = RATE * Math.pow(Math.cos(lean), 2);
        assertThat(suspension(leaning, FAR).heaveRate()).isCloseTo(rate - lost, within(1e-8));
        // Its line stands half a metre out at its lower mount, and tan 20° a metre further in above.
        assertThat(suspension(leaning, FAR).springArm(0.2)).isCloseTo(0.5, within(1e-12));
        assertThat(suspension(leaning, FAR).springArm(0.3)).isCloseTo(0.5 - 0.1 * Math.tan(lean), within(1e-12));
        assertThat(suspension(UPRIGHT, FAR).springArm(0.3)).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void withOneSpringLooseTheOtherOneAloneTurnsAndLiftsTheBody() {
        // Up by 70 mm and rolled by 0.05 rad to the right, 25 mm at the springs: left 210·g − 30·(70 + 25) N is loose,
        // right
        // 190·g − 30·(70 − 25) N pushes. The droop stops, 15 mm at their 0.3 m, are beyond 60 mm left by 25 mm, not
        // right.
        AxleSuspension suspension = suspension(UPRIGHT, FAR);
        suspension.at(-0.07, 0.05, 0.25);
        double right = 190 * G - 30 * 45;
        double pull = 50e3 * 0.025;
        assertThat(suspension.force).isCloseTo(right - pull, within(1e-8));
        // Against the roll: the right spring's push and the left stop's pull, less what the springs had at rest; and
        // the bar.
        double atRest = 0.5 * (190 * G - 210 * G);
        assertThat(suspension.moment).isCloseTo(0.5 * right - atRest + 0.3 * pull + BAR * 0.05, within(1e-8));
        assertThat(suspension.forceByTravel).isCloseTo(30e3 + 50e3, within(1e-6));
        assertThat(suspension.forceByRoll).isCloseTo(30e3 * 0.5 - 50e3 * 0.3, within(1e-6));
        assertThat(suspension.momentByTravel).isCloseTo(30e3 * 0.5 - 50e3 * 0.3, within(1e-6));
        assertThat(suspension.momentByRoll).isCloseTo(30e3 * 0.25 + 50e3 * 0.09 + BAR, within(1e-6));
    }

    @Test
    void withOneBumpStopTouchedTheBodyIsHeldThereAlone() {
        // Down by 45 mm and rolled by 0.05 rad, 20 mm at the stops 0.4 m out: right 65 mm, 15 mm into the rubber, 900 N
        // at
        // 100 N/mm; left 25 mm, clear of it.
        AxleSuspension suspension = suspension(UPRIGHT, FAR);
        suspension.at(0.045, 0.05, 0.25);
        assertThat(suspension.force).isCloseTo(400 * G + 2 * 30e3 * 0.045 + 900, within(1e-8));
        assertThat(suspension.moment).isCloseTo(2 * 0.5 * 30e3 * 0.025 + 0.4 * 900 + BAR * 0.05, within(1e-8));
        assertThat(suspension.forceByTravel).isCloseTo(60e3 + 100e3, within(1e-6));
        assertThat(suspension.forceByRoll).isCloseTo(0.4 * 100e3, within(1e-6));
        assertThat(suspension.momentByTravel).isCloseTo(0.4 * 100e3, within(1e-6));
        assertThat(suspension.momentByRoll).isCloseTo(0.25 * 60e3 + 0.16 * 100e3 + BAR, within(1e-6));
        suspension.at(0.045, -0.05, 0.25);
        assertThat(suspension.forceByRoll).isCloseTo(-0.4 * 100e3, within(1e-6));
        assertThat(suspension.momentByTravel).isCloseTo(-0.4 * 100e3, within(1e-6));
    }

    @Test
    void oneSideOverItsTravelBendsAtItsStopsAndMetalWhereTheRollBringsThem() {
        // Rolled by 0.02 rad the right side is down by 10 mm at the spring, 8 at the rubber, 6 at the strap, 7 at the
        // metal.
        ForceLines right = suspension(UPRIGHT, FAR).side(Side.RIGHT, 0.02, 0.25);
        double rest = 190 * G + 300;
        assertThat(right.force(0)).isCloseTo(rest, within(1e-8));
        assertThat(right.force(0.042)).isCloseTo(rest + 30e3 * 0.042, within(1e-8));
        assertThat(right.force(0.047)).isCloseTo(rest + 30e3 * 0.047 + 40e3 * 0.005, within(1e-8));
        assertThat(right.force(0.062)).isCloseTo(rest + 30e3 * 0.062 + 400 + 100e3 * 0.010, within(1e-8));
        assertThat(right.force(0.073)).isCloseTo(rest + 30e3 * 0.073 + 400 + 100e3 * 0.021, within(1e-7));
        double metal = AxleSuspension.METAL_RATE;
        assertThat(right.force(0.075))
                .isCloseTo(rest + 30e3 * 0.075 + 400 + 100e3 * 0.023 + metal * 0.002, within(1e-6));
        assertThat(right.force(-0.066)).isCloseTo(rest - 30e3 * 0.066, within(1e-8));
        assertThat(right.force(-0.070)).isCloseTo(rest - 30e3 * 0.070 - 50e3 * 0.004, within(1e-8));
        // The spring hangs loose once its load is gone; then only the strap pulls.
        double loose = -rest / 30e3;
        assertThat(right.force(loose - 0.01)).isCloseTo(-50e3 * (-loose + 0.01 - 0.066), within(1e-8));
        ForceLines left = suspension(UPRIGHT, FAR).side(Side.LEFT, 0.02, 0.25);
        assertThat(left.force(0.086)).isCloseTo(210 * G - 300 + 30e3 * 0.086 + 400 + 100e3 * 0.018, within(1e-7));
        assertThat(left.force(0.088))
                .isCloseTo(210 * G - 300 + 30e3 * 0.088 + 400 + 100e3 * 0.020 + metal * 0.001, within(1e-6));
        assertThat(left.force(-0.055)).isCloseTo(210 * G - 300 - 30e3 * 0.055 - 50e3 * 0.001, within(1e-8));
    }

    @Test
    void halfTheAxleMeetsMetalAtItsGap() {
        ForceLines half = suspension(UPRIGHT, FAR).half();
        double metal = AxleSuspension.METAL_RATE;
        assertThat(half.force(0.081))
                .isCloseTo(200 * G + 30e3 * 0.081 + 400 + 100e3 * 0.021 + metal * 0.001, within(1e-6));
    }

    @Test
    void aStateHasANumberFromNothingUpAlsoWhereTheSpringsAreLoose() {
        // 40 mm into the rubber it carries 3400 N, more than stands there: the springs are loose at rest.
        for (double bumpGap : new double[] {-0.04, 0.03}) {
            AxleSuspension suspension = suspension(UPRIGHT, stops(bumpGap, 0.05, 0.3));
            for (double travel = -0.2; travel < 0.1; travel += 0.003) {
                for (double roll : new double[] {-0.1, 0, 0.1}) {
                    suspension.at(travel, roll, 0.25);
                    assertThat(suspension.pieces).isBetween(0L, suspension.pieceCount() - 1);
                }
            }
        }
    }
}
