package evenhand.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.RoadCars;
import evenhand.car.Weights;
import org.junit.jupiter.api.Test;

/** Bounce and pitch of the body, by hand. */
class PitchBounceTest {
    @Test
    void aBodyWorkedOutOnPaper() {
        // 1000 kg, 1000 kg·m², so k = 1 m; 1.0 m to the front on 30 kN/m, 1.5 m to the rear on 20 kN/m: nothing couples
        // (30·1.0 = 20·1.5), heave by √(50e3/1000) = √50, pitch by √((30e3·1 + 20e3·2.25)/1000) = √75 rad/s.
        PitchBounce apart = PitchBounce.of(1000, 1000, 1.0, 1.5, 30e3, 20e3);
        assertThat(apart.bounceFrequency()).isCloseTo(Math.sqrt(50) / (2 * Math.PI), within(1e-12));
        assertThat(apart.pitchFrequency()).isCloseTo(Math.sqrt(75) / (2 * Math.PI), within(1e-12));
        assertThat(apart.bounceCentre()).isEmpty();
        // 28 kN/m and 18 kN/m on arms of 1 m and 1 m, k² = 0.5 m²: α = 46, β = 10, γ = 92; (46 − λ)·(92 − λ) = 200,
        // λ = 69 ± √(23² + 200) = 69 ± 27: 42 and 96. Centres 10/(46 − 42) = 2.5 m ahead, 10/(46 − 96) = 0.2 m behind.
        PitchBounce coupled = PitchBounce.of(1000, 500, 1, 1, 28e3, 18e3);
        assertThat(coupled.bounceFrequency()).isCloseTo(Math.sqrt(42) / (2 * Math.PI), within(1e-12));
        assertThat(coupled.pitchFrequency()).isCloseTo(Math.sqrt(96) / (2 * Math.PI), within(1e-12));
        assertThat(coupled.bounceCentre().orElseThrow()).isCloseTo(2.5, within(1e-12));
        assertThat(coupled.pitchCentre()).isCloseTo(-0.2, within(1e-12));
    }

    @Test
    void aLongBodyPitchesSlowerThanItBounces() {
        // As above with k² = 2 m²: α = 46, β = 10, γ = 23; half of 23 and √(11.5² + 50) = 13.5 give 48 and 21. The body
        // pitches with 21 about 10/(46 − 21) = 0.4 m ahead and bounces with 48 about 10/(46 − 48) = 5 m behind.
        PitchBounce found = PitchBounce.of(1000, 2000, 1, 1, 28e3, 18e3);
        assertThat(found.bounceFrequency()).isCloseTo(Math.sqrt(48) / (2 * Math.PI), within(1e-12));
        assertThat(found.pitchFrequency()).isCloseTo(Math.sqrt(21) / (2 * Math.PI), within(1e-12));
        assertThat(found.bounceCentre().orElseThrow()).isCloseTo(-5, within(1e-12));
        assertThat(found.pitchCentre()).isCloseTo(0.4, within(1e-12));
    }

    @Test
    void theCarsOwnBodyIsThatOfItsNumbersWithBothWheelsOfAnAxle() {
        for (long seed = 0; seed < 20; seed++) {
            Car car = RoadCars.damped(seed).settled();
            Car.Sprung sprung = car.sprung();
            PitchBounce found = PitchBounce.of(car, 17e3, 19e3);
            double toFront = sprung.behindFront();
            assertThat(found)
                    .isEqualTo(PitchBounce.of(
                            sprung.mass(),
                            evenhand.car.InertiaEstimate.pitch(car),
                            toFront,
                            car.wheelbase() - toFront,
                            34e3,
                            38e3));
        }
    }

    @Test
    void aWaveLiftsTheMiddleAndTiltsTheAxlesAsItsHeightsUnderThemSay() {
        double wheelbase = 2.5;
        // A wave of the wheelbase only lifts, one of twice the wheelbase only tilts, one of three wheelbases does both:
        // cos 60° and sin 60°.
        assertThat(PitchBounce.bounceShare(wheelbase, 2.5)).isCloseTo(1, within(1e-12));
        assertThat(PitchBounce.pitchShare(wheelbase, 2.5)).isCloseTo(0, within(1e-12));
        assertThat(PitchBounce.bounceShare(wheelbase, 5)).isCloseTo(0, within(1e-12));
        assertThat(PitchBounce.pitchShare(wheelbase, 5)).isCloseTo(1, within(1e-12));
        assertThat(PitchBounce.bounceShare(wheelbase, 7.5)).isCloseTo(0.5, within(1e-12));
        assertThat(PitchBounce.pitchShare(wheelbase, 7.5)).isCloseTo(Math.sqrt(3) / 2, within(1e-12));
        for (double wave = 1.1; wave < 30; wave *= 1.4) {
            double lift = 0;
            double tilt = 0;
            for (double x = 0; x < wave; x += wave / 5000) {
                double front = Math.sin(2 * Math.PI * (x + wheelbase) / wave);
                double rear = Math.sin(2 * Math.PI * x / wave);
                lift = Math.max(lift, (front + rear) / 2);
                tilt = Math.max(tilt, (front - rear) / 2);
            }
            assertThat(PitchBounce.bounceShare(wheelbase, wave)).isCloseTo(lift, within(1e-6));
            assertThat(PitchBounce.pitchShare(wheelbase, wave)).isCloseTo(tilt, within(1e-6));
        }
    }

    @Test
    void atTheSpeedInStepBothEndsHaveSwungTheirCyclesAtOnce() {
        // One and a half cycles take 1.2 s at 1.25 Hz and 1.0 s at 1.5 Hz: the rear may begin 0.2 s later, 2.6 m on.
        assertThat(PitchBounce.inStepSpeed(2.6, 1.25, 1.5, 1.5).orElseThrow()).isCloseTo(13, within(1e-9));
        assertThat(PitchBounce.inStepSpeed(2.6, 1.5, 1.25, 1.5)).isEmpty();
        assertThat(PitchBounce.inStepSpeed(2.6, 1.5, 1.5, 1.5)).isEmpty();
    }

    @Test
    void anEndByItselfSwingsWithWhatStandsOnItsSprings() {
        for (long seed = 0; seed < 20; seed++) {
            Car car = RoadCars.damped(seed).settled();
            for (End end : End.values()) {
                double stands = car.axleLoad(end) / Weights.GRAVITY
                        - car.axle(end).unsprung().mass();
                // 25 kN/m at each wheel
                double expected = Math.sqrt(50e3 / stands) / (2 * Math.PI);
                assertThat(PitchBounce.endFrequency(car, end, 25e3)).isCloseTo(expected, within(1e-9));
            }
        }
    }
}
