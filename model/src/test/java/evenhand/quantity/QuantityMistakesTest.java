package evenhand.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.Duration;
import java.util.Random;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What cannot be read is answered in one line, with its remedy. */
class QuantityMistakesTest {
    private static final long SEED = 20_261_125L;

    private static String messageOf(String text, Dimension expected) {
        return catchThrowableOfType(QuantityException.class, () -> Quantity.parse(text, expected))
                .getMessage();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            1420 | LENGTH | needs a unit, for example "1420 mm" or "55.9 in"
            24 ± 5 % | STIFFNESS | needs a unit, for example "24 N/mm" or "137 lbf/in"
            520 ± 20 | LENGTH | needs a unit, for example "1420 mm" or "55.9 in"
            24 N/mm | LENGTH | "24 N/mm" is a stiffness, but a length belongs here, for example "1420 mm" or "55.9 in"
            5 % | LENGTH | "5 %" is a ratio, but a length belongs here, for example "1420 mm" or "55.9 in"
            24 mm | RATIO | "24 mm" is a length, but a ratio belongs here, for example "0.55" or "55 %"
            1380 g | MASS | "1380 g" is an acceleration, but a mass belongs here, for example "1380 kg" or "3042 lb"
            5 ft 3 in | FORCE | "5 ft 3 in" is a length, but a force belongs here, for example "3500 N" or "787 lbf"
            520 ± 20 N | LENGTH | "520 ± 20 N" is a force, but a length belongs here, for example "1420 mm" or "55.9 in"
            12 MM | LENGTH | has the unknown unit "MM"; a length is written in mm, cm, m, in, ft; the nearest is "mm", for example "1420 mm" or "55.9 in"
            12 inhc | LENGTH | has the unknown unit "inhc"; a length is written in mm, cm, m, in, ft; the nearest is "in", for example "1420 mm" or "55.9 in"
            12 inch | LENGTH | has the unit "inch"; write "in"
            3042 lbs | MASS | has the unit "lbs"; write "lb"
            3042 lbs | LENGTH | "3042 lbs" is a mass, but a length belongs here, for example "1420 mm" or "55.9 in"
            2 degrees | ANGLE | has the unit "degrees"; write "deg"
            210 Nm/degree | ROLL_STIFFNESS | has the unit "Nm/degree"; write "N*m/deg"
            210 N-m/deg | ROLL_STIFFNESS | has the unit "N-m/deg"; write "N*m/deg"
            155 lbf-ft/deg | ROLL_STIFFNESS | has the unit "lbf-ft/deg"; write "lbf*ft/deg"
            60 kph | SPEED | has the unit "kph"; write "km/h"
            520 mm ± 5 percent | LENGTH | has the unit "percent"; write "%"
            16:1 | RATIO | "16:1" has ":1" after the number; leave it out
            3.7 to 1 | RATIO | "3.7 to 1" has "to 1" after the number; leave it out
            55.9" | LENGTH | has feet or inches by their marks; write "55.9 in"
            104 23/32″ ± 1/8″ | LENGTH | has feet or inches by their marks; write "104 23/32 in ± 1/8 in"
            5' 3.5" | LENGTH | has feet or inches by their marks; write "5 ft 3.5 in"
            5′3″ | LENGTH | has feet or inches by their marks; write "5 ft 3 in"
            8' | LENGTH | has feet or inches by their marks; write "8 ft"
            5' and a bit | LENGTH | has the unknown unit "' and a bit"; a length is written in mm, cm, m, in, ft, for example "1420 mm" or "55.9 in"
            140 lb/inch | STIFFNESS | has the unit "lb/inch", of a mass instead of a force; write "lbf/in"
            340 #/in | STIFFNESS | has the unit "#/in", of a mass instead of a force; write "lbf/in"
            12 furlong | LENGTH | has the unknown unit "furlong"; a length is written in mm, cm, m, in, ft, for example "1420 mm" or "55.9 in"
            12 hz | FREQUENCY | has the unknown unit "hz"; a frequency is written in Hz; the nearest is "Hz", for example "1.4 Hz"
            12 parts | RATIO | has the unknown unit "parts"; a ratio is written in % or without unit, for example "0.55" or "55 %"
            520 mm ± 20 mn | LENGTH | has the unknown unit "mn"; a length is written in mm, cm, m, in, ft; the nearest is "mm", for example "1420 mm" or "55.9 in"
            140 lb/in | STIFFNESS | has the unit "lb/in", of a mass instead of a force; write "lbf/in"
            140 lbs/in | STIFFNESS | has the unit "lbs/in", of a mass instead of a force; write "lbf/in"
            2.4 kg/mm | STIFFNESS | has the unit "kg/mm", of a mass instead of a force; write "kgf/mm"
            90 lb-ft | MOMENT | has the unit "lb-ft", of a mass instead of a force; write "lbf*ft"
            90 lb·ft/deg | ROLL_STIFFNESS | has the unit "lb*ft/deg", of a mass instead of a force; write "lbf*ft/deg"
            8 lb*s/in | DAMPING | has the unit "lb*s/in", of a mass instead of a force; write "lbf*s/in"
            1,5 m | LENGTH | has a decimal comma; write "1.5 m"
            1,5 ± 0,02 m | LENGTH | has a decimal comma; write "1.5 ± 0.02 m"
            0,525 m | LENGTH | has a decimal comma; write "0.525 m"
            2 660,5 mm | LENGTH | has a decimal comma; write "2660.5 mm"
            5 ft 3,5 in | LENGTH | has a decimal comma; write "5 ft 3.5 in"
            1.234,5 mm | LENGTH | has a decimal comma; write "1234.5 mm"
            1,420 mm | LENGTH | has a decimal comma; write "1.420 mm", or "1420 mm" if the comma parts the thousands
            1,234.5 mm | LENGTH | has a comma between thousands; write "1234.5 mm"
            1 420 mm | LENGTH | has a blank inside the number; write "1420 mm"
            12 3 mm | LENGTH | "12 3 mm" has a second number where its unit belongs; write for example "1420 mm" or "55.9 in"
            1.2.3 mm | LENGTH | "1.2.3 mm" has a second number where its unit belongs; write for example "1420 mm" or "55.9 in"
            NaN | LENGTH | "NaN" is not a finite number; write the number that was measured
            -Infinity m | LENGTH | "-Infinity m" is not a finite number; write the number that was measured
            inf | RATIO | "inf" is not a finite number; write the number that was measured
            ∞ m | LENGTH | "∞ m" is not a finite number; write the number that was measured
            1e999 m | LENGTH | "1e999 m" is not a finite number; write the number that was measured
            1e308 t | MASS | "1e308 t" is not a finite number; write the number that was measured
            1 m ± 1e999 m | LENGTH | "1 m ± 1e999 m" is not a finite number; write the number that was measured
            1420 m | LENGTH | "1420 m" is more than can be: a length here is at most 100 m; look at the unit and the decimal point
            -1420 m | LENGTH | "-1420 m" is more than can be: a length here is at most 100 m; look at the unit and the decimal point
            101 t | MASS | "101 t" is more than can be: a mass here is at most 100000 kg; look at the unit and the decimal point
            1 m ± 200 m | LENGTH | "1 m ± 200 m" is more than can be: a length here is at most 100 m; look at the unit and the decimal point
            2e10 N/m | STIFFNESS | "2e10 N/m" is more than can be: a stiffness here is at most 1e10 N/m; look at the unit and the decimal point
            1e7 | RATIO | "1e7" is more than can be: a ratio here is at most 1000000; look at the unit and the decimal point
            wide | LENGTH | "wide" does not begin with a number; write a length, for example "1420 mm" or "55.9 in"
            - | LENGTH | "-" does not begin with a number; write a length, for example "1420 mm" or "55.9 in"
            ± 5 mm | LENGTH | "± 5 mm" does not begin with a number; write a length, for example "1420 mm" or "55.9 in"
            1420 mm or so | LENGTH | "1420 mm or so" has "or so" after the unit "mm"; leave it out
            1420 mm 5 | LENGTH | "1420 mm 5" has "5" after the unit "mm"; leave it out
            1420 mm ± 5 mm? no | LENGTH | has the unknown unit "mm? no"; a length is written in mm, cm, m, in, ft, for example "1420 mm" or "55.9 in"
            520 mm ± 20 N | LENGTH | has the tolerance "20 N", which is a force, but a length or % belongs there, for example "± 5 %"
            520 mm ± -20 mm | LENGTH | "520 mm ± -20 mm" has a negative tolerance; write the half-width without a sign after the ±
            520 mm +/- −1 | LENGTH | "520 mm +/- −1" has a negative tolerance; write the half-width without a sign after the ±
            520 mm ± 20 ± 5 | LENGTH | "520 mm ± 20 ± 5" has more than one ±; write one tolerance, the half-width
            520 mm ± | LENGTH | "520 mm ±" has no number after the ±; write for example "± 5 %", or leave it out
            520 mm ± some | LENGTH | "520 mm ± some" has no number after the ±; write for example "± 5 %", or leave it out
            55 29/32 mm | LENGTH | "55 29/32 mm" has a fraction, which only in and ft can have; write a decimal, for example "1420 mm" or "55.9 in"
            1/2 | RATIO | "1/2" has a fraction, which only in and ft can have; write a decimal, for example "0.55" or "55 %"
            55 29/0 in | LENGTH | "55 29/0 in" has a fraction that cannot be read; write for example "55 29/32 in"
            5 ft 90 mm | LENGTH | "5 ft 90 mm" has a number after the feet that is not in inches; write for example "5 ft 3.5 in"
            5 ft 3 | LENGTH | "5 ft 3" has a number after the feet that is not in inches; write for example "5 ft 3.5 in"
            """)
    void aMistakeIsNamedWithItsRemedy(String text, Dimension expected, String message) {
        assertThat(messageOf(text, expected)).isEqualTo(message);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "\u00a0\u202f\t\n"})
    void anEmptyTextIsReportedAsEmpty(String text) {
        assertThat(messageOf(text, Dimension.LENGTH))
                .isEqualTo("is empty; write a length, for example \"1420 mm\" or \"55.9 in\"");
    }

    @Test
    void theMessageForABareNumberIsTheSameAsForATextWithoutUnit() {
        assertThat(QuantityException.needsUnit(Dimension.LENGTH)).hasMessage(messageOf("1420", Dimension.LENGTH));
        assertThat(QuantityException.needsUnit(Dimension.RATIO))
                .hasMessage("needs a number, for example \"0.55\" or \"55 %\"");
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void theLargestMagnitudeItselfIsReadAndTwiceItIsNot(Dimension dimension) throws QuantityException {
        Unit unit = dimension.units().get(0);
        Quantity half = Quantity.of(dimension.largest() / 2, unit);
        assertThat(Quantity.parse(half.text(), dimension)).isEqualTo(half);
        assertThat(messageOf(Quantity.of(dimension.largest() * 2, unit).text(), dimension))
                .contains("is more than can be");
    }

    @Test
    void whatIsNoPartOfACarHasABoundOfItsOwn() throws QuantityException {
        assertThat(Quantity.parse("300 m", Dimension.LENGTH, 1e4).si()).isEqualTo(300.0);
        assertThatThrownBy(() -> Quantity.parse("300 km", Dimension.LENGTH, 1e4))
                .hasMessageContaining("is a distance, but a length belongs here");
        assertThatThrownBy(() -> Quantity.parse("30000 m", Dimension.LENGTH, 1e4))
                .hasMessageContaining("at most 10000 m");
    }

    @Test
    void anyTextGivesAQuantityOrAMessageOfOneLine() {
        String[] pieces = {
            "1",
            "42",
            ".",
            ",",
            "e",
            "E9",
            "-",
            "−",
            "+",
            "±",
            "+/-",
            "+-",
            "/",
            "1/2",
            " ",
            "\u00a0",
            "mm",
            "ft",
            "in",
            "lb",
            "lbf",
            "kg",
            "N",
            "·",
            "*",
            "^2",
            "²",
            "°",
            "deg",
            "(",
            ")",
            "%",
            "NaN",
            "inf",
            "∞",
            "\n",
            "\u2028",
            "\u0000",
            "\ud83d",
            "\ud83d\ude97",
            "٣",
            "１",
            "½",
            "\"",
            "g",
            "m",
            "s",
            "\u200b",
            "\u202e",
            "x"
        };
        Random random = new Random(SEED);
        int read = 0;
        for (int i = 0; i < 50_000; i++) {
            Dimension dimension = Dimension.values()[random.nextInt(Dimension.values().length)];
            // Half of them begin well, so that the later parts of reading are reached too.
            StringBuilder text = new StringBuilder(
                    random.nextBoolean()
                            ? ""
                            : "1 "
                                    + dimension
                                            .units()
                                            .get(random.nextInt(
                                                    dimension.units().size()))
                                            .symbol());
            for (int piece = random.nextInt(9); piece > 0; piece--) {
                text.append(
                        random.nextInt(20) == 0
                                ? (char) random.nextInt(0x10000)
                                : pieces[random.nextInt(pieces.length)]);
            }
            try {
                Quantity quantity = Quantity.parse(text.toString(), dimension);
                assertThat(quantity.dimension()).isEqualTo(dimension);
                read++;
            } catch (QuantityException e) {
                assertThat(e.getMessage())
                        .isNotBlank()
                        .hasSizeLessThan(500)
                        .doesNotContainPattern("[\\p{Cntrl}\u2028\u2029]");
            } catch (RuntimeException e) {
                throw new AssertionError("seed " + SEED + ": \"" + text + "\"", e);
            }
        }
        assertThat(read).as("some of it has a meaning").isGreaterThan(1_000);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1",
                "9",
                " ",
                "x",
                "1 ",
                "1,",
                ",",
                "±",
                "1/",
                ".",
                "mm ",
                "( ",
                "+-",
                "e1",
                "1 1/2 ",
                "lb",
                "²",
                "\ud83d\ude97",
                "ft 1"
            })
    void aVeryLongTextIsAnsweredAtOnce(String piece) {
        String many = piece.repeat(100_000);
        // A reader that goes back over the text would take minutes; the limit is far above what a busy machine needs.
        Assertions.assertTimeout(Duration.ofSeconds(20), () -> {
            for (String text : new String[] {
                many, "1" + many, "1 mm" + many, "1 mm ± 1" + many, "1." + many + " mm", "1" + many + "mm"
            }) {
                try {
                    Quantity.parse(text, Dimension.LENGTH);
                } catch (QuantityException e) {
                    assertThat(e.getMessage()).hasSizeLessThan(500);
                }
            }
        });
    }

    @Test
    void aPlaceCanShowAnExampleOfItsOwn() {
        QuantityException without =
                catchThrowableOfType(QuantityException.class, () -> Quantity.parse("40", Dimension.LENGTH));
        assertThat(without.message("\"40 m\"")).isEqualTo("needs a unit, for example \"40 m\"");
        QuantityException comma =
                catchThrowableOfType(QuantityException.class, () -> Quantity.parse("1,5 m", Dimension.LENGTH));
        assertThat(comma.message("\"40 m\"")).isEqualTo(comma.getMessage()).contains("1.5 m");
    }
}
