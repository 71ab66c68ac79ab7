package evenhand.scenario;

import evenhand.car.Car;
import evenhand.car.mounts.Mount;
import java.util.function.BiConsumer;

/** What is unusual about what a shop makes to carry load. Bounds are common practice, no source. */
final class MountChecks {
    private static final double LONGEST_OVERHANG = 3;

    private MountChecks() {}

    static void of(Car car, BiConsumer<String, String> warn) {
        for (Mount mount : car.mounts()) {
            String path = "mounts." + mount.name();
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
