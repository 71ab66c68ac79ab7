package evenhand.turn;

import java.util.List;
import java.util.Optional;

/** What a car answers when it is asked to turn. */
public sealed interface TurnAnswer permits TurnAnswer.Turns, TurnAnswer.NoTurn {
    /** The turn the other way round of a car that is alike both ways, or of the mirrored car. */
    TurnAnswer mirrored();

    /**
     * The turn from straight ahead to the fold.
     *
     * @param radius of the circle, m
     * @param direction of the turn
     * @param paces in the order that they were asked
     * @param limit that a driver meets: the fold or, before it, lost hold
     * @param events in order of lateral acceleration, those beyond the limit too
     * @param rows the curve, rising, from 0.02 g to the fold, the paces among them
     * @param steadyLimit the limit at a speed that stays, where it changes here and there is such a limit
     */
    record Turns(
            double radius,
            Direction direction,
            List<PaceAnswer> paces,
            Limit limit,
            List<TurnEvent> events,
            List<TurnRow> rows,
            Optional<Limit> steadyLimit)
            implements TurnAnswer {
        public Turns(
                double radius,
                Direction direction,
                List<PaceAnswer> paces,
                Limit limit,
                List<TurnEvent> events,
                List<TurnRow> rows) {
            this(radius, direction, paces, limit, events, rows, Optional.empty());
        }

        public Turns {
            paces = List.copyOf(paces);
            events = List.copyOf(events);
            rows = List.copyOf(rows);
        }

        @Override
        public Turns mirrored() {
            return new Turns(
                    radius,
                    direction.other(),
                    paces.stream().map(PaceAnswer::mirrored).toList(),
                    limit.mirrored(),
                    events.stream().map(TurnEvent::mirrored).toList(),
                    rows.stream().map(TurnRow::mirrored).toList(),
                    steadyLimit.map(Limit::mirrored));
        }

        /** Whether a lateral acceleration, m/s², lies beyond what the car does by itself. */
        public boolean isBeyondLimit(double lateralAcceleration) {
            return lateralAcceleration > limit.lateralAcceleration();
        }

        /** The curve as far as a driver meets it. */
        public List<TurnRow> rowsToLimit() {
            return rows.stream()
                    .filter(row -> !isBeyondLimit(row.lateralAcceleration()))
                    .toList();
        }

        /** The same answer without what lies beyond the limit. */
        public PacesAnswer.Paces toTheLimit() {
            return new PacesAnswer.Paces(
                    direction, paces.stream().map(PaceAnswer::toTheLimit).toList(), limit.withoutFold());
        }

        /** What happens before the limit is met. */
        public List<TurnEvent> eventsToLimit() {
            return events.stream()
                    .filter(event -> !isBeyondLimit(event.lateralAcceleration()))
                    .toList();
        }
    }

    /** The car has no such turn. */
    record NoTurn(Reason reason, String text) implements TurnAnswer, PacesAnswer {
        @Override
        public NoTurn mirrored() {
            return this;
        }
    }

    /** Why there is no answer. */
    enum Reason {
        FALLS_OVER("fallsOver"),
        NO_EQUILIBRIUM("noEquilibrium"),
        WHEELSPIN("wheelspin"),
        /** Of a figure of the links: they do not reach the place in the travel where it is asked for. */
        CANNOT_REACH("cannotReach");

        private final String key;

        Reason(String key) {
            this.key = key;
        }

        /** Name in answers. */
        public String key() {
            return key;
        }
    }
}
