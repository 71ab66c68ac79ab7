package evenhand.validation;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.car.Air;
import evenhand.car.Alignment;
import evenhand.car.Axle;
import evenhand.car.Bar;
import evenhand.car.Car;
import evenhand.car.Curve;
import evenhand.car.Drive;
import evenhand.car.LateralLocator;
import evenhand.car.Perches;
import evenhand.car.Seat;
import evenhand.car.Spring;
import evenhand.car.Steering;
import evenhand.car.Stops;
import evenhand.car.Unsprung;
import evenhand.car.Weights;
import evenhand.handsums.HandSums;
import evenhand.level.Levelling;
import evenhand.turn.Direction;
import evenhand.turn.PaceAnswer;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnEvent;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import evenhand.tyre.MagicFormula;
import evenhand.tyre.Tyre;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * What the trade knows about a front-engined car with independent front and a live axle behind. Common practice, no
 * source: only directions are tested, at 0.6 g and at the limit.
 */
class TradeFactsTest {
    private static final double PACE = 0.6 * Weights.GRAVITY;
    private static final double RADIUS = 60;
    private static final Spring.Lengths ON_THREAD = new Spring.Lengths(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.of(new Perches(0.002, Perches.Room.UNKNOWN, Perches.Room.UNKNOWN)));
    private static final Roadster STANDARD = new Roadster();

    /** An invented small car; a fact changes one field. */
    private static final class Roadster {
        double frontFraction = 0.52;
        double frontBar = 9000;
        double rearBar = 2500;
        double pivot = 0.255;
        double frontStiffness = 52_000;
        double rearStiffness = 54_000;
        double frictionRear = 1.0;
        double rearRollSteer = 0;
        double frontGap = 0.2;
        double rearGap = 0.2;
        double frontLowered = 0;
        double crossWeight = 0; // kg moved to left front and right rear

        static Roadster with(java.util.function.Consumer<Roadster> change) {
            Roadster changed = new Roadster();
            change.accept(changed);
            return changed;
        }

        Car car() {
            double mass = 1080;
            double front = mass * frontFraction / 2;
            double rear = mass * (1 - frontFraction) / 2;
            double moved = crossWeight / 2;
            Curve rubber = new Curve(List.of(new Curve.Point(0, 0), new Curve.Point(0.03, 4500)));
            return new Car(
                    new Weights.Corners(front + moved, front - moved, rear - moved, rear + moved),
                    2.33,
                    0.47,
                    Double.POSITIVE_INFINITY,
                    Steering.USUAL,
                    Air.NONE,
                    0,
                    new Axle.Independent(
                            1.29,
                            new Unsprung(72, 0.29),
                            new Axle.RollCentre(0.06, -1.6),
                            new Spring.AtWheel(46_000, 0.66, ON_THREAD),
                            Optional.of(new Bar.Measured(frontBar)),
                            stops(frontGap, rubber),
                            Optional.empty(),
                            frontLowered,
                            0.7,
                            new Alignment(Math.toRadians(-0.5), 0, 0, 0, 0),
                            tyre(frontStiffness, 1),
                            OptionalDouble.empty()),
                    new Axle.Live(
                            1.27,
                            new Unsprung(118, 0.3),
                            new LateralLocator.WattsLinkage(pivot, LateralLocator.CarriedBy.BODY),
                            new Spring.Upright(23_000, 0.96, 1, ON_THREAD),
                            Optional.of(new Bar.Measured(rearBar)),
                            stops(rearGap, rubber),
                            Optional.empty(),
                            0,
                            new Alignment(0, 0, rearRollSteer, 0, 0),
                            tyre(rearStiffness, frictionRear),
                            OptionalDouble.empty()),
                    Drive.USUAL,
                    OptionalDouble.empty(),
                    Seat.USUAL);
        }

        private static Stops stops(double gap, Curve rubber) {
            return new Stops(
                    Optional.of(new Stops.Bump(gap, rubber, OptionalDouble.empty())),
                    Optional.empty(),
                    Optional.empty());
        }

        private static Tyre tyre(double stiffness, double friction) {
            MagicFormula law = new MagicFormula(3000, stiffness, friction, 0.13, 2, 1.35, -0.6, 0.05, 1, 0.02, 0.025);
            return new Tyre(0.295, 190_000, law, 1, OptionalDouble.empty());
        }

        TurnAnswer.Turns turns(Direction direction) {
            return (TurnAnswer.Turns) SteadyTurn.answer(car().settled(), List.of(PACE), RADIUS, direction);
        }

        TurnRow row() {
            return ((PaceAnswer.InBalance) turns(Direction.LEFT).paces().get(0)).row();
        }

        double understeer() {
            return row().understeerGradient().orElseThrow();
        }

        double limitBalance() {
            return turns(Direction.LEFT).limit().limitBalance();
        }

        HandSums handSums() {
            return ((HandSums.Found) HandSums.of(car().settled(), Weights.GRAVITY)).sums();
        }
    }

    @Test
    void raisingTheWattsPivotMovesBalanceTowardsOversteer() {
        Roadster raised = Roadster.with(car -> car.pivot += 0.025);
        assertThat(raised.row().frontLoadTransferShare())
                .isLessThan(STANDARD.row().frontLoadTransferShare());
        assertThat(raised.row().rearLoadTransfer()).isGreaterThan(STANDARD.row().rearLoadTransfer());
        assertThat(raised.row().frontLoadTransfer()).isLessThan(STANDARD.row().frontLoadTransfer());
        assertThat(raised.row().roll()).isLessThan(STANDARD.row().roll());
        assertThat(raised.understeer()).isLessThan(STANDARD.understeer());
        assertThat(raised.limitBalance()).isLessThan(STANDARD.limitBalance());
    }

    @Test
    void loweringTheWattsPivotCuresALooseCar() {
        Roadster lowered = Roadster.with(car -> car.pivot -= 0.025);
        assertThat(lowered.understeer()).isGreaterThan(STANDARD.understeer());
        assertThat(lowered.limitBalance()).isGreaterThan(STANDARD.limitBalance());
        assertThat(lowered.row().wheel(Wheel.REAR_LEFT).load())
                .as("inside rear wheel")
                .isGreaterThan(STANDARD.row().wheel(Wheel.REAR_LEFT).load());
    }

    @Test
    void aPivotAnInchBelowTheAxleIsANearlyNeutralStart() {
        Roadster start = Roadster.with(car -> car.pivot = 0.295 - 0.025);
        assertThat(start.limitBalance()).isBetween(-0.1, 0.1);
    }

    @Test
    void aStifferFrontBarAddsUndersteerAndAStifferRearBarOversteer() {
        Roadster front = Roadster.with(car -> car.frontBar *= 1.2);
        assertThat(front.row().frontLoadTransferShare())
                .isGreaterThan(STANDARD.row().frontLoadTransferShare());
        assertThat(front.understeer()).isGreaterThan(STANDARD.understeer());
        assertThat(front.limitBalance()).isGreaterThan(STANDARD.limitBalance());
        Roadster rear = Roadster.with(car -> car.rearBar *= 1.2);
        assertThat(rear.row().frontLoadTransferShare())
                .isLessThan(STANDARD.row().frontLoadTransferShare());
        assertThat(rear.understeer()).isLessThan(STANDARD.understeer());
        assertThat(rear.limitBalance()).isLessThan(STANDARD.limitBalance());
    }

    @Test
    void aStifferRearBarTakesLoadOffTheInsideRearWheel() {
        Roadster stiffer = Roadster.with(car -> car.rearBar *= 1.5);
        assertThat(stiffer.row().wheel(Wheel.REAR_LEFT).load())
                .isLessThan(STANDARD.row().wheel(Wheel.REAR_LEFT).load());
    }

    @Test
    void loweringOnTheSpringsMakesTheRollArmLongerWhereTheRollCentreFallsFaster() {
        Roadster lowered = Roadster.with(car -> car.frontLowered = 0.025);
        assertThat(lowered.handSums().rollArm())
                .isGreaterThan(STANDARD.handSums().rollArm());
        assertThat(lowered.car().settled().cgHeight()).isLessThan(STANDARD.car().cgHeight());
    }

    @Test
    void aBumpRubberTouchedInFrontMovesTheBalanceToUndersteerAndOneBehindToOversteer() {
        Roadster front = Roadster.with(car -> car.frontGap = 0.02);
        assertThat(front.turns(Direction.LEFT).events())
                .anyMatch(event -> event.kind() == TurnEvent.Kind.STOP_TOUCHED
                        && event.lateralAcceleration() < PACE
                        && event.wheel().equals(Optional.of(Wheel.FRONT_RIGHT)));
        assertThat(front.row().frontLoadTransferShare())
                .isGreaterThan(STANDARD.row().frontLoadTransferShare());
        assertThat(front.limitBalance()).isGreaterThan(STANDARD.limitBalance());
        Roadster rear = Roadster.with(car -> car.rearGap = 0.01);
        assertThat(rear.row().frontLoadTransferShare())
                .isLessThan(STANDARD.row().frontLoadTransferShare());
        assertThat(rear.limitBalance()).isLessThan(STANDARD.limitBalance());
    }

    @Test
    void aSharperFrontTyreLessensUndersteer() {
        assertThat(Roadster.with(car -> car.frontStiffness *= 1.05).understeer())
                .isLessThan(STANDARD.understeer());
    }

    @Test
    void aDiagonalWeightErrorMakesLeftAndRightTurnsDifferAndItsMirrorImageTheOtherWayRound() {
        Roadster crossed = Roadster.with(car -> car.crossWeight = 0.02 * 1080);
        Roadster mirrored = Roadster.with(car -> car.crossWeight = -0.02 * 1080);
        double left = crossed.turns(Direction.LEFT).limit().lateralAcceleration();
        double right = crossed.turns(Direction.RIGHT).limit().lateralAcceleration();
        assertThat(Math.abs(left - right)).isGreaterThan(1e-3);
        assertThat(mirrored.turns(Direction.LEFT).limit().lateralAcceleration())
                .isCloseTo(right, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(mirrored.turns(Direction.RIGHT).limit().lateralAcceleration())
                .isCloseTo(left, org.assertj.core.api.Assertions.within(1e-9));
    }

    /** The procedure on scales: raise a light corner's perch or the one across from it, or let down one of the other two. */
    @Test
    void aLightCornerIsLoadedByItsOwnPerchOrTheOneAcrossOrByLettingDownTheOtherTwo() {
        Car light = Roadster.with(car -> car.crossWeight = -0.02 * 1080).car();
        Levelling level = Levelling.of(
                        light, light.settled(), new Levelling.Asked(OptionalDouble.of(0.5), Map.of(), false))
                .orElseThrow();
        for (Wheel wheel : Wheel.values()) {
            boolean lightOnes = wheel == Wheel.FRONT_LEFT || wheel == Wheel.REAR_RIGHT;
            assertThat(Math.signum(level.turns(wheel))).isEqualTo(lightOnes ? 1 : -1);
            assertThat(Math.signum(level.perTurn().get(wheel).crossWeight())).isEqualTo(lightOnes ? 1 : -1);
            assertThat(level.perTurn().get(wheel).load()).isPositive();
        }
        assertThat(level.after().leftFraction())
                .as("no perch moves what a side carries, but for what the body leans")
                .isCloseTo(level.now().leftFraction(), org.assertj.core.api.Assertions.within(2e-3));
    }

    @Test
    void aHeavierRearMovesTheBalanceTowardsOversteer() {
        Roadster rearwards = Roadster.with(car -> car.frontFraction -= 0.05 / 2.33);
        assertThat(rearwards.understeer()).isLessThan(STANDARD.understeer());
    }

    @Test
    void betterRearTyresAloneAddUndersteer() {
        Roadster wider = Roadster.with(car -> {
            car.rearStiffness *= 1.05;
            car.frictionRear *= 1.05;
        });
        assertThat(wider.understeer()).isGreaterThan(STANDARD.understeer());
        assertThat(wider.limitBalance()).isGreaterThan(STANDARD.limitBalance());
    }

    @Test
    void aRearAxleThatSteersIntoTheCornerAsTheBodyRollsAddsUndersteer() {
        Roadster links = Roadster.with(car -> car.rearRollSteer = Math.tan(Math.toRadians(5)));
        assertThat(links.understeer()).isGreaterThan(STANDARD.understeer());
        TurnRow row = links.row();
        assertThat(row.wheel(Wheel.REAR_LEFT).steer())
                .as("to the left in a left turn")
                .isPositive();
    }
}
