package evenhand.linkage;

import evenhand.linkage.TravelAnswer.Followed;
import evenhand.linkage.TravelLimit.Motion;
import java.util.List;
import java.util.Optional;

/**
 * A way of moving an axle from rest, by one number: in heave the rise u of both wheels, m; in roll φ, rad, right side of the body
 * down, the left wheel by −(t/2)·tan φ and the right one by as much the other way; with one wheel the rise of the left one, m, the
 * right one at rest; in steer the reference steer, rad, left positive.
 */
public enum AxleMotion {
    HEAVE,
    ROLL,
    ONE_WHEEL,
    STEER;

    /** Whether its places are angles. */
    public boolean isAngle() {
        return this == ROLL || this == STEER;
    }

    /** Moves an axle there; false, and the pose as it was, where the links do not reach so far or nothing steers them. */
    public boolean moveTo(AxleLinkage axle, double place) {
        double half = axle.given().stance().track() / 2;
        return switch (this) {
            case HEAVE -> axle.moveTo(place, place);
            case ROLL -> axle.moveTo(-half * Math.tan(place), half * Math.tan(place));
            case ONE_WHEEL -> axle.moveTo(place, 0);
            case STEER ->
                axle instanceof WheelPairLinkage wheels
                        && wheels.steered()
                        && wheels.steerPerRack() != 0
                        && wheels.moveTo(0, 0, place);
        };
    }

    /** The rows of this motion, upwards through rest; none where nothing steers the axle. */
    public List<AxleState> rows(Followed followed) {
        return switch (this) {
            case HEAVE -> followed.heave();
            case ROLL -> followed.roll();
            case ONE_WHEEL -> followed.oneWheel();
            case STEER -> followed.steer();
        };
    }

    /** The place of a row of this motion, of an axle of this track. */
    public double place(AxleState row, double track) {
        return switch (this) {
            case HEAVE, ONE_WHEEL -> row.leftTravel();
            case ROLL -> Math.atan(2 * row.rightTravel() / track);
            case STEER -> row.steering().map(AxleState.Steering::referenceSteer).orElse(0.0);
        };
    }

    /** How far the axle is followed upwards, or downwards. */
    public double furthest(Ranges range, boolean up) {
        return switch (this) {
            case HEAVE, ONE_WHEEL -> up ? range.bump() : range.droop();
            case ROLL -> range.roll();
            case STEER -> range.steer();
        };
    }

    /** The way out from rest in which limits are looked for; none with one wheel and in steer. */
    public Optional<Motion> way(boolean up) {
        return switch (this) {
            case HEAVE -> Optional.of(up ? Motion.BUMP : Motion.DROOP);
            case ROLL -> Optional.of(up ? Motion.ROLL_RIGHT : Motion.ROLL_LEFT);
            case ONE_WHEEL, STEER -> Optional.empty();
        };
    }

    /** Limits of both ways of this motion, in the order in which they come. */
    public List<TravelLimit> limits(Followed followed) {
        return followed.limits().stream()
                .filter(limit -> way(limit.motion().sign() > 0).equals(Optional.of(limit.motion())))
                .toList();
    }

    /** Where along this motion a limit stands. */
    public static double place(TravelLimit limit) {
        return limit.motion().sign() * limit.at();
    }

    /** Limits that are behind on the way out to a place. */
    public List<TravelLimit> passed(Followed followed, double place) {
        return limits(followed).stream()
                .filter(limit -> limit.motion().sign() * place >= limit.at())
                .toList();
    }
}
