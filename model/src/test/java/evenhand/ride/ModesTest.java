package evenhand.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Modes where the quadratics are hard to part: hardly damped, and damped so that the masses hardly move apart. */
class ModesTest {
    @Test
    void aDamperThatHardlyDampsTakesFromEachModeByHowFarItsMassesMoveApart() {
        // A mode of ω has the body at 1 and the wheel at v = 1 − ω²·ms/ks; c·(1 − v)²/(ms + mu·v²) is its 2·ζω, as far
        // as
        // the damper does not change the mode, by ζ².
        SplittableRandom random = new SplittableRandom(61);
        for (int i = 0; i < 500; i++) {
            QuarterCar any = QuarterCarTest.any(random);
            QuarterCar car = any.damped(1e-7 * any.criticalDampingRate());
            Modes undamped = car.undamped().modes();
            Modes found = car.modes();
            for (boolean body : new boolean[] {true, false}) {
                Modes.Mode own = body ? undamped.body() : undamped.hop();
                double w = own.angularFrequency();
                double wheel = 1 - w * w * car.sprungMass() / car.wheelRate();
                double apart = 1 - wheel;
                double expected = car.dampingRate()
                        * apart
                        * apart
                        / (car.sprungMass() + car.unsprungMass() * wheel * wheel)
                        / (2 * w);
                assertThat(own.dampingRatio()).isZero();
                assertThat((body ? found.body() : found.hop()).dampingRatio())
                        .as("car %d, %s", i, body ? "body" : "hop")
                        .isCloseTo(expected, within(1e-9 * expected));
            }
        }
    }

    @Test
    void aFirmDamperGivesBothModesOneFrequencyWhereWheelRateAndTyreRateAreAsTheMassesAsk() {
        // With ks = kt·ms·mu/(ms + mu)² and time counted in 1/ω, ω² = kt/(ms + mu), the polynomial reads the same from
        // both
        // ends, s⁴ + a·s³ + b·s² + a·s + 1. With d = 2·ζ of a mode it is (s² + d1·s + 1)·(s² + d2·s + 1), d1 + d2 = a,
        // d1·d2 = b − 2, as soon as the damper is firm enough for both to be real.
        SplittableRandom random = new SplittableRandom(62);
        int asked = 0;
        for (int i = 0; i < 500; i++) {
            QuarterCar any = QuarterCarTest.any(random);
            double ms = any.sprungMass();
            double mu = any.unsprungMass();
            double kt = any.tyreRate();
            double ks = kt * ms * mu / ((ms + mu) * (ms + mu));
            double w = Math.sqrt(kt / (ms + mu));
            double b = ((ks + kt) / mu + ks / ms) / (w * w);
            double a = 2 * Math.sqrt(b - 2) * (1 + Math.pow(10, -3 * random.nextDouble()));
            double apart = Math.sqrt(a * a / 4 - (b - 2));
            if (a / 2 - apart >= 2) {
                continue; // both creep back, and of four rates the slow ones are the body's
            }
            asked++;
            Modes found = new QuarterCar(ms, mu, ks, kt, a * w * ms * mu / (ms + mu)).modes();
            double less = Math.min(found.body().dampingRatio(), found.hop().dampingRatio());
            double more = Math.max(found.body().dampingRatio(), found.hop().dampingRatio());
            assertThat(found.body().angularFrequency()).as("car %d", i).isCloseTo(w, within(1e-12 * w));
            assertThat(found.hop().angularFrequency()).isCloseTo(w, within(1e-12 * w));
            assertThat(less).isCloseTo((a / 2 - apart) / 2, within(1e-12));
            assertThat(more).isCloseTo((a / 2 + apart) / 2, within(1e-12));
        }
        assertThat(asked).isGreaterThan(250);
    }

    @Test
    void aModeOfFiveHertzDampedBySixTenthsSwingsFourTimesASecond() {
        Modes.Mode mode = new Modes.Mode(10 * Math.PI, 0.6); // √(1 − 0.36) = 0.8
        assertThat(mode.frequency()).isCloseTo(5, within(1e-12));
        assertThat(mode.dampedFrequency().orElseThrow()).isCloseTo(4, within(1e-12));
        assertThat(new Modes.Mode(10 * Math.PI, 1).dampedFrequency()).isEmpty();
    }
}
