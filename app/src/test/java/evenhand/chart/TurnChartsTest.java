package evenhand.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.chart.Part.Line;
import evenhand.chart.Part.Mark;
import evenhand.chart.Part.Point;
import evenhand.chart.Part.Rule;
import evenhand.quantity.Unit;
import evenhand.turn.Direction;
import evenhand.turn.Limit;
import evenhand.turn.PaceAnswer;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnRow;
import evenhand.words.EventWords;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TurnChartsTest {
    private static final Unit G = Unit.of("g");
    private static final Unit DEG_PER_G = Unit.of("deg/g");

    @ParameterizedTest
    @MethodSource("evenhand.scenario.Demo#names")
    void everySetupHasItsCurveUpToItsLimit(String demo) {
        List<Shown> cars = DemoCharts.shown(demo, Direction.LEFT);
        for (Chart chart : List.of(
                TurnCharts.steer(cars, Units.METRIC),
                TurnCharts.roll(cars, Units.METRIC),
                TurnCharts.sideslip(cars, Units.METRIC))) {
            for (Shown car : cars) {
                Line line = chart.line(car.name(), "").findFirst().orElseThrow();
                assertThat(line.style()).isEqualTo(car.style());
                TurnAnswer.Turns turn = DemoCharts.turn(car);
                assertThat(line.points()).hasSameSizeAs(turn.rowsToLimit());
                double last = line.points().get(line.points().size() - 1).x();
                assertThat(last).isCloseTo(G.fromSi(turn.limit().lateralAcceleration()), within(1e-9));
                assertThat(chart.across().span().holds(last)).isTrue();
                assertThat(line.points()).allMatch(point -> chart.up().span().holds(point.y()));
                assertThat(line.ending())
                        .isEqualTo("limit " + Units.exactPace(turn.limit().lateralAcceleration()));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("evenhand.scenario.Demo#names")
    void theUndersteerCurveGoesThroughTheAnswersAtThePaces(String demo) {
        List<Shown> cars = DemoCharts.shown(demo, Direction.LEFT);
        Chart chart = TurnCharts.understeerGradient(cars, Units.METRIC);
        int met = 0;
        for (Shown car : cars) {
            Line line = chart.line(car.name(), "").findFirst().orElseThrow();
            for (PaceAnswer pace : DemoCharts.turn(car).paces()) {
                if (pace instanceof PaceAnswer.InBalance balance) {
                    double gradient = balance.row().understeerGradient().orElseThrow();
                    assertThat(CrossHair.value(line.points(), G.fromSi(pace.lateralAcceleration()))
                                    .orElseThrow())
                            .isCloseTo(DEG_PER_G.fromSi(gradient), within(1e-9));
                    met++;
                }
            }
        }
        assertThat(met).isEqualTo(2 * cars.size());
    }

    @Test
    void pacesAndNeutralAreDrawnAndNamed() {
        Chart chart = TurnCharts.understeerGradient(DemoCharts.shown("harbour-saloon", Direction.LEFT), Units.METRIC);
        assertThat(chart.rules())
                .extracting(Rule::kind, rule -> Math.round(10 * rule.value()) / 10.0, Rule::words)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(Rule.Kind.PACE, 0.2, "gentle 0.2 g"),
                        org.assertj.core.groups.Tuple.tuple(Rule.Kind.PACE, 0.5, "brisk 0.5 g"),
                        org.assertj.core.groups.Tuple.tuple(Rule.Kind.ZERO, 0.0, "neutral"));
        assertThat(chart.across().title()).isEqualTo("lateral acceleration, g");
        assertThat(chart.up().title()).isEqualTo("understeer gradient (below zero: oversteer), deg/g");
    }

    @Test
    void whatHappensOnTheWayIsMarkedOnItsOwnCurve() {
        List<Shown> cars = DemoCharts.shown("harbour-saloon", Direction.LEFT);
        Chart chart = TurnCharts.roll(cars, Units.METRIC);
        Shown lowered = cars.get(1);
        List<Mark> events = chart.marks().stream()
                .filter(mark -> mark.kind() == Mark.Kind.EVENT && mark.name().equals(lowered.name()))
                .toList();
        assertThat(events).hasSameSizeAs(DemoCharts.turn(lowered).eventsToLimit());
        assertThat(events).extracting(Mark::words).contains("right front on bump stop", "right rear on bump stop");
        Line curve = chart.line(lowered.name(), "").findFirst().orElseThrow();
        assertThat(events)
                .allSatisfy(mark -> assertThat(
                                CrossHair.value(curve.points(), mark.at().x()).orElseThrow())
                        .isEqualTo(mark.at().y()));
    }

    @Test
    void theAxleThatLetsGoFirstIsNamedAtItsLine() {
        List<Shown> cars = DemoCharts.shown("harbour-saloon", Direction.LEFT);
        Chart chart = TurnCharts.gripUsed(cars, Units.METRIC);
        for (Shown car : cars) {
            String[] first = DemoCharts.turn(car).limit().firstAxle().stream()
                    .map(EventWords::end)
                    .toArray(String[]::new);
            assertThat(chart.lines().stream()
                            .filter(line -> line.name().equals(car.name())
                                    && line.ending().startsWith("first to let go, at "))
                            .map(Line::part))
                    .containsExactly(first);
        }
    }

    @Test
    void whereTheTailComesRoundTheCurveEndsAndTheMarkSaysSo() {
        List<Shown> cars = DemoCharts.shown("harbour-saloon", Direction.RIGHT);
        int spun = 0;
        for (Shown car : cars) {
            TurnAnswer.Turns turn = DemoCharts.turn(car);
            double limit = G.fromSi(turn.limit().lateralAcceleration());
            boolean spins = turn.limit().cause() == Limit.Cause.SPIN;
            for (Chart chart : List.of(
                    TurnCharts.gripUsed(cars, Units.METRIC),
                    TurnCharts.steer(cars, Units.METRIC),
                    TurnCharts.wheelLoads(cars, Units.METRIC))) {
                assertThat(chart.lines().stream().filter(line -> line.name().equals(car.name())))
                        .isNotEmpty()
                        .allSatisfy(line -> assertThat(line.points()
                                        .get(line.points().size() - 1)
                                        .x())
                                .isCloseTo(limit, within(1e-9)));
            }
            assertThat(TurnCharts.gripUsed(cars, Units.METRIC).marks())
                    .filteredOn(mark -> mark.name().equals(car.name()) && mark.kind() == Mark.Kind.LIMIT)
                    .singleElement()
                    .satisfies(mark -> {
                        assertThat(mark.at().x()).isCloseTo(limit, within(1e-9));
                        assertThat(mark.words()).isEqualTo(spins ? "the tail comes round" : "");
                    });
            if (spins) {
                spun++;
                assertThat(turn.rows()).hasSizeGreaterThan(turn.rowsToLimit().size());
            }
        }
        assertThat(spun).isPositive();
    }

    @Test
    void aRightTurnOfAnEvenCarLooksLikeItsLeftTurn() {
        List<Shown> left = DemoCharts.shown("orchard-estate", Direction.LEFT);
        List<Shown> right = DemoCharts.shown("orchard-estate", Direction.RIGHT);
        for (int i = 0; i < left.size(); i++) {
            TurnRow row = DemoCharts.turn(right.get(i)).limit().row();
            assertThat(row.steer()).isNegative();
            Line one = TurnCharts.steer(left, Units.METRIC).lines().get(i);
            Line other = TurnCharts.steer(right, Units.METRIC).lines().get(i);
            assertThat(one.points().stream().map(Point::y)).allMatch(y -> y > 0);
            assertThat(other.points().stream().map(Point::y)).allMatch(y -> y > 0);
        }
    }

    @Test
    void loadsOfTheFourWheelsAddUpToWhatTheWholeCarPressesOnTheGround() {
        List<Shown> cars = DemoCharts.shown("postman-leaf", Direction.LEFT);
        Chart newtons = TurnCharts.wheelLoads(cars, Units.METRIC);
        Chart pounds = TurnCharts.wheelLoads(cars, Units.IMPERIAL);
        Shown car = cars.get(0);
        double weight = car.car().weights().mass() * 9.80665;
        List<Line> wheels = newtons.lines().stream()
                .filter(line -> line.name().equals(car.name()))
                .toList();
        assertThat(wheels)
                .extracting(Line::part)
                .containsExactly("left front", "right front", "left rear", "right rear");
        double sum =
                wheels.stream().mapToDouble(line -> line.points().get(0).y()).sum();
        assertThat(sum).isCloseTo(weight, within(0.002 * weight)); // lift of the air at 0.02 g is small
        assertThat(pounds.up().title()).isEqualTo("load on the ground, lbf");
        assertThat(pounds.lines().get(0).points().get(0).y() * 4.4482216152605)
                .isCloseTo(newtons.lines().get(0).points().get(0).y(), within(1e-6));
    }

    @Test
    void aSetupWithoutAnAnswerIsNamedInANoteAndTheOthersAreShown() {
        List<Shown> cars = new ArrayList<>(
                DemoCharts.shown("harbour-saloon", Direction.LEFT).subList(0, 2));
        Shown first = cars.get(0);
        cars.set(
                0,
                new Shown(
                        first.name(),
                        first.style(),
                        first.car(),
                        new TurnAnswer.NoTurn(TurnAnswer.Reason.FALLS_OVER, "it falls over on its springs"),
                        Optional.empty()));
        Map<String, Chart> charts = new TreeMap<>(DemoCharts.all(cars, Units.METRIC));
        charts.keySet()
                .removeAll(Set.of(
                        "brake forces",
                        "adhesion used",
                        "grip at launch",
                        "wheels at launch")); // straight ahead it does not fall over
        for (Chart chart : charts.values()) {
            if (chart.notes().isEmpty()) {
                continue; // of plain numbers, not of these cars
            }
            assertThat(chart.notes())
                    .filteredOn(note -> !note.startsWith("By the hand sums"))
                    .containsExactly("As bought is not shown: it falls over on its springs.");
            assertThat(chart.setups()).extracting(Chart.Setup::name).containsExactly("Lowered");
        }
        assertThat(TurnCharts.steer(cars, Units.METRIC).notes()).hasSize(1);
    }

    @Test
    void withoutAnyAnswerTheChartIsEmptyAndSaysWhy() {
        Shown car = DemoCharts.shown("harbour-saloon", Direction.LEFT).get(0);
        Shown none = new Shown(
                car.name(),
                car.style(),
                car.car(),
                new TurnAnswer.NoTurn(TurnAnswer.Reason.WHEELSPIN, "its driven wheels spin"),
                Optional.empty());
        Chart chart = TurnCharts.understeerGradient(List.of(none), Units.METRIC);
        assertThat(chart.isEmpty()).isTrue();
        assertThat(chart.notes()).hasSize(1);
    }
}
