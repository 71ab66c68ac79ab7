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
import evenhand.catalogue.Entry;
import evenhand.quantity.Quantity;
import evenhand.quantity.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

    private static Entries with(Entries car, Map<String, Double> values) {
        Entries changed = car;
        for (Map.Entry<String, Double> value : values.entrySet()) {
            changed = Catalogue.with(changed, value.getKey(), value.getValue());
        }
        return changed;
    }

    private static double at(Judged judged, Entries car) {
        return judged.si(TRIAL.ask(Catalogue.build(car).value().orElseThrow())).orElseThrow();
    }

    /** A game of two: each share is the mean of making the change first and making it last. */
    @Test
    void ofTwoChangesEachShareIsTheMeanOfFirstAndLast() {
        String base = "rear.spring.base";
        String rate = "rear.spring.rate";
        double none = at(UNDERSTEER, CAR);
        double wide = at(UNDERSTEER, with(CAR, Map.of(base, 1.2)));
        double stiff = at(UNDERSTEER, with(CAR, Map.of(rate, 40_000.0)));
        Entries other = with(CAR, Map.of(base, 1.2, rate, 40_000.0));
        double both = at(UNDERSTEER, other);
        Comparison.Difference difference = of(Comparison.of(CAR, other, TRIAL), UNDERSTEER);
        List<Change> changes = Comparison.of(CAR, other, TRIAL).changes();
        double shareOfBase = (wide - none + both - stiff) / 2;
        assertThat(changes).extracting(Change::path).containsExactlyInAnyOrder(base, rate);
        int index = changes.get(0).path().equals(base) ? 0 : 1;
        Shapley shares = difference.shares().orElseThrow();
        assertThat(shares.shares().get(index)).isCloseTo(shareOfBase, within(1e-12));
        assertThat(shares.shares().get(1 - index)).isCloseTo(both - none - shareOfBase, within(1e-12));
        assertThat(shares.orders()).isEqualTo(2);
    }

    /** Springs of a beam close together hold no roll: their rate works only once they stand wide, and all along before they do not. */
    @Test
    void aChangeThatWorksOnlyBesideAnotherIsKeptMadeFirstOrLast() {
        Entries close = with(CAR, Map.of("rear.spring.base", 0.05));
        Entries wide = with(
                CAR,
                Map.of(
                        "rear.spring.base", 1.0,
                        "rear.spring.rate", 45_000.0,
                        "front.spring.rate", 60_500.0,
                        "rear.lateralLocator.height", 0.2545,
                        "mass", 1_101.0,
                        "front.track", 1.421));
        for (List<Entries> pair : List.of(List.of(close, wide), List.of(wide, close))) {
            Comparison few = Comparison.ofFew(pair.get(0), pair.get(1), TRIAL, List.of(UNDERSTEER), Progress.NONE);
            assertThat(few.changes()).hasSize(Comparison.FEW);
            assertThat(few.changes().subList(0, Comparison.FEW - 1))
                    .extracting(Change::path)
                    .contains("rear.spring.base", "rear.spring.rate");
        }
    }

    private static List<String> kept(List<Judged> figures, Map<String, Double> times) {
        Entries other = CAR;
        for (Map.Entry<String, Double> one : times.entrySet()) {
            other = Catalogue.with(other, one.getKey(), one.getValue() * number(one.getKey()));
        }
        Comparison few = Comparison.ofFew(CAR, other, TRIAL, figures, Progress.NONE);
        assertThat(few.changes()).hasSize(Comparison.FEW);
        return few.changes().subList(0, Comparison.FEW - 1).stream()
                .map(Change::path)
                .toList();
    }

    /** Some newtons on a wheel are not more than two tenths of a degree per g: each figure counts in what is noticeable of it. */
    @Test
    void aPressureThatMovesTheLoadLeastIsKeptForTheBalanceThatItMovesMost() {
        Judged load = judged(Criterion.INSIDE_REAR_LOAD, 0.5);
        Map<String, Double> changes = Map.of(
                "front.tyre.pressure", 1.02,
                "front.spring.rate", 1.02,
                "rear.lateralLocator.height", 1.01,
                "front.track", 1.005,
                "rear.track", 1.003,
                "rear.spring.rate", 1.01);
        assertThat(kept(List.of(UNDERSTEER, load), changes)).contains("front.tyre.pressure");
        assertThat(kept(List.of(load), changes)).doesNotContain("front.tyre.pressure");
    }

    /** All push the same way: the one that pushes most is kept, though with it the car comes nearest to the other one. */
    @Test
    void whatMovesTheFigureMostIsKeptWhereAllMoveItTheSameWay() {
        Map<String, Double> changes = Map.of(
                "mass", 1.05,
                "front.spring.rate", 1.02,
                "rear.track", 1.02,
                "front.unsprungMass", 1.1,
                "rear.tyre.pressure", 1.01,
                "front.tyre.verticalRate", 1.02);
        assertThat(at(UNDERSTEER, CAR)).isPositive();
        assertThat(kept(List.of(UNDERSTEER), changes)).contains("mass");
    }

    @Test
    void aMillionthOfWhatIsNoticeableIsNoEffect() {
        List<Change> one = Change.between(CAR, changed(1));
        for (double part : new double[] {0.9e-6, 1.1e-6}) {
            double step = part * UNDERSTEER.criterion().noticeable();
            Shapley shapley = new Shapley(List.of(step), List.of(step), 1, 1);
            Comparison.Difference difference = new Comparison.Difference(UNDERSTEER, 0, step, Optional.of(shapley));
            Comparison comparison = new Comparison(one, List.of(difference), List.of(), 2, 0);
            assertThat(comparison.withoutEffect()).isEqualTo(part < 1e-6 ? one : List.of());
        }
    }

    private static double number(String path) {
        return Catalogue.adjustments(CAR).stream()
                .filter(number -> number.path().equals(path))
                .findFirst()
                .orElseThrow()
                .si();
    }

    /** Scales in place of a mass are one change of what makes a car together, and take a place of the twelve. */
    @Test
    void changesNeverOutnumberWhatAComparisonTellsApart() {
        Entries other = CAR;
        for (String path : List.of(
                "wheelbase",
                "cgHeight",
                "front.track",
                "front.unsprungMass",
                "front.spring.rate",
                "front.spring.motionRatio",
                "front.tyre.pressure",
                "rear.track",
                "rear.unsprungMass",
                "rear.spring.rate",
                "rear.spring.base",
                "rear.tyre.pressure")) {
            other = Catalogue.with(other, path, 1.01 * number(path));
        }
        assertThat(Change.between(CAR, other)).hasSize(Shapley.MOST);
        for (String path : List.of("mass", "frontWeightFraction")) {
            other = Catalogue.with(other, new Catalogue.Difference(path, Catalogue.entry(CAR, path), Optional.empty()));
        }
        Map<String, Entry> wheels = new LinkedHashMap<>();
        for (String wheel : List.of("frontLeft", "frontRight", "rearLeft", "rearRight")) {
            wheels.put(wheel, new Entry.Measured(Quantity.of(275, Unit.of("kg"))));
        }
        other = Catalogue.with(
                other,
                new Catalogue.Difference(
                        "cornerWeights", Optional.empty(), Optional.of(new Entries(Optional.empty(), wheels))));
        List<Change> changes = Change.between(CAR, other);
        assertThat(changes.get(0).path()).contains("mass", "cornerWeights");
        assertThat(changes).hasSizeLessThanOrEqualTo(Shapley.MOST);
    }

    @Test
    void aSetUpDoesNotDifferFromItself() {
        Comparison none = Comparison.ofFew(CAR, CAR, TRIAL, List.of(UNDERSTEER), Progress.NONE);
        assertThat(none.changes()).isEmpty();
        assertThat(of(none, UNDERSTEER).difference()).isZero();
    }
}
