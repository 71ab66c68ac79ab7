package evenhand.words;

import evenhand.car.Axle;
import evenhand.car.LoadCase;
import evenhand.load.Laden;
import evenhand.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What is aboard, and how the car sits under it. */
public final class LoadWords {
    private LoadWords() {}

    /** The load by name and piece. */
    public static String aboard(LoadCase load, Units units) {
        String pieces = load.added().stream()
                .map(one -> one.what() + " " + units.show(one.mass(), Dimension.MASS, 0))
                .collect(Collectors.joining(", "));
        return "With \"" + load.name() + "\" aboard" + (pieces.isEmpty() ? "" : ": " + pieces) + ".";
    }

    /** How far the car comes down under it, and what that leaves of its travel. */
    public static String sits(LoadCase load, Laden.AtRest rest, Units units) {
        List<String> left = new ArrayList<>();
        gap(rest.car().front(), "in front", units).ifPresent(left::add);
        gap(rest.car().rear(), "behind", units).ifPresent(left::add);
        return "With \"" + load.name() + "\" aboard it sits "
                + lower(rest.front().drop(), units) + " in front and "
                + lower(rest.rear().drop(), units) + " behind."
                + (left.isEmpty() ? "" : " Left to the bump stops: " + String.join(", ", left) + ".");
    }

    private static Optional<String> gap(Axle axle, String where, Units units) {
        return axle.stops()
                .bump()
                .map(stop -> stop.gap() < 0
                        ? "none " + where + " (it stands on them)"
                        : length(stop.gap(), units) + " " + where);
    }

    private static String lower(double drop, Units units) {
        return length(Math.abs(drop), units) + (drop < 0 ? " higher" : " lower");
    }

    private static String length(double metres, Units units) {
        return units.show(metres, Dimension.LENGTH, units == Units.METRIC ? 0 : 1);
    }
}
