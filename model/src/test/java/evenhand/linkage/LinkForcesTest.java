package evenhand.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.links.LinkedAxle;
import evenhand.car.links.LinkedAxles;
import evenhand.car.links.LinkedAxles.Kind;
import evenhand.car.links.Locator;
import evenhand.car.links.SideView;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.junit.jupiter.api.Test;

/**
 * What forces do on random axles, against how their points move from pose to pose and against what their rods carry: leaves,
 * ideal locators and axles whose rods give included, a third of them let down.
 */
class LinkForcesTest {
    private static final int EACH = 25;
    private static final double[] BOTH = {1, 1};
    private static final double[] ROLL = {1, -1};

    private interface Claim {
        void of(String which, AxleLinkage axle, double[] at);
    }

    /** Wherever they are moved to. */
    private static void always(Claim claim) {
        int[] asked = new int[2];
        RandomAxles.always(EACH, LinkForcesTest::letDown, (kind, seed, axle, random) -> {
            double[] at = {0.03 * (2 * random.nextDouble() - 1), 0.03 * (2 * random.nextDouble() - 1)};
            asked[1]++;
            if (axle.moveTo(at[0], at[1])) {
                asked[0]++;
                claim.of(kind + " " + seed, axle, at);
            }
        });
        assertThat(asked[0]).as("axles that reach").isGreaterThan(asked[1] * 98 / 100);
    }

    /** A third of all let down, half of all braked at the body, three in four driven. */
    private static LinkedAxle letDown(LinkedAxle axle) {
        SplittableRandom random =
                new SplittableRandom(Double.hashCode(axle.stance().track()));
        SideView.BrakesAt brakes = random.nextBoolean() ? SideView.BrakesAt.BODY : SideView.BrakesAt.WHEELS;
        SideView car = new SideView(
                2.2 + 0.5 * random.nextDouble(),
                0.4 + 0.2 * random.nextDouble(),
                0.5 + 0.3 * random.nextDouble(),
                brakes,
                random.nextInt(4) > 0);
        LinkedAxle inCar = axle.inCar(car, axle.carried());
        return random.nextInt(3) == 0 ? inCar.down(0.03) : inCar;
    }

    private static List<WheelOn> wheels(AxleLinkage axle) {
        List<WheelOn> wheels = new ArrayList<>();
        for (Side side : Side.values()) {
            Part part = axle instanceof LiveAxleLinkage live
                    ? live.pose().axle
                    : ((WheelPairLinkage) axle).wheel(side).pose().upright;
            WheelOn wheel = new WheelOn(
                    part,
                    WheelPlace.of(axle.given().stance(), side),
                    axle.given().stance());
            wheel.read();
            wheels.add(wheel);
        }
        return wheels;
    }

    private static Place contact(WheelOn wheel) {
        return wheel.drawn().contact();
    }

    private static Place centre(WheelOn wheel) {
        return wheel.drawn().centre();
    }

    private static Place middle(Place one, Place other) {
        return new Place((one.x() + other.x()) / 2, (one.y() + other.y()) / 2, (one.z() + other.z()) / 2);
    }

    private static Place velocity(AxleLinkage axle, Part part, Place point, double[] at, double[] motion) {
        return RandomAxles.velocity(axle, part, point, at, motion[0], motion[1]);
    }

    /** Of a live axle in heave and in roll, of a wheel in its own travel. */
    @Test
    void aForceAlongItsLineDoesNoWork() {
        always((which, axle, at) -> {
            AxleState state = axle.state();
            WheelOn left = wheels(axle).get(0);
            WheelOn right = wheels(axle).get(1);
            if (axle instanceof LiveAxleLinkage live) {
                Part part = live.pose().axle;
                AxleState.LiveFigures whole = state.live().orElseThrow();
                Place contacts = middle(contact(left), contact(right));
                // from the height over both contact points back to the height in the body, on its middle plane
                double dy = left.contactY - right.contactY;
                double dz = left.contactZ - right.contactZ;
                double height = live.heightOfRollCentre();
                double up = right.contactZ + (height * Math.hypot(dy, dz) - right.contactY * dz) / dy;
                Place rollCentre = new Place(contacts.x(), 0, up);
                for (double[] motion : new double[][] {BOTH, ROLL}) {
                    Place w = velocity(axle, part, rollCentre, at, motion);
                    assertThat(w.y() + whole.forceLineSlope() * w.z()).as(which).isCloseTo(0, within(1e-8));
                }
                noWork(which, velocity(axle, part, contacts, at, BOTH), whole.contactSideSlope());
                Place centres = middle(centre(left), centre(right));
                noWork(which, velocity(axle, part, centres, at, BOTH), whole.wheelSideSlope());
                return;
            }
            for (WheelOn wheel : wheels(axle)) {
                AxleState.OwnLinks own = (wheel.side == Side.LEFT ? state.left() : state.right())
                        .own()
                        .orElseThrow();
                Place w = velocity(axle, wheel.part(), contact(wheel), at, BOTH);
                // inwards is to the right on the left side
                assertThat(-wheel.sigma * w.y() + own.forceLineSlope() * w.z())
                        .as(which)
                        .isCloseTo(0, within(1e-8));
                noWork(which, w, own.contactSideSlope());
                noWork(which, velocity(axle, wheel.part(), centre(wheel), at, BOTH), own.wheelSideSlope());
            }
        });
    }

    /** Of a force forwards and up by the slope. */
    private static void noWork(String which, Place velocity, double slope) {
        assertThat(velocity.x() + slope * velocity.z()).as(which).isCloseTo(0, within(1e-8));
    }

    @Test
    void theSwingCentreStandsStillInSideView() {
        always((which, axle, at) -> {
            AxleState state = axle.state();
            WheelOn left = wheels(axle).get(0);
            double towardsMiddle = axle.given().stance().end() == End.REAR ? 1 : -1;
            Place centre = centre(left);
            Place contact = contact(left);
            OptionalDouble arm;
            OptionalDouble height;
            if (state.live().isPresent()) {
                WheelOn right = wheels(axle).get(1);
                centre = middle(centre, centre(right));
                contact = middle(contact, contact(right));
                arm = state.live().get().swingArm();
                height = state.live().get().swingCentreHeight();
            } else {
                arm = state.left().own().orElseThrow().swingArm();
                height = state.left().own().orElseThrow().swingCentreHeight();
            }
            // far away a point goes fast by the rounding of the turn alone
            if (arm.isPresent() && Math.abs(arm.getAsDouble()) < 20) {
                Place swing = new Place(
                        centre.x() + towardsMiddle * arm.getAsDouble(), centre.y(), contact.z() + height.orElseThrow());
                Place w = velocity(axle, left.part(), swing, at, BOTH);
                assertThat(Math.hypot(w.x(), w.z())).as(which).isCloseTo(0, within(2e-8));
            }
        });
    }

    /**
     * A newton that works as the wheels rise takes so much off the springs: of the load transfer h/L that goes with it a share
     * by the links. A brake whose torque the body takes pushes at the wheel's centre, as drive shafts do; drive of a live axle
     * pushes at the contact.
     */
    @Test
    void linksCarryOfTheTransferWhatBrakesAndDriveWorkAsTheWheelsRise() {
        int[] shares = new int[4];
        always((which, axle, at) -> {
            AxleState state = axle.state();
            SideView car = axle.given().sideView();
            boolean atBody = car.brakesAt() == SideView.BrakesAt.BODY;
            boolean front = axle.given().stance().end() == End.FRONT;
            double forwardsAtContact = forwards(axle, at, /* contact= */ true);
            double forwardsAtCentre = forwards(axle, at, /* contact= */ false);
            double brake = atBody ? forwardsAtCentre : forwardsAtContact;
            double drive = axle instanceof LiveAxleLinkage ? forwardsAtContact : forwardsAtCentre;
            double transfer = car.cgHeight() / car.wheelbase();
            // the front dives: a brake that pushes it backwards holds it up where its wheels go forwards as they rise
            is(which, state.antiDive(), front, car.frontBrakeShare() * brake / transfer);
            if (front) {
                // and driven it lifts
                is(which, state.antiLift(), car.driven(), drive / transfer);
            } else {
                is(which, state.antiLift(), true, -(1 - car.frontBrakeShare()) * brake / transfer);
            }
            is(which, state.antiSquat(), !front && car.driven(), -drive / transfer);
            shares[0] += state.antiDive().isPresent() ? 1 : 0;
            shares[1] += front && state.antiLift().isPresent() ? 1 : 0;
            shares[2] += !front && atBody ? 1 : 0;
            shares[3] += state.antiSquat().isPresent() ? 1 : 0;
        });
        assertThat(Arrays.stream(shares).min().orElseThrow())
                .as("asked of each")
                .isGreaterThan(20);
    }

    private static void is(String which, OptionalDouble share, boolean there, double wanted) {
        assertThat(share.isPresent()).as(which).isEqualTo(there);
        if (there) {
            assertThat(share.getAsDouble()).as(which).isCloseTo(wanted, within(1e-7));
        }
    }

    /** How far contacts or centres go forwards per metre that they rise, both wheels together. */
    private static double forwards(AxleLinkage axle, double[] at, boolean contact) {
        List<WheelOn> wheels = wheels(axle);
        if (axle instanceof LiveAxleLinkage live) {
            Place point = contact
                    ? middle(contact(wheels.get(0)), contact(wheels.get(1)))
                    : middle(centre(wheels.get(0)), centre(wheels.get(1)));
            Place w = velocity(axle, live.pose().axle, point, at, BOTH);
            return w.x() / w.z();
        }
        double sum = 0;
        for (WheelOn wheel : wheels) {
            Place w = velocity(axle, wheel.part(), contact ? contact(wheel) : centre(wheel), at, BOTH);
            sum += w.x() / w.z();
        }
        return sum / 2;
    }

    /**
     * Six equations of statics for an axle whose rods give, in the forces that hold both wheels at their height: the rods' own
     * forces, rate times what they are longer, leave nothing else, and both are the slopes of the energy. A crank stands still.
     */
    @Test
    void rodsThatGivePressOnTheWheelsByTheSlopesOfTheirEnergy() {
        Kind[] kinds = {Kind.FIVE_RODS, Kind.FIVE_RODS_WATT, Kind.FIVE_RODS_WATT_ON_AXLE};
        double most = 0;
        for (Kind kind : kinds) {
            for (long seed = 0; seed < 2 * EACH; seed++) {
                String which = kind + " " + seed;
                LiveAxleLinkage axle = (LiveAxleLinkage)
                        ((Assembly.Standing) Assembly.of(letDown(LinkedAxles.of(kind, seed)))).linkage();
                double[] at = RandomAxles.somewhere(new SplittableRandom(seed));
                if (!axle.moveTo(at[0], at[1])) {
                    continue;
                }
                LiveAxlePose pose = axle.pose();
                double[] wrench = new double[6];
                double crank = 0;
                double size = 1;
                for (int r = 0; r < pose.rods.size(); r++) {
                    AxleRod rod = pose.rods.get(r);
                    Place body = end(pose, r, true);
                    Place moving = end(pose, r, false);
                    Place line = body.minus(moving);
                    double stretched =
                            line.length() - rod.measured() - rod.rod().longer();
                    double force = rod.rod().rate() * stretched / line.length(); // on the axle, per metre of line
                    size = Math.max(size, Math.abs(force) * line.length());
                    add(wrench, moving, new Place(force * line.x(), force * line.y(), force * line.z()));
                    if (rod.crank() != AxleRod.Crank.NONE) {
                        boolean onAxle = rod.crank() == AxleRod.Crank.ON_AXLE;
                        Place arm = (onAxle ? moving : body).minus(pivot(axle, onAxle));
                        double[] turn = pose.axle.turn;
                        Place axis = onAxle ? new Place(turn[0], turn[3], turn[6]) : new Place(1, 0, 0);
                        crank += (onAxle ? 1 : -1) * force * axis.dot(arm.cross(line));
                    }
                }
                Array2DRowRealMatrix held = new Array2DRowRealMatrix(6, 2);
                for (WheelOn wheel : wheels(axle)) {
                    double[] unit = new double[6];
                    add(unit, centre(wheel), new Place(0, 0, 1));
                    held.setColumn(wheel.side.index(), unit);
                }
                double[] wheels = new QRDecomposition(held)
                        .getSolver()
                        .solve(new ArrayRealVector(wrench).mapMultiply(-1))
                        .toArray();
                double[] left = held.operate(wheels);
                for (int i = 0; i < 6; i++) {
                    assertThat(left[i] + wrench[i]).as(which).isCloseTo(0, within(1e-7 * size));
                }
                assertThat(crank).as(which).isCloseTo(0, within(1e-7 * size));
                assertThat(axle.bindForce()).as(which).isCloseTo(wheels[0] + wheels[1], within(1e-7 * size));
                assertThat(axle.bindByRoll()).as(which).isCloseTo(wheels[0] - wheels[1], within(1e-7 * size));
                most = Math.max(most, size);
            }
        }
        assertThat(most).as("greatest force of a rod, N").isGreaterThan(1000);
    }

    private static Place end(LiveAxlePose pose, int rod, boolean body) {
        double[] end = new double[3];
        if (body) {
            pose.bodyEnd(rod, end);
        } else {
            pose.axleEnd(rod, end);
        }
        return new Place(end[0], end[1], end[2]);
    }

    private static Place pivot(LiveAxleLinkage axle, boolean onAxle) {
        Locator.WattPoints watt = (Locator.WattPoints) axle.given().locator().orElseThrow();
        Place measured = Place.of(watt.pivot());
        return onAxle ? axle.pose().axle.placeOf(measured) : measured;
    }

    private static void add(double[] wrench, Place at, Place force) {
        Place moment = at.cross(force);
        wrench[0] += force.x();
        wrench[1] += force.y();
        wrench[2] += force.z();
        wrench[3] += moment.x();
        wrench[4] += moment.y();
        wrench[5] += moment.z();
    }

    /** At rest the rack turns both wheels in the mean as reference steer is told from it. */
    @Test
    void theReferenceSteerIsThatOfTheRack() {
        int[] steered = new int[1];
        RandomAxles.always(EACH, (kind, seed, axle, random) -> {
            if (axle instanceof WheelPairLinkage pair && pair.steered()) {
                steered[0]++;
                double stride = 1e-4;
                double turned = 0;
                for (Side side : Side.values()) {
                    WheelLinkage wheel = pair.wheel(side);
                    assertThat(wheel.moveTo(0, stride)).isTrue();
                    turned += wheel.steer() / (4 * stride);
                    assertThat(wheel.moveTo(0, -stride)).isTrue();
                    turned -= wheel.steer() / (4 * stride);
                    assertThat(wheel.moveTo(0, 0)).isTrue();
                }
                assertThat(pair.steerPerRack())
                        .as(kind + " " + seed)
                        .isCloseTo(turned, within(2e-6 * Math.abs(turned)));
            }
        });
        assertThat(steered[0]).isGreaterThan(EACH / 2);
    }
}
