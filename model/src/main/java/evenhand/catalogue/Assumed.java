package evenhand.catalogue;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.Damper;
import evenhand.car.End;
import evenhand.car.Stops;
import evenhand.geometry.LinkMotion;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something that changes an answer, was not given, and was taken as none: silence about it would read as a measurement.
 *
 * @param path relative to the car
 * @param value that stands in, SI; none where a part is not there at all
 * @param text what that means, in words
 * @param caution what is usual and how to measure it, where taking it as none is probably wrong
 */
public record Assumed(String path, OptionalDouble value, String text, Optional<String> caution) {
    /** Numbers of an axle whose default means that there is none of it, with what that means; %s the end. */
    private static final Map<String, String> OF_AN_AXLE = Map.of(
            "rollSteer", "no roll steer at the %s",
            "lateralForceSteer", "side force does not steer the %s axle",
            "aligningTorqueSteer", "aligning torque does not steer the %s axle",
            "tyre.pneumaticTrail", "no trail of the %s tyres",
            "tyre.camberThrustRatio", "no camber thrust of the %s tyres",
            "tyre.frictionCamberLoss", "the %s tyres lose no grip as they lean",
            "tyre.bestLeanIn", "the %s tyres grip best upright",
            "bar.bushFactor", "the bushes of the %s bar lose nothing");

    /** Usual ratios are common practice, no source. */
    private static final String RATIO_CAUTION =
            "is not given and was taken as 1, as if the part moved as far as the wheel;"
                    + " usual is 0.9 to 1 on a strut and 0.45 to 0.75 on wishbones: raise the wheel by 40 mm, measure by how much"
                    + " the part shortens, and divide that by 40 mm";

    private Assumed(String path, OptionalDouble value, String text) {
        this(path, value, text, Optional.empty());
    }

    /**
     * All that was assumed of a car.
     *
     * @param values every number of it, with its origin
     */
    public static List<Assumed> of(Car car, List<Adjustable> values) {
        List<Assumed> assumed = new ArrayList<>();
        if (Double.isInfinite(car.chassisTorsionalStiffness())) {
            assumed.add(new Assumed("chassisTorsionalStiffness", OptionalDouble.empty(), "the chassis does not twist"));
        }
        if (values.stream().noneMatch(Assumed::isGivenDrag)) {
            assumed.add(new Assumed("air.dragArea", OptionalDouble.of(0), "no drag of the air"));
        }
        for (End end : End.values()) {
            links(car.axle(end), end, assumed);
            stops(car.axle(end).stops(), end, assumed);
            for (Adjustable value : values) {
                number(value, end, car.axle(end), assumed);
            }
            car.axle(end)
                    .damper()
                    .filter(Assumed::isWithoutRatio)
                    .ifPresent(damper -> assumed.add(ratio("damper", end, car.axle(end))));
        }
        return List.copyOf(assumed);
    }

    private static boolean isGivenDrag(Adjustable value) {
        return value.path().equals("air.dragArea") && value.origin() == Adjustable.Origin.GIVEN;
    }

    private static boolean isWithoutRatio(Damper damper) {
        return damper.motionRatio().isEmpty() && damper.lean().isEmpty();
    }

    /** Links that nearly end within the travel that the stops leave. */
    private static void links(Axle axle, End end, List<Assumed> assumed) {
        if (axle.motion().isEmpty()) {
            return;
        }
        LinkMotion motion = axle.motion().get();
        Stops stops = axle.settled().stops();
        LinkMotion standing = motion.sunk(axle.lowered(), 0);
        double bump = stops.bumpTravel().orElse(0);
        double droop = stops.droop().map(Stops.Droop::travel).orElse(0.0);
        if (!standing.isFollowed(bump, 0) || !standing.isFollowed(-droop, 0)) {
            assumed.add(new Assumed(
                    end.key() + ".links",
                    OptionalDouble.empty(),
                    "the " + end.key() + " links nearly end within the travel, where their figures bend without bound;"
                            + " from there on these are continued along straight lines"));
        }
    }

    private static void stops(Stops stops, End end, List<Assumed> assumed) {
        if (stops.bump().isEmpty()) {
            assumed.add(
                    new Assumed(end.key() + ".bumpStop", OptionalDouble.empty(), "no bump stop at the " + end.key()));
        }
        if (stops.droop().isEmpty()) {
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
        String meaning = OF_AN_AXLE.get(key);
        if (meaning != null) {
            assumed.add(new Assumed(value.path(), OptionalDouble.of(value.si()), String.format(meaning, end.key())));
        } else if (key.equals("spring.motionRatio")) {
            assumed.add(ratio("spring", end, axle));
        }
    }

    /** A spring or damper whose ratio is not given: on a live axle it may well stand there, at a wheel it hardly does. */
    private static Assumed ratio(String part, End end, Axle axle) {
        boolean atWheel = axle instanceof Axle.Independent;
        return new Assumed(
                end.key() + "." + part + ".motionRatio",
                OptionalDouble.of(1),
                "the " + end.key() + " " + part + " moves as far as the " + (atWheel ? "wheel" : "axle") + " (ratio 1)",
                atWheel ? Optional.of(RATIO_CAUTION) : Optional.empty());
    }
}
