package evenhand.words.balance;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Weights;
import evenhand.handsums.HandSums;
import evenhand.scenario.Demo;
import evenhand.turn.Direction;
import evenhand.turn.Limit;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnEvent;
import evenhand.turn.Wheel;
import evenhand.words.Turned;
import evenhand.words.Units;
import java.util.List;
import org.junit.jupiter.api.Test;

class BalanceWordsTest {
    @Test
    void aPositiveGradientUndersteersAndItsMirrorOversteers() {
        assertThat(new Turned().pace(0.5, 1.93, 0).words()).contains("At 0.5 g it understeers by 1.93 deg/g.");
        assertThat(new Turned().pace(0.5, -1.93, 0).words()).contains("At 0.5 g it oversteers by 1.93 deg/g.");
    }

    @Test
    void eachPaceHasItsOwnVerdict() {
        assertThat(new Turned().pace(0.2, 1, 0).pace(0.5, 1.5, 0).words().get(0))
                .isEqualTo("At 0.2 g it understeers by 1.00 deg/g, at 0.5 g by 1.50 deg/g.");
        assertThat(new Turned().pace(0.2, 1, 0).pace(0.5, -0.5, 0).words().get(0))
                .isEqualTo("At 0.2 g it understeers by 1.00 deg/g, at 0.5 g it oversteers by 0.50 deg/g.");
    }

    @Test
    void aGradientThatADriverHardlyFeelsIsNearNeutralAndStillHasItsNumber() {
        assertThat(new Turned().pace(0.2, -0.08, 0).words().get(0))
                .isEqualTo("At 0.2 g it is near neutral (−0.08 deg/g).");
    }

    @Test
    void aPaceBeyondTheLimitIsSaidToBeSo() {
        assertThat(new Turned().beyond(0.95).words()).contains("A pace of 0.95 g is beyond its limit.");
    }

    @Test
    void theEndThatGoesFirstIsSaidWithWhatBothUse() {
        assertThat(new Turned().limit(0.84, End.FRONT, 0.99, 0.88).words())
                .contains("At its limit, 0.840 g, the front gives out first, by sideslip: the front uses 99.0 % of its"
                        + " grip, the rear 88.0 % (limit balance +12.5 %).");
        assertThat(new Turned().limit(0.84, End.REAR, 0.88, 0.99).words())
                .contains("At its limit, 0.840 g, the rear gives out first, by sideslip: the rear uses 99.0 % of its"
                        + " grip, the front 88.0 % (limit balance −11.1 %).");
    }

    @Test
    void aCarThatTipsIsNotSaidToSlide() {
        Turned tips = new Turned()
                .pace(0.2, -1, 0)
                .limit(0.464, End.FRONT, 0.646, 0.6)
                .loads(100, 6000, 0, 6000);
        assertThat(tips.words())
                .contains("At its limit, 0.464 g, it tips over rather than slides: neither axle is out of grip (front"
                        + " 64.6 %, rear 60.0 %), and the left front and left rear wheels carry nothing.")
                .noneMatch(sentence -> sentence.contains("gives out first") || sentence.contains("turns round"));
        assertThat(tips.loads(500, 6000, 0, 6000).words())
                .anyMatch(sentence -> sentence.endsWith("and the left rear wheel carries nothing."));
        assertThat(tips.loads(500, 6000, 500, 6000).words())
                .anyMatch(sentence -> sentence.endsWith("and its roll of 2.32 deg can be held no longer."));
        assertThat(tips.toTheRight().loads(6000, 0, 6000, 500).words())
                .anyMatch(sentence -> sentence.endsWith("and the right front wheel carries nothing."));
    }

    @Test
    void oneEndOutOfGripOrASpinningWheelIsNoTipping() {
        assertThat(new Turned()
                        .limit(0.464, End.FRONT, 0.9, 0.6)
                        .loads(0, 6000, 0, 6000)
                        .words())
                .noneMatch(sentence -> sentence.contains("tips"));
        assertThat(new Turned()
                        .limit(0.464, End.REAR, 0.646, 0.6)
                        .spinning(Wheel.REAR_LEFT)
                        .words())
                .noneMatch(sentence -> sentence.contains("tips"));
    }

    @Test
    void aTurnTheOtherWayIsSpokenOfWhereItIsAnother() {
        Turned car = new Turned().limit(0.8, End.FRONT, 0.99, 0.97);
        assertThat(otherTurn(car, new Turned().limit(0.798, End.REAR, 0.976, 0.99)))
                .containsExactly("To the right the rear goes first, at 0.798 g.");
        assertThat(otherTurn(car, new Turned().limit(0.782, End.FRONT, 0.99, 0.97)))
                .containsExactly("To the right the front goes first, at 0.782 g.");
        assertThat(otherTurn(car, new Turned().limit(0.8, End.REAR, 0.99, 0.991).endsBy(Limit.Cause.SPIN)))
                .containsExactly("To the right the tail comes round past 0.800 g unless the driver steers against it.");
        assertThat(otherTurn(car, new Turned().limit(0.8, End.REAR, 0.66, 0.64).endsBy(Limit.Cause.CRITICAL_SPEED)))
                .containsExactly("To the right the steering wheel has to be held against the turn past 0.800 g, though"
                        + " neither end slides.");
        assertThat(otherTurn(car, new Turned().limit(0.5, End.FRONT, 0.646, 0.6)))
                .containsExactly("To the right it tips over rather than slides, at 0.500 g.");
        assertThat(otherTurn(car, new Turned().limit(0.7, End.REAR, 0.9, 0.99).spinning(Wheel.REAR_RIGHT)))
                .containsExactly("To the right the right rear wheel spins, at 0.700 g, and the rear goes first.");
        assertThat(car.butInTheOtherDirection(new TurnAnswer.NoTurn(TurnAnswer.Reason.FALLS_OVER, "it falls over"))
                        .words())
                .contains("To the right it has no answer: it falls over.");
    }

    @Test
    void aTurnTheOtherWayThatIsTheSameIsNotSpokenOf() {
        Turned car = new Turned().limit(0.8, End.FRONT, 0.99, 0.97);
        assertThat(otherTurn(car, new Turned().limit(0.793, End.FRONT, 0.99, 0.95)))
                .isEmpty();
        assertThat(otherTurn(car.toTheRight(), new Turned().limit(0.9, End.FRONT, 0.99, 0.97)))
                .containsExactly("To the left the front goes first, at 0.900 g.");
    }

    @Test
    void aTurnTheOtherWayThatSteersOtherwiseNearItsLimitIsSpokenOf() {
        Turned car = new Turned().limit(0.8, End.FRONT, 0.99, 0.97).near(2);
        assertThat(otherTurn(car, new Turned().limit(0.8, End.FRONT, 0.99, 0.97).near(-0.4)))
                .containsExactly("To the right it oversteers by 0.40 deg/g near its limit.");
        assertThat(otherTurn(car, new Turned().limit(0.8, End.FRONT, 0.99, 0.97).near(2.4)))
                .isEmpty();
        assertThat(otherTurn(car, new Turned().limit(0.8, End.FRONT, 0.99, 0.97)))
                .isEmpty();
    }

    @Test
    void aCarThatPushesOneWayAndLosesItsTailTheOtherIsWarnedOf() {
        TurnAnswer.Turns pushes = new Turned().limit(0.8, End.FRONT, 0.99, 0.97).turn();
        TurnAnswer.Turns spins = new Turned()
                .toTheRight()
                .limit(0.82, End.REAR, 0.92, 0.971)
                .endsBy(Limit.Cause.SPIN)
                .turn();
        assertThat(LimitWords.split(pushes, spins))
                .contains(
                        "Turning left the front goes first, turning right the tail comes round past 0.820 g unless the"
                                + " driver steers against it.")
                .isEqualTo(LimitWords.split(spins, pushes));
        assertThat(LimitWords.split(pushes, pushes.mirrored())).isEmpty();
        assertThat(LimitWords.split(spins, spins.mirrored())).isEmpty();
        assertThat(LimitWords.split(pushes, new TurnAnswer.NoTurn(TurnAnswer.Reason.FALLS_OVER, "it falls over")))
                .isEmpty();
    }

    @Test
    void theOtherTurnIsToldToOversteerSooner() {
        assertThat(otherTurn(slipper(Direction.LEFT), slipper(Direction.RIGHT)))
                .contains("To the right it comes to oversteer sooner, at 0.681 g: to go faster, the steering has to be"
                        + " turned back.")
                .anyMatch(said -> said.startsWith(
                        "To the right the steering wheel has to be held against the turn past 0.854 g"));
        assertThat(otherTurn(slipper(Direction.RIGHT), slipper(Direction.LEFT)))
                .noneMatch(said -> said.contains("oversteer"));
    }

    private static TurnAnswer.Turns slipper(Direction direction) {
        return (TurnAnswer.Turns)
                SteadyTurn.answer(Demo.read("slipper-coupe").setups().get(0).car(), List.of(), 40, direction);
    }

    private static List<String> otherTurn(TurnAnswer.Turns turn, TurnAnswer other) {
        Car car = Demo.read("slipper-coupe").setups().get(0).car();
        HandSums sums = ((HandSums.Found) HandSums.of(car, Weights.GRAVITY)).sums();
        return BalanceWords.of(sums, turn, other, Units.METRIC).stream()
                .filter(sentence -> sentence.startsWith("To the "))
                .toList();
    }

    private static List<String> otherTurn(Turned car, Turned other) {
        return car.butInTheOtherDirection(other.turn()).words().stream()
                .filter(sentence -> sentence.startsWith("To the "))
                .toList();
    }

    @Test
    void aConstantPushThatTheGradientHidesIsSaidWithItsSteer() {
        assertThat(new Turned().pushed(0.2, 0.1, 0.87, 0.4, 0.2).words())
                .contains("At 0.2 g it has a gradient of +0.10 deg/g.")
                .contains("At 0.2 g that gradient alone is no verdict: the front already uses 40.0 % of its grip, the"
                        + " rear only 20.0 % (the front works 2.0 times as hard).")
                .contains("At 0.2 g its steer is 0.87 deg more than the circle alone asks (4.59 against 3.72 deg), and"
                        + " the gradient at that pace would account for +0.02 deg of it.");
        assertThat(new Turned().toTheRight().pushed(0.2, 0.1, -0.87, 0.2, 0.4).words())
                .contains("At 0.2 g that gradient alone is no verdict: the rear already uses 40.0 % of its grip, the"
                        + " front only 20.0 % (the rear works 2.0 times as hard).")
                .anyMatch(sentence -> sentence.startsWith(
                        "At 0.2 g its steer is 0.87 deg less than the circle alone asks (2.85 against 3.72 deg)"));
    }

    @Test
    void steerThatTheGradientAccountsForIsNotSpokenOf() {
        assertThat(new Turned()
                        .pushed(0.5, 2, 1.2, 0.5, 0.5)
                        .pushed(0.6, 3, 0.9, 0.5, 0.5)
                        .words())
                .noneMatch(sentence -> sentence.contains("circle alone") || sentence.contains("no verdict"));
        assertThat(new Turned().pushed(0.5, 2, 1.4, 0.5, 0.5).words())
                .anyMatch(sentence -> sentence.contains("0.5 g its steer is 1.40 deg more than the circle alone"));
    }

    @Test
    void noBalanceTurnsRoundByAGradientThatHidesThePush() {
        assertThat(new Turned()
                        .pushed(0.2, -1, 0.87, 0.4, 0.2)
                        .limit(0.8, End.FRONT, 1, 0.9)
                        .words())
                .noneMatch(sentence -> sentence.contains("turns round") || sentence.contains("oversteer"));
        assertThat(new Turned()
                        .pushed(0.2, -1, 0.87, 0.5, 0.5)
                        .limit(0.8, End.FRONT, 1, 0.9)
                        .words())
                .noneMatch(sentence -> sentence.contains("turns round"));
    }

    @Test
    void countersteerAndMuchSideslipAtTheLimitAreSaid() {
        assertThat(new Turned().atTheLimit(-3.2, -14.2).words())
                .contains("At the limit of 0.800 g it needs countersteer, 3.20 deg against the turn.")
                .contains("At the limit of 0.800 g its nose points 14.20 deg into the turn from the way that it goes"
                        + " (sideslip).");
        assertThat(new Turned().toTheRight().atTheLimit(3.2, -14.2).words())
                .contains("At the limit of 0.800 g it needs countersteer, 3.20 deg against the turn.")
                .contains("At the limit of 0.800 g its nose points 14.20 deg out of the turn from the way that it goes"
                        + " (sideslip).");
        assertThat(new Turned().atTheLimit(3.2, -11.9).words())
                .noneMatch(sentence -> sentence.contains("countersteer") || sentence.contains("nose"));
    }

    @Test
    void whichEndGoesIsNotReadFromTheLimitBalance() {
        assertThat(new Turned().pace(0.2, 1, 0).limit(0.8, End.REAR, 0.99, 0.9).words())
                .contains("At its limit, 0.800 g, the rear gives out first, by sideslip: the rear uses 90.0 % of its"
                        + " grip, the front 99.0 % (limit balance +10.0 %).")
                .contains("So its balance turns round: it understeers at 0.2 g, and at the limit of 0.800 g the rear"
                        + " goes first.");
        assertThat(new Turned()
                        .limit(0.8, End.REAR, 0.99, 0.9)
                        .endsBy(Limit.Cause.SPIN)
                        .words())
                .contains("At its limit, 0.800 g, the tail comes round unless the driver steers against it: the rear"
                        + " uses 90.0 % of its grip, the front 99.0 % (limit balance +10.0 %).");
    }

    @Test
    void aTailThatComesRoundIsNoEndThatGivesOut() {
        assertThat(new Turned()
                        .limit(0.79, End.REAR, 0.92, 0.971)
                        .endsBy(Limit.Cause.SPIN)
                        .words())
                .contains("At its limit, 0.790 g, the tail comes round unless the driver steers against it: the rear"
                        + " uses 97.1 % of its grip, the front 92.0 % (limit balance −5.3 %).")
                .noneMatch(sentence -> sentence.contains("gives out first") || sentence.contains("sideslip:"));
    }

    @Test
    void pastTheCriticalSpeedNeitherEndSlidesAndTheSpeedAndTheGripInHandAreSaid() {
        Turned fast = new Turned().pace(0.2, 1, 0).limit(0.6, End.REAR, 0.66, 0.64);
        fast.endsBy(Limit.Cause.CRITICAL_SPEED);
        assertThat(fast.words())
                .contains(
                        "At its limit, 0.600 g, neither end slides, but past 36 km/h on this circle the steering wheel"
                                + " has to be held against the turn; 34 % of the front's grip and 36 % of the rear's is still"
                                + " in hand.")
                .noneMatch(sentence -> sentence.contains("tips")
                        || sentence.contains("turns round")
                        || sentence.contains("gives out first"));
        assertThat(fast.words(Units.IMPERIAL)).anyMatch(sentence -> sentence.contains("past 22 mph on this circle"));
    }

    @Test
    void aSearchThatGaveUpIsSaidToBeNoLimit() {
        assertThat(new Turned()
                        .limit(0.6, End.REAR, 0.66, 0.64)
                        .endsBy(Limit.Cause.GAVE_UP)
                        .words())
                .contains("The search gave up at 0.600 g before it met a limit; what is said up to there holds.")
                .noneMatch(sentence -> sentence.startsWith("At its limit") || sentence.contains("goes first"));
    }

    @Test
    void howItSteersNearItsLimitIsSaidWithItsPace() {
        assertThat(new Turned().near(7.1).words())
                .contains("Near its limit, at 0.720 g, it understeers by 7.10 deg/g.");
        assertThat(new Turned().near(-7.1).words())
                .contains("Near its limit, at 0.720 g, it oversteers by 7.10 deg/g.");
        assertThat(new Turned().near(0.1).words())
                .contains("Near its limit, at 0.720 g, it is near neutral (+0.10 deg/g).");
        assertThat(new Turned().words()).noneMatch(sentence -> sentence.startsWith("Near its limit"));
    }

    @Test
    void aSpinningWheelIsNamedAsTheCause() {
        assertThat(new Turned()
                        .limit(0.7, End.REAR, 0.99, 0.9)
                        .spinning(Wheel.REAR_LEFT)
                        .words())
                .contains("At its limit, 0.700 g, the left rear wheel has spent its grip on drive and spins, and the"
                        + " rear gives out first. Of the side grip that drive leaves, the rear uses 90.0 % of its"
                        + " grip, the front 99.0 % (limit balance +10.0 %).");
        assertThat(new Turned()
                        .limit(0.7, End.FRONT, 0.99, 0.9)
                        .spinning(Wheel.REAR_LEFT)
                        .words())
                .anyMatch(sentence -> sentence.contains("spins, and the front gives out first."))
                .noneMatch(sentence -> sentence.contains("tips"));
    }

    @Test
    void aCarThatPushesInABriskBendAndSpinsAtItsLimitIsSaidToDoBoth() {
        List<String> words = new Turned()
                .pace(0.2, 0.1, 0)
                .pace(0.5, 1.93, 0)
                .limit(0.79, End.REAR, 0.92, 0.971)
                .endsBy(Limit.Cause.SPIN)
                .near(0.4)
                .words();
        assertThat(words)
                .contains("At 0.2 g it is near neutral (+0.10 deg/g), at 0.5 g it understeers by 1.93 deg/g.")
                .contains("So its balance turns round: it understeers at 0.5 g, and past the limit of 0.790 g the tail"
                        + " comes round.");
        assertThat(new Turned()
                        .pace(0.5, -0.5, 0)
                        .limit(0.79, End.REAR, 0.92, 0.971)
                        .endsBy(Limit.Cause.SPIN)
                        .near(0.4)
                        .words())
                .contains("So its balance turns round: it understeers near its limit, and past the limit of 0.790 g"
                        + " the tail comes round.");
        assertThat(new Turned()
                        .pace(0.5, -0.5, 0)
                        .limit(0.79, End.REAR, 0.92, 0.971)
                        .endsBy(Limit.Cause.SPIN)
                        .near(-0.4)
                        .words())
                .noneMatch(sentence -> sentence.contains("turns round"));
    }

    @Test
    void aCarThatPushesGentlyAndLosesItsTailAtTheLimitIsToldToTurnRound() {
        assertThat(new Turned().pace(0.2, 1, 0).limit(0.8, End.REAR, 0.9, 1).words())
                .contains(
                        "So its balance turns round: it understeers at 0.2 g, and at the limit of 0.800 g the rear goes"
                                + " first.");
        assertThat(new Turned().pace(0.2, -1, 0).limit(0.8, End.FRONT, 1, 0.9).words())
                .contains(
                        "So its balance turns round: it oversteers at 0.2 g, and at the limit of 0.800 g the front goes"
                                + " first.");
        assertThat(new Turned().pace(0.2, 1, 0).limit(0.8, End.FRONT, 1, 0.9).words())
                .noneMatch(sentence -> sentence.contains("turns round"));
    }

    @Test
    void theCausesStandOnTheSideThatTheyWorkFor() {
        assertThat(new Turned().pace(0.2, 2, -0.5).words())
                .contains(
                        "At 0.2 g the understeer comes from the tyres' slip (+2.00 deg/g); against it works roll steer"
                                + " (−0.50 deg/g).");
        assertThat(new Turned().pace(0.2, -2, 0.5).words())
                .contains("At 0.2 g the oversteer comes from the tyres' slip (−2.00 deg/g); against it works roll steer"
                        + " (+0.50 deg/g).");
        assertThat(new Turned().pace(0.2, 0.8, -0.75).words())
                .contains("At 0.2 g the tyres' slip (+0.80 deg/g) and roll steer (−0.75 deg/g) all but cancel.");
    }

    @Test
    void theInsideWheelsAreThoseOfTheTurn() {
        assertThat(new Turned().pace(0.5, 1, 0).words())
                .contains("The inside wheels, left front and left rear, carry 1000 N and 3000 N at 0.5 g, 1000"
                        + " N and 3000 N at the limit of 0.800 g.");
        assertThat(new Turned().toTheRight().words())
                .contains("The inside wheels, right front and right rear, carry 2000 N and 4000 N at the limit of"
                        + " 0.800 g.");
    }

    @Test
    void loadsAreInPoundsForThoseWhoThinkInThem() {
        assertThat(new Turned().words(Units.IMPERIAL))
                .contains("The inside wheels, left front and left rear, carry 225 lbf and 674 lbf at the limit of"
                        + " 0.800 g.");
    }

    @Test
    void whatHappensOnTheWayHasItsPaceAndItsWheel() {
        assertThat(new Turned()
                        .event(0.61, TurnEvent.Kind.STOP_TOUCHED, End.REAR, Wheel.REAR_RIGHT)
                        .words())
                .contains("At 0.610 g the right rear wheel touches its bump stop.")
                .noneMatch(sentence -> sentence.startsWith("Up to the limit nothing"));
        assertThat(new Turned().words()).contains("Up to the limit nothing touches a stop, comes loose or lifts.");
    }

    @Test
    void everySentenceHasANumberWithAUnitAndEndsInAFullStop() {
        assertThat(new Turned()
                        .pace(0.2, 2, -0.5)
                        .beyond(0.9)
                        .event(0.61, TurnEvent.Kind.WHEEL_LIFTED, End.REAR, Wheel.REAR_LEFT)
                        .words())
                .allMatch(sentence -> sentence.matches(".*\\d (g|deg/g|%|N)\\b?.*\\."));
    }
}
