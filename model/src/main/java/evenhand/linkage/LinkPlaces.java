package evenhand.linkage;

import evenhand.car.links.LinkedAxle;
import java.util.Optional;

/**
 * What the links of an axle say at rest and at both ends of its travel.
 *
 * @param bump absent where the links do not reach that far
 * @param droop likewise
 */
public record LinkPlaces(LinkPlace rest, Optional<LinkPlace> bump, Optional<LinkPlace> droop) {
    /** Where in the travel. */
    public enum Where {
        REST(""),
        BUMP("in bump"),
        DROOP("in droop");

        private final String words;

        Where(String words) {
            this.words = words;
        }

        /** "in bump"; nothing at rest. */
        public String words() {
            return words;
        }
    }

    /** Follows an axle to both ends of a range; nothing where it does not stand. */
    public static Optional<LinkPlaces> of(LinkedAxle linked, Ranges range) {
        if (!(Assembly.of(linked) instanceof Assembly.Standing standing)) {
            return Optional.empty();
        }
        AxleLinkage axle = standing.linkage();
        axle.rest();
        LinkPlace rest = LinkPlace.of(axle);
        return Optional.of(new LinkPlaces(rest, at(axle, range.bump()), at(axle, -range.droop())));
    }

    private static Optional<LinkPlace> at(AxleLinkage axle, double travel) {
        axle.rest();
        return axle.moveTo(travel, travel) ? Optional.of(LinkPlace.of(axle)) : Optional.empty();
    }

    /** In one place; nothing where the links do not reach it. */
    public Optional<LinkPlace> at(Where where) {
        return switch (where) {
            case REST -> Optional.of(rest);
            case BUMP -> bump;
            case DROOP -> droop;
        };
    }
}
