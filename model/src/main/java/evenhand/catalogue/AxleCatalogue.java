package evenhand.catalogue;

import static evenhand.catalogue.Shape.as;
import static evenhand.catalogue.Shape.kinds;
import static evenhand.catalogue.Shape.shape;
import static evenhand.catalogue.Slot.angle;
import static evenhand.catalogue.Slot.choice;
import static evenhand.catalogue.Slot.group;
import static evenhand.catalogue.Slot.inOrder;
import static evenhand.catalogue.Slot.length;
import static evenhand.catalogue.Slot.mass;
import static evenhand.catalogue.Slot.measure;
import static evenhand.catalogue.Slot.ratio;

import evenhand.car.Alignment;
import evenhand.car.Axle;
import evenhand.car.Bar;
import evenhand.car.Damper;
import evenhand.car.LateralLocator;
import evenhand.car.Spring;
import evenhand.car.Stops;
import evenhand.car.Unsprung;
import evenhand.quantity.Dimension;
import evenhand.tyre.Tyre;

/** An axle: wheels on links of their own, or a live axle with what locates it. */
final class AxleCatalogue {
    private static final double DEGREE = Math.toRadians(1);

    static final Slot<Double> TRACK = length("track")
            .means("distance between the middles of the contact patches")
            .measured("tape between plumb lines", Amount.of(0.003))
            .usual(1.0, 1.75)
            .takes(Slot.Work.REBUILDING)
            .usualStep(Amount.of(0.02))
            .within(0.1, 5);

    static final Slot<Double> UNSPRUNG_MASS = mass("unsprungMass")
            .means("mass of the whole axle that the springs do not carry")
            .measured("scales, parts by parts", Amount.percent(12))
            .usual(40, 200)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.percent(10))
            .within(0.1, 5000);

    static final Slot<Tyre> TYRE = group("tyre", TyreCatalogue.TYRE).means("tyre of this axle, both being alike");

    static final Slot<Double> UNSPRUNG_HEIGHT = length("unsprungHeight")
            .means("height of the unsprung mass's centre above the ground")
            .measured("that of the hub, by steel rule", Amount.of(0.02))
            .usual(0.2, 0.4)
            .takes(Slot.Work.ANOTHER_CAR)
            .usualStep(Amount.of(0.01))
            .within(0.001, 2)
            .defaultsTo(TYRE, Tyre::loadedRadius);

    static final Slot<Double> LOWERED = length("lowered")
            .means("how far the body is let down over this axle by the spring perches, everything else as given")
            .measured("steel rule at the wheel arch", Amount.of(0.002))
            .usual(-0.05, 0.1)
            .usualStep(Amount.of(0.01))
            .within(-0.499, 0.499)
            .defaultsTo(0.0);

    static final Slot<Double> ROLL_INERTIA = measure("rollInertia", Dimension.INERTIA)
            .optional()
            .means("moment of inertia of the axle about the car's long axis")
            .usual(5, 120)
            .within(0.01, 1e4);

    static final Slot<Double> CAMBER = angle("camber")
            .means("camber of each wheel at rest, negative with the top inwards")
            .measured("digital level on the rim", Amount.of(0.2 * DEGREE))
            .usual(-4 * DEGREE, 2 * DEGREE)
            .usualStep(Amount.of(0.5 * DEGREE))
            .within(-29.9 * DEGREE, 29.9 * DEGREE)
            .defaultsTo(0.0);

    static final Slot<Double> TOE = angle("toe")
            .means("toe of each wheel, positive in")
            .measured("strings and steel rule", Amount.of(0.05 * DEGREE))
            .usual(-0.5 * DEGREE, 0.5 * DEGREE)
            .usualStep(Amount.of(0.1 * DEGREE))
            .within(-9.9 * DEGREE, 9.9 * DEGREE)
            .defaultsTo(0.0);

    static final Slot<Double> ROLL_CAMBER = ratio("rollCamber")
            .means("lean of the wheels per suspension roll: 0 stays upright, 1 leans with the body")
            .measured("digital level over the travel", Amount.of(0.1))
            .usual(0, 1.2)
            .takes(Slot.Work.REBUILDING)
            .usualStep(Amount.of(0.1))
            .within(-10, 10)
            .defaultsTo(1.0);

    static final Slot<Double> ROLL_STEER = ratio("rollSteer")
            .means("steer of the axle per suspension roll, positive towards understeer")
            .measured("strings over the travel", Amount.of(0.02))
            .usual(-0.1, 0.2)
            .takes(Slot.Work.REBUILDING)
            .usualStep(Amount.of(0.01))
            .within(-2, 2)
            .defaultsTo(0.0);

    static final Slot<Double> LATERAL_FORCE_STEER = measure("lateralForceSteer", Dimension.FORCE_STEER)
            .means("steer of the axle per side force, positive towards understeer")
            .usual(-0.2 * DEGREE / 1000, 0.3 * DEGREE / 1000)
            .takes(Slot.Work.ANOTHER_CAR)
            .goesBack(Slot.WayBack.OLD_PART)
            .usualStep(Amount.of(0.02 * DEGREE / 1000))
            .defaultsTo(0.0);

    static final Slot<Double> ALIGNING_TORQUE_STEER = measure("aligningTorqueSteer", Dimension.MOMENT_STEER)
            .means("steer of the axle per aligning torque, positive towards understeer")
            .usual(-5 * DEGREE / 1000, 20 * DEGREE / 1000)
            .takes(Slot.Work.ANOTHER_CAR)
            .goesBack(Slot.WayBack.OLD_PART)
            .usualStep(Amount.of(0.5 * DEGREE / 1000))
            .defaultsTo(0.0);

    static final Slot<Double> ROLL_CENTRE_HEIGHT = length("height")
            .means("height of the roll centre above the ground at rest")
            .measured("from the links' points", Amount.of(0.02))
            .usual(-0.1, 0.25)
            .takes(Slot.Work.REBUILDING)
            .usualStep(Amount.of(0.01))
            .within(-1.99, 1.99);

    static final Slot<Double> PER_BUMP = ratio("perBump")
            .means("rise of the roll centre above the ground per bump travel, wheels standing still; mostly negative")
            .measured("from the links' points", Amount.of(0.3))
            .usual(-3.5, 0)
            .takes(Slot.Work.REBUILDING)
            .usualStep(Amount.of(0.2))
            .within(-20, 20);

    static final Shape<Axle.RollCentre> ROLL_CENTRE = shape(
            "rollCentre",
            v -> new Axle.RollCentre(v.of(ROLL_CENTRE_HEIGHT), v.of(PER_BUMP)),
            ROLL_CENTRE_HEIGHT,
            PER_BUMP);

    static final Slot<Double> LOCATOR_HEIGHT = length("height")
            .measured("steel rule from a level floor", Amount.of(0.002))
            .usual(0.1, 0.4)
            .usualStep(Amount.of(0.01))
            .within(0.001, 2);

    static final Slot<Double> PIVOT_HEIGHT = LOCATOR_HEIGHT.means(
            "height of the bell-crank's pivot above the ground at ride height; the axle rolls about it");

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

    static final Slot<Double> ROD_HEIGHT =
            LOCATOR_HEIGHT.means("height at which the rod crosses the middle of the car");
    static final Slot<Double> ROD_PER_BUMP = LOCATOR_PER_BUMP.within(-1, 0);
    static final Slot<Double> LEAF_HEIGHT = LOCATOR_HEIGHT
            .means("height above the ground about which the axle rolls on its leaves")
            .takes(Slot.Work.REBUILDING)
            .goesBack(Slot.WayBack.OLD_PART);

    static final Shape<LateralLocator> LATERAL_LOCATOR = kinds(
            "lateralLocator",
            "kind",
            "what holds the axle sideways",
            as(
                    "watt",
                    shape(
                            "wattsLinkage",
                            v -> new LateralLocator.WattsLinkage(v.of(PIVOT_HEIGHT), v.of(CARRIED_BY)),
                            PIVOT_HEIGHT,
                            CARRIED_BY)),
            as(
                    "panhard",
                    shape(
                            "panhardRod",
                            v -> new LateralLocator.PanhardRod(v.of(ROD_HEIGHT), v.of(ROD_PER_BUMP)),
                            ROD_HEIGHT,
                            ROD_PER_BUMP)),
            as(
                    "leaf springs",
                    shape(
                            "leafSprings",
                            v -> new LateralLocator.LeafSprings(v.of(LEAF_HEIGHT), v.of(LOCATOR_PER_BUMP)),
                            LEAF_HEIGHT,
                            LOCATOR_PER_BUMP)));

    static final Slot<Axle.RollCentre> ROLL_CENTRE_GROUP =
            group("rollCentre", ROLL_CENTRE).means("roll centre of the two wheels");
    static final Slot<LateralLocator> LOCATOR =
            group("lateralLocator", LATERAL_LOCATOR).means("what holds the axle sideways, by its kind");
    static final Slot<Spring.AtWheel> SPRING_AT_WHEEL =
            group("spring", SpringCatalogue.AT_WHEEL).means("springs of this axle, both alike");
    static final Slot<Spring> SPRING_ON_AXLE =
            group("spring", SpringCatalogue.ON_AXLE).means("springs of this axle, both alike");
    static final Slot<Bar> BAR = group("bar", SpringCatalogue.BAR).optional().means("anti-roll bar");
    static final Slot<Damper> DAMPER_AT_WHEEL =
            group("damper", DamperCatalogue.DAMPER_AT_WHEEL).optional().means("dampers of this axle");
    static final Slot<Damper> DAMPER_ON_AXLE =
            group("damper", DamperCatalogue.DAMPER_ON_AXLE).optional().means("dampers of this axle");

    private static final String BUMP_WORDS = "bump rubbers";
    private static final String DROOP_WORDS = "what ends the travel in droop";
    private static final String METAL_WORDS = "where metal meets metal in bump";
    static final Slot<Stops.Bump> BUMP_AT_WHEEL =
            group("bumpStop", StopCatalogue.BUMP_AT_WHEEL).optional().means(BUMP_WORDS);
    static final Slot<Stops.Bump> BUMP_ON_AXLE =
            group("bumpStop", StopCatalogue.BUMP_ON_AXLE).optional().means(BUMP_WORDS);
    static final Slot<Stops.Droop> DROOP_AT_WHEEL =
            group("droopStop", StopCatalogue.DROOP_AT_WHEEL).optional().means(DROOP_WORDS);
    static final Slot<Stops.Droop> DROOP_ON_AXLE =
            group("droopStop", StopCatalogue.DROOP_ON_AXLE).optional().means(DROOP_WORDS);
    static final Slot<Stops.Metal> METAL_AT_WHEEL =
            group("metalStop", StopCatalogue.METAL_AT_WHEEL).optional().means(METAL_WORDS);
    static final Slot<Stops.Metal> METAL_ON_AXLE =
            group("metalStop", StopCatalogue.METAL_ON_AXLE).optional().means(METAL_WORDS);

    static final Shape<Axle.Independent> INDEPENDENT = shape(
            "independentAxle",
            v -> new Axle.Independent(
                    v.of(TRACK),
                    unsprung(v),
                    v.of(ROLL_CENTRE_GROUP),
                    v.of(SPRING_AT_WHEEL),
                    v.optional(BAR),
                    new Stops(v.optional(BUMP_AT_WHEEL), v.optional(DROOP_AT_WHEEL), v.optional(METAL_AT_WHEEL)),
                    v.optional(DAMPER_AT_WHEEL),
                    v.of(LOWERED),
                    v.of(ROLL_CAMBER),
                    alignment(v),
                    v.of(TYRE),
                    v.maybe(ROLL_INERTIA)),
            TRACK,
            UNSPRUNG_MASS,
            TYRE,
            UNSPRUNG_HEIGHT,
            ROLL_CENTRE_GROUP,
            SPRING_AT_WHEEL,
            BAR,
            LOWERED,
            DAMPER_AT_WHEEL,
            METAL_AT_WHEEL,
            BUMP_AT_WHEEL,
            DROOP_AT_WHEEL,
            CAMBER,
            TOE,
            ROLL_CAMBER,
            ROLL_STEER,
            LATERAL_FORCE_STEER,
            ALIGNING_TORQUE_STEER,
            ROLL_INERTIA);

    /** Accepted on a live axle, where it has no effect: its wheels lean with the axle. */
    static final Slot<Double> IDLE_ROLL_CAMBER = ROLL_CAMBER.optional();

    static final Shape<Axle.Live> LIVE = shape(
            "liveAxle",
            v -> new Axle.Live(
                    v.of(TRACK),
                    unsprung(v),
                    v.of(LOCATOR),
                    v.of(SPRING_ON_AXLE),
                    v.optional(BAR),
                    new Stops(v.optional(BUMP_ON_AXLE), v.optional(DROOP_ON_AXLE), v.optional(METAL_ON_AXLE)),
                    v.optional(DAMPER_ON_AXLE),
                    v.of(LOWERED),
                    alignment(v),
                    v.of(TYRE),
                    v.maybe(ROLL_INERTIA)),
            TRACK,
            UNSPRUNG_MASS,
            TYRE,
            UNSPRUNG_HEIGHT,
            LOCATOR,
            SPRING_ON_AXLE,
            BAR,
            LOWERED,
            DAMPER_ON_AXLE,
            METAL_ON_AXLE,
            BUMP_ON_AXLE,
            DROOP_ON_AXLE,
            CAMBER,
            TOE,
            IDLE_ROLL_CAMBER,
            ROLL_STEER,
            LATERAL_FORCE_STEER,
            ALIGNING_TORQUE_STEER,
            ROLL_INERTIA);

    static final Shape<Axle> AXLE = kinds(
            "axle",
            "layout",
            "how the wheels of this axle are hung",
            as("independent", INDEPENDENT),
            as("live axle", LIVE));

    private AxleCatalogue() {}

    private static Unsprung unsprung(Values v) {
        return new Unsprung(v.of(UNSPRUNG_MASS), v.of(UNSPRUNG_HEIGHT));
    }

    private static Alignment alignment(Values v) {
        return new Alignment(
                v.of(CAMBER), v.of(TOE), v.of(ROLL_STEER), v.of(LATERAL_FORCE_STEER), v.of(ALIGNING_TORQUE_STEER));
    }
}
