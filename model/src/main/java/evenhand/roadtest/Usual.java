package evenhand.roadtest;

import evenhand.car.Weights;

/**
 * What a reading may be off by where nobody says so: half-widths, two standard deviations, SI. Common practice, no source.
 */
public final class Usual {
    /** A lap by stop watch, s. */
    public static final double LAP_TIME = 0.3;
    /** A speed held by eye, m/s. */
    public static final double SPEED = 1 / 3.6;
    /** m/s². */
    public static final double LATERAL_ACCELERATION = 0.02 * Weights.GRAVITY;
    /** When an end is seen to go, m/s². */
    public static final double LIMIT = 0.03 * Weights.GRAVITY;
    /** Over the frequency. */
    public static final double FREQUENCY = 0.05;

    public static final double NEXT_SWING = 0.07;
    /** A tape or a sensor beside the wheel, m. */
    public static final double HEIGHT = 0.002;
    /** A gyroscope's, rad/s. */
    public static final double YAW_RATE = Math.toRadians(0.5);

    private Usual() {}

    /** Of a channel, rad. */
    public static double of(Channel channel) {
        return switch (channel) {
            case STEERING_WHEEL -> Math.toRadians(3);
            case ROLL -> Math.toRadians(0.3);
            case SIDESLIP -> Math.toRadians(0.5);
        };
    }

    /** Of a column of a log; of the steering wheel, the lean and the pace what is usual when they are read by eye. */
    public static double of(Log.Kind kind) {
        return switch (kind) {
            case SPEED -> SPEED;
            case LATERAL_ACCELERATION -> LATERAL_ACCELERATION;
            case YAW_RATE -> YAW_RATE;
            case STEERING_WHEEL -> of(Channel.STEERING_WHEEL);
            case ROLL -> of(Channel.ROLL);
            case HEIGHT -> HEIGHT;
            case ACCELERATION -> LATERAL_ACCELERATION;
        };
    }
}
