package evenhand.car.mounts;

import evenhand.car.Weights;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A case that stands in for what a file does not say.
 *
 * @param origin where it comes from, for an answer
 */
public record UsualUse(HardUse use, String origin) {
    /** What a car is put through where its file does not say. */
    public static final List<UsualUse> ALL = List.of(
            new UsualUse(new HardUse.Standing("Standing", 1), "the car at rest"),
            new UsualUse(new HardUse.Cornering("Hard corner", OptionalDouble.empty(), 1), "at the limit of the turn"),
            new UsualUse(
                    new HardUse.Braking("Hard braking", 1.1 * Weights.GRAVITY, 1),
                    "1.1 g: cars 0.75 g Garrett 1953, 1.1 g tests at Cranfield, 1.75 g Pawlowski 1969; table 2.4 of Brown,"
                            + " Robertson & Serpento, Motor Vehicle Structures"),
            new UsualUse(
                    new HardUse.Launch("Full-torque start", 1, 1.5, 1),
                    "shock 1.5: common practice, no source (clutch-drop accelerations were found below those of braking;"
                            + " Brown, Robertson & Serpento, section 2.4.3)"),
            new UsualUse(
                    new HardUse.Kerb("Kerb strike", 2, 1, 0.05, 1),
                    "2 times the wheel's load at rest, 50 mm up: common practice, no source"),
            new UsualUse(
                    new HardUse.Pothole("Pothole", 3, 2, 1),
                    "3 upwards: dynamic factor after Pawlowski 1969, from memory; 2 lengthways: common practice, no source"),
            new UsualUse(
                    new HardUse.Hanging("Hung up", 2, 1), "2 times the axle's weight: common practice, no source"));

    /** The cases alone. */
    public static List<HardUse> uses() {
        return ALL.stream().map(UsualUse::use).toList();
    }
}
