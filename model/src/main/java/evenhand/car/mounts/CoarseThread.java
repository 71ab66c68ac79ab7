package evenhand.car.mounts;

import java.util.Optional;

/**
 * Coarse metric threads.
 *
 * <p>Source: ISO 898-1, stress areas, as read on reference pages; ISO 724 for the pitches.
 */
public enum CoarseThread {
    M6(6, 20.1),
    M7(7, 28.9),
    M8(8, 36.6),
    M10(10, 58.0),
    M12(12, 84.3),
    M14(14, 115),
    M16(16, 157),
    M18(18, 192),
    M20(20, 245),
    M22(22, 303),
    M24(24, 353);

    private static final double MM = 1e-3;

    /** A bolt's thread measures up to that much less than its name says, and a calliper is off by a little. Common practice, no source. */
    private static final double NEAR = 0.3e-3;

    private final int millimetres;
    private final double squareMillimetres;

    CoarseThread(int millimetres, double squareMillimetres) {
        this.millimetres = millimetres;
        this.squareMillimetres = squareMillimetres;
    }

    /** The thread of a diameter, m, as it is named or measured. */
    public static Optional<CoarseThread> of(double diameter) {
        for (CoarseThread thread : values()) {
            if (Math.abs(thread.millimetres * MM - diameter) < NEAR) {
                return Optional.of(thread);
            }
        }
        return Optional.empty();
    }

    /** m². */
    public double stressArea() {
        return squareMillimetres * MM * MM;
    }
}
