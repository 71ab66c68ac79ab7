package evenhand.bump;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Weights;
import evenhand.road.Profile;
import evenhand.road.RandomRoad;
import evenhand.scenario.ScenarioReader;
import evenhand.turn.Direction;
import java.nio.file.Files;
import java.nio.file.Path;
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

/** How long the nonlinear quarter car takes for a second on a random road, and a car for an event. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(value = 1, jvmArgs = "-XX:+UseSerialGC")
public class BumpBenchmark {
    private static final double SPEED = 80 / 3.6;
    private static final double CLASS_C = 256e-6;

    /** Error of a step, m: the first is sure to 1e-6 on this road, the second is what answers are worked out with. */
    @Param({"1e-8", "1e-9"})
    double tolerance = 1e-8;

    @Param({"harbour-saloon", "slipper-coupe"})
    String demo = "harbour-saloon";

    private final Profile second = RandomRoad.of(CLASS_C, 1, SPEED);
    private Car car = Demo.car(demo);
    private WheelStation rear = WheelStation.atRest(car, End.REAR).orElseThrow();

    /** Demo cars. */
    private static final class Demo {
        private Demo() {}

        static Car car(String demo) {
            Path root = Path.of("").toAbsolutePath();
            while (!Files.isDirectory(root.resolve("scenarios"))) {
                root = root.getParent();
            }
            return ScenarioReader.read(root.resolve("scenarios").resolve(demo + ".json"))
                    .scenario()
                    .orElseThrow()
                    .setups()
                    .get(0)
                    .car()
                    .settled();
        }
    }

    @Setup
    public void read() {
        car = Demo.car(demo);
        rear = WheelStation.atRest(car, End.REAR).orElseThrow();
    }

    /** One second of a road of class C at 80 km/h: 200 µs are 5 000 times real time. */
    @Benchmark
    public double secondOfRandomRoad() {
        Crossing crossing = new Crossing(rear, tolerance, 1);
        crossing.witness.countsGrip = false;
        crossing.overEvent(second, SPEED);
        return crossing.step.body;
    }

    /** The same with the tyre's law at every step, and a thousand rows. */
    @Benchmark
    public double secondWithGripAndRows() {
        Crossing crossing = new Crossing(rear, tolerance, Series.FINEST);
        crossing.overEvent(second, SPEED);
        return crossing.step.body;
    }

    /** All four wheels over ripples in mid-corner, the turn included. */
    @Benchmark
    public BumpAnswer ripplesInMidCorner() {
        return DriveOver.inCorner(
                car, radius -> Profile.ripples(0.01, 1.2, 8), 50 / 3.6, 0.4 * Weights.GRAVITY, Direction.LEFT);
    }
}
