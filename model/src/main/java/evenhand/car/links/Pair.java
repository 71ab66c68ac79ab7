package evenhand.car.links;

import evenhand.car.Side;

/** A thing that is there on both sides, each in its own side's terms; alike on both unless a side says otherwise. */
public record Pair<T>(T left, T right) {
    /** The same on either side: the right one mirrors the left. */
    public static <T> Pair<T> alike(T both) {
        return new Pair<>(both, both);
    }

    public T of(Side side) {
        return side == Side.LEFT ? left : right;
    }

    /** Whether the right one mirrors the left. */
    public boolean isAlike() {
        return left.equals(right);
    }
}
