package evenhand.words.effects;

import evenhand.advice.Wish;
import evenhand.answers.Answers;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Trial;
import evenhand.car.Car;
import evenhand.car.Drive;
import evenhand.car.End;
import evenhand.quantity.Unit;
import evenhand.ride.ComfortBand;
import evenhand.turn.PacesAnswer;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What a driver complains of, as a figure and which way it should go.
 *
 * @param kind what it is about
 * @param judged the figure
 * @param up whether it should grow
 * @param shown whether the sums show what he complains of
 */
public record Complaint(Kind kind, Judged judged, boolean up, boolean shown) {
    /** What can be complained of, for a message. */
    public static final String KNOWN = "\"pushes\" or \"slides\" with \"gently\", \"briskly\" or \"at the limit\","
            + " \"leans\", \"spins the inside wheel\", \"rides hard\", \"wallows\"";

    /** Nearer to neutral than this nobody tells pushing from sliding, rad per m/s². Common practice. */
    static final double NEUTRAL = Unit.of("deg/g").toSi(0.3);

    /** So little lean for its pace is that of a very firm road car, rad per m/s². Common practice. */
    private static final double FIRM = Unit.of("deg/g").toSi(4.5);

    /** An inside wheel that keeps this part of its load at rest does not spin on a dry road. Common practice. */
    static final double LOADED = 0.5;

    /** Damping ratio from which a body is held on a wavy road; comfortable cars have 0.2 to 0.3. Common practice. */
    private static final double HELD = 0.3;

    /** What a complaint is about. */
    public enum Kind {
        PUSHES,
        SLIDES,
        LEANS,
        SPINS,
        RIDES_HARD,
        WALLOWS
    }

    /** A complaint by its words, at the gentlest and the briskest pace of a trial. */
    public static Optional<Complaint> of(String words, Car car, Answers before, Trial trial) {
        double gentle =
                trial.paces().stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        double brisk =
                trial.paces().stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        return of(words, car, before, gentle, brisk);
    }

    /**
     * A complaint by its words.
     *
     * @param before what the car answers as it stands: the worse axle is mended
     * @param gentle pace, m/s²
     * @param brisk pace, m/s²
     */
    public static Optional<Complaint> of(String words, Car car, Answers before, double gentle, double brisk) {
        String said = words.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        Judged near = new Judged(Criterion.NEAR_UNDERSTEER, OptionalDouble.empty());
        Optional<Complaint> made = switch (said) {
            case "pushes gently" -> made(Kind.PUSHES, at(Criterion.UNDERSTEER, gentle), false);
            case "pushes briskly" -> made(Kind.PUSHES, at(Criterion.UNDERSTEER, brisk), false);
            case "pushes at the limit" -> made(Kind.PUSHES, near, false);
            case "slides gently" -> made(Kind.SLIDES, at(Criterion.UNDERSTEER, gentle), true);
            case "slides briskly" -> made(Kind.SLIDES, at(Criterion.UNDERSTEER, brisk), true);
            case "slides at the limit" -> made(Kind.SLIDES, near, true);
            case "leans" -> made(Kind.LEANS, at(Criterion.LEAN, brisk), false);
            case "spins the inside wheel" ->
                made(
                        Kind.SPINS,
                        at(
                                car.drive().axle() == End.FRONT
                                        ? Criterion.INSIDE_FRONT_LOAD
                                        : Criterion.INSIDE_REAR_LOAD,
                                brisk),
                        true);
            case "rides hard" -> made(Kind.RIDES_HARD, hardest(before), false);
            case "wallows" -> made(Kind.WALLOWS, lower(Criterion.FRONT_DAMPING, Criterion.REAR_DAMPING, before), true);
            default -> Optional.empty();
        };
        return made.map(one -> new Complaint(one.kind(), one.judged(), one.up(), one.isShown(car, before)));
    }

    private static Optional<Complaint> made(Kind kind, Judged judged, boolean up) {
        return Optional.of(new Complaint(kind, judged, up, true));
    }

    /** The seat; where only one axle has dampers, what is felt above that one. */
    private static Judged hardest(Answers before) {
        return Stream.of(Criterion.SEAT_COMFORT, Criterion.FRONT_COMFORT, Criterion.REAR_COMFORT)
                .map(criterion -> new Judged(criterion, OptionalDouble.empty()))
                .filter(one -> one.si(before).isPresent())
                .findFirst()
                .orElse(new Judged(Criterion.SEAT_COMFORT, OptionalDouble.empty()));
    }

    /** Of both axles the one whose figure is the lower; the only one that has it. */
    private static Judged lower(Criterion front, Criterion rear, Answers before) {
        Judged one = new Judged(front, OptionalDouble.empty());
        Judged other = new Judged(rear, OptionalDouble.empty());
        OptionalDouble ofFront = one.si(before);
        OptionalDouble ofRear = other.si(before);
        if (ofFront.isEmpty() || ofRear.isEmpty()) {
            return ofRear.isPresent() ? other : one;
        }
        return ofFront.getAsDouble() < ofRear.getAsDouble() ? one : other;
    }

    private static Judged at(Criterion criterion, double pace) {
        return new Judged(criterion, OptionalDouble.of(pace));
    }

    /** The figure that is to move, and which way. */
    public Wish wish() {
        return new Wish(judged, up);
    }

    /** Whether the worst of the bends is as bad as is complained; where none has the figure, the driver is believed. */
    private boolean isShown(Car car, Answers before) {
        OptionalDouble worst = wish().worstValue(before);
        if (worst.isEmpty()) {
            return true;
        }
        double value = worst.getAsDouble();
        return switch (kind) {
            case PUSHES -> value > NEUTRAL;
            case SLIDES -> value < 0 || (judged.criterion().atLimit() && tailGoes(before));
            case LEANS -> value > FIRM * judged.pace().orElseThrow();
            case SPINS ->
                !(car.drive().differential() instanceof Drive.Differential.Locked) && value < LOADED * restLoad(car);
            case RIDES_HARD -> !ComfortBand.of(value).contains(ComfortBand.NOT_UNCOMFORTABLE);
            case WALLOWS -> value < HELD;
        };
    }

    /** Half of what stands on the driven axle, N. */
    static double restLoad(Car car) {
        return car.axleLoad(car.drive().axle()) / 2;
    }

    private static boolean tailGoes(Answers before) {
        return before.bends().stream()
                .anyMatch(bend -> bend.turn() instanceof PacesAnswer.Paces turn
                        && turn.limit().firstAxle().equals(Optional.of(End.REAR)));
    }
}
