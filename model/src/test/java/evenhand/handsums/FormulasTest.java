package evenhand.handsums;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Each formula of the hand sums by itself, with numbers that are worked out on paper. */
class FormulasTest {
    @Test
    void lateralLoadTransferIsTheMomentOfTheTiltedTyresOverTheTrack() {
        // 196 000 N·m/rad · 0.01 rad = 1960 N·m, over 1.4 m
        assertThat(LoadTransfer.lateralLoadTransfer(196_000, 0.01, 1.4)).isCloseTo(1400, within(1e-9));
        assertThat(LoadTransfer.lateralLoadTransfer(196_000, -0.01, 1.4)).isCloseTo(-1400, within(1e-9));
        assertThat(LoadTransfer.frontShare(1400, 600)).isCloseTo(0.7, within(1e-15));
    }

    @Test
    void sideForcesStandInBalanceAboutTheirTrails() {
        // Without trails the front carries b/L of m·ay: 1000 kg · 10 m/s² · 1.2/2.5
        assertThat(LoadTransfer.frontSideForce(1000, 10, 2.5, 1.2, 0, 0)).isCloseTo(4800, within(1e-9));
        // Forces at 1.3 − 0.05 m before and 1.2 + 0.1 m behind the centre of gravity: 1.3 of 2.55 m
        assertThat(LoadTransfer.frontSideForce(1000, 10, 2.5, 1.2, 0.05, 0.1)).isCloseTo(13_000 / 2.55, within(1e-9));
        assertThat(LoadTransfer.linkForce(4800, 80, 10)).isCloseTo(4000, within(1e-9));
    }

    @Test
    void momentsOfAnAxleAreForcesAtTheirHeights() {
        assertThat(LoadTransfer.geometricMoment(4000, 0.25)).isCloseTo(1000, within(1e-9));
        assertThat(LoadTransfer.unsprungMoment(80, 10, 0.3)).isCloseTo(240, within(1e-9));
        // Of 0.05 rad of roll the tyres take 1240/200 000 = 0.0062 rad by what goes past the springs
        assertThat(LoadTransfer.elasticMoment(40_000, 0.05, 1240, 200_000)).isCloseTo(1752, within(1e-9));
        // 4000 N at 0.5 − 0.1 m and 3000 N at 0.5 − 0.3 m
        assertThat(LoadTransfer.overturningMomentAboutRollAxis(4000, 0.1, 3000, 0.3, 0.5))
                .isCloseTo(2200, within(1e-9));
    }

    @Test
    void theRollArmReachesFromTheRollAxisToTheSprungCentreOfGravity() {
        assertThat(RollStiffness.rollArm(0.55, 0.05, 0.6, 0.3, 0.4)).isCloseTo(0.4, within(1e-15));
        assertThat(RollStiffness.rollArm(0.55, -0.05, 0.6, 0.3, 0.4)).isCloseTo(0.46, within(1e-15));
    }

    @Test
    void tyresResistRollAtHalfTheTrackLessTheWeightThatLeans() {
        assertThat(RollStiffness.tyreRollStiffness(1.4, 200_000)).isCloseTo(196_000, within(1e-9));
        // 500 kg at 0.2 m and 60 kg at 0.3 m: 118 kg·m · 9.80665 m/s²
        assertThat(RollStiffness.tyreRollStiffnessLeft(196_000, 500, 0.2, 60, 0.3))
                .isCloseTo(194_842.8153, within(1e-6));
    }

    @Test
    void suspensionAndTyresAreSpringsOneOnTopOfTheOther() {
        assertThat(RollStiffness.rollStiffnessInSeries(30_000, 60_000)).isCloseTo(20_000, within(1e-9));
    }

    @Test
    void theBodyRollsUntilSpringsAndTyresHoldItAndItsLean() {
        assertThat(RollStiffness.gravityRollMoment(1000, 0.4)).isCloseTo(3922.66, within(1e-9));
        // (3000 + 100 + 50) N·m over (46 000 − 4000) N·m/rad
        assertThat(RollStiffness.rollAngle(3000, 100, 50, 46_000, 4000)).isCloseTo(0.075, within(1e-15));
        assertThat(RollStiffness.tyreTilt(1500, 500, 200_000)).isCloseTo(0.01, within(1e-15));
    }

    @Test
    void eachTermOfTheUndersteerBudgetCountsTheFrontAgainstTheRearOrBothTogether() {
        assertThat(UndersteerBudget.ofTyres(600, 100_000, 500, 125_000)).isCloseTo(0.002, within(1e-15));
        // 650/100 000 − 450/125 000 − 0.002
        assertThat(UndersteerBudget.ofAligningTorque(650, 100_000, 450, 125_000, 0.002))
                .isCloseTo(0.0009, within(1e-15));
        // (0.05·0.08 − 0.02·0.03)/4
        assertThat(UndersteerBudget.ofCamber(0.05, 0.08, 0.02, 0.03, 4)).isCloseTo(0.00085, within(1e-15));
        // (0.04·0.06 + 0.05·0.02)/4
        assertThat(UndersteerBudget.ofRollSteer(0.04, 0.06, 0.05, 0.02, 4)).isCloseTo(0.00085, within(1e-15));
        // 1e-6·600 + 2e-6·500
        assertThat(UndersteerBudget.ofLateralForceSteer(1e-6, 600, 2e-6, 500)).isCloseTo(0.0016, within(1e-15));
        // 2e-5·0.03·600 − 1e-5·0.02·500
        assertThat(UndersteerBudget.ofAligningTorqueSteer(2e-5, 0.03, 600, -1e-5, 0.02, 500))
                .isCloseTo(0.00026, within(1e-15));
    }
}
