package evenhand.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.End;
import evenhand.car.links.MiddlePoint;
import evenhand.car.mounts.CoarseThread;
import evenhand.car.mounts.Facing;
import evenhand.car.mounts.Mount;
import evenhand.car.mounts.PartEnd;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** Closed forms of mounts against handbook cases. */
class MountSumsTest {
    private static final PartEnd END = new PartEnd(End.REAR, "dropLink", "hanger");
    private static final double MPA = 1e6;

    private static Mount mount(
            Facing faces, Optional<Mount.Pin> pin, Optional<Mount.Spread> spread, Optional<Mount.Between> between) {
        return new Mount(
                "post",
                List.of(END),
                faces,
                Optional.empty(),
                pin,
                spread,
                Optional.empty(),
                between,
                OptionalDouble.of(22_000));
    }

    private static MountLoad of(Mount mount, Vector3D force, Optional<MountLoad.OfEye> eye) {
        return MountSums.of(mount, Vector3D.ZERO, force, Vector3D.ZERO, eye, Vector3D.ZERO);
    }

    private static MountLoad.OfPin pin(Mount.Pin pin, Vector3D force) {
        return of(mount(Facing.BACK, Optional.of(pin), Optional.empty(), Optional.empty()), force, Optional.empty())
                .pin()
                .orElseThrow();
    }

    /** 4.2 kN at 50 mm is 210 N·m: a cantilever. */
    @Test
    void aPinInSingleShearBendsByTheOverhang() {
        Mount.Pin pin = new Mount.Pin(0.020, Mount.Shear.SINGLE, 0.050, 0, false, OptionalDouble.of(640 * MPA));
        MountLoad.OfPin load = pin(pin, new Vector3D(0, 0, 4200));
        assertThat(load.bending()).isCloseTo(210, within(1e-9));
        assertThat(load.bendingStress() / MPA).isCloseTo(32 * 210 / (Math.PI * 8e-6) / MPA, within(1e-9));
        assertThat(load.bendingStress() / MPA).isCloseTo(267.4, within(0.05));
        assertThat(load.shearStress() / MPA).isCloseTo(4200 / (Math.PI * 1e-4) / MPA, within(1e-9));
        assertThat(load.tensionStress()).isZero();
        // √(267.4² + 3·13.37²) = 268.4
        assertThat(load.combinedStress() / MPA).isCloseTo(268.38, within(0.02));
        assertThat(load.yieldUsed().orElseThrow()).isCloseTo(268.38 / 640, within(1e-4));
    }

    /** A clevis pin: F·span/4, two planes. */
    @Test
    void aPinInDoubleShearBendsAsABeamOnTwoCheeks() {
        Mount.Pin pin = new Mount.Pin(0.014, Mount.Shear.DOUBLE, 0, 0.046, false, OptionalDouble.empty());
        MountLoad.OfPin load = pin(pin, new Vector3D(0, 3000, 4000));
        assertThat(load.bending()).isCloseTo(5000 * 0.046 / 4, within(1e-9));
        assertThat(load.shearStress()).isCloseTo(5000 / (2 * Math.PI / 4 * 0.014 * 0.014), within(1e-3));
        assertThat(load.yieldUsed()).isEmpty();
    }

    /** Along the bolt the load pulls; across it shears: an M12 of 8.8 yields at 54.0 kN (84.3 mm², 640 MPa; ISO 898-1). */
    @Test
    void aBoltThatIsPulledYieldsByItsStressArea() {
        Mount.Pin pin =
                new Mount.Pin(0.012, Mount.Shear.SINGLE, 0, 0, true, OptionalDouble.of(Mount.Pin.yieldOf("8.8")));
        MountLoad.OfPin load = pin(pin, new Vector3D(-54_000, 0, 0));
        assertThat(pin.area() * 1e6).isCloseTo(84.3, within(1e-9));
        assertThat(load.tensionStress() / MPA).isCloseTo(640.6, within(0.05));
        assertThat(load.yieldUsed().orElseThrow()).isCloseTo(1.0009, within(1e-4));
        assertThat(Mount.Pin.yieldOf("10.9") / MPA).isCloseTo(900, within(1e-9));
        assertThat(CoarseThread.of(0.0145)).isEmpty();
    }

    /** A 40 mm washer with a 10 mm hole; a stiff eye counts more on it than on one of twice the size. */
    @Test
    void aWasherSpreadsByItsAreaAndItsEdge() {
        Mount.Washer washer = new Mount.Washer(0.040, 0.010, OptionalDouble.of(0.001));
        MountLoad load = of(
                mount(Facing.DOWN, Optional.empty(), Optional.of(washer), Optional.empty()),
                new Vector3D(500, 0, 5000),
                Optional.of(new MountLoad.OfEye(0.1, 20)));
        MountLoad.OfSpread spread = load.spread().orElseThrow();
        assertThat(load.along()).isCloseTo(-5000, within(1e-9));
        assertThat(load.across()).isCloseTo(500, within(1e-9));
        assertThat(spread.area() * 1e6).isCloseTo(1178.1, within(0.05));
        assertThat(spread.pressure() / MPA).isCloseTo(4.244, within(1e-3));
        // W = π(40⁴ − 10⁴)/(32·40) = 6258.6 mm³
        assertThat((spread.greatestPressure() - spread.pressure()) / MPA).isCloseTo(20 / 6258.6e-9 / MPA, within(1e-3));
        assertThat(spread.edgeShear().orElseThrow() / MPA)
                .isCloseTo(5000 / (Math.PI * 0.040 * 0.001) / MPA, within(1e-9));
        Mount.Washer large = new Mount.Washer(0.080, 0.010, OptionalDouble.of(0.001));
        assertThat(washer.area() / large.area()).isCloseTo(1500.0 / 6300, within(1e-9));
        assertThat(washer.edge() / large.edge()).isCloseTo(0.5, within(1e-12));
        assertThat(washer.modulus() / large.modulus()).isLessThan(1 / 7.9);
    }

    @Test
    void aPlateTiltsOverItsShorterSide() {
        Mount.Plate plate = new Mount.Plate(0.060, 0.090, 0.010, OptionalDouble.empty());
        assertThat(plate.modulus()).isCloseTo(0.090 * 0.060 * 0.060 / 6, within(1e-15));
        assertThat(plate.area()).isCloseTo(0.0054 - Math.PI / 4 * 1e-4, within(1e-15));
        assertThat(plate.edge()).isCloseTo(0.3, within(1e-15));
    }

    /** A force in the middle of a level beam goes half and half; hung below, a force across pulls one end down and pushes the other up. */
    @Test
    void aPivotBelowTheRailsTwistsThem() {
        Mount.Between rails = new Mount.Between(new MiddlePoint(0, 0.4, 0.35), new MiddlePoint(0, -0.4, 0.35));
        MountLoad.OfBeam down = MountSums.beam(
                rails, Vector3D.ZERO, new Vector3D(0, 0, 0.25), new Vector3D(0, 0, -1000), Vector3D.ZERO);
        assertThat(down.left().getZ()).isCloseTo(-500, within(1e-9));
        assertThat(down.right().getZ()).isCloseTo(-500, within(1e-9));
        MountLoad.OfBeam across =
                MountSums.beam(rails, Vector3D.ZERO, new Vector3D(0, 0, 0.25), new Vector3D(0, 4000, 0), Vector3D.ZERO);
        // 4000 N · 100 mm over 800 mm: 500 N up and down
        assertThat(Math.abs(across.left().getZ())).isCloseTo(500, within(1e-9));
        assertThat(across.left().getZ() + across.right().getZ()).isCloseTo(0, within(1e-9));
        // the force to the left, below the rails, turns the beam so that its left end lifts
        assertThat(across.left().getZ()).isPositive();
        assertThat(across.twist()).isCloseTo(0, within(1e-9));
        MountLoad.OfBeam forwards =
                MountSums.beam(rails, Vector3D.ZERO, new Vector3D(0, 0, 0.25), new Vector3D(4000, 0, 0), Vector3D.ZERO);
        assertThat(Math.abs(forwards.twist())).isCloseTo(400, within(1e-9));
    }

    @Test
    void theSupportsOfAnyBeamCarryTheForceAndItsMoment() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 500; i++) {
            double[] r = random.doubles(18, -1, 1).toArray();
            Mount.Between beam =
                    new Mount.Between(new MiddlePoint(r[0], 1 + r[1], r[2]), new MiddlePoint(r[3], -1 + r[4], r[5]));
            Vector3D origin = new Vector3D(-2.5, 0, 0);
            Vector3D at = new Vector3D(r[6], r[7], r[8]).add(origin);
            Vector3D force = new Vector3D(r[9], r[10], r[11]).scalarMultiply(5000);
            Vector3D moment = new Vector3D(r[12], r[13], r[14]).scalarMultiply(300);
            MountLoad.OfBeam held = MountSums.beam(beam, origin, at, force, moment);
            Vector3D left = MountSums.vector(beam.left()).add(origin);
            Vector3D right = MountSums.vector(beam.right()).add(origin);
            Vector3D u = right.subtract(left).normalize();
            assertThat(held.left().add(held.right()).subtract(force).getNorm()).isLessThan(1e-8);
            Vector3D about = left.crossProduct(held.left())
                    .add(right.crossProduct(held.right()))
                    .add(held.twist(), u);
            assertThat(about.subtract(at.crossProduct(force).add(moment)).getNorm())
                    .isLessThan(1e-7);
        }
    }
}
