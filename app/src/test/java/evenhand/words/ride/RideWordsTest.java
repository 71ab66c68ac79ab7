package evenhand.words.ride;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Verdicts at the edges of their bands. */
class RideWordsTest {
    @Test
    void twoEndsOfOneFrequencyHaveOneVerdict() {
        assertThat(RideWords.ridesLike(1.51, 1.51)).isEqualTo("as a fast road car in daily use");
        assertThat(RideWords.ridesLike(1.45, 1.45)).isEqualTo("as an ordinary car");
        for (double hertz = 0.8; hertz < 3; hertz += 0.01) {
            assertThat(RideWords.ridesLike(hertz, hertz)).doesNotContain("at the front");
        }
    }

    @Test
    void endsThatAreNotMadeForOneAnotherAreTold() {
        assertThat(RideWords.ridesLike(1.0, 2.0))
                .isEqualTo("as a soft old saloon at the front and a road car for track days at the rear");
        assertThat(RideWords.ridesLike(1.3, 1.45)).isEqualTo("as an ordinary car");
        assertThat(RideWords.ridesLike(1.6, 1.0))
                .isEqualTo("as a fast road car in daily use at the front and a soft old saloon at the rear");
    }

    @Test
    void comfortHasOneWordWhereItsBandsOverlapAndThatOfTheNumberShown() {
        assertThat(SeatWords.felt(0.55)).isEqualTo("a little uncomfortable");
        assertThat(SeatWords.felt(0.60)).isEqualTo("fairly uncomfortable");
        assertThat(SeatWords.felt(0.3149)).isEqualTo(SeatWords.felt(0.31)).isEqualTo("not uncomfortable");
        assertThat(SeatWords.felt(0.3151)).isEqualTo(SeatWords.felt(0.32)).isEqualTo("a little uncomfortable");
    }
}
