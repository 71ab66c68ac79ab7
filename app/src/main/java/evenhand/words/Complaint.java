package evenhand.words;

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
            + " \"leans\", \"spins the inside wheel\"";

    /**
     * A complaint by its words.
     *
     * @param gentle pace, m/s²
     * @param brisk pace, m/s²
     */
    public static Optional<Complaint> of(String words, Car car, double gentle, double brisk) {
        String said = words.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        return switch (said) {
            case "pushes gently" -> Optional.of(at(Criterion.UNDERSTEER, gentle, false));
            case "pushes briskly" -> Optional.of(at(Criterion.UNDERSTEER, brisk, false));
            case "pushes at the limit" ->
                Optional.of(new Complaint(new Judged(Criterion.LIMIT_BALANCE, OptionalDouble.empty()), false));
            case "slides gently" -> Optional.of(at(Criterion.UNDERSTEER, gentle, true));
            case "slides briskly" -> Optional.of(at(Criterion.UNDERSTEER, brisk, true));
            case "slides at the limit" ->
                Optional.of(new Complaint(new Judged(Criterion.LIMIT_BALANCE, OptionalDouble.empty()), true));
            case "leans" -> Optional.of(at(Criterion.ROLL_GRADIENT, brisk, false));
            case "spins the inside wheel" ->
                Optional.of(at(
                        car.drive().axle() == End.FRONT ? Criterion.INSIDE_FRONT_LOAD : Criterion.INSIDE_REAR_LOAD,
                        brisk,
                        true));
            default -> Optional.empty();
        };
    }

    private static Complaint at(Criterion criterion, double pace, boolean up) {
        return new Complaint(new Judged(criterion, OptionalDouble.of(pace)), up);
    }
}
