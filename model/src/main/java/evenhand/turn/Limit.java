package evenhand.turn;

import evenhand.car.End;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The limit that a driver meets: the first of the fold, where no more lateral acceleration can be had, and of the place
 * where the car no longer stays in its bend by itself.
 *
 * @param row the car there; at a fold it has no understeer gradient
 * @param cause what ends it
 * @param firstAxle the end that goes; none where neither slides
 * @param spinningWheel the driven wheel that has spent its grip on drive, where that is the cause
 * @param endOfLinks what does not reach further, where that is the cause
 * @param fold lateral acceleration of the fold, m/s², where it lies beyond and was asked for
 * @param nearUndersteer understeer gradient at nine tenths of the limit, rad per m/s²: smooth through neutral
 */
public record Limit(
        TurnRow row,
        Cause cause,
        Optional<End> firstAxle,
        Optional<Wheel> spinningWheel,
        Optional<EndOfLinks> endOfLinks,
        OptionalDouble fold,
        OptionalDouble nearUndersteer) {
    /** The part of the limit at which {@link #nearUndersteer} is taken. */
    public static final double NEAR = 0.9;

    /** What ends the turn. */
    public enum Cause {
        /** The fold: the tyres of one end give no more side force. */
        SIDESLIP("sideslip"),
        /** A driven wheel has spent its grip on drive. */
        WHEELSPIN("wheelspin"),
        /** The tail comes round unless the driver steers against it. */
        SPIN("spin"),
        /** Past this speed the wheel has to be held against the turn, though neither end slides. */
        CRITICAL_SPEED("criticalSpeed"),
        /** The links of an axle reach no further. */
        LINKS("links"),
        /** The search ended without any of these. */
        GAVE_UP("gaveUp");

        private final String key;

        Cause(String key) {
            this.key = key;
        }

        /** Name in answers. */
        public String key() {
            return key;
        }
    }

    /**
     * Links that reach no further.
     *
     * @param part "links", or "lateralLocator" where its crank is over centre
     */
    public record EndOfLinks(End axle, String part) {}

    /** The same for who does not look beyond the limit. */
    Limit withoutFold() {
        return new Limit(row, cause, firstAxle, spinningWheel, endOfLinks, OptionalDouble.empty(), nearUndersteer);
    }

    /** The same limit of the mirrored car, turning the other way. */
    Limit mirrored() {
        return new Limit(
                row.mirrored(), cause, firstAxle, spinningWheel.map(Wheel::mirrored), endOfLinks, fold, nearUndersteer);
    }

    public double lateralAcceleration() {
        return row.lateralAcceleration();
    }

    /** How much more of its grip the front uses than the rear, there. Which end goes is {@link #firstAxle}'s to say. */
    public double limitBalance() {
        return row.gripBalance();
    }

    /** Whether the front goes, so that the car ploughs straight on instead of coming round. */
    public boolean frontFirst() {
        return firstAxle.isPresent() && firstAxle.get() == End.FRONT;
    }
}
