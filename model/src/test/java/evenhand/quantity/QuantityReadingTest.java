package evenhand.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers with units and tolerances as people write them. */
class QuantityReadingTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "520 mm ± 20 mm",
                "520 ± 20 mm",
                "520 mm ± 20",
                "520 mm +/- 20 mm",
                "520 mm +- 20mm",
                "520mm±20mm",
                "520 mm ± 2 cm",
                "52 cm ± 20 mm",
                "520\u00a0mm\u202f±\u200920\u00a0mm",
                "  520  mm  ±  20  mm  ",
                "+520 mm ± +20 mm",
                "5.2e2 ± 2E+1 mm",
                "520. mm ± 20.0 mm",
                "\t520 mm ±\n20 mm",
                "520 mm ± 0.02 m"
            })
    void aToleranceIsReadInEveryWayOfWritingIt(String text) throws QuantityException {
        Quantity quantity = Quantity.parse(text, Dimension.LENGTH);
        assertThat(quantity.si()).isEqualTo(0.52);
        assertThat(quantity.tolerance()).isCloseTo(0.02, within(1e-17));
        assertThat(quantity.hasTolerance()).isTrue();
        assertThat(quantity.text()).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            24 N/mm ± 5 %     | STIFFNESS | 24000 | 1200
            -24 N/mm ± 5%     | STIFFNESS | -24000 | 1200
            24 N/mm           | STIFFNESS | 24000 | 0
            24 N/mm ± 0       | STIFFNESS | 24000 | 0
            0.55 ± 0.01       | RATIO     | 0.55  | 0.01
            0.55              | RATIO     | 0.55  | 0
            55 %              | RATIO     | 0.55  | 0
            55% ± 2 %         | RATIO     | 0.55  | 0.02
            55 % ± 2          | RATIO     | 0.55  | 0.02
            16 ± 5 %          | RATIO     | 16    | 0.8
            -1.3              | RATIO     | -1.3  | 0
            1.2e3 N           | FORCE     | 1200  | 0
            1.2E+3N           | FORCE     | 1200  | 0
            −0.5 g            | ACCELERATION | -4.903325 | 0
            -.5 g             | ACCELERATION | -4.903325 | 0
            5 ft 3.5 in       | LENGTH    | 1.6129 | 0
            5ft3.5in          | LENGTH    | 1.6129 | 0
            -5 ft 3.5 in      | LENGTH    | -1.6129 | 0
            5 ft 3 1/2 in     | LENGTH    | 1.6129 | 0
            5 ft 3.5 in ± 0.5 in | LENGTH | 1.6129 | 0.0127
            5 ft 3.5 in ± 0.5 | LENGTH    | 1.6129 | 0.0127
            5 ft 3.5 in ± 10 mm | LENGTH  | 1.6129 | 0.01
            5 ft              | LENGTH    | 1.524  | 0
            55 29/32 in       | LENGTH    | 1.42001875 | 0
            55 29/32 in ± 1/4 in | LENGTH | 1.42001875 | 0.00635
            55 29/32 ± 1/4 in | LENGTH    | 1.42001875 | 0.00635
            55 29/32 in ± 1 % | LENGTH    | 1.42001875 | 0.0142001875
            1/2 in            | LENGTH    | 0.0127 | 0
            """)
    void valuesAndTolerancesBecomeSi(String text, Dimension dimension, double si, double tolerance)
            throws QuantityException {
        Quantity quantity = Quantity.parse(text, dimension);
        assertThat(quantity.si()).isCloseTo(si, within(1e-15 * Math.abs(si)));
        assertThat(quantity.tolerance()).isCloseTo(tolerance, within(1e-14 * tolerance));
        assertThat(quantity.hasTolerance()).isEqualTo(tolerance > 0);
        assertThat(quantity.dimension()).isEqualTo(dimension);
        assertThat(quantity.text()).isEqualTo(text);
    }

    @Test
    void theUnitIsTheOneThatWasTyped() throws QuantityException {
        assertThat(Quantity.parse("520 ± 20 mm", Dimension.LENGTH).unit().symbol())
                .isEqualTo("mm");
        assertThat(Quantity.parse("5 ft 3.5 in", Dimension.LENGTH).unit().symbol())
                .isEqualTo("in");
        assertThat(Quantity.parse("55 %", Dimension.RATIO).unit().symbol()).isEqualTo("%");
        assertThat(Quantity.parse("0.55 ± 2 %", Dimension.RATIO).unit().symbol())
                .isEmpty();
    }

    @Test
    void zeroHasNoSign() throws QuantityException {
        assertThat(1 / Quantity.parse("-0 mm", Dimension.LENGTH).si()).isPositive();
        assertThat(Quantity.of(-0.0, Unit.of("mm"))).isEqualTo(Quantity.parse("0 mm", Dimension.LENGTH));
    }
}
