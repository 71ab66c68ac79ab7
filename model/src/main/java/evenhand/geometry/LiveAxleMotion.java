package evenhand.geometry;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * A live axle on its links: figures over heave u, m, and suspension roll φs, rad, right side down positive, in which its left
 * wheel rises by u − φs·t/2 and its right one by u + φs·t/2.
 */
public final class LiveAxleMotion implements LinkMotion {
    /** Height of the roll centre above the line through both contact points, m. */
    public static final int ROLL_CENTRE = 0;

    /** dz/dy of the line along which a side force does no work. */
    public static final int FORCE_LINE = 1;

    /** Steer of the axle, left positive, rad. */
    public static final int STEER = 2;

    /** Rise per metre, going forwards, of the side-view force line at the contact points' middle. */
    public static final int CONTACT_SIDE = 3;

    /** The same at the wheel centres' middle. */
    public static final int WHEEL_SIDE = 4;

    /** How far the contact points' middle goes forwards, left wheel up by one and right one down by one. */
    public static final int CONTACT_TURN = 5;

    /** The same of the wheel centres' middle. */
    public static final int WHEEL_TURN = 6;

    /** Lengths of the coils, m; nothing where springs have no points. */
    public static final int LEFT_SPRING = 7;

    public static final int RIGHT_SPRING = 8;

    /** Energy in links that bind, J. */
    public static final int BIND = 9;

    /** Lengths of the dampers, m. */
    public static final int LEFT_DAMPER = 10;

    public static final int RIGHT_DAMPER = 11;
    public static final int FIGURES = 12;

    private static final int[] SEEN_FROM = {
        ROLL_CENTRE,
        FORCE_LINE,
        STEER,
        CONTACT_SIDE,
        WHEEL_SIDE,
        CONTACT_TURN,
        WHEEL_TURN,
        RIGHT_SPRING,
        LEFT_SPRING,
        BIND,
        RIGHT_DAMPER,
        LEFT_DAMPER
    };
    private static final double[] SEEN_SIGN = {1, -1, -1, 1, 1, -1, -1, 1, 1, 1, 1, 1};

    /**
     * What does not change with the place.
     *
     * @param track t, m
     * @param understeer +1 at the rear, −1 at the front: the sense in which steer to the left is understeer
     * @param springs whether they have points
     * @param dampers whether they have points
     * @param binds whether more links hold the axle than a rigid one could move on
     */
    public record Made(double track, double understeer, boolean springs, boolean dampers, boolean binds) {}

    /**
     * What is found by following it.
     *
     * @param reach from where it stands
     */
    public record Followed(Surfaces surfaces, Reach reach) {
        private Followed sunk(double travel) {
            return new Followed(surfaces, reach.sunk(travel));
        }

        private Followed mirrored() {
            return new Followed(surfaces.mirrored(SEEN_FROM, SEEN_SIGN), reach);
        }
    }

    private final Once<Followed> followed;
    private final Made made;
    private final double restTravel; // of where it was followed from, m
    private final double squash;

    /**
     * An axle as it was measured.
     *
     * @param followed asked for once, and only where somebody wants to know more than what was made
     */
    public LiveAxleMotion(Supplier<Followed> followed, Made made) {
        this(followed, made, 0, 0);
    }

    private LiveAxleMotion(Supplier<Followed> followed, Made made, double restTravel, double squash) {
        this.followed = new Once<>(followed);
        this.made = made;
        this.restTravel = restTravel;
        this.squash = squash;
    }

    private Surfaces surfaces() {
        return followed.get().surfaces;
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
        return surfaces().covers(restTravel + travel, turned);
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
    public LiveAxleMotion sunk(double travel, double furtherSquash) {
        return new LiveAxleMotion(() -> followed.get().sunk(travel), made, restTravel + travel, squash + furtherSquash);
    }

    @Override
    public LiveAxleMotion mirrored() {
        return new LiveAxleMotion(() -> followed.get().mirrored(), made, restTravel, squash);
    }

    @Override
    public boolean alikeBothWays() {
        return surfaces().isLike(mirrored().surfaces());
    }

    @Override
    public double springsShorterBy(double travel) {
        return (length(LEFT_SPRING, 0)
                        + length(RIGHT_SPRING, 0)
                        - length(LEFT_SPRING, travel)
                        - length(RIGHT_SPRING, travel))
                / 2;
    }

    private double length(int spring, double travel) {
        Reading there = reading();
        there.at(travel, 0);
        there.read(spring);
        return there.value();
    }

    @Override
    public Linear atRest(Lever springs, Optional<Lever> dampers) {
        Reading here = reading();
        here.at(0, 0);
        here.read(ROLL_CENTRE);
        double height = here.value() - squash;
        double byTravel = here.byTravel();
        here.read(STEER);
        double rollSteer = made.understeer * here.byRoll();
        return new Linear(
                height,
                byTravel,
                rollSteer,
                0,
                0,
                made.springs ? lever(here, LEFT_SPRING) : springs,
                made.dampers ? Optional.of(lever(here, LEFT_DAMPER)) : dampers);
    }

    /** Mean of both sides: in heave by the ratio i, in roll at the distance from the middle at which it is worked as much. */
    private static Lever lever(Reading here, int left) {
        here.read(left);
        double ratio = -here.byTravel();
        double byRoll = here.byRoll();
        here.read(left + 1);
        ratio = (ratio - here.byTravel()) / 2;
        byRoll = (byRoll - here.byRoll()) / 2;
        return Lever.upright(ratio, byRoll / ratio);
    }

    /** Makes something that reads its figures. One per thread. */
    public Reading reading() {
        return new Reading();
    }

    /** Reads figures of one place at a time; allocates nothing. */
    public final class Reading {
        private final Surfaces.Reading on = surfaces().reading();

        private Reading() {}

        /** Goes to a mean travel, m, and a suspension roll, rad. */
        public void at(double travel, double suspensionRoll) {
            on.at(restTravel + travel, suspensionRoll);
        }

        /** Reads a figure and its slopes. */
        public void read(int figure) {
            on.read(figure);
        }

        /** Reads a figure, its slopes and theirs. */
        public void bend(int figure) {
            on.bend(figure);
        }

        public double value() {
            return on.value;
        }

        public double byTravel() {
            return on.byX;
        }

        public double byRoll() {
            return on.byY;
        }

        public double byTravelTwice() {
            return on.byXX;
        }

        public double byTravelAndRoll() {
            return on.byXY;
        }

        public double byRollTwice() {
            return on.byYY;
        }

        /** Height of the roll centre above the ground on which the wheels stand still, m; read before. */
        public double rollCentreHeight() {
            return on.value - squash;
        }
    }
}
