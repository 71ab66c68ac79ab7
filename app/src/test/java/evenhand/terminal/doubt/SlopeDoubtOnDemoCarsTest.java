package evenhand.terminal.doubt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.car.Weights;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.doubt.Doubt;
import evenhand.doubt.SlopeDoubt;
import evenhand.doubt.SlopeSpread;
import evenhand.doubt.Spread;
import evenhand.doubt.Tolerance;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.scenario.ScenarioReader;
import evenhand.scenario.Setup;
import evenhand.turn.Direction;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** First-order doubt of the demo cars, against samples of them. */
class SlopeDoubtOnDemoCarsTest {
    private static final double GENTLE = 0.2 * Weights.GRAVITY;
    private static final double BRISK = 0.5 * Weights.GRAVITY;
    private static final double FAST = 0.7 * Weights.GRAVITY;
    private static final Trial TRIAL = new Trial(List.of(GENTLE, BRISK), 40, Direction.LEFT);
    private static final Tolerance.Unsaid UNSAID = Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES;
    private static final List<Judged> FIGURES = List.of(
            new Judged(Criterion.UNDERSTEER, OptionalDouble.of(GENTLE)),
            new Judged(Criterion.UNDERSTEER, OptionalDouble.of(BRISK)),
            new Judged(Criterion.ROLL_GRADIENT, OptionalDouble.of(GENTLE)),
            new Judged(Criterion.LIMIT, OptionalDouble.empty()));

    private static List<Entries> cars(String demo, int first, int last) {
        List<Setup> setups = ScenarioReader.read(Path.of("../scenarios/" + demo + ".json"))
                .scenario()
                .orElseThrow()
                .setups();
        return List.of(setups.get(first).entries(), setups.get(last).entries());
    }

    @ParameterizedTest
    @CsvSource({
        "harbour-saloon, 0, 7, 1000",
        "orchard-estate, 0, 3, 400", // its links are followed anew for each sample
    })
    void samplesAgree(String demo, int first, int last, int samples) {
        samplesAgree(cars(demo, first, last), samples);
    }

    /** This one has estimated tyres; as soon as the loads are known that their numbers are stated at, first order is fair. */
    @ParameterizedTest
    @CsvSource({
        "bakery-front-drive, 0, 5, 2800 N",
    })
    void samplesAgreeWhereTheReferenceLoadsAreKnown(String demo, int first, int last, String load) throws Exception {
        List<Entries> cars = new ArrayList<>();
        for (Entries car : cars(demo, first, last)) {
            Entries front = Catalogue.with(car, "front.tyre.referenceLoad", Quantity.parse(load, Dimension.FORCE));
            cars.add(Catalogue.with(front, "rear.tyre.referenceLoad", Quantity.parse(load, Dimension.FORCE)));
        }
        samplesAgree(cars, 400);
    }

    /** Guessed loads bend the understeer of a car that is near its limit; then first order says that it is too little. */
    @Test
    void whereGuessedTyresBendTheFigureFirstOrderSaysThatItIsNotFair() {
        Judged fast = new Judged(Criterion.UNDERSTEER, OptionalDouble.of(FAST));
        Trial trial = new Trial(List.of(GENTLE, FAST), 40, Direction.LEFT);
        SlopeDoubt slopes =
                SlopeDoubt.of(cars("bakery-front-drive", 0, 5), trial, List.of(fast), UNSAID, Progress.NONE);
        assertThat(slopes.of(0, fast).orElseThrow().isFair()).isFalse();
    }

    private static void samplesAgree(List<Entries> cars, int count) {
        SlopeDoubt slopes = SlopeDoubt.of(cars, TRIAL, FIGURES, UNSAID, Progress.NONE);
        Doubt.Answer samples =
                Doubt.of(cars, new Doubt.Question(TRIAL, count, 1, UNSAID, Optional.empty(), Progress.NONE));
        for (Judged figure : FIGURES) {
            agree(slopes.of(0, figure).orElseThrow(), samples.cars().get(0));
            agree(slopes.of(1, figure).orElseThrow(), samples.cars().get(1));
        }
        for (Judged figure : FIGURES.subList(0, 2)) {
            agree(
                    slopes.difference(1, figure).orElseThrow(),
                    samples.differences().get(0));
        }
    }

    private static void agree(SlopeSpread slopes, Doubt.Left samples) {
        Spread spread = samples.spreads().stream()
                .filter(one -> one.judged().equals(slopes.judged()))
                .findFirst()
                .orElseThrow();
        assertThat(slopes.isFair()).as(slopes.judged().toString()).isTrue();
        assertThat(2 * slopes.halfWidth())
                .as(slopes.judged().toString())
                .isCloseTo(spread.width(), within(0.15 * spread.width()));
    }

    /** Let down on its perches the saloon touches its rubbers about there: the slope of its lean jumps. */
    @Test
    void whereARubberIsJustTouchedFirstOrderSaysThatItIsNotFair() {
        Judged lean = new Judged(Criterion.ROLL_GRADIENT, OptionalDouble.of(BRISK));
        List<Entries> cars = cars("harbour-saloon", 0, 1);
        SlopeDoubt slopes = SlopeDoubt.of(cars, TRIAL, List.of(lean), UNSAID, Progress.NONE);
        assertThat(slopes.of(0, lean).orElseThrow().isFair()).isTrue();
        assertThat(slopes.of(1, lean).orElseThrow().isFair()).isFalse();
    }
}
