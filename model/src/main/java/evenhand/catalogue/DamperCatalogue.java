package evenhand.catalogue;

import static evenhand.catalogue.Shape.shape;
import static evenhand.catalogue.Slot.choice;
import static evenhand.catalogue.Slot.curve;
import static evenhand.catalogue.Slot.group;
import static evenhand.catalogue.Slot.groups;
import static evenhand.catalogue.Slot.length;
import static evenhand.catalogue.Slot.text;
import static evenhand.quantity.InvalidValue.require;

import evenhand.car.Curve;
import evenhand.car.Damper;
import evenhand.car.links.CarriedOn;
import evenhand.car.links.Dampers;
import evenhand.quantity.InvalidValue;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Dampers, at a wheel of its own and on a live axle. */
final class DamperCatalogue {
    static final Slot<Double> DAMPER_MOTION_RATIO =
            SpringCatalogue.motionRatio("damper travel over wheel travel").optional();
    static final Slot<Double> DAMPER_BASE = SpringCatalogue.BASE.optional();

    static final Slot<Curve> BUMP =
            curve("bump", Content.CurveOf.DAMPER).means("force of the damper over its speed as it shortens, positive");
    static final Slot<Curve> REBOUND = curve("rebound", Content.CurveOf.DAMPER)
            .means("force of the damper over its speed as it lengthens, positive");

    static final Slot<String> SETTING_NAME = text("name").means("name of the setting");

    static final Shape<Damper.Setting> SETTING = shape(
            "damperSetting",
            v -> new Damper.Setting(v.of(SETTING_NAME), new Damper.Forces(v.of(BUMP), v.of(REBOUND))),
            SETTING_NAME,
            BUMP,
            REBOUND);

    static final Slot<List<Damper.Setting>> SETTINGS = groups("settings", SETTING)
            .means("named pairs of curves that the damper can be set to")
            .defaultsTo(List.of());
    static final Slot<String> CHOSEN = text("setting").optional().means("name of the setting that is set");

    static final Slot<Curve> BUMP_NOW = BUMP.optional();
    static final Slot<Curve> REBOUND_NOW = REBOUND.optional();

    private static final String TOP_WORDS = "upper eye of the damper on the body";
    private static final String BOTTOM_WORDS = "lower eye of the damper on the moving part";
    static final Slot<Values> TOP =
            group("top", PointCatalogue.EYE).byPoints().optional().means(TOP_WORDS);
    private static final Slot<Values> BOTTOM_AT_WHEEL =
            group("bottom", PointCatalogue.EYE_ON).byPoints().optional().means(BOTTOM_WORDS);
    private static final Slot<Values> BOTTOM_ON_AXLE =
            group("bottom", PointCatalogue.EYE).byPoints().optional().means(BOTTOM_WORDS);
    private static final Slot<Values> RIGHT_AT_WHEEL =
            PointCatalogue.right("damperPointsAtWheel", TOP, BOTTOM_AT_WHEEL);
    private static final Slot<Values> RIGHT_ON_AXLE = PointCatalogue.right("damperPointsOnAxle", TOP, BOTTOM_ON_AXLE);

    private static final Slot<String> AROUND = choice("around", Map.of("strut", "strut"))
            .byPoints()
            .optional()
            .means("the strut, where the damper is inside it, instead of points of its own");

    private static final Slot<Double> CLOSED_LENGTH = length("closedLength")
            .byPoints()
            .optional()
            .means("length between its eyes when it is closed")
            .measured("tape on the bench", Amount.of(0.002))
            .usual(0.15, 0.6)
            .within(0.01, 3);
    private static final Slot<Double> OPEN_LENGTH = length("openLength")
            .byPoints()
            .optional()
            .means("length between its eyes when it is pulled out")
            .measured("tape on the bench", Amount.of(0.002))
            .usual(0.2, 0.9)
            .within(0.01, 3);

    static final Shape<Given.OfDamper> DAMPER_AT_WHEEL = shape(
            "damperAtWheel",
            v -> damper(v, OptionalDouble.empty(), OptionalDouble.empty(), BOTTOM_AT_WHEEL, RIGHT_AT_WHEEL),
            DAMPER_MOTION_RATIO,
            BUMP_NOW,
            REBOUND_NOW,
            SETTINGS,
            CHOSEN,
            TOP,
            BOTTOM_AT_WHEEL,
            AROUND,
            CLOSED_LENGTH,
            OPEN_LENGTH,
            RIGHT_AT_WHEEL);

    static final Shape<Given.OfDamper> DAMPER_ON_AXLE = shape(
            "damperOnAxle",
            v -> damper(v, v.maybe(SpringCatalogue.LEAN), v.maybe(DAMPER_BASE), BOTTOM_ON_AXLE, RIGHT_ON_AXLE),
            SpringCatalogue.LEAN,
            DAMPER_MOTION_RATIO.unless(SpringCatalogue.LEAN),
            DAMPER_BASE,
            BUMP_NOW,
            REBOUND_NOW,
            SETTINGS,
            CHOSEN,
            TOP,
            BOTTOM_ON_AXLE,
            AROUND,
            CLOSED_LENGTH,
            OPEN_LENGTH,
            RIGHT_ON_AXLE);

    private static Given.OfDamper damper(
            Values v, OptionalDouble lean, OptionalDouble base, Slot<Values> bottom, Slot<Values> right) {
        return new Given.OfDamper(forces(v, lean, base), points(v, bottom, right));
    }

    private static Optional<Dampers> points(Values v, Slot<Values> bottom, Slot<Values> right) {
        Optional<Dampers.Line> line = Optional.empty();
        if (v.has(AROUND)) {
            require(
                    !v.has(TOP) && !v.has(bottom),
                    "around",
                    "stands beside points of its own; leave out one of the two");
            line = Optional.of(new Dampers.AroundStrut());
        } else if (v.has(TOP) || v.has(bottom)) {
            require(v.has(TOP), TOP.key(), "is missing: a damper by points has its top and its bottom");
            require(v.has(bottom), bottom.key(), "is missing: a damper by points has its top and its bottom");
            line = Optional.of(new Dampers.BetweenEyes(Sided.pair(
                    v,
                    right,
                    side -> new Dampers.Ends(
                            PointCatalogue.eye(side, TOP),
                            PointCatalogue.eye(side, bottom),
                            bottom == BOTTOM_AT_WHEEL ? side.below(bottom).of(PointCatalogue.ON) : CarriedOn.AXLE))));
        }
        return line.map(known -> new Dampers(known, v.maybe(CLOSED_LENGTH), v.maybe(OPEN_LENGTH)));
    }

    private static Damper forces(Values v, OptionalDouble lean, OptionalDouble base) {
        if (v.has(BUMP_NOW) != v.has(REBOUND_NOW)) {
            throw new InvalidValue(
                    v.has(BUMP_NOW) ? REBOUND.key() : BUMP.key(), "is missing: a damper needs bump and rebound both");
        }
        Optional<Damper.Forces> own = v.optional(BUMP_NOW).map(bump -> new Damper.Forces(bump, v.of(REBOUND_NOW)));
        Optional<String> chosen = v.optional(CHOSEN);
        Optional<Damper.Forces> set = v.of(SETTINGS).stream()
                .filter(setting -> chosen.isPresent() && setting.name().equals(chosen.get()))
                .findFirst()
                .map(Damper.Setting::forces);
        return new Damper(
                v.maybe(DAMPER_MOTION_RATIO), lean, base, set.isPresent() ? set : own, v.of(SETTINGS), chosen);
    }

    private DamperCatalogue() {}
}
