package evenhand.words;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.car.End;
import evenhand.turn.TurnEvent;
import evenhand.turn.Wheel;
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
    void theEndThatGoesFirstTurnsRoundWithTheGripUsed() {
        assertThat(BalanceWords.limit(
                        new Turned().limit(0.87, End.FRONT, 0.99, 0.88).turn().limit()))
                .isEqualTo(
                        "At its limit, 0.87 g, the front gives out first, by sideslip: it uses 99 % of its grip and the"
                                + " rear 88 %, so the rear has 12 % in hand (limit balance +12.5 %).");
        assertThat(BalanceWords.limit(
                        new Turned().limit(0.87, End.REAR, 0.88, 0.99).turn().limit()))
                .isEqualTo(
                        "At its limit, 0.87 g, the rear gives out first, by sideslip: it uses 99 % of its grip and the"
                                + " front 88 %, so the front has 12 % in hand (limit balance −11.1 %).");
    }

    @Test
    void twoEndsThatAreSpentTogetherAreNearNeutral() {
        assertThat(BalanceWords.limit(
                        new Turned().limit(0.87, End.REAR, 0.993, 0.991).turn().limit()))
                .contains("which is near neutral (limit balance +0.2 %)");
    }

    @Test
    void whereFirstAxleAndGripUsedDisagreeTheSentenceSaysSo() {
        assertThat(BalanceWords.limit(
                        new Turned().limit(0.8, End.REAR, 0.99, 0.9).turn().limit()))
                .contains("the rear gives out first")
                .contains("the front has less in hand (limit balance +10.0 %)")
                .contains("the two measures disagree");
    }

    @Test
    void aSpinningWheelIsNamedAsTheCause() {
        assertThat(BalanceWords.limit(new Turned()
                        .limit(0.7, End.REAR, 0.99, 0.9)
                        .spinning(Wheel.REAR_LEFT)
                        .turn()
                        .limit()))
                .startsWith(
                        "At its limit, 0.7 g, the left rear wheel has spent its grip on drive and spins, so the rear"
                                + " gives out first.")
                .contains("the two measures disagree");
        assertThat(BalanceWords.limit(new Turned()
                        .limit(0.7, End.FRONT, 0.99, 0.9)
                        .spinning(Wheel.REAR_LEFT)
                        .turn()
                        .limit()))
                .contains("spins, while the front gives out first.")
                .doesNotContain("disagree");
    }

    @Test
    void aCarThatPushesGentlyAndLosesItsTailAtTheLimitIsToldToTurnRound() {
        assertThat(new Turned().pace(0.2, 1, 0).limit(0.8, End.REAR, 0.9, 1).words())
                .contains("So its balance turns round: it understeers at 0.2 g, and at the limit of 0.8 g the rear goes"
                        + " first.");
        assertThat(new Turned().pace(0.2, -1, 0).limit(0.8, End.FRONT, 1, 0.9).words())
                .contains("So its balance turns round: it oversteers at 0.2 g, and at the limit of 0.8 g the front goes"
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
                .contains("The inside wheels, left front and left rear, still carry 1000 N and 3000 N at 0.5 g, 1000"
                        + " N and 3000 N at the limit of 0.8 g.");
        assertThat(new Turned().toTheRight().words())
                .contains("The inside wheels, right front and right rear, still carry 2000 N and 4000 N at the limit of"
                        + " 0.8 g.");
    }

    @Test
    void loadsAreInPoundsForThoseWhoThinkInThem() {
        assertThat(new Turned().words(Units.IMPERIAL))
                .contains("The inside wheels, left front and left rear, still carry 225 lbf and 674 lbf at the limit of"
                        + " 0.8 g.");
    }

    @Test
    void whatHappensOnTheWayHasItsPaceAndItsWheel() {
        assertThat(new Turned()
                        .event(0.61, TurnEvent.Kind.STOP_TOUCHED, End.REAR, Wheel.REAR_RIGHT)
                        .words())
                .contains("At 0.61 g the right rear wheel touches its bump stop.")
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
