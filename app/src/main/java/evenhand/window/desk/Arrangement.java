package evenhand.window.desk;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * How a person has arranged the window.
 *
 * @param zoom of type and all that goes with it, per cent of the system's
 * @param folded parts that were folded by hand, and parts that were unfolded
 * @param differences whether figures stand with their differences from the base set-up
 */
public record Arrangement(int zoom, Map<String, Boolean> folded, boolean differences) {
    private static final List<Integer> ZOOMS = List.of(80, 90, 100, 110, 125, 150, 175, 200);

    /** As it comes. */
    public static final Arrangement USUAL = new Arrangement(100, Map.of(), false);

    /** The adjustments under the answer. */
    public static final String ADJUSTMENTS = "adjustments";

    /** Those that no question asks for first. */
    public static final String ALL_ADJUSTMENTS = "all adjustments";

    /** The changes of a set-up that do not go into a line. */
    public static final String MORE_CHANGES = "more changes";

    /** The note on a set-up. */
    public static final String NOTE = "note";

    /** Set-ups that were put aside. */
    public static final String HIDDEN = "hidden set-ups";

    public Arrangement {
        zoom = nearest(zoom);
        folded = Collections.unmodifiableMap(new TreeMap<>(folded));
    }

    private static int nearest(int zoom) {
        return ZOOMS.stream()
                .min((a, b) -> Integer.compare(Math.abs(a - zoom), Math.abs(b - zoom)))
                .orElseThrow();
    }

    /** The questions of a group. */
    public static String of(Question.Group group) {
        return "questions about " + group.words();
    }

    /** Whether a part was folded, or unfolded, by hand. */
    public Optional<Boolean> folded(String part) {
        return Optional.ofNullable(folded.get(part));
    }

    /** Whether a part is open that is folded unless somebody opens it. */
    public boolean isOpened(String part) {
        return folded(part).map(shut -> !shut).orElse(false);
    }

    Arrangement folding(String part, boolean shut) {
        Map<String, Boolean> next = new TreeMap<>(folded);
        next.put(part, shut);
        return new Arrangement(zoom, next, differences);
    }

    /** Larger or smaller by so many steps. */
    public Arrangement zoomed(int steps) {
        int at = ZOOMS.indexOf(zoom) + steps;
        return new Arrangement(ZOOMS.get(Math.max(0, Math.min(ZOOMS.size() - 1, at))), folded, differences);
    }

    Arrangement zoomedTo(int next) {
        return new Arrangement(next, folded, differences);
    }

    Arrangement withDifferences(boolean next) {
        return new Arrangement(zoom, folded, next);
    }
}
