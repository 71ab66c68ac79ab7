package evenhand.window.desk;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.catalogue.Assumed;
import evenhand.words.Units;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class ChapterTest {
    private static Set<String> none(Bench bench) {
        return bench.desk().work().activeSetup().assumed().stream()
                .map(Assumed::path)
                .collect(Collectors.toSet());
    }

    private static Chapter chapter(Bench bench, Chapter.Subject subject) {
        return Chapter.of(Form.of(bench.desk().work().activeSetup())).stream()
                .filter(chapter -> chapter.subject() == subject)
                .findFirst()
                .orElseThrow();
    }

    private static Bench bench(String demo) {
        return Desks.bench(demo);
    }

    @Test
    void everySectionOfEveryDemoCarStandsInOneChapter() {
        for (String demo : Demos.NAMES) {
            Form form = Form.of(Desks.demo(demo).work().scenario());
            List<Form.Section> inChapters = Chapter.of(form).stream()
                    .flatMap(chapter -> chapter.sections().stream())
                    .toList();
            assertThat(inChapters).as(demo).containsExactlyInAnyOrderElementsOf(form.sections());
        }
    }

    @Test
    void aValueThatIsTakenOutIsMissingOrEstimatedAndCountsNoLongerAsGiven() {
        Bench bench = bench("harbour-saloon");
        Chapter.Filled front = chapter(bench, Chapter.Subject.FRONT).filled(none(bench));
        assertThat(front.missing()).isZero();
        Desks.done(bench, new Target(Form.Home.CAR, Optional.empty()).out("front.rollSteer"));
        Chapter chapter = chapter(bench, Chapter.Subject.FRONT);
        assertThat(chapter.filled(none(bench))).isEqualTo(new Chapter.Filled(front.given() - 1, front.estimated(), 1));
        assertThat(chapter.missing(none(bench))).containsExactly("front.rollSteer");

        Chapter.Filled tyres = chapter(bench, Chapter.Subject.TYRES).filled(none(bench));
        Desks.done(bench, new Target(Form.Home.CAR, Optional.empty()).out("front.tyre.curvature"));
        assertThat(chapter(bench, Chapter.Subject.TYRES).filled(none(bench)))
                .isEqualTo(new Chapter.Filled(tyres.given() - 1, tyres.estimated() + 1, tyres.missing()));
    }

    @Test
    void aStopThatIsNotThereIsMissingAmongSpringsAndDampers() {
        Bench bench = bench("harbour-saloon");
        Desks.done(bench, new Target(Form.Home.CAR, Optional.empty()).remove("rear.droopStop"));
        assertThat(chapter(bench, Chapter.Subject.SPRINGS).missing(none(bench))).containsExactly("rear.droopStop");
    }

    @Test
    void aFieldIsFoundByAnotherWordOfTheTrade() {
        Form form = Form.of(Desks.demo("harbour-saloon").work().scenario());
        assertThat(form.field("front.bar.diameter").orElseThrow().isAlsoCalled("sway bar"))
                .isTrue();
        assertThat(form.field("front.bar.diameter").orElseThrow().isAlsoCalled("rear sway bar"))
                .isFalse();
        assertThat(form.field("front.tyre.friction").orElseThrow().isAlsoCalled("mu"))
                .isTrue();
        assertThat(form.field("wheelbase").orElseThrow().isAlsoCalled("sway bar"))
                .isFalse();
    }

    @Test
    void aValueIsToldInTheUnitsOfShowToo() {
        FormField wheelbase = Form.of(Desks.demo("harbour-saloon").work().scenario())
                .field("wheelbase")
                .orElseThrow();
        assertThat(wheelbase.typed(Units.METRIC)).isEmpty();
        assertThat(wheelbase.typed(Units.IMPERIAL)).isEqualTo("2435 mm ± 3 mm");
    }
}
