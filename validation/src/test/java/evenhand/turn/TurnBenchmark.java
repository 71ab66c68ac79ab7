package evenhand.turn;

import evenhand.car.Car;
import evenhand.car.RoadCars;
import evenhand.car.Weights;
import evenhand.scenario.ScenarioReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
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
import org.openjdk.jmh.infra.Blackhole;

/** How long the turn takes: a point, a branch, a whole answer, ten thousand cars. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(value = 1, jvmArgs = "-XX:+UseSerialGC")
public class TurnBenchmark {
    private static final double G = Weights.GRAVITY;
    private static final double RADIUS = 40;
    private static final int POINTS = 60;

    /** Demo cars: a plain live-axle saloon, and a coupé that lands on its stops in mid-corner. */
    @Param({"harbour-saloon", "slipper-coupe"})
    String demo = "harbour-saloon";

    private Car car = RoadCars.plain(1);
    private Branch branch = new Branch(new Equilibrium(car, RADIUS));
    private int turn;

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
                .car()
                .settled();
        branch = new Branch(new Equilibrium(car, RADIUS));
        branch.follow(Branch.Until.FOLD);
    }

    /** One point at a pace, from its neighbours on the branch. */
    @Benchmark
    public double pointFromNeighbours() {
        turn = (turn + 1) % 50;
        branch.atAcceleration((0.2 + 0.01 * turn) * G);
        return branch.state[Equilibrium.STEER];
    }

    /** One point at 0.4 g with nothing known: the branch up to its limit, then the point. */
    @Benchmark
    public double coldPoint() {
        Branch cold = new Branch(new Equilibrium(car, RADIUS));
        cold.follow(Branch.Until.FOLD);
        cold.atAcceleration(0.4 * G);
        return cold.state[Equilibrium.STEER];
    }

    /** A curve of 60 points up to the fold. */
    @Benchmark
    public double curveWithFold() {
        branch.follow(Branch.Until.FOLD);
        double sum = 0;
        double limit = branch.limit();
        for (int i = 0; i < POINTS; i++) {
            branch.atAcceleration(Branch.START + (limit - Branch.START) * i / POINTS);
            sum += branch.state[Equilibrium.STEER];
        }
        return sum;
    }

    /** All that {@code balance} needs of one set-up: rows, paces, budget, events. */
    @Benchmark
    public TurnAnswer wholeAnswer() {
        return SteadyTurn.answer(car, List.of(0.2 * G, 0.5 * G), RADIUS, Direction.LEFT);
    }

    /** The limits of ten thousand random cars. */
    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @OutputTimeUnit(TimeUnit.MILLISECONDS)
    @Warmup(iterations = 1)
    @Measurement(iterations = 2)
    public void tenThousandRandomCars(Blackhole sink) {
        for (long seed = 0; seed < 10_000; seed++) {
            OptionalDouble limit = SteadyTurn.limit(RoadCars.any(seed).settled(), RADIUS);
            sink.consume(limit);
        }
    }
}
