package evenhand.words.lowering;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.advice.Refused;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.answers.Ways;
import evenhand.car.Car;
import evenhand.lowering.LoweringStudy;
import evenhand.lowering.Need;
import evenhand.scenario.Demo;
import evenhand.words.Units;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Heights that work, as they are said. */
class LowestWordsTest {
    @Test
    void aHeightIsNeverSaidLowerThanItWorks() {
        assertThat(LowestWords.down(0.01957, Units.METRIC)).isEqualTo("19.5 mm down");
        assertThat(LowestWords.down(-0.01501, Units.METRIC)).isEqualTo("15.1 mm up");
        assertThat(LowestWords.down(0.01957, Units.IMPERIAL)).isEqualTo("0.77 in down");
    }

    @Test
    void aWholeMillimetreStaysOne() {
        assertThat(LowestWords.down(0.028, Units.METRIC)).isEqualTo("28 mm down");
        assertThat(LowestWords.down(0.028 - 1e-15, Units.METRIC)).isEqualTo("28 mm down");
        assertThat(LowestWords.down(-0.014, Units.METRIC)).isEqualTo("14 mm up");
    }

    @Test
    void whatMissesItsBoundNeverPrintsLikeIt() {
        Need stop = Need.ALL.stream()
                .filter(need -> need.key().equals("firstStop"))
                .findFirst()
                .orElseThrow();
        assertThat(LowestWords.value(stop, stop.bound(), Units.METRIC)).isEqualTo("0.50 g");
        assertThat(LowestWords.missed(stop, 0.42 * 9.80665, Units.METRIC)).isEqualTo("0.42 g");
        assertThat(LowestWords.missed(stop, 0.4972 * 9.80665, Units.METRIC)).isEqualTo("0.497 g");
        assertThat(LowestWords.missed(stop, 0.49984 * 9.80665, Units.METRIC)).isEqualTo("0.4998 g");
    }

    @Test
    void whichEndGoesFirstIsANeedWithoutANumber() {
        assertThat(LowestWords.bound(Need.FRONT_FIRST, Units.METRIC)).isEqualTo("the front");
        assertThat(LowestWords.value(Need.FRONT_FIRST, 1, Units.METRIC)).isEqualTo("the front");
        assertThat(LowestWords.value(Need.FRONT_FIRST, 0, Units.IMPERIAL)).isEqualTo("not the front");
        Car saloon =
                Demo.read("harbour-saloon").setup("As bought").orElseThrow().car();
        LoweringStudy study = LoweringStudy.of(
                saloon,
                0,
                0.06,
                0.06,
                OptionalDouble.empty(),
                new Trial(Trial.USUAL_PACES, List.of(15.0, 60.0), Ways.BOTH),
                Progress.NONE);
        List<LoweringStudy.Ending> onlyThat = study.ends().stream()
                .map(end -> end.need().equals(Need.FRONT_FIRST)
                        ? end
                        : new LoweringStudy.Ending(end.need(), OptionalDouble.empty(), false))
                .toList();
        assertThat(LowestWords.of(
                        new LoweringStudy(study.rows(), onlyThat, study.works(), false, Optional.empty(), List.of()),
                        Units.METRIC))
                .matches(
                        "The lowest that works is 5\\d(\\.\\d)? mm down\\. Any lower, and the tail leads at the limit\\.");
    }

    private static Need need(String key) {
        return Need.ALL.stream()
                .filter(need -> need.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static String missed(Need need, OptionalDouble value, Units units) {
        return LowestWords.missed(new Refused.Missed(need, value), units);
    }

    @Test
    void whatACarWouldNotHaveIsSaidWithWhatIsWanted() {
        assertThat(missed(need("frontBumpTravelToStop"), OptionalDouble.of(0.018), Units.METRIC))
                .isEqualTo("the front bump travel to the stop would be 18 mm, and at least 25 mm is wanted");
        assertThat(missed(need("frontBumpTravelToStop"), OptionalDouble.of(0.018), Units.IMPERIAL))
                .isEqualTo("the front bump travel to the stop would be 0.71 in, and at least 0.98 in is wanted");
        assertThat(missed(need("rearFrequency"), OptionalDouble.of(2.31), Units.METRIC))
                .isEqualTo("the rear frequency on its springs would be 2.31 Hz, and at most 2.20 Hz is wanted");
        assertThat(missed(Need.FRONT_FIRST, OptionalDouble.empty(), Units.METRIC))
                .isEqualTo("the tail would go first at the limit");
        assertThat(missed(Need.ANSWER, OptionalDouble.empty(), Units.METRIC))
                .isEqualTo("the sums cannot tell what it does");
    }

    /** Just short of its bound a value has as many more digits as tell them apart, three at the most. */
    @Test
    void whatWouldMissItsBoundByALittleNeverPrintsLikeIt() {
        Need travel = need("frontBumpTravelToStop");
        assertThat(LowestWords.missed(travel, 0.0249, Units.METRIC)).isEqualTo("24.9 mm");
        assertThat(LowestWords.missed(travel, 0.02444, Units.METRIC)).isEqualTo("24 mm");
        assertThat(LowestWords.missed(travel, 0.02496, Units.METRIC)).isEqualTo("24.96 mm");
        assertThat(LowestWords.missed(travel, 0.024996, Units.METRIC)).isEqualTo("24.996 mm");
        assertThat(LowestWords.missed(travel, 0.0249996, Units.METRIC)).isEqualTo("25.000 mm");
        assertThat(LowestWords.missed(need("rearFrequency"), 2.204, Units.METRIC))
                .isEqualTo("2.204 Hz");
        assertThat(LowestWords.missed(need("rearFrequency"), 2.206, Units.METRIC))
                .isEqualTo("2.21 Hz");
    }
}
