package evenhand.scenario;

import evenhand.quantity.Quantity;
import evenhand.turn.Wheel;
import java.util.List;
import java.util.Map;

/**
 * What the shop writes down of a job beside the car: none of it changes what the car answers.
 *
 * @param vehicle which car it is
 * @param weighedWith what was in it on the scales
 * @param rideHeights asked for at a corner, from the wheel's centre to the arch, where one is
 * @param tolerances to build within, by the path of a number of the car, SI
 * @param torques what is tightened to which torque
 * @param book what was done
 */
public record ShopRecord(
        Vehicle vehicle,
        WeighedWith weighedWith,
        Map<Wheel, Quantity> rideHeights,
        Map<String, Double> tolerances,
        List<Torque> torques,
        Book book) {
    /** Of a job that nothing was written down of. */
    public static final ShopRecord NOTHING =
            new ShopRecord(Vehicle.UNKNOWN, WeighedWith.UNSAID, Map.of(), Map.of(), List.of(), Book.EMPTY);

    public ShopRecord {
        rideHeights = Map.copyOf(rideHeights);
        tolerances = Map.copyOf(tolerances);
        torques = List.copyOf(torques);
    }

    /** The same to be built within these. */
    ShopRecord within(Map<String, Double> other) {
        return new ShopRecord(vehicle, weighedWith, rideHeights, other, torques, book);
    }
}
