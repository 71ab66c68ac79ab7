package evenhand.choice;

import evenhand.answers.Aim;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.car.Weights;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.doubt.Doubt;
import evenhand.doubt.Tolerance;
import evenhand.scenario.ScenarioReader;
import evenhand.turn.Direction;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How long choosing takes: one car, eight changes compared, one change found, ten thousand cars doubted. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 4, time = 2)
@Fork(value = 1, jvmArgs = "-XX:+UseSerialGC")
public class ChoiceBenchmark {
    private static final double G = Weights.GRAVITY;
    private static final Trial TRIAL = new Trial(List.of(0.2 * G, 0.5 * G), 40, Direction.LEFT);
    private static final Map<String, Double> CHANGES = new TreeMap<>(Map.of(
            "rear.lateralLocator.height", 1.05,
            "front.spring.rate", 1.1,
            "rear.spring.rate", 1.1,
            "front.bar.rollStiffness", 1.2,
            "front.track", 1.01,
            "rear.track", 1.01,
            "front.rollCentre.height", 1.2,
            "cgHeight", 0.98));

    /** Demo cars: a plain live-axle saloon, and a coupé that lands on its stops in mid-corner. */
    @Param({"harbour-saloon", "slipper-coupe"})
    String demo = "harbour-saloon";

    private Entries car = new Entries(Optional.empty(), Map.of());
    private Entries changed = car;

    @Setup
    public void read() {
        Path root = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(root.resolve("scenarios"))) {
            root = root.getParent();
        }
        car = ScenarioReader.read(root.resolve("scenarios").resolve(demo + ".json"))
                .scenario()
                .orElseThrow()
                .setups()
                .get(0)
                .entries();
        changed = car;
        for (Map.Entry<String, Double> change : CHANGES.entrySet()) {
            double now = Catalogue.build(car).at(change.getKey()).orElseThrow().si();
            changed = Catalogue.with(changed, change.getKey(), now * change.getValue());
        }
    }

    /** One car built and asked: what everything below is made of. */
    @Benchmark
    public Object oneCar() {
        return TRIAL.ask(Catalogue.build(car).value().orElseThrow());
    }

    @Benchmark
    public Comparison compareWithEightChanges() {
        return Comparison.of(car, changed, TRIAL);
    }

    @Benchmark
    public Finding findOneChange() {
        Judged judged = new Judged(Criterion.UNDERSTEER, OptionalDouble.of(0.5 * G));
        Trial trial = new Trial(List.of(0.5 * G), 40, Direction.LEFT);
        double now =
                judged.si(trial.ask(Catalogue.build(car).value().orElseThrow())).orElseThrow();
        Aim aim = new Aim(
                judged, Aim.Sense.EXACTLY, now - 0.2 * judged.criterion().noticeable());
        Span pivot = Span.of(car, "rear.lateralLocator.height", 0.18, 0.34);
        return OneChange.find(car, pivot, aim, List.of(), OptionalDouble.empty(), trial, Progress.NONE);
    }

    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @Warmup(iterations = 1)
    @Measurement(iterations = 2)
    public Doubt.Answer doubtWithTenThousandSamples() {
        return Doubt.of(
                List.of(car),
                new Doubt.Question(
                        TRIAL, 10_000, 1, Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES, Optional.empty(), Progress.NONE));
    }
}
