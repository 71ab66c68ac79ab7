package evenhand.validation;

import evenhand.car.End;
import evenhand.car.LateralLocator.CarriedBy;
import evenhand.car.Stops;
import evenhand.car.links.AxleLinks;
import evenhand.car.links.Carried;
import evenhand.car.links.CarriedOn;
import evenhand.car.links.Leaf;
import evenhand.car.links.Link;
import evenhand.car.links.LinkedAxle;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.car.links.Locator;
import evenhand.car.links.MiddleLink;
import evenhand.car.links.MiddlePoint;
import evenhand.car.links.Mounts;
import evenhand.car.links.Pair;
import evenhand.car.links.Point;
import evenhand.car.links.SideView;
import evenhand.car.links.SpringLine;
import evenhand.car.links.Stance;
import evenhand.linkage.AxleState;
import evenhand.linkage.TravelAnswer;
import evenhand.quantity.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Live axles on links by points, moved as {@code travel} moves them. */
final class GeometryEvaluators {
    private static final Unit MM = Unit.of("mm");
    private static final Unit DEG = Unit.of("deg");

    private GeometryEvaluators() {}

    private static double metres(Inputs in, String name) {
        return MM.toSi(in.number(name));
    }

    private static double[] metresOf(Inputs in, String name) {
        return Arrays.stream(in.numbers(name)).map(MM::toSi).toArray();
    }

    private static AxleState.LiveFigures live(AxleState state) {
        return state.live().orElseThrow();
    }

    /** Watt's linkage with level rods, the upper one to the left, in the axle's plane. */
    private static Locator watt(Inputs in) {
        double half = metres(in, "crank_end_to_end_mm") / 2;
        double upper = metres(in, in.has("rod_mm") ? "rod_mm" : "upper_rod_mm");
        double lower = metres(in, in.has("rod_mm") ? "rod_mm" : "lower_rod_mm");
        return new Locator.WattPoints(
                in.text("crank_on").equals("body") ? CarriedBy.BODY : CarriedBy.AXLE,
                new MiddlePoint(0, 0, 0.3),
                half,
                half,
                0,
                new Locator.WattRod(new MiddlePoint(0, upper, 0.3 + half), PlainLinks.ROD),
                new Locator.WattRod(new MiddlePoint(0, -lower, 0.3 - half), PlainLinks.ROD));
    }

    /** An axle that goes straight up on its links, held sideways by Watt's linkage. */
    static Computed wattsLinkage(Inputs in) {
        double[] heaves = metresOf(in, "heave_mm");
        double[] shift = new double[heaves.length];
        double[] crank = new double[heaves.length];
        for (int i = 0; i < heaves.length; i++) {
            AxleState.LiveFigures moved = live(PlainLinks.heaved(onWatt(in, heaves[i]), heaves[i]));
            shift[i] = MM.fromSi(moved.sideShift());
            crank[i] = DEG.fromSi(moved.crank().orElseThrow());
        }
        return new Computed().with("side_shift_mm", shift).with("crank_deg", crank);
    }

    private static LinkedAxle onWatt(Inputs in, double heave) {
        return PlainLinks.live(PlainLinks.swingingTo(0, heave), watt(in));
    }

    /** How far the crank's pivot is from the middle of the rods' outer ends, where it stands at an angle from their line. */
    static Computed wattsCurve(Inputs in) {
        double line = Math.atan2(metres(in, "crank_end_to_end_mm"), 2 * metres(in, "rod_mm"));
        double[] distances = Arrays.stream(in.numbers("angle_deg"))
                .map(angle -> {
                    double heave =
                            Roots.between(0.02, 0.165, up -> Math.atan2(up, shift(in, up)) - line - DEG.toSi(angle));
                    return MM.fromSi(Math.hypot(heave, shift(in, heave)));
                })
                .toArray();
        return new Computed().with("distance_mm", distances);
    }

    private static double shift(Inputs in, double heave) {
        return live(PlainLinks.heaved(onWatt(in, heave), heave)).sideShift();
    }

    /** A Panhard rod with its body end on the right: shift of the axle to that side. */
    static Computed panhardRod(Inputs in) {
        double length = metres(in, "length_mm");
        List<double[]> shifts = new ArrayList<>();
        for (double above : metresOf(in, "axle_end_above_mm")) {
            double across = Math.sqrt(length * length - above * above);
            Locator rod = new Locator.PanhardPoints(
                    new MiddlePoint(0, -across / 2, 0.25),
                    new MiddlePoint(0, across / 2, 0.25 + above),
                    PlainLinks.ROD);
            shifts.add(Arrays.stream(metresOf(in, "travel_mm"))
                    .map(up ->
                            -MM.fromSi(live(PlainLinks.heaved(PlainLinks.live(PlainLinks.swingingTo(0, up), rod), up))
                                    .sideShift()))
                    .toArray());
        }
        return new Computed().with("shift_mm", shifts);
    }

    /** Where an axle on straight links and a Panhard rod rolls, and where that goes. */
    static Computed rollCentreOfPanhardRod(Inputs in) {
        double[] body = metresOf(in, "body_end_y_z_mm");
        double[] axle = metresOf(in, "axle_end_y_z_mm");
        Locator rod = new Locator.PanhardPoints(
                new MiddlePoint(0, body[0], body[1]), new MiddlePoint(0, axle[0], axle[1]), PlainLinks.ROD);
        TravelAnswer.Followed rest = PlainLinks.rest(PlainLinks.live(PlainLinks.trailing(2, 0), rod));
        return new Computed()
                .with("height_mm", MM.fromSi(rest.rest().rollCentreHeight().orElseThrow()))
                .with("force_line_slope", live(rest.rest()).forceLineSlope())
                .with("per_bump", rest.rollCentrePerBump().orElseThrow());
    }

    /** Parallel trailing links that slope: roll steer at rest, and how the axle stands at a roll. */
    static Computed trailingLinks(Inputs in) {
        double[] runs;
        double[] rises;
        if (in.has("arm_angle_deg")) {
            double arm = metres(in, "arm_length_mm");
            double[] angles =
                    Arrays.stream(in.numbers("arm_angle_deg")).map(DEG::toSi).toArray();
            runs = Arrays.stream(angles).map(angle -> arm * Math.cos(angle)).toArray();
            rises = Arrays.stream(angles).map(angle -> arm * Math.sin(angle)).toArray();
        } else {
            runs = metresOf(in, "run_mm");
            rises = metresOf(in, "rise_mm");
        }
        double roll = DEG.toSi(in.number("roll_deg", 4));
        double[] rollSteer = new double[runs.length];
        double[] firstOrder = new double[runs.length];
        double[] steer = new double[runs.length];
        for (int i = 0; i < runs.length; i++) {
            LinkedAxle axle = PlainLinks.live(PlainLinks.trailing(runs[i], rises[i]), new Locator.Ideal(0.3, 0));
            rollSteer[i] = PlainLinks.rest(axle).rest().rollSteer();
            firstOrder[i] = DEG.fromSi(rollSteer[i] * roll);
            steer[i] = DEG.fromSi(live(PlainLinks.rolled(axle, roll)).axleSteer());
        }
        return new Computed()
                .with("roll_steer", rollSteer)
                .with("first_order_deg", firstOrder)
                .with("axle_steer_deg", steer);
    }

    /** Two links below and one above in side view: where they meet, and what that does about squat. */
    static Computed sideView(Inputs in) {
        AxleState rest = PlainLinks.rest(PlainLinks.live(
                        PlainLinks.threeLinks(
                                lower(in.numbers("lower_body"), in.numbers("lower_axle")),
                                upper(in.numbers("upper_body"), in.numbers("upper_axle"))),
                        Optional.of(new Locator.Ideal(0.25, -0.5)),
                        car(in),
                        Optional.empty()))
                .rest();
        AxleState.LiveFigures whole = live(rest);
        return new Computed()
                .with(
                        "instant_centre_m",
                        whole.swingArm().orElseThrow(),
                        whole.swingCentreHeight().orElseThrow())
                .with("slope", whole.contactSideSlope())
                .with("anti_squat", rest.antiSquat().orElseThrow());
    }

    private static Link lower(double[] body, double[] axle) {
        return new Link(new Point(body[0], 0.5, body[1]), new Point(axle[0], 0.5, axle[1]), PlainLinks.ROD);
    }

    private static MiddleLink upper(double[] body, double[] axle) {
        return new MiddleLink(
                new MiddlePoint(body[0], 0, body[1]), new MiddlePoint(axle[0], 0, axle[1]), PlainLinks.ROD);
    }

    private static SideView car(Inputs in) {
        return new SideView(
                in.number("wheelbase_m"), in.number("cg_height_m"), 0.6, SideView.BrakesAt.WHEELS, /* driven= */ true);
    }

    /** Links towards one point ahead of the axle: how steeply it must lie for a rear end that does not squat. */
    static Computed noSquat(Inputs in) {
        double ahead = in.number("instant_centre_ahead_m", 1.5);
        double up = Roots.between(0.05, 1.2, height -> antiSquat(in, ahead, height) - 1);
        return new Computed().with("no_squat", up / ahead);
    }

    private static double antiSquat(Inputs in, double ahead, double up) {
        return PlainLinks.rest(PlainLinks.live(
                        PlainLinks.threeLinks(
                                lower(towards(0.2, ahead, up, 0.4), new double[] {0, 0.2}),
                                upper(towards(0.42, ahead, up, 0.3), new double[] {0, 0.42})),
                        Optional.of(new Locator.Ideal(0.25, -1)),
                        car(in),
                        Optional.empty()))
                .rest()
                .antiSquat()
                .orElseThrow();
    }

    /** A share of the way from the axle at a height to a point in side view. */
    private static double[] towards(double from, double ahead, double up, double share) {
        return new double[] {share * ahead, from + share * (up - from)};
    }

    /** Links below that converge to one point in plan, links above that do to another, and nothing else. */
    static Computed convergingLinks(Inputs in) {
        double[] above = in.numbers("upper_convergence_x_z_m");
        double[] below = in.numbers("lower_convergence_x_z_m");
        Point lowerAxle = new Point(0, 0.5, 0.2);
        double share = 0.3;
        Point lowerBody = new Point(
                share * below[0], (1 - share) * lowerAxle.out(), lowerAxle.up() + share * (below[1] - lowerAxle.up()));
        AxleLinks links = new AxleLinks(
                Optional.of(Pair.alike(new Link(lowerBody, lowerAxle, PlainLinks.ROD))),
                Optional.of(Pair.alike(new Link(
                        new Point(above[0] + 0.32, 0.64, above[1]),
                        new Point(above[0] + 0.03, 0.06, above[1]),
                        PlainLinks.ROD))),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        SideView car = SideView.ofAxleAlone(SideView.BrakesAt.WHEELS);
        AxleState rest = PlainLinks.rest(PlainLinks.live(links, Optional.empty(), car, Optional.empty()))
                .rest();
        return new Computed()
                .with("roll_centre_height_m", rest.rollCentreHeight().orElseThrow())
                .with("roll_steer", rest.rollSteer());
    }

    /** Level leaves of two equal halves, with shackles so long that the axle does not pitch: the radius on which the axle goes, and how far back. */
    static Computed leaves(Inputs in) {
        double half = metres(in, "cantilever_mm");
        double up = metres(in, "deflection_mm");
        Leaf leaf = new Leaf(
                new Point(half, 0.5, 0.3),
                new Point(-half, 0.5, 0.3),
                new Point(-half, 0.5, 4.9),
                new Point(0, 0.5, 0.3));
        LinkedAxle axle = PlainLinks.live(
                new AxleLinks(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(Pair.alike(leaf))),
                new Locator.Ideal(0.3, -1));
        double ahead = live(PlainLinks.heaved(axle, up)).foreAft();
        return new Computed()
                .with("radius_mm", MM.fromSi((up * up + ahead * ahead) / (2 * Math.abs(ahead))))
                .with("shortening_mm", MM.fromSi(ahead));
    }

    /** Springs that lean, and a load on each: how far the axle goes to where they carry it. */
    static Computed leaningSpringUnderLoad(Inputs in) {
        double rate = Unit.of("N/mm").toSi(in.number("spring_N_mm"));
        double across = metres(in, "horizontal_span_mm");
        double upright = metres(in, "vertical_span_mm");
        double length = Math.hypot(across, upright);
        double free = length + in.number("load_at_zero_N") / rate;
        SpringLine.Ends ends =
                new SpringLine.Ends(new Point(0, 0.5 - across, 0.2 + upright), new Point(0, 0.5, 0.2), CarriedOn.AXLE);
        Mounts mounts = new Mounts(
                Optional.of(new SpringLine.BetweenPoints(Pair.alike(ends))),
                Optional.empty(),
                Optional.empty(),
                List.of());
        double[] travels = Arrays.stream(in.numbers("vertical_force_N"))
                .map(force -> {
                    LinkedLiveAxle axle = new LinkedLiveAxle(
                            new Stance(End.REAR, PlainLinks.TRACK, 0, PlainLinks.RADIUS, 0, 0, 0),
                            PlainLinks.trailing(9, 0),
                            Optional.of(new Locator.Ideal(0.3, 0)),
                            mounts,
                            Optional.empty(),
                            SideView.ofAxleAlone(SideView.BrakesAt.WHEELS),
                            Optional.of(new Carried(2 * force, rate, free, Stops.NONE)));
                    OptionalDouble stands = PlainLinks.rest(axle).standsAt();
                    return MM.fromSi(stands.orElseThrow());
                })
                .toArray();
        return new Computed().with("travel_mm", travels);
    }
}
