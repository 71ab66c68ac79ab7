package evenhand.turn;

import evenhand.car.End;
import evenhand.car.Side;

/** The four wheels, in the order of an answer. */
public enum Wheel {
    FRONT_LEFT(0, End.FRONT, Side.LEFT, "frontLeft", "left front"),
    FRONT_RIGHT(1, End.FRONT, Side.RIGHT, "frontRight", "right front"),
    REAR_LEFT(2, End.REAR, Side.LEFT, "rearLeft", "left rear"),
    REAR_RIGHT(3, End.REAR, Side.RIGHT, "rearRight", "right rear");

    private final int index;
    private final End end;
    private final Side side;
    private final String key;
    private final String words;

    Wheel(int index, End end, Side side, String key, String words) {
        this.index = index;
        this.end = end;
        this.side = side;
        this.key = key;
        this.words = words;
    }

    /** Place in an answer's list of wheels. */
    public int index() {
        return index;
    }

    public End end() {
        return end;
    }

    public Side side() {
        return side;
    }

    /** Name in answers, for instance {@code frontLeft}. */
    public String key() {
        return key;
    }

    /** Name in sentences, for instance "left front". */
    public String words() {
        return words;
    }

    /** The wheel at an end of the car, on one side. */
    public static Wheel of(End end, Side side) {
        if (end == End.FRONT) {
            return side == Side.LEFT ? FRONT_LEFT : FRONT_RIGHT;
        }
        return side == Side.LEFT ? REAR_LEFT : REAR_RIGHT;
    }

    /** The inside wheel of an axle in a turn: the one nearer to the middle of the circle. */
    public static Wheel inside(End end, Direction direction) {
        return of(end, direction.inside());
    }

    /** Whether it is the inside wheel of its axle in a turn. */
    public boolean isInside(Direction direction) {
        return side == direction.inside();
    }

    /** The wheel on the other side of the same axle. */
    public Wheel mirrored() {
        return of(end, side.other());
    }
}
