package evenhand.ride;

import evenhand.answers.FlatRide;
import evenhand.bump.BodyOverHump;
import evenhand.car.Car;
import evenhand.car.RoadCars;
import evenhand.scenario.ScenarioReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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

/** How long the linear ride takes: eigenvalues, a random road, a whole car, a hump. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(value = 1, jvmArgs = "-XX:+UseSerialGC")
public class RideBenchmark {
    private static final double SPEED = 80 / 3.6;

    @Param({"harbour-saloon", "slipper-coupe"})
    String demo = "harbour-saloon";

    private Car car = RoadCars.damped(1);
    private QuarterCar quarterCar = new QuarterCar(250, 40, 20e3, 200e3, 1500);

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
        quarterCar = ((Ride) Ride.of(car, RoadClass.B, SPEED))
                .rear()
                .damped()
                .orElseThrow()
                .quarterCar();
    }

    @Benchmark
    public Modes modes() {
        return quarterCar.modes();
    }

    /** Spectrum of a random road: four r.m.s. values of one axle. */
    @Benchmark
    public RoadResponse randomRoad() {
        return RoadResponse.of(quarterCar, RoadClass.B, SPEED);
    }

    /** All that an aim may ask of a car. */
    @Benchmark
    public RideAnswer wholeRide() {
        return Ride.of(car, RoadClass.B, SPEED);
    }

    /** Spectrum of a random road where the driver sits. */
    @Benchmark
    public double seat() {
        return ((Ride) Ride.of(car, RoadClass.B, SPEED)).seat().orElseThrow().on(RoadClass.B, SPEED);
    }

    /** The body over a hump at eleven speeds. */
    @Benchmark
    public List<BodyOverHump.Passage> flatRide() {
        return FlatRide.over(car, (Ride) Ride.of(car, RoadClass.B, SPEED));
    }
}
