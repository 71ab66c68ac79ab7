package evenhand.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import evenhand.answers.Criterion;
import evenhand.answers.LoadCriteria;
import evenhand.quantity.InvalidValue;
import evenhand.ride.RoadClass;
import evenhand.turn.Direction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JudgeReadingTest {
    @Test
    void aFigureStandsAloneOrAsAnAim() {
        Judge.OfFigure alone = (Judge.OfFigure) JudgeReading.read(" Understeer at  0.5 g ");
        assertThat(alone.judged().criterion()).isEqualTo(Criterion.UNDERSTEER);
        assertThat(alone.judged().pace().orElseThrow()).isCloseTo(0.5 * 9.80665, within(1e-12));
        assertThat(alone.aim()).isEmpty();
        Judge.OfFigure near = (Judge.OfFigure) JudgeReading.read("understeer near the limit");
        assertThat(near.judged().criterion()).isEqualTo(Criterion.NEAR_UNDERSTEER);
        assertThat(near.aim()).isEmpty();
        Judge.OfFigure aim = (Judge.OfFigure) JudgeReading.read("limit at least 0.85 g");
        assertThat(aim.aim()).contains(AimReading.read("limit at least 0.85 g"));
        assertThat(((Judge.OfFigure) JudgeReading.read("neutral near the limit")).aim())
                .contains(AimReading.read("understeer near the limit 0 deg/g"));
        assertThat(((Judge.OfFigure) JudgeReading.read("Front first")).judged().criterion())
                .isEqualTo(Criterion.FRONT_FIRST);
        assertThat(((Judge.OfFigure) JudgeReading.read("pressure at springTower at most 2 MPa"))
                        .judged()
                        .criterion())
                .isEqualTo(LoadCriteria.of(LoadCriteria.What.PRESSURE, "springTower"));
    }

    @ParameterizedTest
    @CsvSource({"turning left, LEFT", "Right turn, RIGHT", "left turns, LEFT", "turning Right, RIGHT"})
    void aTurnIsOneWayRound(String text, Direction direction) {
        assertThat(JudgeReading.read(text)).isEqualTo(new Judge.Turning(direction));
    }

    @Test
    void aRoadAndAnEventHaveTheirSpeeds() {
        Judge.OnRoad road = (Judge.OnRoad) JudgeReading.read("road c at 36 km/h");
        assertThat(road.road()).isEqualTo(RoadClass.C);
        assertThat(road.speed()).isCloseTo(10, within(1e-12));
        assertThat(((Judge.OnRoad) JudgeReading.read("road B")).speed()).isCloseTo(80 / 3.6, within(1e-12));
        Judge.Over hump = (Judge.Over) JudgeReading.read("hump 80 mm by 3.7 m at 18 km/h");
        assertThat(hump.event()).isEqualTo("hump 80 mm by 3.7 m");
        assertThat(hump.speed()).isCloseTo(5, within(1e-12));
        assertThat(((Judge.Over) JudgeReading.read("kerb 60 mm")).speed()).isCloseTo(50 / 3.6, within(1e-12));
    }

    @Test
    void whatIsNoneOfThemIsTheNameOfALoadCase() {
        assertThat(JudgeReading.read(" Kerb side, four up ")).isEqualTo(new Judge.Aboard("Kerb side, four up"));
        assertThat(JudgeReading.read("Road trip")).isEqualTo(new Judge.Aboard("Road trip"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "understeer",
                "neutral",
                "road J",
                "road C at 0 km/h",
                "hump 80 mm",
                "limit at 0.5 g",
                "force in x"
            })
    void whatBeginsAsAJudgeAndIsNoneIsRefused(String text) {
        assertThatThrownBy(() -> JudgeReading.read(text)).isInstanceOf(InvalidValue.class);
    }
}
