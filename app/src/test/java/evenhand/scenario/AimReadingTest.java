package evenhand.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import evenhand.answers.Aim;
import evenhand.answers.Criterion;
import evenhand.answers.LinkCriteria;
import evenhand.answers.LoadCriteria;
import evenhand.car.End;
import evenhand.linkage.LinkPlaces.Where;
import evenhand.quantity.InvalidValue;
import evenhand.words.AimText;
import evenhand.words.Units;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AimReadingTest {
    private static final double G = 9.80665;

    @Test
    void anAimIsAFigureABoundAValueAndAPace() {
        Aim aim = AimReading.read("understeer 0.8 deg/g at 0.5 g");
        assertThat(aim.judged().criterion()).isEqualTo(Criterion.UNDERSTEER);
        assertThat(aim.sense()).isEqualTo(Aim.Sense.EXACTLY);
        assertThat(aim.value()).isCloseTo(Math.toRadians(0.8) / G, within(1e-12));
        assertThat(aim.judged().pace().orElseThrow()).isCloseTo(0.5 * G, within(1e-12));
        Aim most = AimReading.read("roll gradient at most 5.5 deg/g at 0.5 g");
        assertThat(most.sense()).isEqualTo(Aim.Sense.AT_MOST);
        Aim limit = AimReading.read("limit at least 0.85 g");
        assertThat(limit.judged().criterion()).isEqualTo(Criterion.LIMIT);
        assertThat(limit.judged().pace()).isEmpty();
        assertThat(AimReading.read("limit balance 5 %").judged().criterion()).isEqualTo(Criterion.LIMIT_BALANCE);
        assertThat(AimReading.read("limit balance 5 %").value()).isCloseTo(0.05, within(1e-15));
        assertThat(AimReading.read("inside rear load at least 800 N at 0.5 g").value())
                .isEqualTo(800);
        assertThat(AimReading.read("sideslip −1.5 deg at 0.5 g").value())
                .isCloseTo(Math.toRadians(-1.5), within(1e-12));
    }

    @Test
    void neutralIsAnUndersteerOfNothing() {
        assertThat(AimReading.read("Neutral at 0.5 g")).isEqualTo(AimReading.read("understeer 0 deg/g at 0.5 g"));
        assertThat(AimReading.read("neutral  near the Limit"))
                .isEqualTo(AimReading.read("understeer near the limit 0 deg/g"));
        assertThatThrownBy(() -> AimReading.read("neutral at 5 kg"))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("a mass");
        assertThatThrownBy(() -> AimReading.read("neutrel at 0.5 g")).hasMessageContaining("did you mean \"neutral\"?");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "  Understeer   AT MOST 0.8 deg/g   At 0.5 g ",
                "understeer\u00a0at most\u00a00.8\u202fdeg/g at 0.5\u00a0g",
                "understeer at most 0.8 °/g at 0.50 g",
                "understeer\tat most 0.8deg/g at 0.5g"
            })
    void blanksAndCapitalsDoNotMatter(String text) {
        assertThat(AimReading.read(text)).isEqualTo(AimReading.read("understeer at most 0.8 deg/g at 0.5 g"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "understeer at most 0.8 deg/g at 0.5 g",
                "sideslip −1.5 deg at 0.3 g",
                "limit at least 0.85 g",
                "limit balance 5 %",
                "inside front load at least 812.5 N at 0.25 g",
                "rear roll centre at least 112.5 mm",
                "front roll steer in droop −3.5 %",
                "left-over joint angle in bump at most 0.5 deg",
                "bump steer −2 deg/m"
            })
    void whatIsWrittenReadsBack(String text) {
        Aim aim = AimReading.read(text);
        assertThat(AimText.write(aim, Units.METRIC)).isEqualTo(text);
        Aim imperial = AimReading.read(AimText.write(aim, Units.IMPERIAL));
        assertThat(imperial.value()).isCloseTo(aim.value(), within(1e-4 * Math.abs(aim.value())));
    }

    @Test
    void aFigureOfLinksStandsInAPlaceOfTheTravelAndOnAnAxle() {
        assertThat(AimReading.read("pinion slope 1 deg").judged().criterion()).isEqualTo(LinkCriteria.PINION_SLOPE);
        assertThat(AimReading.read("joint angle 1 deg").judged().criterion()).isEqualTo(LinkCriteria.JOINT_ANGLE);
        Aim bump = AimReading.read("Rear pinion slope  in bump at most 3 deg");
        assertThat(bump.judged().criterion().name()).isEqualTo("rear pinion slope in bump");
        assertThat(bump.judged().criterion().links().orElseThrow().where()).isEqualTo(Where.BUMP);
        assertThat(bump.judged().criterion().links().orElseThrow().axles()).containsExactly(End.REAR);
        assertThat(AimReading.read("caster 4 deg")
                        .judged()
                        .criterion()
                        .links()
                        .orElseThrow()
                        .axles())
                .containsExactly(End.FRONT, End.REAR);
        assertThat(AimReading.read("roll steer 4 %")
                        .judged()
                        .criterion()
                        .links()
                        .orElseThrow()
                        .axles())
                .containsExactly(End.REAR, End.FRONT);
        assertThat(AimReading.read("bump steer 0.5 deg/m").value()).isCloseTo(Math.toRadians(0.5), within(1e-12));
        assertThatThrownBy(() -> AimReading.read("pinion slope 1 deg at 0.5 g"))
                .hasMessageContaining("is judged at no pace; leave out \"at 0.5 g\"");
        assertThatThrownBy(() -> AimReading.read("pinion slope 10 mm")).hasMessageContaining("an angle");
        assertThatThrownBy(() -> AimReading.read("axle sidewise 10 mm"))
                .hasMessageContaining("did you mean \"axle sideways\"?");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''|begins with no known figure",
                "undersear 1 deg/g at 0.5 g|did you mean \"understeer\"?",
                "limits 0.8 g|did you mean \"limit\"?",
                "understeer|needs a value, for example \"understeer 0.8 deg/g at 0.5 g\"",
                "understeer at 0.5 g|needs a value",
                "understeer 0.8 deg/g|needs its pace",
                "limit 0.8 g at 0.5 g|is judged at no pace; leave out \"at 0.5 g\"",
                "understeer 0.8 g at 0.5 g|belongs here",
                "understeer 0.8 at 0.5 g|needs a unit",
                "understeer 0.8 deg/g at 0.5|needs a unit",
                "understeer 0.8 deg/g at 0 g|pace that is not above zero",
                "understeer 0.8 deg/g at -0.5 g|pace that is not above zero",
                "understeer 0.8 ± 0.1 deg/g at 0.5 g|takes no tolerance",
                "understeer 0,8 deg/g at 0.5 g|decimal",
                "understeer NaN deg/g at 0.5 g|is not a finite number",
                "understeer 1e999 deg/g at 0.5 g|is not a finite number"
            })
    void whatIsNoAimSaysWhatIsWrong(String text, String said) {
        assertThatThrownBy(() -> AimReading.read(text))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining(said)
                .hasMessageNotContaining("\n");
    }

    @Test
    void whatPartsCarryIsAskedByTheirOwnNames() {
        Aim pressure = AimReading.read("Pressure at springTower at most 2 MPa");
        assertThat(pressure.judged().criterion()).isEqualTo(LoadCriteria.of(LoadCriteria.What.PRESSURE, "springTower"));
        assertThat(pressure.sense()).isEqualTo(Aim.Sense.AT_MOST);
        assertThat(pressure.value()).isEqualTo(2e6);
        assertThat(AimText.write(pressure, Units.METRIC)).isEqualTo("pressure at springTower at most 2 MPa");
        assertThat(AimReading.read("force in rear.upperRod 3.1 kN").value()).isEqualTo(3100);
        Aim numbered = AimReading.read("yield used at mount 4 at least 20 %");
        assertThat(numbered.judged().criterion()).isEqualTo(LoadCriteria.of(LoadCriteria.What.YIELD_USED, "mount 4"));
        assertThat(numbered.value()).isCloseTo(0.2, within(1e-15));
        assertThat(AimReading.read("rated load used at tow eye at rear 50 %")
                        .judged()
                        .criterion())
                .isEqualTo(LoadCriteria.of(LoadCriteria.What.RATED_USED, "tow eye at rear"));
        for (String text : List.of("pressure at", "pressure at springTower", "force in rear.upperRod at most")) {
            assertThatThrownBy(() -> AimReading.read(text)).as(text).hasMessageContaining("needs a part and a value");
        }
        assertThatThrownBy(() -> AimReading.read("force in rear.upperRod 3 mm")).hasMessageContaining("a force");
        assertThatThrownBy(() -> AimReading.read("presure at springTower 2 MPa"))
                .hasMessageContaining("\"pressure at PART\"");
    }
}
