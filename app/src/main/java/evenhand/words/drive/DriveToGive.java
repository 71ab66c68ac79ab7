package evenhand.words.drive;

import evenhand.car.Car;
import java.util.List;

/** What a car without engine or gears has to give before they can be asked. */
public final class DriveToGive {
    public static final List<String> WHAT = List.of(
            "Engine and gears are not known, so this is what grip allows. Give the engine's torque over its speed, the gears"
                    + " and the axle's ratio, and each gear is told too.",
            "Under \"The car itself\", Drive; or in the file, as \"engine\", \"gears\" and \"finalDrive\" in car.drive.");

    private DriveToGive() {}

    /** Whether engine and gears were given. */
    public static boolean given(Car car) {
        return car.drive().engine().isPresent() && !car.drive().gears().isEmpty();
    }
}
