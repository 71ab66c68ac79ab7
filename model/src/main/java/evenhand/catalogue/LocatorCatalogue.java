package evenhand.catalogue;

import static evenhand.catalogue.PointCatalogue.JOINT_LIMIT;
import static evenhand.catalogue.PointCatalogue.LONGER;
import static evenhand.catalogue.PointCatalogue.PER_TURN;
import static evenhand.catalogue.PointCatalogue.ROD_RATE;
import static evenhand.catalogue.Shape.as;
import static evenhand.catalogue.Shape.kinds;
import static evenhand.catalogue.Shape.shape;
import static evenhand.catalogue.Slot.angle;
import static evenhand.catalogue.Slot.choice;
import static evenhand.catalogue.Slot.group;
import static evenhand.catalogue.Slot.inOrder;
import static evenhand.catalogue.Slot.length;
import static evenhand.catalogue.Slot.ratio;

import evenhand.car.LateralLocator;
import evenhand.car.links.Locator;
import evenhand.car.links.MiddlePoint;
import evenhand.car.links.Rod;
import evenhand.quantity.InvalidValue;
import java.util.List;
import java.util.Optional;

/** What holds a live axle sideways: by its height, or by its points. */
final class LocatorCatalogue {
    private static final double DEGREE = PointCatalogue.DEGREE;

    private record Crank(double upper, double lower, double tilt) {}

    private static final Slot<Double> CRANK_UPPER =
            pin("upper", "distance of the bell-crank's upper pin from its pivot");
    private static final Slot<Double> CRANK_LOWER =
            pin("lower", "distance of the bell-crank's lower pin from its pivot");
    private static final Slot<Double> CRANK_TILT = angle("tilt")
            .means("turn of the bell-crank as measured, top to the right positive")
            .measured("digital level", Amount.of(0.5 * DEGREE))
            .usual(-15 * DEGREE, 15 * DEGREE)
            .usualStep(Amount.of(2 * DEGREE))
            .within(-89 * DEGREE, 89 * DEGREE)
            .defaultsTo(0.0);

    private static final Slot<MiddlePoint> PIVOT = group("pivot", PointCatalogue.PIVOT)
            .byPoints()
            .optional()
            .means("pivot of the bell-crank; moving it moves the crank with it, the rods being made to fit");
    private static final Slot<Crank> CRANK = group(
                    "crank",
                    shape(
                            "crank",
                            v -> new Crank(v.of(CRANK_UPPER), v.of(CRANK_LOWER), v.of(CRANK_TILT)),
                            CRANK_UPPER,
                            CRANK_LOWER,
                            CRANK_TILT))
            .byPoints()
            .optional()
            .means("bell-crank");
    private static final Slot<MiddlePoint> ROD_END =
            PointCatalogue.single("end", "end of the rod on the part that does not carry the bell-crank");
    private static final Shape<Locator.WattRod> WATT_ROD = shape(
            "wattRod",
            v -> new Locator.WattRod(v.of(ROD_END), PointCatalogue.rod(v)),
            ROD_END,
            LONGER,
            PER_TURN,
            ROD_RATE,
            JOINT_LIMIT);
    private static final Slot<Locator.WattRod> UPPER_ROD =
            group("upperRod", WATT_ROD).byPoints().optional().means("rod from the bell-crank's upper pin");
    private static final Slot<Locator.WattRod> LOWER_ROD =
            group("lowerRod", WATT_ROD).byPoints().optional().means("rod from the bell-crank's lower pin");

    private static final Slot<MiddlePoint> PANHARD_BODY =
            PointCatalogue.single("body", "end of the rod on the body").optional();
    private static final Slot<MiddlePoint> PANHARD_AXLE =
            PointCatalogue.single("axle", "end of the rod on the axle").optional();

    /** A rod that is known by its height alone has no length. */
    private static final Slot<Double> LONGER_IF_ANY = LONGER.optional().byPoints();

    private static final Slot<Double> ROD_PER_TURN = PER_TURN.byPoints();
    private static final Slot<Double> PANHARD_RATE = ROD_RATE.byPoints();
    private static final Slot<Double> ROD_JOINT_LIMIT = JOINT_LIMIT.byPoints();

    static final Slot<Double> LOCATOR_HEIGHT = length("height")
            .measured("steel rule from a level floor", Amount.of(0.002))
            .usual(0.1, 0.4)
            .usualStep(Amount.of(0.01))
            .within(0.001, 2);

    static final Slot<Double> PIVOT_HEIGHT = LOCATOR_HEIGHT
            .means("height of the bell-crank's pivot above the ground at ride height; the axle rolls about it")
            .notNeededWith(PIVOT);

    static final Slot<LateralLocator.CarriedBy> CARRIED_BY = choice(
                    "carriedBy", inOrder("body", LateralLocator.CarriedBy.BODY, "axle", LateralLocator.CarriedBy.AXLE))
            .means("part that carries the bell-crank")
            .defaultsTo(LateralLocator.CarriedBy.BODY);

    static final Slot<Double> LOCATOR_PER_BUMP = ratio("perBump")
            .means("rise of the roll centre above the ground per bump travel, the axle standing still")
            .usual(-1, 0)
            .takes(Slot.Work.REBUILDING)
            .usualStep(Amount.of(0.1))
            .within(-2, 1)
            .defaultsTo(-0.5);

    static final Slot<Double> ROD_HEIGHT = LOCATOR_HEIGHT
            .means("height at which the rod crosses the middle of the car")
            .notNeededWith(PANHARD_BODY);
    static final Slot<Double> ROD_PER_BUMP = LOCATOR_PER_BUMP.within(-1, 0).notNeededWith(PANHARD_BODY);
    static final Slot<Double> LEAF_HEIGHT = LOCATOR_HEIGHT
            .means("height above the ground about which the axle rolls on its leaves")
            .takes(Slot.Work.REBUILDING)
            .goesBack(Slot.WayBack.OLD_PART);

    static final Shape<Given.OfLocator> LATERAL_LOCATOR = kinds(
            "lateralLocator",
            "kind",
            "what holds the axle sideways",
            as(
                    "watt",
                    shape(
                            "wattsLinkage",
                            LocatorCatalogue::watt,
                            PIVOT_HEIGHT,
                            CARRIED_BY,
                            PIVOT,
                            CRANK,
                            UPPER_ROD,
                            LOWER_ROD)),
            as(
                    "panhard",
                    shape(
                            "panhardRod",
                            LocatorCatalogue::panhard,
                            ROD_HEIGHT,
                            ROD_PER_BUMP,
                            PANHARD_BODY,
                            PANHARD_AXLE,
                            LONGER_IF_ANY,
                            ROD_PER_TURN,
                            PANHARD_RATE,
                            ROD_JOINT_LIMIT)),
            as(
                    "leaf springs",
                    shape(
                            "leafSprings",
                            v -> known(new LateralLocator.LeafSprings(v.of(LEAF_HEIGHT), v.of(LOCATOR_PER_BUMP))),
                            LEAF_HEIGHT,
                            LOCATOR_PER_BUMP)));

    private LocatorCatalogue() {}

    private static Slot<Double> pin(String key, String meaning) {
        return length(key)
                .means(meaning)
                .measured("calliper between the bolts", Amount.of(0.0005))
                .usual(0.03, 0.12)
                .takes(Slot.Work.REBUILDING)
                .within(0.001, 1);
    }

    private static Given.OfLocator known(LateralLocator locator) {
        return new Given.OfLocator(Optional.of(locator), Optional.empty());
    }

    private static Given.OfLocator watt(Values v) {
        Optional<LateralLocator> known =
                v.optional(PIVOT_HEIGHT).map(height -> new LateralLocator.WattsLinkage(height, v.of(CARRIED_BY)));
        List<Slot<?>> points = List.of(PIVOT, CRANK, UPPER_ROD, LOWER_ROD);
        if (points.stream().noneMatch(v::has)) {
            return new Given.OfLocator(known, Optional.empty());
        }
        require(v, points, "a Watt's linkage by points has its pivot, crank, upperRod and lowerRod");
        Crank crank = v.of(CRANK);
        return new Given.OfLocator(
                known,
                Optional.of(new Locator.WattPoints(
                        v.of(CARRIED_BY),
                        v.of(PIVOT),
                        crank.upper(),
                        crank.lower(),
                        crank.tilt(),
                        v.of(UPPER_ROD),
                        v.of(LOWER_ROD))));
    }

    private static Given.OfLocator panhard(Values v) {
        Optional<LateralLocator> known = v.optional(ROD_HEIGHT)
                .map(height -> new LateralLocator.PanhardRod(
                        height, v.optional(ROD_PER_BUMP).orElse(-0.5)));
        if (!v.has(PANHARD_BODY) && !v.has(PANHARD_AXLE)) {
            for (Slot<Double> slot : List.of(LONGER_IF_ANY, ROD_PER_TURN, PANHARD_RATE, ROD_JOINT_LIMIT)) {
                InvalidValue.require(
                        !v.has(slot), slot.key(), "belongs to a rod by points; give its body and axle, or take it out");
            }
            return new Given.OfLocator(known, Optional.empty());
        }
        require(v, List.of(PANHARD_BODY, PANHARD_AXLE), "a Panhard rod by points has its body and its axle end");
        Rod rod = new Rod(
                v.optional(LONGER_IF_ANY).orElse(0.0),
                v.maybe(PER_TURN),
                v.optional(ROD_RATE).orElse(Rod.ESTIMATED_RATE),
                v.maybe(JOINT_LIMIT));
        return new Given.OfLocator(
                known, Optional.of(new Locator.PanhardPoints(v.of(PANHARD_BODY), v.of(PANHARD_AXLE), rod)));
    }

    private static void require(Values v, List<? extends Slot<?>> points, String all) {
        for (Slot<?> slot : points) {
            InvalidValue.require(v.has(slot), slot.key(), "is missing: " + all);
        }
    }
}
