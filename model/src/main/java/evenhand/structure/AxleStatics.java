package evenhand.structure;

import static evenhand.structure.Joining.place;
import static evenhand.structure.Joining.vector;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.links.LinkedAxle;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.car.mounts.PartEnd;
import evenhand.linkage.Assembly;
import evenhand.linkage.AxleJoints;
import evenhand.linkage.AxleLinkage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    private final Carriers carriers;

    AxleStatics(Car car, End end) {
        this.end = end;
        axle = car.axle(end);
        live = axle instanceof Axle.Live;
        Optional<LinkedAxle> given = car.linked(end);
        linkage = given.map(AxleStatics::standing);
        radius = given.map(links -> links.stance().loadedRadius())
                .orElse(axle.tyre().loadedRadius());
        carriers = new Carriers(axle, linkage, radius);
    }

    private static AxleLinkage standing(LinkedAxle links) {
        if (Assembly.of(links) instanceof Assembly.Standing standing) {
            return standing.linkage();
        }
        throw new IllegalStateException("links that stood at rest stand no more");
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
        List<Carriers.Pushing> springs = new ArrayList<>();
        for (Station station : stations) {
            springs.add(carriers.carry(joining, station, joints, use));
        }
        Joining.Solved solved = joining.solve();
        boolean pulls = false;
        for (Station station : stations) {
            Carriers.Pushing spring = springs.get(station.side().index());
            double push = spring.push(solved.unknowns());
            pulls |= push < -PULLS;
            carriers.keep(station.side(), spring, push);
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

    private static void ground(Joining joining, List<Station> stations, AxleCase use) {
        for (Station at : stations) {
            Vector3D where = at.contact().add(new Vector3D(0, 0, use.raise(at.side())));
            joining.act(Act.force(at.part(), "wheel" + Station.words(at.side()), where, use.ground(at.side())));
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

    /**
     * The bar: a moment on a live axle, forces at the wheels; with points along both drop links, alike in size and against each
     * other, so that their work in roll is that of the moment: N = −2·K·φs/(t·(a_L + a_R)), a = how fast a link's lower end goes
     * along it as its wheel rises.
     */
    private void bar(Joining joining, List<Station> stations, Optional<AxleJoints> joints, AxleCase use) {
        double moment = axle.barRollStiffness() * use.suspensionRoll(axle.track());
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
}
