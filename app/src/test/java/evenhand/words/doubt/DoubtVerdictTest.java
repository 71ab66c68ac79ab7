package evenhand.words.doubt;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.catalogue.Adjustable;
import evenhand.doubt.Doubt;
import evenhand.doubt.Measurement;
import evenhand.doubt.Spread;
import evenhand.doubt.Tolerance;
import evenhand.quantity.Unit;
import evenhand.scenario.Demo;
import evenhand.turn.Direction;
import evenhand.words.Units;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What doubt leaves of pushing and sliding, said: it is sure only where the whole interval is. */
class DoubtVerdictTest {
    private static final Unit DEG_PER_G = Unit.of("deg/g");
    private static final Judged NEAR = new Judged(Criterion.NEAR_UNDERSTEER, OptionalDouble.empty());
    private static final Judged BRISKLY =
            new Judged(Criterion.UNDERSTEER, OptionalDouble.of(Unit.of("g").toSi(0.5)));
    private static final Judged GENTLY =
            new Judged(Criterion.UNDERSTEER, OptionalDouble.of(Unit.of("g").toSi(0.2)));

    private static Tolerance number(String path) {
        Adjustable number = Demo.read("harbour-saloon").setup("As bought").orElseThrow().values().stream()
                .filter(value -> value.path().equals(path))
                .findFirst()
                .orElseThrow();
        return new Tolerance(number, 1);
    }

    private static Spread spread(Judged judged, double low, double high, Spread.Cause... causes) {
        double middle = DEG_PER_G.toSi((low + high) / 2);
        return new Spread(
                judged,
                OptionalDouble.of(middle),
                DEG_PER_G.toSi(low),
                DEG_PER_G.toSi(high),
                middle,
                DEG_PER_G.toSi(high - low) / 4,
                0,
                List.of(causes));
    }

    private static Doubt.Left left(Spread... spreads) {
        return new Doubt.Left(List.of(spreads), 0, OptionalDouble.empty(), List.of());
    }

    private static List<String> alike(Spread... spreads) {
        return DoubtVerdict.phrases(Map.of(Direction.LEFT, left(spreads)));
    }

    @Test
    void onlyAnIntervalThatDoesNotHoldNeutralIsSure() {
        assertThat(alike(spread(NEAR, 0.1, 2))).containsExactly("near the limit it pushes for sure");
        assertThat(alike(spread(NEAR, -0.1, 2))).containsExactly("near the limit it may push or slide");
        assertThat(alike(spread(NEAR, -2, 0.1))).containsExactly("near the limit it may push or slide");
        assertThat(alike(spread(NEAR, -2, -0.1))).containsExactly("near the limit it slides for sure");
        assertThat(alike()).containsExactly("too few samples turn to say anything");
    }

    @Test
    void ofSeveralPacesTheBriskestCounts() {
        assertThat(alike(spread(GENTLY, 1, 2), spread(BRISKLY, -3, -1))).containsExactly("at 0.5 g it slides for sure");
        assertThat(alike(spread(BRISKLY, -3, -1), spread(GENTLY, 1, 2))).containsExactly("at 0.5 g it slides for sure");
    }

    @Test
    void waysThatDifferAreToldApart() {
        Map<Direction, Doubt.Left> ways = new EnumMap<>(Direction.class);
        ways.put(Direction.LEFT, left(spread(NEAR, 1, 2)));
        ways.put(Direction.RIGHT, left(spread(NEAR, 2, 3)));
        assertThat(DoubtVerdict.phrases(ways)).containsExactly("near the limit it pushes for sure");
        ways.put(Direction.RIGHT, left(spread(NEAR, -2, 3)));
        assertThat(DoubtVerdict.phrases(ways))
                .containsExactly("near the limit it pushes for sure turning left, may push or slide turning right");
    }

    @Test
    void twoCausesAtMostAreNamedAndNoneOfLessThanATenth() {
        Spread.Cause height = new Spread.Cause(number("cgHeight"), 0.6, 0.01);
        Spread.Cause track = new Spread.Cause(number("front.track"), 0.2, 0.01);
        Spread.Cause rear = new Spread.Cause(number("rear.track"), 0.11, 0.01);
        Spread.Cause small = new Spread.Cause(number("rear.track"), 0.09, 0.01);
        assertThat(alike(spread(NEAR, 1, 2, height, track, rear)))
                .last()
                .asString()
                .startsWith("doubt near the limit from ")
                .contains("60 %")
                .contains("20 %")
                .doesNotContain("11 %");
        assertThat(alike(spread(NEAR, 1, 2, height, small)))
                .last()
                .asString()
                .contains("60 %")
                .doesNotContain("9 %");
        assertThat(alike(spread(NEAR, 1, 2, small))).hasSize(1);
    }

    @Test
    void whatToMeasureIsSaidWithWhatItLeaves() {
        Spread now = spread(NEAR, 4, 9);
        assertThat(DoubtVerdict.measureNext(List.of(), now, Units.METRIC))
                .startsWith("No better measurement of a single value would narrow ");
        Measurement height = new Measurement(number("cgHeight"), 0.01, DEG_PER_G.toSi(5.5), DEG_PER_G.toSi(8));
        assertThat(DoubtVerdict.measureNext(List.of(height), now, Units.METRIC))
                .contains("better (now 4.00 to 9.00 deg/g), measure ")
                .endsWith(" (then 5.50 to 8.00 deg/g).");
    }
}
