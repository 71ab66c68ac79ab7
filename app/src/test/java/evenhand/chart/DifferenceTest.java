package evenhand.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.chart.Part.Line;
import evenhand.chart.Part.Mark;
import evenhand.chart.Part.Point;
import evenhand.chart.Part.Rule;
import evenhand.look.SetupStyle;
import evenhand.quantity.Unit;
import evenhand.turn.Direction;
import evenhand.turn.TurnAnswer;
import evenhand.words.Units;
import java.util.List;
import org.junit.jupiter.api.Test;

class DifferenceTest {
    private static final List<Shown> SALOON = DemoCharts.shown("harbour-saloon", Direction.LEFT);

    private static Line line(String name, int look, double... values) {
        List<Point> points = new java.util.ArrayList<>();
        for (int i = 0; i < values.length; i += 2) {
            points.add(new Point(values[i], values[i + 1]));
        }
        return new Line(name, "", "", new SetupStyle(look), Part.Weight.HEAVY, points);
    }

    private static Chart plain(Line... lines) {
        return new Chart(
                "Roll",
                Axis.Measure.of("lateral acceleration", Unit.of("g"), 3, new Span(0, 1)),
                Axis.Measure.of("roll", Unit.of("deg"), 2, new Span(0, 6)),
                List.of(lines));
    }

    /** The base rises by 10 deg/g; the other by 8 deg/g on points of its own, and ends sooner: at 0.5 g it rolls 1 deg less. */
    @Test
    void itIsTheOtherLessTheBaseAsFarAsBothGo() {
        Chart chart = Difference.from(
                plain(line("As bought", 0, 0, 0, 0.4, 4, 0.6, 6), line("Stiff", 1, 0, 0, 0.25, 2, 0.5, 4)),
                "As bought",
                "roll");
        assertThat(chart.lines()).singleElement().satisfies(only -> {
            assertThat(only.name()).isEqualTo("Stiff");
            assertThat(only.points())
                    .usingRecursiveFieldByFieldElementComparator(
                            org.assertj.core.api.recursive.comparison.RecursiveComparisonConfiguration.builder()
                                    .withComparatorForType((a, b) -> Math.abs(a - b) < 1e-12 ? 0 : 1, Double.class)
                                    .build())
                    .containsExactly(new Point(0, 0), new Point(0.25, -0.5), new Point(0.4, -0.8), new Point(0.5, -1));
        });
        assertThat(chart.up().title()).isEqualTo("more roll than the base (below zero: less), deg");
        assertThat(chart.rules())
                .extracting(Rule::kind, Rule::words)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(Rule.Kind.ZERO, "as \"As bought\", the base"));
        assertThat(chart.up().span().holds(-1)).isTrue();
    }

    @Test
    void whereTheBaseEndsSoonerTheDifferenceEndsThereToo() {
        Chart chart =
                Difference.from(plain(line("Base", 0, 0, 1, 0.3, 1), line("Other", 1, 0, 1, 1, 3)), "Base", "roll");
        Point end = chart.lines().get(0).points().get(1);
        assertThat(end.x()).isEqualTo(0.3);
        assertThat(end.y()).isCloseTo(0.6, within(1e-12));
    }

    @Test
    void theBaseAloneIsShownAsItIsAndItIsSaid() {
        Chart alone = plain(line("Base", 0, 0, 1, 0.3, 1));
        Chart chart = Difference.from(alone, "Base", "roll");
        assertThat(chart.lines()).isEqualTo(alone.lines());
        assertThat(chart.notes()).singleElement().asString().startsWith("Only \"Base\" is shown");
        assertThat(Difference.from(alone, "Elsewhere", "roll").notes())
                .singleElement()
                .asString()
                .startsWith("The base is not shown");
    }

    @Test
    void understeerFromTheBaseIsTheDifferenceOfTheCurves() {
        Chart plain = TurnCharts.understeerGradient(SALOON, Units.METRIC);
        Chart chart = TurnCharts.understeerFromBase(SALOON, "As bought", Units.METRIC);
        assertThat(chart.lines()).hasSize(SALOON.size() - 1);
        List<Point> base = plain.line("As bought", "").findFirst().orElseThrow().points();
        for (Line line : chart.lines()) {
            List<Point> whole =
                    plain.line(line.name(), "").findFirst().orElseThrow().points();
            for (double g : new double[] {0.2, 0.5, 0.7}) {
                assertThat(CrossHair.value(line.points(), g).orElseThrow())
                        .isCloseTo(
                                CrossHair.value(whole, g).orElseThrow()
                                        - CrossHair.value(base, g).orElseThrow(),
                                within(1e-9));
            }
        }
    }

    @Test
    void gripInHandIsWhatIsNotUsedFromSixTenthsOfTheLimitOn() {
        Chart used = TurnCharts.gripUsed(SALOON, Units.METRIC);
        Chart chart = NearLimit.gripInHand(SALOON, Units.METRIC);
        double lowest = Double.POSITIVE_INFINITY;
        for (Shown car : SALOON) {
            TurnAnswer.Turns turn = DemoCharts.turn(car);
            lowest = Math.min(lowest, Unit.of("g").fromSi(turn.limit().lateralAcceleration()));
            for (String part : List.of("front", "rear")) {
                Line line = chart.line(car.name(), part).findFirst().orElseThrow();
                Line whole = used.line(car.name(), part).findFirst().orElseThrow();
                for (double g : new double[] {0.5, 0.7}) {
                    assertThat(CrossHair.value(line.points(), g).orElseThrow())
                            .isCloseTo(100 - CrossHair.value(whole.points(), g).orElseThrow(), within(1e-9));
                }
                boolean first = turn.limit().firstAxle().orElseThrow().key().equals(part);
                assertThat(line.ending())
                        .startsWith(first ? "first to let go, at " : "")
                        .endsWith(first ? " g" : " % left");
            }
            assertThat(chart.marks())
                    .filteredOn(mark -> mark.name().equals(car.name()) && mark.kind() == Mark.Kind.LIMIT)
                    .hasSize(1)
                    .allMatch(mark -> mark.at().y() >= 0 && mark.at().y() < 5);
        }
        assertThat(chart.across().span().low()).isCloseTo(0.6 * lowest, within(0.05));
        assertThat(chart.up().span().low()).isZero();
        assertThat(chart.up().span().high()).isLessThan(70);
    }
}
