package evenhand.linkage;

import java.util.OptionalDouble;

/**
 * The first place, on the way out from rest, at which something ends the travel or goes beyond what it is given.
 *
 * @param at size of travel, m, or of roll, rad: 0 where it is so at rest
 * @param part that is meant: a damper, a link or a gap by its name; "links" where there is no pose further out, "lateralLocator"
 *     where its crank is over centre
 * @param crank turn of a Watt's crank there, rad, where there is one
 */
public record TravelLimit(Motion motion, double at, Kind kind, String part, OptionalDouble crank) {
    /** Ways out from rest. */
    public enum Motion {
        BUMP("bump"),
        DROOP("droop"),
        ROLL_RIGHT("rollRight"),
        ROLL_LEFT("rollLeft");

        private final String key;

        Motion(String key) {
            this.key = key;
        }

        public String key() {
            return key;
        }

        /** Whether its places are angles of roll. */
        public boolean isRoll() {
            return this == ROLL_RIGHT || this == ROLL_LEFT;
        }

        /** +1 where travel or roll is positive. */
        int sign() {
            return this == BUMP || this == ROLL_RIGHT ? 1 : -1;
        }
    }

    /** What happens there. */
    public enum Kind {
        CANNOT_REACH("cannotReach"),
        CRANK_OVER_CENTRE("crankOverCentre"),
        DAMPER_CLOSED("damperClosed"),
        DAMPER_OPEN("damperOpen"),
        JOINT("joint"),
        CLEARANCE("clearance");

        private final String key;

        Kind(String key) {
            this.key = key;
        }

        public String key() {
            return key;
        }
    }
}
