package evenhand.linkage;

import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.links.LinkedAxle;
import evenhand.geometry.LinkMotion;
import evenhand.geometry.LinkMotion.Reach;
import evenhand.geometry.LiveAxleMotion;
import evenhand.geometry.Surfaces;
import evenhand.geometry.WheelPairMotion;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoublePredicate;

/**
 * Follows an axle through all of its travel once and keeps what it does as smooth {@link Surfaces}, so that whoever asks for
 * many places (the turn, lowering) solves no linkage for each. More places are taken until the last terms say that nothing is
 * left out. Close to an end of the links figures bend without bound; there the axle is followed less far, and goes on along its
 * tangents from where it was.
 */
public final class MotionFit {
    /** Numbers of places along each variable, tried in this order. */
    private static final int[] PLACES = {13, 17, 21};

    /** What the last terms may be, of heights and angles, m and rad. */
    private static final double LEFT_OUT = 1e-9;

    /** Of slopes of force lines. */
    private static final double LEFT_OUT_OF_SLOPES = 1e-8;

    /** Of those in side view, along which only drive and rolling resistance act. */
    private static final double LEFT_OUT_OF_SIDE_SLOPES = 1e-7;

    /** Of lengths, whose slopes count, m; of energy, J. */
    private static final double LEFT_OUT_OF_LENGTHS = 1e-10;

    private static final double LEFT_OUT_OF_ENERGY = 1e-7;

    /** Roll and steer to either side within which an axle is followed, rad. */
    private static final double ROLL = Math.toRadians(8);

    private static final double STEER = Math.toRadians(35);

    /** Where an end of the travel leaves less roll than this, the axle is followed less far up and down instead. */
    private static final double LEAST_ROLL = Math.toRadians(6);

    /** Of the way to where the links end, where they end. */
    private static final double SHORT_OF_THE_END = 0.98;

    /** How much less far an axle is followed where the figures bend too much, and how often. */
    private static final double LESS = 0.85;

    private static final int MOST_TIMES = 20;

    /** So many times too much is not mended by more places. */
    private static final double HOPELESS = 3e3;

    /** How closely an end is looked for, in parts of the way. */
    private static final double CLOSE = 1e-2;

    /** A crank turned by more than this ends the travel itself. */
    private static final double OVER_CENTRE = Math.toRadians(60);

    /** So many axles are remembered: who varies springs, bars or tyres asks for the same links again and again. */
    private static final int REMEMBERED = 32;

    private static final Map<Asked, LinkMotion> KNOWN =
            Collections.synchronizedMap(new LinkedHashMap<>(REMEMBERED, 0.75f, true) {
                @Override
                protected boolean removeEldestEntry(Map.Entry<Asked, LinkMotion> eldest) {
                    return size() > REMEMBERED;
                }
            });

    private record Asked(LinkedAxle axle, double bump, double droop) {}

    private MotionFit() {}

    /**
     * What an axle does.
     *
     * @param axle that stands where it was measured, its body not let down
     * @param bump how far its wheels may rise, m
     * @param droop how far they may hang, m
     */
    public static LinkMotion of(AxleLinkage axle, double bump, double droop) {
        Asked asked = new Asked(axle.given(), bump, droop);
        LinkMotion known = KNOWN.get(asked);
        if (known == null) {
            known = follow(axle, bump, droop);
            KNOWN.put(asked, known);
        }
        return known;
    }

    private static LinkMotion follow(AxleLinkage axle, double bump, double droop) {
        return axle instanceof LiveAxleLinkage live
                ? ofLive(live, bump, droop)
                : ofWheels((WheelPairLinkage) axle, bump, droop);
    }

    /** How far it is followed, and what was in the way. */
    private static final class Extent {
        double bump;
        double droop;
        double turn;
        boolean bumpEnds;
        boolean droopEnds;
        boolean turnEnds;
        String part = "links";

        /** Shrinks the sides where the links end, close to which figures bend; all where none does. */
        void less() {
            boolean all = !bumpEnds && !droopEnds && !turnEnds;
            bump *= bumpEnds || all ? LESS : 1;
            droop *= droopEnds || all ? LESS : 1;
            turn *= turnEnds || all ? LESS : 1;
        }

        Surfaces.Box box() {
            return new Surfaces.Box(-droop, bump, -turn, turn);
        }

        Reach reach() {
            return new Reach(
                    bumpEnds ? bump : Double.POSITIVE_INFINITY,
                    droopEnds ? -droop : Double.NEGATIVE_INFINITY,
                    turnEnds ? turn : Double.POSITIVE_INFINITY,
                    part);
        }
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

    private static LinkMotion ofLive(LiveAxleLinkage axle, double bump, double droop) {
        double half = axle.given().stance().track() / 2;
        Extent extent = new Extent();
        extent.bump = far(axle, bump, u -> axle.moveTo(u, u));
        extent.droop = far(axle, droop, u -> axle.moveTo(-u, -u));
        extent.bumpEnds = extent.bump < bump;
        extent.droopEnds = extent.droop < droop;
        if (extent.bumpEnds || extent.droopEnds) {
            extent.part = partAtTheEnd(axle);
        }
        double inBump = rollAt(axle, half, extent.bump);
        double inDroop = rollAt(axle, half, -extent.droop);
        for (int times = 0; times < MOST_TIMES && Math.min(inBump, inDroop) < LEAST_ROLL; times++) {
            if (inBump < inDroop) {
                extent.bump *= LESS;
                extent.bumpEnds = true;
                inBump = rollAt(axle, half, extent.bump);
            } else {
                extent.droop *= LESS;
                extent.droopEnds = true;
                inDroop = rollAt(axle, half, -extent.droop);
            }
        }
        extent.turn = Math.min(inBump, inDroop);
        extent.turnEnds = extent.turn < ROLL;
        boolean springs = axle.hasSprings();
        boolean dampers = axle.hasDampers();
        boolean binds = axle.overConstrained();
        Surfaces.Source source = (travel, roll, into) -> {
            if (!axle.moveTo(travel - half * roll, travel + half * roll)) {
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
        Reach reach = extent.reach();
        Surfaces surfaces = fitted(axle, extent, true, LiveAxleMotion.FIGURES, source, MotionFit::liveLeftOut);
        axle.rest();
        return new LiveAxleMotion(
                surfaces,
                new LiveAxleMotion.Made(axle.given().stance().track(), understeer(axle), springs, dampers, binds),
                reach);
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

    private static double liveLeftOut(int figure) {
        return switch (figure) {
            case LiveAxleMotion.LEFT_SPRING,
                    LiveAxleMotion.RIGHT_SPRING,
                    LiveAxleMotion.LEFT_DAMPER,
                    LiveAxleMotion.RIGHT_DAMPER -> LEFT_OUT_OF_LENGTHS;
            case LiveAxleMotion.BIND -> LEFT_OUT_OF_ENERGY;
            case LiveAxleMotion.FORCE_LINE -> LEFT_OUT_OF_SLOPES;
            case LiveAxleMotion.CONTACT_SIDE,
                    LiveAxleMotion.WHEEL_SIDE,
                    LiveAxleMotion.CONTACT_TURN,
                    LiveAxleMotion.WHEEL_TURN -> LEFT_OUT_OF_SIDE_SLOPES;
            default -> LEFT_OUT;
        };
    }

    private static double wheelLeftOut(int figure) {
        return switch (figure) {
            case WheelPairMotion.SPRING, WheelPairMotion.DAMPER -> LEFT_OUT_OF_LENGTHS;
            case WheelPairMotion.FORCE_LINE -> LEFT_OUT_OF_SLOPES;
            case WheelPairMotion.WHEEL_SIDE, WheelPairMotion.CONTACT_SIDE -> LEFT_OUT_OF_SIDE_SLOPES;
            default -> LEFT_OUT;
        };
    }

    private static LinkMotion ofWheels(WheelPairLinkage axle, double bump, double droop) {
        Extent extent = new Extent();
        extent.bump = far(axle, bump, u -> axle.moveTo(u, u));
        extent.droop = far(axle, droop, u -> axle.moveTo(-u, -u));
        extent.bumpEnds = extent.bump < bump;
        extent.droopEnds = extent.droop < droop;
        boolean steered = axle.steered() && axle.steerPerRack() != 0;
        extent.turn = STEER;
        if (steered) {
            for (int i = 0; i < 4; i++) {
                double travel = i % 2 == 0 ? extent.bump : -extent.droop;
                double sign = i < 2 ? 1 : -1;
                extent.turn = Math.min(
                        extent.turn, far(axle, extent.turn, steer -> axle.moveTo(travel, travel, sign * steer)));
            }
            extent.turnEnds = extent.turn < STEER;
        }
        Reach reach = extent.reach();
        WheelPairMotion.Guided left = guided(axle, Side.LEFT, extent, steered);
        WheelPairMotion.Guided right =
                axle.given().isAlike() ? left.mirrored() : guided(axle, Side.RIGHT, extent, steered);
        axle.rest();
        return new WheelPairMotion(
                left,
                right,
                new WheelPairMotion.Made(
                        axle.given().stance().track(), understeer(axle), steered, axle.hasSprings(), axle.hasDampers()),
                reach);
    }

    private static WheelPairMotion.Guided guided(WheelPairLinkage axle, Side side, Extent extent, boolean steered) {
        WheelLinkage wheel = axle.wheel(side);
        boolean springs = axle.hasSprings();
        boolean dampers = axle.hasDampers();
        double sigma = side.sign();
        Surfaces alone = fitted(
                axle,
                extent,
                false,
                WheelPairMotion.FIGURES,
                (travel, none, into) -> {
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
                },
                MotionFit::wheelLeftOut);
        Surfaces aim = fitted(
                axle,
                extent,
                steered,
                WheelPairMotion.AIMED,
                (travel, steer, into) -> {
                    if (!wheel.moveTo(travel, steered ? steer / axle.steerPerRack() : 0)) {
                        return false;
                    }
                    into[WheelPairMotion.STEER] = wheel.steer();
                    into[WheelPairMotion.CAMBER] = wheel.camber();
                    return true;
                },
                figure -> LEFT_OUT);
        return new WheelPairMotion.Guided(alone, aim);
    }

    private interface LeftOut {
        double of(int figure);
    }

    /** Takes more places until nothing is left out; where even the most do not do, follows the axle less far. */
    private static Surfaces fitted(
            AxleLinkage axle, Extent extent, boolean ofTwo, int figures, Surfaces.Source source, LeftOut leftOut) {
        Surfaces best = null;
        for (int times = 0; times < MOST_TIMES; times++) {
            for (int places : PLACES) {
                axle.rest();
                Optional<Surfaces.Fit> fit = Surfaces.fit(extent.box(), places, ofTwo ? places : 1, figures, source);
                if (fit.isEmpty()) {
                    break;
                }
                best = fit.get().surfaces();
                double left = leftOver(fit.get().tail(), leftOut);
                if (left <= 1) {
                    return best;
                }
                if (left > HOPELESS) {
                    break;
                }
            }
            extent.less();
        }
        if (best == null) {
            throw new IllegalStateException("an axle that stands at rest cannot be moved from there");
        }
        return best;
    }

    /** What the last terms are, as a multiple of what they may be. */
    private static double leftOver(double[] tail, LeftOut leftOut) {
        double worst = 0;
        for (int figure = 0; figure < tail.length; figure++) {
            worst = Math.max(worst, tail[figure] / leftOut.of(figure));
        }
        return worst;
    }
}
