package evenhand.scenario;

import static evenhand.catalogue.Shape.shape;
import static evenhand.catalogue.Slot.group;
import static evenhand.catalogue.Slot.length;

import evenhand.catalogue.Amount;
import evenhand.catalogue.Shape;
import evenhand.catalogue.Slot;
import evenhand.catalogue.Values;
import evenhand.quantity.Quantity;
import evenhand.turn.Wheel;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What the shop writes down of a job, declared as the car is. */
final class RecordCatalogue {
    private static final Map<Wheel, Slot<Double>> HEIGHTS = heights();

    private static final Shape<Map<Wheel, Quantity>> CORNER_HEIGHTS =
            new Shape.Plain<>("cornerHeights", new ArrayList<>(HEIGHTS.values()), RecordCatalogue::heights);

    static final Slot<Map<Wheel, Quantity>> RIDE_HEIGHTS = group("rideHeights", CORNER_HEIGHTS)
            .means("ride heights that are asked for, from the middle of the wheel up to the edge of the arch")
            .defaultsTo(Map.of());

    private RecordCatalogue() {}

    private static Map<Wheel, Slot<Double>> heights() {
        Map<Wheel, Slot<Double>> all = new EnumMap<>(Wheel.class);
        for (Wheel wheel : Wheel.values()) {
            all.put(
                    wheel,
                    length(wheel.key())
                            .optional()
                            .means("from the middle of the " + wheel.words() + " wheel up to the edge of its arch")
                            .measured("steel rule from the middle of the hub to the arch", Amount.of(0.001))
                            .usual(0.2, 0.6)
                            .within(0.02, 2));
        }
        return all;
    }

    private static Map<Wheel, Quantity> heights(Values v) {
        Map<Wheel, Quantity> given = new EnumMap<>(Wheel.class);
        HEIGHTS.forEach((wheel, slot) -> v.given(slot).ifPresent(height -> given.put(wheel, height)));
        return given;
    }
}
