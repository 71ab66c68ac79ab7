package evenhand.bump;

import java.util.List;

/**
 * What an event does where the driver's seat is bolted down, both axles going over it one after the other.
 *
 * @param behindFrontAxle of the seat, m
 * @param peakAcceleration greatest acceleration, up or down, m/s²
 * @param settled whether the body came to rest within ten seconds behind the event
 * @param series in time
 */
public record SeatMotion(double behindFrontAxle, double peakAcceleration, boolean settled, Series series) {
    /**
     * At even steps of time from the moment at which the front wheels meet the event.
     *
     * @param time s
     * @param acceleration upwards, m/s²
     */
    public record Series(List<Double> time, List<Double> acceleration) {
        public Series {
            time = List.copyOf(time);
            acceleration = List.copyOf(acceleration);
        }
    }
}
