package evenhand.catalogue;

import static evenhand.catalogue.Shape.as;
import static evenhand.catalogue.Shape.kinds;
import static evenhand.catalogue.Shape.shape;
import static evenhand.catalogue.Slot.angle;
import static evenhand.catalogue.Slot.group;
import static evenhand.catalogue.Slot.length;
import static evenhand.catalogue.Slot.mass;
import static evenhand.catalogue.Slot.measure;
import static evenhand.catalogue.Slot.ratio;

import evenhand.car.Alignment;
import evenhand.car.Axle;
import evenhand.car.Reaction;
import evenhand.car.Spring;
import evenhand.car.Stops;
import evenhand.car.SwingArm;
import evenhand.car.Unsprung;
import evenhand.car.links.AxleLinks;
import evenhand.car.links.WheelLinks;
import evenhand.quantity.Dimension;
import evenhand.tyre.Tyre;
import java.util.OptionalDouble;

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

    private static final Slot<WheelLinks> WHEEL_LINKS = LinkCatalogue.WHEEL_LINKS;
    private static final Slot<AxleLinks> AXLE_LINKS = LinkCatalogue.AXLE_LINKS;

    static final Slot<Axle.RollCentre> ROLL_CENTRE_GROUP = group("rollCentre", ROLL_CENTRE)
            .means("roll centre of the two wheels")
            .notNeededWith(WHEEL_LINKS);
    static final Slot<Given.OfLocator> LOCATOR = group("lateralLocator", LocatorCatalogue.LATERAL_LOCATOR)
            .means("what holds the axle sideways, by its kind")
            .notNeededWith(AXLE_LINKS);
    static final Slot<Given.OfSpring<Spring.AtWheel>> SPRING_AT_WHEEL =
            group("spring", SpringCatalogue.AT_WHEEL).means("springs of this axle, both alike");
    static final Slot<Given.OfSpring<Spring>> SPRING_ON_AXLE =
            group("spring", SpringCatalogue.ON_AXLE).means("springs of this axle, both alike");
    static final Slot<Given.OfBar> BAR_AT_WHEEL =
            group("bar", SpringCatalogue.BAR_AT_WHEEL).optional().means("anti-roll bar");
    static final Slot<Given.OfBar> BAR_ON_AXLE =
            group("bar", SpringCatalogue.BAR_ON_AXLE).optional().means("anti-roll bar");
    static final Slot<Given.OfDamper> DAMPER_AT_WHEEL =
            group("damper", DamperCatalogue.DAMPER_AT_WHEEL).optional().means("dampers of this axle");
    static final Slot<Given.OfDamper> DAMPER_ON_AXLE =
            group("damper", DamperCatalogue.DAMPER_ON_AXLE).optional().means("dampers of this axle");

    /** Links decide how the wheels lean and the axle steers. */
    static final Slot<Double> WHEEL_ROLL_CAMBER = ROLL_CAMBER.notNeededWith(WHEEL_LINKS);

    static final Slot<Double> LINKED_ROLL_STEER = ROLL_STEER.notNeededWith(WHEEL_LINKS);

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

    private static final Slot<Double> SWING_ARM = length("swingArm")
            .means("distance from the wheel to the swing centre in side view, positive towards the middle of the car")
            .measured("from the links' lines in side view", Amount.percent(10))
            .usual(0.4, 20)
            .takes(Slot.Work.REBUILDING)
            .usualStep(Amount.percent(10))
            .within(-1e4, 1e4);
    private static final Slot<Double> SWING_CENTRE_HEIGHT = length("swingCentreHeight")
            .means("height of that centre above the ground")
            .measured("from the links' lines in side view", Amount.of(0.02))
            .usual(-0.2, 1)
            .takes(Slot.Work.REBUILDING)
            .usualStep(Amount.of(0.02))
            .within(-20, 20);

    /** What a swing arm needs of its axle, the wheel's height, is not its own. */
    private record SideView(double length, double height) {}

    private static final Slot<SideView> SIDE_VIEW = group(
                    "sideView",
                    shape(
                            "sideView",
                            v -> {
                                double length = v.of(SWING_ARM);
                                new SwingArm(length, v.of(SWING_CENTRE_HEIGHT), 1);
                                return new SideView(length, v.of(SWING_CENTRE_HEIGHT));
                            },
                            SWING_ARM,
                            SWING_CENTRE_HEIGHT))
            .optional()
            .means("where the axle swings in side view, of links that are not given by points");

    static final Shape<Given.OnAxle> INDEPENDENT = shape(
            "independentAxle",
            AxleCatalogue::independent,
            TRACK,
            UNSPRUNG_MASS,
            TYRE,
            UNSPRUNG_HEIGHT,
            ROLL_CENTRE_GROUP,
            WHEEL_LINKS,
            SPRING_AT_WHEEL,
            BAR_AT_WHEEL,
            LOWERED,
            DAMPER_AT_WHEEL,
            METAL_AT_WHEEL,
            BUMP_AT_WHEEL,
            DROOP_AT_WHEEL,
            CAMBER,
            TOE,
            WHEEL_ROLL_CAMBER,
            LINKED_ROLL_STEER,
            LATERAL_FORCE_STEER,
            ALIGNING_TORQUE_STEER,
            ROLL_INERTIA,
            SIDE_VIEW,
            LinkCatalogue.BRAKES_AT,
            LinkCatalogue.CLEARANCES);

    /** Accepted on a live axle, where it has no effect: its wheels lean with the axle. */
    static final Slot<Double> IDLE_ROLL_CAMBER = ROLL_CAMBER.optional();

    static final Shape<Given.OnAxle> LIVE = shape(
            "liveAxle",
            AxleCatalogue::live,
            TRACK,
            UNSPRUNG_MASS,
            TYRE,
            UNSPRUNG_HEIGHT,
            LOCATOR,
            AXLE_LINKS,
            LinkCatalogue.OFFSET,
            SPRING_ON_AXLE,
            BAR_ON_AXLE,
            LOWERED,
            DAMPER_ON_AXLE,
            METAL_ON_AXLE,
            BUMP_ON_AXLE,
            DROOP_ON_AXLE,
            CAMBER,
            TOE,
            IDLE_ROLL_CAMBER,
            LINKED_ROLL_STEER,
            LATERAL_FORCE_STEER,
            ALIGNING_TORQUE_STEER,
            ROLL_INERTIA,
            SIDE_VIEW,
            LinkCatalogue.PROP_SHAFT,
            LinkCatalogue.BRAKES_AT,
            LinkCatalogue.CLEARANCES);

    static final Shape<Given.OnAxle> AXLE = kinds(
            "axle",
            "layout",
            "how the wheels of this axle are hung",
            as("independent", INDEPENDENT),
            as("live axle", LIVE));

    private AxleCatalogue() {}

    private static Given.OnAxle independent(Values v) {
        if (v.has(WHEEL_LINKS)) {
            return end -> OnLinks.wheels(v, end);
        }
        OnLinks.requireNone(v, SPRING_AT_WHEEL, BAR_AT_WHEEL, DAMPER_AT_WHEEL);
        Axle axle = new Axle.Independent(
                v.of(TRACK),
                unsprung(v),
                v.of(ROLL_CENTRE_GROUP),
                v.of(SPRING_AT_WHEEL).known().orElseThrow(),
                v.optional(BAR_AT_WHEEL).map(OnLinks::bar),
                stopsAtWheel(v),
                v.optional(DAMPER_AT_WHEEL).map(Given.OfDamper::known),
                v.of(LOWERED),
                v.of(WHEEL_ROLL_CAMBER),
                alignment(v, v.of(CAMBER), v.of(TOE), v.of(LINKED_ROLL_STEER)),
                v.of(TYRE),
                v.maybe(ROLL_INERTIA),
                reaction(v, OptionalDouble.empty()));
        return end -> axle;
    }

    private static Given.OnAxle live(Values v) {
        if (v.has(AXLE_LINKS)) {
            return end -> OnLinks.axle(v, end);
        }
        OnLinks.requireNone(v, SPRING_ON_AXLE, BAR_ON_AXLE, DAMPER_ON_AXLE);
        OnLinks.requireNoLocatorPoints(v.of(LOCATOR));
        Axle axle = new Axle.Live(
                v.of(TRACK),
                unsprung(v),
                v.of(LOCATOR).known().orElseThrow(),
                v.of(SPRING_ON_AXLE).known().orElseThrow(),
                v.optional(BAR_ON_AXLE).map(OnLinks::bar),
                stopsOnAxle(v),
                v.optional(DAMPER_ON_AXLE).map(Given.OfDamper::known),
                v.of(LOWERED),
                alignment(v, v.of(CAMBER), v.of(TOE), v.of(LINKED_ROLL_STEER)),
                v.of(TYRE),
                v.maybe(ROLL_INERTIA),
                reaction(v, v.of(SPRING_ON_AXLE).windUp()));
        return end -> axle;
    }

    /** How the axle takes what pulls along the car; its side view where links do not decide it. */
    static Reaction reaction(Values v, OptionalDouble windUp) {
        double wheelHeight = v.of(TYRE).loadedRadius();
        return new Reaction(
                v.optional(SIDE_VIEW).map(given -> new SwingArm(given.length(), given.height(), wheelHeight)),
                v.of(LinkCatalogue.BRAKES_AT),
                windUp);
    }

    /** Whose slopes links decide. */
    static Slot<?> sideView() {
        return SIDE_VIEW;
    }

    static Stops stopsAtWheel(Values v) {
        return new Stops(v.optional(BUMP_AT_WHEEL), v.optional(DROOP_AT_WHEEL), v.optional(METAL_AT_WHEEL));
    }

    static Stops stopsOnAxle(Values v) {
        return new Stops(v.optional(BUMP_ON_AXLE), v.optional(DROOP_ON_AXLE), v.optional(METAL_ON_AXLE));
    }

    static Unsprung unsprung(Values v) {
        return new Unsprung(v.of(UNSPRUNG_MASS), v.of(UNSPRUNG_HEIGHT));
    }

    static Alignment alignment(Values v, double camber, double toe, double rollSteer) {
        return new Alignment(camber, toe, rollSteer, v.of(LATERAL_FORCE_STEER), v.of(ALIGNING_TORQUE_STEER));
    }
}
