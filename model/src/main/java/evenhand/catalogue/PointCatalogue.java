package evenhand.catalogue;

import static evenhand.catalogue.Shape.shape;
import static evenhand.catalogue.Slot.angle;
import static evenhand.catalogue.Slot.choice;
import static evenhand.catalogue.Slot.group;
import static evenhand.catalogue.Slot.length;
import static evenhand.catalogue.Slot.measure;

import evenhand.car.links.CarriedOn;
import evenhand.car.links.Dampers;
import evenhand.car.links.MiddlePoint;
import evenhand.car.links.Pair;
import evenhand.car.links.Point;
import evenhand.car.links.Rod;
import evenhand.quantity.Dimension;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Where a point is, how long a rod was made, and how a pair is given for its left side. */
final class PointCatalogue {
    static final double DEGREE = Math.toRadians(1);
    private static final String TO_FLOOR = "plumb line to the floor, tape from the axle's line and the car's middle";

    /** Shapes of what differs on the right, each made once. Stands first: shapes below ask for it. */
    private static final Map<Shape<?>, Shape<Values>> RIGHT = new HashMap<>();

    static final Slot<Double> AHEAD = length("ahead")
            .means("how far ahead of its axle's line, behind it negative")
            .measured(TO_FLOOR, Amount.of(0.003))
            .usual(-2, 2)
            .takes(Slot.Work.REBUILDING)
            .within(-9.99, 9.99);

    static final Slot<Double> OUT = length("out")
            .means("how far out from the car's middle, on either side")
            .measured(TO_FLOOR, Amount.of(0.003))
            .usual(0, 1)
            .takes(Slot.Work.REBUILDING)
            .within(0, 4.99)
            .because("it counts outwards on either side");

    static final Slot<Double> LEFT = length("left")
            .means("how far left of the car's middle, right of it negative")
            .measured(TO_FLOOR, Amount.of(0.003))
            .usual(-1, 1)
            .takes(Slot.Work.REBUILDING)
            .within(-4.99, 4.99);

    static final Slot<Double> UP = length("up")
            .means("how far up from the floor, the car standing at its ride height")
            .measured("steel rule from a level floor", Amount.of(0.002))
            .usual(0.05, 1)
            .takes(Slot.Work.REBUILDING)
            .within(-4.99, 4.99);

    static final Slot<Double> LEFT_OR_MIDDLE = LEFT.defaultsTo(0.0);

    static final Slot<Double> PIVOT_UP = UP.takes(Slot.Work.SETTING).usualStep(Amount.of(0.01));

    static final Slot<Double> LONGER = length("longer")
            .means("how much longer it was made than it was measured, so that the axle or wheel stands elsewhere")
            .measured("turns of the thread, or tape between both ends", Amount.of(0.0005))
            .usual(-0.03, 0.03)
            .usualStep(Amount.of(0.002))
            .within(-0.5, 0.5)
            .defaultsTo(0.0);

    static final Slot<Double> PER_TURN = length("perTurn")
            .optional()
            .means("how much longer a turn of its thread makes it")
            .usual(0.0005, 0.006)
            .within(1e-5, 0.1);

    static final Slot<Double> ROD_RATE = measure("rate", Dimension.STIFFNESS)
            .optional()
            .means(
                    "rate along its line with the bushes of both ends; it counts where the axle has more links than it needs")
            .measured("press and scale", Amount.percent(30))
            .usual(0.3e6, 20e6)
            .takes(Slot.Work.REBUILDING)
            .within(1, 1e10);

    static final Slot<Double> JOINT_LIMIT = angle("jointLimit")
            .optional()
            .means("greatest angle by which either end's joint may leave its plane")
            .usual(2 * DEGREE, 35 * DEGREE)
            .takes(Slot.Work.REBUILDING)
            .within(0.01 * DEGREE, 89 * DEGREE);

    static final Slot<CarriedOn> ON =
            choice("on", carriers()).means("moving part that carries it").defaultsTo(CarriedOn.UPRIGHT);

    static final Slot<Dampers.Bolt> BOLT = choice("bolt", bolts())
            .means("which way the bolt of the eye lies; upright is a stud")
            .defaultsTo(Dampers.Bolt.ACROSS);

    static final Slot<Double> TILT = angle("tilt")
            .means("tilt of the bolt: outer end up, front end up of one along, top inwards of a stud")
            .measured("digital level on the bolt", Amount.of(0.5 * DEGREE))
            .usual(-20 * DEGREE, 20 * DEGREE)
            .takes(Slot.Work.REBUILDING)
            .within(-89 * DEGREE, 89 * DEGREE)
            .defaultsTo(0.0);

    static final Slot<Double> SHIM = length("shim")
            .means("how far shims move the eye along its bolt: outwards, forwards, up")
            .measured("calliper", Amount.of(0.0002))
            .usual(-0.02, 0.02)
            .usualStep(Amount.of(0.002))
            .within(-0.199, 0.199)
            .defaultsTo(0.0);

    static final Shape<Values> POINT = values("point", AHEAD, OUT, UP);
    static final Shape<Values> POINT_ON = values("pointOnMovingPart", AHEAD, OUT, UP, ON);
    static final Shape<Values> EYE = values("damperEye", AHEAD, OUT, UP, BOLT, TILT, SHIM);
    static final Shape<Values> EYE_ON = values("damperEyeOnMovingPart", AHEAD, OUT, UP, BOLT, TILT, SHIM, ON);

    static final Shape<MiddlePoint> MIDDLE_POINT = middle("singlePoint", AHEAD, LEFT, UP);

    /** A point of what stands in the middle unless it is said otherwise. */
    static final Shape<MiddlePoint> CENTRE_POINT = middle("pointInTheMiddle", AHEAD, LEFT_OR_MIDDLE, UP);

    static final Shape<MiddlePoint> PIVOT = middle("crankPivot", AHEAD, LEFT_OR_MIDDLE, PIVOT_UP);

    private PointCatalogue() {}

    static Shape<Values> values(String name, Slot<?>... slots) {
        return shape(name, v -> v, slots);
    }

    private static Shape<MiddlePoint> middle(String name, Slot<Double> ahead, Slot<Double> left, Slot<Double> up) {
        return shape(name, v -> new MiddlePoint(v.of(ahead), v.of(left), v.of(up)), ahead, left, up);
    }

    /** A point of a pair. */
    static Slot<Values> point(String key, String meaning) {
        return group(key, POINT).means(meaning).byPoints();
    }

    /** A point of a thing that is there once. */
    static Slot<MiddlePoint> single(String key, String meaning) {
        return group(key, MIDDLE_POINT).means(meaning).byPoints();
    }

    static Point point(Sided side, Slot<Values> key) {
        Sided at = side.below(key);
        return new Point(at.of(AHEAD), at.of(OUT), at.of(UP));
    }

    static Dampers.Eye eye(Sided side, Slot<Values> key) {
        Sided at = side.below(key);
        return new Dampers.Eye(new Point(at.of(AHEAD), at.of(OUT), at.of(UP)), at.of(BOLT), at.of(TILT), at.of(SHIM));
    }

    static Rod rod(Values v) {
        return rod(new Sided(v, Optional.empty()));
    }

    static Rod rod(Sided side) {
        return new Rod(
                side.of(LONGER),
                side.maybe(PER_TURN),
                side.optional(ROD_RATE).orElse(Rod.ESTIMATED_RATE),
                side.maybe(JOINT_LIMIT));
    }

    /** A pair that is given for its left side; what differs on the right stands under {@code right}. */
    static <T> Shape<Pair<T>> pair(String name, Function<Sided, T> side, Slot<?>... slots) {
        Slot<Values> right = right(name, slots);
        List<Slot<?>> all = new ArrayList<>(List.of(slots));
        all.add(right);
        return shape(name, v -> Sided.pair(v, right, side), all.toArray(Slot<?>[]::new));
    }

    /** What differs on the right of slots that are given for the left. */
    static Slot<Values> right(String name, Slot<?>... slots) {
        return group("right", loose(name, List.of(slots)))
                .optional()
                .means("what differs on the right side; all else mirrors the left")
                .byPoints();
    }

    private static Shape<Values> loose(String name, List<Slot<?>> slots) {
        List<Slot<?>> optional = new ArrayList<>();
        for (Slot<?> slot : slots) {
            optional.add(
                    slot.content() instanceof Content.Group<?> below && below.shape() instanceof Shape.Plain<?> plain
                            ? looseGroup(slot, plain)
                            : slot.optional());
        }
        return values(name + "OnTheRight", optional.toArray(Slot<?>[]::new));
    }

    private static Slot<Values> looseGroup(Slot<?> slot, Shape.Plain<?> plain) {
        Shape<Values> own = RIGHT.get(plain);
        if (own == null) {
            own = loose(plain.name(), plain.slots());
            RIGHT.put(plain, own);
        }
        return group(slot.key(), own).optional().means(slot.meaning()).byPoints();
    }

    private static Map<String, CarriedOn> carriers() {
        Map<String, CarriedOn> words = new LinkedHashMap<>();
        for (CarriedOn on : List.of(CarriedOn.UPRIGHT, CarriedOn.LOWER_ARM, CarriedOn.UPPER_ARM)) {
            words.put(on.key(), on);
        }
        return words;
    }

    private static Map<String, Dampers.Bolt> bolts() {
        Map<String, Dampers.Bolt> words = new LinkedHashMap<>();
        for (Dampers.Bolt bolt : Dampers.Bolt.values()) {
            words.put(bolt.key(), bolt);
        }
        return words;
    }
}
