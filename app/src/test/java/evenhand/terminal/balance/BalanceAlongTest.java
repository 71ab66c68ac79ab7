package evenhand.terminal.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import evenhand.terminal.Run;
import evenhand.terminal.asked.Status;
import org.junit.jupiter.api.Test;

/** {@code balance --along}: lifting off, pressing on and braking in the bend. */
class BalanceAlongTest {
    private static final String[] HARBOUR = {
        "balance", "../scenarios/harbour-saloon.json", "--setup", "As bought", "--pace", "0.4 g"
    };

    private static Run run(String... more) {
        String[] all = java.util.Arrays.copyOf(HARBOUR, HARBOUR.length + more.length);
        System.arraycopy(more, 0, all, HARBOUR.length, more.length);
        return Run.of(all);
    }

    private static JsonNode json(String... more) throws JsonProcessingException {
        String[] all = java.util.Arrays.copyOf(more, more.length + 1);
        all[more.length] = "--json";
        return JsonMapper.builder().build().readTree(run(all).out());
    }

    @Test
    void liftingOffIsToldAgainstTheSteadyTurn() throws JsonProcessingException {
        JsonNode lifted = json("--along", "-0.2 g", "--turn", "right");
        JsonNode steady = json("--turn", "right");
        assertThat(lifted.get("along_g").doubleValue()).isEqualTo(-0.2);
        assertThat(lifted.get("by").textValue()).isEqualTo("engine");
        JsonNode pace = lifted.at("/setups/0/paces/0");
        double more = pace.get("steer_deg").doubleValue()
                - steady.at("/setups/0/paces/0/steer_deg").doubleValue();
        assertThat(pace.get("liftOffSteer_deg").doubleValue()).isCloseTo(more, within(1e-9));
        // To the right, steer is below zero: more of it, upwards, is less into the bend.
        assertThat(more).isPositive();
        assertThat(pace.get("liftOff").textValue()).isEqualTo("tightens");
        assertThat(pace.get("alongAcceleration_g").doubleValue()).isEqualTo(-0.2);
        assertThat(pace.get("brakeForce_N").doubleValue()).isZero();
        assertThat(pace.get("driveForce_N").doubleValue()).isNegative();
        assertThat(lifted.at("/setups/0/turn/10/alongAcceleration_g").doubleValue())
                .isEqualTo(-0.2);
        assertThat(lifted.at("/setups/0/words").textValue())
                .contains("it tightens its line: it needs 0.50 deg less steer")
                .contains("closed course");
    }

    @Test
    void powerRunsWide() throws JsonProcessingException {
        JsonNode pressed = json("--along", "0.15 g", "--turn", "left");
        JsonNode pace = pressed.at("/setups/0/paces/0");
        assertThat(pace.get("liftOff").textValue()).isEqualTo("runs wide");
        assertThat(pace.get("liftOffSteer_deg").doubleValue()).isPositive();
    }

    @Test
    void brakesDoItWithoutTheEngine() throws JsonProcessingException {
        JsonNode braked = json("--along", "-0.3 g", "--brakes", "--turn", "left");
        assertThat(braked.get("by").textValue()).isEqualTo("brakes");
        JsonNode pace = braked.at("/setups/0/paces/0");
        assertThat(pace.get("driveForce_N").doubleValue()).isZero();
        assertThat(pace.get("brakeForce_N").doubleValue()).isBetween(2000.0, 4000.0);
    }

    @Test
    void aSteadyTurnHasNothingOfIt() throws JsonProcessingException {
        JsonNode steady = json();
        assertThat(steady.has("along_g")).isFalse();
        assertThat(steady.at("/setups/0/paces/0").has("liftOff")).isFalse();
        assertThat(steady.at("/setups/0/paces/0").has("brakeForce_N")).isFalse();
        assertThat(run("--csv").out().lines().findFirst().orElseThrow()).doesNotContain("brakeForce");
        // Asked for no change, the figures are those of the steady turn to the last digit.
        JsonNode still = json("--along", "0 g");
        assertThat(still.at("/setups/0/paces")).isEqualTo(steady.at("/setups/0/paces"));
    }

    @Test
    void itsRowsSayWhatChangesTheSpeed() {
        assertThat(run("--along", "-0.3 g", "--brakes", "--csv")
                        .out()
                        .lines()
                        .findFirst()
                        .orElseThrow())
                .contains("alongAcceleration_g,brakeForce_N");
    }

    @Test
    void thePageHasALineForEachSetUp() {
        Run run = Run.of("balance", "../scenarios/harbour-saloon.json", "--along", "-0.2 g");
        assertThat(run.out())
                .contains("Lifting off (slowed 0.20 g by the driven axle)")
                .containsPattern(
                        "(?m)^As bought +−0\\.28 +−0\\.21 +−0\\.97 +−0\\.71 +0\\.77 → 0\\.81 +0\\.78 → 0\\.81$")
                .doesNotContain("How sure");
    }

    @Test
    void whereCoastingSlowsMoreItSaysSo() {
        Run run = run("--along", "-0.01 g", "--brakes");
        assertThat(run.status()).isEqualTo(Status.NO_ANSWER);
        assertThat(run.out()).contains("coasting alone slows it by 0.01 g");
    }

    @Test
    void mistakesAreSaidInOneLine() {
        assertThat(run("--brakes").err()).contains("--brakes: say how hard with --along");
        assertThat(run("--along", "0.1 g", "--brakes").err()).contains("brakes only slow");
        assertThat(run("--along", "fast").err()).contains("--along \"fast\"").contains("\"-0.2 g\"");
        assertThat(run("--along", "5 g").err()).contains("must lie between \"-2 g\" and \"2 g\"");
        assertThat(run("--along", "5 g").status()).isEqualTo(Status.WRONG);
    }
}
