package evenhand.car;

/** An end of the car. */
public enum End {
    FRONT,
    REAR
}
