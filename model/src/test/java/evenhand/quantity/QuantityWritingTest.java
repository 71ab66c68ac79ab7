package evenhand.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers as the program writes them into a file. */
class QuantityWritingTest {
    private static final long SEED = 20_261_125L;

    private static final List<Dimension> DIMENSIONS = List.of(Dimension.values());

    private static <T> T anyOf(List<T> all, Random random) {
        return all.get(random.nextInt(all.size()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0.255      | mm      | 255 mm
            0.275      | mm      | 275 mm
            1.42       | mm      | 1420 mm
            -0.5       | m       | -0.5 m
            0          | mm      | 0 mm
            24000      | N/mm    | 24 N/mm
            4.903325   | g       | 0.5 g
            0.55       | %       | 55 %
            0.333333   | %       | 33.3333 %
            1e10       | N/m     | 1e10 N/m
            1.25e-9    | m       | 1.25e-9 m
            0.00005    | m       | 0.00005 m
            """)
    void aValueIsWrittenAsShortAsCanBe(double si, String unit, String text) {
        assertThat(Quantity.of(si, Unit.of(unit)).text()).isEqualTo(text);
    }

    @Test
    void aPlainRatioIsWrittenWithoutUnit() {
        assertThat(Quantity.of(0.545, Dimension.RATIO.metric()).text()).isEqualTo("0.545");
    }

    @Test
    void theNoiseOfBinaryArithmeticIsNotWritten() {
        assertThat(0.1 + 0.2).isNotEqualTo(0.3);
        assertThat(Quantity.of(0.1 + 0.2, Unit.of("mm")).text()).isEqualTo("300 mm");
    }

    @Test
    void whatIsWrittenReadsBackTheSame() throws QuantityException {
        Random random = new Random(SEED);
        for (int i = 0; i < 20_000; i++) {
            Dimension dimension = anyOf(DIMENSIONS, random);
            Unit unit = anyOf(dimension.units(), random);
            double si = (2 * random.nextDouble() - 1) * dimension.largest() * Math.pow(10, -12 * random.nextDouble());
            if (random.nextBoolean()) {
                si = new BigDecimal(si)
                        .round(new MathContext(1 + random.nextInt(6)))
                        .doubleValue();
            }
            Quantity written = Quantity.of(si, unit);
            assertThat(written.si())
                    .as("seed %d, %s %s", SEED, si, unit)
                    .isBetween(si - Math.ulp(si), si + Math.ulp(si));
            assertThat(Quantity.parse(written.text(), dimension)).isEqualTo(written);
        }
    }

    @Test
    void whatAPersonTypedInAUnitIsWrittenInTheSameDigits() throws QuantityException {
        Random random = new Random(SEED + 1);
        for (int i = 0; i < 20_000; i++) {
            Dimension dimension = anyOf(DIMENSIONS, random);
            Unit unit = anyOf(dimension.units(), random);
            double limit = Math.min(9000, unit.fromSi(dimension.largest() / 2));
            BigDecimal typed = new BigDecimal(limit * (0.01 + 0.9 * random.nextDouble()))
                    .round(new MathContext(1 + random.nextInt(6)))
                    .stripTrailingZeros();
            String text = (typed.toPlainString() + " " + unit.symbol()).strip();
            assertThat(Quantity.of(Quantity.parse(text, dimension).si(), unit).text())
                    .as("seed %d", SEED + 1)
                    .isEqualTo(text);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.MAX_VALUE})
    void whatIsNotFiniteIsNeverWritten(double si) {
        assertThatThrownBy(() -> Quantity.of(si, Unit.of("mm"))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aQuantityHoldsNoNonsense() {
        Unit mm = Unit.of("mm");
        assertThatThrownBy(() -> new Quantity(Double.NaN, 0, Dimension.LENGTH, "", mm))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Quantity(1, -1, Dimension.LENGTH, "", mm))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Quantity(1, 0, Dimension.MASS, "", mm))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Unit("none", Dimension.MASS, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
