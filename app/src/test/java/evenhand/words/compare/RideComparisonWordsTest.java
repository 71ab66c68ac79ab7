package evenhand.words.compare;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.ride.Ride;
import evenhand.ride.RoadClass;
import evenhand.scenario.Demo;
import evenhand.words.Units;
import org.junit.jupiter.api.Test;

/** How a set-up rides against another: the sentence follows the numbers and says nothing of what is alike. */
class RideComparisonWordsTest {
    private static Ride ride(String setup) {
        return (Ride) Ride.of(
                Demo.read("harbour-saloon").setup(setup).orElseThrow().car().settled(), RoadClass.B, 80 / 3.6);
    }

    @Test
    void onlyWhatDiffersIsSaid() {
        assertThat(RideComparisonWords.of(ride("As bought"), ride("As bought"), Units.METRIC))
                .isEqualTo("rides alike");
        assertThat(RideComparisonWords.of(ride("As bought"), ride("Lowered"), Units.METRIC))
                .isEqualTo("it has 28 and 36 mm before the bump stops instead of 58 and 66");
        assertThat(RideComparisonWords.of(ride("Lowered"), ride("As bought"), Units.IMPERIAL))
                .isEqualTo("it has 2.28 and 2.60 in before the bump stops instead of 1.10 and 1.42");
    }

    @Test
    void comfortComesFirstAndTurnsRoundWithItsSign() {
        Ride soft = ride("As bought");
        Ride firm = ride("Lowered, firmer springs");
        assertThat(RideComparisonWords.of(soft, firm, Units.METRIC))
                .startsWith("its worse end shakes 3 % more as it is felt, 1.04 instead of 1.01 m/s²; the body swings at"
                        + " 1.47 and 1.71 Hz instead of 1.34 and 1.59; its damping ratio is ");
        assertThat(RideComparisonWords.of(firm, soft, Units.METRIC))
                .startsWith("its worse end shakes 3 % less as it is felt, 1.01 instead of 1.04 m/s²");
    }
}
