package evenhand.words.balance;

import evenhand.turn.PaceAnswer;
import evenhand.turn.TurnRow;
import java.util.Optional;

/**
 * What a car needs at a pace while its speed changes, beside what it needs while the speed stays. Until the driver has given that
 * steer the car does the rest itself: one that needs less tightens its line, one that needs more runs wide.
 */
public record AgainstSteady(TurnRow row, TurnRow steady) {
    /** Of a pace whose speed changes and that has a steady turn. */
    public static Optional<AgainstSteady> of(PaceAnswer.InBalance pace) {
        return pace.steady().map(steady -> new AgainstSteady(pace.row(), steady));
    }

    /** Reference steer less that of the steady turn, left positive, rad. */
    public double steer() {
        return row.steer() - steady.steer();
    }

    /** The same in degrees. */
    public double steerInDegrees() {
        return Math.toDegrees(steer());
    }

    /** How much more steer into the bend it needs, rad. */
    double more() {
        return Math.signum(steady.ackermannSteer()) * steer();
    }

    /** The same in degrees. */
    public double moreInDegrees() {
        return Math.toDegrees(more());
    }

    /** Name in answers. */
    public String key() {
        return more() < 0 ? "tightens" : "runs wide";
    }
}
