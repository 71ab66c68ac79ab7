package evenhand.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Side;
import evenhand.car.links.AxleLinks;
import evenhand.car.links.Link;
import evenhand.car.links.LinkedAxle;
import evenhand.car.links.LinkedAxles;
import evenhand.car.links.LinkedAxles.Kind;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.car.links.Locator;
import evenhand.car.links.MiddleLink;
import evenhand.car.links.Pair;
import evenhand.car.links.Rod;
import evenhand.car.links.Strut;
import evenhand.car.links.TorqueArm;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.junit.jupiter.api.Test;

/** What holds for any axle on links, on some thousand random ones. A failure says the kind and the seed. */
class LinkageInvariantsTest {
    private static final int EACH = 40;

    @Test
    void lengthsHoldInEveryPose() {
        int[] unreached = new int[2];
        RandomAxles.always(EACH, (kind, seed, axle, random) -> {
            for (int i = 0; i < 6; i++) {
                double[] to = RandomAxles.somewhere(random);
                unreached[1]++;
                if (!axle.moveTo(to[0], to[1])) {
                    unreached[0]++;
                }
                assertThat(axle.worstError()).as(kind + " " + seed).isLessThan(1e-12);
                if (axle instanceof LiveAxleLinkage live && !live.overConstrained()) {
                    for (int r = 0; r < live.pose().rods.size(); r++) {
                        AxleRod rod = live.pose().rods.get(r);
                        double length = rod.measured() + rod.rod().longer();
                        assertThat(lengthNow(live.pose(), r))
                                .as(kind + " " + seed)
                                .isCloseTo(length, within(1e-12));
                    }
                }
            }
        });
        assertThat((double) unreached[0] / unreached[1])
                .as("poses out of reach")
                .isLessThan(0.01);
    }

    private static double lengthNow(LiveAxlePose pose, int rod) {
        double[] body = new double[3];
        double[] end = new double[3];
        pose.bodyEnd(rod, body);
        pose.axleEnd(rod, end);
        return Math.sqrt(Math.pow(end[0] - body[0], 2) + Math.pow(end[1] - body[1], 2) + Math.pow(end[2] - body[2], 2));
    }

    @Test
    void aMirroredAxleGivesTheMirroredAnswer() {
        RandomAxles.always(EACH, (kind, seed, axle, random) -> {
            LinkedAxle given = LinkedAxles.of(kind, seed);
            AxleLinkage other = ((Assembly.Standing) Assembly.of(LinkedAxles.mirrored(given))).linkage();
            double[] to = RandomAxles.somewhere(random);
            if (axle.moveTo(to[0], to[1]) && other.moveTo(to[1], to[0])) {
                assertMirrored(kind + " " + seed, axle.state(), other.state());
                for (int g = 0; g < axle.gaps().size(); g++) {
                    assertThat(other.gaps().get(g).gap())
                            .as(kind + " " + seed)
                            .isCloseTo(axle.gaps().get(g).gap(), within(1e-10));
                }
            }
        });
    }

    private static void assertMirrored(String which, AxleState one, AxleState other) {
        near(which, one.track(), other.track());
        // two force lines that hardly cross lose digits in their crossing alone
        if (Math.abs(one.rollCentreHeight().orElse(9)) < 1) {
            near(
                    which,
                    one.rollCentreHeight().orElseThrow(),
                    other.rollCentreHeight().orElseThrow());
            near(
                    which,
                    one.rollCentreOffset().orElseThrow(),
                    -other.rollCentreOffset().orElseThrow());
        }
        near(which, one.rollSteer(), other.rollSteer());
        near(which, one.rollCamber(), other.rollCamber());
        near(which, one.antiLift().orElse(0), other.antiLift().orElse(0));
        assertWheel(which, one.left(), other.right(), -1);
        assertWheel(which, one.right(), other.left(), -1);
        if (one.live().isPresent()) {
            AxleState.LiveFigures a = one.live().get();
            AxleState.LiveFigures b = other.live().orElseThrow();
            near(which, a.forceLineSlope(), -b.forceLineSlope());
            near(which, a.axleSteer(), -b.axleSteer());
            near(which, a.sideShift(), -b.sideShift());
            near(which, a.foreAft(), b.foreAft());
            near(which, a.axlePitch(), b.axlePitch());
            near(which, a.crank().orElse(0), -b.crank().orElse(0));
            near(which, a.contactSideSlope(), b.contactSideSlope());
            AxleState.ShaftFigures s = a.shaft().orElseThrow();
            AxleState.ShaftFigures t = b.shaft().orElseThrow();
            near(which, s.pinionSlope(), t.pinionSlope());
            near(which, s.plunge(), t.plunge());
            near(
                    which,
                    s.residualJointAngle() * s.residualJointAngle(),
                    t.residualJointAngle() * t.residualJointAngle());
            for (int j = 0; j < s.jointAngles().size(); j++) {
                near(which, s.jointAngles().get(j), t.jointAngles().get(j));
            }
        }
    }

    private static void assertSame(String which, AxleState.WheelFigures one, AxleState.WheelFigures other) {
        assertWheel(which, one, other, 1);
    }

    /** Figures of a wheel that are the same, its steer with a sign. */
    private static void assertWheel(
            String which, AxleState.WheelFigures one, AxleState.WheelFigures other, int steerSign) {
        near(which, one.toe(), other.toe());
        near(which, one.camber(), other.camber());
        near(which, one.springLength().orElse(0), other.springLength().orElse(0));
        near(which, one.springRatio().orElse(0), other.springRatio().orElse(0));
        near(which, one.springRollRatio().orElse(0), other.springRollRatio().orElse(0));
        near(which, one.damperLength().orElse(0), other.damperLength().orElse(0));
        near(which, one.upperEye().orElse(0), other.upperEye().orElse(0));
        near(which, one.lowerEye().orElse(0), other.lowerEye().orElse(0));
        near(which, one.barRatio().orElse(0), other.barRatio().orElse(0));
        near(which, one.barArm().orElse(0), other.barArm().orElse(0));
        if (one.own().isPresent()) {
            AxleState.OwnLinks a = one.own().get();
            AxleState.OwnLinks b = other.own().orElseThrow();
            near(which, a.steer(), steerSign * b.steer());
            near(which, a.caster(), b.caster());
            near(which, a.kingpin(), b.kingpin());
            near(which, a.trail(), b.trail());
            near(which, a.scrub(), b.scrub());
            near(which, a.forceLineSlope(), b.forceLineSlope());
            near(which, a.wheelSideSlope(), b.wheelSideSlope());
        }
    }

    private static void near(String which, double one, double other) {
        assertThat(other).as(which).isCloseTo(one, within(1e-10 * Math.max(1, Math.abs(one))));
    }

    @Test
    void slopesAreThoseOfThePosesThemselves() {
        int[] same = new int[2];
        RandomAxles.always(20, (kind, seed, axle, random) -> {
            double[] at = {0.02 * (2 * random.nextDouble() - 1), 0.02 * (2 * random.nextDouble() - 1)};
            if (!axle.moveTo(at[0], at[1])) {
                return;
            }
            double leftRatio = axle.springRatio(Side.LEFT);
            AxleState state = axle.state();
            double half = axle.given().stance().track() / 2;
            boolean live = axle instanceof LiveAxleLinkage;
            String which = kind + " " + seed;
            double bySpring = -RandomAxles.slope(axle, at, 1, live ? 1 : 0, () -> axle.springLength(Side.LEFT));
            assertThat(leftRatio).as(which).isCloseTo(bySpring, within(2e-9));
            same[1]++;
            same[0] += leftRatio == bySpring ? 1 : 0;
            double damper = -RandomAxles.slope(
                    axle, at, 1, live ? 1 : 0, () -> axle.mounts(Side.LEFT).damperLength());
            assertThat(state.left().damperRatio().orElseThrow()).as(which).isCloseTo(damper, within(2e-9));
            double steer = state.rollSteer();
            double sign = axle.given().stance().end() == evenhand.car.End.REAR ? 1 : -1;
            double steered = sign * RandomAxles.slope(axle, at, -half, half, () -> meanSteer(axle));
            assertThat(steer).as(which).isCloseTo(steered, within(5e-9));
            double leaned = 1
                    + RandomAxles.slope(axle, at, -half, half, () -> {
                        AxleState now = axle.state();
                        return (-now.left().camber() + now.right().camber()) / 2;
                    });
            assertThat(state.rollCamber()).as(which).isCloseTo(leaned, within(5e-9));
            if (state.left().barRatio().isPresent()) {
                double arm = barArm(axle.given());
                double turned = Math.abs(RandomAxles.slope(
                                axle,
                                at,
                                1,
                                live ? 1 : 0,
                                () -> axle.mounts(Side.LEFT).barTurn()))
                        * arm;
                assertThat(state.left().barRatio().orElseThrow()).as(which).isCloseTo(turned, within(2e-8));
            }
            if (live) {
                double rolled = -RandomAxles.slope(axle, at, 1, -1, () -> axle.springLength(Side.LEFT));
                assertThat(state.left().springRollRatio().orElseThrow())
                        .as(which)
                        .isCloseTo(rolled, within(2e-9));
                double right = -RandomAxles.slope(axle, at, -1, 1, () -> axle.springLength(Side.RIGHT));
                assertThat(state.right().springRollRatio().orElseThrow())
                        .as(which)
                        .isCloseTo(right, within(2e-9));
                double damperRolled = -RandomAxles.slope(
                        axle, at, -1, 1, () -> axle.mounts(Side.RIGHT).damperLength());
                assertThat(state.right().damperRollRatio().orElseThrow())
                        .as(which)
                        .isCloseTo(damperRolled, within(2e-9));
                if (state.left().barRollRatio().isPresent()) {
                    double turned = RandomAxles.slope(
                            axle, at, 1, -1, () -> axle.mounts(Side.LEFT).barTurn());
                    assertThat(state.left().barRollRatio().orElseThrow())
                            .as(which)
                            .isCloseTo(Math.abs(turned) * barArm(axle.given()), within(2e-8));
                }
            }
        });
        assertThat(same[0]).as("equal in the last digit").isLessThan(same[1] / 10);
    }

    private static double meanSteer(AxleLinkage axle) {
        if (axle instanceof LiveAxleLinkage live) {
            return live.axleSteer();
        }
        WheelPairLinkage pair = (WheelPairLinkage) axle;
        return (pair.wheel(Side.LEFT).steer() + pair.wheel(Side.RIGHT).steer()) / 2;
    }

    private static double barArm(LinkedAxle given) {
        var arm = given.mounts().bar().orElseThrow().left();
        return Math.hypot(
                arm.armEnd().ahead() - arm.pivot().ahead(),
                arm.armEnd().up() - arm.pivot().up());
    }

    @Test
    void theWayToAPoseDoesNotMatter() {
        RandomAxles.always(EACH, (kind, seed, axle, random) -> {
            double[] to = RandomAxles.somewhere(random);
            axle.rest();
            if (!axle.moveTo(to[0], to[1])) {
                return;
            }
            AxleState direct = axle.state();
            axle.rest();
            if (!axle.moveTo((to[0] + to[1]) / 2, (to[0] + to[1]) / 2) || !axle.moveTo(to[0], to[1])) {
                return;
            }
            assertSame(kind + " " + seed, direct.left(), axle.state().left());
            near(kind + " " + seed, direct.rollSteer(), axle.state().rollSteer());
            axle.rest();
            if (axle.moveTo(0, to[1]) && axle.moveTo(to[0], to[1])) {
                assertSame(kind + " " + seed, direct.right(), axle.state().right());
                near(kind + " " + seed, direct.track(), axle.state().track());
            }
        });
    }

    @Test
    void loweringInHalvesIsLoweringAtOnce() {
        RandomAxles.always(EACH, (kind, seed, axle, random) -> {
            LinkedAxle given = axle.given();
            AxleLinkage once = ((Assembly.Standing) Assembly.of(given.down(0.03))).linkage();
            AxleLinkage half = ((Assembly.Standing) Assembly.of(given.down(0.015))).linkage();
            if (half.moveTo(0.015, 0.015)) {
                AxleState one = once.state();
                AxleState two = half.state();
                assertSame(kind + " " + seed, one.left(), two.left());
                near(kind + " " + seed, one.rollSteer(), two.rollSteer());
                one.live().ifPresent(l -> {
                    near(
                            kind + " " + seed,
                            l.sideShift(),
                            two.live().orElseThrow().sideShift());
                    near(
                            kind + " " + seed,
                            l.axlePitch(),
                            two.live().orElseThrow().axlePitch());
                    assertThat(l.foreAft()).isZero();
                });
            }
        });
    }

    @Test
    void linksMadeLongerAndBackLeaveTheAxleWhereItWas() {
        int moved = 0;
        for (Kind kind : Kind.values()) {
            for (long seed = 0; kind.isLive() && seed < EACH; seed++) {
                LiveAxlePose pose = new LiveAxlePose(
                        (LinkedLiveAxle) LinkedAxles.of(kind, seed).down(0));
                assertThat(pose.measured()).isTrue();
                double[] before = poseOf(pose);
                assertThat(pose.toRest().isRest()).isTrue();
                double[] longer = poseOf(pose);
                assertThat(pose.makeLonger(0)).isZero();
                assertThat(poseOf(pose)).as(kind + " " + seed).containsExactly(before, within(1e-11));
                moved += Math.abs(longer[0] - before[0]) + Math.abs(longer[1] - before[1]) > 1e-4 ? 1 : 0;
            }
        }
        assertThat(moved).isGreaterThan(EACH * 6);
    }

    private static double[] poseOf(LiveAxlePose pose) {
        Part axle = pose.axle;
        return new double[] {axle.x, axle.y, axle.z, axle.turn[1], axle.turn[2], axle.turn[5], pose.crank()};
    }

    /**
     * Six equations of statics for the axle, and one for a crank, in the forces of rods and of the wheels: a force along the
     * force line needs no force of either wheel, one along the side-view line none of both together.
     */
    @Test
    void aForceAlongTheForceLineIsCarriedByTheLinksAlone() {
        int[] asked = new int[1];
        RandomAxles.always(EACH, (kind, seed, axle, random) -> {
            double[] to = RandomAxles.somewhere(random);
            if (!axle.moveTo(to[0], to[1])) {
                return;
            }
            String which = kind + " " + seed;
            if (axle instanceof LiveAxleLinkage live
                    && !live.overConstrained()
                    && live.given().links().leaf().isEmpty()
                    && !(live.given().locator().orElse(null) instanceof Locator.Ideal)) {
                asked[0]++;
                Part part = live.pose().axle;
                double x = 0;
                double z = 0;
                double y = 0;
                double wheelX = 0;
                double wheelZ = 0;
                double dy = 0;
                double dz = 0;
                double rightY = 0;
                double rightZ = 0;
                for (Side side : Side.values()) {
                    WheelOn wheel = new WheelOn(
                            part,
                            WheelPlace.of(live.given().stance(), side),
                            live.given().stance());
                    wheel.read();
                    x += wheel.contactX / 2;
                    y += wheel.contactY / 2;
                    z += wheel.contactZ / 2;
                    wheelX += wheel.centreX / 2;
                    wheelZ += wheel.centreZ / 2;
                    dy += side.sign() * wheel.contactY;
                    dz += side.sign() * wheel.contactZ;
                    rightY = wheel.contactY;
                    rightZ = wheel.contactZ;
                }
                double height = live.heightOfRollCentre();
                double up = rightZ + (height * Math.hypot(dy, dz) - rightY * dz) / dy;
                double[] side = wheelForces(live, new double[] {x, 0, up}, new double[] {0, 1, live.forceLineSlope()});
                assertThat(side[0]).as(which).isCloseTo(0, within(1e-9));
                assertThat(side[1]).as(which).isCloseTo(0, within(1e-9));
                double[] along =
                        wheelForces(live, new double[] {x, y, z}, new double[] {1, 0, live.contactSideSlope()});
                assertThat(along[0] + along[1]).as(which).isCloseTo(0, within(1e-9));
                double[] atWheel = wheelForces(
                        live, new double[] {wheelX, live.sideShift(), wheelZ}, new double[] {1, 0, live.wheelSideSlope()
                        });
                assertThat(atWheel[0] + atWheel[1]).as(which).isCloseTo(0, within(1e-9));
            } else if (axle instanceof WheelPairLinkage pair) {
                asked[0]++;
                WheelLinkage wheel = pair.wheel(Side.RIGHT);
                WheelOn on = wheel.wheel();
                double[] contact = {on.contactX, on.contactY, on.contactZ};
                assertThat(wheelForce(pair, Side.RIGHT, contact, new double[] {0, 1, wheel.forceLineSlope()}))
                        .as(which)
                        .isCloseTo(0, within(1e-9));
                assertThat(wheelForce(pair, Side.RIGHT, contact, new double[] {1, 0, wheel.contactSideSlope()}))
                        .as(which)
                        .isCloseTo(0, within(1e-9));
            }
        });
        assertThat(asked[0]).isGreaterThan(5 * EACH);
    }

    private static double[] wheelForces(LiveAxleLinkage axle, double[] at, double[] force) {
        LiveAxlePose pose = axle.pose();
        int rods = pose.rods.size();
        int size = rods + 2;
        double[][] balances = new double[size][size];
        double[] body = new double[3];
        double[] end = new double[3];
        for (int r = 0; r < rods; r++) {
            pose.bodyEnd(r, body);
            pose.axleEnd(r, end);
            double[] pull = {end[0] - body[0], end[1] - body[1], end[2] - body[2]};
            column(balances, r, end, pull);
            if (size > 6 && pose.rods.get(r).crank() != AxleRod.Crank.NONE) {
                Locator.WattPoints watt =
                        (Locator.WattPoints) axle.given().locator().orElseThrow();
                boolean onAxle = pose.rods.get(r).crank() == AxleRod.Crank.ON_AXLE;
                Place p = Place.of(watt.pivot());
                Part part = pose.axle;
                double[] pivot = onAxle
                        ? new double[] {
                            part.placeX(p.x(), p.y(), p.z()),
                            part.placeY(p.x(), p.y(), p.z()),
                            part.placeZ(p.x(), p.y(), p.z())
                        }
                        : new double[] {p.x(), p.y(), p.z()};
                double[] axis =
                        onAxle ? new double[] {part.turn[0], part.turn[3], part.turn[6]} : new double[] {1, 0, 0};
                double[] pin = onAxle ? end : body;
                double[] lever = {pin[0] - pivot[0], pin[1] - pivot[1], pin[2] - pivot[2]};
                double[] turned = cross(axis, lever);
                balances[6][r] = pull[0] * turned[0] + pull[1] * turned[1] + pull[2] * turned[2];
            }
        }
        for (Side side : Side.values()) {
            WheelOn wheel = new WheelOn(
                    pose.axle,
                    WheelPlace.of(axle.given().stance(), side),
                    axle.given().stance());
            wheel.read();
            column(
                    balances,
                    rods + side.index(),
                    new double[] {wheel.centreX, wheel.centreY, wheel.centreZ},
                    new double[] {0, 0, 1});
        }
        double[] solved = solve(balances, at, force);
        return new double[] {solved[rods], solved[rods + 1]};
    }

    private static double wheelForce(WheelPairLinkage pair, Side side, double[] at, double[] force) {
        // for the right wheel a force to the left goes inwards
        WheelPose pose = pair.wheel(side).pose();
        var links = pair.given().links();
        double[][] balances = new double[6][6];
        List<Place[]> rods = new ArrayList<>();
        var lower = links.lowerArm().of(side);
        rods.add(new Place[] {Place.of(lower.front(), side), Place.of(lower.outer(), side)});
        rods.add(new Place[] {Place.of(lower.rear(), side), Place.of(lower.outer(), side)});
        if (links instanceof evenhand.car.links.WheelLinks.DoubleWishbone wishbone) {
            var upper = wishbone.upperArm().of(side);
            rods.add(new Place[] {Place.of(upper.front(), side), Place.of(upper.outer(), side)});
            rods.add(new Place[] {Place.of(upper.rear(), side), Place.of(upper.outer(), side)});
        }
        Part part = pose.upright;
        int column = 0;
        for (Place[] rod : rods) {
            Place o = rod[1];
            double[] end = {
                part.placeX(o.x(), o.y(), o.z()), part.placeY(o.x(), o.y(), o.z()), part.placeZ(o.x(), o.y(), o.z())
            };
            column(balances, column++, end, new double[] {end[0] - rod[0].x(), end[1] - rod[0].y(), end[2] - rod[0].z()
            });
        }
        Optional<Strut> strut = WheelPose.strutOf(pair.given(), side);
        if (strut.isPresent()) {
            Place top = Place.of(strut.get().top(), side);
            Place b = Place.of(strut.get().bottom(), side);
            double[] line = {
                top.x() - part.placeX(b.x(), b.y(), b.z()),
                top.y() - part.placeY(b.x(), b.y(), b.z()),
                top.z() - part.placeZ(b.x(), b.y(), b.z())
            };
            double[] one = cross(line, new double[] {1, 0, 0});
            column(balances, column++, new double[] {top.x(), top.y(), top.z()}, one);
            column(balances, column++, new double[] {top.x(), top.y(), top.z()}, cross(line, one));
        }
        double[] inner = new double[3];
        double[] outer = new double[3];
        pose.tieRodEnds(inner, outer);
        column(balances, column++, outer, new double[] {outer[0] - inner[0], outer[1] - inner[1], outer[2] - inner[2]});
        column(balances, column, new double[] {part.x, part.y, part.z}, new double[] {0, 0, 1});
        return solve(balances, at, force)[5];
    }

    private static double[] solve(double[][] balances, double[] at, double[] force) {
        double[] moment = cross(at, force);
        double[] right = new double[balances.length];
        for (int i = 0; i < 3; i++) {
            right[i] = -force[i];
            right[i + 3] = -moment[i];
        }
        return new LUDecomposition(new Array2DRowRealMatrix(balances, false), 1e-14)
                .getSolver()
                .solve(new ArrayRealVector(right))
                .toArray();
    }

    private static void column(double[][] balances, int column, double[] at, double[] force) {
        double[] moment = cross(at, force);
        for (int i = 0; i < 3; i++) {
            balances[i][column] = force[i];
            balances[i + 3][column] = moment[i];
        }
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    @Test
    void aRodThatHardlyResistsLeavesTheAxleToTheOthers() {
        for (long seed = 0; seed < 60; seed++) {
            LinkedLiveAxle exact = (LinkedLiveAxle) LinkedAxles.of(Kind.THREE_LINK_PANHARD, seed);
            LinkedLiveAxle armed = (LinkedLiveAxle) LinkedAxles.of(Kind.TORQUE_ARM_PANHARD, seed);
            TorqueArm arm = armed.links().torqueArm().orElseThrow();
            Rod soft = new Rod(arm.dropLink().longer(), OptionalDouble.empty(), 1e-4, OptionalDouble.empty());
            LinkedLiveAxle over = with(exact, Optional.of(new TorqueArm(arm.hanger(), arm.end(), soft)));
            LiveAxleLinkage one = standing(exact);
            LiveAxleLinkage two = standing(over);
            assertThat(two.overConstrained()).isTrue();
            double[] to = RandomAxles.somewhere(new SplittableRandom(seed));
            assertThat(one.moveTo(to[0], to[1]) && two.moveTo(to[0], to[1])).isTrue();
            assertThat(two.sideShift()).isCloseTo(one.sideShift(), within(1e-9));
            assertThat(two.axlePitch()).isCloseTo(one.axlePitch(), within(1e-9));
            assertThat(two.heightOfRollCentre()).isCloseTo(one.heightOfRollCentre(), within(1e-8));
            assertThat(two.rollSteer()).isCloseTo(one.rollSteer(), within(1e-8));
        }
    }

    private static LinkedLiveAxle with(LinkedLiveAxle axle, Optional<TorqueArm> arm) {
        AxleLinks links = axle.links();
        return new LinkedLiveAxle(
                axle.stance(),
                new AxleLinks(links.lowerLink(), links.upperLink(), links.middleLink(), arm, links.leaf()),
                axle.locator(),
                axle.mounts(),
                axle.propShaft(),
                axle.sideView(),
                axle.carried());
    }

    private static LiveAxleLinkage standing(LinkedLiveAxle axle) {
        return (LiveAxleLinkage) ((Assembly.Standing) Assembly.of(axle)).linkage();
    }

    @Test
    void stifferRodsAllAroundBindMoreAndMoveNothing() {
        for (Kind kind :
                new Kind[] {Kind.FIVE_RODS, Kind.FIVE_RODS_WATT, Kind.FIVE_RODS_WATT_ON_AXLE, Kind.SPLAYED_WITH_IDEAL
                }) {
            for (long seed = 0; seed < 25; seed++) {
                LinkedLiveAxle given = (LinkedLiveAxle) LinkedAxles.of(kind, seed);
                LiveAxleLinkage one = standing(given);
                LiveAxleLinkage two = standing(stiffer(given));
                assertThat(two.bindRollStiffness())
                        .isCloseTo(10 * one.bindRollStiffness(), within(1e-8 * (1 + two.bindRollStiffness())));
                double[] to = RandomAxles.somewhere(new SplittableRandom(seed));
                assertThat(one.moveTo(to[0], to[1]) && two.moveTo(to[0], to[1])).isTrue();
                near(kind + " " + seed, one.axlePitch(), two.axlePitch());
                near(kind + " " + seed, one.axleSteer(), two.axleSteer());
                near(kind + " " + seed, one.heightOfRollCentre(), two.heightOfRollCentre());
                assertThat(two.bindEnergy()).isCloseTo(10 * one.bindEnergy(), within(1e-8 * (1 + two.bindEnergy())));
                // the energy's slopes are those of the energy itself
                double heave = RandomAxles.slope(one, to, 1, 1, one::bindEnergy);
                assertThat(one.bindForce()).isCloseTo(heave, within(1e-5 * (1 + Math.abs(heave))));
                double roll = RandomAxles.slope(one, to, 1, -1, one::bindByRoll);
                double half = given.stance().track() / 2;
                assertThat(one.bindRollStiffness()).isCloseTo(half * half * roll, within(1e-6 * Math.abs(roll) + 1e-3));
                double rate = RandomAxles.slope(one, to, 1, 1, one::bindForce);
                assertThat(one.bindHeaveRate()).isCloseTo(rate, within(1e-6 * Math.abs(rate) + 1e-3));
            }
        }
    }

    private static LinkedLiveAxle stiffer(LinkedLiveAxle axle) {
        return new LinkedLiveAxle(
                axle.stance(),
                new AxleLinks(
                        axle.links().lowerLink().map(p -> new Pair<>(stiffer(p.left()), stiffer(p.right()))),
                        axle.links().upperLink().map(p -> new Pair<>(stiffer(p.left()), stiffer(p.right()))),
                        axle.links().middleLink().map(m -> new MiddleLink(m.body(), m.axle(), stiffer(m.rod()))),
                        axle.links().torqueArm().map(t -> new TorqueArm(t.hanger(), t.end(), stiffer(t.dropLink()))),
                        axle.links().leaf()),
                axle.locator().map(LinkageInvariantsTest::stiffer),
                axle.mounts(),
                axle.propShaft(),
                axle.sideView(),
                axle.carried());
    }

    private static Link stiffer(Link link) {
        return new Link(link.body(), link.axle(), stiffer(link.rod()));
    }

    private static Rod stiffer(Rod rod) {
        return new Rod(rod.longer(), rod.perTurn(), 10 * rod.rate(), rod.jointLimit());
    }

    private static Locator stiffer(Locator locator) {
        if (locator instanceof Locator.PanhardPoints p) {
            return new Locator.PanhardPoints(p.body(), p.axle(), stiffer(p.rod()));
        }
        if (locator instanceof Locator.WattPoints w) {
            return new Locator.WattPoints(
                    w.carriedBy(),
                    w.pivot(),
                    w.upper(),
                    w.lower(),
                    w.tilt(),
                    new Locator.WattRod(w.upperRod().end(), stiffer(w.upperRod().rod())),
                    new Locator.WattRod(w.lowerRod().end(), stiffer(w.lowerRod().rod())));
        }
        return locator;
    }

    @Test
    void nothingIsAllocatedPerPose() {
        var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        for (Kind kind : Kind.values()) {
            AxleLinkage axle = ((Assembly.Standing) Assembly.of(LinkedAxles.of(kind, 4))).linkage();
            double sum = 0;
            for (int i = 0; i < 3_000; i++) {
                sum += walk(axle, i);
            }
            long least = Long.MAX_VALUE;
            for (int attempt = 0; attempt < 3; attempt++) {
                long before = threads.getCurrentThreadAllocatedBytes();
                for (int i = 0; i < 200; i++) {
                    sum += walk(axle, i);
                }
                least = Math.min(least, threads.getCurrentThreadAllocatedBytes() - before);
            }
            assertThat(sum).isFinite();
            assertThat(least).as(kind.toString()).isZero();
        }
    }

    private static double walk(AxleLinkage axle, int i) {
        double travel = 0.03 * Math.sin(0.2 * i);
        axle.moveTo(travel, -0.5 * travel);
        double sum = axle.springLength(Side.LEFT) + axle.springRatio(Side.RIGHT);
        if (axle instanceof LiveAxleLinkage live) {
            return sum
                    + live.heightOfRollCentre()
                    + live.axleSteer()
                    + live.forceLineSlope()
                    + live.wheelSideSlope()
                    + live.rollSteer();
        }
        WheelLinkage wheel = ((WheelPairLinkage) axle).wheel(Side.LEFT);
        return sum + wheel.steer() + wheel.camber() + wheel.forceLineSlope() + wheel.trail() + wheel.wheelSideSlope();
    }
}
