package evenhand.words.travel;

import evenhand.car.End;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.car.links.Locator;
import evenhand.linkage.AxleState;
import evenhand.linkage.AxleState.LiveFigures;
import evenhand.linkage.AxleState.ShaftFigures;
import evenhand.linkage.TravelAnswer;
import evenhand.linkage.TravelLimit;
import evenhand.quantity.Dimension;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** What an axle's links do through the travel, what matters first. */
public final class TravelWords {
    /** What is less is none that anybody measures. */
    private static final double NO_STEER = 5e-4;

    private final AxleTravel axle;
    private final TravelAnswer.Followed followed;
    private final Units units;
    private final List<String> sentences = new ArrayList<>();

    private TravelWords(AxleTravel axle, Units units) {
        this.axle = axle;
        this.followed = axle.followed();
        this.units = units;
    }

    public static List<String> of(AxleTravel axle, Units units) {
        TravelWords words = new TravelWords(axle, units);
        words.rollCentre();
        words.rollSteer();
        if (axle.linked() instanceof LinkedLiveAxle) {
            words.sideways();
            words.shaft();
        } else {
            words.wheels();
        }
        words.sideView();
        words.standing();
        words.stops();
        return List.copyOf(words.sentences);
    }

    private void rollCentre() {
        OptionalDouble height = followed.rest().rollCentreHeight();
        if (height.isEmpty()) {
            sentences.add("The " + axle.end().key()
                    + " wheels have no roll centre at rest: their force lines run side by side.");
            return;
        }
        String unit = units.of(Dimension.LENGTH).symbol();
        String goes = followed.rollCentrePerBump().isPresent()
                ? "; it " + (followed.rollCentrePerBump().getAsDouble() < 0 ? "falls " : "rises ")
                        + Numbers.fixed(Math.abs(followed.rollCentrePerBump().getAsDouble()), 2)
                        + " " + unit + " over the ground for each " + unit + " of bump"
                : "";
        sentences.add("The " + axle.end().key() + " roll centre stands " + length(height.getAsDouble(), 1)
                + " above the ground" + goes + ": " + heightAt(axle.bump()) + " at the end of bump, "
                + heightAt(axle.droop()) + " at the end of droop.");
        if (axle.linked() instanceof LinkedLiveAxle live
                && live.locator().orElse(null) instanceof Locator.WattPoints watt) {
            watt(watt, height.getAsDouble());
        }
    }

    private String heightAt(AxleState state) {
        return state.rollCentreHeight().isPresent()
                ? length(state.rollCentreHeight().getAsDouble(), 0)
                : "nowhere";
    }

    /** A pivot that stands away from the axle's line is not where the axle rolls. */
    private void watt(Locator.WattPoints watt, double height) {
        double above = height - watt.pivot().up();
        double behind = -watt.pivot().ahead();
        if (axle.linked().stance().cameDown() == 0 && Math.abs(behind) > 1e-3) {
            sentences.add("The linkage sits " + length(Math.abs(behind), 0) + (behind > 0 ? " behind" : " ahead of")
                    + " the axle, so the axle rolls about a point " + length(Math.abs(above), 1)
                    + (above < 0 ? " below" : " above") + " its pivot.");
        }
    }

    private void rollSteer() {
        double steer = followed.rest().rollSteer();
        sentences.add(
                Math.abs(steer) < NO_STEER
                        ? "It does not steer in roll."
                        : "It steers " + Numbers.fixed(Math.abs(steer), 3) + " deg per degree of roll, towards "
                                + (steer > 0 ? "understeer" : "oversteer") + ".");
    }

    private void sideways() {
        double rest = live(followed.rest()).sideShift();
        double bump = live(axle.bump()).sideShift() - rest;
        double droop = live(axle.droop()).sideShift() - rest;
        sentences.add(
                isNone(bump) && isNone(droop)
                        ? "It rises and falls without going sideways."
                        : "Rising to the end of bump "
                                + (isNone(bump) ? staying(rest, units) : "it goes " + side(bump))
                                + ", falling to the end of droop "
                                + (isNone(droop)
                                        ? staying(rest, units)
                                        : (isNone(bump) ? "it goes " : "") + side(droop))
                                + ".");
        double steer = Math.toDegrees(
                live(axle.bump()).axleSteer() - live(followed.rest()).axleSteer());
        if (Math.abs(steer) >= 0.01) {
            sentences.add("In bump it steers by " + Numbers.fixed(Math.abs(steer), 2) + " deg to the "
                    + (steer > 0 ? "left" : "right") + ".");
        }
    }

    private boolean isNone(double side) {
        return sideways(side, units).equals(sideways(0, units));
    }

    private String side(double left) {
        return sideways(left, units) + " to the " + (left < 0 ? "right" : "left");
    }

    /** That an axle does not go sideways, which stands so far left of the middle at rest, m. */
    static String staying(double rest, Units units) {
        return sideways(rest, units).equals(sideways(0, units)) ? "it stays in the middle" : "it does not go sideways";
    }

    /** How far something goes sideways, without its sign. */
    static String sideways(double side, Units units) {
        return units.show(Math.abs(side), Dimension.LENGTH, units == Units.METRIC ? 1 : 3);
    }

    private void shaft() {
        Optional<ShaftFigures> rest = live(followed.rest()).shaft();
        if (rest.isEmpty()) {
            return;
        }
        ShaftFigures bump = live(axle.bump()).shaft().orElseThrow();
        ShaftFigures droop = live(axle.droop()).shaft().orElseThrow();
        sentences.add("The pinion points " + slope(rest.get().pinionSlope()) + " at rest, "
                + slope(bump.pinionSlope()) + " in bump and " + slope(droop.pinionSlope())
                + " in droop; the shaft's joints stand at " + joints(rest.get()) + " at rest, " + joints(bump)
                + " in bump and " + joints(droop) + " in droop; together they are as uneven as one joint at "
                + degrees(rest.get().residualJointAngle(), 2) + ", " + degrees(bump.residualJointAngle(), 2) + " and "
                + degrees(droop.residualJointAngle(), 2) + ".");
    }

    private static String slope(double slope) {
        return degrees(Math.abs(slope), 1) + (slope < 0 ? " down" : " up");
    }

    private static String joints(ShaftFigures shaft) {
        return shaft.jointAngles().stream()
                        .map(angle -> Numbers.fixed(Math.toDegrees(angle), 1))
                        .collect(Collectors.joining("/"))
                + " deg";
    }

    private void wheels() {
        AxleState rest = followed.rest();
        AxleState bump = axle.bump();
        AxleState droop = axle.droop();
        double toeBump = bump.left().toe() - rest.left().toe();
        double toeDroop = droop.left().toe() - rest.left().toe();
        sentences.add("The left wheel goes " + toe(toeBump) + " in bump and " + toe(toeDroop)
                + " in droop; its camber goes from " + signed(rest.left().camber()) + " at rest to "
                + signed(bump.left().camber()) + " in bump and "
                + signed(droop.left().camber()) + " in droop.");
        rest.left()
                .own()
                .ifPresent(own -> sentences.add("Castor is " + degrees(own.caster(), 1) + ", kingpin inclination "
                        + degrees(own.kingpin(), 1) + ", trail " + length(own.trail(), 0) + ", scrub radius "
                        + length(own.scrub(), 0) + "."));
    }

    private static String toe(double change) {
        return degrees(Math.abs(change), 2) + (change < 0 ? " out" : " in");
    }

    private static String signed(double angle) {
        return Numbers.signed(Math.toDegrees(angle), 2) + " deg";
    }

    private void sideView() {
        List<String> shares = new ArrayList<>();
        AxleState rest = followed.rest();
        share(shares, rest.antiDive(), "anti-dive");
        share(shares, rest.antiSquat(), "anti-squat");
        share(shares, rest.antiLift(), axle.end() == End.FRONT ? "anti-lift in driving" : "anti-lift in braking");
        if (!shares.isEmpty()) {
            sentences.add("Of the load transfer along the car the links carry: " + String.join(", ", shares) + ".");
        }
    }

    private static void share(List<String> shares, OptionalDouble share, String name) {
        if (share.isPresent()) {
            shares.add(name + " " + Numbers.percent(share.getAsDouble(), 0));
        }
    }

    private void standing() {
        if (followed.standsAt().isPresent() && Math.abs(followed.standsAt().getAsDouble()) >= 1e-4) {
            double at = followed.standsAt().getAsDouble();
            sentences.add("On these springs it stands " + length(Math.abs(at), 1) + (at > 0 ? " lower" : " higher")
                    + " than it is drawn.");
        }
    }

    /** What stops the travel first, each way. */
    private void stops() {
        for (TravelLimit.Motion motion : List.of(TravelLimit.Motion.BUMP, TravelLimit.Motion.DROOP)) {
            Optional<TravelLimit> first = followed.limits().stream()
                    .filter(limit -> limit.motion() == motion)
                    .min(Comparator.comparingDouble(TravelLimit::at));
            double range = motion == TravelLimit.Motion.BUMP
                    ? followed.range().bump()
                    : followed.range().droop();
            sentences.add(
                    first.isPresent()
                            ? limit(first.get(), units)
                            : "Nothing of the links is in the way of " + length(range, 0) + " of " + motion.key()
                                    + ".");
        }
    }

    /** A limit as a sentence. */
    public static String limit(TravelLimit limit, Units units) {
        String where = limit.at() == 0
                ? "Already at rest "
                : switch (limit.motion()) {
                    case BUMP -> "In bump ";
                    case DROOP -> "In droop ";
                    case ROLL_RIGHT -> "With the right side down ";
                    case ROLL_LEFT -> "With the left side down ";
                };
        String place = limit.at() == 0
                ? ""
                : " at "
                        + (limit.motion().isRoll()
                                ? degrees(limit.at(), 2) + " of roll"
                                : units.show(limit.at(), Dimension.LENGTH, units == Units.METRIC ? 1 : 2));
        String what = switch (limit.kind()) {
            case CANNOT_REACH -> "the links reach no further";
            case CRANK_OVER_CENTRE ->
                "the bell-crank goes over its centre"
                        + (limit.crank().isPresent()
                                ? ", turned by "
                                        + degrees(Math.abs(limit.crank().getAsDouble()), 0)
                                : "");
            case DAMPER_CLOSED -> PartWords.of(limit.part()) + " is closed";
            case DAMPER_OPEN -> PartWords.of(limit.part()) + " is pulled out";
            case JOINT -> "a joint of " + PartWords.of(limit.part()) + " is at its limit";
            case CLEARANCE -> "\"" + limit.part() + "\" has less than the gap that is wanted";
        };
        return where + what + place + ".";
    }

    private static LiveFigures live(AxleState state) {
        return state.live().orElseThrow();
    }

    private String length(double si, int digits) {
        return units.show(si, Dimension.LENGTH, units == Units.METRIC ? digits : digits + 2);
    }

    static String degrees(double angle, int digits) {
        return Numbers.fixed(Math.toDegrees(angle), digits) + " deg";
    }
}
