package evenhand.scenario;

import evenhand.quantity.Quantity;
import evenhand.turn.Wheel;
import java.util.List;
import java.util.Map;

/**
 * What the shop writes down of a job beside the car: none of it changes what the car answers.
 *
 * @param rideHeights asked for at a corner, from the wheel's centre to the arch, where one is
 * @param torques what is tightened to which torque
 * @param book what was done
 */
public record ShopRecord(Map<Wheel, Quantity> rideHeights, List<Torque> torques, Book book) {
    public ShopRecord {
        rideHeights = Map.copyOf(rideHeights);
        torques = List.copyOf(torques);
    }
}
