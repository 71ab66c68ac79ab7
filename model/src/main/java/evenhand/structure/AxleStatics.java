package evenhand.structure;

import static evenhand.structure.Joining.place;
import static evenhand.structure.Joining.vector;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.Spring;
import evenhand.car.Stops;
import evenhand.car.links.LinkedAxle;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.car.links.SideView;
import evenhand.car.links.SpringLine;
import evenhand.car.mounts.PartEnd;
import evenhand.linkage.Assembly;
import evenhand.linkage.AxleJoints;
import evenhand.linkage.AxleLinkage;
import evenhand.suspension.PointLines;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * One axle of a car at rest, asked case by case what its members carry. Equilibrium of the axle, or of each upright and each arm, in
 * the pose of the case: one unknown along every rod and every spring, three at a ball. One per thread, for its linkage moves.
 *
 * <p>Source: statics of rigid bodies; the shares of joints that hold a body twice by least energy ({@link FreeBodies}).
 */
final class AxleStatics {
    private final Axle axle;
    private final End end;
    private final Optional<AxleLinkage> linkage;
    private final boolean live;
    private final double radius; // of the wheels where the axle was measured, m
    private final boolean strutCarriesSpring;
    private final PointLines bumpCurve;
    private final boolean aroundDamper;
    private final boolean brakesOnBody;
    private final Map<Side, SpringState> standing = new EnumMap<>(Side.class);

    /** Push of a spring, N, and its length, m, where both are known together. */
    private record SpringState(double push, double length) {}

    /** One side of the axle where it stands now; {@code carried} says where a point of it is that was measured at a place. */
    private record Station(
            Side side, String part, Vector3D centre, Vector3D contact, UnaryOperator<Vector3D> carried) {}

    /** A spring where it works: {@code length} and {@code rate} make its push change by rate·(length before − length). */
    private record SpringAt(Joining.Line line, Vector3D up, double rate, double length) {}

    AxleStatics(Car car, End end) {
        this.end = end;
        axle = car.axle(end);
        live = axle instanceof Axle.Live;
        Optional<LinkedAxle> given = car.linked(end);
        linkage = given.map(AxleStatics::standing);
        radius = given.map(links -> links.stance().loadedRadius())
                .orElse(axle.tyre().loadedRadius());
        strutCarriesSpring = given.flatMap(links -> links.mounts().spring())
                .filter(SpringLine.AroundStrut.class::isInstance)
                .isPresent();
        Optional<Stops.Bump> bump = axle.stops().bump();
        bumpCurve = new PointLines(bump.map(Stops.Bump::curve).orElse(evenhand.car.Curve.NO_FORCE));
        aroundDamper = bump.isPresent() && bump.get().aroundDamper();
        brakesOnBody = axle.reaction().brakesAt() == SideView.BrakesAt.BODY;
    }

    private static AxleLinkage standing(LinkedAxle links) {
        if (Assembly.of(links) instanceof Assembly.Standing standing) {
            return standing.linkage();
        }
        throw new IllegalStateException("links that stood at rest stand no more");
    }

    /** Whether brakes or drive reach the wheel by a shaft, so that its moment acts on the upright. */
    boolean brakesOnBody() {
        return brakesOnBody && !live;
    }

    boolean isLive() {
        return live;
    }

    /** The first case to be asked: it says what the springs carry at rest. */
    AxleLoads stand(AxleCase use) {
        return solve(use).orElseThrow();
    }

    /** What the members carry; nothing where the links do not reach so far. */
    Optional<AxleLoads> solve(AxleCase use) {
        if (linkage.isPresent() && !moved(linkage.get(), use)) {
            return Optional.empty();
        }
        Optional<AxleJoints> joints = linkage.map(AxleLinkage::joints);
        Joining joining = new Joining(end, joints.isEmpty());
        List<Station> stations = new ArrayList<>();
        for (Side side : Side.values()) {
            stations.add(joints.isPresent() ? station(joints.get().side(side)) : station(side, use));
        }
        join(joining, joints, stations, use);
        ground(joining, stations, use);
        weight(joining, stations, use);
        shafts(joining, stations, use);
        bar(joining, stations, joints, use);
        List<Pushing> springs = new ArrayList<>();
        for (Station station : stations) {
            springs.add(carry(joining, station, joints, use));
        }
        Joining.Solved solved = joining.solve();
        boolean pulls = false;
        for (Station station : stations) {
            Pushing spring = springs.get(station.side().index());
            double push = spring.push(solved.unknowns());
            pulls |= push < -PULLS;
            standing.putIfAbsent(station.side(), new SpringState(push, spring.length()));
        }
        if (linkage.isPresent()) {
            linkage.get().rest();
        }
        return Optional.of(new AxleLoads(use.leftTravel(), use.rightTravel(), solved.acts(), solved.members(), pulls));
    }

    /** A pull below this is rounding, N. */
    static final double PULLS = 1e-6;

    /** Which way members point at their ends, with both wheels at a travel, seen from what the ends are bolted to. */
    Map<PartEnd, Vector3D> directions(double leftTravel, double rightTravel) {
        if (linkage.isEmpty()) {
            return Map.of();
        }
        AxleLinkage links = linkage.get();
        links.rest();
        Map<PartEnd, Vector3D> directions =
                links.moveTo(leftTravel, rightTravel) ? EyeDirections.of(end, links.joints()) : Map.of();
        links.rest();
        return directions;
    }

    /** Where a point that was measured on a part is, with the wheels at their travels. */
    Vector3D carried(String on, Vector3D measured, double leftTravel, double rightTravel) {
        if (on.equals(Joining.SHELL) || on.equals(Joining.CRANK)) {
            return measured;
        }
        Side side = on.endsWith("Right") ? Side.RIGHT : Side.LEFT;
        if (linkage.isEmpty()) {
            AxleCase use = AxleCase.at(leftTravel, rightTravel);
            return station(side, use).carried().apply(measured);
        }
        AxleLinkage links = linkage.get();
        links.rest();
        links.moveTo(leftTravel, rightTravel);
        AxleJoints.SideAt at = links.joints().side(side);
        links.rest();
        AxleJoints.Frame frame = at.arms().stream()
                .filter(arm -> Joining.part(arm.is(), side).equals(on))
                .map(AxleJoints.ArmAt::frame)
                .findFirst()
                .orElse(at.carrier());
        return vector(frame.place(place(measured)));
    }

    private static boolean moved(AxleLinkage linkage, AxleCase use) {
        linkage.rest();
        return linkage.moveTo(use.leftTravel(), use.rightTravel());
    }

    private Station station(AxleJoints.SideAt at) {
        return new Station(
                at.side(),
                live ? Joining.AXLE : Joining.upright(at.side()),
                vector(at.centre()),
                vector(at.contact()),
                point -> vector(at.carrier().place(place(point))));
    }

    /** Without points everything rises by what the wheels do, in between along a straight line. */
    private Station station(Side side, AxleCase use) {
        double half = axle.track() / 2;
        double mean = (use.leftTravel() + use.rightTravel()) / 2;
        double tilt = (use.leftTravel() - use.rightTravel()) / axle.track();
        UnaryOperator<Vector3D> carried =
                point -> point.add(new Vector3D(0, 0, live ? mean + tilt * point.getY() : use.travel(side)));
        double y = side.sign() * half;
        return new Station(
                side,
                live ? Joining.AXLE : Joining.upright(side),
                carried.apply(new Vector3D(0, y, radius)),
                carried.apply(new Vector3D(0, y, 0)),
                carried);
    }

    private void join(Joining joining, Optional<AxleJoints> joints, List<Station> stations, AxleCase use) {
        if (joints.isEmpty()) {
            if (axle instanceof Axle.Live of) {
                CoefficientsJoined.live(joining, of, middle(stations), (use.leftTravel() + use.rightTravel()) / 2);
            } else {
                stations.forEach(at -> CoefficientsJoined.wheel(joining, at.side(), at.centre()));
            }
        } else if (live) {
            LinksJoined.live(joining, joints.get(), liveLinks());
        } else {
            for (Side side : Side.values()) {
                LinksJoined.wheel(joining, joints.get().side(side));
            }
        }
    }

    private LinkedLiveAxle liveLinks() {
        return (LinkedLiveAxle) linkage.orElseThrow().given();
    }

    private static Vector3D middle(List<Station> stations) {
        return stations.get(0).centre().add(stations.get(1).centre()).scalarMultiply(0.5);
    }

    private static String of(Side side) {
        return side == Side.LEFT ? " left" : " right";
    }

    private static void ground(Joining joining, List<Station> stations, AxleCase use) {
        for (Station at : stations) {
            Vector3D where = at.contact().add(new Vector3D(0, 0, use.raise(at.side())));
            joining.act(Act.force(at.part(), "wheel" + of(at.side()), where, use.ground(at.side())));
        }
    }

    /** mu·(−ax, −ay, −g) at the middle of the wheel centres, of a wheel half at its centre, as much above as its mass stands. */
    private void weight(Joining joining, List<Station> stations, AxleCase use) {
        Vector3D above =
                new Vector3D(0, 0, axle.unsprung().height() - axle.tyre().loadedRadius());
        String what = "weight and inertia";
        if (live) {
            joining.act(Act.force(
                    Joining.AXLE,
                    what,
                    middle(stations).add(above),
                    use.fall().scalarMultiply(axle.unsprung().mass())));
            return;
        }
        for (Station at : stations) {
            joining.act(Act.force(
                    at.part(),
                    what,
                    at.centre().add(above),
                    use.fall().scalarMultiply(axle.unsprung().mass() / 2)));
        }
    }

    /**
     * The propeller shaft turns a live axle's housing by −T about x. A drive shaft, and the brake of a body, brings its torque to an
     * upright from outside: −(C − W) × (D, 0, 0).
     */
    private void shafts(Joining joining, List<Station> stations, AxleCase use) {
        if (live) {
            if (use.shaftTorque() != 0) {
                joining.act(new Act(
                        Joining.AXLE,
                        "propeller shaft",
                        middle(stations),
                        Vector3D.ZERO,
                        new Vector3D(-use.shaftTorque(), 0, 0)));
            }
            return;
        }
        for (Station at : stations) {
            double drive = use.shaft(at.side());
            if (drive != 0) {
                Vector3D moment = at.contact()
                        .subtract(at.centre())
                        .crossProduct(new Vector3D(drive, 0, 0))
                        .negate();
                joining.act(new Act(at.part(), "drive shaft", at.centre(), Vector3D.ZERO, moment));
            }
        }
    }

    /** φs = (u_R − u_L)/t. */
    private double suspensionRoll(AxleCase use) {
        return (use.rightTravel() - use.leftTravel()) / axle.track();
    }

    /**
     * The bar: a moment on a live axle, forces at the wheels; with points along both drop links, alike in size and against each
     * other, so that their work in roll is that of the moment: N = −2·K·φs/(t·(a_L + a_R)), a = how fast a link's lower end goes
     * along it as its wheel rises.
     */
    private void bar(Joining joining, List<Station> stations, Optional<AxleJoints> joints, AxleCase use) {
        double moment = axle.barRollStiffness() * suspensionRoll(use);
        if (axle.bar().isEmpty()) {
            return;
        }
        if (joints.isPresent()
                && joints.get().left().bar().isPresent()
                && joints.get().right().bar().isPresent()) {
            AxleJoints.BarLinkAt left = joints.get().left().bar().get();
            AxleJoints.BarLinkAt right = joints.get().right().bar().get();
            double tension = -2 * moment / (axle.track() * (left.slope() + right.slope()));
            dropLink(joining, Side.LEFT, left, tension);
            dropLink(joining, Side.RIGHT, right, -tension);
        } else if (live) {
            joining.act(new Act(Joining.AXLE, "bar", middle(stations), Vector3D.ZERO, new Vector3D(moment, 0, 0)));
        } else {
            for (Station at : stations) {
                Vector3D force = new Vector3D(0, 0, at.side().sign() * moment / axle.track());
                joining.act(Act.force(at.part(), "bar", at.centre(), force));
            }
        }
    }

    private static void dropLink(Joining joining, Side side, AxleJoints.BarLinkAt link, double tension) {
        Joining.Line line = new Joining.Line(
                "armEnd",
                Joining.SHELL,
                vector(link.armEnd()),
                "linkEnd",
                Joining.part(link.on(), side),
                vector(link.linkEnd()));
        joining.line(joining.member(PartEnd.on(side, "barLink")), line, line.up(), tension);
        joining.tell(
                Act.force(line.bottomOn(), "bar", line.bottomAt(), line.up().scalarMultiply(tension)));
    }

    /** What a spring pushes once the unknowns are known, and how long it is. */
    private record Pushing(int unknown, double sign, double known, double length) {
        double push(double[] unknowns) {
            return known + (unknown < 0 ? 0 : sign * unknowns[unknown]);
        }
    }

    /** Spring, stops and damper of one side, one of them unknown. */
    private Pushing carry(Joining joining, Station at, Optional<AxleJoints> joints, AxleCase use) {
        Side side = at.side();
        AxleCase.Held held = use.held(side);
        Optional<AxleJoints.StrutAt> strut =
                joints.flatMap(all -> all.side(side).strut());
        if (strut.isPresent()) {
            return onStrut(joining, at, joints.orElseThrow(), strut.get(), use);
        }
        Pushing spring;
        if (joints.isPresent() && !joints.get().leaves().isEmpty()) {
            spring = leaf(joining, at, joints.get(), held);
        } else {
            spring = spring(joining, springAt(at, joints, use), side, held);
        }
        stops(joining, at, joints, use);
        if (held != AxleCase.Held.BY_SPRING) {
            instead(joining, at, joints, use);
        }
        return spring;
    }

    private Pushing spring(Joining joining, SpringAt spring, Side side, AxleCase.Held held) {
        Sketch sketch = joining.member(PartEnd.on(side, "spring"));
        if (held == AxleCase.Held.BY_SPRING) {
            int tension = joining.line(sketch, spring.line(), spring.up(), Joining.NONE, 0);
            return new Pushing(tension, -1, 0, spring.length());
        }
        double push = pushBy(side, spring.rate(), spring.length());
        joining.line(sketch, spring.line(), spring.up(), -push);
        return new Pushing(-1, 0, push, spring.length());
    }

    /** Push of a spring whose travel is given: that of standing and rate·(change of length), never a pull. */
    private double pushBy(Side side, double rate, double length) {
        SpringState rest = standing.get(side);
        if (rest == null) {
            throw new IllegalStateException("the axle was not asked at rest first");
        }
        return Math.max(0, rest.push() + rate * (rest.length() - length));
    }

    /** A leaf pushes the axle at its seat. */
    private Pushing leaf(Joining joining, Station at, AxleJoints joints, AxleCase.Held held) {
        Side side = at.side();
        Vector3D seat = LinksJoined.seat(side, joints.side(side).carrier(), liveLinks());
        String leaf = LinksJoined.leafBody(side);
        var measured = liveLinks().links().leaf().orElseThrow().of(side).seat();
        double length = measured.up() - seat.getZ();
        if (held == AxleCase.Held.BY_SPRING) {
            int down = joining.unknown(Joining.AXLE, leaf, seat, Vector3D.MINUS_K);
            return new Pushing(down, 1, 0, length);
        }
        double push = pushBy(side, axle.spring().rate(), length);
        joining.push(Joining.AXLE, seat, new Vector3D(0, 0, -push));
        joining.push(leaf, seat, new Vector3D(0, 0, push));
        return new Pushing(-1, 0, push, length);
    }

    /** The spring between its points, or where base, lean and lower mount say, or upright at the wheel's centre. */
    private SpringAt springAt(Station at, Optional<AxleJoints> joints, AxleCase use) {
        Side side = at.side();
        Optional<AxleJoints.LineAt> points =
                joints.flatMap(all -> all.side(side).spring());
        if (points.isPresent()) {
            Joining.Line line = line(points.get(), side);
            return new SpringAt(
                    line, line.up(), axle.spring().rate(), points.get().length());
        }
        Spring spring = axle.spring();
        if (spring instanceof Spring.Leaning leaning) {
            double lean = leaning.lean();
            Vector3D up = new Vector3D(0, -side.sign() * Math.sin(lean), Math.cos(lean));
            Vector3D measured = new Vector3D(0, side.sign() * leaning.base() / 2, leaning.lowerMountHeight());
            Vector3D bottom = at.carried().apply(measured);
            Vector3D top = bottom.add(leaning.lengths().installed().orElse(0), up);
            // by the way of its lower mount along its line, sideways included
            return new SpringAt(
                    new Joining.Line("top", Joining.SHELL, top, "bottom", at.part(), bottom),
                    up,
                    leaning.rate(),
                    -bottom.subtract(measured).dotProduct(up));
        }
        Vector3D measured = live
                ? new Vector3D(0, side.sign() * spring.halfBase(axle.track()), radius)
                : new Vector3D(0, side.sign() * axle.track() / 2, radius);
        Vector3D bottom = live ? at.carried().apply(measured) : at.centre();
        double ratio = spring.lever(axle.track()).ratio();
        double travel = live ? bottom.getZ() - measured.getZ() : use.travel(side);
        Vector3D top =
                bottom.add(new Vector3D(0, 0, spring.lengths().installed().orElse(0)));
        return new SpringAt(
                new Joining.Line("top", Joining.SHELL, top, "bottom", at.part(), bottom),
                Vector3D.PLUS_K,
                spring.rate() * ratio * ratio,
                -travel);
    }

    private static Joining.Line line(AxleJoints.LineAt line, Side side) {
        return new Joining.Line(
                "top",
                Joining.SHELL,
                vector(line.top()),
                "bottom",
                Joining.part(line.on(), side),
                vector(line.bottom()));
    }

    /** A strut: what its spring, stop and damper do is along it, in its top. */
    private Pushing onStrut(Joining joining, Station at, AxleJoints joints, AxleJoints.StrutAt strut, AxleCase use) {
        Side side = at.side();
        AxleCase.Held held = use.held(side);
        Sketch sketch = LinksJoined.strut(joining, strut, side);
        Vector3D down = vector(strut.along());
        Vector3D top = vector(strut.top());
        double stop = (bumpForce(use, side) + droopForce(use, side)) / strut.ratio();
        Pushing spring;
        boolean unknown = held != AxleCase.Held.BY_SPRING;
        if (!strutCarriesSpring) {
            spring = spring(joining, springAt(at, Optional.of(joints), use), side, held);
        } else if (held == AxleCase.Held.BY_SPRING) {
            int push = alongStrut(joining, sketch, side, top, down);
            return new Pushing(push, 1, -stop, strut.length());
        } else {
            double push = pushBy(side, axle.spring().rate(), strut.length());
            spring = new Pushing(-1, 0, push, strut.length());
            alongStrut(joining, sketch, side, top, down, push);
        }
        if (unknown) {
            alongStrut(joining, sketch, side, top, down);
        } else if (stop != 0) {
            alongStrut(joining, sketch, side, top, down, stop);
        }
        return spring;
    }

    private static int alongStrut(Joining joining, Sketch sketch, Side side, Vector3D top, Vector3D down) {
        int push = joining.unknown(Joining.upright(side), Joining.SHELL, top, down);
        sketch.pushes(0, push, down.negate());
        sketch.along(push, -1);
        return push;
    }

    private static void alongStrut(
            Joining joining, Sketch sketch, Side side, Vector3D top, Vector3D down, double push) {
        joining.push(Joining.upright(side), top, down.scalarMultiply(push));
        sketch.pushes(0, down.scalarMultiply(-push));
        sketch.along(-push);
    }

    /** Travel at a stop: of a live axle u − σ·(base/2)·φs, of a wheel its own. */
    private double travelAt(AxleCase use, Side side, OptionalDouble base) {
        return live
                ? (use.leftTravel() + use.rightTravel()) / 2 - side.sign() * axle.halfBase(base) * suspensionRoll(use)
                : use.travel(side);
    }

    /** Push of the bump stop at wheel or axle, N. */
    private double bumpForce(AxleCase use, Side side) {
        return axle.stops()
                .bump()
                .map(stop -> bumpCurve.force(travelAt(use, side, stop.base()) - stop.gap()))
                .orElse(0.0);
    }

    /** Pull of the droop stop, below zero, N. */
    private double droopForce(AxleCase use, Side side) {
        return axle.stops()
                .droop()
                .map(stop -> Math.min(0, stop.rate() * (travelAt(use, side, stop.base()) + stop.travel())))
                .orElse(0.0);
    }

    private Vector3D stopAt(Station at, OptionalDouble base) {
        return live ? at.carried().apply(new Vector3D(0, at.side().sign() * axle.halfBase(base), radius)) : at.centre();
    }

    private OptionalDouble bumpBase() {
        return axle.stops()
                .bump()
                .map(Stops.Bump::base)
                .or(() -> axle.stops().metal().map(Stops.Metal::base))
                .orElse(OptionalDouble.empty());
    }

    private static Joining.Line upright(Station at, Vector3D where) {
        return new Joining.Line("top", Joining.SHELL, where, "bottom", at.part(), where);
    }

    /** The stops that the travel has in touch, where they are not what is unknown. */
    private void stops(Joining joining, Station at, Optional<AxleJoints> joints, AxleCase use) {
        Side side = at.side();
        double bump = bumpForce(use, side);
        AxleCase.Held held = use.held(side);
        if (bump > 0 && held == AxleCase.Held.BY_SPRING) {
            if (aroundDamper) {
                Joining.Line damper = damper(at, joints, use);
                Vector3D up = damperUp(at, joints, use);
                joining.line(joining.member(PartEnd.on(side, damperMember())), damper, up, -bump / damperRatio(side));
                joining.tell(new Act(
                        damper.bottomOn(),
                        "bump stop" + of(side),
                        damper.bottomAt(),
                        up.scalarMultiply(-bump / damperRatio(side)),
                        Vector3D.ZERO));
            } else {
                Vector3D where = stopAt(at, bumpBase());
                stop(joining, at, "bumpStop", "bump stop", where, bump);
            }
        }
        double droop = droopForce(use, side);
        if (droop < 0 && held == AxleCase.Held.BY_SPRING) {
            Vector3D where = stopAt(at, axle.stops().droop().orElseThrow().base());
            stop(joining, at, "droopStop", "droop stop", where, droop);
        }
    }

    private static void stop(Joining joining, Station at, String member, String what, Vector3D where, double push) {
        joining.line(joining.member(PartEnd.on(at.side(), member)), upright(at, where), Vector3D.PLUS_K, -push);
        joining.tell(Act.force(at.part(), what + of(at.side()), where, new Vector3D(0, 0, -push)));
    }

    private String damperMember() {
        return "damper";
    }

    /** The unknown of a side whose spring is known: the stop, or the damper at its full length. */
    private void instead(Joining joining, Station at, Optional<AxleJoints> joints, AxleCase use) {
        Side side = at.side();
        AxleCase.Held held = use.held(side);
        boolean hasDamper = axle.damper().isPresent()
                || joints.flatMap(all -> all.side(side).damper()).isPresent();
        boolean byDamper = hasDamper && (held == AxleCase.Held.BY_DAMPER || aroundDamper);
        if (byDamper) {
            joining.line(
                    joining.member(PartEnd.on(side, "damper")),
                    damper(at, joints, use),
                    damperUp(at, joints, use),
                    Joining.NONE,
                    0);
        } else if (held == AxleCase.Held.BY_STOP) {
            Joining.Line line = upright(at, stopAt(at, bumpBase()));
            joining.line(joining.member(PartEnd.on(side, "bumpStop")), line, Vector3D.PLUS_K, Joining.NONE, 0);
        } else {
            Vector3D where = stopAt(at, axle.stops().droop().orElseThrow().base());
            joining.line(
                    joining.member(PartEnd.on(side, "droopStop")),
                    upright(at, where),
                    Vector3D.PLUS_K,
                    Joining.NONE,
                    0);
        }
    }

    /** Between its eyes, or by its base and lean, or in the spring's place. */
    private Joining.Line damper(Station at, Optional<AxleJoints> joints, AxleCase use) {
        Optional<AxleJoints.LineAt> points =
                joints.flatMap(all -> all.side(at.side()).damper());
        if (points.isPresent()) {
            return line(points.get(), at.side());
        }
        if (live && axle.damper().isPresent() && axle.damper().get().lean().isPresent()) {
            double half = axle.halfBase(axle.damper().get().base());
            Vector3D bottom = at.carried()
                    .apply(new Vector3D(
                            0, at.side().sign() * half, axle.unsprung().height()));
            return new Joining.Line("top", Joining.SHELL, bottom, "bottom", at.part(), bottom);
        }
        return springAt(at, joints, use).line();
    }

    private Vector3D damperUp(Station at, Optional<AxleJoints> joints, AxleCase use) {
        Optional<AxleJoints.LineAt> points =
                joints.flatMap(all -> all.side(at.side()).damper());
        if (points.isPresent()) {
            return line(points.get(), at.side()).up();
        }
        if (live && axle.damper().isPresent() && axle.damper().get().lean().isPresent()) {
            double lean = axle.damper().get().lean().getAsDouble();
            return new Vector3D(0, -at.side().sign() * Math.sin(lean), Math.cos(lean));
        }
        return springAt(at, joints, use).up();
    }

    /** −d(length of the damper) per bump travel. */
    private double damperRatio(Side side) {
        if (linkage.isPresent() && linkage.get().hasDampers()) {
            return linkage.get().damperRatio(side);
        }
        return axle.geometry().dampers().map(lever -> lever.ratio()).orElse(1.0);
    }
}
