package evenhand.geometry;

import java.util.Optional;

/**
 * An axle whose links are known by points: what it is wherever its travel takes it, not only near rest. Immutable; travel
 * counts from rest, bump positive, in m.
 */
public sealed interface LinkMotion permits LiveAxleMotion, WheelPairMotion {
    /**
     * Its slopes at rest.
     *
     * @param springs their leverage by coefficients, for springs without points
     * @param dampers the same of dampers
     */
    Linear atRest(Lever springs, Optional<Lever> dampers);

    /**
     * This axle standing elsewhere.
     *
     * @param travel how much further in bump its wheels are at rest, m
     * @param squash how much flatter its tyres stand, m
     */
    LinkMotion sunk(double travel, double squash);

    /** This axle seen in a mirror. */
    LinkMotion mirrored();

    /** Whether it is the same seen in a mirror, to 1e-9 in every term. */
    boolean alikeBothWays();

    /** How much shorter the springs are where the wheels stand further in bump by so much, in the mean, m. */
    double springsShorterBy(double travel);

    /** Whether the springs have points. */
    boolean guidesSprings();

    /** Whether the dampers have points. */
    boolean guidesDampers();

    /**
     * Whether figures are known there to the last digit that matters; elsewhere they go on along their tangents.
     *
     * @param turned of a live axle its roll, of a steered one its reference steer, rad
     */
    boolean isFollowed(double travel, double turned);

    /** How far the wheels reach. */
    Reach reach();

    /**
     * Where the links end; infinite where they reach further than the axle is followed.
     *
     * @param bump m from rest
     * @param droop m from rest, below zero
     * @param turn of a live axle its roll, of a steered one its reference steer, rad; the same either way
     * @param part what ends it
     */
    record Reach(double bump, double droop, double turn, String part) {
        /** How far a place lies beyond, in parts of one: above zero where there is no such place. */
        public double beyond(double travel, double turned) {
            return Math.max(
                    Math.max(travel - bump, droop - travel), Double.isInfinite(turn) ? -1 : Math.abs(turned) - turn);
        }

        Reach sunk(double travel) {
            return new Reach(bump - travel, droop - travel, turn, part);
        }
    }
}
