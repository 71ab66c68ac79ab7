package evenhand.linkage;

import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.links.LinkedAxle;
import evenhand.geometry.LinkMotion;
import evenhand.geometry.LinkMotion.Reach;
import evenhand.geometry.LiveAxleMotion;
import evenhand.geometry.Surfaces;
import evenhand.geometry.WheelPairMotion;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.function.Supplier;

/**
 * Follows an axle through all of its travel once and keeps what it does as smooth {@link Surfaces}, so that whoever asks for
 * many places (the turn, lowering) solves no linkage for each. The edges of the travel say how many places that takes, the last
 * terms that nothing is left out. Close to an end of the links figures bend without bound; there the axle is followed less far, and goes on along its
 * tangents from where it was.
 */
public final class MotionFit {
    /** How many places along travel and along roll or steer. */
    private record Places(int alongTravel, int alongTurn) {
        Places more(int more, boolean turns) {
            return new Places(alongTravel + more, turns ? alongTurn + more : 1);
        }
    }

    /** Most places along travel, and along roll or steer. */
    private static final int MOST_ALONG_TRAVEL = 25;

    private static final int MOST_ALONG_TURN = 33;

    /** So many more where a fit still leaves something out. */
    private static final int MORE = 4;

    /** What the last terms may be, of heights and angles, m and rad. */
    private static final double LEFT_OUT = 1e-9;

    /** Of slopes of force lines. */
    private static final double LEFT_OUT_OF_SLOPES = 1e-8;

    /** Of those in side view, along which only drive and rolling resistance act. */
    private static final double LEFT_OUT_OF_SIDE_SLOPES = 1e-6;

    /** Of lengths, whose slopes count, m; of energy, J. */
    private static final double LEFT_OUT_OF_LENGTHS = 2e-10;

    private static final double LEFT_OUT_OF_ENERGY = 1e-7;

    private static final double[] LIVE_LEFT_OUT = new double[LiveAxleMotion.FIGURES];
    private static final double[] WHEEL_LEFT_OUT = new double[WheelPairMotion.ALONE];
    private static final double[] AIM_LEFT_OUT = {LEFT_OUT, LEFT_OUT};

    static {
        Arrays.fill(LIVE_LEFT_OUT, LEFT_OUT);
        LIVE_LEFT_OUT[LiveAxleMotion.FORCE_LINE] = LEFT_OUT_OF_SLOPES;
        LIVE_LEFT_OUT[LiveAxleMotion.CONTACT_SIDE] = LEFT_OUT_OF_SIDE_SLOPES;
        LIVE_LEFT_OUT[LiveAxleMotion.WHEEL_SIDE] = LEFT_OUT_OF_SIDE_SLOPES;
        LIVE_LEFT_OUT[LiveAxleMotion.CONTACT_TURN] = LEFT_OUT_OF_SIDE_SLOPES;
        LIVE_LEFT_OUT[LiveAxleMotion.WHEEL_TURN] = LEFT_OUT_OF_SIDE_SLOPES;
        LIVE_LEFT_OUT[LiveAxleMotion.LEFT_SPRING] = LEFT_OUT_OF_LENGTHS;
        LIVE_LEFT_OUT[LiveAxleMotion.RIGHT_SPRING] = LEFT_OUT_OF_LENGTHS;
        LIVE_LEFT_OUT[LiveAxleMotion.LEFT_DAMPER] = LEFT_OUT_OF_LENGTHS;
        LIVE_LEFT_OUT[LiveAxleMotion.RIGHT_DAMPER] = LEFT_OUT_OF_LENGTHS;
        LIVE_LEFT_OUT[LiveAxleMotion.BIND] = LEFT_OUT_OF_ENERGY;
        Arrays.fill(WHEEL_LEFT_OUT, LEFT_OUT);
        WHEEL_LEFT_OUT[WheelPairMotion.FORCE_LINE] = LEFT_OUT_OF_SLOPES;
        WHEEL_LEFT_OUT[WheelPairMotion.WHEEL_SIDE] = LEFT_OUT_OF_SIDE_SLOPES;
        WHEEL_LEFT_OUT[WheelPairMotion.CONTACT_SIDE] = LEFT_OUT_OF_SIDE_SLOPES;
        WHEEL_LEFT_OUT[WheelPairMotion.SPRING] = LEFT_OUT_OF_LENGTHS;
        WHEEL_LEFT_OUT[WheelPairMotion.DAMPER] = LEFT_OUT_OF_LENGTHS;
    }

    /** Roll and steer to either side within which an axle is followed, rad. */
    private static final double ROLL = Math.toRadians(8);

    private static final double STEER = Math.toRadians(35);

    /** Where an end of the travel leaves less roll or steer than this, the axle is followed less far up or down instead. */
    private static final double LEAST_ROLL = Math.toRadians(6);

    private static final double LEAST_STEER = Math.toRadians(25);

    /** Of the way to where the links end, where they end. */
    private static final double SHORT_OF_THE_END = 0.98;

    /** How much less far an axle is followed where the figures bend too much, and how often. */
    private static final double LESS = 0.85;

    private static final int MOST_TIMES = 20;

    /** How closely an end is looked for, in parts of the way. */
    private static final double CLOSE = 1e-2;

    /** A crank turned by more than this ends the travel itself. */
    private static final double OVER_CENTRE = Math.toRadians(60);

    private static final Remembered<Asked, LinkMotion> KNOWN = new Remembered<>();

    private record Asked(LinkedAxle axle, double bump, double droop) {}

    private MotionFit() {}

    /**
     * What an axle does. It is followed when that is first asked for: who wants its figures at rest alone does not wait.
     *
     * @param axle that stands where it was measured, its body not let down; nobody else moves it from now on
     * @param bump how far its wheels may rise, m
     * @param droop how far they may hang, m
     */
    public static LinkMotion of(AxleLinkage axle, double bump, double droop) {
        return of(axle.given(), () -> axle, bump, droop);
    }

    /** The same of an axle that is only put together where it must be followed. */
    public static LinkMotion of(LinkedAxle given, Supplier<AxleLinkage> axle, double bump, double droop) {
        return KNOWN.of(new Asked(given, bump, droop), () -> motion(axle.get(), bump, droop));
    }

    private static LinkMotion motion(AxleLinkage axle, double bump, double droop) {
        double track = axle.given().stance().track();
        if (axle instanceof LiveAxleLinkage live) {
            return new LiveAxleMotion(
                    () -> followed(live, bump, droop),
                    new LiveAxleMotion.Made(
                            track, understeer(axle), axle.hasSprings(), axle.hasDampers(), live.overConstrained()));
        }
        WheelPairLinkage wheels = (WheelPairLinkage) axle;
        return new WheelPairMotion(
                () -> followed(wheels, bump, droop),
                new WheelPairMotion.Made(
                        track, understeer(axle), isSteered(wheels), axle.hasSprings(), axle.hasDampers()));
    }

    /** How far an axle is followed: up, down, and turned to either side by roll or steer. */
    private record Extent(double bump, double droop, double turn) {
        Surfaces.Box box() {
            return new Surfaces.Box(-droop, bump, -turn, turn);
        }

        /** Every way of following it a little less far. */
        List<Extent> lesser() {
            return List.of(new Extent(LESS * bump, droop, turn), new Extent(bump, LESS * droop, turn), lessTurn());
        }

        Extent lessTurn() {
            return new Extent(bump, droop, LESS * turn);
        }

        Extent lessAllRound() {
            return new Extent(LESS * bump, LESS * droop, LESS * turn);
        }
    }

    /** Moves an axle to a travel and a turn. */
    private interface Mover {
        boolean moveTo(double travel, double turn);
    }

    /**
     * The greatest extent all of whose corners are reached. Where they are not, it turns less, down to what a car does in a
     * hard turn, and then goes less far up or down.
     */
    private static Extent within(AxleLinkage axle, Reach reach, Extent wanted, double leastTurn, Mover mover) {
        double bump = Math.min(wanted.bump, reach.bump());
        double droop = Math.min(wanted.droop, -reach.droop());
        double turn = Math.min(wanted.turn, reach.turn());
        double least = Math.min(turn, leastTurn);
        for (int times = 0; times < MOST_TIMES; times++) {
            boolean up = reached(axle, bump, turn, mover);
            boolean down = reached(axle, -droop, turn, mover);
            if (up && down) {
                break;
            }
            if (turn > least) {
                turn = Math.max(least, LESS * turn);
            } else {
                bump *= up ? 1 : LESS;
                droop *= down ? 1 : LESS;
            }
        }
        return new Extent(bump, droop, turn);
    }

    private static boolean reached(AxleLinkage axle, double travel, double turn, Mover mover) {
        axle.rest();
        boolean oneWay = mover.moveTo(travel, turn);
        axle.rest();
        return oneWay && mover.moveTo(travel, -turn);
    }

    /** How far a way can be gone: all of it, or just short of where it ends. */
    private static double far(AxleLinkage axle, double wanted, DoublePredicate moveTo) {
        axle.rest();
        if (moveTo.test(wanted)) {
            return wanted;
        }
        double good = 0;
        double bad = wanted;
        while (bad - good > CLOSE * wanted) {
            double middle = (good + bad) / 2;
            if (moveTo.test(middle)) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return SHORT_OF_THE_END * good;
    }

    private static LiveAxleMotion.Followed followed(LiveAxleLinkage axle, double bump, double droop) {
        double half = axle.given().stance().track() / 2;
        Reach reach = reach(axle, bump, droop, rollAt(axle, half, 0), ROLL);
        Mover mover = (travel, roll) -> axle.moveTo(travel - half * roll, travel + half * roll);
        Extent extent = within(axle, reach, new Extent(bump, droop, ROLL), LEAST_ROLL, mover);
        boolean springs = axle.hasSprings();
        boolean dampers = axle.hasDampers();
        boolean binds = axle.overConstrained();
        Surfaces.Source source = (travel, roll, into) -> {
            if (!mover.moveTo(travel, roll)) {
                return false;
            }
            into[LiveAxleMotion.ROLL_CENTRE] = axle.heightOfRollCentre();
            into[LiveAxleMotion.FORCE_LINE] = axle.forceLineSlope();
            into[LiveAxleMotion.STEER] = axle.axleSteer();
            into[LiveAxleMotion.CONTACT_SIDE] = axle.contactSideSlope();
            into[LiveAxleMotion.WHEEL_SIDE] = axle.wheelSideSlope();
            into[LiveAxleMotion.CONTACT_TURN] = axle.contactTurn();
            into[LiveAxleMotion.WHEEL_TURN] = axle.wheelTurn();
            if (springs) {
                into[LiveAxleMotion.LEFT_SPRING] = axle.springLength(Side.LEFT);
                into[LiveAxleMotion.RIGHT_SPRING] = axle.springLength(Side.RIGHT);
            }
            if (binds) {
                into[LiveAxleMotion.BIND] = axle.bindEnergy();
            }
            if (dampers) {
                into[LiveAxleMotion.LEFT_DAMPER] = axle.damperLength(Side.LEFT);
                into[LiveAxleMotion.RIGHT_DAMPER] = axle.damperLength(Side.RIGHT);
            }
            return true;
        };
        Surfaces surfaces = fitted(axle, extent, true, LIVE_LEFT_OUT, source).surfaces();
        axle.rest();
        return new LiveAxleMotion.Followed(surfaces, reach);
    }

    /** Where the links end in heave and, the wheels as high as at rest, in roll or steer; infinite where that is not met. */
    private static Reach reach(AxleLinkage axle, double bump, double droop, double turn, double mostTurn) {
        String part = "links";
        double toBump = far(axle, bump, u -> axle.moveTo(u, u));
        part = toBump < bump ? partAtTheEnd(axle) : part;
        double toDroop = far(axle, droop, u -> axle.moveTo(-u, -u));
        part = toDroop < droop ? partAtTheEnd(axle) : part;
        return new Reach(
                toBump < bump ? toBump : Double.POSITIVE_INFINITY,
                toDroop < droop ? -toDroop : Double.NEGATIVE_INFINITY,
                turn < mostTurn ? turn : Double.POSITIVE_INFINITY,
                part);
    }

    /** How far the rack steers to both sides at a travel, rad. */
    private static double steerAt(WheelPairLinkage axle, double travel) {
        double left = far(axle, STEER, steer -> axle.moveTo(travel, travel, steer));
        return Math.min(left, far(axle, left, steer -> axle.moveTo(travel, travel, -steer)));
    }

    /** How far the axle rolls to both sides at a travel, rad. */
    private static double rollAt(LiveAxleLinkage axle, double half, double travel) {
        double right = far(axle, ROLL, roll -> axle.moveTo(travel - half * roll, travel + half * roll));
        return Math.min(right, far(axle, right, roll -> axle.moveTo(travel + half * roll, travel - half * roll)));
    }

    private static double understeer(AxleLinkage axle) {
        return axle.given().stance().end() == End.REAR ? 1 : -1;
    }

    private static String partAtTheEnd(AxleLinkage axle) {
        return axle.crank().isPresent() && Math.abs(axle.crank().getAsDouble()) > OVER_CENTRE
                ? "lateralLocator"
                : "links";
    }

    private static WheelPairMotion.Followed followed(WheelPairLinkage axle, double bump, double droop) {
        boolean steered = isSteered(axle);
        Reach reach = reach(axle, bump, droop, steered ? steerAt(axle, 0) : STEER, STEER);
        Extent extent = within(
                axle,
                reach,
                new Extent(bump, droop, STEER),
                LEAST_STEER,
                (travel, steer) -> axle.moveTo(travel, travel, steered ? steer : 0));
        Surfaces left = wheel(axle, Side.LEFT, extent, steered);
        Surfaces right =
                axle.given().isAlike() ? WheelPairMotion.mirrored(left) : wheel(axle, Side.RIGHT, extent, steered);
        axle.rest();
        return new WheelPairMotion.Followed(left, right, reach);
    }

    private static boolean isSteered(WheelPairLinkage axle) {
        return axle.steered() && axle.steerPerRack() != 0;
    }

    /** One wheel: where it aims, and over the same travel what it does with the rack at rest. */
    private static Surfaces wheel(WheelPairLinkage axle, Side side, Extent extent, boolean steered) {
        WheelLinkage wheel = axle.wheel(side);
        boolean springs = axle.hasSprings();
        boolean dampers = axle.hasDampers();
        double sigma = side.sign();
        Fitted aim = fitted(axle, extent, steered, AIM_LEFT_OUT, (travel, steer, into) -> {
            if (!wheel.moveTo(travel, steered ? steer / axle.steerPerRack() : 0)) {
                return false;
            }
            into[WheelPairMotion.STEER - WheelPairMotion.ALONE] = wheel.steer();
            into[WheelPairMotion.CAMBER - WheelPairMotion.ALONE] = wheel.camber();
            return true;
        });
        Fitted alone = fitted(axle, aim.extent(), false, WHEEL_LEFT_OUT, (travel, none, into) -> {
            if (!wheel.moveTo(travel, 0)) {
                return false;
            }
            into[WheelPairMotion.FORCE_LINE] = wheel.forceLineSlope();
            into[WheelPairMotion.WHEEL_SIDE] = wheel.wheelSideSlope();
            into[WheelPairMotion.CONTACT_SIDE] = wheel.contactSideSlope();
            into[WheelPairMotion.CONTACT_OUT] = sigma * wheel.wheel().contactY;
            into[WheelPairMotion.CONTACT_UP] = wheel.wheel().contactZ;
            if (springs) {
                into[WheelPairMotion.SPRING] = axle.springLength(side);
            }
            if (dampers) {
                into[WheelPairMotion.DAMPER] = axle.damperLength(side);
            }
            return true;
        });
        return alone.extent().equals(aim.extent())
                ? alone.surfaces().with(aim.surfaces())
                : wheel(axle, side, alone.extent(), steered);
    }

    /**
     * @param left what the last terms are, as a multiple of what they may be
     */
    private record Fitted(Extent extent, Surfaces surfaces, double left) {}

    /**
     * What the edges of an extent say of following an axle through it: figures bend most there.
     *
     * @param worth how many places are worth it
     * @param leftOfTravel what even the most places along travel leave out, as a multiple of what they may
     * @param leftOfTurn the same along roll or steer
     */
    private record Edges(Places worth, double leftOfTravel, double leftOfTurn) {
        static final Edges UNREACHED = new Edges(new Places(1, 1), Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

        Edges and(Edges other) {
            return new Edges(
                    new Places(
                            Math.max(worth.alongTravel, other.worth.alongTravel),
                            Math.max(worth.alongTurn, other.worth.alongTurn)),
                    Math.max(leftOfTravel, other.leftOfTravel),
                    Math.max(leftOfTurn, other.leftOfTurn));
        }

        double left() {
            return Math.max(leftOfTravel, leftOfTurn);
        }
    }

    /**
     * Takes as many places as are worth it. Where even the most do not do, an end of the links is near, and of all ways of
     * following the axle less far the one is taken that helps most.
     *
     * @param turns whether the figures depend on roll or steer at all
     */
    private static Fitted fitted(
            AxleLinkage axle, Extent extent, boolean turns, double[] leftOut, Surfaces.Source source) {
        Extent at = extent;
        Edges edges = edges(axle, at, turns, leftOut, source);
        Optional<Fitted> best = Optional.empty();
        for (int times = 0; times < MOST_TIMES; times++) {
            for (int more = 0; edges.left() <= 1 && more <= MORE; more += MORE) {
                Optional<Fitted> here = fit(axle, at, edges.worth.more(more, turns), leftOut, source);
                if (here.isPresent() && here.get().left <= 1) {
                    return here.get();
                }
                best = here.isPresent() ? here : best;
            }
            Edges least = Edges.UNREACHED;
            Extent next = at.lessAllRound();
            for (Extent lesser : turns && edges.leftOfTravel <= 1 ? List.of(at.lessTurn()) : at.lesser()) {
                Edges tried = edges(axle, lesser, turns, leftOut, source);
                if (tried.left() < least.left()) {
                    least = tried;
                    next = lesser;
                }
            }
            edges = least.left() < Double.POSITIVE_INFINITY ? least : edges(axle, next, turns, leftOut, source);
            at = next;
        }
        Extent last = at;
        return best.or(() ->
                        fit(axle, last, new Places(MOST_ALONG_TRAVEL, turns ? MOST_ALONG_TURN : 1), leftOut, source))
                .orElseThrow(() -> new IllegalStateException("an axle that stands at rest cannot be moved from there"));
    }

    /** Follows the axle round the edges of an extent, each along one variable with as many places as there are. */
    private static Edges edges(AxleLinkage axle, Extent at, boolean turns, double[] leftOut, Surfaces.Source source) {
        axle.rest();
        if (!turns) {
            return alongTravel(at, 0, leftOut, source);
        }
        return alongTravel(at, -at.turn, leftOut, source)
                .and(alongTurn(at, at.bump, leftOut, source))
                .and(alongTurn(at, -at.droop, leftOut, source))
                .and(alongTravel(at, at.turn, leftOut, source));
    }

    private static Edges alongTravel(Extent at, double turn, double[] leftOut, Surfaces.Source source) {
        return alone(-at.droop, at.bump, MOST_ALONG_TRAVEL, leftOut, (travel, into) -> source.at(travel, turn, into))
                .map(fit -> new Edges(new Places(fit.ordersX(), 1), leftOver(fit.tail(), leftOut), 0))
                .orElse(Edges.UNREACHED);
    }

    private static Edges alongTurn(Extent at, double travel, double[] leftOut, Surfaces.Source source) {
        return alone(-at.turn, at.turn, MOST_ALONG_TURN, leftOut, (turn, into) -> source.at(travel, turn, into))
                .map(fit -> new Edges(new Places(1, fit.ordersX()), 0, leftOver(fit.tail(), leftOut)))
                .orElse(Edges.UNREACHED);
    }

    /** Figures along one variable. */
    private interface Edge {
        boolean at(double place, double[] figures);
    }

    private static Optional<Surfaces.Fit> alone(double low, double high, int places, double[] leftOut, Edge edge) {
        return Surfaces.fit(
                new Surfaces.Box(low, high, 0, 1), places, 1, leftOut, (place, none, into) -> edge.at(place, into));
    }

    private static Optional<Fitted> fit(
            AxleLinkage axle, Extent extent, Places places, double[] leftOut, Surfaces.Source source) {
        axle.rest();
        return Surfaces.fit(extent.box(), places.alongTravel, places.alongTurn, leftOut, source)
                .map(fit -> new Fitted(extent, fit.surfaces(), leftOver(fit.tail(), leftOut)));
    }

    /** What the last terms are, as a multiple of what they may be. */
    private static double leftOver(double[] tail, double[] leftOut) {
        double worst = 0;
        for (int figure = 0; figure < tail.length; figure++) {
            worst = Math.max(worst, tail[figure] / leftOut[figure]);
        }
        return worst;
    }
}
