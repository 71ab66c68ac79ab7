package evenhand.window.question;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.chart.Chart;
import evenhand.chart.Part;
import evenhand.chart.Part.Point;
import evenhand.doubt.Doubt;
import evenhand.doubt.Spread;
import evenhand.doubt.Tolerance;
import evenhand.forms.Table;
import evenhand.quantity.Unit;
import evenhand.scenario.Setup;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TurnedSetup;
import evenhand.window.desk.Work;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class WhatToMeasureTest {
    private static final WhatToMeasure QUESTION = new WhatToMeasure();
    private static final Work WORK = ByHand.demo("slipper-coupe");
    private static final Map<String, String> UNDERSTEER = Map.of("figure", "understeer at 0.5 g");

    @SuppressWarnings("NullAway.Init")
    private static Reply reply;

    @BeforeAll
    static void ask() {
        reply = ByHand.answer(QUESTION, WORK, UNDERSTEER);
    }

    private static Point at(List<Point> edge, double pace) {
        return edge.stream()
                .filter(point -> Math.abs(point.x() - pace) < 1e-9)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aBandAtAPaceIsTheIntervalThatDoubtGivesThere() {
        List<TurnedSetup> shown = ByHand.asked(QUESTION, WORK, UNDERSTEER).shown();
        Doubt.Answer doubt = Doubt.of(
                shown.stream().map(one -> one.setup().entries()).toList(),
                new Doubt.Question(
                        WORK.usualTrial(),
                        512,
                        1,
                        Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES,
                        Optional.empty(),
                        Progress.NONE));
        Unit unit = Criterion.UNDERSTEER.unit();
        List<Part.Band> bands = reply.charts().get(0).bands();
        assertThat(bands).hasSameSizeAs(shown);
        for (int i = 0; i < shown.size(); i++) {
            Spread spread = of(doubt.cars().get(i));
            assertThat(bands.get(i).name()).isEqualTo(shown.get(i).setup().name());
            assertThat(at(bands.get(i).low(), 0.5).y()).isCloseTo(unit.fromSi(spread.low()), within(1e-3));
            assertThat(at(bands.get(i).high(), 0.5).y()).isCloseTo(unit.fromSi(spread.high()), within(1e-3));
        }
        Part.Band apart = reply.charts().get(1).bands().get(0);
        Spread difference = of(doubt.differences().get(0));
        assertThat(at(apart.low(), 0.5).y()).isCloseTo(unit.fromSi(difference.low()), within(1e-3));
        assertThat(at(apart.high(), 0.5).y()).isCloseTo(unit.fromSi(difference.high()), within(1e-3));
    }

    private static Spread of(Doubt.Left left) {
        Judged judged = new Judged(Criterion.UNDERSTEER, OptionalDouble.of(Trial.BRISK));
        return left.spreads().stream()
                .filter(spread -> spread.judged().equals(judged))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aBandLiesAboutItsCurveAndEndsBeforeTheLimit() {
        Chart chart = reply.charts().get(0);
        for (Part.Band band : chart.bands()) {
            Part.Line line = chart.line(band.name(), "").findFirst().orElseThrow();
            double limit = line.points().get(line.points().size() - 1).x();
            double end = band.low().get(band.low().size() - 1).x();
            assertThat(end).isBetween(0.6 * limit, limit);
            assertThat(band.low()).hasSameSizeAs(band.high()).hasSizeGreaterThan(10);
            for (int i = 0; i < band.low().size(); i++) {
                assertThat(band.low().get(i).y()).isLessThan(band.high().get(i).y());
            }
            // The car as given lies within, as far as the curve is smooth.
            Point gentle = at(band.low(), 0.2);
            double given = line.points().stream()
                    .filter(point -> Math.abs(point.x() - 0.2) < 1e-9)
                    .findFirst()
                    .orElseThrow()
                    .y();
            assertThat(given).isBetween(gentle.y(), at(band.high(), 0.2).y());
        }
        assertThat(chart.notes()).anyMatch(note -> note.contains("nineteen times in twenty"));
    }

    @Test
    void theTableHasARowForEachFigureAndAColumnForEachSetup() {
        Table table = reply.figures();
        assertThat(table.columns())
                .containsExactlyElementsOf(WORK.scenario().setups().subList(0, 2).stream()
                        .map(Setup::name)
                        .toList());
        List<String> rows = table.lines().stream()
                .filter(Table.Row.class::isInstance)
                .map(Table.Line::words)
                .toList();
        assertThat(rows).doesNotHaveDuplicates().contains("limit balance", "understeer at 0.5 g");
        assertThat(table.lines().stream().filter(Table.Row.class::isInstance).map(Table.Row.class::cast))
                .allSatisfy(row -> assertThat(row.cells())
                        .allMatch(cell -> cell.matches("−?[\\d.]+ \\(−?[\\d.]+ to −?[\\d.]+\\)|–( .*)?"), row.words()));
    }

    @Test
    void theBandOfTheDifferenceIsNarrowerThanThoseOfTheTwo() {
        Part.Band apart = reply.charts().get(1).bands().get(0);
        Part.Band own = reply.charts().get(0).bands().get(1);
        assertThat(at(apart.high(), 0.2).y() - at(apart.low(), 0.2).y())
                .isLessThan(at(own.high(), 0.2).y() - at(own.low(), 0.2).y());
    }

    @Test
    void forTheLimitTheBalanceIsFollowedOnTheWayThere() {
        Reply limit = ByHand.answer(QUESTION, WORK, Map.of());
        assertThat(limit.charts().get(0).up().title()).contains("grip balance");
        assertThat(limit.charts().get(0).bands()).hasSameSizeAs(WORK.shown());
    }
}
