package evenhand.turn;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.Weights;
import evenhand.linkage.Assembly;
import evenhand.linkage.AxleLinkage;
import evenhand.linkage.AxleState;
import evenhand.linkage.AxleState.OwnLinks;
import evenhand.linkage.LiveAxleLinkage;
import evenhand.linkage.WheelPairLinkage;

/**
 * What an axle on links does at one place of a turn, by solving its linkage there instead of reading what was kept of it.
 *
 * @param force of springs, links and side view on the body, N, without stops
 * @param moment of springs, bar, links and side view against the roll, N·m
 * @param heightMoment Σ(Fy_j − mu·ay/2)·z_j, N·m
 * @param meanHeight of both force lines in the middle of the car, m
 * @param linkSteer of a live axle, understeer positive, rad
 */
record ByMechanism(double force, double moment, double heightMoment, double meanHeight, double linkSteer) {
    static ByMechanism of(Car car, End end, TurnRow row, double ay) {
        Axle axle = car.axle(end);
        int i = end == End.FRONT ? 0 : 1;
        WheelState left = row.wheels().get(2 * i);
        WheelState right = row.wheels().get(2 * i + 1);
        AxleLinkage linkage = ((Assembly.Standing) Assembly.of(axle.links().orElseThrow())).linkage();
        double mu = axle.unsprung().mass();
        double roll = (right.travel() - left.travel()) / axle.track();
        double rise = (left.travel() + right.travel()) / 2 + (i == 0 ? row.frontHeave() : row.rearHeave());
        double half = axle.track() / 2;
        double leftForce = left.lateralForce() - mu * ay / 2;
        double rightForce = right.lateralForce() - mu * ay / 2;
        linkage.rest();
        boolean points = linkage.hasSprings();
        double[] rest = new double[2];
        double[] atRest = new double[2];
        double[] ratioAtRest = new double[2];
        double[] rollRatioAtRest = new double[2];
        for (Side side : Side.values()) {
            int j = side.index();
            atRest[j] = linkage.springLength(side);
            ratioAtRest[j] = linkage.springRatio(side);
            rest[j] = (car.staticLoad(end, side) - mu * Weights.GRAVITY / 2) / ratioAtRest[j];
            if (linkage instanceof LiveAxleLinkage live) {
                rollRatioAtRest[j] = live.springRollRatio(side);
            }
        }
        if (!points) {
            throw new IllegalStateException("springs of random cars have points");
        }
        if (linkage instanceof LiveAxleLinkage live) {
            double bindForce = live.overConstrained() ? live.bindForce() : 0;
            double bindByRoll = live.overConstrained() ? live.bindByRoll() : 0;
            moved(live.moveTo(left.travel(), right.travel()));
            double force = live.overConstrained() ? live.bindForce() - bindForce : 0;
            double moment = axle.barRollStiffness() * roll
                    - (live.overConstrained() ? half * (live.bindByRoll() - bindByRoll) : 0);
            for (Side side : Side.values()) {
                int j = side.index();
                double along = Math.max(0, rest[j] + axle.spring().rate() * (atRest[j] - live.springLength(side)));
                force += along * live.springRatio(side);
                moment -= side.sign() * half * (along * live.springRollRatio(side) - rest[j] * rollRatioAtRest[j]);
            }
            double height = live.heightOfRollCentre() + rise;
            double side = leftForce + rightForce;
            double drive = drive(car, left, end) + drive(car, right, end);
            double rolling = left.longitudinalForce() + right.longitudinalForce() - drive;
            force += live.forceLineSlope() * side + live.wheelSideSlope() * rolling + live.contactSideSlope() * drive;
            moment += half * (live.contactTurn() * drive + live.wheelTurn() * rolling);
            double understeer = end == End.REAR ? 1 : -1;
            return new ByMechanism(force, moment, height * side, height, understeer * live.axleSteer());
        }
        WheelPairLinkage wheels = (WheelPairLinkage) linkage;
        moved(wheels.moveTo(left.travel(), right.travel()));
        AxleState state = wheels.state();
        double force = 0;
        double moment = axle.barRollStiffness() * roll;
        double heights = 0;
        double mean = 0;
        for (Side side : Side.values()) {
            int j = side.index();
            double sigma = side.sign();
            WheelState wheel = side == Side.LEFT ? left : right;
            OwnLinks own =
                    (side == Side.LEFT ? state.left() : state.right()).own().orElseThrow();
            double along = Math.max(0, rest[j] + axle.spring().rate() * (atRest[j] - wheels.springLength(side)));
            double load = along * wheels.springRatio(side);
            double height = own.forceLineSlope() * half + rise;
            double across = side == Side.LEFT ? leftForce : rightForce;
            double sideView = own.wheelSideSlope() * wheel.longitudinalForce();
            force += load + sideView - sigma * across * height / half;
            moment -= sigma * half * (load - rest[j] * ratioAtRest[j] + sideView);
            heights += across * height;
            mean += height / 2;
        }
        return new ByMechanism(force, moment, heights, mean, 0);
    }

    private static double drive(Car car, WheelState wheel, End end) {
        if (car.drive().axle() != end) {
            return 0;
        }
        double cos = Math.cos(wheel.steer());
        double along = wheel.longitudinalForce() * cos + wheel.lateralForce() * Math.sin(wheel.steer());
        return (along + car.rollingResistance() * wheel.load()) * cos;
    }

    private static void moved(boolean reached) {
        if (!reached) {
            throw new IllegalStateException("a state of the turn lies beyond the links");
        }
    }
}
