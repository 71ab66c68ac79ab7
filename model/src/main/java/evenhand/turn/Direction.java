package evenhand.turn;

import evenhand.car.Side;

/** Which way the car turns. */
public enum Direction {
    LEFT(Side.LEFT, "left"),
    RIGHT(Side.RIGHT, "right");

    private final Side inside;
    private final String key;

    Direction(Side inside, String key) {
        this.inside = inside;
        this.key = key;
    }

    /** The side of the car towards the middle of the turn. */
    public Side inside() {
        return inside;
    }

    /** Name in options, answers and sentences. */
    public String key() {
        return key;
    }

    public Direction other() {
        return this == LEFT ? RIGHT : LEFT;
    }
}
