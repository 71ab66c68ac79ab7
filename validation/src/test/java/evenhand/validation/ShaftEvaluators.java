package evenhand.validation;

import evenhand.car.links.Locator;
import evenhand.car.links.MiddlePoint;
import evenhand.car.links.PropShaft;
import evenhand.car.links.SideView;
import evenhand.linkage.AxleState;
import evenhand.quantity.Unit;
import java.util.Arrays;
import java.util.Optional;

/** Propeller shafts between a gearbox and a live axle. */
final class ShaftEvaluators {
    private static final Unit MM = Unit.of("mm");
    private static final Unit DEG = Unit.of("deg");
    private static final double UP = 0.3;
    private static final double PINION_AHEAD = 0.3;

    private ShaftEvaluators() {}

    /**
     * A level shaft at rest, its joints at these angles, rad.
     *
     * @param apart how far the plane of the rear joint is turned from that of the front one
     */
    private static AxleState.ShaftFigures level(double front, double rear, double apart) {
        PropShaft shaft = new PropShaft(
                new MiddlePoint(1.6, 0, UP),
                front,
                0,
                Optional.empty(),
                new MiddlePoint(PINION_AHEAD, 0, UP),
                Math.asin(Math.sin(rear) * Math.cos(apart)),
                Math.atan2(Math.sin(rear) * Math.sin(apart), Math.cos(rear)));
        return moved(shaft, 0, 0);
    }

    /** The shaft when the axle has gone so far ahead and up. */
    private static AxleState.ShaftFigures moved(PropShaft shaft, double ahead, double up) {
        SideView car = SideView.ofAxleAlone(SideView.BrakesAt.WHEELS);
        return PlainLinks.heaved(
                        PlainLinks.live(
                                PlainLinks.swingingTo(ahead, up),
                                Optional.of(new Locator.Ideal(0.3, -1)),
                                car,
                                Optional.of(shaft)),
                        up)
                .live()
                .orElseThrow()
                .shaft()
                .orElseThrow();
    }

    /** One joint at some angle, the other straight: from least to greatest speed, over the mean. */
    static Computed oneJoint(Inputs in) {
        return new Computed()
                .with(
                        "fluctuation",
                        Arrays.stream(in.numbers("angle_deg"))
                                .map(angle -> level(DEG.toSi(angle), 0, 0).speedFluctuation())
                                .toArray());
    }

    /** The angle of one joint that goes so unevenly. */
    static Computed jointForFluctuation(Inputs in) {
        double wanted = in.has("fluctuation")
                ? in.number("fluctuation")
                : in.number("fluctuation_rpm") / in.number("speed_rpm");
        double angle = Roots.between(0.001, 0.8, front -> level(front, 0, 0).speedFluctuation() - wanted);
        return new Computed()
                .with("angle_deg", DEG.fromSi(level(angle, 0, 0).residualJointAngle()))
                .with("cos_angle", Math.cos(level(angle, 0, 0).greatestJointAngle()));
    }

    /** Two joints: what they leave together. */
    static Computed twoJoints(Inputs in) {
        double[] front = in.numbers("b1_deg");
        double[] rear = in.numbers("b2_deg");
        double[] apart = in.has("planes_apart_deg") ? in.numbers("planes_apart_deg") : new double[front.length];
        double[] left = new double[front.length];
        double[] fluctuation = new double[front.length];
        for (int i = 0; i < front.length; i++) {
            AxleState.ShaftFigures shaft = level(DEG.toSi(front[i]), DEG.toSi(rear[i]), DEG.toSi(apart[i]));
            left[i] = DEG.fromSi(shaft.residualJointAngle());
            fluctuation[i] = shaft.speedFluctuation();
        }
        return new Computed()
                .with("approximate_deg", left)
                .with("residual_deg", left)
                .with("fluctuation", fluctuation);
    }

    /** A shaft whose rear end goes up and back: how much longer it gets. */
    static Computed plunge(Inputs in) {
        double length = MM.toSi(in.number("length_mm"));
        double below = MM.toSi(in.number("rear_below_front_mm"));
        double run = Math.sqrt(length * length - below * below);
        PropShaft shaft = new PropShaft(
                new MiddlePoint(PINION_AHEAD + run, 0, UP + below),
                0,
                0,
                Optional.empty(),
                new MiddlePoint(PINION_AHEAD, 0, UP),
                0,
                0);
        double plunge = moved(shaft, -MM.toSi(in.number("back_mm")), MM.toSi(in.number("up_mm")))
                .plunge();
        return new Computed().with("change_mm", -MM.fromSi(plunge));
    }
}
