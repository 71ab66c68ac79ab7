package evenhand.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.car.Car;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class OneNumberTest {
    private static final Entries CAR = CatalogueTest.car();

    /** Two ways to the same car: all of it built anew, and only the parts that hold the number. */
    @Test
    void aCarWithOneNumberChangedIsTheOneThatIsBuiltAnew() {
        OneNumber one = new OneNumber(CAR);
        assertThat(one.numbers()).isEqualTo(Catalogue.adjustments(CAR));
        assertThat(one.asGiven()).isEqualTo(Catalogue.build(CAR).value());
        int changed = 0;
        for (Adjustable number : one.numbers()) {
            double value = number.si() * 1.01 + 1e-6;
            if (number.slot().bounds().holds(value)) {
                Optional<Car> anew = Catalogue.build(
                                CAR.off(each -> each.path().equals(number.path()) ? value : each.si()))
                        .value();
                assertThat(one.with(number.path(), si -> value))
                        .as(number.path())
                        .isEqualTo(anew);
                changed += anew.equals(one.asGiven()) ? 0 : 1;
            }
        }
        assertThat(changed).isGreaterThan(one.numbers().size() / 2);
    }

    @Test
    void whatIsEstimatedFromTheNumberFollowsIt() {
        String load = "front.tyre.referenceLoad";
        OneNumber one = new OneNumber(CAR);
        assertThat(one.with(load, si -> 1.1 * si).orElseThrow().front().tyre().lateral())
                .isNotEqualTo(one.asGiven().orElseThrow().front().tyre().lateral());
    }

    @Test
    void outOfItsBoundsThereIsNoCar() {
        OneNumber one = new OneNumber(CAR);
        assertThat(one.with("mass", si -> -si)).isEmpty();
        assertThat(one.with("front.tyre.friction", si -> 5.1)).isEmpty();
        assertThat(one.with("front.tyre.friction", si -> 0.9)).isPresent();
    }
}
