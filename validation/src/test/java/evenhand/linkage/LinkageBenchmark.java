package evenhand.linkage;

import evenhand.car.Side;
import evenhand.car.links.LinkedAxle;
import evenhand.car.links.LinkedAxles;
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

/** How long links take: 41 × 21 poses of both axles with their figures, putting an axle together, a whole answer. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(value = 1, jvmArgs = "-XX:+UseSerialGC")
public class LinkageBenchmark {
    private static final int HEAVES = 41;
    private static final int ROLLS = 21;
    private static final double HEAVE = 0.060;
    private static final double ROLL = 0.040; // of each wheel, m

    /** The rear axle; in front are steered wishbones. */
    @Param({"THREE_LINK_WATT_ON_BODY", "TORQUE_ARM_PANHARD", "FIVE_RODS_WATT", "LEAVES"})
    LinkedAxles.Kind rear = LinkedAxles.Kind.TORQUE_ARM_PANHARD;

    private LinkedAxle given = LinkedAxles.of(LinkedAxles.Kind.WISHBONES, 2);
    private WheelPairLinkage wheels = (WheelPairLinkage) standing(given);
    private LiveAxleLinkage axle = (LiveAxleLinkage) standing(LinkedAxles.of(rear, 2));

    private static AxleLinkage standing(LinkedAxle axle) {
        return ((Assembly.Standing) Assembly.of(axle)).linkage();
    }

    @Setup
    public void build() {
        given = LinkedAxles.of(rear, 2);
        axle = (LiveAxleLinkage) standing(given);
    }

    @Benchmark
    public void gridOfBothAxles(Blackhole hole) {
        for (int h = 0; h < HEAVES; h++) {
            double heave = HEAVE * (2.0 * h / (HEAVES - 1) - 1);
            for (int r = 0; r < ROLLS; r++) {
                double way = (h & 1) == 0 ? 1 : -1; // to and fro, from neighbour to neighbour
                double roll = way * ROLL * (2.0 * r / (ROLLS - 1) - 1);
                hole.consume(axle.moveTo(heave - roll, heave + roll));
                hole.consume(axle.heightOfRollCentre());
                hole.consume(axle.axleSteer());
                hole.consume(axle.forceLineSlope());
                hole.consume(wheels.moveTo(heave - roll, heave + roll));
                for (int side = 0; side < 2; side++) {
                    WheelLinkage wheel = wheels.wheel(side == 0 ? Side.LEFT : Side.RIGHT);
                    hole.consume(wheel.steer());
                    hole.consume(wheel.camber());
                    hole.consume(wheel.forceLineSlope());
                }
            }
        }
    }

    @Benchmark
    public Assembly anAxlePutTogether() {
        return Assembly.of(given);
    }

    @Benchmark
    public TravelAnswer aWholeAnswer() {
        return Travel.of(given, Ranges.USUAL);
    }
}
