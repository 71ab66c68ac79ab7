package evenhand.car.links;

import evenhand.car.End;
import evenhand.car.LateralLocator.CarriedBy;
import evenhand.car.links.Clearance.Part;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

/** Plausible axles on links, from a seed: the same seed gives the same axle, whatever was made before. Invented data. */
public final class LinkedAxles {
    /** What a random axle is to be. */
    public enum Kind {
        THREE_LINK_PANHARD,
        THREE_LINK_WATT_ON_BODY,
        THREE_LINK_WATT_ON_AXLE,
        TORQUE_ARM_PANHARD,
        TORQUE_ARM_IDEAL,
        SPLAYED_FOUR_LINK,
        FIVE_RODS,
        FIVE_RODS_WATT,
        FIVE_RODS_WATT_ON_AXLE,
        SPLAYED_WITH_IDEAL,
        LEAVES,
        LEAVES_PANHARD,
        WISHBONES,
        STRUTS;

        public boolean isLive() {
            return this != WISHBONES && this != STRUTS;
        }
    }

    private final SplittableRandom random;

    private LinkedAxles(long seed) {
        random = new SplittableRandom(seed * 0x9E3779B97F4A7C15L + 29);
    }

    public static final SideView CAR = new SideView(2.5, 0.52, 0.68, SideView.BrakesAt.WHEELS, true);

    public static LinkedAxle any(long seed) {
        return of(Kind.values()[(int) Math.floorMod(seed, (long) Kind.values().length)], seed);
    }

    public static LinkedAxle of(Kind kind, long seed) {
        LinkedAxles of = new LinkedAxles(seed);
        return kind.isLive() ? of.live(kind) : of.wheels(kind);
    }

    private double mm(double low, double high) {
        return (low + (high - low) * random.nextDouble()) / 1000;
    }

    private double deg(double low, double high) {
        return Math.toRadians(low + (high - low) * random.nextDouble());
    }

    private boolean chance(double p) {
        return random.nextDouble() < p;
    }

    private Point near(Point p, double by) {
        return new Point(p.ahead() + mm(-by, by), p.out() + mm(-by, by), p.up() + mm(-by, by));
    }

    private Rod rod(boolean longer) {
        return new Rod(
                longer && chance(0.5) ? mm(-4, 4) : 0,
                OptionalDouble.of(0.0015),
                mm(1500, 4000) * 1e6,
                OptionalDouble.of(deg(8, 20)));
    }

    private LinkedLiveAxle live(Kind kind) {
        double down = chance(0.4) ? mm(-20, 30) : 0;
        Stance stance = new Stance(
                chance(0.8) ? End.REAR : End.FRONT,
                mm(1300, 1500),
                chance(0.3) ? mm(-8, 8) : 0,
                mm(270, 330),
                deg(-1.5, 0.5),
                deg(-0.2, 0.3),
                down);
        Point lowerAxle = new Point(mm(-20, 60), mm(380, 520), mm(170, 230));
        Point lowerBody = new Point(mm(450, 620), mm(360, 540), mm(180, 280));
        Link lower = new Link(lowerBody, lowerAxle, rod(true));
        Link right = new Link(near(lowerBody, 3), near(lowerAxle, 3), rod(true));
        boolean splayed = kind == Kind.SPLAYED_FOUR_LINK || kind == Kind.SPLAYED_WITH_IDEAL;
        Point upperAxle = splayed
                ? new Point(mm(-40, 40), mm(60, 120), mm(390, 450))
                : new Point(mm(-40, 40), mm(330, 450), mm(390, 450));
        Point upperBody = splayed
                ? new Point(mm(300, 420), mm(380, 480), mm(360, 440))
                : new Point(mm(300, 450), mm(330, 450), mm(360, 440));
        boolean five = kind == Kind.FIVE_RODS || kind == Kind.FIVE_RODS_WATT || kind == Kind.FIVE_RODS_WATT_ON_AXLE;
        Optional<Pair<Link>> upperLink = splayed || five
                ? Optional.of(new Pair<>(
                        new Link(upperBody, upperAxle, rod(true)),
                        new Link(near(upperBody, 2), near(upperAxle, 2), rod(true))))
                : Optional.empty();
        boolean three = kind == Kind.THREE_LINK_PANHARD
                || kind == Kind.THREE_LINK_WATT_ON_AXLE
                || kind == Kind.THREE_LINK_WATT_ON_BODY;
        Optional<MiddleLink> middle = three
                ? Optional.of(new MiddleLink(
                        new MiddlePoint(mm(300, 450), mm(-100, 100), mm(380, 460)),
                        new MiddlePoint(mm(-40, 40), mm(-100, 100), mm(390, 450)),
                        rod(true)))
                : Optional.empty();
        double end = mm(700, 950);
        double endUp = mm(250, 300);
        Optional<TorqueArm> arm = kind == Kind.TORQUE_ARM_IDEAL || kind == Kind.TORQUE_ARM_PANHARD
                ? Optional.of(new TorqueArm(
                        new MiddlePoint(end + mm(-15, 15), mm(-60, 60), endUp + mm(60, 200)),
                        new MiddlePoint(end, mm(-60, 60), endUp),
                        rod(true)))
                : Optional.empty();
        boolean leaves = kind == Kind.LEAVES || kind == Kind.LEAVES_PANHARD;
        Optional<Pair<Link>> lowerLink = leaves ? Optional.empty() : Optional.of(new Pair<>(lower, right));
        Optional<Pair<Leaf>> leaf = Optional.empty();
        if (leaves) {
            Leaf one = leaf();
            leaf = Optional.of(Pair.alike(one));
        }
        Optional<Locator> locator = switch (kind) {
            case SPLAYED_FOUR_LINK -> Optional.empty();
            case THREE_LINK_WATT_ON_BODY, FIVE_RODS_WATT -> Optional.of(watt(CarriedBy.BODY));
            case THREE_LINK_WATT_ON_AXLE, FIVE_RODS_WATT_ON_AXLE -> Optional.of(watt(CarriedBy.AXLE));
            case TORQUE_ARM_IDEAL, SPLAYED_WITH_IDEAL, LEAVES ->
                Optional.of(new Locator.Ideal(mm(220, 320), chance(0.5) ? -1 : mm(-1000, 0)));
            default -> Optional.of(panhard());
        };
        PropShaft shaft = new PropShaft(
                new MiddlePoint(mm(1300, 1700), mm(-20, 20), mm(300, 350)),
                deg(0, 4),
                deg(-1, 1),
                chance(0.3) ? Optional.of(new MiddlePoint(mm(800, 900), mm(-10, 10), mm(320, 350))) : Optional.empty(),
                new MiddlePoint(mm(230, 280), mm(-20, 20), mm(290, 330)),
                deg(0, 4),
                deg(-1, 1));
        return new LinkedLiveAxle(
                stance,
                new AxleLinks(lowerLink, upperLink, middle, arm, leaf),
                locator,
                mounts(
                        CarriedOn.AXLE,
                        new Point(mm(-60, 60), mm(400, 500), mm(170, 220)),
                        List.of(
                                new Clearance(
                                        "tube to floor",
                                        new Clearance.From(Part.AXLE, new MiddlePoint(0, 0.2, 0.345)),
                                        new Clearance.To(
                                                Part.BODY,
                                                OptionalDouble.empty(),
                                                OptionalDouble.empty(),
                                                OptionalDouble.of(mm(380, 450))),
                                        0,
                                        0.005),
                                new Clearance(
                                        "tube to tank",
                                        new Clearance.From(Part.AXLE, new MiddlePoint(-0.05, -0.1, 0.3)),
                                        new Clearance.To(
                                                Part.BODY,
                                                OptionalDouble.of(-mm(150, 200)),
                                                OptionalDouble.empty(),
                                                OptionalDouble.of(mm(330, 400))),
                                        0.01,
                                        0))),
                Optional.of(shaft),
                CAR,
                Optional.empty());
    }

    private Leaf leaf() {
        Point seat = new Point(mm(-10, 10), mm(420, 520), mm(240, 280));
        Point front = new Point(mm(520, 650), seat.out() + mm(-20, 20), mm(290, 350));
        Point rear = new Point(-mm(560, 700), seat.out() + mm(-20, 20), mm(290, 360));
        return new Leaf(front, rear, new Point(rear.ahead() - mm(10, 60), rear.out(), rear.up() + mm(70, 110)), seat);
    }

    private Locator.WattPoints watt(CarriedBy by) {
        double ahead = mm(-160, 20);
        double pivot = mm(260, 320);
        double crank = mm(45, 80);
        double tilt = deg(-8, 8);
        double reach = mm(330, 450);
        return new Locator.WattPoints(
                by,
                new MiddlePoint(ahead, mm(-10, 10), pivot),
                crank,
                crank * (1 + mm(-100, 100)),
                tilt,
                new Locator.WattRod(
                        new MiddlePoint(ahead + mm(-10, 10), reach, pivot + crank + mm(-15, 15)), rod(true)),
                new Locator.WattRod(
                        new MiddlePoint(ahead + mm(-10, 10), -reach + mm(-30, 30), pivot - crank + mm(-15, 15)),
                        rod(true)));
    }

    private Locator.PanhardPoints panhard() {
        double side = chance(0.5) ? 1 : -1;
        double ahead = mm(-160, 60);
        return new Locator.PanhardPoints(
                new MiddlePoint(ahead + mm(-20, 20), side * mm(400, 520), mm(240, 330)),
                new MiddlePoint(ahead, -side * mm(380, 480), mm(230, 310)),
                rod(true));
    }

    private Mounts mounts(CarriedOn on, Point bottom, List<Clearance> clearances) {
        Point top = new Point(bottom.ahead() + mm(-60, 60), bottom.out() - mm(20, 120), bottom.up() + mm(260, 380));
        Point springBottom = near(bottom, 30);
        SpringLine spring = chance(0.5)
                ? new SpringLine.AroundDamper(mm(40, 90))
                : new SpringLine.BetweenPoints(Pair.alike(new SpringLine.Ends(
                        new Point(
                                springBottom.ahead(), springBottom.out() - mm(0, 60), springBottom.up() + mm(200, 300)),
                        springBottom,
                        on)));
        Dampers dampers = new Dampers(
                new Dampers.BetweenEyes(Pair.alike(new Dampers.Ends(
                        new Dampers.Eye(top, bolt(), deg(-15, 15), mm(-4, 4)),
                        new Dampers.Eye(bottom, bolt(), deg(-15, 15), mm(-4, 4)),
                        on))),
                OptionalDouble.of(top.distanceTo(bottom) - mm(40, 120)),
                OptionalDouble.of(top.distanceTo(bottom) + mm(40, 120)));
        Point armEnd = new Point(bottom.ahead() + mm(30, 60), bottom.out() - mm(0, 10), bottom.up() + mm(120, 180));
        Point pivot = new Point(armEnd.ahead() + mm(180, 260), armEnd.out(), armEnd.up() + mm(-30, 30));
        BarArm bar = new BarArm(pivot, armEnd, near(new Point(armEnd.ahead(), armEnd.out(), bottom.up()), 10), on);
        return new Mounts(Optional.of(spring), Optional.of(dampers), Optional.of(Pair.alike(bar)), clearances);
    }

    private Dampers.Bolt bolt() {
        return Dampers.Bolt.values()[random.nextInt(3)];
    }

    private LinkedWheels wheels(Kind kind) {
        boolean front = chance(0.6);
        Stance stance = new Stance(
                front ? End.FRONT : End.REAR,
                mm(1300, 1500),
                0,
                mm(270, 330),
                deg(-1.5, 0.5),
                deg(-0.2, 0.3),
                chance(0.4) ? mm(-20, 30) : 0);
        double out = stance.track() / 2;
        double way = chance(0.5) ? 1 : -1;
        Arm lower = new Arm(
                new Point(mm(100, 180), mm(300, 380), mm(180, 240)),
                new Point(-mm(100, 220), mm(300, 380), mm(180, 240)),
                new Point(mm(-10, 20), out - mm(30, 70), mm(160, 210)));
        Arm lowerRight = new Arm(near(lower.front(), 3), near(lower.rear(), 3), near(lower.outer(), 3));
        TieRod tie = new TieRod(
                new Point(way * mm(110, 150), mm(290, 350), mm(210, 250)),
                new Point(way * mm(110, 140), out - mm(60, 100), mm(200, 250)),
                rod(true),
                chance(0.4) ? Optional.of(new TieRod.Swing(-way * mm(20, 60), mm(280, 400))) : Optional.empty());
        TieRod tieRight = new TieRod(near(tie.inner(), 2), near(tie.outer(), 2), rod(true), tie.swing());
        Arm upper = new Arm(
                new Point(mm(60, 120), mm(380, 450), mm(440, 500)),
                new Point(-mm(80, 160), mm(380, 450), mm(430, 490)),
                new Point(mm(-30, 0), out - mm(70, 130), mm(450, 520)));
        Strut strut = new Strut(
                new Point(mm(-60, 0), out - mm(150, 210), mm(760, 860)),
                new Point(mm(-10, 10), out - mm(80, 110), mm(330, 400)));
        boolean strutted = kind == Kind.STRUTS;
        WheelLinks links = strutted
                ? new WheelLinks.StrutAndArm(
                        new Pair<>(lower, lowerRight), Pair.alike(strut), new Pair<>(tie, tieRight))
                : new WheelLinks.DoubleWishbone(
                        new Pair<>(lower, lowerRight), Pair.alike(upper), new Pair<>(tie, tieRight));
        List<Clearance> clearances = List.of(
                new Clearance(
                        "wheel to wheel",
                        new Clearance.From(Part.LEFT_WHEEL, new MiddlePoint(0.1, 0.6, 0.4)),
                        new Clearance.To(
                                Part.RIGHT_WHEEL,
                                OptionalDouble.of(0.1),
                                OptionalDouble.of(-0.6),
                                OptionalDouble.of(0.4)),
                        0,
                        1.19),
                new Clearance(
                        "wheel to arch",
                        new Clearance.From(Part.LEFT_WHEEL, new MiddlePoint(0, 0.7, 0.6)),
                        new Clearance.To(
                                Part.BODY, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(0.67)),
                        0,
                        0));
        Mounts mounts;
        if (strutted) {
            Mounts given = mounts(
                    CarriedOn.LOWER_ARM,
                    new Point(mm(-10, 20), lower.outer().out() - mm(60, 120), mm(190, 230)),
                    clearances);
            mounts = chance(0.5)
                    ? new Mounts(
                            Optional.of(new SpringLine.AroundStrut(0.05)),
                            Optional.of(new Dampers(
                                    new Dampers.AroundStrut(), OptionalDouble.of(0.3), OptionalDouble.empty())),
                            given.bar(),
                            clearances)
                    : given;
        } else {
            mounts = mounts(
                    chance(0.7) ? CarriedOn.LOWER_ARM : chance(0.5) ? CarriedOn.UPRIGHT : CarriedOn.UPPER_ARM,
                    new Point(mm(-10, 20), lower.outer().out() - mm(60, 120), mm(190, 230)),
                    clearances);
        }
        return new LinkedWheels(stance, links, mounts, CAR, Optional.empty());
    }

    // ------------------------------------------------------------- the same axle seen in a mirror

    public static LinkedAxle mirrored(LinkedAxle axle) {
        return axle instanceof LinkedLiveAxle live ? mirrored(live) : mirrored((LinkedWheels) axle);
    }

    private static LinkedLiveAxle mirrored(LinkedLiveAxle a) {
        Stance s = a.stance();
        return new LinkedLiveAxle(
                new Stance(s.end(), s.track(), -s.offset(), s.loadedRadius(), s.camber(), s.toe(), s.cameDown()),
                new AxleLinks(
                        a.links().lowerLink().map(LinkedAxles::swapped),
                        a.links().upperLink().map(LinkedAxles::swapped),
                        a.links().middleLink().map(m -> new MiddleLink(m(m.body()), m(m.axle()), m.rod())),
                        a.links().torqueArm().map(t -> new TorqueArm(m(t.hanger()), m(t.end()), t.dropLink())),
                        a.links().leaf().map(LinkedAxles::swapped)),
                a.locator().map(LinkedAxles::mirrored),
                mirrored(a.mounts()),
                a.propShaft()
                        .map(p -> new PropShaft(
                                m(p.gearbox()),
                                p.gearboxSlope(),
                                -p.gearboxPlan(),
                                p.centre().map(LinkedAxles::m),
                                m(p.pinion()),
                                p.pinionSlope(),
                                -p.pinionPlan())),
                a.sideView(),
                a.carried());
    }

    private static Locator mirrored(Locator locator) {
        if (locator instanceof Locator.PanhardPoints p) {
            return new Locator.PanhardPoints(m(p.body()), m(p.axle()), p.rod());
        }
        if (locator instanceof Locator.WattPoints w) {
            return new Locator.WattPoints(
                    w.carriedBy(),
                    m(w.pivot()),
                    w.upper(),
                    w.lower(),
                    -w.tilt(),
                    new Locator.WattRod(m(w.upperRod().end()), w.upperRod().rod()),
                    new Locator.WattRod(m(w.lowerRod().end()), w.lowerRod().rod()));
        }
        return locator;
    }

    private static LinkedWheels mirrored(LinkedWheels a) {
        WheelLinks links = a.links() instanceof WheelLinks.DoubleWishbone w
                ? new WheelLinks.DoubleWishbone(swapped(w.lowerArm()), swapped(w.upperArm()), swapped(w.tieRod()))
                : new WheelLinks.StrutAndArm(
                        swapped(a.links().lowerArm()),
                        swapped(((WheelLinks.StrutAndArm) a.links()).strut()),
                        swapped(a.links().tieRod()));
        return new LinkedWheels(a.stance(), links, mirrored(a.mounts()), a.sideView(), a.carried());
    }

    private static Mounts mirrored(Mounts mounts) {
        return new Mounts(
                mounts.spring()
                        .map(s -> s instanceof SpringLine.BetweenPoints b
                                ? new SpringLine.BetweenPoints(swapped(b.ends()))
                                : s),
                mounts.damper()
                        .map(d -> d.line() instanceof Dampers.BetweenEyes b
                                ? new Dampers(
                                        new Dampers.BetweenEyes(swapped(b.ends())), d.closedLength(), d.openLength())
                                : d),
                mounts.bar().map(LinkedAxles::swapped),
                mounts.clearances().stream().map(LinkedAxles::mirrored).toList());
    }

    private static Clearance mirrored(Clearance c) {
        OptionalDouble left = c.to().left();
        return new Clearance(
                c.name(),
                new Clearance.From(other(c.from().on()), m(c.from().at())),
                new Clearance.To(
                        other(c.to().on()),
                        c.to().ahead(),
                        left.isPresent() ? OptionalDouble.of(-left.getAsDouble()) : left,
                        c.to().up()),
                c.radius(),
                c.least());
    }

    private static Part other(Part part) {
        return switch (part) {
            case LEFT_WHEEL -> Part.RIGHT_WHEEL;
            case RIGHT_WHEEL -> Part.LEFT_WHEEL;
            default -> part;
        };
    }

    private static <T> Pair<T> swapped(Pair<T> pair) {
        return new Pair<>(/* left= */ pair.right(), /* right= */ pair.left());
    }

    private static MiddlePoint m(MiddlePoint p) {
        return new MiddlePoint(p.ahead(), -p.left(), p.up());
    }
}
