package evenhand.turn;

import static evenhand.turn.AxleInTurn.HEAVE;
import static evenhand.turn.AxleInTurn.LEFT_RISE;
import static evenhand.turn.AxleInTurn.RIGHT_RISE;
import static evenhand.turn.AxleInTurn.ROLL;

import evenhand.geometry.LinkMotion;
import evenhand.geometry.LiveAxleMotion;
import evenhand.geometry.WheelPairMotion;
import evenhand.suspension.LinesOfAction;

/**
 * Where the forces of an axle in the turn reach the body, its links known by points. Side forces act along force lines, which
 * may lift the body; forces along the car act along side-view force lines, which lift and turn it; what lifts the body presses
 * the tyres as much. Sets fields of its axle and its own, and allocates nothing.
 *
 * <p>Each wheel's force line has a height z_j in the car's middle plane. With z their mean and s half of z_L − z_R, the moment
 * of the side forces about the ground is
 *
 * <pre>  Σ(Fy_j − mu·ay/2)·z_j = z·Y + s·(Fy_L − Fy_R),  Y = ΣFy − mu·ay  </pre>
 *
 * and the lift {@code a·Y + b·(Fy_L − Fy_R)}: of wheels on links of their own {@code a = −(2/t)·s, b = −(2/t)·z}; of a live axle
 * a is the slope of its force line, b and s are zero.
 *
 * <p>Source: Milliken &amp; Milliken 1995 ch. 17; Dixon 2009 (jacking); Gillespie 1992 ch. 7 (side view).
 */
abstract sealed class LinesByPoints {
    private static final int UNKNOWNS = AxleInTurn.UNKNOWNS;

    /** Half of z_L − z_R, m. */
    double split;

    final double[] splitBy = new double[UNKNOWNS];

    /** a: lift by the axle's side force. */
    double lift;

    final double[] liftBy = new double[UNKNOWNS];

    final AxleInTurn axle;
    final LinkMotion.Reach reach;
    /** The same over the axle's own travel and roll. */
    final LinesOfAction lines;

    private LinesByPoints(AxleInTurn axle, LinkMotion.Reach reach) {
        this.axle = axle;
        this.reach = reach;
        lines = axle.linesOfAction;
    }

    static LinesByPoints of(LinkMotion motion, AxleInTurn axle) {
        return motion instanceof LiveAxleMotion live
                ? new OfLiveAxle(live, axle)
                : new OfWheels((WheelPairMotion) motion, axle);
    }

    /** How far the axle's place lies beyond what its links reach; above zero there is no such state. */
    abstract double beyondReach(double referenceSteer);

    /** Sets heights, lift, and steer of the links at the axle's posture. */
    abstract void read(double rise);

    /** Adds to force and moment on the body what side-view force lines and the slope of a live axle's force line lift. */
    abstract void liftTheBody();

    /** What steers the wheels by their own links as the posture changes, understeer positive: of an unknown of posture. */
    double bumpSteerBy(int unknown) {
        return 0;
    }

    /** Sets slopes over the posture from those over mean travel u and suspension roll φs. */
    final void chain(double byTravel, double byRoll, double[] into) {
        into[HEAVE] = -byTravel;
        into[ROLL] = byRoll;
        into[LEFT_RISE] = byTravel / 2 + byRoll * axle.suspensionRollBy[LEFT_RISE];
        into[RIGHT_RISE] = byTravel / 2 + byRoll * axle.suspensionRollBy[RIGHT_RISE];
    }

    /** A figure over mean travel and roll, its slopes over the posture set. */
    final double figure(LinesOfAction.Figure figure, double[] by) {
        chain(figure.byTravel, figure.byRoll, by);
        return figure.value;
    }

    /** Sets the roll centre above the ground. */
    final void rollCentre(double rise) {
        axle.rollCentre = figure(lines.rollCentre, axle.rollCentreBy) + rise;
        axle.rollCentreBy[LEFT_RISE] += 0.5;
        axle.rollCentreBy[RIGHT_RISE] += 0.5;
    }

    private static final class OfLiveAxle extends LinesByPoints {
        private final LiveAxleMotion.Reading links;
        private final double understeer;
        private double contactSide;
        private double wheelSide;
        private double contactTurn;
        private double wheelTurn;
        private final double[] contactSideBy = new double[UNKNOWNS];
        private final double[] wheelSideBy = new double[UNKNOWNS];
        private final double[] contactTurnBy = new double[UNKNOWNS];
        private final double[] wheelTurnBy = new double[UNKNOWNS];

        private OfLiveAxle(LiveAxleMotion motion, AxleInTurn axle) {
            super(axle, motion.reach());
            links = axle.suspension.axleOnLinks().orElseThrow();
            understeer = motion.made().understeer();
        }

        @Override
        double beyondReach(double referenceSteer) {
            return reach.beyond(axle.travel, axle.suspensionRoll);
        }

        @Override
        void read(double rise) {
            links.at(axle.travel, axle.suspensionRoll);
            lines.readAcross(axle.travel);
            rollCentre(rise);
            lift = figure(lines.lift, liftBy);
            links.read(LiveAxleMotion.STEER);
            axle.linkSteer = understeer * links.value();
            chain(understeer * links.byTravel(), understeer * links.byRoll(), axle.linkSteerBy);
            lines.readAlong();
            contactSide = figure(lines.contact, contactSideBy);
            wheelSide = figure(lines.wheel, wheelSideBy);
            contactTurn = figure(lines.contactTurn, contactTurnBy);
            wheelTurn = figure(lines.wheelTurn, wheelTurnBy);
        }

        /**
         * Along the force line, and in side view at the axle's middle: drive and brakes act at the contact points, since the axle
         * reacts them, the rest of the forward force at the wheel centres.
         *
         * <pre>
         *   lift    a·ΣFy + s_w·(ΣFx − A) + s_c·A
         *   moment  (t/2)·[w_x(C)·A + w_x(W)·(ΣFx − A)]   against the roll
         * </pre>
         * A what the axle reacts, N.
         */
        @Override
        void liftTheBody() {
            double rolling = axle.forwardForce - axle.reacted;
            axle.bodyForce += lift * axle.sideForce + wheelSide * rolling + contactSide * axle.reacted;
            axle.bodyMoment += axle.halfTrack * (contactTurn * axle.reacted + wheelTurn * rolling);
            for (int i = 0; i < UNKNOWNS; i++) {
                double reactedI = axle.reactedBy[i];
                double rollingI = axle.forwardForceBy[i] - reactedI;
                axle.bodyForceBy[i] += liftBy[i] * axle.sideForce
                        + lift * axle.sideForceBy[i]
                        + wheelSideBy[i] * rolling
                        + wheelSide * rollingI
                        + contactSideBy[i] * axle.reacted
                        + contactSide * reactedI;
                axle.bodyMomentBy[i] += axle.halfTrack
                        * (contactTurnBy[i] * axle.reacted
                                + contactTurn * reactedI
                                + wheelTurnBy[i] * rolling
                                + wheelTurn * rollingI);
            }
        }
    }

    private static final class OfWheels extends LinesByPoints {
        private final double understeer;
        private final double perHeight; // lift per height of the lines: −2/t
        private double side; // mean of both side-view slopes
        private double sideSplit; // half their difference
        private final double[] sideBy = new double[UNKNOWNS];
        private final double[] sideSplitBy = new double[UNKNOWNS];
        private double contact; // the same at the contact points, where brakes act
        private double contactSplit;
        private final double[] contactBy = new double[UNKNOWNS];
        private final double[] contactSplitBy = new double[UNKNOWNS];

        private OfWheels(WheelPairMotion motion, AxleInTurn axle) {
            super(axle, motion.reach());
            understeer = motion.made().understeer();
            perHeight = -1 / axle.halfTrack;
        }

        @Override
        double beyondReach(double referenceSteer) {
            double byRoll = axle.halfTrack * axle.suspensionRoll;
            double steer = understeer < 0 ? referenceSteer : 0;
            return Math.max(reach.beyond(axle.travel - byRoll, steer), reach.beyond(axle.travel + byRoll, steer));
        }

        @Override
        void read(double rise) {
            lines.readAcross(axle.travel);
            rollCentre(rise);
            split = figure(lines.split, splitBy);
            lift = perHeight * split;
            for (int i = HEAVE; i <= RIGHT_RISE; i++) {
                liftBy[i] = perHeight * splitBy[i];
            }
            lines.readAlong();
            side = figure(lines.wheel, sideBy);
            sideSplit = figure(lines.wheelSplit, sideSplitBy);
            if (axle.brakes.isPresent()) {
                contact = figure(lines.contact, contactBy);
                contactSplit = figure(lines.contactSplit, contactSplitBy);
            }
        }

        /** The part of the forces that acts at the contact points. */
        private void liftByBrakes() {
            double sum = axle.reacted;
            double difference = axle.reactedDifference;
            axle.bodyForce += contact * sum + contactSplit * difference;
            axle.bodyMoment -= axle.halfTrack * (contactSplit * sum + contact * difference);
            for (int i = 0; i < UNKNOWNS; i++) {
                double sumI = axle.reactedBy[i];
                double differenceI = axle.reactedDifferenceBy[i];
                axle.bodyForceBy[i] += contactBy[i] * sum
                        + contact * sumI
                        + contactSplitBy[i] * difference
                        + contactSplit * differenceI;
                axle.bodyMomentBy[i] -= axle.halfTrack
                        * (contactSplitBy[i] * sum
                                + contactSplit * sumI
                                + contactBy[i] * difference
                                + contact * differenceI);
            }
        }

        @Override
        double bumpSteerBy(int unknown) {
            return understeer * (axle.left.steerBy[unknown] + axle.right.steerBy[unknown]) / 2;
        }

        /**
         * What both force lines lift beyond b·(Fy_L − Fy_R), and in side view each wheel: at its centre, brakes that its upright
         * reacts at its contact point.
         *
         * <pre>
         *   lift    a·ΣFy + Σ[s_w,j·(Fx_j − A_j) + s_c,j·A_j]
         *   moment  (t/2)·[right wheel's of the same − left wheel's]   against the roll
         * </pre>
         */
        @Override
        void liftTheBody() {
            double sum = axle.forwardForce - axle.reacted;
            double difference = axle.forwardForceDifference - axle.reactedDifference;
            axle.bodyForce += lift * axle.sideForce + side * sum + sideSplit * difference;
            axle.bodyMoment -= axle.halfTrack * (sideSplit * sum + side * difference);
            if (axle.brakes.isPresent()) {
                liftByBrakes();
            }
            for (int i = 0; i < UNKNOWNS; i++) {
                double sumI = axle.forwardForceBy[i] - axle.reactedBy[i];
                double differenceI = axle.forwardForceDifferenceBy[i] - axle.reactedDifferenceBy[i];
                axle.bodyForceBy[i] += liftBy[i] * axle.sideForce
                        + lift * axle.sideForceBy[i]
                        + sideBy[i] * sum
                        + side * sumI
                        + sideSplitBy[i] * difference
                        + sideSplit * differenceI;
                axle.bodyMomentBy[i] -= axle.halfTrack
                        * (sideSplitBy[i] * sum + sideSplit * sumI + sideBy[i] * difference + side * differenceI);
            }
        }
    }
}
