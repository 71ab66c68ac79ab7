package evenhand.terminal.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.answers.Aim;
import evenhand.answers.Answers;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.car.Weights;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.choice.Finding;
import evenhand.choice.OneChange;
import evenhand.choice.SeveralChanges;
import evenhand.choice.Span;
import evenhand.scenario.ScenarioReader;
import evenhand.turn.Direction;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What {@code find} says of the demo cars, against grids that ask the cars place by place. */
class FindOnDemoCarsTest {
    private static final double PACE = 0.5 * Weights.GRAVITY;
    private static final Trial TRIAL = new Trial(List.of(PACE), 40, Direction.LEFT);

    private static Entries car(String demo, int setup) {
        return ScenarioReader.read(Path.of("../scenarios/" + demo + ".json"))
                .scenario()
                .orElseThrow()
                .setups()
                .get(setup)
                .entries();
    }

    private static Judged judged(Criterion criterion) {
        return new Judged(criterion, criterion.hasPace() ? OptionalDouble.of(PACE) : OptionalDouble.empty());
    }

    private static Answers ask(Entries car, List<Span> spans, double... values) {
        Entries changed = car;
        for (int i = 0; i < values.length; i++) {
            changed = Catalogue.with(changed, spans.get(i).path(), values[i]);
        }
        return TRIAL.ask(Catalogue.build(changed).value().orElseThrow());
    }

    private static double place(Span span, int i, int n) {
        return span.from() + span.width() * i / n;
    }

    @ParameterizedTest
    @CsvSource({
        "harbour-saloon, 0, rear.lateralLocator.height, 0.18, 0.36",
        "harbour-saloon, 2, front.bar.rollStiffness, 0, 30000",
        "slipper-coupe, 0, rear.bumpStop.gap, 0.002, 0.05",
        "slipper-coupe, 1, front.spring.rate, 40000, 120000",
        "orchard-estate, 0, rear.spring.rate, 15000, 60000",
        "bakery-front-drive, 0, front.spring.rate, 15000, 60000"
    })
    void reachAndEverySolutionAreThoseOfADenseGrid(String demo, int setup, String path, double from, double to) {
        Entries car = car(demo, setup);
        List<Span> span = List.of(Span.of(car, path, from, to));
        int n = 200;
        for (Criterion criterion : List.of(Criterion.UNDERSTEER, Criterion.LIMIT_BALANCE)) {
            Judged judged = judged(criterion);
            double[] grid = new double[n + 1];
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int i = 0; i <= n; i++) {
                grid[i] = judged.si(ask(car, span, place(span.get(0), i, n))).orElseThrow();
                low = Math.min(low, grid[i]);
                high = Math.max(high, grid[i]);
            }
            double level = low + 0.613 * (high - low);
            Aim aim = new Aim(judged, Aim.Sense.EXACTLY, level);
            Finding.One found = (Finding.One)
                    OneChange.find(car, span.get(0), aim, List.of(), OptionalDouble.empty(), TRIAL, Progress.NONE);
            double little = 0.05 * criterion.noticeable();
            assertThat(found.reach().lowest()).as(criterion.name()).isBetween(low - little, low + little);
            assertThat(found.reach().highest()).as(criterion.name()).isBetween(high - little, high + little);
            List<Double> crossings = new ArrayList<>();
            for (int i = 1; i <= n; i++) {
                if ((grid[i - 1] - level) * (grid[i] - level) < 0) {
                    crossings.add(place(span.get(0), i, n));
                }
            }
            List<Double> places = new ArrayList<>(found.solutions());
            found.jumps().forEach(jump -> places.add(jump.at()));
            places.sort(null);
            assertThat(places).as(criterion.name() + " passes").hasSameSizeAs(crossings);
            for (int i = 0; i < crossings.size(); i++) {
                assertThat(places.get(i))
                        .isBetween(
                                crossings.get(i) - 1.01 * span.get(0).width() / n,
                                crossings.get(i) + 0.01 * span.get(0).width() / n);
            }
            for (double solution : found.solutions()) {
                assertThat(judged.si(ask(car, span, solution)).orElseThrow())
                        .isCloseTo(level, within(1e-6 * criterion.noticeable()));
            }
        }
    }

    @Test
    void whereTheRearRubberIsJustTouchedTheFigureIsSaidToBend() {
        Entries car = car("slipper-coupe", 0);
        List<Span> gap = List.of(Span.of(car, "rear.bumpStop.gap", 0.005, 0.06));
        Judged roll = judged(Criterion.ROLL_GRADIENT);
        int n = 1000;
        double sharpest = 0;
        double kink = 0;
        double[] last = new double[2];
        for (int i = 0; i <= n; i++) {
            double here = roll.si(ask(car, gap, place(gap.get(0), i, n))).orElseThrow();
            double bend = i < 2 ? 0 : Math.abs(here - 2 * last[1] + last[0]);
            if (bend > sharpest) {
                sharpest = bend;
                kink = place(gap.get(0), i - 1, n);
            }
            last = new double[] {last[1], here};
        }
        double just = kink - gap.get(0).width() / n;
        Aim aim = new Aim(roll, Aim.Sense.EXACTLY, roll.si(ask(car, gap, just)).orElseThrow());
        Finding.One found = (Finding.One)
                OneChange.find(car, gap.get(0), aim, List.of(), OptionalDouble.empty(), TRIAL, Progress.NONE);
        assertThat(found.solutions()).anySatisfy(place -> assertThat(place).isCloseTo(just, within(1e-4)));
        Finding.One there = (Finding.One) OneChange.find(
                Catalogue.with(car, gap.get(0).path(), just),
                gap.get(0),
                aim,
                List.of(),
                OptionalDouble.empty(),
                TRIAL,
                Progress.NONE);
        assertThat(there.notes()).contains(Finding.Note.KINK);
        Finding.One away = (Finding.One) OneChange.find(
                Catalogue.with(car, gap.get(0).path(), 0.01),
                gap.get(0),
                new Aim(roll, Aim.Sense.AT_LEAST, 0),
                List.of(),
                OptionalDouble.empty(),
                TRIAL,
                Progress.NONE);
        assertThat(away.notes()).doesNotContain(Finding.Note.KINK);
    }

    /** For an exact aim the second change of the grid is solved on a line, so that the grid meets the aim too. */
    @ParameterizedTest
    @CsvSource({
        "harbour-saloon, 0, rear.lateralLocator.height, 0.18, 0.36, front.bar.rollStiffness, 0, 30000, -2",
        "slipper-coupe, 0, rear.bumpStop.gap, 0.005, 0.05, front.bar.rollStiffness, 0, 20000, 3",
        "slipper-coupe, 0, rear.lateralLocator.pivot.up, 0.15, 0.26, front.spring.rate, 40000, 110000, 2",
        "orchard-estate, 0, front.spring.rate, 30000, 120000, rear.spring.rate, 15000, 60000, 2"
    })
    void aGridFindsNoSmallerChanges(
            String demo,
            int setup,
            String one,
            double from,
            double to,
            String other,
            double from2,
            double to2,
            double by) {
        Entries car = car(demo, setup);
        List<Span> spans = List.of(Span.of(car, one, from, to), Span.of(car, other, from2, to2));
        Judged judged = judged(Criterion.UNDERSTEER);
        double wanted =
                judged.si(TRIAL.ask(Catalogue.build(car).value().orElseThrow())).orElseThrow()
                        + by * judged.criterion().noticeable();
        Aim aim = new Aim(judged, Aim.Sense.EXACTLY, wanted);
        Finding.Several found = (Finding.Several) SeveralChanges.find(
                car,
                spans,
                aim,
                List.of(),
                List.of(OptionalDouble.empty(), OptionalDouble.empty()),
                TRIAL,
                Progress.NONE);
        int n = 28;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= n; i++) {
            double before = 0;
            for (int k = 0; k <= n; k++) {
                double lack = wanted
                        - judged.si(ask(car, spans, place(spans.get(0), i, n), place(spans.get(1), k, n)))
                                .orElseThrow();
                if (k > 0 && lack * before <= 0) {
                    double part = before == lack ? 0 : before / (before - lack);
                    double second =
                            place(spans.get(1), k - 1, n) + part * spans.get(1).width() / n;
                    least = Math.min(least, size(spans, place(spans.get(0), i, n), second));
                }
                before = lack;
            }
        }
        assertThat(found.met()).isEqualTo(least < Double.POSITIVE_INFINITY);
        if (found.met()) {
            assertThat(found.achieved())
                    .isCloseTo(wanted, within(1e-6 * judged.criterion().noticeable()));
            double size = size(spans, found.values().get(0), found.values().get(1));
            assertThat(size).isLessThanOrEqualTo(least * 1.002 + 1e-6);
        }
    }

    private static double size(List<Span> spans, double... values) {
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            double move =
                    (values[i] - spans.get(i).adjustable().si()) / spans.get(i).width();
            sum += move * move;
        }
        return sum;
    }
}
