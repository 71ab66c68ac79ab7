package evenhand.catalogue;

import static evenhand.catalogue.Shape.shape;
import static evenhand.catalogue.Slot.choice;
import static evenhand.catalogue.Slot.flag;
import static evenhand.catalogue.Slot.group;
import static evenhand.catalogue.Slot.inOrder;
import static evenhand.catalogue.Slot.length;
import static evenhand.catalogue.Slot.measure;
import static evenhand.catalogue.Slot.names;
import static evenhand.catalogue.Slot.text;
import static evenhand.catalogue.Slot.wordOrNumbers;
import static evenhand.quantity.InvalidValue.require;

import evenhand.car.links.MiddlePoint;
import evenhand.car.mounts.Facing;
import evenhand.car.mounts.Mount;
import evenhand.car.mounts.PartEnd;
import evenhand.quantity.Dimension;
import evenhand.quantity.InvalidValue;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** What carries the ends of links, springs, dampers and bars, by names of the shop's own. Usual ranges: common practice, no source. */
final class MountCatalogue {
    private static final double MM = 1e-3;
    private static final double MPA = 1e6;
    private static final double DEGREE = Math.toRadians(1);
    private static final String CALLIPER = "calliper";
    private static final String CARRIED = "[\"rear.lowerLinkLeft.body\"]";

    private static final Slot<List<String>> CARRIES = names("carries", CARRIED)
            .means("ends that it holds, each as axle, part and end, such as rear.lowerLinkLeft.body");

    private static final Slot<Facing> FACES = wordOrNumbers(
                    "faces",
                    facings(),
                    3,
                    "[0, 0.5, -1]",
                    along -> new Facing(along.get(0), along.get(1), along.get(2)))
            .means("the way that its held face looks, from what holds it outwards to the load: a word, or three numbers"
                    + " forwards, to the left and up");

    private static final Slot<MiddlePoint> AT = group("at", PointCatalogue.MIDDLE_POINT)
            .optional()
            .means("where it is, of the axle that carries names first; at the first of its ends where absent");

    private static final Slot<Double> DIAMETER = length("diameter")
            .means("diameter of the pin or bolt")
            .measured(CALLIPER, Amount.of(0.1 * MM))
            .usual(6 * MM, 30 * MM)
            .goesBack(Slot.WayBack.OLD_PART)
            .usualStep(Amount.of(2 * MM))
            .within(MM, 0.2);
    private static final Slot<Mount.Shear> SHEAR = choice(
                    "shear",
                    inOrder(Mount.Shear.SINGLE.key(), Mount.Shear.SINGLE, Mount.Shear.DOUBLE.key(), Mount.Shear.DOUBLE))
            .means("whether it is held on one side or between two cheeks");
    private static final Slot<Double> OVERHANG = length("overhang")
            .means("from the held face to the middle of the load, in single shear")
            .measured("steel rule", Amount.of(MM))
            .usual(0, 100 * MM)
            .takes(Slot.Work.REBUILDING)
            .usualStep(Amount.of(5 * MM))
            .within(0, 1)
            .defaultsTo(0.0);
    private static final Slot<Double> SPAN = length("span")
            .means("between the middles of the two cheeks, in double shear")
            .measured("steel rule", Amount.of(MM))
            .usual(0, 150 * MM)
            .takes(Slot.Work.REBUILDING)
            .usualStep(Amount.of(5 * MM))
            .within(0, 1)
            .defaultsTo(0.0);
    private static final Slot<Boolean> THREAD_IN_PLANE = flag("threadInPlane")
            .means("whether its thread reaches into the plane that shears")
            .defaultsTo(false);
    private static final Slot<String> PROPERTY_CLASS =
            text("propertyClass").optional().means("property class of the bolt's steel, such as 8.8, as its head says");
    private static final Slot<Double> YIELD = measure("yield", Dimension.PRESSURE)
            .optional()
            .unless(PROPERTY_CLASS)
            .means("stress at which its steel yields, where it has no property class")
            .measured("the steel's data sheet", Amount.percent(5))
            .usual(150 * MPA, 1300 * MPA)
            .goesBack(Slot.WayBack.OLD_PART)
            .usualStep(Amount.percent(20))
            .within(MPA, 5000 * MPA);
    private static final Slot<Mount.Pin> PIN = group(
                    "pin",
                    shape(
                            "pin",
                            v -> new Mount.Pin(
                                    v.of(DIAMETER),
                                    v.of(SHEAR),
                                    v.of(OVERHANG),
                                    v.of(SPAN),
                                    v.of(THREAD_IN_PLANE),
                                    v.optional(PROPERTY_CLASS)
                                            .map(Mount.Pin::yieldOf)
                                            .map(OptionalDouble::of)
                                            .orElseGet(() -> v.maybe(YIELD))),
                            DIAMETER,
                            SHEAR,
                            OVERHANG,
                            SPAN,
                            THREAD_IN_PLANE,
                            PROPERTY_CLASS,
                            YIELD))
            .optional()
            .means("pin or bolt that takes the load in bending and shear");

    private static final Slot<Double> LENGTH =
            plate("length", "length of a plate").optional();
    private static final Slot<Double> WIDTH = plate("width", "width of a plate").optional();
    private static final Slot<Double> OUTER = length("outer")
            .unless(LENGTH)
            .means("outer diameter of a round washer or cup")
            .measured(CALLIPER, Amount.of(0.2 * MM))
            .usual(12 * MM, 150 * MM)
            .goesBack(Slot.WayBack.OLD_PART)
            .usualStep(Amount.of(5 * MM))
            .within(MM, 1);
    private static final Slot<Double> HOLE = length("hole")
            .means("diameter of the hole in it")
            .measured(CALLIPER, Amount.of(0.1 * MM))
            .usual(0, 60 * MM)
            .goesBack(Slot.WayBack.OLD_PART)
            .usualStep(Amount.of(2 * MM))
            .within(0, 1)
            .defaultsTo(0.0);
    private static final Slot<Double> SHEET = length("sheet")
            .optional()
            .means("thickness of the sheet that it lies on")
            .measured(CALLIPER, Amount.of(0.1 * MM))
            .usual(0.6 * MM, 6 * MM)
            .takes(Slot.Work.REBUILDING)
            .usualStep(Amount.of(0.5 * MM))
            .within(0.1 * MM, 0.1);
    private static final Slot<Mount.Spread> SPREAD = group(
                    "spread", shape("spread", MountCatalogue::spread, OUTER, LENGTH, WIDTH, HOLE, SHEET))
            .optional()
            .means("what spreads the load on sheet: a round washer by outer, or a plate by length and width");

    private static final Slot<Double> TILT = turning("tilt", "turning stiffness of the eye's rubber across the bolt");
    private static final Slot<Double> TWIST = turning("twist", "turning stiffness of the eye's rubber about the bolt");
    private static final Slot<Double> TIGHTENED_AT = length("tightenedAt")
            .means("travel of both wheels in bump at which its bolt was tightened; negative in droop")
            .measured("steel rule, against the ride height", Amount.of(5 * MM))
            .usual(-150 * MM, 50 * MM)
            .usualStep(Amount.of(10 * MM))
            .within(-0.499, 0.499)
            .defaultsTo(0.0);
    private static final Slot<Mount.Eye> EYE = group(
                    "eye",
                    shape(
                            "eye",
                            v -> new Mount.Eye(v.of(TILT), v.of(TWIST), v.of(TIGHTENED_AT)),
                            TILT,
                            TWIST,
                            TIGHTENED_AT))
            .optional()
            .means("rubber bush in it; a joint that swivels freely where absent");

    private static final Slot<MiddlePoint> LEFT =
            group("left", PointCatalogue.MIDDLE_POINT).means("support of the beam on the left");
    private static final Slot<MiddlePoint> RIGHT =
            group("right", PointCatalogue.MIDDLE_POINT).means("support of the beam on the right");
    private static final Slot<Mount.Between> BETWEEN = group(
                    "between", shape("between", v -> new Mount.Between(v.of(LEFT), v.of(RIGHT)), LEFT, RIGHT))
            .optional()
            .means("where a beam that carries it ends, on rails or sills");

    private static final Slot<Double> RATED_LOAD = measure("ratedLoad", Dimension.FORCE)
            .optional()
            .means("load that its maker allows")
            .measured("the maker's sheet", Amount.NONE)
            .usual(1000, 200e3)
            .goesBack(Slot.WayBack.OLD_PART)
            .usualStep(Amount.percent(20))
            .within(1, 5e6);

    private static final Shape<Mount> MOUNT =
            shape("mount", MountCatalogue::mount, CARRIES, FACES, AT, PIN, SPREAD, EYE, BETWEEN, RATED_LOAD);

    static final Shape<Map<String, Mount>> MOUNTS =
            new Shape.ByName<>("mounts", MOUNT, "a bracket, plate or bolted face, and the ends that it holds");

    private MountCatalogue() {}

    private static Map<String, Facing> facings() {
        Map<String, Facing> words = new LinkedHashMap<>();
        words.put("forward", Facing.FORWARD);
        words.put("back", Facing.BACK);
        words.put("left", Facing.LEFT);
        words.put("right", Facing.RIGHT);
        words.put("up", Facing.UP);
        words.put("down", Facing.DOWN);
        return words;
    }

    private static Slot<Double> plate(String key, String meaning) {
        return length(key)
                .means(meaning)
                .measured("steel rule", Amount.of(0.5 * MM))
                .usual(20 * MM, 400 * MM)
                .goesBack(Slot.WayBack.OLD_PART)
                .usualStep(Amount.of(10 * MM))
                .within(MM, 2);
    }

    private static Slot<Double> turning(String key, String meaning) {
        return measure(key, Dimension.ROLL_STIFFNESS)
                .means(meaning)
                .measured("spring balance on a bar", Amount.percent(20))
                .usual(0, 300 / DEGREE)
                .goesBack(Slot.WayBack.OLD_PART)
                .usualStep(Amount.percent(20))
                .within(0, 1e7);
    }

    private static Mount mount(Values v) {
        return new Mount(
                "unnamed",
                ends(v.of(CARRIES)),
                v.of(FACES),
                v.optional(AT),
                v.optional(PIN),
                v.optional(SPREAD),
                v.optional(EYE),
                v.optional(BETWEEN),
                v.maybe(RATED_LOAD));
    }

    private static List<PartEnd> ends(List<String> carries) {
        List<PartEnd> ends = new ArrayList<>();
        for (int i = 0; i < carries.size(); i++) {
            try {
                ends.add(PartEnd.of(carries.get(i)));
            } catch (InvalidValue invalid) {
                throw new InvalidValue(CARRIES.key() + "[" + i + "]", String.valueOf(invalid.getMessage()));
            }
        }
        return ends;
    }

    private static Mount.Spread spread(Values v) {
        if (v.has(OUTER)) {
            require(!v.has(WIDTH), WIDTH.key(), "stands beside outer; give outer, or length and width");
            return new Mount.Washer(v.of(OUTER), v.of(HOLE), v.maybe(SHEET));
        }
        return new Mount.Plate(
                v.of(LENGTH),
                v.optional(WIDTH)
                        .orElseThrow(() -> new InvalidValue(
                                WIDTH.key(),
                                "is missing: a plate has length and width; give the width, or outer alone")),
                v.of(HOLE),
                v.maybe(SHEET));
    }
}
