package evenhand.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.answers.Balance;
import evenhand.car.Axle;
import evenhand.car.End;
import evenhand.drawing.Item.Mark;
import evenhand.drawing.Item.Sign;
import evenhand.quantity.Unit;
import evenhand.scenario.Demo;
import evenhand.scenario.Scenario;
import evenhand.scenario.ScenarioReader;
import evenhand.scenario.ScenarioWriter;
import evenhand.scenario.Setup;
import evenhand.turn.Direction;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnEvent;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import evenhand.words.Units;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DrawingTest {
    static final Detail METRIC = Detail.usual(Units.METRIC);

    static Stance stance(Scenario scenario, int index) {
        Setup setup = scenario.setups().get(index);
        return Stance.atRest(setup.name(), index, setup.car(), setup.entries());
    }

    static TurnAnswer.Turns turn(Setup setup, Direction direction) {
        return (TurnAnswer.Turns) Balance.of(setup.car(), List.of(Unit.of("g").toSi(0.5)), 40, direction)
                .turn();
    }

    @ParameterizedTest
    @MethodSource("evenhand.scenario.Demo#names")
    void wheelsRiseByWhatTheirTyresAreRelievedOf(String demo) {
        Scenario scenario = Demo.read(demo);
        for (int i = 0; i < scenario.setups().size(); i++) {
            Setup setup = scenario.setups().get(i);
            for (TurnRow row : turn(setup, Direction.LEFT).rows()) {
                Stance stance = stance(scenario, i).turning(row);
                for (Wheel wheel : Wheel.values()) {
                    Axle axle = stance.car().axle(wheel.end());
                    double load = row.wheel(wheel).load();
                    double relieved = stance.car().staticLoad(wheel.end(), wheel.side()) - load;
                    if (load > 1) {
                        assertThat(stance.rise(wheel))
                                .isCloseTo(relieved / axle.tyre().verticalRate(), within(2e-4));
                    } else {
                        assertThat(stance.rise(wheel)).isGreaterThan(0);
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("evenhand.scenario.Demo#names")
    void aStopIsReachedWhereItsEventSaysSo(String demo) {
        Scenario scenario = Demo.read(demo);
        for (int i = 0; i < scenario.setups().size(); i++) {
            TurnAnswer.Turns turn = turn(scenario.setups().get(i), Direction.LEFT);
            for (TurnEvent event : turn.events()) {
                if (event.kind() != TurnEvent.Kind.STOP_TOUCHED || event.wheel().isEmpty()) {
                    continue;
                }
                for (TurnRow row : turn.rows()) {
                    double left = stance(scenario, i)
                            .turning(row)
                            .left(event.wheel().get())
                            .bump()
                            .orElseThrow();
                    double before = event.lateralAcceleration() - row.lateralAcceleration();
                    if (Math.abs(before) > 0.05) {
                        assertThat(left > 0).isEqualTo(before > 0);
                    }
                }
            }
        }
    }

    @Test
    void atRestTheGapsAreThoseOfTheSettledCar() {
        Scenario scenario = Demo.read("harbour-saloon");
        Stance lowered = stance(scenario, 1);
        assertThat(lowered.left(Wheel.REAR_LEFT).bump()).hasValue(0.066 - 0.030);
        assertThat(lowered.left(Wheel.REAR_RIGHT).droop().orElseThrow()).isCloseTo(0.084 + 0.030, within(1e-12));
        assertThat(RearView.of(lowered, End.REAR, METRIC, List.of()).words())
                .contains("36 mm to bump stop", "114 mm to droop stop");
    }

    @ParameterizedTest
    @MethodSource("evenhand.scenario.Demo#names")
    void marksStandWhereTheNumbersSay(String demo) {
        Scenario scenario = Demo.read(demo);
        for (int i = 0; i < scenario.setups().size(); i++) {
            Stance stance = stance(scenario, i);
            Drawing side = SideView.of(stance, METRIC, List.of());
            List<Mark> centres = side.marks().stream()
                    .filter(mark -> mark.sign() == Sign.ROLL_CENTRE)
                    .toList();
            assertThat(centres)
                    .extracting(Mark::x)
                    .containsExactly(0.0, stance.car().wheelbase());
            assertThat(centres)
                    .extracting(Mark::z)
                    .containsExactly(
                            stance.car().front().geometry().rollCentreHeight(),
                            stance.car().rear().geometry().rollCentreHeight());
            Mark cg = side.marks().get(2);
            assertThat(cg.x()).isEqualTo(stance.car().cgBehindFront());
            assertThat(cg.z()).isEqualTo(stance.car().cgHeight());
            assertThat(cg.style()).isEqualTo(stance.style());
        }
    }

    @Test
    void inALeftTurnTheBodyLeansToTheRightAndInARightTurnToTheLeft() {
        Scenario scenario = Demo.read("orchard-estate");
        Setup setup = scenario.setups().get(0);
        for (Direction direction : Direction.values()) {
            Stance leaning =
                    stance(scenario, 0).turning(turn(setup, direction).limit().row());
            Mark cg = RearView.of(leaning, End.REAR, METRIC, List.of()).marks().get(1);
            assertThat(cg.x() > 0.005).isEqualTo(direction == Direction.LEFT);
            assertThat(cg.x() < -0.005).isEqualTo(direction == Direction.RIGHT);
        }
    }

    @Test
    void weightsAreSaidInTheUnitThatIsWished() {
        Stance stance = stance(Demo.read("harbour-saloon"), 0);
        double half = 1065 * 0.538 / 2;
        assertThat(RearView.of(stance, End.FRONT, METRIC, List.of()).words())
                .contains(Math.round(half * 9.80665) + " N");
        Detail kilograms = new Detail(Units.METRIC, Unit.of("kgf"), true);
        assertThat(RearView.of(stance, End.FRONT, kilograms, List.of()).words())
                .contains(Math.round(half) + " kgf", "track 1312 mm");
        assertThat(TopView.of(stance, Detail.usual(Units.IMPERIAL)).words())
                .contains("left front " + Math.round(half / 0.45359237) + " lbf");
    }

    @Test
    void everyAdjustmentThatCanBeSeenHasItsHandle() {
        Scenario scenario = Demo.read("harbour-saloon");
        Setup lowered = scenario.setups().get(1);
        Stance stance = stance(scenario, 1);
        assertThat(SideView.of(stance, METRIC, lowered.values()).handles())
                .extracting(Handle::path)
                .containsExactlyInAnyOrder(
                        "front.rollCentre.height",
                        "rear.lateralLocator.height",
                        "cgHeight",
                        "front.lowered",
                        "rear.lowered");
        Handle pivot = RearView.of(stance, End.REAR, METRIC, lowered.values())
                .handle("rear.lateralLocator.height")
                .orElseThrow();
        assertThat(up(pivot).value()).isEqualTo(0.246); // as given; lowering took it down to where the handle is
        assertThat(pivot.z()).isCloseTo(0.216, within(1e-12));
        assertThat(pivot.words()).isEqualTo("rear lateral locator height");
        assertThat(up(pivot).usual()).isPresent();
    }

    private static Handle.Way up(Handle handle) {
        return handle.way(Handle.Direction.UP).orElseThrow();
    }

    @Test
    void aHandleTurnsAPullIntoAValue() {
        Scenario scenario = Demo.read("harbour-saloon");
        Drawing drawing = SideView.of(
                stance(scenario, 1), METRIC, scenario.setups().get(1).values());
        Handle pivot = drawing.handle("rear.lateralLocator.height").orElseThrow();
        assertThat(up(pivot).pulled(0.0204)).isCloseTo(0.266, within(1e-12)); // to the millimetre
        assertThat(pivot.pulled(1, 0)).containsOnly(Map.entry(pivot.path(), 0.246));
        assertThat(up(pivot).stepped(1)).isCloseTo(0.256, within(1e-12));
        assertThat(up(pivot).pulled(-50)).isEqualTo(up(pivot).bounds().low());
        Handle nose = drawing.handle("front.lowered").orElseThrow();
        assertThat(up(nose).pulled(-0.010)).isCloseTo(0.040, within(1e-12)); // pulled down: lower still
        assertThat(up(nose).stepped(1)).isCloseTo(0.020, within(1e-12));
    }

    @Test
    void theNearestHandleInReachIsHit() {
        Scenario scenario = Demo.read("harbour-saloon");
        Drawing drawing = SideView.of(
                stance(scenario, 1), METRIC, scenario.setups().get(1).values());
        Handle pivot = drawing.handle("rear.lateralLocator.height").orElseThrow();
        assertThat(drawing.handleAt(pivot.x() + 0.03, pivot.z() - 0.04, 0.0501)).contains(pivot);
        assertThat(drawing.handleAt(pivot.x() + 0.03, pivot.z() - 0.04, 0.0499)).isEmpty();
        assertThat(drawing.handleAt(pivot.x(), pivot.z(), 5)).contains(pivot);
        assertThat(drawing.withoutHandles().handleAt(pivot.x(), pivot.z(), 5)).isEmpty();
    }

    @Test
    void thePictureStaysWhereItIsWhileAHandleIsPulled() {
        Scenario scenario = Demo.read("harbour-saloon");
        Setup setup = scenario.setups().get(0);
        TurnRow row = turn(setup, Direction.LEFT).limit().row();
        assertThat(RearView.of(stance(scenario, 0), End.REAR, METRIC, List.of()).world())
                .isEqualTo(RearView.of(stance(scenario, 1).turning(row), End.REAR, METRIC, List.of())
                        .world());
    }

    /** The answer to a pull comes a moment later; until then the car leans as it did. */
    @Test
    void aHandleIsWhereItsValueIsThoughTheTurnIsThatOfAMomentAgo() {
        Scenario scenario = Demo.read("harbour-saloon");
        Setup before = scenario.setups().get(1);
        Scenario pulled = ScenarioReader.read(
                        scenario.file(),
                        ScenarioWriter.set(
                                scenario.text(), Optional.of(before.name()), "rear.lateralLocator.height", "271 mm"))
                .scenario()
                .orElseThrow();
        double up = 0.271 - before.car().rear().geometry().rollCentreHeight();
        assertThat(Math.abs(up)).isGreaterThan(0.01);
        TurnRow row = turn(before, Direction.LEFT).limit().row();
        Drawing then = RearView.of(stance(scenario, 1).turning(row), End.REAR, METRIC, before.values());
        Setup now = pulled.setups().get(1);
        Drawing drawing =
                RearView.of(stance(pulled, 1).turning(row, before.car().settled()), End.REAR, METRIC, now.values());
        String pivot = "rear.lateralLocator.height";
        assertThat(drawing.handle(pivot).orElseThrow().z()
                        - then.handle(pivot).orElseThrow().z())
                .isCloseTo(up, within(1e-12));
        assertThat(drawing.marks().get(0).z() - then.marks().get(0).z()).isCloseTo(up, within(1e-12));
    }

    @Test
    void twoStancesAreNamedAndInTheirOwnLook() {
        Scenario scenario = Demo.read("harbour-saloon");
        Drawing both = SideView.of(List.of(stance(scenario, 0), stance(scenario, 1)), METRIC);
        assertThat(both.words())
                .contains("As bought: rear roll centre 246 mm", "Lowered: rear roll centre 216 mm")
                .noneMatch(words -> words.endsWith(" N"));
        assertThat(both.marks()).extracting(mark -> mark.style().index()).containsExactly(0, 0, 0, 1, 1, 1);
        assertThat(both.handles()).isEmpty();
    }
}
