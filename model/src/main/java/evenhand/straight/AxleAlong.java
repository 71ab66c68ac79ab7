package evenhand.straight;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.links.SideView.BrakesAt;
import evenhand.geometry.LinkMotion;
import evenhand.suspension.AxleSuspension;
import evenhand.suspension.LinesOfAction;
import evenhand.tyre.SideForce;
import evenhand.tyre.Tyre;
import java.util.Arrays;
import java.util.Optional;

/**
 * One axle of a car straight ahead: what springs, stops, tyres and the forces along the car do at a posture, with slopes over
 * the car's {@link #UNKNOWNS}. It is asked in two steps, since the forces along the car may follow from the loads: {@link
 * #stand} (travel, loads, capacity), {@link #carry} (springs, stops, side-view forces). Nothing is allocated. One per thread.
 *
 * <p>The links push the body up by {@code J = s_b·B + s_d·D + s_w·(Fx − B − D)} of each wheel, and the tyres carry it: forces act
 * either at the contact points (brakes; drive of a live axle, which reacts its own torque) or at the wheel centres (rolling;
 * drive through shafts of wheels of their own; brakes that the body reacts). Source: Gillespie 1992 ch. 7.
 */
final class AxleAlong {
    static final int HEAVE = 0;
    static final int ROLL = 1;
    static final int LEFT_RISE = 2;
    static final int RIGHT_RISE = 3;
    /** Unknowns of an axle. */
    static final int POSTURE = 4;
    /** Unknowns of the car: those of the front axle, then those of the rear one. */
    static final int UNKNOWNS = 8;

    /** Mean bump travel, m; suspension roll and tyre tilt, rad; roll centre above the ground, m. */
    double travel;

    double suspensionRoll;
    double tyreTilt;
    double rollCentre;
    final double[] rollCentreBy = new double[POSTURE];

    /** Loads of the tyres, N, and their slopes over the rise of the wheel. */
    final double[] load = new double[2];

    final double[] loadByRise = new double[2];

    /** What each tyre holds along the car, N, and its slope over its load; set by {@link #grip}. */
    final double[] capacity = new double[2];

    final double[] capacityByLoad = new double[2];

    /** Brake force of each wheel along the car, N, below zero, and its slope over the rear axle's travel. */
    double brake;

    double brakeByRearTravel;

    /** Drive force of each wheel, N, and its slopes over the loads of both, the left one first. */
    final double[] drive = new double[2];

    final double[][] driveByLoad = new double[2][2];

    /** Upward push of springs, stops and links on the body, N; their moment against the roll with the bar's, N·m. */
    double bodyForce;

    double bodyMoment;
    final double[] bodyForceBy = new double[UNKNOWNS];
    final double[] bodyMomentBy = new double[UNKNOWNS];

    final double halfTrack;
    final double sprungMass;
    final double unsprungMass;
    final double unsprungHeight;
    /** Column of its first unknown. */
    final int first;

    private final boolean live;
    private final boolean brakesOnBody;
    private final double track;
    private final double tyreRate;
    private final double[] restLoad = new double[2];
    private final double rollingResistance;
    private final double frictionRatio;
    private final SideForce tyre;
    private final AxleSuspension suspension;
    private final LinesOfAction lines;
    private final Optional<LinkMotion.Reach> reach;
    private final double[] rest = new double[2]; // rolling resistance of each wheel along the car, N

    // Slopes of travel and suspension roll over the posture.
    private static final double[] TRAVEL_BY = {-1, 0, 0.5, 0.5};
    private final double[] rollBy;

    /** Forces of both wheels that act in one of two places: sum, left less right, slopes. */
    private static final class Pull {
        double sum;
        double difference;
        final double[] sumBy = new double[UNKNOWNS];
        final double[] differenceBy = new double[UNKNOWNS];

        void clear() {
            sum = 0;
            difference = 0;
            Arrays.fill(sumBy, 0);
            Arrays.fill(differenceBy, 0);
        }
    }

    private final Pull atContact = new Pull();
    private final Pull atWheel = new Pull();

    AxleAlong(Car car, End end) {
        Axle axle = car.axle(end);
        first = end == End.FRONT ? 0 : POSTURE;
        live = axle instanceof Axle.Live;
        brakesOnBody = !live && axle.reaction().brakesAt() == BrakesAt.BODY;
        track = axle.track();
        halfTrack = track / 2;
        rollBy = new double[] {0, 1, -1 / track, 1 / track};
        sprungMass = car.sprung().mass() * car.sprung().share(end);
        unsprungMass = axle.unsprung().mass();
        unsprungHeight = axle.unsprung().height();
        Tyre fitted = axle.tyre();
        tyreRate = fitted.verticalRate();
        frictionRatio = fitted.longitudinalFrictionRatio();
        tyre = SideForce.of(fitted.lateral());
        rollingResistance = car.rollingResistance();
        for (Side side : Side.values()) {
            restLoad[side.index()] = car.staticLoad(end, side);
        }
        suspension = AxleSuspension.of(car, end);
        lines = LinesOfAction.of(axle, end, suspension);
        reach = axle.motion().map(LinkMotion::reach);
    }

    /**
     * Travel and loads. Mean travel u = w − ζ, tyre tilt ψ = (w_L − w_R)/t, suspension roll φs = φ − ψ; loads
     * Fz = max(0, Fz0 − k·w).
     *
     * @return false where the links do not reach
     */
    boolean stand(double[] state) {
        double leftRise = state[first + LEFT_RISE];
        double rightRise = state[first + RIGHT_RISE];
        double rise = (leftRise + rightRise) / 2;
        travel = rise - state[first + HEAVE];
        tyreTilt = (leftRise - rightRise) / track;
        suspensionRoll = state[first + ROLL] - tyreTilt;
        if (reach.isPresent() && beyondReach(reach.get()) > 0) {
            return false;
        }
        stand(0, leftRise);
        stand(1, rightRise);
        lines.goTo(travel, suspensionRoll);
        lines.readAcross(travel);
        rollCentre = lines.rollCentre.value + rise;
        for (int i = 0; i < POSTURE; i++) {
            rollCentreBy[i] = along(lines.rollCentre, i) + (i >= LEFT_RISE ? 0.5 : 0);
        }
        lines.readAlong();
        return true;
    }

    private double beyondReach(LinkMotion.Reach end) {
        double byRoll = halfTrack * suspensionRoll;
        return live
                ? end.beyond(travel, suspensionRoll)
                : Math.max(end.beyond(travel - byRoll, 0), end.beyond(travel + byRoll, 0));
    }

    private void stand(int side, double rise) {
        double held = restLoad[side] - tyreRate * rise;
        load[side] = held > 0 ? held : 0;
        loadByRise[side] = held > 0 ? -tyreRate : 0;
        rest[side] = 0;
    }

    /** Capacity of the tyres without slip and lean: longitudinalFrictionRatio·μ(Fz)·Fz, N. */
    void grip() {
        for (int side = 0; side < 2; side++) {
            tyre.at(0, 0, load[side]);
            capacity[side] = frictionRatio * tyre.peak;
            capacityByLoad[side] = frictionRatio * tyre.peakByLoad;
        }
    }

    /** The same at one friction for all loads. */
    void grip(double friction) {
        for (int side = 0; side < 2; side++) {
            capacity[side] = friction * load[side];
            capacityByLoad[side] = friction;
        }
    }

    /** No brake and no drive. */
    void coast() {
        brake = 0;
        brakeByRearTravel = 0;
        Arrays.fill(drive, 0);
        Arrays.fill(driveByLoad[0], 0);
        Arrays.fill(driveByLoad[1], 0);
    }

    private double along(LinesOfAction.Figure figure, int unknown) {
        return figure.byTravel * TRAVEL_BY[unknown] + figure.byRoll * rollBy[unknown];
    }

    /**
     * Springs, stops, bar and what the forces along the car lift, at the forces that were set.
     *
     * @param rolling whether the wheels drag by their rolling resistance
     */
    void carry(boolean rolling) {
        suspension.at(travel, suspensionRoll, rollCentre);
        bodyForce = suspension.force;
        bodyMoment = suspension.moment;
        Arrays.fill(bodyForceBy, 0);
        Arrays.fill(bodyMomentBy, 0);
        for (int i = 0; i < POSTURE; i++) {
            bodyForceBy[first + i] = suspension.forceByTravel * TRAVEL_BY[i]
                    + suspension.forceByRoll * rollBy[i]
                    + suspension.forceByRollCentre * rollCentreBy[i];
            bodyMomentBy[first + i] = suspension.momentByTravel * TRAVEL_BY[i]
                    + suspension.momentByRoll * rollBy[i]
                    + suspension.momentByRollCentre * rollCentreBy[i];
        }
        pull(rolling);
        lift(atContact, lines.contact, lines.contactSplit, lines.contactTurn);
        lift(atWheel, lines.wheel, lines.wheelSplit, lines.wheelTurn);
    }

    /** Gathers the forces along the car where they act. */
    private void pull(boolean rolling) {
        atContact.clear();
        atWheel.clear();
        Pull braking = brakesOnBody ? atWheel : atContact;
        braking.sum += 2 * brake;
        for (int i = 0; i < POSTURE; i++) {
            braking.sumBy[POSTURE + i] += 2 * brakeByRearTravel * TRAVEL_BY[i];
        }
        Pull driving = live ? atContact : atWheel;
        for (int side = 0; side < 2; side++) {
            double sign = side == 0 ? 1 : -1;
            driving.sum += drive[side];
            driving.difference += sign * drive[side];
            for (int of = 0; of < 2; of++) {
                int column = first + LEFT_RISE + of;
                double byRise = driveByLoad[side][of] * loadByRise[of];
                driving.sumBy[column] += byRise;
                driving.differenceBy[column] += sign * byRise;
            }
            if (rolling) {
                int column = first + LEFT_RISE + side;
                rest[side] = -rollingResistance * load[side];
                atWheel.sum += rest[side];
                atWheel.difference += sign * rest[side];
                atWheel.sumBy[column] -= rollingResistance * loadByRise[side];
                atWheel.differenceBy[column] -= sign * rollingResistance * loadByRise[side];
            }
        }
    }

    /**
     * What forces of one place lift, s their slope, Δs half the difference of both wheels', w how far the place goes forwards in
     * roll:
     *
     * <pre>
     *   lift  s·ΣF + Δs·(F_L − F_R)
     *   moment against the roll: of a live axle (t/2)·w·ΣF, of wheels  −(t/2)·(Δs·ΣF + s·(F_L − F_R))
     * </pre>
     */
    private void lift(Pull pull, LinesOfAction.Figure slope, LinesOfAction.Figure split, LinesOfAction.Figure turn) {
        bodyForce += slope.value * pull.sum + split.value * pull.difference;
        bodyMoment += live
                ? halfTrack * turn.value * pull.sum
                : -halfTrack * (split.value * pull.sum + slope.value * pull.difference);
        for (int i = 0; i < UNKNOWNS; i++) {
            double sumI = pull.sumBy[i];
            double differenceI = pull.differenceBy[i];
            bodyForceBy[i] += slope.value * sumI + split.value * differenceI;
            bodyMomentBy[i] += live
                    ? halfTrack * turn.value * sumI
                    : -halfTrack * (split.value * sumI + slope.value * differenceI);
        }
        for (int i = 0; i < POSTURE; i++) {
            double slopeI = along(slope, i);
            double splitI = along(split, i);
            bodyForceBy[first + i] += slopeI * pull.sum + splitI * pull.difference;
            bodyMomentBy[first + i] += live
                    ? halfTrack * along(turn, i) * pull.sum
                    : -halfTrack * (splitI * pull.sum + slopeI * pull.difference);
        }
    }

    /** Force of a wheel along the car, N. */
    double forward(Side side) {
        return brake + drive[side.index()] + rest[side.index()];
    }

    /** What the links lift by the brakes alone, ΣJ of B, N. */
    double liftOfBrakes() {
        return (brakesOnBody ? lines.wheel : lines.contact).value * 2 * brake;
    }

    /** What the links lift by the drive alone, ΣJ of D, N. */
    double liftOfDrive() {
        return live
                ? lines.contact.value * (drive[0] + drive[1])
                : lines.wheel.value * (drive[0] + drive[1]) + lines.wheelSplit.value * (drive[0] - drive[1]);
    }

    double loads() {
        return load[0] + load[1];
    }

    /** What the tyres push the axle to the right side down against, from rest: (t/2)·(Fz_R − Fz_L), N·m. */
    double loadMoment() {
        return halfTrack * (load[1] - load[0] - (restLoad[1] - restLoad[0]));
    }
}
