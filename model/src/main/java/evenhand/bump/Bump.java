package evenhand.bump;

import java.util.OptionalDouble;

/**
 * What one wheel and its part of the body did over an event. SI; travels are the wheel's, from rest on level ground.
 *
 * @param peakBodyAcceleration greatest acceleration of the body, up or down, m/s²
 * @param peakBumpTravel farthest into bump, m; 0 where it never was in bump
 * @param peakDroopTravel farthest into droop, m, positive; 0 where it never was in droop
 * @param leastTyreLoad N
 * @param timeOffGround how long the tyre carried nothing, s
 * @param stopTouched whether the bump stop, or metal where there is none, was touched
 * @param metalTouched whether metal met metal
 * @param droopStopReached whether the droop stop was reached
 * @param gripLost part of the side force at the mean load that the changes of load took from the mean side force, over
 *     {@code gripTime}; by the tyre's law at the slip and lean of mid-corner, or straight ahead of the greatest side
 *     force; none where there is no side force
 * @param gripTime from the beginning of the event until half a second after it, s
 * @param room how far the travel could go
 * @param settled whether the car came to rest within ten seconds behind the event
 * @param energy where the road's work went
 * @param series in time
 */
public record Bump(
        double peakBodyAcceleration,
        double peakBumpTravel,
        double peakDroopTravel,
        double leastTyreLoad,
        double timeOffGround,
        boolean stopTouched,
        boolean metalTouched,
        boolean droopStopReached,
        OptionalDouble gripLost,
        double gripTime,
        Room room,
        boolean settled,
        EnergyBalance energy,
        Series series) {
    /**
     * Travel of the wheel from rest on level ground to what ends it, m, each where the file says so.
     *
     * @param toStop in bump to the bump stop
     * @param toMetal in bump to metal
     * @param toDroopStop in droop, positive
     */
    public record Room(OptionalDouble toStop, OptionalDouble toMetal, OptionalDouble toDroopStop) {}
}
