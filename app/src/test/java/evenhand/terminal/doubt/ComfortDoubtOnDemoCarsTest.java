package evenhand.terminal.doubt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.answers.Aim;
import evenhand.answers.Answers;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.car.Car;
import evenhand.car.LoadCase;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.doubt.Doubt;
import evenhand.doubt.Spread;
import evenhand.doubt.Tolerance;
import evenhand.scenario.Demo;
import evenhand.scenario.Scenario;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Where the driver sits and how the body's mass is spread are estimates, and comfort is in doubt by them too. */
class ComfortDoubtOnDemoCarsTest {
    private static final Judged COMFORT = new Judged(Criterion.SEAT_COMFORT, OptionalDouble.empty());
    private static final String SEAT = "seat.behindFrontAxle";
    private static final String INERTIA = "pitchInertia";

    private static Spread comfort(Entries car, Optional<LoadCase> load) {
        Doubt.Question question = new Doubt.Question(
                Trial.usual().with(load),
                512,
                1,
                Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES,
                Optional.of(new Aim(COMFORT, Aim.Sense.AT_MOST, 1)),
                Progress.NONE);
        return Doubt.of(List.of(car), question).cars().get(0).spreads().get(0);
    }

    private static Map<String, Double> shares(Spread spread) {
        return spread.causes().stream().collect(Collectors.toMap(Spread.Cause::path, Spread.Cause::share));
    }

    private static double with(Car car, double inertia, double seat) {
        Answers answers = Trial.usual().ask(car, List.of(COMFORT), standing -> standing.riding(inertia, seat));
        return COMFORT.si(answers).orElseThrow();
    }

    /** Shares by slopes of this test's own. */
    @Test
    void whereTheSeatIsAndTheInertiaInPitchHaveTheirSharesOfTheDoubt() {
        List<Double> ofSeat = new ArrayList<>();
        for (String demo : List.of("harbour-saloon")) {
            Scenario scenario = Demo.read(demo);
            Car car = scenario.setups().get(0).car();
            Spread spread = comfort(scenario.setups().get(0).entries(), Optional.empty());
            double variance = spread.standardDeviation() * spread.standardDeviation();
            Map<String, Adjustable> guessed =
                    Catalogue.estimatedForComfort(car).stream().collect(Collectors.toMap(Adjustable::path, one -> one));
            double inertia = guessed.get(INERTIA).si();
            double seat = guessed.get(SEAT).si();
            double bySeat = guessed.get(SEAT).tolerance() / 2;
            double byInertia = guessed.get(INERTIA).tolerance() / 2;
            double ofSeatHere = (with(car, inertia, seat + bySeat) - with(car, inertia, seat - bySeat)) / 2;
            double ofInertia = (with(car, inertia + byInertia, seat) - with(car, inertia - byInertia, seat)) / 2;
            Map<String, Double> shares = shares(spread);
            assertThat(shares.getOrDefault(SEAT, 0.0)).isCloseTo(ofSeatHere * ofSeatHere / variance, within(0.08));
            assertThat(shares.getOrDefault(INERTIA, 0.0)).isCloseTo(ofInertia * ofInertia / variance, within(0.05));
            ofSeat.add(shares.getOrDefault(SEAT, 0.0));
        }
        assertThat(ofSeat).allMatch(share -> share > 0.1);
    }

    @Test
    void aSeatThatIsMeasuredIsNoGuessAnyMore() {
        Entries car = Demo.read("bakery-front-drive").setups().get(0).entries();
        Spread guessed = comfort(car, Optional.empty());
        Spread measured = comfort(Catalogue.with(car, SEAT, 1.3), Optional.empty());
        assertThat(measured.width()).isLessThan(0.8 * guessed.width());
        assertThat(shares(measured).getOrDefault(SEAT, 0.0)).isLessThan(0.2);
    }

    /** With a load aboard the inertia is estimated of the laden body, in each of the sampled cars as in the one given. */
    @Test
    void ofALadenCarTheAnswerStaysInTheMiddleOfItsDoubt() {
        Scenario scenario = Demo.read("orchard-estate");
        for (LoadCase load : scenario.loadCases()) {
            Spread spread = comfort(scenario.setups().get(0).entries(), Optional.of(load));
            assertThat(spread.median())
                    .isCloseTo(spread.nominal().orElseThrow(), within(0.25 * spread.standardDeviation()));
        }
    }
}
