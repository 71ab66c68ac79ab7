package evenhand.catalogue;

import static evenhand.catalogue.Shape.shape;
import static evenhand.catalogue.Slot.angle;
import static evenhand.catalogue.Slot.choice;
import static evenhand.catalogue.Slot.group;
import static evenhand.catalogue.Slot.length;
import static evenhand.catalogue.Slot.measure;
import static evenhand.catalogue.Slot.printed;
import static evenhand.catalogue.Slot.ratio;
import static evenhand.catalogue.Slot.text;

import evenhand.quantity.Dimension;
import evenhand.tyre.LateralLaw;
import evenhand.tyre.MagicFormula;
import evenhand.tyre.PacejkaCoefficients;
import evenhand.tyre.Tyre;
import evenhand.tyre.TyreEstimate;
import evenhand.tyre.TyreKind;
import evenhand.tyre.TyreSize;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The tyre: from what stands on its wall, by its law's numbers, or by a published set of coefficients. */
final class TyreCatalogue {
    private static final double DEGREE = Math.toRadians(1);
    private static final String BY_KIND = "from the kind of tyre";

    static final Slot<String> SIZE = text("size")
            .optional()
            .means("size of the tyre as it stands on its wall, for example 205/60R15, 165R13 or 6.00-15");

    static final Slot<TyreKind> KIND = choice("kind", kinds())
            .optional()
            .means("how the tyre is built and meant; absent coefficients are estimated from it");

    static final Slot<Double> PRESSURE = measure("pressure", Dimension.PRESSURE)
            .optional()
            .means("pressure of the cold tyre above the air's")
            .measured("gauge, cold", Amount.of(0.1e5))
            .usual(1.2e5, 3.5e5)
            .usualStep(Amount.of(0.2e5))
            .within(0, 1e6);

    static final Slot<PacejkaCoefficients> COEFFICIENTS = group("coefficients", coefficients())
            .optional()
            .means("published coefficients for side force and aligning moment, by their printed names, ISO sign");

    static final Slot<Double> LOADED_RADIUS = length("loadedRadius")
            .means("height of the wheel's centre above the ground at rest")
            .measured("steel rule from a level floor to the middle of the hub", Amount.of(0.002))
            .usual(0.22, 0.40)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(0.01))
            .within(0.01, 2)
            .estimatedBy(
                    v -> TyreEstimate.loadedRadius(TyreSize.parse(v.of(SIZE))),
                    "from the size of the tyre: 96.5 % of its free radius",
                    Amount.percent(2),
                    SIZE);

    static final Slot<Double> VERTICAL_RATE = measure("verticalRate", Dimension.STIFFNESS)
            .means("vertical stiffness of the tyre")
            .measured("loaded radius at two scale loads", Amount.percent(10))
            .usual(100e3, 400e3)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.percent(10))
            .within(1e3, 1e7)
            .estimatedBy(
                    v -> TyreEstimate.verticalRate(TyreSize.parse(v.of(SIZE)), v.of(KIND), v.of(PRESSURE)),
                    "from size, kind and pressure of the tyre",
                    Amount.percent(20),
                    SIZE,
                    KIND,
                    PRESSURE);

    static final Slot<Double> REFERENCE_LOAD = measure("referenceLoad", Dimension.FORCE)
            .means("load at which cornering stiffness and friction are stated")
            .usual(1500, 8000)
            .within(1, 1e6)
            .notNeededWith(COEFFICIENTS)
            .estimatedBy(
                    v -> TyreEstimate.REFERENCE_LOAD,
                    "3500 N, the load at which the estimates are stated",
                    Amount.NONE,
                    KIND);

    static final Slot<Double> CORNERING_STIFFNESS = measure("corneringStiffness", Dimension.CORNERING_STIFFNESS)
            .means("slope of side force over slip angle at the reference load")
            .measured("tyre test; or steer against timed laps on a marked circle", Amount.percent(5))
            .usual(200 / DEGREE, 2500 / DEGREE)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.percent(10))
            .within(0, 1e7)
            .unless(COEFFICIENTS)
            .estimatedBy(
                    v -> TyreEstimate.corneringStiffness(v.of(KIND), v.of(REFERENCE_LOAD)),
                    "from the kind of tyre and the reference load",
                    Amount.percent(25),
                    KIND,
                    REFERENCE_LOAD);

    static final Slot<Double> FRICTION = ratio("friction")
            .means("greatest side force over load, at the reference load")
            .measured("tyre test; or timed laps on a marked circle, on a closed course", Amount.of(0.05))
            .usual(0.6, 1.6)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.percent(5))
            .within(0, 5)
            .unless(COEFFICIENTS)
            .estimatedBy(
                    v -> TyreEstimate.friction(v.of(KIND), v.of(REFERENCE_LOAD)),
                    BY_KIND,
                    Amount.percent(10),
                    KIND,
                    REFERENCE_LOAD);

    static final Slot<Double> FRICTION_LOAD_SENSITIVITY = ratio("frictionLoadSensitivity")
            .means("part of the friction lost when the load grows by one reference load")
            .usual(0.02, 0.35)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(0.02))
            .within(0, 5)
            .unless(COEFFICIENTS)
            .estimatedBy(
                    v -> TyreEstimate.frictionLoadSensitivity(v.of(KIND), v.of(REFERENCE_LOAD)),
                    BY_KIND,
                    Amount.percent(35),
                    KIND,
                    REFERENCE_LOAD);

    static final Slot<Double> STIFFNESS_PEAK_LOAD_RATIO = ratio("stiffnessPeakLoadRatio")
            .means("load at which cornering stiffness is greatest, over the reference load")
            .usual(1.2, 4)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(0.1))
            .within(1, 100)
            .unless(COEFFICIENTS)
            .estimatedBy(v -> TyreEstimate.stiffnessPeakLoadRatio(v.of(KIND)), BY_KIND, Amount.percent(20), KIND);

    static final Slot<Double> SHAPE = ratio("shape")
            .means("shape C of the side force over slip")
            .usual(1.1, 1.7)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(0.05))
            .within(1, Math.nextDown(2.0))
            .unless(COEFFICIENTS)
            .estimatedBy(v -> TyreEstimate.shape(), BY_KIND, Amount.of(0.1), KIND);

    static final Slot<Double> CURVATURE = ratio("curvature")
            .means("curvature E of the side force about its peak")
            .usual(-5, 0.9)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(0.2))
            .within(-100, 1)
            .unless(COEFFICIENTS)
            .estimatedBy(v -> TyreEstimate.curvature(v.of(KIND)), BY_KIND, Amount.of(0.6), KIND);

    static final Slot<Double> CAMBER_THRUST_RATIO = ratio("camberThrustRatio")
            .means("slip angle that a lean of the wheel is worth, angle for angle")
            .usual(0, 0.2)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(0.02))
            .within(0, 5)
            .unless(COEFFICIENTS)
            .defaultsTo(0.0);

    static final Slot<Double> FRICTION_CAMBER_LOSS = ratio("frictionCamberLoss")
            .means("part of the friction lost per squared lean out of the turn, 1/rad^2")
            .usual(0, 10)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(0.5))
            .within(0, 1000)
            .unless(COEFFICIENTS)
            .defaultsTo(0.0);

    static final Slot<Double> BEST_LEAN_IN = angle("bestLeanIn")
            .means("lean into the turn at which friction is greatest")
            .usual(0, 5 * DEGREE)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(0.5 * DEGREE))
            .within(-1, 1)
            .unless(COEFFICIENTS)
            .defaultsTo(0.0);

    static final Slot<Double> PNEUMATIC_TRAIL = length("pneumaticTrail")
            .means(
                    "distance of the side force behind the middle of the contact patch, at the reference load and no slip")
            .usual(0, 0.06)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(0.005))
            .within(0, 1)
            .unless(COEFFICIENTS)
            .defaultsTo(0.0);

    static final Slot<Double> LONGITUDINAL_FRICTION_RATIO = ratio("longitudinalFrictionRatio")
            .means("greatest drive force over greatest side force")
            .usual(0.8, 1.3)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(0.05))
            .within(0.01, 10)
            .defaultsTo(1.0);

    static final Slot<Double> LONGITUDINAL_STIFFNESS = measure("longitudinalStiffness", Dimension.FORCE)
            .optional()
            .means("slope of drive force over slip ratio at the reference load")
            .usual(20e3, 200e3)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.percent(10))
            .within(1, 1e7);

    static final Shape<Tyre> TYRE = shape(
            "tyre",
            TyreCatalogue::tyre,
            SIZE,
            KIND,
            PRESSURE,
            LOADED_RADIUS,
            VERTICAL_RATE,
            REFERENCE_LOAD,
            COEFFICIENTS,
            CORNERING_STIFFNESS,
            FRICTION,
            FRICTION_LOAD_SENSITIVITY,
            STIFFNESS_PEAK_LOAD_RATIO,
            SHAPE,
            CURVATURE,
            CAMBER_THRUST_RATIO,
            FRICTION_CAMBER_LOSS,
            BEST_LEAN_IN,
            PNEUMATIC_TRAIL,
            LONGITUDINAL_FRICTION_RATIO,
            LONGITUDINAL_STIFFNESS);

    private TyreCatalogue() {}

    private static Map<String, TyreKind> kinds() {
        Map<String, TyreKind> kinds = new LinkedHashMap<>();
        kinds.put("cross-ply", TyreKind.CROSS_PLY);
        kinds.put("tall radial", TyreKind.TALL_RADIAL);
        kinds.put("touring radial", TyreKind.TOURING_RADIAL);
        kinds.put("performance radial", TyreKind.PERFORMANCE_RADIAL);
        kinds.put("semi-slick", TyreKind.SEMI_SLICK);
        return kinds;
    }

    private static Tyre tyre(Values v) {
        v.optional(SIZE).ifPresent(TyreSize::parse);
        return new Tyre(
                v.of(LOADED_RADIUS),
                v.of(VERTICAL_RATE),
                v.optional(COEFFICIENTS).<LateralLaw>map(c -> c).orElseGet(() -> law(v)),
                v.of(LONGITUDINAL_FRICTION_RATIO),
                v.maybe(LONGITUDINAL_STIFFNESS));
    }

    private static MagicFormula law(Values v) {
        return new MagicFormula(
                v.of(REFERENCE_LOAD),
                v.of(CORNERING_STIFFNESS),
                v.of(FRICTION),
                v.of(FRICTION_LOAD_SENSITIVITY),
                v.of(STIFFNESS_PEAK_LOAD_RATIO),
                v.of(SHAPE),
                v.of(CURVATURE),
                v.of(CAMBER_THRUST_RATIO),
                v.of(FRICTION_CAMBER_LOSS),
                v.of(BEST_LEAN_IN),
                v.of(PNEUMATIC_TRAIL));
    }

    private static Shape<PacejkaCoefficients> coefficients() {
        Map<PacejkaCoefficients.Name, Slot<Double>> slots = new EnumMap<>(PacejkaCoefficients.Name.class);
        for (PacejkaCoefficients.Name name : PacejkaCoefficients.Name.values()) {
            slots.put(name, coefficient(name));
        }
        List<Slot<?>> all = new ArrayList<>(slots.values());
        return shape(
                "coefficients",
                v -> {
                    Map<PacejkaCoefficients.Name, Double> values = new EnumMap<>(PacejkaCoefficients.Name.class);
                    slots.forEach((name, slot) -> v.optional(slot).ifPresent(value -> values.put(name, value)));
                    return new PacejkaCoefficients(values);
                },
                all.toArray(Slot<?>[]::new));
    }

    private static Slot<Double> coefficient(PacejkaCoefficients.Name name) {
        return switch (name) {
            case Fz0 ->
                printed(name.name(), Dimension.FORCE)
                        .means("rated load of the coefficients")
                        .within(1, 1e6);
            case R0 ->
                printed(name.name(), Dimension.LENGTH)
                        .optional()
                        .means("free radius that the coefficients go by")
                        .within(0, 2);
            case pCy1, pDy1, pKy1, pKy2 -> ratio(name.name()).means("coefficient " + name.name());
            default -> ratio(name.name()).optional().means("coefficient " + name.name());
        };
    }
}
