package evenhand.words.owner;

import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What travel is left before the rubber, and where in a bend it is met. */
public final class TravelWords {
    /** Lengths nearer than this are the same to a tape, m. */
    private static final double SAME = 0.0005;

    /** Paces nearer than this are the same to a driver, m/s². */
    private static final double SAME_PACE = Unit.of("g").toSi(0.02);

    private TravelWords() {}

    /**
     * The room at an end, m, and the cornering at which its rubber is met, m/s²; none where it is not met up to the limit.
     *
     * @param tolerance of the room, m, where one was given
     */
    public record Room(
            String end,
            OptionalDouble before,
            OptionalDouble now,
            OptionalDouble tolerance,
            OptionalDouble metBefore,
            OptionalDouble met) {}

    /** Both ends in two or three sentences. */
    public static String of(List<Room> rooms, boolean compared, Units units) {
        if (rooms.isEmpty()) {
            return "The file gives no stops, so the sums do not know how far the wheels may travel.";
        }
        List<String> said = new ArrayList<>();
        List<String> met = new ArrayList<>();
        for (Room room : rooms) {
            said.add(room(room, units));
            met.add(met(room, compared));
        }
        return "To the rubber there is " + String.join(", and ", said) + ". In a bend " + String.join("; ", met) + ".";
    }

    private static String room(Room room, Units units) {
        double now = room.now().orElse(0);
        String before = room.before().isEmpty()
                ? ""
                : Math.abs(room.before().getAsDouble() - now) < SAME
                        ? " as before"
                        : " (before " + number(room.before().getAsDouble(), units) + ")";
        if (now < 0) {
            return "nothing left at the " + room.end() + ", which stands on it" + before;
        }
        return number(now, units)
                + (room.tolerance().isPresent()
                        ? " ± " + number(room.tolerance().getAsDouble(), units)
                        : "") + " "
                + units.of(Dimension.LENGTH).symbol() + " at the " + room.end() + before;
    }

    private static String met(Room room, boolean compared) {
        String now = room.met().isEmpty()
                ? "the " + room.end() + " one is not met up to the limit"
                : "the " + room.end() + " one is met from "
                        + GotWords.about(room.met().getAsDouble()) + " on";
        if (!compared || same(room)) {
            return now + (compared ? ", as before" : "");
        }
        return now + " (before "
                + (room.metBefore().isEmpty()
                        ? "not at all"
                        : GotWords.about(room.metBefore().getAsDouble())) + ")";
    }

    private static boolean same(Room room) {
        return room.met().isEmpty()
                ? room.metBefore().isEmpty()
                : room.metBefore().isPresent()
                        && Math.abs(room.met().getAsDouble() - room.metBefore().getAsDouble()) < SAME_PACE;
    }

    /** What is to be felt of it on the first drive, where the rubber is met sooner or later than it was. */
    public static Optional<String> inTheBend(List<Room> rooms) {
        for (Room room : rooms) {
            if (room.before().isPresent() && !same(room)) {
                if (room.met().isEmpty()) {
                    return Optional.of("In a hard bend the " + room.end() + " should no longer come onto its rubber.");
                }
                boolean sooner = room.metBefore().isEmpty()
                        || room.met().getAsDouble() < room.metBefore().getAsDouble();
                return Optional.of("In a bend the " + room.end() + " should come onto its rubber "
                        + (sooner ? "sooner than before" : "much later than before") + ", from "
                        + GotWords.about(room.met().getAsDouble()) + " on: its balance changes there.");
            }
        }
        return Optional.empty();
    }

    /** "19 mm less to the rubber at the rear." */
    public static String lost(String end, double was, double is, Units units) {
        return number(was - is, units) + " " + units.of(Dimension.LENGTH).symbol() + " less to the rubber at the " + end
                + ".";
    }

    private static String number(double metres, Units units) {
        return Numbers.fixed(units.of(Dimension.LENGTH).fromSi(metres), units == Units.METRIC ? 0 : 2);
    }
}
