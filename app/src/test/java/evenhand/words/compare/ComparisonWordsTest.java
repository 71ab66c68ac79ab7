package evenhand.words.compare;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.answers.Criterion;
import evenhand.answers.Trial;
import evenhand.choice.Change;
import evenhand.choice.Comparison;
import evenhand.quantity.Unit;
import evenhand.scenario.Demo;
import evenhand.scenario.Scenario;
import evenhand.turn.Direction;
import evenhand.words.ChangeWords;
import evenhand.words.Units;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a driver notices of a comparison. */
class ComparisonWordsTest {
    private static final Trial TRIAL =
            new Trial(List.of(Unit.of("g").toSi(0.2), Unit.of("g").toSi(0.5)), 40, Direction.LEFT);

    private static List<String> noticed(String demo, String from, String to, Optional<ComparisonWords.Lean> lean) {
        return ComparisonWords.noticed(comparison(demo, from, to), lean, Units.METRIC);
    }

    private static Comparison comparison(String demo, String from, String to) {
        Scenario scenario = Demo.read(demo);
        return Comparison.of(
                scenario.setup(from).orElseThrow().entries(),
                scenario.setup(to).orElseThrow().entries(),
                TRIAL);
    }

    private static Optional<ComparisonWords.Lean> lean(double before, double now) {
        Unit deg = Unit.of("deg");
        return Optional.of(new ComparisonWords.Lean(deg.toSi(before), deg.toSi(now)));
    }

    @Test
    void eachSentenceTurnsRoundWithItsNumber() {
        List<String> forth = noticed("harbour-saloon", "As bought", "Pivot middle, rear bar added", lean(3.3, 2.8));
        List<String> back = noticed("harbour-saloon", "Pivot middle, rear bar added", "As bought", lean(2.8, 3.3));
        assertThat(forth)
                .anySatisfy(one -> assertThat(one).contains("understeers less, by 1.18 deg/g (4.38 to 3.20 deg/g)"))
                .anySatisfy(
                        one -> assertThat(one).contains("leans less (3.3 deg to 2.8 deg): by the front spring rate"))
                .anySatisfy(one -> assertThat(one).contains("corners faster"))
                .anySatisfy(one -> assertThat(one)
                        .contains("Near the limit it understeers less")
                        .contains("by the rear bar roll stiffness first")
                        .contains("against it works the front spring rate"));
        assertThat(back)
                .hasSameSizeAs(forth)
                .anySatisfy(one -> assertThat(one).contains("understeers more, by 1.18 deg/g (3.20 to 4.38 deg/g)"))
                .anySatisfy(
                        one -> assertThat(one).contains("leans more (2.8 deg to 3.3 deg): by the front spring rate"))
                .anySatisfy(one -> assertThat(one).contains("corners slower"))
                .anySatisfy(one -> assertThat(one)
                        .contains("Near the limit it understeers more")
                        .contains("by the rear bar roll stiffness first")
                        .contains("against it works the front spring rate"));
    }

    @Test
    void whoMakesTheLeanGrowLessIsNotNamedWhereItLeansMore() {
        assertThat(noticed("harbour-saloon", "As bought", "Pivot middle, rear bar added", lean(2.8, 3.3)))
                .contains("At 0.5 g the body leans more (2.8 deg to 3.3 deg).");
        assertThat(noticed("harbour-saloon", "As bought", "Pivot middle, rear bar added", lean(3.0, 3.0)))
                .contains("At 0.5 g the body leans as before, 3.0 deg.");
        assertThat(noticed("harbour-saloon", "As bought", "Pivot middle, rear bar added", Optional.empty()))
                .noneMatch(one -> one.contains("leans"));
    }

    @Test
    void whatStaysIsToldApartFromWhatChangesAndTheSentencesAreTheSame() {
        Comparison comparison = comparison("harbour-saloon", "As bought", "Pivot middle, rear bar added");
        List<ComparisonWords.Told> told = ComparisonWords.told(comparison, Units.METRIC);
        assertThat(told.stream().map(ComparisonWords.Told::sentence))
                .isEqualTo(ComparisonWords.of(comparison, Units.METRIC));
        for (ComparisonWords.Told one : told) {
            assertThat(one.stays()).as(one.sentence()).isEqualTo(one.sentence().contains(" stays as it is, "));
        }
    }

    @Test
    void whereThereIsRoomForAFewTheOneNearTheLimitIsReadFirst() {
        Comparison comparison = comparison("harbour-saloon", "As bought", "Pivot middle, rear bar added");
        List<ComparisonWords.Told> told = ComparisonWords.told(comparison, Units.METRIC);
        List<ComparisonWords.Told> first = ComparisonWords.Told.byWeight(told);
        assertThat(first).containsExactlyInAnyOrderElementsOf(told);
        assertThat(first.get(0).of().orElseThrow().criterion()).isEqualTo(Criterion.NEAR_UNDERSTEER);
        assertThat(first.get(0).sentence()).startsWith("Near the limit it ");
        assertThat(told.get(0).of().orElseThrow().criterion()).isEqualTo(Criterion.UNDERSTEER);
        List<Boolean> stays = first.subList(1, first.size()).stream()
                .map(ComparisonWords.Told::stays)
                .toList();
        assertThat(stays).isSorted();
    }

    private static List<String> said(String demo, String from, String to) {
        return ComparisonWords.of(comparison(demo, from, to), Units.METRIC);
    }

    @Test
    void aSlopeIsNotCalledALean() {
        assertThat(said("bakery-front-drive", "As delivered", "Let down on perches"))
                .anyMatch(one -> one.startsWith("At 0.5 g each further g adds less lean, by 1.41 deg/g (7.33 to 5.91"))
                .noneMatch(one -> one.contains("rolls"));
        assertThat(said("bakery-front-drive", "Let down on perches", "As delivered"))
                .anyMatch(one -> one.startsWith("At 0.5 g each further g adds more lean, by 1.41 deg/g (5.91 to 7.33"));
    }

    @Test
    void numbersThatLookTheSameAreNotCalledDifferent() {
        assertThat(said("tinkers-lane-roadster", "Middle hole", "Stiffest hole"))
                .contains("At 0.2 g its understeer gradient stays as it is, 1.05 deg/g.")
                .noneMatch(one -> one.contains("1.05 to 1.05"));
    }

    @Test
    void aLowerBodyIsLetDownAndAHigherOneRaised() {
        assertThat(said("bakery-front-drive", "As delivered", "Let down on perches"))
                .anyMatch(one -> one.contains("because the rear is let down by 25 mm ("));
        assertThat(said("slipper-coupe", "As the customer wished", "Tail 15 mm up"))
                .anyMatch(one -> one.contains("because the rear is raised by 15 mm."));
    }

    @Test
    void cornerWeightsAreShiftedTogether() {
        Comparison comparison = comparison("quarry-special", "Tight differential", "Set for the shaft, no rear bar");
        assertThat(comparison.changes())
                .extracting(Change::path)
                .containsExactly("cornerWeights", "rear.bar.rollStiffness");
        assertThat(ChangeWords.fromTo(comparison.changes().get(0)))
                .isEqualTo(
                        "frontLeft 348 kg; frontRight 315 kg; rearLeft 281 kg; rearRight 306 kg → frontLeft 341.5 kg;"
                                + " frontRight 321.5 kg; rearLeft 287.5 kg; rearRight 299.5 kg");
        assertThat(ComparisonWords.of(comparison, Units.METRIC))
                .anyMatch(one ->
                        one.startsWith("At 0.5 g it understeers more") && one.contains("then the corner weights (+"));
    }

    @Test
    void whatNobodyFeelsIsNamedOnceAndWithoutCauses() {
        assertThat(noticed(
                        "slipper-coupe", "As the customer wished", "Stiffer rear springs, soft rubbers", lean(3, 2.8)))
                .contains("Hardly changed: limit.")
                .noneMatch(one -> one.contains("corners slower"));
    }
}
