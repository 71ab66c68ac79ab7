package evenhand.geometry;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * Both wheels of an axle on links of their own: figures over the travel of each wheel, m, and of what the rack steers over
 * travel and reference steer, rad, left positive.
 */
public final class WheelPairMotion implements LinkMotion {
    /** Rise per metre, going inwards, of the wheel's force line. */
    public static final int FORCE_LINE = 0;

    /** Rise per metre, going forwards, of the side-view force line at the wheel centre. */
    public static final int WHEEL_SIDE = 1;

    /** The same at the contact point. */
    public static final int CONTACT_SIDE = 2;

    /** Contact point: outwards from the middle, and above the body's level at the ground as measured, m. */
    public static final int CONTACT_OUT = 3;

    public static final int CONTACT_UP = 4;

    /** Length of the coil and of the damper, m; nothing where they have no points. */
    public static final int SPRING = 5;

    public static final int DAMPER = 6;

    /** So many figures are of travel alone; behind them stand those of travel and reference steer. */
    public static final int ALONE = 7;

    /** Steer, left positive, and camber against the body, top outwards positive, rad. */
    public static final int STEER = 7;

    public static final int CAMBER = 8;

    private static final int[] SEEN_FROM = {
        FORCE_LINE, WHEEL_SIDE, CONTACT_SIDE, CONTACT_OUT, CONTACT_UP, SPRING, DAMPER, STEER, CAMBER
    };
    private static final double[] SEEN_SIGN = {1, 1, 1, 1, 1, 1, 1, -1, 1};

    /** Half the distance over which a slope of a slope is told at rest, m. */
    private static final double NEAR = 1e-3;

    private static final double PARALLEL = 1e-9;

    /**
     * What does not change with the place.
     *
     * @param track t, m
     * @param understeer +1 at the rear, −1 at the front: the sense in which steer to the left is understeer
     * @param steered whether a rack steers them
     * @param springs whether they have points
     * @param dampers whether they have points
     */
    public record Made(double track, double understeer, boolean steered, boolean springs, boolean dampers) {}

    /**
     * What is found by following both wheels.
     *
     * @param reach from where they stand
     */
    public record Followed(Surfaces left, Surfaces right, Reach reach) {
        private Followed sunk(double travel) {
            return new Followed(left, right, reach.sunk(travel));
        }

        private Followed mirrored() {
            return new Followed(WheelPairMotion.mirrored(right), WheelPairMotion.mirrored(left), reach);
        }
    }

    private final Once<Followed> followed;
    private final Made made;
    private final double restTravel;
    private final double squash;

    /** Of the steer by which the wheels were followed per reference steer: one where the car stands as measured. */
    private final Once<Double> followedBySteer;

    /**
     * Wheels as they were measured.
     *
     * @param followed asked for once, and only where somebody wants to know more than what was made
     */
    public WheelPairMotion(Supplier<Followed> followed, Made made) {
        this(followed, made, 0, 0);
    }

    private WheelPairMotion(Supplier<Followed> followed, Made made, double restTravel, double squash) {
        this.followed = new Once<>(followed);
        this.made = made;
        this.restTravel = restTravel;
        this.squash = squash;
        followedBySteer = new Once<>(() -> made.steered ? 2 / (steerAtRest(left()) + steerAtRest(right())) : 1.0);
    }

    private Surfaces left() {
        return followed.get().left;
    }

    private Surfaces right() {
        return followed.get().right;
    }

    private double steerAtRest(Surfaces wheel) {
        Surfaces.Reading aim = wheel.reading();
        aim.at(restTravel, 0);
        aim.read(STEER);
        return aim.byY;
    }

    /** What the wheel on the other side does that mirrors this one. */
    public static Surfaces mirrored(Surfaces wheel) {
        return wheel.mirrored(SEEN_FROM, SEEN_SIGN);
    }

    public Made made() {
        return made;
    }

    @Override
    public Reach reach() {
        return followed.get().reach;
    }

    @Override
    public boolean isFollowed(double travel, double turned) {
        double steer = followedBySteer.get() * turned;
        return left().covers(restTravel + travel, steer) && right().covers(restTravel + travel, steer);
    }

    @Override
    public boolean guidesSprings() {
        return made.springs;
    }

    @Override
    public boolean guidesDampers() {
        return made.dampers;
    }

    @Override
    public WheelPairMotion sunk(double travel, double furtherSquash) {
        return new WheelPairMotion(
                () -> followed.get().sunk(travel), made, restTravel + travel, squash + furtherSquash);
    }

    @Override
    public WheelPairMotion mirrored() {
        return new WheelPairMotion(() -> followed.get().mirrored(), made, restTravel, squash);
    }

    @Override
    public boolean alikeBothWays() {
        return left().isLike(mirrored(right()));
    }

    @Override
    public double springsShorterBy(double travel) {
        return (length(left(), 0) + length(right(), 0) - length(left(), travel) - length(right(), travel)) / 2;
    }

    private double length(Surfaces wheel, double travel) {
        Surfaces.Reading there = wheel.reading();
        there.atX(restTravel + travel);
        there.read(SPRING);
        return there.value;
    }

    @Override
    public Linear atRest(Lever springs, Optional<Lever> dampers) {
        Reading l = reading(true);
        Reading r = reading(false);
        double height = rollCentre(l, r, 0);
        double byTravel = (8 * (rollCentre(l, r, NEAR) - rollCentre(l, r, -NEAR))
                        - (rollCentre(l, r, 2 * NEAR) - rollCentre(l, r, -2 * NEAR)))
                / (12 * NEAR);
        l.at(0, 0);
        r.at(0, 0);
        double rollSteer = made.understeer * made.track / 4 * (r.steerByTravel() - l.steerByTravel());
        double leanByTravel = -(l.camberByTravel() + r.camberByTravel()) / 2;
        return new Linear(
                height - squash,
                byTravel,
                rollSteer,
                1 - made.track / 2 * leanByTravel,
                leanByTravel,
                made.springs ? lever(l, r, SPRING) : springs,
                made.dampers ? Optional.of(lever(l, r, DAMPER)) : dampers);
    }

    private Lever lever(Reading l, Reading r, int figure) {
        l.read(figure);
        r.read(figure);
        return Lever.upright(-(l.byTravel() + r.byTravel()) / 2, made.track / 2);
    }

    /**
     * Height above the line through both contact points, in rear view, of where both force lines cross at a common travel; where
     * they run side by side, of their mean in the middle.
     */
    private double rollCentre(Reading l, Reading r, double travel) {
        l.at(travel, 0);
        r.at(travel, 0);
        l.read(FORCE_LINE);
        r.read(FORCE_LINE);
        double slopeLeft = l.value();
        double slopeRight = r.value();
        l.read(CONTACT_OUT);
        r.read(CONTACT_OUT);
        double yLeft = l.value();
        double yRight = -r.value();
        l.read(CONTACT_UP);
        r.read(CONTACT_UP);
        double zLeft = l.value();
        double zRight = r.value();
        double sum = slopeLeft + slopeRight;
        double y = Math.abs(sum) < PARALLEL ? 0 : (zLeft - zRight + slopeLeft * yLeft + slopeRight * yRight) / sum;
        double z = zLeft - slopeLeft * (y - yLeft);
        double dy = yLeft - yRight;
        double dz = zLeft - zRight;
        return ((z - zRight) * dy - (y - yRight) * dz) / Math.sqrt(dy * dy + dz * dz);
    }

    /** Camber of both wheels at rest, top outwards positive, and toe, in positive, in the mean, rad. */
    public double camberAtRest() {
        Reading l = reading(true);
        Reading r = reading(false);
        l.at(0, 0);
        r.at(0, 0);
        return (l.camber() + r.camber()) / 2;
    }

    public double toeAtRest() {
        Reading l = reading(true);
        Reading r = reading(false);
        l.at(0, 0);
        r.at(0, 0);
        return (r.steer() - l.steer()) / 2;
    }

    /** Makes something that reads one wheel's figures. One per thread. */
    public Reading reading(boolean ofLeft) {
        return new Reading(ofLeft ? left() : right(), made.steered ? followedBySteer.get() : 0);
    }

    /** Reads the figures of one wheel, at one place at a time; allocates nothing. */
    public final class Reading {
        private final Surfaces.Reading on;

        /** Nothing of wheels that are not steered. */
        private final double bySteer;

        private double steer;
        private double steerByTravel;
        private double steerBySteer;
        private double camber;
        private double camberByTravel;
        private double camberBySteer;

        private Reading(Surfaces wheel, double bySteer) {
            on = wheel.reading();
            this.bySteer = bySteer;
        }

        /** Goes to the wheel's own travel, m, and a reference steer, rad. */
        public void at(double travel, double referenceSteer) {
            on.at(restTravel + travel, bySteer * referenceSteer);
            on.read(STEER);
            steer = on.value;
            steerByTravel = on.byX;
            steerBySteer = bySteer * on.byY;
            on.read(CAMBER);
            camber = on.value;
            camberByTravel = on.byX;
            camberBySteer = bySteer * on.byY;
        }

        /** Goes to the wheel's own travel, for figures of travel alone. */
        public void at(double travel) {
            on.atX(restTravel + travel);
        }

        /** Steer of the wheel, left positive, rad. */
        public double steer() {
            return steer;
        }

        public double steerByTravel() {
            return steerByTravel;
        }

        public double steerBySteer() {
            return steerBySteer;
        }

        /** Against the body, top outwards positive, rad. */
        public double camber() {
            return camber;
        }

        public double camberByTravel() {
            return camberByTravel;
        }

        public double camberBySteer() {
            return camberBySteer;
        }

        /** Reads a figure of travel alone and its slope. */
        public void read(int figure) {
            on.read(figure);
        }

        /** Reads it with the slope of its slope. */
        public void bend(int figure) {
            on.bend(figure);
        }

        public double value() {
            return on.value;
        }

        public double byTravel() {
            return on.byX;
        }

        public double byTravelTwice() {
            return on.byXX;
        }

        /**
         * Height at which the force line crosses the middle of the car, above the ground on which the wheel stands still, m:
         * slope·t/2, less what the tyre is flatter than measured.
         */
        public double lineHeight() {
            return on.value * made.track / 2 - squash;
        }

        public double lineHeightByTravel() {
            return on.byX * made.track / 2;
        }
    }
}
