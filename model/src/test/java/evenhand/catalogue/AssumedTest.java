package evenhand.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.car.Car;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class AssumedTest {
    private static List<Assumed> of(Entries car) {
        Built<Car> built = Catalogue.build(car);
        return Assumed.of(built.value().orElseThrow(), built.values());
    }

    private static List<String> paths(Entries car) {
        return of(car).stream().map(Assumed::path).toList();
    }

    private static Entries with(Entries car, String path, Dimension dimension, String quantity) {
        try {
            return Catalogue.with(car, path, Quantity.parse(quantity, dimension));
        } catch (QuantityException e) {
            throw new IllegalArgumentException(quantity, e);
        }
    }

    private static Entries withDamper(String end, Map<String, Entry> damper) {
        return Catalogue.with(
                CatalogueTest.car(),
                new Catalogue.Difference(
                        end + ".damper", Optional.empty(), Optional.of(new Entries(Optional.empty(), damper))));
    }

    private static Entry ratio(String written) {
        try {
            return new Entry.Measured(Quantity.parse(written, Dimension.RATIO));
        } catch (QuantityException e) {
            throw new IllegalArgumentException(written, e);
        }
    }

    @Test
    void allThatABareCarDoesNotSayIsListedOnce() {
        assertThat(paths(CatalogueTest.car()))
                .containsExactlyInAnyOrder(
                        "chassisTorsionalStiffness",
                        "air.dragArea",
                        "front.bumpStop",
                        "front.droopStop",
                        "front.rollSteer",
                        "front.lateralForceSteer",
                        "front.aligningTorqueSteer",
                        "front.spring.motionRatio",
                        "rear.bumpStop",
                        "rear.droopStop",
                        "rear.rollSteer",
                        "rear.lateralForceSteer",
                        "rear.aligningTorqueSteer",
                        "rear.spring.motionRatio");
    }

    @Test
    void whatIsGivenAsNoneIsNoGuess() {
        Entries car = CatalogueTest.car();
        assertThat(paths(with(car, "air.dragArea", Dimension.AREA, "0 m^2"))).doesNotContain("air.dragArea");
        assertThat(paths(with(car, "rear.rollSteer", Dimension.RATIO, "0"))).doesNotContain("rear.rollSteer");
        assertThat(paths(with(car, "front.spring.motionRatio", Dimension.RATIO, "1")))
                .doesNotContain("front.spring.motionRatio");
    }

    /** A spring at a wheel of its own hardly moves as far as the wheel; on a live axle it may well stand on it. */
    @Test
    void onlyAWheelsOwnSpringOrDamperWithoutItsRatioIsWarnedOf() {
        Entries front = withDamper("front", Map.of());
        assertThat(of(front))
                .filteredOn(one -> one.caution().isPresent())
                .extracting(Assumed::path)
                .containsExactlyInAnyOrder("front.spring.motionRatio", "front.damper.motionRatio");
        assertThat(of(front))
                .filteredOn(one -> one.caution().isPresent())
                .allSatisfy(one -> assertThat(one.caution().orElseThrow()).contains("0.9 to 1", "40 mm"));
        Entries rear = withDamper("rear", Map.of());
        assertThat(of(rear))
                .filteredOn(one -> one.path().startsWith("rear.") && one.path().endsWith("motionRatio"))
                .hasSize(2)
                .allSatisfy(one -> assertThat(one.caution()).isEmpty());
        assertThat(paths(withDamper("front", Map.of("motionRatio", ratio("0.9")))))
                .doesNotContain("front.damper.motionRatio");
    }
}
