package evenhand.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Curve;
import evenhand.car.End;
import evenhand.car.LateralLocator.CarriedBy;
import evenhand.car.Side;
import evenhand.car.Stops;
import evenhand.car.links.Arm;
import evenhand.car.links.AxleLinks;
import evenhand.car.links.Carried;
import evenhand.car.links.CarriedOn;
import evenhand.car.links.Clearance;
import evenhand.car.links.Dampers;
import evenhand.car.links.Leaf;
import evenhand.car.links.Link;
import evenhand.car.links.LinkedAxle;
import evenhand.car.links.LinkedAxles;
import evenhand.car.links.LinkedAxles.Kind;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.car.links.LinkedWheels;
import evenhand.car.links.Locator;
import evenhand.car.links.MiddlePoint;
import evenhand.car.links.Mounts;
import evenhand.car.links.Pair;
import evenhand.car.links.Point;
import evenhand.car.links.PropShaft;
import evenhand.car.links.Rod;
import evenhand.car.links.SpringLine;
import evenhand.car.links.Stance;
import evenhand.car.links.Strut;
import evenhand.car.links.TieRod;
import evenhand.car.links.WheelLinks;
import evenhand.quantity.InvalidValue;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.MultivariateFunction;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.SimplexOptimizer;
import org.junit.jupiter.api.Test;

/** Rows, limits, heights and records of the travel. */
class TravelTest {
    private static TravelAnswer.Followed follow(LinkedAxle axle) {
        return (TravelAnswer.Followed) Travel.of(axle, Ranges.USUAL);
    }

    @Test
    void rowsAreMultiplesOfTheStepAndBothEnds() {
        LinkedAxle axle = LinkedAxles.of(Kind.TORQUE_ARM_PANHARD, 3);
        TravelAnswer.Followed answer =
                (TravelAnswer.Followed) Travel.of(axle, new Ranges(0.037, 0.02, Math.toRadians(2.5), 0.5, 0.01));
        assertThat(answer.heave().stream().map(AxleState::leftTravel))
                .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-12 ? 0 : Double.compare(a, b))
                .containsExactly(-0.02, -0.01, 0.0, 0.01, 0.02, 0.03, 0.037);
        assertThat(answer.roll()).hasSize(7);
        double half = axle.stance().track() / 2;
        assertThat(answer.roll().get(6).leftTravel()).isCloseTo(-half * Math.tan(Math.toRadians(2.5)), within(1e-12));
        assertThat(answer.roll().get(6).rightTravel()).isPositive();
        assertThat(answer.oneWheel())
                .allSatisfy(row -> assertThat(row.rightTravel()).isZero());
        assertThat(answer.steer()).isEmpty();
        assertThat(answer.rest().live().orElseThrow().foreAft()).isZero();
    }

    @Test
    void theRackTurnsTheWheelsByTheReferenceSteer() {
        LinkedWheels front = (LinkedWheels) frontWheels();
        TravelAnswer.Followed answer = follow(front);
        assertThat(answer.steer()).hasSize(13);
        AxleState little = ((TravelAnswer.Followed)
                        Travel.of(front, new Ranges(0.05, 0.05, 0.05, Math.toRadians(1e-3), 0.01)))
                .steer()
                .get(2);
        double left = little.left().own().orElseThrow().steer()
                - answer.rest().left().own().orElseThrow().steer();
        double right = little.right().own().orElseThrow().steer()
                - answer.rest().right().own().orElseThrow().steer();
        assertThat((left + right) / 2).isCloseTo(Math.toRadians(1e-3), within(1e-9));
        assertThat(answer.rest().steering().orElseThrow().rack()).isZero();
        // the rack stands behind the axle's line: it goes to the right for a turn to the left
        assertThat(little.steering().orElseThrow().rack()).isNegative();
        for (AxleState row : answer.steer()) {
            double steer = row.steering().orElseThrow().referenceSteer();
            if (steer == 0) {
                assertThat(row.steering().orElseThrow().ackermannShare()).isEmpty();
                continue;
            }
            double tangent = Math.tan(steer);
            double half = front.stance().track() / 2 / front.sideView().wheelbase();
            double ideal = Math.atan(tangent / (1 - half * tangent)) - Math.atan(tangent / (1 + half * tangent));
            double difference = row.left().own().orElseThrow().steer()
                    - row.right().own().orElseThrow().steer();
            assertThat(row.steering().orElseThrow().ackermannShare().orElseThrow())
                    .isCloseTo(difference / ideal, within(1e-12));
        }
    }

    private static LinkedAxle frontWheels() {
        return new LinkedWheels(
                new Stance(End.FRONT, 1.42, 0, 0.3, -0.01, 0, 0),
                new WheelLinks.DoubleWishbone(
                        Pair.alike(new Arm(
                                new Point(0.15, 0.35, 0.2), new Point(-0.15, 0.35, 0.2), new Point(0, 0.66, 0.18))),
                        Pair.alike(new Arm(
                                new Point(0.1, 0.42, 0.45), new Point(-0.1, 0.42, 0.47), new Point(-0.02, 0.63, 0.48))),
                        Pair.alike(new TieRod(
                                new Point(-0.12, 0.36, 0.246),
                                new Point(-0.12, 0.63, 0.235),
                                Rod.AS_MEASURED,
                                Optional.empty()))),
                Mounts.NONE,
                LinkedAxles.CAR,
                Optional.empty());
    }

    /** A swing of long arms far ahead moves the inner end as a rack does; a short one bends its way. */
    @Test
    void aSwingStartsLeftAsTheRackDoes() {
        LinkedWheels rack = (LinkedWheels) frontWheels();
        LinkedWheels swing = swung(rack, new TieRod.Swing(0.05, 0.40));
        WheelPairLinkage one = (WheelPairLinkage) ((Assembly.Standing) Assembly.of(rack)).linkage();
        WheelPairLinkage two = (WheelPairLinkage) ((Assembly.Standing) Assembly.of(swing)).linkage();
        // the pivot stands 40 mm outside: the end also goes along the car by 0.04/0.17 per rack, seen by the rod as yaw
        // alone
        assertThat(two.steerPerRack()).isCloseTo(one.steerPerRack(), within(0.05 * Math.abs(one.steerPerRack())));
        double[] body = new double[3];
        double[] end = new double[3];
        WheelLinkage left = two.wheel(Side.LEFT);
        left.moveTo(0, 1e-6);
        left.pose().tieRodEnds(body, end);
        assertThat(body[1] - 0.36).isCloseTo(1e-6, within(1e-11));
        left.moveTo(0, 0.03);
        left.pose().tieRodEnds(body, end);
        assertThat(Math.hypot(body[0] - 0.05, body[1] - 0.40)).isCloseTo(Math.hypot(0.17, 0.04), within(1e-12));
        double h = 1e-4;
        left.moveTo(0.01, 0.02 + h);
        double more = left.steer();
        left.moveTo(0.01, 0.02 - h);
        double less = left.steer();
        left.moveTo(0.01, 0.02);
        assertThat(left.steerByRack()).isCloseTo((more - less) / (2 * h), within(1e-5));
    }

    private static LinkedWheels swung(LinkedWheels given, TieRod.Swing swing) {
        WheelLinks.DoubleWishbone w = (WheelLinks.DoubleWishbone) given.links();
        TieRod rod = w.tieRod().left();
        return new LinkedWheels(
                given.stance(),
                new WheelLinks.DoubleWishbone(
                        w.lowerArm(),
                        w.upperArm(),
                        Pair.alike(new TieRod(rod.inner(), rod.outer(), rod.rod(), Optional.of(swing)))),
                given.mounts(),
                given.sideView(),
                given.carried());
    }

    @Test
    void aLimitStandsWhereItsFigureCrossesItsBound() {
        int[] checked = new int[TravelLimit.Kind.values().length];
        for (Kind kind : Kind.values()) {
            for (long seed = 0; seed < 8; seed++) {
                LinkedAxle given = LinkedAxles.of(kind, seed);
                TravelAnswer.Followed answer = follow(given);
                AxleLinkage axle = ((Assembly.Standing) Assembly.of(given)).linkage();
                double half = given.stance().track() / 2;
                for (TravelLimit limit : answer.limits()) {
                    double at = limit.motion().sign() * limit.at();
                    double travel = limit.motion().isRoll() ? half * Math.tan(at) : at;
                    axle.rest();
                    boolean there = axle.moveTo(limit.motion().isRoll() ? -travel : travel, travel);
                    if (limit.at() == 0) {
                        continue;
                    }
                    checked[limit.kind().ordinal()]++;
                    String which = kind + " " + seed + " " + limit;
                    switch (limit.kind()) {
                        case DAMPER_CLOSED ->
                            assertThat(axle.mounts(sideOf(limit.part())).damperLength())
                                    .as(which)
                                    .isCloseTo(
                                            given.mounts()
                                                    .damper()
                                                    .orElseThrow()
                                                    .closedLength()
                                                    .orElseThrow(),
                                            within(1e-9));
                        case DAMPER_OPEN ->
                            assertThat(axle.mounts(sideOf(limit.part())).damperLength())
                                    .as(which)
                                    .isCloseTo(
                                            given.mounts()
                                                    .damper()
                                                    .orElseThrow()
                                                    .openLength()
                                                    .orElseThrow(),
                                            within(1e-9));
                        case CLEARANCE -> {
                            Gap gap = axle.gaps().stream()
                                    .filter(g -> g.given.name().equals(limit.part()))
                                    .findFirst()
                                    .orElseThrow();
                            assertThat(gap.gap()).as(which).isCloseTo(gap.given.least(), within(1e-9));
                        }
                        case JOINT -> {
                            JointedLink link = axle.links().stream()
                                    .filter(l -> l.name.equals(limit.part()))
                                    .findFirst()
                                    .orElseThrow();
                            link.read();
                            assertThat(Math.max(link.bodyAngle, link.movingAngle))
                                    .as(which)
                                    .isCloseTo(link.rod.jointLimit().orElseThrow(), within(1e-8));
                        }
                        case CANNOT_REACH, CRANK_OVER_CENTRE -> {
                            axle.rest();
                            double over = travel + Math.copySign(2e-6, travel);
                            assertThat(there && axle.moveTo(limit.motion().isRoll() ? -over : over, over))
                                    .as(which)
                                    .isFalse();
                        }
                    }
                }
            }
        }
        assertThat(checked[TravelLimit.Kind.DAMPER_CLOSED.ordinal()]).isGreaterThan(30);
        assertThat(checked[TravelLimit.Kind.DAMPER_OPEN.ordinal()]).isGreaterThan(30);
        assertThat(checked[TravelLimit.Kind.CLEARANCE.ordinal()]).isGreaterThan(30);
        assertThat(checked[TravelLimit.Kind.JOINT.ordinal()]).isGreaterThan(12);
    }

    private static Side sideOf(String part) {
        return part.endsWith("Left") ? Side.LEFT : Side.RIGHT;
    }

    /** Upright springs of an axle that rises straight: force by hand. */
    @Test
    void theCarStandsWhereItsSpringsCarryIt() {
        double rate = 28_000;
        LinkedLiveAxle axle = sprung(new Carried(2 * rate * 0.05, rate, 0.372, Stops.NONE), 0.30);
        // 50 mm of squash are needed and 72 mm are there: the car stands 22 mm higher than it is drawn
        assertThat(follow(axle).standsAt().orElseThrow()).isCloseTo(-0.022, within(1e-6));
        Stops stops = new Stops(
                Optional.of(new Stops.Bump(
                        0.01,
                        new Curve(List.of(
                                new Curve.Point(0, 0), new Curve.Point(0.01, 500), new Curve.Point(0.02, 2000))),
                        OptionalDouble.empty())),
                Optional.of(new Stops.Droop(0.01, 1e5, OptionalDouble.empty())),
                Optional.empty());
        // 20 mm low: 92 mm of squash and 10 mm of the stop
        double load = 2 * (rate * 0.092 + 500);
        assertThat(follow(sprung(new Carried(load, rate, 0.372, stops), 0.30))
                        .standsAt()
                        .orElseThrow())
                .isCloseTo(0.02, within(1e-6));
        // 12 mm high: 60 mm of squash, and the droop stop pulls for 2 mm
        double light = 2 * (rate * 0.060 - 200);
        assertThat(follow(sprung(new Carried(light, rate, 0.372, stops), 0.30))
                        .standsAt()
                        .orElseThrow())
                .isCloseTo(-0.012, within(1e-6));
        assertThat(follow(sprung(new Carried(100_000, rate, 0.372, stops), 0.30))
                        .standsAt())
                .isEmpty();
        assertThat(follow(sprung(new Carried(load, rate, 0.372, stops), 0.30).down(0.01))
                        .standsAt())
                .isEmpty();
    }

    private static LinkedLiveAxle sprung(Carried carried, double length) {
        Rod rod = Rod.AS_MEASURED;
        return new LinkedLiveAxle(
                new Stance(End.REAR, 1.4, 0, 0.3, 0, 0, 0),
                new AxleLinks(
                        Optional.of(Pair.alike(new Link(new Point(9.9, 0.5, 0.2), new Point(0, 0.5, 0.2), rod))),
                        Optional.of(Pair.alike(new Link(new Point(9.9, 0.5, 0.5), new Point(0, 0.5, 0.5), rod))),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()),
                Optional.of(new Locator.Ideal(0.3, 0)),
                new Mounts(
                        Optional.of(new SpringLine.BetweenPoints(Pair.alike(new SpringLine.Ends(
                                new Point(0, 0.45, 0.2 + length), new Point(0, 0.45, 0.2), CarriedOn.AXLE)))),
                        Optional.empty(),
                        Optional.empty(),
                        List.of()),
                Optional.empty(),
                LinkedAxles.CAR,
                Optional.of(carried));
    }

    /** Another route: the energy of all rods over the six of the axle, heights held by force, by a search without slopes. */
    @Test
    void anOverConstrainedAxleStandsWhereItsRodsHoldTheLeastEnergy() {
        for (long seed = 0; seed < 3; seed++) {
            LinkedLiveAxle given =
                    (LinkedLiveAxle) LinkedAxles.of(Kind.FIVE_RODS, seed).down(0.01);
            LiveAxleLinkage axle = (LiveAxleLinkage) ((Assembly.Standing) Assembly.of(given)).linkage();
            axle.moveTo(0.03, -0.01);
            double least = axle.bindEnergy();
            LiveAxlePose pose = axle.pose();
            Part now = pose.axle;
            Place left = WheelPlace.of(given.stance(), Side.LEFT).centre();
            Place right = WheelPlace.of(given.stance(), Side.RIGHT).centre();
            double leftUp = now.placeZ(left.x(), left.y(), left.z());
            double rightUp = now.placeZ(right.x(), right.y(), right.z());
            MultivariateFunction energy = q -> {
                double sum = 0;
                Part moved = copyOf(now, pose);
                moved.move(q[0], q[1], 0, 0, q[2], q[3]);
                // heave and roll back to the heights that are held
                for (int i = 0; i < 4; i++) {
                    double dl = leftUp - moved.placeZ(left.x(), left.y(), left.z());
                    double dr = rightUp - moved.placeZ(right.x(), right.y(), right.z());
                    moved.move(0, 0, (dl + dr) / 2, (dl - dr) / given.stance().track(), 0, 0);
                }
                for (AxleRod rod : pose.rods) {
                    Place a = rod.axle();
                    Place end = new Place(
                            moved.placeX(a.x(), a.y(), a.z()),
                            moved.placeY(a.x(), a.y(), a.z()),
                            moved.placeZ(a.x(), a.y(), a.z()));
                    double change = end.distanceTo(rod.body())
                            - (rod.measured() + rod.rod().longer());
                    sum += rod.rod().rate() * change * change / 2;
                }
                return sum;
            };
            double found = new SimplexOptimizer(1e-14, 1e-16)
                    .optimize(
                            new MaxEval(20_000),
                            new ObjectiveFunction(energy),
                            GoalType.MINIMIZE,
                            new InitialGuess(new double[] {2e-3, -1e-3, 2e-3, -1e-3}),
                            new NelderMeadSimplex(4, 2e-3))
                    .getValue();
            assertThat(found).isCloseTo(least, within(1e-7 * (1 + least)));
            assertThat(found).isGreaterThanOrEqualTo(least - 1e-9 * (1 + least));
        }
    }

    private static Part copyOf(Part part, LiveAxlePose pose) {
        Part copy = new Part(part.measuredX, part.measuredY, part.measuredZ);
        double[] kept = new double[Part.POSE];
        part.keep(kept, 0);
        copy.restore(kept, 0);
        assertThat(pose.axle).isSameAs(part);
        return copy;
    }

    /**
     * Another route for leaves in heave: both sides alike, so the axle moves in side view; its height held, the front hinge on
     * its arc, the pitch by a search over the hinges' energy.
     */
    @Test
    void leavesPitchTheSeatByTheLeastEnergyOfTheirHinges() {
        Leaf leaf = new Leaf(
                new Point(0.58, 0.5, 0.33),
                new Point(-0.66, 0.5, 0.34),
                new Point(-0.70, 0.5, 0.43),
                new Point(0.01, 0.5, 0.26));
        LinkedLiveAxle given = new LinkedLiveAxle(
                new Stance(End.REAR, 1.4, 0, 0.3, 0, 0, 0),
                new AxleLinks(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(Pair.alike(leaf))),
                Optional.of(new Locator.Ideal(0.28, -0.5)),
                Mounts.NONE,
                Optional.empty(),
                LinkedAxles.CAR,
                Optional.empty());
        LiveAxleLinkage axle = (LiveAxleLinkage) ((Assembly.Standing) Assembly.of(given)).linkage();
        for (double heave : new double[] {-0.06, 0.06}) {
            assertThat(axle.moveTo(heave, heave)).isTrue();
            double best = 0;
            double least = Double.MAX_VALUE;
            double from = -0.05;
            double to = 0.05;
            for (int round = 0; round < 9; round++) {
                double width = (to - from) / 40;
                for (int i = 0; i <= 40; i++) {
                    double pitch = from + i * width;
                    double energy = leafEnergy(leaf, heave, pitch);
                    if (energy < least) {
                        least = energy;
                        best = pitch;
                    }
                }
                from = best - width;
                to = best + width;
            }
            assertThat(axle.axlePitch()).isCloseTo(best, within(3e-8));
            assertThat(Math.abs(Math.toDegrees(best))).isBetween(0.05, 2.0);
        }
    }

    /** Energy of one side's hinges at a height and pitch; the wheel centre is 300 mm up, above the origin. */
    private static double leafEnergy(Leaf leaf, double heave, double pitch) {
        double cosine = Math.cos(pitch);
        double sine = Math.sin(pitch);
        double front = Math.hypot(
                leaf.frontEye().ahead() - leaf.seat().ahead(),
                leaf.frontEye().up() - leaf.seat().up());
        double rear = Math.hypot(
                leaf.rearEye().ahead() - leaf.seat().ahead(),
                leaf.rearEye().up() - leaf.seat().up());
        double[] hf = hinge(leaf.seat(), leaf.frontEye());
        double[] hr = hinge(leaf.seat(), leaf.rearEye());
        double fz = 0.3 + heave + sine * hf[0] + cosine * (hf[1] - 0.3);
        double up = leaf.frontEye().up() - fz;
        double run = Math.sqrt(0.5625 * front * front - up * up);
        double x = leaf.frontEye().ahead() - run - (cosine * hf[0] - sine * (hf[1] - 0.3));
        double frontAngle = Math.atan2(up, run);
        double rx = x + cosine * hr[0] - sine * (hr[1] - 0.3);
        double rz = 0.3 + heave + sine * hr[0] + cosine * (hr[1] - 0.3);
        double shackle = Math.hypot(
                leaf.shackle().ahead() - leaf.rearEye().ahead(),
                leaf.shackle().up() - leaf.rearEye().up());
        double dx = leaf.shackle().ahead() - rx;
        double dz = leaf.shackle().up() - rz;
        double d = Math.hypot(dx, dz);
        double l = 0.75 * rear;
        double inside = Math.acos((l * l + d * d - shackle * shackle) / (2 * l * d));
        double towards = Math.atan2(dz, dx);
        // of both places of the eye the one below the line from hinge to shackle pivot
        double rearAngle = Math.sin(inside) * Math.cos(towards) < 0 ? towards + inside : towards - inside;
        double frontTurn = frontAngle
                - pitch
                - Math.atan2(
                        leaf.frontEye().up() - leaf.seat().up(),
                        leaf.frontEye().ahead() - leaf.seat().ahead());
        double rearTurn = Math.IEEEremainder(
                rearAngle
                        - pitch
                        - Math.atan2(
                                leaf.rearEye().up() - leaf.seat().up(),
                                leaf.rearEye().ahead() - leaf.seat().ahead()),
                2 * Math.PI);
        return frontTurn * frontTurn / front + rearTurn * rearTurn / rear;
    }

    private static double[] hinge(Point seat, Point eye) {
        return new double[] {seat.ahead() + (eye.ahead() - seat.ahead()) / 4, seat.up() + (eye.up() - seat.up()) / 4};
    }

    @Test
    void recordsRefuseWhatNoLinkCanBe() {
        Point p = new Point(0, 0.5, 0.3);
        refused("axle", () -> new Link(p, new Point(0.005, 0.5, 0.3), Rod.AS_MEASURED));
        refused("out", () -> new Point(0, -0.1, 0.3));
        refused("longer", () -> new Link(p, new Point(0, 0.5, 0.35), Rod.AS_MEASURED.longer(-0.045)));
        refused("rear", () -> new Arm(p, p, new Point(0, 0.7, 0.3)));
        refused("bottom", () -> new Strut(p, new Point(0, 0.5, 0.3)));
        refused("bottom", () -> new SpringLine.Ends(p, new Point(0, 0.5, 0.4), CarriedOn.AXLE));
        refused(
                "swing",
                () -> new TieRod(p, new Point(0, 0.7, 0.3), Rod.AS_MEASURED, Optional.of(new TieRod.Swing(0, 0.4))));
        refused(
                "lowerRod",
                () -> new Locator.WattPoints(
                        CarriedBy.BODY,
                        new MiddlePoint(0, 0, 0.3),
                        0.06,
                        0.06,
                        0,
                        new Locator.WattRod(new MiddlePoint(0, 0.4, 0.36), Rod.AS_MEASURED),
                        new Locator.WattRod(new MiddlePoint(0, 0.4, 0.24), Rod.AS_MEASURED)));
        Arm low = new Arm(new Point(0.1, 0.3, 0.2), new Point(-0.1, 0.3, 0.2), new Point(0, 0.7, 0.2));
        TieRod tie = new TieRod(new Point(0.1, 0.3, 0.2), new Point(0.1, 0.6, 0.2), Rod.AS_MEASURED, Optional.empty());
        refused("upperArm", () -> new WheelLinks.DoubleWishbone(Pair.alike(low), Pair.alike(low), Pair.alike(tie)));
        refused(
                "openLength",
                () -> new Dampers(new Dampers.AroundStrut(), OptionalDouble.of(0.4), OptionalDouble.of(0.3)));
        refused(
                "pinion",
                () -> new PropShaft(
                        new MiddlePoint(0.2, 0, 0.3), 0, 0, Optional.empty(), new MiddlePoint(0.3, 0, 0.3), 0, 0));
        refused(
                "up",
                () -> new Clearance.To(
                        Clearance.Part.BODY, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty()));
        LinkedWheels wheels = (LinkedWheels) frontWheels();
        refused(
                "spring",
                () -> new LinkedWheels(
                        wheels.stance(),
                        wheels.links(),
                        new Mounts(
                                Optional.of(new SpringLine.AroundDamper(0)),
                                Optional.empty(),
                                Optional.empty(),
                                List.of()),
                        wheels.sideView(),
                        Optional.empty()));
    }

    private static void refused(String component, org.assertj.core.api.ThrowableAssert.ThrowingCallable made) {
        assertThatThrownBy(made)
                .isInstanceOfSatisfying(
                        InvalidValue.class, e -> assertThat(e.component()).isEqualTo(component));
    }
}
