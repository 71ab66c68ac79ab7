package evenhand.catalogue;

import static evenhand.catalogue.Shape.shape;
import static evenhand.catalogue.Slot.curve;
import static evenhand.catalogue.Slot.groups;
import static evenhand.catalogue.Slot.text;

import evenhand.car.Curve;
import evenhand.car.Damper;
import evenhand.quantity.InvalidValue;
import java.util.List;
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

    static final Shape<Damper> DAMPER_AT_WHEEL = shape(
            "damperAtWheel",
            v -> damper(v, OptionalDouble.empty(), OptionalDouble.empty()),
            DAMPER_MOTION_RATIO,
            BUMP_NOW,
            REBOUND_NOW,
            SETTINGS,
            CHOSEN);

    static final Shape<Damper> DAMPER_ON_AXLE = shape(
            "damperOnAxle",
            v -> damper(v, v.maybe(SpringCatalogue.LEAN), v.maybe(DAMPER_BASE)),
            SpringCatalogue.LEAN,
            DAMPER_MOTION_RATIO.unless(SpringCatalogue.LEAN),
            DAMPER_BASE,
            BUMP_NOW,
            REBOUND_NOW,
            SETTINGS,
            CHOSEN);

    private static Damper damper(Values v, OptionalDouble lean, OptionalDouble base) {
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
