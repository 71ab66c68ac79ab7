package evenhand.catalogue;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Something that changes an answer, was not given, and was taken as none: silence about it would read as a measurement.
 *
 * @param path relative to the car
 * @param value that stands in, SI; none where a part is not there at all
 * @param text what that means, in words
 */
public record Assumed(String path, OptionalDouble value, String text) {
    /** Numbers of an axle whose default means that there is none of it. */
    private static final Set<String> OF_AN_AXLE = Set.of(
            "rollSteer", "lateralForceSteer", "aligningTorqueSteer", "tyre.pneumaticTrail", "tyre.camberThrustRatio");

    private static final Set<String> RATIOS = Set.of("spring.motionRatio", "damper.motionRatio");

    /** All that was assumed of a car. */
    public static List<Assumed> of(Car car, List<Adjustable> values) {
        List<Assumed> assumed = new ArrayList<>();
        if (Double.isInfinite(car.chassisTorsionalStiffness())) {
            assumed.add(new Assumed("chassisTorsionalStiffness", OptionalDouble.empty(), "the chassis does not twist"));
        }
        if (car.air().dragArea() == 0) {
            assumed.add(new Assumed("air.dragArea", OptionalDouble.of(0), "no drag of the air"));
        }
        for (End end : End.values()) {
            stops(car.axle(end), end, assumed);
            for (Adjustable value : values) {
                number(value, end, car.axle(end), assumed);
            }
        }
        return List.copyOf(assumed);
    }

    private static void stops(Axle axle, End end, List<Assumed> assumed) {
        if (axle.stops().bump().isEmpty()) {
            assumed.add(
                    new Assumed(end.key() + ".bumpStop", OptionalDouble.empty(), "no bump stop at the " + end.key()));
        }
        if (axle.stops().droop().isEmpty()) {
            assumed.add(
                    new Assumed(end.key() + ".droopStop", OptionalDouble.empty(), "no droop stop at the " + end.key()));
        }
    }

    private static void number(Adjustable value, End end, Axle axle, List<Assumed> assumed) {
        String opening = end.key() + ".";
        if (value.origin() != Adjustable.Origin.DEFAULT || !value.path().startsWith(opening)) {
            return;
        }
        String key = value.path().substring(opening.length());
        if (OF_AN_AXLE.contains(key)) {
            assumed.add(new Assumed(
                    value.path(), OptionalDouble.of(value.si()), value.slot().meaning() + ": none"));
        } else if (key.equals("bar.bushFactor")) {
            assumed.add(new Assumed(
                    value.path(),
                    OptionalDouble.of(value.si()),
                    "the bushes of the " + end.key() + " bar lose nothing"));
        } else if (RATIOS.contains(key) && axle instanceof Axle.Independent) {
            assumed.add(new Assumed(
                    value.path(),
                    OptionalDouble.of(value.si()),
                    "the " + end.key() + " " + key.substring(0, key.indexOf('.'))
                            + " moves as far as the wheel (ratio 1)"));
        }
    }
}
