package evenhand.validation;

import evenhand.car.links.Arm;
import evenhand.car.links.LinkedAxle;
import evenhand.car.links.Pair;
import evenhand.car.links.Point;
import evenhand.car.links.SideView;
import evenhand.car.links.Strut;
import evenhand.car.links.TieRod;
import evenhand.car.links.WheelLinks;
import evenhand.linkage.AxleState;
import evenhand.quantity.Unit;
import java.util.Arrays;

/** Wheels on arms, struts and tie rods by points, moved as {@code travel} moves them; points in rear view, out and up. */
final class WheelEvaluators {
    private static final Unit MM = Unit.of("mm");
    private static final Unit DEG = Unit.of("deg");

    /** A travel over which slopes are told from rows, m: short against any link, long against rounding. */
    private static final double SHORT = 1e-4;

    private WheelEvaluators() {}

    private static double[] point(Inputs in, String name) {
        return Arrays.stream(in.numbers(name)).map(MM::toSi).toArray();
    }

    private static LinkedAxle wishbones(Inputs in, Pair<TieRod> tieRod) {
        return PlainLinks.wheels(
                new WheelLinks.DoubleWishbone(
                        Pair.alike(PlainLinks.arm(point(in, "lower_inner_mm"), point(in, "lower_outer_mm"))),
                        Pair.alike(PlainLinks.arm(point(in, "upper_inner_mm"), point(in, "upper_outer_mm"))),
                        tieRod),
                point(in, "contact_mm")[0]);
    }

    /** A tie rod that does in rear view what the lower arm does, so that it steers nothing. */
    private static Pair<TieRod> asTheLowerArm(Inputs in) {
        return PlainLinks.tieRod(point(in, "lower_inner_mm"), point(in, "lower_outer_mm"));
    }

    static Computed doubleWishbone(Inputs in) {
        LinkedAxle axle = wishbones(in, asTheLowerArm(in));
        AxleState up = PlainLinks.heaved(axle, SHORT);
        AxleState down = PlainLinks.heaved(axle, -SHORT);
        double gain = (up.left().camber() - down.left().camber()) / (2 * SHORT);
        return rollCentre(axle)
                .with("swing_arm_mm", MM.fromSi(-1 / gain))
                .with("camber_deg_per_100mm", DEG.fromSi(gain * 0.1));
    }

    /** Both arms of a double wishbone on one pivot: a wheel on a swing axle. */
    static Computed swingAxle(Inputs in) {
        double[] pivot = point(in, "pivot_y_z_mm");
        double[] low = {0.6, 0.2};
        return rollCentre(PlainLinks.wheels(
                new WheelLinks.DoubleWishbone(
                        Pair.alike(PlainLinks.arm(pivot, low)),
                        Pair.alike(PlainLinks.arm(pivot, new double[] {0.6, 0.4})),
                        PlainLinks.tieRod(pivot, low)),
                MM.toSi(in.number("contact_y_mm"))));
    }

    static Computed strut(Inputs in) {
        double[] top = point(in, "top_mm");
        double[] foot = point(in, "lower_outer_mm");
        return rollCentre(PlainLinks.wheels(
                new WheelLinks.StrutAndArm(
                        Pair.alike(PlainLinks.arm(point(in, "lower_inner_mm"), foot)),
                        Pair.alike(new Strut(new Point(0, top[0], top[1]), new Point(0, foot[0], foot[1]))),
                        asTheLowerArm(in)),
                point(in, "contact_mm")[0]));
    }

    private static Computed rollCentre(LinkedAxle axle) {
        AxleState rest = PlainLinks.rest(axle).rest();
        return new Computed()
                .with("roll_centre_height_mm", MM.fromSi(rest.rollCentreHeight().orElseThrow()))
                .with("force_line_slope", rest.left().own().orElseThrow().forceLineSlope());
    }

    /** Toe over travel with a tie rod as it is given, and with its inner end too high. */
    static Computed bumpSteer(Inputs in) {
        double[] inner = point(in, "inner_ball_mm");
        double[] wrong = {inner[0], inner[1] + MM.toSi(in.number("error_mm"))};
        double[] outer = point(in, "outer_ball_mm");
        return new Computed()
                .with("slope_at_ideal", toeByTravel(wishbones(in, PlainLinks.tieRod(inner, outer))))
                .with(
                        "toe_deg_per_10mm",
                        DEG.fromSi(0.01 * toeByTravel(wishbones(in, PlainLinks.tieRod(wrong, outer)))));
    }

    private static double toeByTravel(LinkedAxle axle) {
        AxleState up = PlainLinks.heaved(axle, SHORT);
        AxleState down = PlainLinks.heaved(axle, -SHORT);
        return (up.left().toe() - down.left().toe()) / (2 * SHORT);
    }

    /** Level arms of one length, whose pivots lie lower in front: by how much for a share of the dive. */
    static Computed antiDive(Inputs in) {
        double wanted = in.number("anti_dive");
        return new Computed()
                .with("angle_deg", DEG.fromSi(Roots.between(0.01, 0.3, angle -> antiDive(in, angle) - wanted)));
    }

    private static double antiDive(Inputs in, double angle) {
        SideView car = new SideView(
                MM.toSi(in.number("wheelbase_mm")),
                MM.toSi(in.number("cg_height_mm")),
                in.number("front_brake_share"),
                SideView.BrakesAt.WHEELS,
                /* driven= */ false);
        return PlainLinks.rest(PlainLinks.wheels(
                        new WheelLinks.DoubleWishbone(
                                Pair.alike(tilted(0.2, angle)),
                                Pair.alike(tilted(0.45, angle)),
                                PlainLinks.tieRod(new double[] {0.35, 0.3}, new double[] {0.65, 0.3})),
                        0.7,
                        car))
                .rest()
                .antiDive()
                .orElseThrow();
    }

    private static Arm tilted(double up, double angle) {
        double lower = PlainLinks.HALF_AXIS * Math.tan(angle);
        return new Arm(
                new Point(PlainLinks.HALF_AXIS, 0.35, up - lower),
                new Point(-PlainLinks.HALF_AXIS, 0.35, up + lower),
                new Point(0, 0.65, up));
    }
}
