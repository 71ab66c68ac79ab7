package evenhand.turn;

import java.util.Optional;

/** The answer at one pace. */
public sealed interface PaceAnswer permits PaceAnswer.InBalance, PaceAnswer.BeyondLimit {
    /** Lateral acceleration of the pace, m/s². */
    double lateralAcceleration();

    /** The same pace of the mirrored car, turning the other way. */
    PaceAnswer mirrored();

    /** The same without what lies beyond the limit. */
    default PaceAnswer toTheLimit() {
        return this instanceof BeyondLimit ? new BeyondLimit(lateralAcceleration(), Optional.empty()) : this;
    }

    /**
     * The car turns at this pace.
     *
     * @param steady the same pace at a speed that stays, where it changes here and there is such a state
     */
    record InBalance(TurnRow row, Budget budget, Optional<TurnRow> steady) implements PaceAnswer {
        public InBalance(TurnRow row, Budget budget) {
            this(row, budget, Optional.empty());
        }

        InBalance against(Optional<TurnRow> itsSteady) {
            return new InBalance(row, budget, itsSteady);
        }

        @Override
        public double lateralAcceleration() {
            return row.lateralAcceleration();
        }

        @Override
        public InBalance mirrored() {
            return new InBalance(row.mirrored(), budget, steady.map(TurnRow::mirrored));
        }
    }

    /**
     * The car does not turn at this pace by itself.
     *
     * @param steered the balance that only a driver who steers against it all the time could hold, between the limit and the
     *     fold, where it was asked for
     */
    record BeyondLimit(double lateralAcceleration, Optional<InBalance> steered) implements PaceAnswer {
        @Override
        public BeyondLimit mirrored() {
            return new BeyondLimit(lateralAcceleration, steered.map(InBalance::mirrored));
        }
    }

    /**
     * What the understeer gradient at the pace is made of, rad per m/s², tangents at the solution.
     *
     * @param tyres difference of the axles' mean slips
     * @param camber difference of the slips that lean is worth
     * @param rollSteer steer by suspension roll
     * @param lateralForceSteer give under side force
     * @param aligningTorqueSteer give under aligning torque
     * @param rest Ackermann geometry and finite angles
     */
    record Budget(
            double tyres,
            double camber,
            double rollSteer,
            double lateralForceSteer,
            double aligningTorqueSteer,
            double rest) {}
}
