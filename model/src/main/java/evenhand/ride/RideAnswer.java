package evenhand.ride;

/** What a car answers when it is asked how it rides. */
public sealed interface RideAnswer permits Ride, RideAnswer.NoRide {
    /** It has no ride, and why. */
    record NoRide(String text) implements RideAnswer {}
}
