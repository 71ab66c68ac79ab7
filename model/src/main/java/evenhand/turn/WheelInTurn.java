package evenhand.turn;

import evenhand.car.Alignment;
import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.geometry.Linear;
import evenhand.geometry.WheelPairMotion;
import evenhand.suspension.AxleSuspension;
import evenhand.tyre.SideForce;
import evenhand.tyre.Tyre;
import java.util.Optional;

/**
 * One wheel of the turn: where it stands, which way it rolls, and what its tyre does, with slopes over what its axle
 * feels ({@link AxleInTurn#STEER} to {@link AxleInTurn#CURVATURE}).
 *
 * <p>A left turn, axes ISO 8855; σ = +1 left, −1 right; x, y of the contact patch from the centre of gravity, m. It is
 * asked in three steps, since the tyres' grip limits the shares of the drive force, and those what is left to the side:
 * {@link #stand} (load), {@link #roll} (steer, lean, slip, side force before drive), {@link #pull} (longitudinal force,
 * friction ellipse, forces along the car's axes). Nothing is allocated.
 */
final class WheelInTurn {
    private static final int UNKNOWNS = AxleInTurn.UNKNOWNS;

    /**
     * Friction used on drive beyond which there is no state: nearer to all of it, with e below 1e-5, rounding of the drive
     * force alone moves e = √(1 − used²) by more than the balances are held to.
     */
    private static final double MOST_USED = 1 - 5e-11;

    /** Load of the tyre Fz, N, and its slope over the wheel's rise. */
    double load;

    double loadByRise;

    /** Travel in bump, m; of a live axle at the track. Steer to the left and lean to the right, rad. */
    double travel;

    double steer;
    double lean;
    final double[] leanBy = new double[UNKNOWNS];

    /** Slip angle α, rad, positive when it makes force to the left; speed of the wheel over the car's, v_j/V. */
    double slip;

    double turnSpeed;
    final double[] slipBy = new double[UNKNOWNS];

    /** What the tyre gives at this slip, lean and load before drive takes its share. */
    final SideForce tyre;

    /** e: the part of the side force that drive and drag leave; Y across the wheel, N; D·e, N. */
    double sideLeft;

    double lateralForce;
    double available;

    /** Forces along the car's axes, N; aligning moment about z, N·m. */
    double forwardForce;

    double sideForce;
    double aligningMoment;

    final double restLoad;
    /** Left of the centre of gravity, m. */
    final double y;

    private final double sigma;
    private final int riseColumn;
    private final boolean steered;
    private final boolean live;
    private final double x;
    private final double halfTrack;
    private final double curvature;
    private final double camber;
    private final double toe;
    private final Linear geometry;
    /** What the wheel's own links do with it, where they are known by points. */
    final Optional<WheelPairMotion.Reading> guide;

    private final double tyreRate;
    private final double rollingResistance;
    private final double frictionRatio;
    private final double ackermannShare;
    private final double ackermannHalf; // half the track over the wheelbase
    final double[] steerBy = new double[UNKNOWNS];
    private final double[] forwardForceBy = new double[UNKNOWNS];

    /**
     * @param suspension of its axle
     * @param cgOffset of the centre of gravity to the left of the middle, m
     * @param radius of the circle, m
     */
    WheelInTurn(Car car, End end, Side side, AxleSuspension suspension, double cgOffset, double radius) {
        Axle axle = car.axle(end);
        sigma = side.sign();
        riseColumn = side == Side.LEFT ? AxleInTurn.LEFT_RISE : AxleInTurn.RIGHT_RISE;
        steered = end == End.FRONT;
        live = axle instanceof Axle.Live;
        x = steered ? car.cgBehindFront() : car.cgBehindFront() - car.wheelbase();
        halfTrack = axle.track() / 2;
        y = sigma * halfTrack - cgOffset;
        curvature = 1 / radius;
        Alignment alignment = axle.alignment();
        camber = alignment.camber();
        toe = alignment.toe();
        geometry = axle.geometry();
        guide = suspension.wheelOnLinks(side);
        double camberPerBump = geometry.leanByTravel();
        Tyre fitted = axle.tyre();
        tyre = SideForce.of(fitted.lateral());
        tyreRate = fitted.verticalRate();
        frictionRatio = fitted.longitudinalFrictionRatio();
        restLoad = car.staticLoad(end, side);
        rollingResistance = car.rollingResistance();
        ackermannShare = car.steering().ackermannShare();
        ackermannHalf = axle.track() / (2 * car.wheelbase());
        steerBy[AxleInTurn.COMPLIANCE] = steered ? -1 : 1;
        if (live) {
            leanBy[AxleInTurn.LEFT_RISE] = 1 / axle.track();
            leanBy[AxleInTurn.RIGHT_RISE] = -1 / axle.track();
        } else {
            leanBy[AxleInTurn.ROLL] = 1 - camberPerBump * halfTrack;
            leanBy[AxleInTurn.HEAVE] = -sigma * camberPerBump;
            leanBy[riseColumn] = sigma * camberPerBump;
        }
    }

    /** Load of the tyre: Fz = Fz0 − k·w, never below zero; w rise of the wheel from rest, m, k the tyre's rate, N/m. */
    void stand(double rise) {
        double held = restLoad - tyreRate * rise;
        load = held > 0 ? held : 0;
        loadByRise = held > 0 ? -tyreRate : 0;
    }

    /** How far it hangs below zero load: −Fz before it is cut off, N. */
    double lift(double rise) {
        return tyreRate * rise - restLoad;
    }

    /**
     * Travel, steer, lean and slip, and the side force that they make.
     *
     * @param axleTravel mean travel u, m
     * @param suspensionRoll φs, rad
     * @param bodyRoll φ, rad
     * @param tyreTilt ψ, rad
     * @param cos of the sideslip
     * @param sin of the sideslip
     */
    void roll(
            double axleTravel,
            double suspensionRoll,
            double bodyRoll,
            double tyreTilt,
            double referenceSteer,
            double compliance,
            double cos,
            double sin) {
        travel = axleTravel - sigma * halfTrack * suspensionRoll;
        if (guide.isPresent()) {
            guided(guide.get(), bodyRoll, referenceSteer, compliance);
            slipAngle(cos, sin);
            tyre.at(slip, lean, load);
            return;
        }
        lean = live ? tyreTilt - sigma * camber : bodyRoll + sigma * (geometry.lean(travel) - camber);
        steerAngle(referenceSteer, compliance);
        slipAngle(cos, sin);
        tyre.at(slip, lean, load);
    }

    /**
     * Steer and lean of a wheel by its links' points, toe and Ackermann in them: δ_j = steer_j(u_j, rack) ∓ U (front −, rear
     * +), λ_j = φ − σ·camber_j(u_j, rack), u_j = w_j − ζ − y_j·φ; U is what links and bushes give.
     */
    private void guided(WheelPairMotion.Reading links, double bodyRoll, double referenceSteer, double compliance) {
        links.at(travel, referenceSteer);
        steer = links.steer() + (steered ? -compliance : compliance);
        double steerByTravel = links.steerByTravel();
        steerBy[AxleInTurn.STEER] = links.steerBySteer();
        steerBy[AxleInTurn.HEAVE] = -steerByTravel;
        steerBy[AxleInTurn.ROLL] = -sigma * halfTrack * steerByTravel;
        steerBy[riseColumn] = steerByTravel;
        lean = bodyRoll - sigma * links.camber();
        double leanByTravel = -sigma * links.camberByTravel();
        leanBy[AxleInTurn.STEER] = -sigma * links.camberBySteer();
        leanBy[AxleInTurn.HEAVE] = -leanByTravel;
        leanBy[AxleInTurn.ROLL] = 1 - sigma * halfTrack * leanByTravel;
        leanBy[riseColumn] = leanByTravel;
        slipBy[AxleInTurn.HEAVE] = steerBy[AxleInTurn.HEAVE];
        slipBy[AxleInTurn.ROLL] = steerBy[AxleInTurn.ROLL];
        slipBy[riseColumn] = steerBy[riseColumn];
    }

    /**
     * Steer of a wheel, left positive. Front δ_j = δ + A·(ack_j − δ) − U − σ·toe, tan ack_j = tan δ/(1 − σ·(t/2L)·tan δ):
     * the reference steer, moved towards the Ackermann angle by its share A; rear δ_j = U − σ·toe. U is what roll and the
     * give of links and bushes steer.
     */
    private void steerAngle(double referenceSteer, double compliance) {
        if (!steered) {
            steer = compliance - sigma * toe;
            return;
        }
        double sin = Math.sin(referenceSteer);
        double turned = Math.cos(referenceSteer) - sigma * ackermannHalf * sin;
        double ackermann = Math.atan2(sin, turned); // not of the quotient: the inner wheel may pass ninety degrees
        double ackermannBySteer = 1 / (sin * sin + turned * turned);
        steer = referenceSteer + ackermannShare * (ackermann - referenceSteer) - compliance - sigma * toe;
        steerBy[AxleInTurn.STEER] = 1 + ackermannShare * (ackermannBySteer - 1);
    }

    /**
     * Slip angle α_j = δ_j − atan2(sin β + x·κ, cos β − y·κ): where the wheel points less where it goes, κ = 1/R the
     * curvature of the path (ISO 8855, sign turned so that it makes force to the left).
     */
    private void slipAngle(double cos, double sin) {
        double across = sin + x * curvature;
        double along = cos - y * curvature;
        turnSpeed = along;
        slip = steer - Math.atan2(across, along);
        double square = along * along + across * across;
        slipBy[AxleInTurn.STEER] = steerBy[AxleInTurn.STEER];
        slipBy[AxleInTurn.COMPLIANCE] = steerBy[AxleInTurn.COMPLIANCE];
        slipBy[AxleInTurn.SIDESLIP] = -(along * cos + across * sin) / square;
        slipBy[AxleInTurn.CURVATURE] = -(along * x + across * y) / square;
    }

    /** The greatest drive force, or braking force, that it can take beside its rolling resistance, X̂ of its axle's shares, N. */
    double mostDrive(boolean forwards) {
        double resistance = rollingResistance * load;
        return frictionRatio * tyre.peak + (forwards ? resistance : -resistance);
    }

    /** Slope of {@link #mostDrive} over the load. */
    double mostDriveByLoad(boolean forwards) {
        return frictionRatio * tyre.peakByLoad + (forwards ? rollingResistance : -rollingResistance);
    }

    /** Slope of {@link #mostDrive} over the lean. */
    double mostDriveByLean() {
        return frictionRatio * tyre.peakByLean;
    }

    /**
     * Friction ellipse, aligning moment and forces along the car's axes, added to the sums of the axle.
     *
     * <pre>
     *   X = share of the drive force + brake force − rollingResistance·Fz
     *   e = √(1 − (X/(longitudinalFrictionRatio·D))²),  Y = Fy·e,  Mz = −trail·Y
     *   Fx_j = X·cos δ_j − Y·sin δ_j,  Fy_j = X·sin δ_j + Y·cos δ_j
     * </pre>
     *
     * Source: friction ellipse as Milliken &amp; Milliken 1995 ch. 2; trail of the brush model, Pacejka 2012 ch. 3.
     *
     * @param share of the drive force, N
     * @param shareBy its slopes; zeros on an axle that is not driven
     * @param axle whose sums it joins
     * @return false where it is asked for more than its friction: there is no such state
     */
    boolean pull(double share, double[] shareBy, AxleInTurn axle) {
        boolean braked = axle.brakes.isPresent();
        double brake = braked ? axle.brakes.get().force : 0;
        double longitudinal = share + brake - rollingResistance * load;
        double most = frictionRatio * tyre.peak;
        double used = 0;
        if (longitudinal != 0) {
            used = longitudinal / most;
            if (!(Math.abs(used) < MOST_USED)) {
                return false;
            }
        }
        double left = Math.sqrt(1 - used * used);
        double lateral = tyre.force * left;
        double moment = -tyre.trail * lateral + tyre.residualMoment;
        double cos = Math.cos(steer);
        double sin = Math.sin(steer);
        double forward = longitudinal * cos - lateral * sin;
        double sideways = longitudinal * sin + lateral * cos;
        sideLeft = left;
        lateralForce = lateral;
        available = tyre.peak * left;
        forwardForce = forward;
        sideForce = sideways;
        aligningMoment = moment;
        double reacted = (axle.reactsDrive ? share : 0) + (axle.reactsBrakes ? brake : 0);
        double along = reacted * cos;
        axle.forwardForce += forward;
        axle.forwardForceDifference += sigma * forward;
        axle.reacted += along;
        axle.reactedDifference += sigma * along;
        axle.sideForce += sideways;
        axle.aligningMoment += moment;
        axle.yawMoment += x * sideways - y * forward + moment;
        for (int i = 0; i < UNKNOWNS; i++) {
            double slipI = slipBy[i];
            double leanI = leanBy[i];
            double loadI = i == riseColumn ? loadByRise : 0;
            double brakeI = braked ? axle.brakes.get().forceBy[i] : 0;
            double longitudinalI = shareBy[i] + brakeI - rollingResistance * loadI;
            double forceI = tyre.forceBySlip * slipI + tyre.forceByLean * leanI + tyre.forceByLoad * loadI;
            double leftI = 0;
            if (used != 0) {
                double peakI = tyre.peakByLean * leanI + tyre.peakByLoad * loadI;
                double usedI = (longitudinalI - used * frictionRatio * peakI) / most;
                leftI = -used * usedI / left;
            }
            double lateralI = forceI * left + tyre.force * leftI;
            double trailI = tyre.trailBySlip * slipI + tyre.trailByLean * leanI + tyre.trailByLoad * loadI;
            double residualI = tyre.residualMomentBySlip * slipI
                    + tyre.residualMomentByLean * leanI
                    + tyre.residualMomentByLoad * loadI;
            double momentI = -trailI * lateral - tyre.trail * lateralI + residualI;
            double forwardI = longitudinalI * cos - lateralI * sin - sideways * steerBy[i];
            double sidewaysI = longitudinalI * sin + lateralI * cos + forward * steerBy[i];
            axle.forwardForceBy[i] += forwardI;
            axle.sideForceBy[i] += sidewaysI;
            axle.aligningMomentBy[i] += momentI;
            axle.yawMomentBy[i] += x * sidewaysI - y * forwardI + momentI;
            axle.sideForceDifferenceBy[i] += sigma * sidewaysI;
            forwardForceBy[i] = forwardI;
        }
        if (axle.hasSideView) {
            for (int i = 0; i < UNKNOWNS; i++) {
                axle.forwardForceDifferenceBy[i] += sigma * forwardForceBy[i];
                double brakeI = braked ? axle.brakes.get().forceBy[i] : 0;
                double reactedI = (axle.reactsDrive ? shareBy[i] : 0) + (axle.reactsBrakes ? brakeI : 0);
                double alongI = reactedI * cos - reacted * sin * steerBy[i];
                axle.reactedBy[i] += alongI;
                axle.reactedDifferenceBy[i] += sigma * alongI;
            }
        }
        return true;
    }
}
