package evenhand.tyre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import evenhand.quantity.InvalidValue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TyreEstimateTest {
    @ParameterizedTest
    @CsvSource({
        "205/60R15, 0.205, 0.60, 15",
        "205/60 R 15, 0.205, 0.60, 15",
        "225/45ZR17 91W, 0.225, 0.45, 17",
        "P195/60R15, 0.195, 0.60, 15",
        "165R13, 0.165, 0.82, 13",
        "165 SR 13, 0.165, 0.82, 13",
        "155/80-13, 0.155, 0.80, 13",
        "6.00-15, 0.1524, 0.92, 15",
        "5.60-15, 0.14224, 0.92, 15"
    })
    void sizesAreReadAsTheyStandOnTheTyre(String text, double width, double aspect, double rim) {
        TyreSize size = TyreSize.parse(text);
        assertThat(size.width()).isCloseTo(width, within(1e-12));
        assertThat(size.aspect()).isCloseTo(aspect, within(1e-12));
        assertThat(size.rim()).isCloseTo(rim * 0.0254, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "205", "205/60", "205/60R150", "999/60R15", "fifteen", "205/60R15/2"})
    void whatIsNoSizeIsRefused(String text) {
        assertThatThrownBy(() -> TyreSize.parse(text)).isInstanceOf(InvalidValue.class);
    }

    /** Values computed apart from this code, from the relation in the Javadoc: kPa, N/mm. */
    @ParameterizedTest
    @CsvSource({"145/80-13, 165, 143", "185/65-15, 200, 197", "225/45-17, 220, 244", "245/45-16, 180, 212"})
    void theVerticalRateOfARadialFollowsSizeAndPressure(String size, double pressure, double rate) {
        assertThat(TyreEstimate.verticalRate(TyreSize.parse(size), TyreKind.TOURING_RADIAL, pressure * 1000))
                .isCloseTo(rate * 1000, within(600.0));
    }

    @Test
    void aCrossPlyIsStifferUprightAndSofterSideways() {
        TyreSize size = TyreSize.parse("165R15");
        assertThat(TyreEstimate.verticalRate(size, TyreKind.CROSS_PLY, 2e5))
                .isGreaterThan(TyreEstimate.verticalRate(size, TyreKind.TALL_RADIAL, 2e5));
        assertThat(TyreEstimate.corneringStiffness(TyreKind.CROSS_PLY, 3500))
                .isLessThan(TyreEstimate.corneringStiffness(TyreKind.TALL_RADIAL, 3500));
    }
}
