package evenhand.car.links;

import static evenhand.quantity.InvalidValue.require;

/**
 * What the shares of dive, lift and squat need of the whole car.
 *
 * @param wheelbase m
 * @param cgHeight of the settled car at rest, m
 * @param frontBrakeShare share of the brake force at the front wheels
 * @param brakesAt what reacts this axle's brake torque
 * @param driven whether this axle drives
 */
public record SideView(double wheelbase, double cgHeight, double frontBrakeShare, BrakesAt brakesAt, boolean driven) {
    public SideView {
        require(wheelbase > 0, "wheelbase", "must be above zero");
        require(cgHeight > 0, "cgHeight", "must be above the ground");
        require(frontBrakeShare >= 0 && frontBrakeShare <= 1, "frontShare", "must lie between 0 and 1");
    }

    /** An axle by itself, whose shares of dive and squat nobody asks for: they wait for the car. */
    public static SideView ofAxleAlone(BrakesAt brakesAt) {
        return new SideView(1, 1, 0.5, brakesAt, false);
    }

    /**
     * Share of the brake force at the front for which both ends reach one friction together at 0.8 g.
     *
     * <pre>  p = (b + 0.8·h)/L  </pre>
     *
     * @param b centre of gravity ahead of the rear axle, m
     * @param h its height, m
     * @param wheelbase L, m
     */
    public static double estimatedFrontBrakeShare(double b, double h, double wheelbase) {
        return Math.min(1, (b + 0.8 * h) / wheelbase);
    }

    /** Where the brakes of an axle sit. */
    public enum BrakesAt {
        WHEELS("wheels"),
        BODY("body");

        private final String key;

        BrakesAt(String key) {
            this.key = key;
        }

        /** Name in files and sentences. */
        public String key() {
            return key;
        }
    }
}
