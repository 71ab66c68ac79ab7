package evenhand.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.RoadCars;
import evenhand.car.Side;
import evenhand.car.Weights;
import evenhand.car.links.AxleLinks;
import evenhand.car.links.Link;
import evenhand.car.links.LinkedAxle;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.car.links.Locator;
import evenhand.car.links.MiddleLink;
import evenhand.car.links.Pair;
import evenhand.car.links.Point;
import evenhand.car.links.TorqueArm;
import evenhand.car.mounts.HardUse;
import evenhand.car.mounts.PartEnd;
import evenhand.linkage.Assembly;
import evenhand.linkage.AxleJoints;
import evenhand.linkage.AxleLinkage;
import evenhand.linkage.LiveAxleLinkage;
import evenhand.linkage.Place;
import evenhand.turn.LinkedCars;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** What must hold of any car, whatever holds its axles. */
class LoadsInvariantsTest {
    private static final long SEEDS = 60;
    private static final double RADIUS = 40;

    private interface Claim {
        void of(String which, Car car);
    }

    /** Cars on links of every kind, and cars known by coefficients, with stops and dampers. */
    private static void always(Claim claim) {
        int asked = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            Optional<Car> linked = LinkedCars.damped(seed);
            if (linked.isPresent()) {
                claim.of("on links " + seed, linked.get().settled());
                asked++;
            }
            claim.of("by coefficients " + seed, RoadCars.damped(seed).settled());
        }
        assertThat(asked).as("cars on links").isGreaterThan((int) SEEDS / 2);
    }

    private static CarLoads loads(Car car) {
        return CarLoads.of(car, uses(), RADIUS, EnumSet.allOf(Side.class));
    }

    private static List<HardUse> uses() {
        List<HardUse> uses = new ArrayList<>();
        uses.add(new HardUse.Standing("Standing", 1));
        uses.add(new HardUse.Cornering("Bend", OptionalDouble.of(4), 1));
        uses.add(new HardUse.Braking("Braking", 5, 1));
        uses.add(new HardUse.Launch("Start", 1, 1.5, 1));
        uses.add(new HardUse.Kerb("Kerb", 2, 1, 0.05, 1));
        uses.add(new HardUse.Pothole("Pothole", 3, 2, 1));
        uses.add(new HardUse.Hanging("Hung up", 2, 1));
        uses.add(new HardUse.Given("Rule", Map.of("rearLeft", new HardUse.Force(-5000, 2500, 9000)), 1.5));
        return uses;
    }

    private static double largest(AxleLoads axle) {
        double largest = 1;
        for (Act act : axle.acts()) {
            largest = Math.max(largest, act.force().getNorm());
        }
        for (MemberLoad member : axle.members()) {
            largest = Math.max(largest, member.greatest());
        }
        return largest;
    }

    /** Sums of force and of moment about the origin. */
    private static final class Sum {
        private Vector3D force = Vector3D.ZERO;
        private Vector3D moment = Vector3D.ZERO;

        void add(Vector3D at, Vector3D itsForce, Vector3D itsMoment, double sign) {
            force = force.add(sign, itsForce);
            moment = moment.add(sign, at.crossProduct(itsForce).add(itsMoment));
        }

        void isZero(String which, double within) {
            assertThat(force.getNorm()).as(which + ", force").isCloseTo(0, within(within));
            assertThat(moment.getNorm()).as(which + ", moment").isCloseTo(0, within(within));
        }
    }

    /** Whether an act is told by members too: stops, and a bar by its drop links. */
    private static boolean byMembers(AxleLoads axle, Act act) {
        return act.what().contains("stop")
                || (act.what().equals("bar")
                        && axle.members().stream()
                                .anyMatch(member -> member.member().startsWith("barLink")));
    }

    /** The sums on every part: members that are parts themselves feel the opposite of what their ends do. */
    private static Map<String, Sum> sums(AxleLoads axle) {
        Map<String, Sum> sums = new HashMap<>();
        for (Act act : axle.acts()) {
            if (!byMembers(axle, act)) {
                sums.computeIfAbsent(act.on(), on -> new Sum()).add(act.at(), act.force(), act.moment(), 1);
            }
        }
        for (MemberLoad member : axle.members()) {
            for (EndLoad end : member.ends()) {
                sums.computeIfAbsent(end.on(), on -> new Sum()).add(end.at(), end.force(), end.moment(), 1);
                String itself = member.member().equals("crankPivot") ? "crank" : member.member();
                if (itself.equals("crank") || itself.contains("Arm")) {
                    sums.computeIfAbsent(itself, on -> new Sum()).add(end.at(), end.force(), end.moment(), -1);
                }
            }
        }
        return sums;
    }

    @Test
    void everyPartIsInEquilibrium() {
        int[] parts = new int[1];
        always((which, car) -> {
            for (UseAnswer.Carried one : loads(car).carried()) {
                one.axles()
                        .forEach((end, axle) -> sums(axle).forEach((part, sum) -> {
                            boolean strutOrLeaf = axle.members().stream()
                                    .anyMatch(m -> m.member().startsWith("leaf")
                                            || m.member().startsWith("strut"));
                            if (!part.equals("body") && !(strutOrLeaf)) {
                                sum.isZero(which + ": " + one.title() + ", " + end + " " + part, 1e-9 * largest(axle));
                                parts[0]++;
                            }
                        }));
            }
        });
        assertThat(parts[0]).isGreaterThan(2000);
    }

    /** Also where a strut or a leaf stands between the part and the shell, which are told by their ends on the shell alone. */
    @Test
    void theShellFeelsWhatTheRoadPutsInLessWeightAndInertia() {
        always((which, car) -> {
            for (UseAnswer.Carried one : loads(car).carried()) {
                one.axles().forEach((end, axle) -> {
                    Sum sum = new Sum();
                    for (Act act : axle.acts()) {
                        if (!byMembers(axle, act)) {
                            sum.add(act.at(), act.force(), act.moment(), 1);
                        }
                    }
                    for (MemberLoad member : axle.members()) {
                        for (EndLoad at : member.ends()) {
                            if (at.on().equals("body")) {
                                sum.add(at.at(), at.force(), at.moment(), -1);
                            }
                        }
                    }
                    sum.isZero(which + ": " + one.title() + ", " + end, 1e-9 * largest(axle));
                });
            }
        });
    }

    /** What pulls the left lower link in a bend to the left pulls the mirrored car's right one in a bend to the right. */
    @Test
    void aMirroredCarCarriesTheMirrorImage() {
        int[] compared = new int[1];
        always((which, car) -> {
            if (which.startsWith("on links")) {
                return; // a car's mirror keeps its links as they were given
            }
            Map<String, UseAnswer.Carried> mirror = new HashMap<>();
            loads(car.mirrored()).carried().forEach(one -> mirror.put(one.title(), one));
            for (UseAnswer.Carried one : loads(car).carried()) {
                if (one.use() instanceof HardUse.Given) {
                    continue; // its forces do not go over to the other side
                }
                String title = one.hand()
                        .map(side -> HardUse.handed(one.use().name(), side.other()))
                        .orElse(one.title());
                UseAnswer.Carried other = mirror.get(title);
                for (MemberLoad member : one.members()) {
                    for (EndLoad end : member.ends()) {
                        PartEnd there = new PartEnd(member.axle(), member.member(), end.end()).mirrored();
                        EndLoad image = other.member(there.part())
                                .orElseThrow()
                                .end(there.end())
                                .orElseThrow();
                        assertThat(image.force().getX())
                                .as(which + title + there)
                                .isCloseTo(end.force().getX(), NEAR);
                        assertThat(image.force().getY())
                                .as(which + title + there)
                                .isCloseTo(-end.force().getY(), NEAR);
                        assertThat(image.force().getZ())
                                .as(which + title + there)
                                .isCloseTo(end.force().getZ(), NEAR);
                        compared[0]++;
                    }
                }
            }
        });
        assertThat(compared[0]).isGreaterThan(5000);
    }

    private static final org.assertj.core.data.Offset<Double> NEAR = within(1e-4);

    /** Where no stop is touched and nothing binds, every member carries twice as much under twice the force. */
    @Test
    void twiceTheForceIsTwiceEveryMember() {
        always((which, car) -> {
            double weight = car.staticLoad(End.REAR, Side.LEFT);
            HardUse.Force once = new HardUse.Force(-0.3 * weight, 0.2 * weight, 1.4 * weight);
            HardUse.Force less = new HardUse.Force(-0.15 * weight, 0.1 * weight, 1.2 * weight);
            List<HardUse> uses = List.of(
                    new HardUse.Standing("Standing", 1),
                    new HardUse.Given("once", Map.of("rearLeft", less), 1),
                    new HardUse.Given("twice", Map.of("rearLeft", once), 1));
            List<UseAnswer.Carried> cases =
                    CarLoads.of(car, uses, RADIUS, EnumSet.allOf(Side.class)).carried();
            // what is added to standing doubles
            double scale = 1e-8 * weight;
            for (MemberLoad still : cases.get(0).members()) {
                Vector3D one = difference(cases.get(1), still);
                Vector3D two = difference(cases.get(2), still);
                assertThat(two.subtract(one.scalarMultiply(2)).getNorm())
                        .as(which + " " + still.part())
                        .isCloseTo(0, within(scale));
            }
        });
    }

    /** Where a bracket stands on its rod's own line is nobody's concern but its own. */
    @Test
    void aBracketMovedAlongItsRodChangesNoForce() {
        int[] asked = new int[1];
        always((which, car) -> {
            if (!(car.rear() instanceof Axle.Live rear)
                    || !(rear.links().orElse(null) instanceof LinkedLiveAxle given)
                    || given.links().lowerLink().isEmpty()) {
                return;
            }
            // where it stands as measured: elsewhere a shorter rod would swing further
            LinkedLiveAxle linked = asMeasured(given);
            Link left = linked.links().lowerLink().orElseThrow().left();
            double share = 0.2;
            Point body = new Point(
                    left.body().ahead()
                            + share * (left.body().ahead() - left.axle().ahead()),
                    left.body().out() + share * (left.body().out() - left.axle().out()),
                    left.body().up() + share * (left.body().up() - left.axle().up()));
            Link moved = new Link(body, left.axle(), left.rod());
            AxleLinks links = linked.links();
            LinkedLiveAxle other = new LinkedLiveAxle(
                    linked.stance(),
                    new AxleLinks(
                            Optional.of(
                                    new Pair<>(moved, links.lowerLink().get().right())),
                            links.upperLink(),
                            links.middleLink(),
                            links.torqueArm(),
                            links.leaf()),
                    linked.locator(),
                    linked.mounts(),
                    linked.propShaft(),
                    linked.sideView(),
                    linked.carried());
            asked[0]++;
            AxleCase blow =
                    AxleCase.standing(new Vector3D(-3000, 1000, 4000), new Vector3D(0, -500, 3000), Weights.GRAVITY);
            AxleLoads before = new AxleStatics(on(car, rear, linked), End.REAR).stand(blow);
            AxleLoads after = new AxleStatics(on(car, rear, other), End.REAR).stand(blow);
            for (int i = 0; i < before.members().size(); i++) {
                MemberLoad one = before.members().get(i);
                MemberLoad two = after.members().get(i);
                assertThat(two.greatest()).as(which + " " + one.part()).isCloseTo(one.greatest(), within(1e-5));
            }
        });
        assertThat(asked[0]).isGreaterThan(5);
    }

    private static LinkedLiveAxle asMeasured(LinkedLiveAxle given) {
        AxleLinks links = given.links();
        return new LinkedLiveAxle(
                given.stance().down(0),
                new AxleLinks(
                        links.lowerLink().map(LoadsInvariantsTest::asMeasured),
                        links.upperLink().map(LoadsInvariantsTest::asMeasured),
                        links.middleLink()
                                .map(l -> new MiddleLink(
                                        l.body(), l.axle(), l.rod().longer(0))),
                        links.torqueArm()
                                .map(l -> new TorqueArm(
                                        l.hanger(), l.end(), l.dropLink().longer(0))),
                        links.leaf()),
                given.locator().map(LoadsInvariantsTest::asMeasured),
                given.mounts(),
                given.propShaft(),
                given.sideView(),
                given.carried());
    }

    private static Pair<Link> asMeasured(Pair<Link> pair) {
        return new Pair<>(asMeasured(pair.left()), asMeasured(pair.right()));
    }

    private static Link asMeasured(Link link) {
        return new Link(link.body(), link.axle(), link.rod().longer(0));
    }

    private static Locator asMeasured(Locator locator) {
        if (locator instanceof Locator.PanhardPoints rod) {
            return new Locator.PanhardPoints(rod.body(), rod.axle(), rod.rod().longer(0));
        }
        if (locator instanceof Locator.WattPoints watt) {
            return new Locator.WattPoints(
                    watt.carriedBy(),
                    watt.pivot(),
                    watt.upper(),
                    watt.lower(),
                    watt.tilt(),
                    new Locator.WattRod(
                            watt.upperRod().end(), watt.upperRod().rod().longer(0)),
                    new Locator.WattRod(
                            watt.lowerRod().end(), watt.lowerRod().rod().longer(0)));
        }
        return locator;
    }

    private static Car on(Car car, Axle.Live rear, LinkedLiveAxle links) {
        Axle.Live other = new Axle.Live(
                rear.track(),
                rear.unsprung(),
                rear.lateralLocator(),
                rear.spring(),
                rear.bar(),
                rear.stops(),
                rear.damper(),
                rear.lowered(),
                rear.alignment(),
                rear.tyre(),
                rear.rollInertia(),
                rear.reaction(),
                Optional.of(links),
                rear.motion());
        return new Car(
                car.weights(),
                car.wheelbase(),
                car.cgHeight(),
                car.chassisTorsionalStiffness(),
                car.steering(),
                car.air(),
                car.rollingResistance(),
                car.front(),
                other,
                car.drive(),
                car.pitchInertia(),
                car.seat());
    }

    /**
     * The work of what acts from outside, in heave, in roll and of one wheel, is that of the springs, drop links and struts: the
     * links between, whatever they are, do none.
     */
    @Test
    void theWorkOfWhatActsIsThatOfTheSprings() {
        int[] asked = new int[1];
        always((which, car) -> {
            for (End end : End.values()) {
                Optional<LinkedAxle> links = car.linked(end);
                if (links.isEmpty() || !(Assembly.of(links.get()) instanceof Assembly.Standing standing)) {
                    continue;
                }
                AxleLinkage axle = standing.linkage();
                boolean gives = axle instanceof LiveAxleLinkage live
                        && (live.overConstrained() || !live.joints().leaves().isEmpty());
                boolean ideal = links.get() instanceof LinkedLiveAxle of
                        && of.locator().filter(Locator.Ideal.class::isInstance).isPresent();
                if (gives || ideal) {
                    continue; // forces of what gives do work, and an ideal locator's height goes its own way on a
                    // leaning axle
                }
                for (UseAnswer.Carried one : loads(car).carried()) {
                    AxleLoads loads = one.axles().get(end);
                    if (loads == null || !(axle.moveTo(loads.leftTravel(), loads.rightTravel()))) {
                        continue;
                    }
                    for (double[] way : new double[][] {{1, 1}, {1, -1}, {1, 0}}) {
                        asked[0]++;
                        double work = work(axle, loads, way, car.wheelbase(), end);
                        assertThat(work)
                                .as(which + ": " + one.title() + ", " + end)
                                .isCloseTo(0, within(2e-6 * largest(loads)));
                    }
                }
            }
        });
        assertThat(asked[0]).isGreaterThan(500);
    }

    /** Power of acts and of members between shell and axle over a small motion, by central differences. */
    private static double work(AxleLinkage axle, AxleLoads loads, double[] way, double wheelbase, End end) {
        AxleJoints here = axle.joints();
        double h = 5e-5;
        assertThat(axle.moveTo(loads.leftTravel() + h * way[0], loads.rightTravel() + h * way[1]))
                .isTrue();
        AxleJoints above = axle.joints();
        assertThat(axle.moveTo(loads.leftTravel() - h * way[0], loads.rightTravel() - h * way[1]))
                .isTrue();
        AxleJoints below = axle.joints();
        axle.moveTo(loads.leftTravel(), loads.rightTravel());
        Vector3D origin = end == End.FRONT ? Vector3D.ZERO : new Vector3D(-wheelbase, 0, 0);
        double power = 0;
        for (Act act : loads.acts()) {
            if (byMembers(loads, act)) {
                continue;
            }
            power += power(act.on(), act.at(), act.force(), act.moment(), here, above, below, origin, h);
        }
        for (MemberLoad member : loads.members()) {
            boolean works = member.member().matches("(spring|damper|bumpStop|droopStop|barLink|strut).*");
            if (!works) {
                continue;
            }
            if (member.member().startsWith("strut")) {
                Side side = member.member().endsWith("Left") ? Side.LEFT : Side.RIGHT;
                double shorter = (above.side(side).strut().orElseThrow().length()
                                - below.side(side).strut().orElseThrow().length())
                        / (2 * h);
                power -= member.axial().orElse(0) * shorter;
                continue;
            }
            EndLoad lower = member.ends().get(1);
            power += power(lower.on(), lower.at(), lower.force(), lower.moment(), here, above, below, origin, h);
        }
        return power;
    }

    private static double power(
            String on,
            Vector3D at,
            Vector3D force,
            Vector3D moment,
            AxleJoints here,
            AxleJoints above,
            AxleJoints below,
            Vector3D origin,
            double h) {
        Vector3D from = at.subtract(origin);
        Vector3D step = moved(on, from, here, above).subtract(moved(on, from, here, below));
        double power = force.dotProduct(step) / (2 * h);
        // a moment as three couples of two forces a metre apart
        for (Vector3D axis : List.of(Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K)) {
            Vector3D across = axis.orthogonal();
            Vector3D pull = axis.crossProduct(across).scalarMultiply(moment.dotProduct(axis));
            Vector3D far = from.add(across);
            Vector3D turned = moved(on, far, here, above).subtract(moved(on, far, here, below));
            power += pull.dotProduct(turned.subtract(step)) / (2 * h);
        }
        return power;
    }

    /** Where a point of a part is in another pose. */
    private static Vector3D moved(String on, Vector3D from, AxleJoints here, AxleJoints there) {
        AxleJoints.Frame before = frame(on, here);
        AxleJoints.Frame after = frame(on, there);
        Place zero = new Place(0, 0, 0);
        Place measured = before.seen(Joining.place(from).minus(before.place(zero)));
        return Joining.vector(after.place(measured));
    }

    private static AxleJoints.Frame frame(String on, AxleJoints joints) {
        Side side = on.endsWith("Right") ? Side.RIGHT : Side.LEFT;
        AxleJoints.SideAt at = joints.side(side);
        if (on.startsWith("lowerArm")) {
            return at.arms().get(0).frame();
        }
        return on.startsWith("upperArm") ? at.arms().get(1).frame() : at.carrier();
    }

    private static Vector3D difference(UseAnswer.Carried one, MemberLoad still) {
        // by the added force: load and standing differ by (−0.15, 0.1, 0.2)·weight, twice that, for the wheel stands at
        // 1·weight
        return one.member(still.part())
                .orElseThrow()
                .ends()
                .get(0)
                .force()
                .subtract(still.ends().get(0).force());
    }
}
