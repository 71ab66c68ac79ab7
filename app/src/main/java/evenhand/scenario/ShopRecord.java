package evenhand.scenario;

import evenhand.quantity.Quantity;
import evenhand.turn.Wheel;
import java.util.EnumMap;
import java.util.Map;

/**
 * What the shop writes down of a job beside the car: none of it changes what the car answers.
 *
 * @param rideHeights asked for at a corner, from the wheel's centre to the arch, where one is
 */
public record ShopRecord(Map<Wheel, Quantity> rideHeights) {
    /** Nothing written down. */
    public static final ShopRecord NONE = new ShopRecord(Map.of());

    public ShopRecord {
        rideHeights = rideHeights.isEmpty() ? Map.of() : new EnumMap<>(rideHeights);
    }
}
