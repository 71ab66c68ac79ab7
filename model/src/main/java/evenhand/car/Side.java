package evenhand.car;

/** A side of the car, as the driver sees it. */
public enum Side {
    LEFT(0, 1),
    RIGHT(1, -1);

    private final int index;
    private final double sign;

    Side(int index, double sign) {
        this.index = index;
        this.sign = sign;
    }

    /** Place in a list of both: left, then right. */
    public int index() {
        return index;
    }

    /** σ: which way from the middle it lies, +1 left, −1 right, as y of ISO 8855. */
    public double sign() {
        return sign;
    }

    public Side other() {
        return this == LEFT ? RIGHT : LEFT;
    }
}
