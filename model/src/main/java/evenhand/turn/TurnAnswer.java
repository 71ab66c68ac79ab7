package evenhand.turn;

import java.util.List;

/** What a car answers when it is asked to turn. */
public sealed interface TurnAnswer permits TurnAnswer.Turns, TurnAnswer.NoTurn {
    /**
     * The turn from straight ahead to the limit.
     *
     * @param radius of the circle, m
     * @param direction of the turn
     * @param paces in the order that they were asked
     * @param limit the fold
     * @param events in order of lateral acceleration
     * @param rows the curve, rising, from 0.02 g to the fold, the paces among them
     */
    record Turns(
            double radius,
            Direction direction,
            List<PaceAnswer> paces,
            Limit limit,
            List<TurnEvent> events,
            List<TurnRow> rows)
            implements TurnAnswer {
        public Turns {
            paces = List.copyOf(paces);
            events = List.copyOf(events);
            rows = List.copyOf(rows);
        }
    }

    /** The car has no such turn. */
    record NoTurn(Reason reason, String text) implements TurnAnswer, PacesAnswer {}

    /** Why there is no answer. */
    enum Reason {
        FALLS_OVER("fallsOver"),
        NO_EQUILIBRIUM("noEquilibrium"),
        WHEELSPIN("wheelspin");

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
