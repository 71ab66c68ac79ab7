package evenhand.structure;

import static evenhand.structure.Joining.vector;

import evenhand.car.Axle;
import evenhand.car.Curve;
import evenhand.car.Side;
import evenhand.car.Spring;
import evenhand.car.Stops;
import evenhand.car.links.LinkedAxle;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.car.links.SpringLine;
import evenhand.car.mounts.PartEnd;
import evenhand.linkage.AxleJoints;
import evenhand.linkage.AxleLinkage;
import evenhand.suspension.PointLines;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * What carries an axle up and down: springs, stops, dampers at their full length, struts and leaves, each where it works. Of every side
 * one of them is unknown; where the travel decides a spring's force it is that of standing and rate·(change of length), never a pull.
 */
final class Carriers {
    private final Axle axle;
    private final Optional<AxleLinkage> linkage;
    private final boolean live;
    private final double radius; // of the wheels where the axle was measured, m
    private final boolean strutCarriesSpring;
    private final PointLines bumpCurve;
    private final boolean aroundDamper;
    private final Map<Side, SpringState> standing = new EnumMap<>(Side.class);

    /** Push of a spring, N, and its length, m, where both are known together. */
    private record SpringState(double push, double length) {}

    /** A spring where it works: {@code length} and {@code rate} make its push change by rate·(length before − length). */
    private record SpringAt(Joining.Line line, Vector3D up, double rate, double length) {}

    Carriers(Axle axle, Optional<AxleLinkage> linkage, double radius) {
        this.axle = axle;
        this.linkage = linkage;
        this.radius = radius;
        live = axle instanceof Axle.Live;
        Optional<LinkedAxle> given = linkage.map(AxleLinkage::given);
        strutCarriesSpring = given.flatMap(links -> links.mounts().spring())
                .filter(SpringLine.AroundStrut.class::isInstance)
                .isPresent();
        Optional<Stops.Bump> bump = axle.stops().bump();
        bumpCurve = new PointLines(bump.map(Stops.Bump::curve).orElse(Curve.NO_FORCE));
        aroundDamper = bump.isPresent() && bump.get().aroundDamper();
    }

    private LinkedLiveAxle liveLinks() {
        return (LinkedLiveAxle) linkage.orElseThrow().given();
    }

    /** Keeps what a spring does in the first case, the car at rest. */
    void keep(Side side, Pushing spring, double push) {
        standing.putIfAbsent(side, new SpringState(push, spring.length()));
    }

    /** What a spring pushes once the unknowns are known, and how long it is. */
    record Pushing(int unknown, double sign, double known, double length) {
        double push(double[] unknowns) {
            return known + (unknown < 0 ? 0 : sign * unknowns[unknown]);
        }
    }

    /** Spring, stops and damper of one side, one of them unknown. */
    Pushing carry(Joining joining, Station at, Optional<AxleJoints> joints, AxleCase use) {
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
                ? (use.leftTravel() + use.rightTravel()) / 2
                        - side.sign() * axle.halfBase(base) * use.suspensionRoll(axle.track())
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
                joining.line(joining.member(PartEnd.on(side, "damper")), damper, up, -bump / damperRatio(side));
                joining.tell(new Act(
                        damper.bottomOn(),
                        "bump stop" + Station.words(side),
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
        joining.tell(Act.force(at.part(), what + Station.words(at.side()), where, new Vector3D(0, 0, -push)));
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
