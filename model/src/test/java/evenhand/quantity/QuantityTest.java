package evenhand.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {
    private static final long SEED = 20_261_125L;

    private static final List<Dimension> DIMENSIONS = List.of(Dimension.values());

    private static <T> T anyOf(List<T> all, Random random) {
        return all.get(random.nextInt(all.size()));
    }

    private static String messageOf(String text, Dimension expected) {
        return catchThrowableOfType(QuantityException.class, () -> Quantity.parse(text, expected))
                .getMessage();
    }

    // Units. The constants come from their definitions by decimal arithmetic, on another route than the program's.

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            mm         | LENGTH              | 0.001
            cm         | LENGTH              | 0.01
            m          | LENGTH              | 1
            in         | LENGTH              | 0.0254
            ft         | LENGTH              | 0.3048
            kg         | MASS                | 1
            lb         | MASS                | 0.45359237
            t          | MASS                | 1000
            N          | FORCE               | 1
            kN         | FORCE               | 1000
            lbf        | FORCE               | 4.448221615260500000
            kgf        | FORCE               | 9.80665
            N/mm       | STIFFNESS           | 1000
            N/m        | STIFFNESS           | 1
            kN/m       | STIFFNESS           | 1000
            lbf/in     | STIFFNESS           | 175.126835246476377953
            kgf/mm     | STIFFNESS           | 9806.65
            N/deg      | CORNERING_STIFFNESS | 57.295779513082320877
            N/rad      | CORNERING_STIFFNESS | 1
            kN/rad     | CORNERING_STIFFNESS | 1000
            lbf/deg    | CORNERING_STIFFNESS | 254.864324893292505562
            N*m        | MOMENT              | 1
            lbf*ft     | MOMENT              | 1.355817948331400400
            N*m/deg    | ROLL_STIFFNESS      | 57.295779513082320877
            N*m/rad    | ROLL_STIFFNESS      | 1
            lbf*ft/deg | ROLL_STIFFNESS      | 77.682646227475555695
            lbf*in/deg | ROLL_STIFFNESS      | 6.473553852289629641
            deg        | ANGLE               | 0.017453292519943296
            rad        | ANGLE               | 1
            deg/g      | UNDERSTEER_GRADIENT | 0.001779740535243258
            g          | ACCELERATION        | 9.80665
            m/s^2      | ACCELERATION        | 1
            m/s        | SPEED               | 1
            mm/s       | SPEED               | 0.001
            in/s       | SPEED               | 0.0254
            km/h       | SPEED               | 0.2777777777777778
            mph        | SPEED               | 0.44704
            Hz         | FREQUENCY           | 1
            s          | TIME                | 1
            N*s/m      | DAMPING             | 1
            N*s/mm     | DAMPING             | 1000
            lbf*s/in   | DAMPING             | 175.126835246476377953
            bar        | PRESSURE            | 100000
            kPa        | PRESSURE            | 1000
            psi        | PRESSURE            | 6894.757293168361336723
            deg/kN     | FORCE_STEER         | 0.000017453292519943295769
            deg/(kN*m) | MOMENT_STEER        | 0.000017453292519943295769
            m^2        | AREA                | 1
            kg*m^2     | INERTIA             | 1
            %          | RATIO               | 0.01
            """)
    void everyUnitOfTheContractConvertsByItsDefinition(String symbol, Dimension dimension, double si)
            throws QuantityException {
        Quantity one = Quantity.parse("1 " + symbol, dimension);
        assertThat(one.si()).isCloseTo(si, within(4e-16 * si));
        assertThat(one.unit())
                .isEqualTo(Unit.of(symbol))
                .extracting(Unit::symbol)
                .isEqualTo(symbol);
        assertThat(Quantity.parse("-2.5e0" + symbol, dimension).si()).isCloseTo(-2.5 * si, within(1e-15 * si));
        assertThat(one.unit().fromSi(one.unit().toSi(3.7))).isCloseTo(3.7, within(1e-15));
        assertThat(dimension.units()).contains(one.unit());
    }

    @Test
    void theTableOfUnitsIsTheContractsAndNoOther() {
        assertThat(DIMENSIONS.stream()
                        .mapToInt(dimension -> dimension.units().size())
                        .sum())
                .as("the 50 of the test above and the plain ratio")
                .isEqualTo(51);
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void everyDimensionShowsItselfInItsOwnUnitsAndItsExamplesRead(Dimension dimension) throws QuantityException {
        assertThat(dimension.units()).contains(dimension.metric(), dimension.imperial());
        Matcher quoted = Pattern.compile("\"([^\"]+)\"").matcher(dimension.example());
        assertThat(quoted.find()).isTrue();
        double first = Quantity.parse(quoted.group(1), dimension).si();
        while (quoted.find()) {
            double second = Quantity.parse(quoted.group(1), dimension).si();
            assertThat(second)
                    .as(dimension.example())
                    .isCloseTo(first, within(dimension == Dimension.RATIO ? 1e-12 : 0.002 * first));
        }
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void theSiUnitOfAnAnswerIsOneThatReadsAsOneWhereItCanBeWritten(Dimension dimension) {
        assertThat(Unit.find(dimension.jsonUnit()).map(Unit::toSi).orElse(1.0)).isEqualTo(1.0);
        assertThat(Unit.find(dimension.jsonUnit()).map(Unit::dimension).orElse(dimension))
                .isEqualTo(dimension);
    }

    @Test
    void wholeMillimetresBecomeTheNearestDouble() throws QuantityException {
        for (int mm = 0; mm <= 6000; mm++) {
            assertThat(Quantity.parse(mm + " mm", Dimension.LENGTH).si()).isEqualTo(Double.parseDouble(mm + "e-3"));
        }
    }

    @Test
    void anUnknownSymbolIsNoUnit() {
        assertThat(Unit.find("furlong")).isEmpty();
        assertThatThrownBy(() -> Unit.of("furlong"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("furlong");
    }

    // Spellings.

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            N·m | N*m
            N⋅m | N*m
            N∙m | N*m
            Nm | N*m
            N m | N*m
            N * m | N*m
            lbf·ft | lbf*ft
            ft·lbf | lbf*ft
            lbf ft | lbf*ft
            N·m/deg | N*m/deg
            Nm/deg | N*m/deg
            N m / deg | N*m/deg
            N·m/° | N*m/deg
            Nm/rad | N*m/rad
            lbf·ft/deg | lbf*ft/deg
            lbf·in/° | lbf*in/deg
            ° | deg
            º | deg
            °/g | deg/g
            N/° | N/deg
            °/kN | deg/kN
            deg/(kN·m) | deg/(kN*m)
            deg / ( kN · m ) | deg/(kN*m)
            deg/(kNm) | deg/(kN*m)
            deg/kNm | deg/(kN*m)
            m² | m^2
            m2 | m^2
            m/s² | m/s^2
            m/s2 | m/s^2
            kg·m² | kg*m^2
            kg m² | kg*m^2
            N·s/m | N*s/m
            Ns/m | N*s/m
            N s/mm | N*s/mm
            lbf·s/in | lbf*s/in
            N/ mm | N/mm
            """)
    void aUnitIsKnownInAllItsSpellings(String spelling, String symbol) throws QuantityException {
        Unit unit = Unit.of(symbol);
        assertThat(Unit.of(spelling)).isEqualTo(unit);
        assertThat(Quantity.parse("3" + spelling + "±1" + spelling, unit.dimension())
                        .unit())
                .isEqualTo(unit);
    }

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

    // Messages.

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
            12 inch | LENGTH | has the unknown unit "inch"; a length is written in mm, cm, m, in, ft; the nearest is "in", for example "1420 mm" or "55.9 in"
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
                .hasMessageContaining("unknown unit \"km\"");
        assertThatThrownBy(() -> Quantity.parse("30000 m", Dimension.LENGTH, 1e4))
                .hasMessageContaining("at most 10000 m");
    }

    // Writing.

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

    // Whatever is typed.

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
        Random random = new Random(SEED + 2);
        int read = 0;
        for (int i = 0; i < 50_000; i++) {
            Dimension dimension = anyOf(DIMENSIONS, random);
            // Half of them begin well, so that the later parts of reading are reached too.
            StringBuilder text = new StringBuilder(
                    random.nextBoolean()
                            ? ""
                            : "1 " + anyOf(dimension.units(), random).symbol());
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
                throw new AssertionError("seed " + (SEED + 2) + ": \"" + text + "\"", e);
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
}
