package evenhand.words.level;

import evenhand.level.Levelling;
import evenhand.quantity.Quantity;
import evenhand.turn.Wheel;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the perches are to bring about.
 *
 * @param crossWeight as a part of the weight; none where nobody weighed the corners
 * @param asked heights that are asked for, from the wheel's centre to the arch
 * @param measured heights that were measured, the same way
 * @param barsHooked whether the bars stay hooked up meanwhile
 * @param measuredOn day of the book's entry that the measured heights are from, where they are
 */
public record Wanted(
        OptionalDouble crossWeight,
        Map<Wheel, Quantity> asked,
        Map<Wheel, Quantity> measured,
        boolean barsHooked,
        Optional<LocalDate> measuredOn) {
    /** The cross weight where none is asked for: half on each diagonal. */
    public static final double HALF = 0.5;

    public Wanted {
        asked = Map.copyOf(asked);
        measured = Map.copyOf(measured);
    }

    /** How much each corner is to come up by, where both heights are known. */
    Map<Wheel, Levelling.Rise> rises() {
        Map<Wheel, Levelling.Rise> rises = new EnumMap<>(Wheel.class);
        asked.forEach((wheel, height) -> {
            Quantity now = measured.get(wheel);
            if (now != null) {
                double tolerance = height.saysTolerance() ? height.tolerance() : Levelling.KEPT_WITHIN;
                rises.put(wheel, new Levelling.Rise(height.si() - now.si(), tolerance));
            }
        });
        return rises;
    }

    Levelling.Asked toAsk() {
        return new Levelling.Asked(crossWeight, rises(), barsHooked);
    }
}
