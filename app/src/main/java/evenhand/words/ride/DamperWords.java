package evenhand.words.ride;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.Damper;
import evenhand.car.End;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.ride.AxleRide;
import evenhand.ride.DamperChoice;
import evenhand.ride.DamperChoice.Fitted;
import evenhand.ride.DampingSweep;
import evenhand.ride.QuarterCar;
import evenhand.ride.Ride;
import evenhand.words.EventWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which setting the dampers of an axle should have, for comfort and for grip, and what the next one costs. */
public final class DamperWords {
    /** What the verdicts rest on. */
    public static final String BASIS = "Comfort is the shaking of the floor as a body feels it (weighted by ISO 2631-1,"
            + " r.m.s.); grip is how steady the tyre's load stays, its r.m.s. change over its load at rest. Each damper"
            + " counts as the mean of bump and rebound at 0.1 m/s at the damper; bands of damping are common practice.";

    /** A change of comfort of less than this, as a part of it, nobody feels. */
    private static final double FELT = 0.005;

    /** A change of the load's variation that is not seen in its one digit. */
    private static final double SEEN = 0.0005;

    private final Car car;
    private final End end;
    private final String name;
    private final AxleRide axle;
    private final DamperChoice choice;
    private final Units units;

    private DamperWords(Car car, Ride ride, End end, DamperChoice choice, Units units) {
        this.car = car;
        this.end = end;
        this.name = EventWords.end(end);
        this.axle = ride.axle(end);
        this.choice = choice;
        this.units = units;
    }

    /** What is best, in one sentence. */
    public static String verdict(Car car, Ride ride, End end, DamperChoice choice, Units units) {
        return new DamperWords(car, ride, end, choice, units).verdict();
    }

    /** What is set, why one setting is better than another, what the next ones cost; or what to measure. */
    public static List<String> of(Car car, Ride ride, End end, DamperChoice choice, Units units) {
        return new DamperWords(car, ride, end, choice, units).sentences();
    }

    /** What comes of a setting against what is set: "0.481 m/s² instead of 0.520 m/s²". */
    public static String comfortAgainst(Fitted one, Fitted now) {
        return comfort(one) + " instead of " + comfort(now);
    }

    /** "the tyre load varies by 9.1 % instead of 9.8 %". */
    public static String gripAgainst(Fitted one, Fitted now) {
        return "the tyre load varies by " + variation(one) + " instead of " + variation(now);
    }

    /** A setting by its name: "\"soft\"", or "as it is". */
    public static String named(Fitted one) {
        return one.name().map(own -> "\"" + own + "\"").orElse("as it is");
    }

    private String verdict() {
        String opening = (end == End.FRONT ? "Front" : "Rear") + ": ";
        if (choice.settings().isEmpty()) {
            return opening + "nothing can be said of comfort and grip, as "
                    + (hasCurves()
                            ? "the damper curves there give no force at 0.1 m/s."
                            : "the file has no damper curves there.");
        }
        if (choice.settings().size() == 1) {
            Fitted only = choice.settings().get(0);
            return opening
                    + (only.name().isPresent() ? "one setting only, " + named(only) : "one damper without settings")
                    + ", a ratio of " + ratio(only.bodyRatio()) + ", " + RideWords.firmness(only.bodyRatio()) + " ("
                    + both(only) + ").";
        }
        Fitted comfortable = choice.forComfort().orElseThrow();
        Fitted gripping = choice.forGrip().orElseThrow();
        String best = comfortable.equals(gripping)
                ? named(comfortable) + " for comfort and for grip" + set(comfortable) + " (" + both(comfortable) + ")"
                : named(comfortable) + " for comfort" + set(comfortable) + " (" + comfort(comfortable) + "), "
                        + named(gripping) + " for grip" + set(gripping) + " (tyre load varies by " + variation(gripping)
                        + ")";
        String other = choice.now().isEmpty()
                ? "; the file does not say which is set"
                : choice.now()
                        .filter(now -> !now.equals(comfortable) && !now.equals(gripping))
                        .map(now -> now.name().isPresent()
                                ? "; " + named(now) + " is set (" + both(now) + ")"
                                : "; it stands between its settings (" + both(now) + ")")
                        .orElse("");
        return opening + best + other + ".";
    }

    private static String set(Fitted one) {
        return one.set() ? ", as it is set" : "";
    }

    private static String both(Fitted one) {
        return comfort(one) + ", tyre load varies by " + variation(one);
    }

    private List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        if (choice.settings().isEmpty()) {
            measure(sentences);
            return sentences;
        }
        choice.now()
                .ifPresent(now -> sentences.add(now.name()
                                .map(own -> "The " + name + " dampers are on \"" + own
                                        + "\", which damps the body by a ratio of ")
                                .orElse("The " + name + " dampers damp the body by a ratio of ")
                        + ratio(now.bodyRatio()) + " (bump "
                        + ratio(now.bySpeed().bump()) + ", rebound "
                        + ratio(now.bySpeed().rebound()) + ") and the wheel by " + ratio(now.hopRatio()) + ", "
                        + RideWords.firmness(now.bodyRatio()) + "."));
        if (choice.settings().size() == 1) {
            sentences.add("The file names no settings of the " + name + " dampers, so there is no click to choose. "
                    + scaled());
        }
        why().ifPresent(sentences::add);
        choice.now().ifPresent(now -> {
            choice.lessFirm().ifPresent(one -> sentences.add(step(one, now, "less firm")));
            choice.firmer().ifPresent(one -> sentences.add(step(one, now, "firmer")));
        });
        notHeld().ifPresent(sentences::add);
        return sentences;
    }

    /** How the axle would be with a damper of another force. */
    private String scaled() {
        DampingSweep.Point only = choice.settings().get(0).point();
        List<String> parts = new ArrayList<>();
        choice.softest()
                .ifPresent(best -> parts.add("the softest ride with " + times(best, only) + ", "
                        + acceleration(best.weightedAcceleration()) + " at a ratio of " + ratio(best.dampingRatio())
                        + (best.dampingRatio() < DamperChoice.LEAST_RATIO ? ", too little to hold the body" : "")));
        choice.steadiest()
                .ifPresent(best -> parts.add("the steadiest tyre load with " + times(best, only) + ", "
                        + percent(best.tyreLoadVariation()) + " at a ratio of " + ratio(best.dampingRatio())));
        return parts.isEmpty()
                ? "No damper of any force would be best within the range that is swept."
                : "Scaled, it would give " + String.join(", and ", parts) + ".";
    }

    private static String times(DampingSweep.Point one, DampingSweep.Point other) {
        return Numbers.fixed(one.dampingRate() / other.dampingRate(), 2) + " times its force";
    }

    private Optional<String> why() {
        if (choice.softest().isEmpty() || choice.steadiest().isEmpty()) {
            return Optional.empty();
        }
        double soft = choice.softest().get().dampingRatio();
        double steady = choice.steadiest().get().dampingRatio();
        return Optional.of("With the " + name + " springs, on this road, the floor shakes least at a damping ratio of "
                + ratio(soft)
                + " and the tyre load is steadiest at " + ratio(steady)
                + ": with less the body floats and the wheel hops on, with more the dampers pass the road's edges on"
                + " to the body and to the tyre.");
    }

    /** What one setting costs or gives against another. */
    private static String step(Fitted one, Fitted now, String way) {
        double more = one.point().weightedAcceleration() / now.point().weightedAcceleration() - 1;
        double looser = one.point().tyreLoadVariation() - now.point().tyreLoadVariation();
        String comfort = Math.abs(more) < FELT
                ? "rides as softly"
                : "rides " + Numbers.fixed(Unit.of("%").fromSi(Math.abs(more)), 0) + " % "
                        + (more > 0 ? "harsher" : "softer");
        String grip = Math.abs(looser) < SEEN
                ? "holds the road as well"
                : "holds the road " + (looser > 0 ? "less" : "more") + " steadily";
        boolean both = more > FELT == looser > SEEN || Math.abs(more) < FELT || Math.abs(looser) < SEEN;
        return "One setting " + way + ", " + named(one) + " (ratio " + ratio(one.bodyRatio()) + "), " + comfort + ", "
                + comfortAgainst(one, now) + (both ? ", and " : ", but ") + grip + ": " + gripAgainst(one, now) + ".";
    }

    /** A setting that would ride softest but does not hold the body is not advised, and that is said. */
    private Optional<String> notHeld() {
        return choice.settings().stream()
                .filter(one ->
                        one.bodyRatio() < DamperChoice.LEAST_RATIO && one.name().isPresent())
                .reduce((less, more) -> more)
                .map(one ->
                        "Up to " + named(one) + " there is " + RideWords.firmness(one.bodyRatio()) + " (a ratio below "
                                + ratio(DamperChoice.LEAST_RATIO) + "), whatever comfort on this road says.");
    }

    private boolean hasCurves() {
        Optional<Damper> damper = car.axle(end).damper();
        return damper.isPresent()
                && (damper.get().forces().isPresent()
                        || !damper.get().settings().isEmpty());
    }

    private void measure(List<String> sentences) {
        Axle built = car.axle(end);
        if (hasCurves()) {
            sentences.add("The " + name + " curves have no force at 0.1 m/s: look them over, bump and rebound.");
            return;
        }
        sentences.add("Measure at the " + name + ": the damper's force at 0.05, 0.1, 0.3 and 0.6 m/s, in bump and in"
                + " rebound, on a damper machine or from who made or rebuilt it"
                + (built.damper().isEmpty()
                        ? ", and with the tape how far it moves for each millimetre of the wheel, or its lean"
                        : "")
                + ". Each setting with a name becomes a point on the curve.");
        QuarterCar quarter = axle.undamped();
        sentences.add("Until then: on this spring the body is held from about "
                + rate(DamperChoice.LEAST_RATIO * quarter.criticalDampingRate())
                + " at the wheel on"
                + choice.steadiest()
                        .map(best -> ", and the tyre load would be steadiest with " + rate(best.dampingRate())
                                + " (a ratio of " + ratio(best.dampingRatio()) + ")")
                        .orElse("")
                + ".");
    }

    private String rate(double value) {
        return units.show(value, Dimension.DAMPING, units == Units.METRIC ? 0 : 1);
    }

    private static String comfort(Fitted one) {
        return acceleration(one.point().weightedAcceleration());
    }

    private static String variation(Fitted one) {
        return percent(one.point().tyreLoadVariation());
    }

    private static String acceleration(double value) {
        return Numbers.fixed(value, 3) + " m/s²";
    }

    private static String percent(double value) {
        return Numbers.fixed(Unit.of("%").fromSi(value), 1) + " %";
    }

    private static String ratio(double value) {
        return Numbers.fixed(value, 2);
    }
}
