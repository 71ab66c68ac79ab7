package evenhand.catalogue;

import static evenhand.catalogue.PointCatalogue.JOINT_LIMIT;
import static evenhand.catalogue.PointCatalogue.LONGER;
import static evenhand.catalogue.PointCatalogue.PER_TURN;
import static evenhand.catalogue.PointCatalogue.ROD_RATE;
import static evenhand.catalogue.PointCatalogue.TIE_ROD_LONGER;
import static evenhand.catalogue.PointCatalogue.pair;
import static evenhand.catalogue.PointCatalogue.point;
import static evenhand.catalogue.PointCatalogue.rod;
import static evenhand.catalogue.PointCatalogue.single;
import static evenhand.catalogue.Shape.shape;
import static evenhand.catalogue.Slot.angle;
import static evenhand.catalogue.Slot.choice;
import static evenhand.catalogue.Slot.group;
import static evenhand.catalogue.Slot.groups;
import static evenhand.catalogue.Slot.length;
import static evenhand.catalogue.Slot.text;

import evenhand.car.links.Arm;
import evenhand.car.links.AxleLinks;
import evenhand.car.links.Clearance;
import evenhand.car.links.Leaf;
import evenhand.car.links.Link;
import evenhand.car.links.MiddleLink;
import evenhand.car.links.MiddlePoint;
import evenhand.car.links.Pair;
import evenhand.car.links.PropShaft;
import evenhand.car.links.SideView;
import evenhand.car.links.Strut;
import evenhand.car.links.TieRod;
import evenhand.car.links.TorqueArm;
import evenhand.car.links.WheelLinks;
import evenhand.quantity.InvalidValue;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The links of an axle by their points, its propeller shaft, and the gaps that are watched. */
final class LinkCatalogue {
    private static final double DEGREE = PointCatalogue.DEGREE;

    // The links of a wheel of its own.

    private static final Slot<Values> ARM_FRONT = point("front", "front pivot of the arm on the body");
    private static final Slot<Values> ARM_REAR = point("rear", "rear pivot of the arm on the body");
    private static final Slot<Values> ARM_OUTER = point("outer", "ball joint of the arm on the upright");
    private static final Shape<Pair<Arm>> ARM = pair(
            "arm",
            side -> new Arm(point(side, ARM_FRONT), point(side, ARM_REAR), point(side, ARM_OUTER)),
            ARM_FRONT,
            ARM_REAR,
            ARM_OUTER);

    private static final Slot<Values> STRUT_TOP = point("top", "top of the strut on the body");
    private static final Slot<Values> STRUT_BOTTOM =
            point("bottom", "lower end of the line on which the strut slides, on the upright");
    private static final Shape<Pair<Strut>> STRUT_SHAPE = pair(
            "strut", side -> new Strut(point(side, STRUT_TOP), point(side, STRUT_BOTTOM)), STRUT_TOP, STRUT_BOTTOM);

    private static final Shape<Values> SWING_SHAPE =
            PointCatalogue.values("swing", PointCatalogue.AHEAD, PointCatalogue.OUT);
    private static final Slot<Values> SWING = group("swing", SWING_SHAPE)
            .optional()
            .means(
                    "upright pivot about which the inner end turns, of a drop arm or an idler; without it a rack moves it");
    private static final Slot<Values> TIE_INNER = point("inner", "inner end of the tie rod");
    private static final Slot<Values> TIE_OUTER = point("outer", "outer end of the tie rod on the upright");
    private static final Shape<Pair<TieRod>> TIE_ROD_SHAPE = pair(
            "tieRod",
            side -> new TieRod(point(side, TIE_INNER), point(side, TIE_OUTER), rod(side), swing(side)),
            TIE_INNER,
            TIE_OUTER,
            TIE_ROD_LONGER,
            PER_TURN,
            JOINT_LIMIT,
            ROD_RATE,
            SWING);

    private static final Slot<Pair<Arm>> LOWER_ARM =
            group("lowerArm", ARM).optional().means("lower wishbone or arm");
    private static final Slot<Pair<Arm>> UPPER_ARM =
            group("upperArm", ARM).optional().means("upper wishbone");
    private static final Slot<Pair<Strut>> STRUT =
            group("strut", STRUT_SHAPE).optional().means("strut");
    private static final Slot<Pair<TieRod>> TIE_ROD = group("tieRod", TIE_ROD_SHAPE)
            .optional()
            .means("tie rod that steers the wheel, or holds its toe at the rear");

    private static final Shape<WheelLinks> WHEEL_LINKS_SHAPE =
            shape("wheelLinks", LinkCatalogue::wheelLinks, LOWER_ARM, UPPER_ARM, STRUT, TIE_ROD);

    static final Slot<WheelLinks> WHEEL_LINKS = group("links", WHEEL_LINKS_SHAPE)
            .byPoints()
            .optional()
            .means("links of each wheel by their points: two arms and a tie rod, or an arm, a strut and a tie rod");

    // The links of a live axle.

    private static final Slot<Values> BODY = point("body", "end on the body");
    private static final Slot<Values> AXLE = point("axle", "end on the axle");
    private static final Shape<Pair<Link>> LINK = pair(
            "axleLink",
            side -> new Link(point(side, BODY), point(side, AXLE), rod(side)),
            BODY,
            AXLE,
            LONGER,
            PER_TURN,
            ROD_RATE,
            JOINT_LIMIT);

    private static final Slot<MiddlePoint> MIDDLE_BODY = single("body", "end on the body");
    private static final Slot<MiddlePoint> MIDDLE_AXLE = single("axle", "end on the axle");
    private static final Shape<MiddleLink> MIDDLE_LINK_SHAPE = shape(
            "middleLink",
            v -> new MiddleLink(v.of(MIDDLE_BODY), v.of(MIDDLE_AXLE), rod(v)),
            MIDDLE_BODY,
            MIDDLE_AXLE,
            LONGER,
            PER_TURN,
            ROD_RATE,
            JOINT_LIMIT);

    private static final Slot<MiddlePoint> HANGER = single("hanger", "where its drop link hangs on the body");
    private static final Slot<MiddlePoint> ARM_END = single("end", "front end of the arm, which is part of the axle");
    private static final Shape<TorqueArm> TORQUE_ARM_SHAPE = shape(
            "torqueArm",
            v -> new TorqueArm(v.of(HANGER), v.of(ARM_END), rod(v)),
            HANGER,
            ARM_END,
            LONGER,
            PER_TURN,
            ROD_RATE,
            JOINT_LIMIT);

    private static final Slot<Values> FRONT_EYE = point("frontEye", "front eye of the leaf spring on the body");
    private static final Slot<Values> REAR_EYE = point("rearEye", "rear eye at the lower end of the shackle");
    private static final Slot<Values> SHACKLE = point("shackle", "upper pivot of the shackle on the body");
    private static final Slot<Values> SEAT = point("seat", "seat of the leaf spring on the axle");
    private static final Shape<Pair<Leaf>> LEAF_SHAPE = pair(
            "leaf",
            side -> new Leaf(point(side, FRONT_EYE), point(side, REAR_EYE), point(side, SHACKLE), point(side, SEAT)),
            FRONT_EYE,
            REAR_EYE,
            SHACKLE,
            SEAT);

    private static final Slot<Pair<Link>> LOWER_LINK =
            group("lowerLink", LINK).optional().means("lower links between body and axle");
    private static final Slot<Pair<Link>> UPPER_LINK =
            group("upperLink", LINK).optional().means("upper links between body and axle");
    private static final Slot<MiddleLink> MIDDLE_LINK =
            group("middleLink", MIDDLE_LINK_SHAPE).optional().means("single upper link of three");
    private static final Slot<TorqueArm> TORQUE_ARM = group("torqueArm", TORQUE_ARM_SHAPE)
            .optional()
            .means("arm that is part of the axle and hangs on the body at its front end");
    private static final Slot<Pair<Leaf>> LEAF =
            group("leaf", LEAF_SHAPE).optional().means("leaf springs that guide the axle");

    private static final Shape<AxleLinks> AXLE_LINKS_SHAPE =
            shape("axleLinks", LinkCatalogue::axleLinks, LOWER_LINK, UPPER_LINK, MIDDLE_LINK, TORQUE_ARM, LEAF);

    static final Slot<AxleLinks> AXLE_LINKS =
            group("links", AXLE_LINKS_SHAPE).byPoints().optional().means("links of the axle by their points");

    static final Slot<Double> OFFSET = length("offset")
            .byPoints()
            .optional()
            .means("how far the axle's middle stood left of the car's when it was measured")
            .measured("plumb lines from both wings to the rims", Amount.of(0.001))
            .usual(-0.02, 0.02)
            .takes(Slot.Work.REBUILDING)
            .within(-0.3, 0.3);

    // The propeller shaft.

    private static final Slot<MiddlePoint> GEARBOX =
            group("gearbox", PointCatalogue.CENTRE_POINT).means("joint behind the gearbox, on the body");
    private static final Slot<MiddlePoint> CENTRE = group("centre", PointCatalogue.CENTRE_POINT)
            .optional()
            .means("joint behind the centre bearing, on the body");
    private static final Slot<MiddlePoint> PINION =
            group("pinion", PointCatalogue.CENTRE_POINT).means("joint at the pinion, on the axle");
    private static final Slot<Double> GEARBOX_SLOPE =
            slope("gearboxSlope", "slope of the gearbox's own axis, front end up");
    private static final Slot<Double> GEARBOX_PLAN = slope(
                    "gearboxPlan", "angle of the gearbox's own axis in plan, front end to the left")
            .defaultsTo(0.0);
    private static final Slot<Double> PINION_SLOPE =
            slope("pinionSlope", "slope of the pinion's own axis, front end up");
    private static final Slot<Double> PINION_PLAN = slope(
                    "pinionPlan", "angle of the pinion's own axis in plan, front end to the left")
            .defaultsTo(0.0);

    private static final Shape<PropShaft> PROP_SHAFT_SHAPE = shape(
            "propShaft",
            v -> new PropShaft(
                    v.of(GEARBOX),
                    v.of(GEARBOX_SLOPE),
                    v.of(GEARBOX_PLAN),
                    v.optional(CENTRE),
                    v.of(PINION),
                    v.of(PINION_SLOPE),
                    v.of(PINION_PLAN)),
            GEARBOX,
            GEARBOX_SLOPE,
            GEARBOX_PLAN,
            CENTRE,
            PINION,
            PINION_SLOPE,
            PINION_PLAN);

    static final Slot<PropShaft> PROP_SHAFT =
            group("propShaft", PROP_SHAFT_SHAPE).byPoints().optional().means("propeller shaft by its joints");

    // Gaps.

    private static final Slot<String> GAP_NAME = text("name").means("name that the gap is told by");
    private static final Slot<Clearance.Part> GAP_ON = choice("on", parts()).means("part that carries it");
    private static final Shape<Clearance.From> FROM_SHAPE = shape(
            "clearanceFrom",
            v -> new Clearance.From(
                    v.of(GAP_ON),
                    new MiddlePoint(v.of(PointCatalogue.AHEAD), v.of(PointCatalogue.LEFT), v.of(PointCatalogue.UP))),
            GAP_ON,
            PointCatalogue.AHEAD,
            PointCatalogue.LEFT,
            PointCatalogue.UP);
    private static final Slot<Double> TO_AHEAD = PointCatalogue.AHEAD.optional();
    private static final Slot<Double> TO_LEFT = PointCatalogue.LEFT.optional();
    private static final Slot<Double> TO_UP = PointCatalogue.UP.optional();
    private static final Shape<Clearance.To> TO_SHAPE = shape(
            "clearanceTo",
            v -> new Clearance.To(v.of(GAP_ON), v.maybe(TO_AHEAD), v.maybe(TO_LEFT), v.maybe(TO_UP)),
            GAP_ON,
            TO_AHEAD,
            TO_LEFT,
            TO_UP);
    private static final Slot<Clearance.From> FROM = group("from", FROM_SHAPE).means("point from which the gap counts");
    private static final Slot<Clearance.To> TO = group("to", TO_SHAPE)
            .means("what it must keep away from: a point; a line with two coordinates; a plane with one");
    private static final Slot<Double> RADIUS = length("radius")
            .means("what comes off the distance, such as half the thickness of a tube")
            .usual(0, 0.1)
            .within(0, 2)
            .defaultsTo(0.0);
    private static final Slot<Double> LEAST = length("least")
            .means("least gap that is wanted")
            .usual(0, 0.05)
            .within(-1, 2)
            .defaultsTo(0.0);
    private static final Shape<Clearance> CLEARANCE = shape(
            "clearance",
            v -> new Clearance(v.of(GAP_NAME), v.of(FROM), v.of(TO), v.of(RADIUS), v.of(LEAST)),
            GAP_NAME,
            FROM,
            TO,
            RADIUS,
            LEAST);

    static final Slot<List<Clearance>> CLEARANCES =
            groups("clearances", CLEARANCE).byPoints().optional().means("gaps that are watched through the travel");

    static final Slot<SideView.BrakesAt> BRAKES_AT = choice("brakesAt", places())
            .means("what reacts the torque of this axle's brakes")
            .defaultsTo(SideView.BrakesAt.WHEELS);

    private LinkCatalogue() {}

    private static Slot<Double> slope(String key, String meaning) {
        return angle(key)
                .means(meaning)
                .measured("digital level on a machined face", Amount.of(0.2 * DEGREE))
                .usual(-10 * DEGREE, 10 * DEGREE)
                .takes(Slot.Work.REBUILDING)
                .within(-57 * DEGREE, 57 * DEGREE);
    }

    private static Optional<TieRod.Swing> swing(Sided side) {
        return side.both().has(SWING)
                ? Optional.of(new TieRod.Swing(
                        side.below(SWING).of(PointCatalogue.AHEAD),
                        side.below(SWING).of(PointCatalogue.OUT)))
                : Optional.empty();
    }

    private static WheelLinks wheelLinks(Values v) {
        List<String> missing = new ArrayList<>();
        for (Slot<?> slot : List.of(LOWER_ARM, TIE_ROD)) {
            if (!v.has(slot)) {
                missing.add(slot.key());
            }
        }
        if (!missing.isEmpty()) {
            throw new InvalidValue(
                    missing.get(0),
                    "is missing: a wheel is held by lowerArm, upperArm and tieRod, or by lowerArm, strut and tieRod");
        }
        if (v.has(STRUT)) {
            InvalidValue.require(
                    !v.has(UPPER_ARM),
                    UPPER_ARM.key(),
                    "is too much beside strut: each holds the upright's top; leave out one of the two");
            return new WheelLinks.StrutAndArm(v.of(LOWER_ARM), v.of(STRUT), v.of(TIE_ROD));
        }
        return new WheelLinks.DoubleWishbone(
                v.of(LOWER_ARM),
                v.optional(UPPER_ARM)
                        .orElseThrow(() -> new InvalidValue(
                                UPPER_ARM.key(),
                                "is missing: nothing holds the top of the upright; give it, or strut")),
                v.of(TIE_ROD));
    }

    private static AxleLinks axleLinks(Values v) {
        return new AxleLinks(
                v.optional(LOWER_LINK),
                v.optional(UPPER_LINK),
                v.optional(MIDDLE_LINK),
                v.optional(TORQUE_ARM),
                v.optional(LEAF));
    }

    private static Map<String, Clearance.Part> parts() {
        Map<String, Clearance.Part> words = new LinkedHashMap<>();
        for (Clearance.Part part : Clearance.Part.values()) {
            words.put(part.key(), part);
        }
        return words;
    }

    private static Map<String, SideView.BrakesAt> places() {
        Map<String, SideView.BrakesAt> words = new LinkedHashMap<>();
        for (SideView.BrakesAt place : SideView.BrakesAt.values()) {
            words.put(place.key(), place);
        }
        return words;
    }
}
