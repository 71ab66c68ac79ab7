package evenhand.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Units. The constants come from their definitions by decimal arithmetic, on another route than the program's. */
class UnitTest {
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
            deg/m      | TRAVEL_STEER        | 0.017453292519943296
            m^2        | AREA                | 1
            mm^2       | AREA                | 1e-6
            MPa        | PRESSURE            | 1000000
            bar/mm     | PRESSURE_PER_TRAVEL | 100000000
            rpm        | ROTATION            | 0.104719755119659774615
            deg/s      | ROTATION            | 0.017453292519943295769
            kg*m^2     | INERTIA             | 1
            %          | RATIO               | 0.01
            km         | DISTANCE            | 1000
            mi         | DISTANCE            | 1609.344
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
        assertThat(Arrays.stream(Dimension.values())
                        .mapToInt(dimension -> dimension.units().size())
                        .sum())
                .as("the 58 of the test above and the plain ratio")
                .isEqualTo(59);
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
        // a way that a car has run is a length to whoever reads an answer
        assertThat(Unit.find(dimension.jsonUnit()).map(Unit::dimension).orElse(dimension))
                .isEqualTo(dimension == Dimension.DISTANCE ? Dimension.LENGTH : dimension);
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
}
