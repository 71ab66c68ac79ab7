package evenhand.straight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.BrakeForces;
import evenhand.car.BrakeParts;
import evenhand.car.Car;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Pedal, pressures and forces, both ways. */
class BrakeForcesTest {
    private static final double BAR = 1e5;

    private static Car car(BrakeParts parts) {
        Car any = BrakedCars.any(5);
        return any.braked(new evenhand.car.Brakes(java.util.OptionalDouble.empty(), Optional.of(parts)));
    }

    private static BrakeParts worked(Optional<BrakeParts.RearValve> valve) {
        return new BrakeParts(
                new BrakeParts.Pedal(4.6, 0.9),
                Optional.of(new BrakeParts.Booster(3.2, 1100)),
                new BrakeParts.OneCylinder(0.0206),
                new BrakeParts.Disc(0.054, 1, 0.108, 0.38, 0),
                new BrakeParts.Drum(0.0222, 0.1143, 2.3, 3 * BAR),
                valve);
    }

    /** Worked through step by step with a calculator. */
    @Test
    void aPedalForceGivesThePressuresAndForcesOfTheWorkedExample() {
        Car car = car(worked(Optional.of(new BrakeParts.RearValve(30 * BAR, 0.4, 0))));
        double rod = BrakeForces.rodForce(car.brakes().parts().orElseThrow(), 200, true);
        assertThat(rod).isCloseTo(200 * 4.6 * 0.9 * 3.2, within(1e-9)); // 828 N, below the run-out
        BrakeForces forces = BrakeForces.of(car);
        forces.press(rod, 0);
        assertThat(forces.frontPressure / BAR).isCloseTo(79.4987, within(1e-3)); // 2649.6 N over 333.29 mm²
        assertThat(forces.rearPressure / BAR).isCloseTo(30 + 0.4 * 49.4987, within(1e-3));
        double front = 2 * 2 * 0.38 * (Math.PI / 4 * 0.054 * 0.054) * 79.4987e5 * 0.108;
        assertThat(forces.front * car.front().tyre().loadedRadius()).isCloseTo(front, within(0.05));
        double rear = 2 * 2.3 * (Math.PI / 4 * 0.0222 * 0.0222) * (49.79948e5 - 3e5) * 0.1143;
        assertThat(forces.rear * car.rear().tyre().loadedRadius()).isCloseTo(rear, within(0.05));
    }

    @Test
    void beyondItsRunOutTheBoosterGivesOneForOne() {
        BrakeParts parts = worked(Optional.empty());
        double atEnd = 1100 / (4.6 * 0.9);
        double full = BrakeForces.rodForce(parts, atEnd, true);
        assertThat(full).isCloseTo(3520, within(1e-9));
        assertThat(BrakeForces.rodForce(parts, atEnd + 10, true) - full).isCloseTo(41.4, within(1e-9));
        assertThat(BrakeForces.rodForce(parts, 200, false)).isCloseTo(828, within(1e-9));
    }

    @Test
    void everyWantedSumIsMetAndTheFootFindsItAgain() {
        for (long seed = 0; seed < 2_000; seed++) {
            BrakeParts parts = BrakedCars.parts(seed);
            BrakeForces forces = BrakeForces.of(car(parts));
            for (double travel : new double[] {-0.06, -0.02, 0, 0.03}) {
                for (double sum : new double[] {0.5, 40, 900, 4000, 9000, 20_000}) {
                    forces.reach(sum, travel);
                    assertThat(forces.front + forces.rear).as("seed %d", seed).isCloseTo(sum, within(1e-9 * sum));
                    double rod = forces.rod;
                    double front = forces.front;
                    for (boolean boosted : new boolean[] {true, false}) {
                        double pedal = BrakeForces.pedalForce(parts, rod, boosted);
                        assertThat(BrakeForces.rodForce(parts, pedal, boosted)).isCloseTo(rod, within(1e-9 * rod));
                    }
                    forces.press(rod, travel);
                    assertThat(forces.front).as("seed %d", seed).isCloseTo(front, within(1e-9 * sum));
                }
            }
        }
    }

    /** Between its knee and the end of its travel a valve that feels the load moves force to the rear as the boot fills. */
    @Test
    void aFullBootRaisesTheKneeAndTheRearsForce() {
        Car car = car(worked(Optional.of(new BrakeParts.RearValve(20 * BAR, 0.3, 0.8 * BAR * 1000))));
        BrakeForces forces = BrakeForces.of(car);
        forces.press(3000, 0);
        double empty = forces.rearPressure;
        forces.press(3000, 0.04);
        assertThat(forces.rearPressure - empty).isCloseTo((1 - 0.3) * 32 * BAR, within(1.0));
        double slope = forces.rearByTravel;
        double there = forces.rear;
        forces.press(3000, 0.0401);
        assertThat((forces.rear - there) / 1e-4).isCloseTo(slope, within(1e-6 * slope));
        forces.press(3000, -0.06);
        assertThat(forces.rearPressure).isCloseTo(0.3 * forces.frontPressure, within(1e-6)); // its knee at nothing
    }

    /** Lowered by 40 mm at 0.8 bar/mm the valve takes the car for a full one: its knee is 32 bar higher. */
    @Test
    void aLoweredCarTellsTheValveThatItsBootIsFull() {
        Car asRead = BrakedCars.asRead(11);
        Car drawn = asRead.braked(new evenhand.car.Brakes(
                java.util.OptionalDouble.empty(),
                Optional.of(worked(Optional.of(new BrakeParts.RearValve(20 * BAR, 0.3, 0.8 * BAR * 1000))))));
        double before = drawn.settled()
                .brakes()
                .parts()
                .orElseThrow()
                .rearValve()
                .orElseThrow()
                .knee();
        double after = drawn.letDown(0.04)
                .settled()
                .brakes()
                .parts()
                .orElseThrow()
                .rearValve()
                .orElseThrow()
                .knee();
        assertThat(after - before).isCloseTo(32 * BAR, within(1.0));
    }
}
