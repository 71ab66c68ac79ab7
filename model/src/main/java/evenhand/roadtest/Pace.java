package evenhand.roadtest;

/** How fast a reading was driven. */
public sealed interface Pace {
    /** Lateral acceleration on a circle of this radius, m, in m/s². */
    double acceleration(double radius);

    /** Standard deviation of that for the error of the pace alone, m/s²: the radius is an unknown of its own. */
    double spread(double radius);

    /** Whether it gives a lateral acceleration only on a circle. */
    default boolean needsCircle() {
        return true;
    }

    /**
     * Timed laps.
     * <pre>  v = 2πR·laps/T,  ac = v²/R,  σ_ac = ac·2·σ_T/T  </pre>
     *
     * @param time of all of them, s
     */
    record Laps(double laps, Measured time) implements Pace {
        @Override
        public double acceleration(double radius) {
            double speed = 2 * Math.PI * radius * laps / time.value();
            return speed * speed / radius;
        }

        @Override
        public double spread(double radius) {
            return acceleration(radius) * 2 * time.standardDeviation() / time.value();
        }
    }

    /**
     * A speed held on the circle.
     * <pre>  ac = v²/R,  σ_ac = ac·2·σ_v/v  </pre>
     *
     * @param speed m/s
     */
    record Speed(Measured speed) implements Pace {
        @Override
        public double acceleration(double radius) {
            return speed.value() * speed.value() / radius;
        }

        @Override
        public double spread(double radius) {
            return acceleration(radius) * 2 * speed.standardDeviation() / speed.value();
        }
    }

    /** A lateral acceleration along the road, m/s². */
    record Acceleration(Measured acceleration) implements Pace {
        @Override
        public double acceleration(double radius) {
            return acceleration.value();
        }

        @Override
        public double spread(double radius) {
            return acceleration.standardDeviation();
        }

        @Override
        public boolean needsCircle() {
            return false;
        }
    }

    /**
     * What an accelerometer fixed to the body feels across it, which leans with the body and drifts with the car:
     * <pre>  a = ac·cos β·cos φ + g·sin φ  </pre>
     * β sideslip, φ roll outwards. What ac is, only the car that leans so can say; here it stands for it as read.
     *
     * @param felt m/s²
     */
    record Accelerometer(Measured felt) implements Pace {
        @Override
        public double acceleration(double radius) {
            return felt.value();
        }

        @Override
        public double spread(double radius) {
            return felt.standardDeviation();
        }

        @Override
        public boolean needsCircle() {
            return false;
        }
    }
}
