package evenhand.validation;

import evenhand.car.End;
import evenhand.car.links.MiddlePoint;
import evenhand.car.mounts.Facing;
import evenhand.car.mounts.Mount;
import evenhand.car.mounts.PartEnd;
import evenhand.structure.MountLoad;
import evenhand.structure.MountSums;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** What pins, seats and beams make of a force. */
final class LoadEvaluators {
    private static final double MM = 1e-3;
    private static final double MPA = 1e6;

    private LoadEvaluators() {}

    private static Mount mount(
            Facing faces, Optional<Mount.Pin> pin, Optional<Mount.Spread> spread, Optional<Mount.Between> between) {
        return new Mount(
                "bracket",
                List.of(new PartEnd(End.REAR, "dropLink", "hanger")),
                faces,
                Optional.empty(),
                pin,
                spread,
                Optional.empty(),
                between,
                OptionalDouble.empty());
    }

    private static MountLoad load(Mount mount, Vector3D at, Vector3D force, double eyeMoment) {
        Optional<MountLoad.OfEye> eye =
                eyeMoment == 0 ? Optional.empty() : Optional.of(new MountLoad.OfEye(0, eyeMoment));
        return MountSums.of(mount, at, force, Vector3D.ZERO, eye, Vector3D.ZERO);
    }

    private static MountLoad.OfPin pin(Mount.Pin pin, Vector3D force) {
        Mount mount = mount(Facing.BACK, Optional.of(pin), Optional.empty(), Optional.empty());
        return load(mount, Vector3D.ZERO, force, 0).pin().orElseThrow();
    }

    static Computed pulledBolt(Inputs in) {
        double strength = Math.floor(in.number("property_class") / 10);
        String propertyClass = (int) strength + "." + (int) (in.number("property_class") - 10 * strength);
        Mount.Pin pin = new Mount.Pin(
                in.number("diameter_mm") * MM,
                Mount.Shear.SINGLE,
                0,
                0,
                true,
                OptionalDouble.of(Mount.Pin.yieldOf(propertyClass)));
        return new Computed()
                .with("area_mm2", pin.area() / MM / MM)
                .with(
                        "yield_used",
                        pin(pin, new Vector3D(-1e3 * in.number("force_kN"), 0, 0))
                                .yieldUsed()
                                .orElseThrow());
    }

    static Computed singleShear(Inputs in) {
        Mount.Pin pin = new Mount.Pin(
                in.number("diameter_mm") * MM,
                Mount.Shear.SINGLE,
                in.number("overhang_mm") * MM,
                0,
                false,
                OptionalDouble.empty());
        MountLoad.OfPin load = pin(pin, new Vector3D(0, 0, 1e3 * in.number("force_kN")));
        return new Computed()
                .with("bending_Nm", load.bending())
                .with("bending_stress_MPa", load.bendingStress() / MPA)
                .with("shear_stress_MPa", load.shearStress() / MPA);
    }

    static Computed doubleShear(Inputs in) {
        Mount.Pin pin = new Mount.Pin(
                in.number("diameter_mm") * MM,
                Mount.Shear.DOUBLE,
                0,
                in.number("span_mm") * MM,
                false,
                OptionalDouble.empty());
        MountLoad.OfPin load = pin(pin, new Vector3D(0, 1e3 * in.number("force_kN"), 0));
        return new Computed().with("bending_Nm", load.bending()).with("shear_stress_MPa", load.shearStress() / MPA);
    }

    static Computed seat(Inputs in) {
        Mount.Spread washer = new Mount.Washer(
                in.number("outer_mm") * MM, in.number("hole_mm") * MM, OptionalDouble.of(in.number("sheet_mm") * MM));
        Mount mount = mount(Facing.DOWN, Optional.empty(), Optional.of(washer), Optional.empty());
        MountLoad.OfSpread load = load(
                        mount, Vector3D.ZERO, new Vector3D(0, 0, 1e3 * in.number("force_kN")), in.number("eye_Nm"))
                .spread()
                .orElseThrow();
        return new Computed()
                .with("pressure_MPa", load.pressure() / MPA)
                .with("greatest_MPa", load.greatestPressure() / MPA)
                .with("edge_shear_MPa", load.edgeShear().orElseThrow() / MPA);
    }

    static Computed beam(Inputs in) {
        double half = in.number("apart_mm") * MM / 2;
        Mount.Between rails = new Mount.Between(new MiddlePoint(0, half, 0.4), new MiddlePoint(0, -half, 0.4));
        Mount mount = mount(Facing.BACK, Optional.empty(), Optional.empty(), Optional.of(rails));
        MountLoad.OfBeam load = load(
                        mount,
                        new Vector3D(0, 0, 0.4 - in.number("below_mm") * MM),
                        new Vector3D(0, 1e3 * in.number("force_kN"), 0),
                        0)
                .beam()
                .orElseThrow();
        return new Computed()
                .with("left_up_N", load.left().getZ())
                .with("right_up_N", load.right().getZ())
                .with("left_across_N", load.left().getY());
    }
}
