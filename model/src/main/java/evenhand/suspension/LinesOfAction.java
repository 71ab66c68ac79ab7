package evenhand.suspension;

import evenhand.car.Axle;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.SwingArm;
import evenhand.geometry.Linear;
import evenhand.geometry.LiveAxleMotion;
import evenhand.geometry.WheelPairMotion;
import java.util.Optional;

/**
 * Where the forces of an axle reach the body: the height at which side forces do, and in side view the lines of those along the
 * car, wherever the travel takes it. Links known by points say so for every place; without them the height follows its slope,
 * and the side view stays as it is. {@link #readAcross} and {@link #readAlong} set the fields and allocate nothing. One per thread.
 *
 * <p>Source: Milliken &amp; Milliken 1995 ch. 17 (force lines); Gillespie 1992 ch. 7 (side view).
 */
public abstract sealed class LinesOfAction {
    /** A number and its slopes over mean travel u, m, and suspension roll φs, rad. */
    public static final class Figure {
        public double value;
        public double byTravel;
        public double byRoll;

        private void set(double itsValue, double itsByTravel, double itsByRoll) {
            value = itsValue;
            byTravel = itsByTravel;
            byRoll = itsByRoll;
        }
    }

    /** Height of the roll centre above the ground on which the wheels stand still, m. */
    public final Figure rollCentre = new Figure();

    /** Of wheels of their own: half of what the left force line is higher in the middle plane than the right one, m. */
    public final Figure split = new Figure();

    /** Of a live axle: slope of its force line, by which a side force lifts the body. */
    public final Figure lift = new Figure();

    /** Rise per metre going forwards at the contact points, mean of both or that of a live axle's middle. */
    public final Figure contact = new Figure();

    /** The same at the wheel centres. */
    public final Figure wheel = new Figure();

    /** Half of what that of the left wheel is more than that of the right. */
    public final Figure contactSplit = new Figure();

    public final Figure wheelSplit = new Figure();

    /** Of a live axle: how far its contact points' middle goes forwards, left wheel up by one and right one down by one. */
    public final Figure contactTurn = new Figure();

    /** The same of the wheel centres' middle. */
    public final Figure wheelTurn = new Figure();

    private LinesOfAction() {}

    /** Those of an axle at one end, by the readers that its suspension has. */
    public static LinesOfAction of(Axle axle, End end, AxleSuspension suspension) {
        if (suspension.axleOnLinks().isPresent()) {
            return new OfLiveAxle(suspension.axleOnLinks().get());
        }
        if (suspension.wheelOnLinks(Side.LEFT).isPresent()) {
            return new OfWheels(
                    suspension.wheelOnLinks(Side.LEFT).get(),
                    suspension.wheelOnLinks(Side.RIGHT).orElseThrow(),
                    axle.track() / 2);
        }
        return new ByCoefficients(axle.geometry(), axle.reaction().swingArm(), end);
    }

    /** Goes to a place of its own accord: where nobody else has sent the readers there. */
    public abstract void goTo(double travel, double roll);

    /** Sets height, split and lift at the place where the readers are. */
    public abstract void readAcross(double travel);

    /** Sets the lines in side view. */
    public abstract void readAlong();

    private static final class ByCoefficients extends LinesOfAction {
        private final Linear geometry;

        private ByCoefficients(Linear geometry, Optional<SwingArm> arm, End end) {
            this.geometry = geometry;
            contact.set(arm.map(known -> known.contactSlope(end)).orElse(0.0), 0, 0);
            wheel.set(arm.map(known -> known.wheelSlope(end)).orElse(0.0), 0, 0);
        }

        @Override
        public void goTo(double travel, double roll) {}

        @Override
        public void readAcross(double travel) {
            rollCentre.set(geometry.rollCentreHeight(travel), geometry.rollCentreByTravel(), 0);
        }

        @Override
        public void readAlong() {}
    }

    private static final class OfLiveAxle extends LinesOfAction {
        private final LiveAxleMotion.Reading links;

        private OfLiveAxle(LiveAxleMotion.Reading links) {
            this.links = links;
        }

        @Override
        public void goTo(double travel, double roll) {
            links.at(travel, roll);
        }

        @Override
        public void readAcross(double travel) {
            links.read(LiveAxleMotion.ROLL_CENTRE);
            rollCentre.set(links.rollCentreHeight(), links.byTravel(), links.byRoll());
            figure(LiveAxleMotion.FORCE_LINE, lift);
        }

        @Override
        public void readAlong() {
            figure(LiveAxleMotion.CONTACT_SIDE, contact);
            figure(LiveAxleMotion.WHEEL_SIDE, wheel);
            figure(LiveAxleMotion.CONTACT_TURN, contactTurn);
            figure(LiveAxleMotion.WHEEL_TURN, wheelTurn);
        }

        private void figure(int figure, Figure into) {
            links.read(figure);
            into.set(links.value(), links.byTravel(), links.byRoll());
        }
    }

    private static final class OfWheels extends LinesOfAction {
        private final WheelPairMotion.Reading left;
        private final WheelPairMotion.Reading right;
        private final double half;

        private OfWheels(WheelPairMotion.Reading left, WheelPairMotion.Reading right, double half) {
            this.left = left;
            this.right = right;
            this.half = half;
        }

        @Override
        public void goTo(double travel, double roll) {
            left.at(travel - half * roll);
            right.at(travel + half * roll);
        }

        @Override
        public void readAcross(double travel) {
            left.read(WheelPairMotion.FORCE_LINE);
            right.read(WheelPairMotion.FORCE_LINE);
            both(
                    left.lineHeight(),
                    right.lineHeight(),
                    left.lineHeightByTravel(),
                    right.lineHeightByTravel(),
                    rollCentre,
                    split);
        }

        @Override
        public void readAlong() {
            sides(WheelPairMotion.WHEEL_SIDE, wheel, wheelSplit);
            sides(WheelPairMotion.CONTACT_SIDE, contact, contactSplit);
        }

        private void sides(int figure, Figure mean, Figure difference) {
            left.read(figure);
            right.read(figure);
            both(left.value(), right.value(), left.byTravel(), right.byTravel(), mean, difference);
        }

        /** Mean and half the difference; the left wheel travels u − (t/2)·φs, the right one u + (t/2)·φs. */
        private void both(
                double ofLeft, double ofRight, double leftBy, double rightBy, Figure mean, Figure difference) {
            mean.set((ofLeft + ofRight) / 2, (leftBy + rightBy) / 2, half * (rightBy - leftBy) / 2);
            difference.set((ofLeft - ofRight) / 2, (leftBy - rightBy) / 2, -half * (leftBy + rightBy) / 2);
        }
    }
}
