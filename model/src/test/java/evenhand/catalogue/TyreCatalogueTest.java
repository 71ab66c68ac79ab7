package evenhand.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Car;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.tyre.MagicFormula;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TyreCatalogueTest {
    private static final List<String> CAMBER_AND_TRAIL =
            List.of("camberThrustRatio", "frictionCamberLoss", "bestLeanIn", "pneumaticTrail");

    private static Entries front(String key, Dimension dimension, String quantity) {
        return front(CatalogueTest.car(), key, dimension, quantity);
    }

    private static Entries front(Entries car, String key, Dimension dimension, String quantity) {
        try {
            return Catalogue.with(car, "front.tyre." + key, Quantity.parse(quantity, dimension));
        } catch (QuantityException e) {
            throw new IllegalArgumentException(quantity, e);
        }
    }

    private static Entries frontWord(String key, String word) {
        return Catalogue.with(
                CatalogueTest.car(),
                new Catalogue.Difference("front.tyre." + key, Optional.empty(), Optional.of(new Entry.Word(word))));
    }

    private static Adjustable at(Entries car, String key) {
        return Catalogue.build(car).at("front.tyre." + key).orElseThrow();
    }

    private static List<String> assumed(Entries car) {
        Built<Car> built = Catalogue.build(car);
        return Assumed.of(built.value().orElseThrow(), built.values()).stream()
                .map(Assumed::path)
                .toList();
    }

    /**
     * 185/65R15 at 2.0 bar, with a calculator: Q = 6.451e-4·185^1.6414·0.65^0.9724·381^0.9279 = 554.47 kg,
     * F0 = 0.58·g·Q·(2.0/2.2)^0.585 = 2982.73 N, K0 = 0.18·F0 per degree.
     */
    @Test
    void stiffnessAndFrictionAreThoseOfTheKindAtTheLoadOfTheSize() {
        Entries car = CatalogueTest.car();
        assertThat(at(car, "referenceLoad").si()).isCloseTo(2982.73, within(0.05));
        assertThat(Math.toRadians(at(car, "corneringStiffness").si())).isCloseTo(0.18 * 2982.73, within(0.01));
        assertThat(at(car, "friction").si()).isEqualTo(0.91);
        assertThat(at(car, "frictionLoadSensitivity").si()).isEqualTo(0.14);
        assertThat(at(car, "referenceLoad").tolerance()).isCloseTo(0.12 * 2982.73, within(0.01));
        assertThat(at(car, "referenceLoad").rule()).contains("0.58", "standard load indices", "from memory");
    }

    @Test
    void aGivenReferenceLoadTakesThePlaceOfTheEstimate() {
        Entries car = front("referenceLoad", Dimension.FORCE, "4000 N");
        assertThat(Math.toRadians(at(car, "corneringStiffness").si())).isCloseTo(0.18 * 4000, within(1e-9));
        assertThat(at(car, "friction").si()).isEqualTo(0.91);
        double trail = at(car, "pneumaticTrail").si()
                / at(CatalogueTest.car(), "pneumaticTrail").si();
        assertThat(trail)
                .isCloseTo(
                        Math.sqrt(
                                4000 / at(CatalogueTest.car(), "referenceLoad").si()),
                        within(1e-9));
    }

    @Test
    void trailAndCamberAreEstimatedWhereverTheStiffnessIs() {
        for (String key : CAMBER_AND_TRAIL) {
            Adjustable value = at(CatalogueTest.car(), key);
            assertThat(value.origin()).as(key).isEqualTo(Adjustable.Origin.ESTIMATED);
            assertThat(value.rule()).as(key).isNotEmpty();
            assertThat(value.tolerance()).as(key).isGreaterThan(0.25 * value.si());
            assertThat(assumed(CatalogueTest.car())).doesNotContain("front.tyre." + key);
        }
        MagicFormula law = (MagicFormula) Catalogue.build(CatalogueTest.car())
                .value()
                .orElseThrow()
                .front()
                .tyre()
                .lateral();
        assertThat(law.camberThrustRatio()).isEqualTo(0.06);
        assertThat(law.frictionCamberLoss()).isEqualTo(2.9);
        assertThat(law.bestLeanIn()).isCloseTo(Math.toRadians(2), within(1e-12));
        assertThat(law.pneumaticTrail()).isBetween(0.024, 0.032);
    }

    @Test
    void besideAMeasuredStiffnessTrailAndCamberAreNoneAndListedAsNotGiven() {
        Entries car = front("corneringStiffness", Dimension.CORNERING_STIFFNESS, "700 N/deg");
        for (String key : CAMBER_AND_TRAIL) {
            assertThat(at(car, key).origin()).as(key).isEqualTo(Adjustable.Origin.DEFAULT);
            assertThat(at(car, key).si()).as(key).isZero();
            assertThat(assumed(car)).contains("front.tyre." + key).doesNotContain("rear.tyre." + key);
        }
        Entries known = front(car, "pneumaticTrail", Dimension.LENGTH, "27 mm");
        assertThat(at(known, "pneumaticTrail").si()).isEqualTo(0.027);
        assertThat(assumed(known)).doesNotContain("front.tyre.pneumaticTrail").contains("front.tyre.bestLeanIn");
    }

    @ParameterizedTest
    @ValueSource(strings = {"loadedRadius", "verticalRate", "referenceLoad", "corneringStiffness", "pneumaticTrail"})
    void whereTheSizeStatesNoAspectTheToleranceIsTwice(String key) {
        Adjustable stated = at(frontWord("size", "165/82R15"), key);
        Adjustable unstated = at(frontWord("size", "165R15"), key);
        assertThat(unstated.si()).isEqualTo(stated.si());
        assertThat(unstated.tolerance()).isCloseTo(2 * stated.tolerance(), within(1e-9 * stated.tolerance()));
        assertThat(unstated.rule()).startsWith(stated.rule()).contains("twice the tolerance");
        assertThat(stated.rule()).doesNotContain("twice");
    }

    @ParameterizedTest
    @CsvSource({
        "1956515, 195/65R15",
        "195/65, 195/65R14",
        "195/65R1, 195/65R14",
        "I95/65R15, 195/65R15",
        "5.60--15, 5.60-15",
        "165SR, 165R13"
    })
    void ofWhatIsNoSizeTheNearestIsOffered(String text, String nearest) {
        assertThat(Catalogue.build(frontWord("size", text)).faults())
                .allSatisfy(fault -> assertThat(fault.path()).isEqualTo("front.tyre.size"))
                .anySatisfy(fault -> assertThat(fault.what()).contains("nearest", '"' + nearest + '"'));
    }

    @Test
    void aRimNarrowerThanAThirdOfTheTyreIsRefused() {
        assertThat(Catalogue.build(front("rimWidth", Dimension.LENGTH, "61 mm")).faults())
                .singleElement()
                .satisfies(fault -> {
                    assertThat(fault.path()).isEqualTo("front.tyre.rimWidth");
                    assertThat(fault.what()).contains("third");
                });
        assertThat(Catalogue.build(front("rimWidth", Dimension.LENGTH, "62 mm")).faults())
                .isEmpty();
    }

    /** 6 in on a 185: 1 + 0.5·(152.4/185 − 0.75) = 1.03689. */
    @Test
    void aWideRimMakesTheEstimatedStiffnessGreaterAndAMeasuredOneNot() {
        double plain = at(CatalogueTest.car(), "corneringStiffness").si();
        Entries wide = front("rimWidth", Dimension.LENGTH, "6 in");
        assertThat(at(wide, "corneringStiffness").si() / plain).isCloseTo(1.036892, within(1e-6));
        Entries measured = front(wide, "corneringStiffness", Dimension.CORNERING_STIFFNESS, "700 N/deg");
        assertThat(Math.toRadians(at(measured, "corneringStiffness").si())).isCloseTo(700, within(1e-9));
    }

    @Test
    void aTyreOfAnotherKindWithoutAnAspectIsNoTallerThanItsKindIs() {
        Entries crossPly = Catalogue.with(
                frontWord("size", "5.60-15"),
                new Catalogue.Difference(
                        "front.tyre.kind", Optional.empty(), Optional.of(new Entry.Word("cross-ply"))));
        // Free radius 190.5 + 0.92·142.24 = 321.36 mm, loaded 96.5 % of it.
        assertThat(at(crossPly, "loadedRadius").si()).isCloseTo(0.965 * 0.3213608, within(1e-6));
        // Free radius 190.5 + 0.82·142.24 = 307.14 mm.
        assertThat(at(frontWord("size", "5.60-15"), "loadedRadius").si()).isCloseTo(0.965 * 0.3071368, within(1e-6));
    }
}
