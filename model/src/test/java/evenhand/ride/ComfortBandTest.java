package evenhand.ride;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ComfortBandTest {
    @Test
    void whereTwoBandsOverlapTheNearerOneIsTheOneWord() {
        assertThat(ComfortBand.nearest(0.2)).isEqualTo(ComfortBand.NOT_UNCOMFORTABLE);
        assertThat(ComfortBand.nearest(0.4)).isEqualTo(ComfortBand.A_LITTLE);
        // a little ends at 0.63, fairly begins at 0.5: their middles are 0.446 and 0.707
        assertThat(ComfortBand.nearest(0.55)).isEqualTo(ComfortBand.A_LITTLE);
        assertThat(ComfortBand.nearest(0.58)).isEqualTo(ComfortBand.FAIRLY);
        assertThat(ComfortBand.nearest(0.7)).isEqualTo(ComfortBand.FAIRLY);
        assertThat(ComfortBand.nearest(0.95)).isEqualTo(ComfortBand.UNCOMFORTABLE);
        assertThat(ComfortBand.nearest(2.1)).isEqualTo(ComfortBand.VERY);
        assertThat(ComfortBand.nearest(9)).isEqualTo(ComfortBand.EXTREMELY);
    }
}
