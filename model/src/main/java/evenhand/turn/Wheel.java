package evenhand.turn;

import evenhand.car.End;

/** The four wheels, in the order of an answer. */
public enum Wheel {
    FRONT_LEFT(0, End.FRONT, true, "frontLeft", "left front"),
    FRONT_RIGHT(1, End.FRONT, false, "frontRight", "right front"),
    REAR_LEFT(2, End.REAR, true, "rearLeft", "left rear"),
    REAR_RIGHT(3, End.REAR, false, "rearRight", "right rear");

    private final int index;
    private final End end;
    private final boolean left;
    private final String key;
    private final String words;

    Wheel(int index, End end, boolean left, String key, String words) {
        this.index = index;
        this.end = end;
        this.left = left;
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

    public boolean left() {
        return left;
    }

    /** Name in answers, for instance {@code frontLeft}. */
    public String key() {
        return key;
    }

    /** Name in sentences, for instance "left front". */
    public String words() {
        return words;
    }

    /** The wheel on the other side of the same axle. */
    public Wheel mirrored() {
        return values()[index ^ 1];
    }
}
