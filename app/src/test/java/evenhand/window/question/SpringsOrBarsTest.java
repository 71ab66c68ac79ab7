package evenhand.window.question;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Trial;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Catalogue;
import evenhand.chart.Axis;
import evenhand.chart.Chart;
import evenhand.forms.Table;
import evenhand.scenario.Demo;
import evenhand.scenario.Setup;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desks;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.Work;
import evenhand.words.ChangeWords;
import evenhand.words.JudgedWords;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class SpringsOrBarsTest {
    private static final Question QUESTION = new SpringsOrBars();
    private static final String EVERY = "is as wished; show what each adjustment does";

    private static Reply every(Work work, String figure) {
        return ByHand.answer(QUESTION, work, Map.of("complaint", EVERY, "figure", figure));
    }

    @Test
    void aFigureIsChosenOnlyWhereEveryAdjustmentIsShown() {
        Work work = ByHand.demo("harbour-saloon");
        assertThat(QUESTION.fields(ByHand.asking(QUESTION, work, Map.of()))).hasSize(1);
        assertThat(QUESTION.fields(ByHand.asking(QUESTION, work, Map.of("complaint", EVERY)))
                        .get(1)
                        .choices())
                .contains("limit balance", "understeer at 0.5 g", "front comfort");
    }

    @Test
    void everyBarIsWhatTheCarAnswersAfterItsStep() {
        Work work = ByHand.demo("harbour-saloon");
        Setup setup = work.activeSetup();
        Judged balance = new Judged(Criterion.LIMIT_BALANCE, OptionalDouble.empty());
        Trial trial = work.usualTrial();
        double before = balance.si(trial.ask(setup.car())).orElseThrow();
        Chart chart = every(work, "limit balance").charts().get(0);
        List<Axis.Row> rows = ((Axis.Rows) chart.up()).rows();
        assertThat(rows).hasSize(10);
        for (int row = 0; row < rows.size(); row++) {
            String words = rows.get(row).words();
            Adjustable value = setup.values().stream()
                    .filter(one -> words.startsWith(ChangeWords.name(one.path()) + " +"))
                    .findFirst()
                    .orElseThrow();
            double after = balance.si(trial.ask(
                            Catalogue.build(Catalogue.with(setup.entries(), value.path(), value.si() + value.step()))
                                    .value()
                                    .orElseThrow()))
                    .orElseThrow();
            assertThat(chart.bars().get(row).to()).as(words).isCloseTo(100 * (after - before), within(1e-9));
        }
    }

    @Test
    void whatTakesRebuildingIsNamedLastAndNotOffered() {
        Work work = ByHand.demo("quarry-special");
        Reply reply = ByHand.answer(QUESTION, work, Map.of("complaint", "pushes at the limit"));
        List<Table.Line> lines = reply.figures().lines();
        int second = lines.indexOf(new Table.Heading("What helps too, but takes other links, brackets or wheels"));
        assertThat(lines.subList(0, second)).extracting(Table.Line::words).contains("rear spring rate");
        assertThat(lines.subList(second, lines.size()))
                .extracting(Table.Line::words)
                .contains("rear track", "rear spring lean", "rear spring base");
        List<Axis.Row> rows = ((Axis.Rows) reply.charts().get(0).up()).rows();
        assertThat(rows).extracting(Axis.Row::words).noneMatch(words -> words.contains(" track "));
        assertThat(rows).extracting(Axis.Row::words).anyMatch(words -> words.contains("N·m/deg"));
        assertThat(reply.next()).noneMatch(next -> next.words().startsWith("rear track"));
    }

    /** What is offered as the next thing to do can be done, and does what was said. */
    @ParameterizedTest
    @CsvSource({"bakery-front-drive, wallows", "bakery-front-drive, pushes at the limit", "harbour-saloon, rides hard"})
    void whatIsAdvisedCanBeDone(String demo, String complaint) {
        Work work = ByHand.demo(demo);
        Reply reply = ByHand.answer(QUESTION, work, Map.of("complaint", complaint));
        assertThat(reply.next()).isNotEmpty();
        for (Reply.Next next : reply.next()) {
            Bench bench = Desks.bench(demo);
            Setup before = bench.desk().work().activeSetup();
            Setup after = Desks.done(bench, next.act().orElseThrow()).work().activeSetup();
            assertThat(after.car()).as(next.words()).isNotEqualTo(before.car());
        }
        if (complaint.equals("wallows")) {
            assertThat(reply.next().get(0).words()).startsWith("rear dampers all forces +15");
            assertThat(reply.headlines().get(0)).contains("Change first: rear dampers all forces +15");
        }
    }

    @Test
    void aComplaintThatTheSumsDoNotShowHasNothingToDo() {
        Reply reply = ByHand.answer(QUESTION, ByHand.demo("tinkers-lane-roadster"), Map.of("complaint", "wallows"));
        assertThat(reply.headlines().get(0)).contains("By the sums it does not wallow: damping ");
        assertThat(reply.next()).isEmpty();
    }

    @Test
    void theLargestIsNamedFirstAndAllAreInTheTable() {
        Work work = ByHand.demo("slipper-coupe");
        Reply reply = every(work, "understeer at 0.5 g");
        List<Table.Row> rows = reply.figures().lines().stream()
                .filter(Table.Row.class::isInstance)
                .map(Table.Row.class::cast)
                .toList();
        assertThat(reply.headlines().get(0))
                .contains("Of " + rows.size() + " adjustments")
                .contains("the " + rows.get(0).words() + " moves the understeer at 0.5 g most, by "
                        + rows.get(0).cells().get(1));
    }

    @ParameterizedTest
    @MethodSource("evenhand.scenario.Demo#names")
    void everyDemoCarAnswersAndSoDoesEveryFigure(String demo) {
        Work work = ByHand.demo(demo);
        // What is asked of a car is the same whichever figure is looked at: of each car every sixth one.
        List<Judged> figures = work.usualTrial().judged();
        for (int i = Demo.names().toList().indexOf(demo) % 6; i < figures.size(); i += 6) {
            Reply reply = every(work, JudgedWords.figure(figures.get(i)));
            assertThat(String.join("", reply.headlines())).doesNotContain("NaN", "null");
        }
    }
}
