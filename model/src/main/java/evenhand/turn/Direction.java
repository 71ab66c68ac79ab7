package evenhand.turn;

/** Which way the car turns. */
public enum Direction {
    LEFT,
    RIGHT
}
