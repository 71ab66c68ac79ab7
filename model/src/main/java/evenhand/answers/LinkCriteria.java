package evenhand.answers;

import evenhand.answers.Criterion.Reading;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.linkage.AxleState.LiveFigures;
import evenhand.linkage.AxleState.OwnLinks;
import evenhand.linkage.AxleState.ShaftFigures;
import evenhand.linkage.AxleState.WheelFigures;
import evenhand.linkage.LinkPlace;
import evenhand.linkage.LinkPlaces.Where;
import evenhand.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * The figures of links by points that a car is judged by, at rest and at both ends of the travel. Signs as in an answer of
 * the travel. A figure that either axle may have is that of the axle which has it, in the order told; "front" or "rear" before
 * its name asks for one of them.
 */
public final class LinkCriteria {
    private static final List<End> REAR_FIRST = List.of(End.REAR, End.FRONT);
    private static final List<End> FRONT_FIRST = List.of(End.FRONT, End.REAR);

    /** What a live axle's own figures need. */
    private static final String LIVE_AXLE = "a live axle on links";

    private static final String SHAFT = "a live axle on links with a \"propShaft\"";
    private static final String OWN_LINKS = "independent wheels on links";

    /** All that is of an axle, whichever is meant, each at rest and at either end of the travel. */
    private static final List<Criterion> ALL_PLACES = new ArrayList<>();
    /** Names without axle and place. */
    private static final List<Criterion> PLAIN = new ArrayList<>();

    /** Of a live axle the height on its middle plane; of wheels where their force lines cross. */
    public static final Criterion REAR_ROLL_CENTRE = rollCentre(End.REAR);

    public static final Criterion FRONT_ROLL_CENTRE = rollCentre(End.FRONT);
    public static final Criterion ROLL_STEER = either(
            "roll steer",
            REAR_FIRST,
            "%",
            2,
            0.5,
            "links",
            at -> just(at.state().rollSteer()));
    public static final Criterion ANTI_SQUAT = declared(
            "anti-squat",
            List.of(End.REAR),
            "%",
            1,
            2,
            "links at a driven rear axle",
            at -> at.state().antiSquat());
    public static final Criterion ANTI_DIVE = declared(
            "anti-dive",
            List.of(End.FRONT),
            "%",
            1,
            2,
            "links",
            at -> at.state().antiDive());
    public static final Criterion ANTI_LIFT = either(
            "anti-lift",
            REAR_FIRST,
            "%",
            1,
            2,
            "links, at the front of a driven axle",
            at -> at.state().antiLift());
    public static final Criterion PINION_SLOPE =
            either("pinion slope", REAR_FIRST, "deg", 2, 0.1, SHAFT, shaft(ShaftFigures::pinionSlope));
    /** The greatest of the shaft's joints. */
    public static final Criterion JOINT_ANGLE =
            either("joint angle", REAR_FIRST, "deg", 2, 0.1, SHAFT, shaft(ShaftFigures::greatestJointAngle));

    public static final Criterion LEFT_OVER_JOINT_ANGLE =
            either("left-over joint angle", REAR_FIRST, "deg", 2, 0.1, SHAFT, shaft(ShaftFigures::residualJointAngle));
    public static final Criterion AXLE_SIDEWAYS =
            either("axle sideways", REAR_FIRST, "mm", 2, 0.5, LIVE_AXLE, live(LiveFigures::sideShift));
    public static final Criterion DROP_LINK_LEAN = either(
            "drop link lean",
            REAR_FIRST,
            "deg",
            2,
            0.2,
            "a \"torqueArm\" whose drop link stands upright",
            LinkPlace::dropLinkLean);
    /** Upper less lower, of the left damper. */
    public static final Criterion EYE_DIFFERENCE = either(
            "eye difference",
            REAR_FIRST,
            "deg",
            2,
            0.1,
            "links, and \"top\" and \"bottom\" of its damper by points",
            at -> eyeDifference(at.state().left()));

    public static final Criterion BUMP_STEER =
            either("bump steer", FRONT_FIRST, "deg/m", 2, 0.5, OWN_LINKS, LinkPlace::bumpSteer);
    /** Mean of both wheels. */
    public static final Criterion CASTER =
            either("caster", FRONT_FIRST, "deg", 2, 0.1, OWN_LINKS, LinkCriteria::caster);

    /** All that can be an aim. */
    public static final List<Criterion> ALL = List.copyOf(ALL_PLACES);

    /** Each figure once, at rest, of the axle that has it: what a comparison tells, and a list of names. */
    public static final List<Criterion> AT_REST = List.copyOf(PLAIN);

    /** The same as they are judged. */
    public static final List<Judged> JUDGED = AT_REST.stream()
            .map(criterion -> new Judged(criterion, OptionalDouble.empty()))
            .toList();

    private LinkCriteria() {}

    private static Criterion rollCentre(End end) {
        return declared(
                end.key() + " roll centre",
                List.of(end),
                "mm",
                1,
                2,
                "links",
                at -> at.state().rollCentreHeight());
    }

    /** Of whichever axle has it, in this order, and of either by name. */
    private static Criterion either(
            String name,
            List<End> axles,
            String unit,
            int digits,
            double noticeable,
            String needs,
            Function<LinkPlace, OptionalDouble> si) {
        for (End end : axles) {
            inEachPlace(end.key() + " " + name, List.of(end), unit, digits, noticeable, needs, si);
        }
        return declared(name, axles, unit, digits, noticeable, needs, si);
    }

    private static Criterion declared(
            String name,
            List<End> axles,
            String unit,
            int digits,
            double noticeable,
            String needs,
            Function<LinkPlace, OptionalDouble> si) {
        Criterion atRest = inEachPlace(name, axles, unit, digits, noticeable, needs, si);
        PLAIN.add(atRest);
        return atRest;
    }

    private static Criterion inEachPlace(
            String name,
            List<End> axles,
            String unit,
            int digits,
            double noticeable,
            String needs,
            Function<LinkPlace, OptionalDouble> si) {
        Unit shown = Unit.of(unit);
        List<Criterion> places = new ArrayList<>();
        for (Where where : Where.values()) {
            String inFull = (name + " " + where.words()).strip();
            places.add(new Criterion(
                    inFull, shown, digits, shown.toSi(noticeable), new Reading.OfLinks(axles, where, needs, si)));
        }
        ALL_PLACES.addAll(places);
        return places.get(0);
    }

    /** The same figure elsewhere in the travel. */
    public static Criterion in(Where where, Criterion atRest) {
        String name = (atRest.name() + " " + where.words()).strip();
        return ALL.stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
    }

    /** The axle of a car as read whose figure it is: the first that has it at rest. */
    public static Optional<End> axle(Criterion criterion, Car car) {
        LinkAnswers links = LinkAnswers.of(car, car.settled());
        return criterion.links().flatMap(reading -> reading.axle(links));
    }

    /** Whether no axle of a car as read has such a figure, at rest. Those that are of no link are never missing. */
    public static boolean isMissing(Criterion criterion, Car car) {
        return criterion.ofLinks() && axle(criterion, car).isEmpty();
    }

    /** Those that can be nothing below zero, so that a figure at zero passes it nowhere. */
    static boolean isSize(Criterion criterion) {
        return criterion.name().contains(JOINT_ANGLE.name());
    }

    private static OptionalDouble just(double si) {
        return OptionalDouble.of(si);
    }

    private static Function<LinkPlace, OptionalDouble> live(Function<LiveFigures, Double> si) {
        return at -> at.state().live().map(si).map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }

    private static Function<LinkPlace, OptionalDouble> shaft(Function<ShaftFigures, Double> si) {
        return at -> at.state()
                .live()
                .flatMap(LiveFigures::shaft)
                .map(si)
                .map(OptionalDouble::of)
                .orElseGet(OptionalDouble::empty);
    }

    private static OptionalDouble eyeDifference(WheelFigures left) {
        return left.upperEye().isPresent() && left.lowerEye().isPresent()
                ? just(left.upperEye().getAsDouble() - left.lowerEye().getAsDouble())
                : OptionalDouble.empty();
    }

    private static OptionalDouble caster(LinkPlace at) {
        Optional<OwnLinks> left = at.state().left().own();
        Optional<OwnLinks> right = at.state().right().own();
        return left.isPresent() && right.isPresent()
                ? just((left.get().caster() + right.get().caster()) / 2)
                : OptionalDouble.empty();
    }
}
