package evenhand.bump;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.bump.StepMotion.Watched;
import evenhand.car.RoadCars;
import evenhand.road.Piece;
import evenhand.suspension.DamperLines;
import evenhand.suspension.StraightForce;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.hipparchus.analysis.polynomials.PolynomialFunction;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import org.junit.jupiter.api.Test;

/** One step of a wheel and the motion within it. */
class QuarterCarStepTest {
    private static final double SPEED = 12;

    /** Weights of order 4: Hairer, Norsett &amp; Wanner, Solving Ordinary Differential Equations I, table 5.2. */
    private static final double[] ORDER_FOUR = {
        5179 / 57600.0, 0, 7571 / 16695.0, 393 / 640.0, -92097 / 339200.0, 187 / 2100.0, 1 / 40.0
    };

    /** A wheel of straight lines that is pressed onto the road. */
    private static WheelStation straight(double spring, double damping, double tyre, double held) {
        return new WheelStation(
                280,
                40,
                StraightForce.of(2500, spring),
                DamperLines.atWheel(StraightForce.of(0, damping)),
                tyre,
                held,
                0.01,
                0,
                Double.POSITIVE_INFINITY,
                Double.POSITIVE_INFINITY,
                Double.NEGATIVE_INFINITY,
                SideGrip.greatest(RoadCars.any(1).front().tyre().lateral()));
    }

    @Test
    void theErrorOfAStepIsWhatTheTwoOrdersDifferBy() {
        Set<String> decided = new TreeSet<>();
        // slow and soft: places decide; quick and stiff: speeds do; a light push on either mass
        for (WheelStation station : List.of(
                straight(300, 20, 9e3, 3000),
                straight(30e3, 200, 100, 3000),
                straight(20e3, 1500, 200e3, 3000),
                straight(90e3, 9000, 300e3, 3000))) {
            Piece road = new Piece.Sine(0, 100, 0.002, 0.01, 0.4, 2 * Math.PI / 6);
            double tolerance = 1e-6;
            QuarterCarStep step = new QuarterCarStep(station, tolerance);
            step.enter(road, SPEED, 0);
            double length = 0.01;
            step.attempt(length);
            step.keep(length);
            step.attempt(length);
            step.keep(2 * length);
            double[] off = ordersApart(station, road, step, length);
            double error = step.attempt(length);
            double[] over = {
                off[0] / tolerance, off[1] / (60 * tolerance), off[2] / tolerance, off[3] / (60 * tolerance)
            };
            int largest = 0;
            for (int i = 1; i < 4; i++) {
                largest = over[i] > over[largest] ? i : largest;
            }
            decided.add(largest % 2 == 0 ? "places" : "speeds");
            assertThat(error).isCloseTo(over[largest], within(1e-6 * over[largest]));
        }
        assertThat(decided).containsExactly("places", "speeds");
    }

    /** Sizes of what orders 5 and 4 differ by in body, its speed, wheel and its speed. */
    private static double[] ordersApart(WheelStation station, Piece road, QuarterCarStep from, double length) {
        DormandPrince54Integrator library = new DormandPrince54Integrator(1, 1, 1, 1);
        double[][] places = library.getA();
        double[] times = library.getC();
        double[] five = library.getB();
        double[] start = {from.body, from.bodySpeed, from.wheel, from.wheelSpeed};
        double[][] slopes = new double[7][];
        double[] apart = new double[4];
        for (int s = 0; s < 7; s++) {
            double[] at = start.clone();
            for (int j = 0; j < s; j++) {
                for (int i = 0; i < 4; i++) {
                    at[i] += length * places[s - 1][j] * slopes[j][i];
                }
            }
            double x = SPEED * (from.time + (s == 0 ? 0 : times[s - 1]) * length);
            double push = station.suspension().slope(0) * (at[2] - at[0])
                    + station.damper().forceRate(0, 0, 0, 1) * (at[3] - at[1]);
            double tyre = station.tyreRate() * (road.height(x) - at[2]);
            slopes[s] = new double[] {at[1], push / station.bodyMass(), at[3], (tyre - push) / station.wheelMass()};
            for (int i = 0; i < 4; i++) {
                apart[i] += length * (five[s] - ORDER_FOUR[s]) * slopes[s][i];
            }
        }
        for (int i = 0; i < 4; i++) {
            apart[i] = Math.abs(apart[i]);
        }
        return apart;
    }

    @Test
    void everyRateWithinAStepIsTheSlopeOfWhatItIsTheRateOf() {
        WheelStation station = straight(30e3, 2500, 180e3, 2900);
        QuarterCarStep step = new QuarterCarStep(station, 1e-9);
        StepMotion motion = new StepMotion(step);
        step.enter(new Piece.Sine(0, 100, 0, 0.01, 0.4, 2 * Math.PI / 1.1), SPEED, 0);
        Map<Watched, Watched> rates = Map.of(
                Watched.TRAVEL, Watched.TRAVEL_RATE,
                Watched.TRAVEL_RATE, Watched.TRAVEL_PULL,
                Watched.DEFLECTION, Watched.DEFLECTION_RATE,
                Watched.BODY_PULL, Watched.BODY_JERK);
        double length = 2e-3;
        double time = 0;
        for (int i = 0; i < 40; i++) {
            step.attempt(length);
            motion.set(length);
            rates.forEach((what, rate) -> {
                for (double part : new double[] {0.1, 0.5, 0.85}) {
                    double slope = (motion.at(what, part + 1e-4) - motion.at(what, part - 1e-4)) / (2e-4 * length);
                    double most = Math.max(Math.abs(motion.at(rate, 0)), Math.abs(motion.at(rate, 1)));
                    assertThat(motion.at(rate, part)).as("%s", rate).isCloseTo(slope, within(1e-4 * most));
                }
            });
            near(motion, Watched.TRAVEL, step.travel(), step.nextTravel());
            near(motion, Watched.TRAVEL_RATE, step.travelRate(), step.nextTravelRate());
            near(motion, Watched.TRAVEL_PULL, step.travelPull(), step.nextTravelPull());
            assertThat(step.travelPull() + step.bodyPull)
                    .isCloseTo(step.wheelPull, within(1e-9 * Math.abs(step.wheelPull)));
            near(motion, Watched.DEFLECTION, step.deflection(), step.nextDeflection());
            near(motion, Watched.DEFLECTION_RATE, step.deflectionRate(), step.nextDeflectionRate());
            near(motion, Watched.BODY_PULL, step.bodyPull, step.nextBodyPull);
            time += length;
            step.keep(time);
        }
    }

    private static void near(StepMotion motion, Watched what, double start, double end) {
        double scale = Math.max(Math.abs(start), Math.abs(end)) + 1e-9;
        assertThat(motion.at(what, 0)).as("%s", what).isCloseTo(start, within(1e-9 * scale));
        assertThat(motion.at(what, 1)).as("%s", what).isCloseTo(end, within(1e-9 * scale));
    }

    @Test
    void aMotionOfTheFifthOrderIsFoundAgainFromItsEnds() {
        SplittableRandom random = new SplittableRandom(3);
        Quintic found = new Quintic();
        for (int i = 0; i < 50; i++) {
            double[] c = random.doubles(6, -2, 2).toArray();
            PolynomialFunction place = new PolynomialFunction(c);
            PolynomialFunction speed = place.polynomialDerivative();
            PolynomialFunction pull = speed.polynomialDerivative();
            double length = 0.3 + random.nextDouble();
            found.through(
                    length,
                    place.value(0),
                    speed.value(0),
                    pull.value(0),
                    place.value(length),
                    speed.value(length),
                    pull.value(length));
            for (double part : new double[] {0, 0.2, 0.55, 0.9, 1}) {
                assertThat(found.place(part)).isCloseTo(place.value(part * length), within(1e-11));
                assertThat(found.speed(part)).isCloseTo(speed.value(part * length), within(1e-10));
                assertThat(found.pull(part)).isCloseTo(pull.value(part * length), within(1e-9));
            }
        }
    }
}
