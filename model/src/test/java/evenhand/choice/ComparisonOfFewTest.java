package evenhand.choice;

import static evenhand.answers.Trials.judged;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.answers.Trials;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.CatalogueTest;
import evenhand.catalogue.Entries;
import java.util.List;
import org.junit.jupiter.api.Test;

class ComparisonOfFewTest {
    private static final Trial TRIAL = Trials.at(0.5);
    private static final Judged UNDERSTEER = judged(Criterion.UNDERSTEER, 0.5);
    private static final Judged LIMIT = judged(Criterion.LIMIT);
    private static final Entries CAR = CatalogueTest.car();

    private static Entries changed(int changes) {
        List<String> paths = List.of(
                "front.spring.rate",
                "rear.lateralLocator.height",
                "front.tyre.pressure",
                "rear.spring.rate",
                "mass",
                "front.track",
                "rear.unsprungMass",
                "rear.spring.base");
        Entries car = CAR;
        for (String path : paths.subList(0, changes)) {
            car = Catalogue.with(car, path, 1.1 * Catalogue.number(CAR, path).orElseThrow());
        }
        return car;
    }

    private static Comparison.Difference of(Comparison comparison, Judged judged) {
        return comparison.differences().stream()
                .filter(one -> one.judged().equals(judged))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void ofFewChangesItSaysWhatTheWholeComparisonSays() {
        Entries other = changed(Comparison.FEW);
        Comparison whole = Comparison.of(CAR, other, TRIAL);
        Comparison few = Comparison.ofFew(CAR, other, TRIAL, List.of(UNDERSTEER, LIMIT), Progress.NONE);
        assertThat(few.changes()).isEqualTo(whole.changes());
        assertThat(few.differences()).containsExactly(of(whole, UNDERSTEER), of(whole, LIMIT));
        assertThat(few.combinations()).isEqualTo(1 << Comparison.FEW);
    }

    @Test
    void ofManyTheSmallestAreTakenTogether() {
        Entries other = changed(8);
        Comparison.Difference whole = of(Comparison.of(CAR, other, TRIAL), UNDERSTEER);
        List<Change> all = Change.between(CAR, other);
        Comparison few = Comparison.ofFew(CAR, other, TRIAL, List.of(UNDERSTEER), Progress.NONE);
        Comparison.Difference difference = of(few, UNDERSTEER);
        assertThat(few.changes()).hasSize(Comparison.FEW);
        assertThat(few.combinations()).isEqualTo(1 << Comparison.FEW);
        assertThat(difference.difference()).isEqualTo(whole.difference());
        List<Double> shares = difference.shares().orElseThrow().shares();
        assertThat(shares.stream().mapToDouble(share -> share).sum()).isCloseTo(whole.difference(), within(1e-12));
        double together = 0;
        for (int i = 0; i < all.size(); i++) {
            double share = whole.shares().orElseThrow().shares().get(i);
            int kept = few.changes().indexOf(all.get(i));
            if (kept >= 0) {
                assertThat(shares.get(kept))
                        .isCloseTo(share, within(0.1 * UNDERSTEER.criterion().noticeable()));
            } else {
                together = Math.max(together, Math.abs(share));
            }
        }
        double smallestKept = shares.subList(0, Comparison.FEW - 1).stream()
                .mapToDouble(Math::abs)
                .min()
                .orElseThrow();
        // Sized by themselves, made first or undone last: that is not the order of the shares to the last digit.
        assertThat(together)
                .isLessThan(smallestKept + 0.1 * UNDERSTEER.criterion().noticeable());
        Change rest = few.changes().get(Comparison.FEW - 1);
        assertThat(rest.differences()).hasSize(8 - (Comparison.FEW - 1));
        assertThat(rest.path()).contains(", ");
    }

    @Test
    void aSetUpDoesNotDifferFromItself() {
        Comparison none = Comparison.ofFew(CAR, CAR, TRIAL, List.of(UNDERSTEER), Progress.NONE);
        assertThat(none.changes()).isEmpty();
        assertThat(of(none, UNDERSTEER).difference()).isZero();
    }
}
