package evenhand.window.desk;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.catalogue.Adjustable;
import evenhand.scenario.Setup;
import evenhand.words.Units;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FormTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "bakery-front-drive",
                "harbour-saloon",
                "orchard-estate",
                "postman-leaf",
                "quarry-special",
                "slipper-coupe",
                "tinkers-lane-roadster"
            })
    void everyNumberOfACarHasItsFieldAndSaysWhatItMeans(String demo) {
        Setup setup = Desks.demo(demo).work().activeSetup();
        Form form = Form.of(setup.entries());
        List<String> paths = form.fields().stream().map(FormField::path).toList();
        assertThat(paths).doesNotHaveDuplicates();
        for (Adjustable value : setup.values()) {
            String path = value.path();
            boolean inTable = path.contains("[") && !paths.contains(path);
            assertThat(paths).contains(inTable ? path.substring(0, path.lastIndexOf('[')) : path);
        }
        assertThat(form.fields())
                .allSatisfy(field -> assertThat(field.meaning()).isNotBlank());
    }

    @Test
    void whatWasTypedIsShownInTheUnitsOfShowWithItsTolerance() {
        Form form = Form.of(Desks.demo("harbour-saloon").work().scenario().car());
        FormField wheelbase = field(form, "wheelbase");
        assertThat(wheelbase.given(Units.METRIC)).isEqualTo("2435 mm ± 3 mm");
        assertThat(wheelbase.given(Units.IMPERIAL)).isEqualTo("95.87 ± 0.12 in");
        assertThat(field(form, "frontWeightFraction").given(Units.IMPERIAL)).isEqualTo("0.538 ± 0.005");
    }

    @Test
    void whatOnlyTheRideEstimatesStandsInItsBlankFieldToo() {
        Form form = Form.of(Desks.demo("harbour-saloon").work().scenario().car());
        FormField inertia = field(form, "pitchInertia");
        assertThat(inertia.given()).isEmpty();
        assertThat(inertia.standIn(Units.METRIC)).endsWith(" kg·m²");
        assertThat(inertia.rule()).startsWith("estimated ");
    }

    private static FormField field(Form form, String path) {
        return form.fields().stream()
                .filter(field -> field.path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void anEstimateStandsInTheFieldAsAnEstimate() {
        Form form = Form.of(Desks.demo("postman-leaf").work().activeSetup().entries());
        FormField field = form.field("rear.tyre.curvature").orElseThrow();
        assertThat(field.given()).isEmpty();
        assertThat(field.standIn(Units.METRIC)).isNotEmpty();
        assertThat(field.rule()).startsWith("estimated from");
    }

    @Test
    void aFieldIsFoundByItsNameOrItsMeaning() {
        Form form = Form.of(Desks.demo("harbour-saloon").work().activeSetup().entries());
        assertThat(form.fields().stream()
                        .filter(field -> field.matches("bell-crank pivot"))
                        .map(FormField::path))
                .containsExactly("rear.lateralLocator.height");
        assertThat(form.fields().stream()
                        .filter(field -> field.matches("front spring rate"))
                        .map(FormField::path))
                .containsExactly("front.spring.rate");
        assertThat(form.fields().stream().filter(field -> field.matches("zzz"))).isEmpty();
    }

    @Test
    void rangesAreSaidInTheUnitsOfShow() {
        Form form = Form.of(Desks.demo("harbour-saloon").work().activeSetup().entries());
        FormField rate = form.field("front.spring.rate").orElseThrow();
        assertThat(rate.usual(Units.METRIC)).isEqualTo("10 to 150 N/mm");
        assertThat(rate.usual(Units.IMPERIAL)).isEqualTo("57.1 to 856.5 lbf/in");
    }
}
