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
import static evenhand.quantity.InvalidValue.require;

import evenhand.quantity.Dimension;
import evenhand.quantity.InvalidValue;
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
import java.util.Optional;

/** The tyre: from what stands on its wall, by its law's numbers, or by a published set of coefficients. */
final class TyreCatalogue {
    private static final double DEGREE = Math.toRadians(1);
    private static final String BY_KIND = "from the kind of tyre; common practice";
    private static final String EXAMPLES = "\"205/60R15\", \"165SR13\" or \"6.00-15\"";

    static final Slot<String> SIZE = text("size")
            .optional()
            .means("size of the tyre as it stands on its wall, for example 205/60R15, 165SR13 or 6.00-15");

    private static final String NO_ASPECT =
            "the size states no aspect, so that a usual one was taken, with twice the tolerance";

    static final Slot<TyreKind> KIND = choice("kind", kinds())
            .optional()
            .means("how the tyre is built and meant; absent coefficients are estimated from size, kind and pressure");

    static final Slot<Double> PRESSURE = measure("pressure", Dimension.PRESSURE)
            .optional()
            .means("pressure of the cold tyre above the air's")
            .measured("gauge, cold", Amount.of(0.1e5))
            .usual(1.2e5, 3.5e5)
            .usualStep(Amount.of(0.2e5))
            .within(0.1e5, 10e5);

    static final Slot<Double> RIM_WIDTH = length("rimWidth")
            .optional()
            .means("width of the rim between its flanges; a wide one makes an estimated cornering stiffness greater")
            .measured("stamped on the rim, for example 6J for 6 in", Amount.of(0.005))
            .usual(0.09, 0.3)
            .takes(Slot.Work.REBUILDING)
            .usualStep(Amount.of(0.0127))
            .within(0.02, 0.6);

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
                    v -> TyreEstimate.loadedRadius(size(v)),
                    "from the size of the tyre: 96.5 % of its free radius; common practice",
                    Amount.percent(2),
                    SIZE)
            .surmisedWhere(TyreCatalogue::statesNoAspect, NO_ASPECT);

    static final Slot<Double> VERTICAL_RATE = measure("verticalRate", Dimension.STIFFNESS)
            .means("vertical stiffness of the tyre")
            .measured("loaded radius at two scale loads", Amount.percent(10))
            .usual(100e3, 400e3)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.percent(10))
            .within(1e3, 1e7)
            .estimatedBy(
                    v -> TyreEstimate.verticalRate(size(v), v.of(KIND), v.of(PRESSURE)),
                    "from size, kind and pressure of the tyre; Rhyne 2005, from memory",
                    Amount.percent(20),
                    SIZE,
                    KIND,
                    PRESSURE)
            .surmisedWhere(TyreCatalogue::statesNoAspect, NO_ASPECT);

    static final Slot<Double> REFERENCE_LOAD = measure("referenceLoad", Dimension.FORCE)
            .means("load at which cornering stiffness and friction are stated")
            .usual(1500, 8000)
            .within(1, 1e6)
            .notNeededWith(COEFFICIENTS)
            .estimatedBy(
                    v -> TyreEstimate.referenceLoad(size(v), v.of(PRESSURE)),
                    "from size and pressure of the tyre: 0.58 of the load that it is made to carry at 2.5 bar, times"
                            + " (pressure/2.2 bar)^0.585; that load by a fit of ours to standard load indices, the"
                            + " exponent by Clark 1981, both from memory",
                    Amount.percent(12),
                    SIZE,
                    KIND,
                    PRESSURE)
            .surmisedWhere(TyreCatalogue::statesNoAspect, NO_ASPECT);

    static final Slot<Double> CORNERING_STIFFNESS = measure("corneringStiffness", Dimension.CORNERING_STIFFNESS)
            .means("slope of side force over slip angle at the reference load")
            .measured("tyre test; or steer against timed laps on a marked circle", Amount.percent(5))
            .usual(200 / DEGREE, 2500 / DEGREE)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.percent(10))
            .within(0, 1e7)
            .unless(COEFFICIENTS)
            .estimatedBy(
                    v -> TyreEstimate.corneringStiffness(size(v), v.of(KIND), v.of(REFERENCE_LOAD), v.maybe(RIM_WIDTH)),
                    "from the kind of tyre and its reference load, more for a low section and a wide rim; cross-ply and"
                            + " tall radial after Gillespie 1992, else common practice",
                    Amount.percent(25),
                    SIZE,
                    KIND,
                    REFERENCE_LOAD)
            .surmisedWhere(TyreCatalogue::statesNoAspect, NO_ASPECT);

    static final Slot<Double> FRICTION = ratio("friction")
            .means("greatest side force over load, at the reference load")
            .measured("tyre test; or timed laps on a marked circle, on a closed course", Amount.of(0.05))
            .usual(0.6, 1.6)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.percent(5))
            .within(0, 5)
            .unless(COEFFICIENTS)
            .estimatedBy(v -> TyreEstimate.friction(v.of(KIND)), BY_KIND, Amount.percent(10), KIND);

    static final Slot<Double> FRICTION_LOAD_SENSITIVITY = ratio("frictionLoadSensitivity")
            .means("part of the friction lost when the load grows by one reference load")
            .usual(0.02, 0.35)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(0.02))
            .within(0, 5)
            .unless(COEFFICIENTS)
            .estimatedBy(v -> TyreEstimate.frictionLoadSensitivity(v.of(KIND)), BY_KIND, Amount.percent(35), KIND);

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
            .estimatedBy(
                    v -> TyreEstimate.camberThrustRatio(v.of(KIND)),
                    "from the kind of tyre; Gillespie 1992, from memory",
                    Amount.percent(50),
                    CORNERING_STIFFNESS,
                    KIND)
            .besideGiven(CORNERING_STIFFNESS, 0.0);

    static final Slot<Double> FRICTION_CAMBER_LOSS = ratio("frictionCamberLoss")
            .means("part of the friction lost per squared lean out of the turn, 1/rad^2")
            .usual(0, 10)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(0.5))
            .within(0, 1000)
            .unless(COEFFICIENTS)
            .estimatedBy(
                    v -> TyreEstimate.frictionCamberLoss(),
                    "as is usual; common practice",
                    Amount.percent(50),
                    CORNERING_STIFFNESS)
            .besideGiven(CORNERING_STIFFNESS, 0.0);

    static final Slot<Double> BEST_LEAN_IN = angle("bestLeanIn")
            .means("lean into the turn at which friction is greatest")
            .usual(0, 5 * DEGREE)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(0.5 * DEGREE))
            .within(-1, 1)
            .unless(COEFFICIENTS)
            .estimatedBy(
                    v -> TyreEstimate.bestLeanIn(),
                    "as is usual; common practice",
                    Amount.of(1.5 * DEGREE),
                    CORNERING_STIFFNESS)
            .besideGiven(CORNERING_STIFFNESS, 0.0);

    static final Slot<Double> PNEUMATIC_TRAIL = length("pneumaticTrail")
            .means(
                    "distance of the side force behind the middle of the contact patch, at the reference load and no slip")
            .usual(0, 0.06)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(0.005))
            .within(0, 1)
            .unless(COEFFICIENTS)
            .estimatedBy(
                    v -> TyreEstimate.pneumaticTrail(size(v), v.of(REFERENCE_LOAD), v.of(VERTICAL_RATE)),
                    "from size, reference load and vertical rate of the tyre: a third of half the contact's length, by"
                            + " the brush model (Pacejka 2012)",
                    Amount.percent(30),
                    CORNERING_STIFFNESS,
                    SIZE,
                    REFERENCE_LOAD,
                    VERTICAL_RATE)
            .surmisedWhere(TyreCatalogue::statesNoAspect, NO_ASPECT)
            .besideGiven(CORNERING_STIFFNESS, 0.0);

    static final Slot<Double> LONGITUDINAL_FRICTION_RATIO = ratio("longitudinalFrictionRatio")
            .means("greatest drive force over greatest side force")
            .usual(0.8, 1.3)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(0.05))
            .within(0.01, 10)
            .defaultsTo(1.0);

    static final Slot<Double> ROLLING_RADIUS = length("rollingRadius")
            .optional()
            .means(
                    "way that the wheel rolls in one turn, over 2 pi; from the size where absent, and as loadedRadius without one")
            .measured("roll the car by five turns of the wheel and divide the way by 10 pi", Amount.percent(0.5))
            .usual(0.22, 0.40)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(0.01))
            .within(0.01, 2);

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
            RIM_WIDTH,
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
            LONGITUDINAL_STIFFNESS,
            ROLLING_RADIUS);

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

    /** The size of a tyre, as far as it can be read. */
    static Optional<TyreSize> size(Entries tyre) {
        Optional<TyreKind> kind = tyre.get(KIND.key()).flatMap(word -> Optional.ofNullable(kinds().get(word.text())));
        return tyre.get(SIZE.key()).flatMap(text -> TyreSize.read(text.text(), kind));
    }

    /**
     * The size of the tyre.
     *
     * @throws InvalidValue if it is none, with the nearest that is
     */
    private static TyreSize size(Values v) {
        String text = v.of(SIZE);
        return TyreSize.read(text, v.optional(KIND)).orElseThrow(() -> {
            boolean hasNumbers = text.matches(".*\\d.*\\d.*");
            String nearest = Nearest.toBeginning(text.strip(), TyreSize.OFTEN_MET);
            return new InvalidValue(
                    SIZE.key(),
                    "is no tyre size that is understood"
                            + (hasNumbers ? "; the nearest one that is, is \"" + nearest + "\"" : "")
                            + "; write it as on the tyre, for example " + EXAMPLES);
        });
    }

    private static boolean statesNoAspect(Values v) {
        return !size(v).statesAspect();
    }

    /** @throws InvalidValue if no tyre of this size is mounted on a rim so narrow */
    private static void fits(TyreSize size, double rimWidth) {
        require(
                rimWidth >= TyreEstimate.NARROWEST_RIM * size.width(),
                RIM_WIDTH.key(),
                "is less than a third of the tyre's width, which no rim is; give the width between the flanges, for"
                        + " example \"6 in\"");
    }

    private static Tyre tyre(Values v) {
        if (v.has(SIZE)) {
            TyreSize size = size(v);
            v.optional(RIM_WIDTH).ifPresent(width -> fits(size, width));
        }
        return new Tyre(
                v.of(LOADED_RADIUS),
                v.of(VERTICAL_RATE),
                v.optional(COEFFICIENTS).<LateralLaw>map(c -> c).orElseGet(() -> law(v)),
                v.of(LONGITUDINAL_FRICTION_RATIO),
                v.maybe(LONGITUDINAL_STIFFNESS),
                v.optional(ROLLING_RADIUS).orElseGet(() -> rolling(v)));
    }

    private static double rolling(Values v) {
        return v.has(SIZE)
                ? TyreEstimate.rollingRadius(size(v), TyreSize.isCrossPly(v.of(SIZE), v.optional(KIND)))
                : v.of(LOADED_RADIUS);
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
