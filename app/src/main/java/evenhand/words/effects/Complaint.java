package evenhand.words.effects;

import evenhand.answers.Answers;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.car.Car;
import evenhand.car.End;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a driver complains of, as a figure and which way it should go.
 *
 * @param judged the figure
 * @param up whether it should grow
 */
public record Complaint(Judged judged, boolean up) {
    /** What can be complained of, for a message. */
    public static final String KNOWN = "\"pushes\" or \"slides\" with \"gently\", \"briskly\" or \"at the limit\","
            + " \"leans\", \"spins the inside wheel\", \"rides hard\", \"wallows\"";

    /**
     * A complaint by its words.
     *
     * @param before what the car answers as it stands: the worse axle is mended
     * @param gentle pace, m/s²
     * @param brisk pace, m/s²
     */
    public static Optional<Complaint> of(String words, Car car, Answers before, double gentle, double brisk) {
        String said = words.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        return switch (said) {
            case "pushes gently" -> Optional.of(at(Criterion.UNDERSTEER, gentle, false));
            case "pushes briskly" -> Optional.of(at(Criterion.UNDERSTEER, brisk, false));
            case "pushes at the limit" ->
                Optional.of(new Complaint(new Judged(Criterion.NEAR_UNDERSTEER, OptionalDouble.empty()), false));
            case "slides gently" -> Optional.of(at(Criterion.UNDERSTEER, gentle, true));
            case "slides briskly" -> Optional.of(at(Criterion.UNDERSTEER, brisk, true));
            case "slides at the limit" ->
                Optional.of(new Complaint(new Judged(Criterion.NEAR_UNDERSTEER, OptionalDouble.empty()), true));
            case "leans" -> Optional.of(at(Criterion.LEAN, brisk, false));
            case "spins the inside wheel" ->
                Optional.of(at(
                        car.drive().axle() == End.FRONT ? Criterion.INSIDE_FRONT_LOAD : Criterion.INSIDE_REAR_LOAD,
                        brisk,
                        true));
            case "rides hard" ->
                Optional.of(new Complaint(
                        worse(Criterion.FRONT_COMFORT, Criterion.REAR_COMFORT, before, /* high= */ true), false));
            case "wallows" ->
                Optional.of(new Complaint(
                        worse(Criterion.FRONT_DAMPING, Criterion.REAR_DAMPING, before, /* high= */ false), true));
            default -> Optional.empty();
        };
    }

    /** Of both axles the one whose figure is the higher, or the lower; the only one that has it. */
    private static Judged worse(Criterion front, Criterion rear, Answers before, boolean high) {
        Judged one = new Judged(front, OptionalDouble.empty());
        Judged other = new Judged(rear, OptionalDouble.empty());
        OptionalDouble ofFront = one.si(before);
        OptionalDouble ofRear = other.si(before);
        if (ofFront.isEmpty() || ofRear.isEmpty()) {
            return ofRear.isPresent() ? other : one;
        }
        boolean frontIsHigher = ofFront.getAsDouble() >= ofRear.getAsDouble();
        return frontIsHigher == high ? one : other;
    }

    private static Complaint at(Criterion criterion, double pace, boolean up) {
        return new Complaint(new Judged(criterion, OptionalDouble.of(pace)), up);
    }
}
