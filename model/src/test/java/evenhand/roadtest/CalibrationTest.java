package evenhand.roadtest;

import static evenhand.answers.Trials.judged;
import static evenhand.roadtest.RoadTestCars.EXACT;
import static evenhand.roadtest.RoadTestCars.G;
import static evenhand.roadtest.RoadTestCars.pace;
import static evenhand.roadtest.RoadTestCars.read;
import static evenhand.roadtest.RoadTestCars.test;
import static evenhand.roadtest.RoadTestCars.toRead;
import static org.assertj.core.api.Assertions.assertThat;

import evenhand.answers.Answers;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Trial;
import evenhand.answers.Trials;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.doubt.Learnt;
import evenhand.turn.Direction;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.junit.jupiter.api.Test;

/**
 * Simulation-based calibration (Talts et al. 2018): cars are drawn from the tolerances, tests are made with them, readings are off by
 * what they say, and each is corrected. Then the truth lies anywhere among the draws afterwards with the same chance, and χ² is as
 * often improbable as it says. {@code mvn -Pworlds -pl model test} asks a thousand worlds. How often each rank came goes into {@code
 * target/calibration.csv}, which the validation report draws.
 */
class CalibrationTest {
    private static final int WORLDS = Integer.getInteger("roadtest.worlds", 100);
    private static final int BINS = 20;
    private static final int DRAWS = BINS - 1;
    /** Student's t at 95 % with the draws' degrees of freedom, for one more of the same law. */
    private static final double SURE = 2.101 * Math.sqrt(1 + 1.0 / DRAWS);

    private static final long SEED = 20_260_504;
    private static final Entries CAR = RoadTestCars.car();
    private static final Trial TRIAL = Trials.at(0.4);
    private static final List<Judged> FIGURES =
            List.of(judged(Criterion.LIMIT), judged(Criterion.NEAR_UNDERSTEER), judged(Criterion.ROLL_GRADIENT, 0.4));

    /** Of one world: the truth's rank among the draws for each figure, whether the interval holds it, χ²'s probability. */
    private record World(int[] ranks, boolean[] held, double probability) {}

    private static RoadTest empty() {
        List<Observation> asked = new ArrayList<>(toRead(0.15, 0.3, 0.45));
        asked.add(new Observation.Limit(Direction.LEFT, pace(0.7), 0.03 * G, Optional.empty()));
        return test("t", CAR, asked);
    }

    private static double[] figures(Unknowns unknowns, double[] z) {
        Answers answers =
                TRIAL.ask(Catalogue.build(CAR.off(unknowns.car(z))).value().orElseThrow(), FIGURES);
        return FIGURES.stream()
                .mapToDouble(one -> one.si(answers).orElseThrow())
                .toArray();
    }

    private static World world(int number) {
        SplittableRandom random = new SplittableRandom(SEED + number);
        RoadTest empty = empty();
        Unknowns unknowns = new Unknowns(List.of(CAR), List.of(empty), EXACT);
        double[] truth = gaussians(random, unknowns.count());
        RoadTest test = read(
                empty,
                unknowns,
                0,
                truth,
                gaussians(random, empty.observations().size()));
        OnTheRoad road = new OnTheRoad(List.of(test), new Unknowns(List.of(CAR), List.of(test), EXACT));
        Correction found = Correction.of(road).orElseThrow();
        double[][] factor = Learnt.factor(found.covariance());
        double[] actual = figures(unknowns, truth);
        int[] below = new int[FIGURES.size()];
        double[][] drawn = new double[FIGURES.size()][DRAWS];
        for (int draw = 0; draw < DRAWS; draw++) {
            double[] u = gaussians(random, truth.length);
            double[] z = found.moved().clone();
            for (int k = 0; k < z.length; k++) {
                for (int j = 0; j <= k; j++) {
                    z[k] += factor[k][j] * u[j];
                }
            }
            double[] figures = figures(unknowns, z);
            for (int figure = 0; figure < below.length; figure++) {
                drawn[figure][draw] = figures[figure];
                below[figure] += figures[figure] < actual[figure] ? 1 : 0;
            }
        }
        boolean[] held = new boolean[below.length];
        for (int figure = 0; figure < below.length; figure++) {
            double mean = Arrays.stream(drawn[figure]).average().orElseThrow();
            double square = Arrays.stream(drawn[figure])
                            .map(x -> (x - mean) * (x - mean))
                            .sum()
                    / (DRAWS - 1);
            held[figure] = Math.abs(actual[figure] - mean) <= SURE * Math.sqrt(square);
        }
        return new World(
                below,
                held,
                1 - new ChiSquaredDistribution(null, road.count()).cumulativeProbability(found.chiSquare()));
    }

    private static double[] gaussians(SplittableRandom random, int count) {
        double[] all = new double[count];
        Arrays.setAll(all, k -> random.nextGaussian());
        return all;
    }

    /** The chance that even chances fill the bins so unevenly. */
    private static double evenness(int[] bins) {
        double expected = (double) WORLDS / BINS;
        double sum = Arrays.stream(bins)
                .mapToDouble(count -> (count - expected) * (count - expected) / expected)
                .sum();
        return 1 - new ChiSquaredDistribution(null, BINS - 1).cumulativeProbability(sum);
    }

    private static String row(String what, int[] bins) {
        return what + "," + Arrays.stream(bins).mapToObj(Integer::toString).collect(Collectors.joining(",")) + "\n";
    }

    @Test
    void theTruthLiesAnywhereAmongTheDrawsAfterwards() throws IOException {
        StringBuilder table = new StringBuilder();
        List<World> worlds = IntStream.range(0, WORLDS)
                .parallel()
                .mapToObj(CalibrationTest::world)
                .toList();
        for (int figure = 0; figure < FIGURES.size(); figure++) {
            int at = figure;
            int[] bins = new int[BINS];
            worlds.forEach(world -> bins[world.ranks()[at]]++);
            double held = worlds.stream().filter(world -> world.held()[at]).count() / (double) WORLDS;
            table.append(
                    row("rank of the true " + FIGURES.get(figure).criterion().name(), bins));
            String name = FIGURES.get(figure).criterion().name() + " " + Arrays.toString(bins) + " holds " + held;
            assertThat(evenness(bins)).as(name).isGreaterThan(0.001);
            assertThat(held).as(name).isBetween(WORLDS >= 1000 ? 0.93 : 0.89, WORLDS >= 1000 ? 0.97 : 0.99);
        }
        int[] bins = new int[BINS];
        worlds.forEach(world -> bins[Math.min(BINS - 1, (int) (world.probability() * BINS))]++);
        table.append(row("probability of χ²", bins));
        Files.writeString(Files.createDirectories(Path.of("target")).resolve("calibration.csv"), table);
        assertThat(evenness(bins)).as("probabilities " + Arrays.toString(bins)).isGreaterThan(0.001);
    }
}
