package evenhand.choice;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.answers.Trials;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.CatalogueTest;
import evenhand.catalogue.Entries;
import org.junit.jupiter.api.Test;

class AskedOnceTest {
    private static final Trial TRIAL = Trials.at(0.5);
    private static final Entries CAR = CatalogueTest.car();
    private static final Entries SPRINGS = Catalogue.with(
            Catalogue.with(CAR, "front.spring.rate", 70_000), "rear.spring.rate", 30_000);
    private static final Entries SPRINGS_AND_PIVOT = Catalogue.with(SPRINGS, "rear.lateralLocator.height", 0.3);

    @Test
    void theSameCarIsNotAskedAgain() {
        AskedOnce asked = new AskedOnce(TRIAL);
        assertThat(asked.of(SPRINGS).orElseThrow()).isSameAs(asked.of(SPRINGS).orElseThrow());
        assertThat(asked.of(SPRINGS))
                .isEqualTo(Catalogue.build(SPRINGS).value().map(TRIAL::ask))
                .isNotEqualTo(asked.of(CAR));
    }

    @Test
    void whatDoesNotBuildHasNoAnswer() {
        Entries weightless = Catalogue.with(CAR, "mass", -1);
        assertThat(new AskedOnce(TRIAL).of(weightless)).isEmpty();
    }

    @Test
    void comparisonsThatShareTheirCarsSayWhatEachSaysAlone() {
        AskedOnce asked = new AskedOnce(TRIAL);
        for (Entries other : new Entries[] {SPRINGS, SPRINGS_AND_PIVOT}) {
            assertThat(Comparison.each(CAR, other, asked, Progress.NONE))
                    .isEqualTo(Comparison.each(CAR, other, TRIAL, Progress.NONE));
        }
    }
}
