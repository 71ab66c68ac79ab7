package evenhand.words.doubt;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.answers.Aim;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Ways;
import evenhand.car.Car;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Catalogue;
import evenhand.doubt.Doubt;
import evenhand.doubt.Measurement;
import evenhand.doubt.Spread;
import evenhand.doubt.Tolerance;
import evenhand.quantity.Unit;
import evenhand.scenario.Demo;
import evenhand.words.ChangeWords;
import evenhand.words.Units;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What doubt leaves, said: each sentence on both sides of where it changes its mind. */
class DoubtWordsTest {
    private static final Unit G = Unit.of("g");

    private static String apart(Judged judged, Unit unit, double low, double nominal, double high) {
        Spread spread = new Spread(
                judged,
                OptionalDouble.of(unit.toSi(nominal)),
                unit.toSi(low),
                unit.toSi(high),
                unit.toSi(nominal),
                unit.toSi(high - low) / 4,
                0,
                List.of());
        Doubt.Left left = new Doubt.Left(List.of(spread), 0, OptionalDouble.empty(), OptionalDouble.empty(), List.of());
        return DoubtWords.apart(
                        "Now",
                        "Before",
                        left,
                        new Doubt.Left(List.of(), 0, OptionalDouble.empty(), OptionalDouble.empty(), List.of()),
                        Units.METRIC)
                .get(0);
    }

    @Test
    void whatMayGoBothWaysIsSaidBothWays() {
        Judged limit = new Judged(Criterion.LIMIT, OptionalDouble.empty());
        assertThat(apart(limit, G, -0.013, -0.009, 0.019))
                .endsWith(
                        "it comes out 0.009 g less, and lies between 0.013 g less and 0.019 g more, nineteen times in twenty.");
        assertThat(apart(limit, G, -0.019, 0.009, 0.013))
                .endsWith(
                        "it comes out 0.009 g more, and lies between 0.019 g less and 0.013 g more, nineteen times in twenty.");
        assertThat(apart(limit, G, 0.002, 0.009, 0.013))
                .contains("between 0.002 and 0.013 g more, nineteen times in twenty");
    }

    @Test
    void theSlopeOfTheLeanIsToldApartFromTheLean() {
        Judged roll = new Judged(Criterion.ROLL_GRADIENT, OptionalDouble.of(G.toSi(0.5)));
        assertThat(apart(roll, Unit.of("deg/g"), 0.01, 0.02, 0.07))
                .startsWith(
                        "The roll gradient at 0.5 g, the lean that each further g adds, of \"Now\" is 0.02 deg/g more");
    }

    private static final Judged LIMIT = new Judged(Criterion.LIMIT, OptionalDouble.empty());
    private static final OptionalDouble NONE = OptionalDouble.empty();

    private static Tolerance number(String path, double halfWidth) {
        Adjustable number = Demo.read("harbour-saloon").setup("As bought").orElseThrow().values().stream()
                .filter(value -> value.path().equals(path))
                .findFirst()
                .orElseThrow();
        return new Tolerance(number, halfWidth);
    }

    private static Spread.Cause cause(String path, double share) {
        return new Spread.Cause(number(path, 0.01), share, 0.001);
    }

    private static Spread limit(
            OptionalDouble nominal, double low, double high, double silent, Spread.Cause... causes) {
        return spread(LIMIT, nominal, low, high, silent, causes);
    }

    private static Spread spread(
            Judged judged, OptionalDouble nominal, double low, double high, double silent, Spread.Cause... causes) {
        return new Spread(
                judged,
                nominal.isPresent() ? OptionalDouble.of(G.toSi(nominal.getAsDouble())) : nominal,
                G.toSi(low),
                G.toSi(high),
                G.toSi((low + high) / 2),
                G.toSi(high - low) / 4,
                silent,
                List.of(causes));
    }

    private static List<String> alone(Spread spread, double noTurn) {
        return alone(new Doubt.Left(List.of(spread), noTurn, NONE, NONE, List.of()), Optional.empty(), Ways.LEFT);
    }

    private static List<String> alone(Doubt.Left left, Optional<Aim> aim, Ways ways) {
        return DoubtWords.alone(left, aim, ways, Units.METRIC);
    }

    @Test
    void anIntervalIsToldWithWhatTheCarAsGivenDoes() {
        assertThat(alone(limit(OptionalDouble.of(0.8), 0.78, 0.83, 0), 0))
                .containsExactly("The limit comes out at 0.800 g and lies between 0.780 and 0.830 g, nineteen times in"
                        + " twenty; no single input is to blame.");
        assertThat(alone(limit(NONE, 0.78, 0.83, 0), 0))
                .containsExactly(
                        "The limit lies between 0.780 and 0.830 g, nineteen times in twenty; no single input is"
                                + " to blame.");
    }

    /** What is noticeable of a limit is 0.01 g: below a millionth of it the solver rounds. */
    @Test
    void whatVariesByNoMoreThanRoundingRestsOnNothingInDoubt() {
        assertThat(alone(limit(OptionalDouble.of(0.8), 0.8, 0.8 + 0.9e-8, 0), 0))
                .containsExactly("The limit comes out at 0.800 g, and nothing that it rests on is in doubt.");
        assertThat(alone(limit(OptionalDouble.of(0.8), 0.8, 0.8 + 1.1e-8, 0), 0).get(0))
                .contains("nineteen times in twenty");
    }

    @Test
    void asManyCausesAreNamedAsMakeUpMostOfIt() {
        OptionalDouble at = OptionalDouble.of(0.8);
        String start = "The limit comes out at 0.800 g and lies between 0.780 and 0.830 g, nineteen times in twenty; ";
        Spread.Cause height = cause("cgHeight", 0.51);
        Spread.Cause front = cause("front.track", 0.2);
        Spread.Cause rear = cause("rear.track", 0.1);
        String cg = ChangeWords.name("cgHeight");
        String frontTrack = ChangeWords.name("front.track");
        String rearTrack = ChangeWords.name("rear.track");
        assertThat(alone(limit(at, 0.78, 0.83, 0, height), 0))
                .containsExactly(start + "most of the doubt comes from " + cg + " (51 %).");
        assertThat(alone(limit(at, 0.78, 0.83, 0, cause("cgHeight", 0.49)), 0))
                .containsExactly(start + "part of the doubt comes from " + cg + " (49 %).");
        assertThat(alone(limit(at, 0.78, 0.83, 0, height, front), 0))
                .containsExactly(
                        start + "most of the doubt comes from " + cg + " (51 %) and " + frontTrack + " (20 %).");
        assertThat(alone(limit(at, 0.78, 0.83, 0, height, front, rear), 0))
                .containsExactly(start + "most of the doubt comes from " + cg + " (51 %), " + frontTrack
                        + " (20 %) and " + rearTrack + " (10 %).");
        // A fourth is not named, nor is one of less than a tenth beside a larger; by itself it is.
        assertThat(alone(limit(at, 0.78, 0.83, 0, height, front, rear, cause("wheelbase", 0.1)), 0)
                        .get(0))
                .endsWith("and " + rearTrack + " (10 %).");
        assertThat(alone(limit(at, 0.78, 0.83, 0, height, front, cause("rear.track", 0.099)), 0)
                        .get(0))
                .endsWith(" and " + frontTrack + " (20 %).");
        assertThat(alone(limit(at, 0.78, 0.83, 0, cause("rear.track", 0.084)), 0))
                .containsExactly(start + "part of the doubt comes from " + rearTrack + " (8.4 %).");
        // Behind nine tenths nobody else is looked for.
        assertThat(alone(limit(at, 0.78, 0.83, 0, cause("cgHeight", 0.89), front), 0)
                        .get(0))
                .endsWith(cg + " (89 %) and " + frontTrack + " (20 %).");
        assertThat(alone(limit(at, 0.78, 0.83, 0, cause("cgHeight", 0.91), front), 0)
                        .get(0))
                .endsWith("from " + cg + " (91 %).");
    }

    @Test
    void carsThatDoNotTurnAreToldApartFromThoseThatDoNotGetThere() {
        Spread all = limit(OptionalDouble.of(0.8), 0.78, 0.83, 0.25);
        assertThat(alone(all, 0.25))
                .last()
                .isEqualTo("25 % of the sampled cars do not turn at all; the intervals are of the others.");
        assertThat(alone(all, 0.25).get(0)).endsWith("; no single input is to blame.");
        assertThat(alone(all, 0.2).get(0))
                .endsWith(". 5.0 % of the sampled cars do not get there, and are left out of it.");
        assertThat(alone(all, 0).get(0))
                .endsWith(". 25 % of the sampled cars do not get there, and are left out of it.");
        assertThat(alone(all, 0)).hasSize(1);
    }

    @Test
    void chancesAreToldOfTheFrontAndOfAnAim() {
        Doubt.Left both = new Doubt.Left(List.of(), 0, OptionalDouble.of(0.31), OptionalDouble.of(0.54), List.of());
        assertThat(alone(both, Optional.empty(), Ways.BOTH))
                .containsExactly("The chance that the front goes first at the limit, both ways round, is 54 %.");
        assertThat(alone(both, Optional.of(Aim.frontFirst()), Ways.RIGHT))
                .containsExactly("The chance that the front goes first at the limit, turning right, is 54 %.");
        assertThat(alone(both, Optional.of(new Aim(LIMIT, Aim.Sense.AT_LEAST, G.toSi(0.8))), Ways.LEFT))
                .containsExactly(
                        "The chance that the front goes first at the limit, turning left, is 54 %.",
                        "The chance that \"limit at least 0.8 g\" is met is 31 %.");
        assertThat(alone(both, Optional.of(new Aim(LIMIT, Aim.Sense.EXACTLY, G.toSi(0.8))), Ways.LEFT))
                .last()
                .isEqualTo("The chance that \"limit 0.8 g\" is met, to within 0.010 g, is 31 %.");
    }

    @Test
    void ofAFigureAtPacesTheBriskestHasItsSentence() {
        Spread gently = spread(new Judged(Criterion.UNDERSTEER, OptionalDouble.of(G.toSi(0.2))), NONE, 0.1, 0.2, 0);
        Spread briskly = spread(new Judged(Criterion.UNDERSTEER, OptionalDouble.of(G.toSi(0.5))), NONE, 0.1, 0.2, 0);
        Spread silent = spread(new Judged(Criterion.LIMIT_BALANCE, OptionalDouble.empty()), NONE, 0.1, 0.2, 0);
        List<String> said = alone(
                new Doubt.Left(List.of(gently, limit(NONE, 0.78, 0.83, 0), briskly, silent), 0, NONE, NONE, List.of()),
                Optional.empty(),
                Ways.LEFT);
        assertThat(said).hasSize(2);
        assertThat(said.get(0)).startsWith("The limit lies");
        assertThat(said.get(1)).startsWith("The understeer at 0.5 g lies");
    }

    private static String apart(double low, double nominal, double high, Spread... own) {
        Doubt.Left left =
                new Doubt.Left(List.of(limit(OptionalDouble.of(nominal), low, high, 0)), 0, NONE, NONE, List.of());
        return DoubtWords.apart(
                        "Now", "Before", left, new Doubt.Left(List.of(own), 0, NONE, NONE, List.of()), Units.METRIC)
                .get(0);
    }

    @Test
    void aDifferenceThatIsSureIsSaidWithItsSide() {
        assertThat(apart(-0.03, -0.02, -0.01))
                .isEqualTo("The limit of \"Now\" is 0.020 g less than that of \"Before\", and between 0.010 and 0.030 g"
                        + " less, nineteen times in twenty.");
        assertThat(apart(0.01, 0.02, 0.03)).contains("is 0.020 g more than").contains("between 0.010 and 0.030 g more");
        // Beside a kink the car as given lies outside: what is said is never outside of what lies.
        assertThat(apart(0.01, 0.04, 0.03)).contains("is 0.030 g more than");
        assertThat(apart(0.01, -0.02, 0.03)).contains("is 0.010 g more than");
    }

    @Test
    void aDifferenceOfNoMoreThanRoundingIsNone() {
        String same = "The limit is the same in \"Now\" as in \"Before\", whatever was guessed.";
        assertThat(apart(-0.9e-8, 0, 0.9e-8)).isEqualTo(same);
        assertThat(apart(-1.1e-8, 0, 0.9e-8)).contains("nineteen times in twenty");
        assertThat(apart(-0.9e-8, 0, 1.1e-8)).contains("nineteen times in twenty");
    }

    @Test
    void howMuchOfTheDoubtCancelsIsToldFromHalfOfItOn() {
        assertThat(apart(0.01, 0.02, 0.03, limit(NONE, 0.76, 0.7999, 0))).doesNotContain("alone");
        assertThat(apart(0.01, 0.02, 0.03, limit(NONE, 0.76, 0.8001, 0)))
                .endsWith(", nineteen times in twenty; either figure alone is only known to ±0.020 g.");
    }

    @Test
    void whatToMeasureIsSaidWithHowAndWithWhatItLeaves() {
        Spread now = limit(OptionalDouble.of(0.8), 0.78, 0.83, 0);
        assertThat(DoubtWords.measureNext(List.of(), now, Units.METRIC))
                .containsExactly("No better measurement of a single value would narrow the limit noticeably.");
        Tolerance height = number("cgHeight", 0.025);
        List<String> said = DoubtWords.measureNext(
                List.of(new Measurement(height, 0.01, G.toSi(0.79), G.toSi(0.82))), now, Units.METRIC);
        assertThat(said)
                .containsExactly(
                        "To know the limit better, measure:",
                        ChangeWords.name("cgHeight") + ", now " + DoubtWords.tolerance(height, Units.METRIC)
                                + ", to ±10 mm, by: "
                                + height.number().slot().how()
                                + ". It would then lie between 0.790 and 0.820 g instead of 0.780 and 0.830 g.");
    }

    @Test
    void aToleranceOfAnEstimateSaysThatItIsOne() {
        Car car = Demo.read("harbour-saloon").setup("As bought").orElseThrow().car();
        Adjustable estimated = Catalogue.estimatedForComfort(car).stream()
                .filter(number -> number.path().equals("seat.behindFrontAxle"))
                .findFirst()
                .orElseThrow();
        assertThat(DoubtWords.tolerance(new Tolerance(estimated, 0.025), Units.METRIC))
                .isEqualTo("estimated, ±25 mm");
        assertThat(DoubtWords.tolerance(number("front.track", 0.005), Units.METRIC))
                .isEqualTo("±5 mm");
    }
}
