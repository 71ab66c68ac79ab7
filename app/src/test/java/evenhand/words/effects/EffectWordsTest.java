package evenhand.words.effects;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.answers.Answers;
import evenhand.answers.Trial;
import evenhand.choice.Effect;
import evenhand.quantity.Unit;
import evenhand.scenario.Demo;
import evenhand.scenario.Setup;
import evenhand.turn.Direction;
import evenhand.words.Units;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said of the steps that help. */
class EffectWordsTest {
    private static final double GENTLE = Unit.of("g").toSi(0.2);
    private static final double BRISK = Unit.of("g").toSi(0.5);
    private static final Trial TRIAL = new Trial(List.of(GENTLE, BRISK), 40, Direction.LEFT);
    private static final Trial RIGHT = TRIAL.turning(Direction.RIGHT);

    private static List<String> help(String demo, String name, String complaint) {
        return help(TRIAL, demo, name, complaint);
    }

    private static List<String> help(Trial trial, String demo, String name, String complaint) {
        Setup setup = Demo.read(demo).setup(name).orElseThrow();
        Answers before = trial.ask(setup.car());
        Complaint wish =
                Complaint.of(complaint, setup.car(), before, GENTLE, BRISK).orElseThrow();
        return EffectWords.help(
                wish, Effect.helping(setup.entries(), trial, before, wish.judged(), wish.up()), Units.METRIC);
    }

    @Test
    void aCarThatDoesNotPushIsNotMadeToSlideWithoutAWord() {
        assertThat(help(RIGHT, "slipper-coupe", "As the customer wished", "pushes at the limit"))
                .first()
                .asString()
                .startsWith("By the sums it does not push near the limit: it oversteers by 0.17 deg/g.")
                .contains("lets the tail go sooner");
        assertThat(help("slipper-coupe", "Short soft rubbers", "pushes at the limit"))
                .first()
                .asString()
                .startsWith("Change first: ");
        assertThat(help("slipper-coupe", "Short soft rubbers", "slides at the limit"))
                .first()
                .asString()
                .startsWith("By the sums it does not slide near the limit: it understeers by 4.70 deg/g.")
                .contains("push more");
        assertThat(help("harbour-saloon", "As bought", "slides briskly"))
                .first()
                .asString()
                .startsWith("By the sums it does not slide at 0.5 g: it understeers by 4.38 deg/g.");
    }

    @Test
    void aStepThatGoesPastNeutralIsSaidTo() {
        assertThat(help(RIGHT, "slipper-coupe", "As the customer wished", "slides at the limit"))
                .first()
                .asString()
                .startsWith("Change first: ");
        assertThat(help(RIGHT, "slipper-coupe", "As the customer wished", "slides at the limit"))
                .last()
                .asString()
                .startsWith("That whole step is past neutral near the limit: it understeers by ")
                .endsWith("Take less of it.");
        assertThat(help("slipper-coupe", "Short soft rubbers", "pushes at the limit"))
                .noneMatch(said -> said.contains("past neutral"));
    }

    @Test
    void leaningIsJudgedByTheLeanAndNotByItsSlope() {
        assertThat(help("slipper-coupe", "Tail 15 mm up", "leans").get(0)).contains("It moves the lean at 0.5 g by −");
        Setup setup = Demo.read("slipper-coupe").setup("Tail 15 mm up").orElseThrow();
        Answers before = TRIAL.ask(setup.car());
        Complaint leans =
                Complaint.of("leans", setup.car(), before, GENTLE, BRISK).orElseThrow();
        // The stop is touched a little below that pace: a stiffer spring touches it later, so the slope there grows.
        assertThat(Effect.helping(setup.entries(), TRIAL, before, leans.judged(), leans.up()))
                .extracting(effect -> effect.step().path())
                .contains("rear.spring.rate");
    }

    @Test
    void aComplaintThatIsNotOfBalanceNeedsNoCaution() {
        assertThat(help("slipper-coupe", "As the customer wished", "leans"))
                .first()
                .asString()
                .startsWith("Change first: ");
    }
}
