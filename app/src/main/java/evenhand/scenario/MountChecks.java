package evenhand.scenario;

import evenhand.answers.Trial;
import evenhand.car.Car;
import evenhand.car.mounts.HardUse;
import evenhand.car.mounts.Mount;
import evenhand.structure.CarLoads;
import evenhand.structure.MountFigure;
import evenhand.structure.Peak;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;

/** What is unusual about what a shop makes to carry load. Bounds are common practice, no source. */
final class MountChecks {
    private static final double LONGEST_OVERHANG = 3;

    private MountChecks() {}

    /**
     * Pins that would yield with the car at rest.
     *
     * @param standing at rest, its {@code lowered} carried out
     */
    static void atRest(Car standing, BiConsumer<String, String> warn) {
        if (standing.mounts().stream().noneMatch(mount -> mount.pin().isPresent())) {
            return;
        }
        HardUse still = new HardUse.Standing("Standing", 1);
        CarLoads.of(standing, List.of(still), Trial.USUAL_RADIUS, Set.of())
                .worstMounts()
                .forEach(mount -> {
                    Peak used = mount.peaks().get(MountFigure.YIELD_USED);
                    if (used != null && used.value() > 1) {
                        warn.accept(
                                "mounts." + mount.mount() + ".pin",
                                "would yield with the car at rest: " + Math.round(100 * used.value())
                                        + " % of its yield; is the overhang or span right, and the diameter?");
                    }
                });
    }

    static void of(Car car, BiConsumer<String, String> warn) {
        for (Mount mount : car.mounts()) {
            String path = "mounts." + mount.name();
            mount.pin()
                    .filter(pin -> pin.overhang() == 0 && pin.span() == 0)
                    .ifPresent(pin -> warn.accept(
                            path + ".pin",
                            pin.shear() == Mount.Shear.SINGLE
                                    ? "has no overhang, so its bending is left out; give the lever from the held face to the"
                                            + " middle of the load"
                                    : "has no span, so its bending is left out; give the distance between the middles of its"
                                            + " cheeks"));
            mount.pin()
                    .filter(pin -> pin.overhang() > LONGEST_OVERHANG * pin.diameter())
                    .ifPresent(pin -> warn.accept(
                            path + ".pin.overhang",
                            "is more than three diameters: such a pin bends; bring the load nearer to the held face, or hold"
                                    + " the pin on both sides"));
            mount.eye()
                    .filter(eye -> eye.tightenedAt() < 0)
                    .ifPresent(eye -> warn.accept(
                            path + ".eye.tightenedAt",
                            "is in droop: a bush that is tightened with the wheels hanging stands twisted at ride height;"
                                    + " loosen it and tighten it with the car on its wheels"));
        }
    }
}
