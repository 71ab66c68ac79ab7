package evenhand.handsums;

import evenhand.car.Alignment;
import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.Weights;
import evenhand.suspension.AxleSuspension;
import evenhand.tyre.LateralLaw;
import java.util.Locale;

/**
 * Roll and load transfer at a lateral acceleration, in closed form: linear springs at rest rates, suspension and tyres
 * in series, roll centres at rest, rigid chassis, with the weight that moves outwards as body and tyres lean. The
 * tyres' sideways give, jacking and drive are left out. The formulas stand one by one in {@link RollStiffness} (stiffnesses,
 * roll angle), {@link LoadTransfer} (moments, {@linkplain LoadTransfer#lateralLoadTransfer lateral load transfer}) and
 * {@link UndersteerBudget}.
 *
 * <p>Source: Milliken &amp; Milliken 1995 ch. 18; Gillespie 1992 ch. 6.
 *
 * @param lateralAcceleration ay, m/s²
 * @param sprung the sprung mass
 * @param rollArm H, sprung centre of gravity above the roll axis, m
 * @param front front axle's part
 * @param rear rear axle's part
 * @param rollAngle φ of the body, rad
 * @param budget understeer gradient term by term
 */
public record HandSums(
        double lateralAcceleration,
        Car.Sprung sprung,
        double rollArm,
        AxleSums front,
        AxleSums rear,
        double rollAngle,
        UndersteerBudget budget) {

    /**
     * One axle's part.
     *
     * @param sideForce Y of its tyres, N
     * @param linkForce N = Y less what the unsprung mass needs, N
     * @param geometricMoment N·z, N·m
     * @param unsprungMoment mu·ay·hu, N·m
     * @param elasticMoment M through springs and bar, N·m
     * @param suspensionRollStiffness Ks, N·m/rad
     * @param tyreRollStiffness Kz = ½·t²·k, N·m/rad
     * @param tyreRollStiffnessLeft Kt, less the weight that moves outwards when they tilt, N·m/rad
     * @param rollStiffness k of suspension and tyres in series, N·m/rad
     * @param tyreTilt ψ, rad
     * @param suspensionRoll φ − ψ, rad
     * @param lateralLoadTransfer ΔFz, what the outer wheel gains, N
     */
    public record AxleSums(
            double sideForce,
            double linkForce,
            double geometricMoment,
            double unsprungMoment,
            double elasticMoment,
            double suspensionRollStiffness,
            double tyreRollStiffness,
            double tyreRollStiffnessLeft,
            double rollStiffness,
            double tyreTilt,
            double suspensionRoll,
            double lateralLoadTransfer) {}

    /** An answer of the hand sums: the sums, or that gravity beats springs and tyres. */
    public sealed interface Outcome permits Found, FallsOver {}

    /** The car stands. */
    public record Found(HandSums sums) implements Outcome {}

    /** Gravity beats springs and tyres: there is no roll angle that balances. */
    public record FallsOver(String text) implements Outcome {}

    /** Share of the front axle in the load transfer of both. */
    public double frontLoadTransferShare() {
        return LoadTransfer.frontShare(front.lateralLoadTransfer(), rear.lateralLoadTransfer());
    }

    /** The hand sums of a car as it stands at rest, per lateral acceleration {@code ay}, m/s². */
    public static Outcome of(Car car, double ay) {
        Car.Sprung sprung = car.sprung();
        AxleAtRest front = AxleAtRest.of(car, End.FRONT);
        AxleAtRest rear = AxleAtRest.of(car, End.REAR);
        if (front.tyresLeft <= 0 || rear.tyresLeft <= 0) {
            return new FallsOver("the tyres of an axle are too soft to hold the car upright");
        }
        double arm = RollStiffness.rollArm(
                sprung.height(), front.rollCentre, sprung.frontShare(), rear.rollCentre, sprung.rearShare());
        double stiffness = front.series + rear.series;
        double gravity = RollStiffness.gravityRollMoment(sprung.mass(), arm);
        if (stiffness <= gravity) {
            return new FallsOver(String.format(
                    Locale.ROOT,
                    "its springs and tyres resist roll with %.0f N*m/deg, and its weight above the roll axis takes %.0f"
                            + " N*m/deg: it falls over on its springs",
                    Math.toRadians(stiffness),
                    Math.toRadians(gravity)));
        }

        double mass = car.weights().mass();
        double frontForce = LoadTransfer.frontSideForce(
                mass, ay, car.wheelbase(), car.wheelbase() - car.cgBehindFront(), front.trail, rear.trail);
        AxleForces ofFront = front.forces(ay, frontForce);
        AxleForces ofRear = rear.forces(ay, mass * ay - frontForce);
        double overturning = LoadTransfer.overturningMomentAboutRollAxis(
                ofFront.link, front.rollCentre, ofRear.link, rear.rollCentre, sprung.height());
        double roll = RollStiffness.rollAngle(
                overturning, front.momentOfTyres(ofFront), rear.momentOfTyres(ofRear), stiffness, gravity);
        AxleSums frontSums = front.sums(ofFront, roll);
        AxleSums rearSums = rear.sums(ofRear, roll);
        UndersteerBudget budget = ay == 0 ? UndersteerBudget.NONE : budget(car, ay, front, rear, frontSums, rearSums);
        return new Found(new HandSums(ay, sprung, arm, frontSums, rearSums, roll, budget));
    }

    private static UndersteerBudget budget(
            Car car, double ay, AxleAtRest front, AxleAtRest rear, AxleSums frontSums, AxleSums rearSums) {
        double frontMass = car.weights().mass() * car.weights().frontFraction();
        double rearMass = car.weights().mass() - frontMass;
        double frontForce = frontSums.sideForce() / ay;
        double rearForce = rearSums.sideForce() / ay;
        Alignment f = car.front().alignment();
        Alignment r = car.rear().alignment();
        double tyres = UndersteerBudget.ofTyres(frontMass, front.corneringStiffness, rearMass, rear.corneringStiffness);
        return new UndersteerBudget(
                tyres,
                UndersteerBudget.ofAligningTorque(
                        frontForce, front.corneringStiffness, rearForce, rear.corneringStiffness, tyres),
                UndersteerBudget.ofCamber(
                        front.camberThrustRatio,
                        front.lean(frontSums),
                        rear.camberThrustRatio,
                        rear.lean(rearSums),
                        ay),
                UndersteerBudget.ofRollSteer(
                        car.front().geometry().rollSteer(),
                        frontSums.suspensionRoll(),
                        car.rear().geometry().rollSteer(),
                        rearSums.suspensionRoll(),
                        ay),
                UndersteerBudget.ofLateralForceSteer(
                        f.lateralForceSteer(), frontForce, r.lateralForceSteer(), rearForce),
                UndersteerBudget.ofAligningTorqueSteer(
                        f.aligningTorqueSteer(),
                        front.trail,
                        frontForce,
                        r.aligningTorqueSteer(),
                        rear.trail,
                        rearForce));
    }

    /** Moment of the load transfers about the ground, ΔFz_f·t_f + ΔFz_r·t_r, N·m. */
    public double momentOfLoadTransfers(Car car) {
        return front.lateralLoadTransfer() * car.front().track()
                + rear.lateralLoadTransfer() * car.rear().track();
    }

    /**
     * What turns the car over: side forces at their heights, and the weights that lean outwards, N·m about the ground. The
     * load transfers carry just that.
     *
     * <pre>  ay·(ms·hs + Σ mu·hu) + g·(ms·H·φ + Σ (ms·s·z + mu·hu)·ψ)  </pre>
     */
    public double overturningMoment(Car car) {
        double g = Weights.GRAVITY;
        double unsprung = car.front().unsprung().mass() * car.front().unsprung().height()
                + car.rear().unsprung().mass() * car.rear().unsprung().height();
        double leaning = sprung.mass() * rollArm * rollAngle
                + tiltingMoment(car.front(), sprung.frontShare()) * front.tyreTilt()
                + tiltingMoment(car.rear(), sprung.rearShare()) * rear.tyreTilt();
        return lateralAcceleration * (sprung.mass() * sprung.height() + unsprung) + g * leaning;
    }

    /** Moment of mass that tilts with an axle's tyres, ms·s·z + mu·hu, kg·m. */
    private double tiltingMoment(Axle axle, double share) {
        return sprung.mass() * share * axle.geometry().rollCentreHeight()
                + axle.unsprung().mass() * axle.unsprung().height();
    }

    /** Forces and moments of an axle that are known before the roll is. */
    private record AxleForces(double side, double link, double geometric, double unsprung) {
        /** Moment that does not go through the springs, G = N·z + mu·ay·hu, N·m. */
        double pastSprings() {
            return geometric + unsprung;
        }
    }

    /** What does not depend on the lateral acceleration. */
    private record AxleAtRest(
            double rollCentre,
            double unsprungMass,
            double unsprungHeight,
            double track,
            double suspension,
            double tyres,
            double tyresLeft,
            double series,
            double corneringStiffness,
            double trail,
            double camberThrustRatio,
            double rollCamber) {

        static AxleAtRest of(Car car, End end) {
            Axle axle = car.axle(end);
            AxleSuspension suspension = AxleSuspension.of(car, end);
            suspension.at(0, 0, axle.geometry().rollCentreHeight());
            double ofSuspension = suspension.momentByRoll;
            double ofTyres =
                    RollStiffness.tyreRollStiffness(axle.track(), axle.tyre().verticalRate());
            Car.Sprung sprung = car.sprung();
            double tyresLeft = RollStiffness.tyreRollStiffnessLeft(
                    ofTyres,
                    sprung.mass() * sprung.share(end),
                    axle.geometry().rollCentreHeight(),
                    axle.unsprung().mass(),
                    axle.unsprung().height());
            LateralLaw law = axle.tyre().lateral();
            double leftStiffness = law.corneringStiffness(car.staticLoad(end, Side.LEFT));
            double rightStiffness = law.corneringStiffness(car.staticLoad(end, Side.RIGHT));
            double trail = law.pneumaticTrail(car.axleLoad(end) / 2);
            return new AxleAtRest(
                    axle.geometry().rollCentreHeight(),
                    axle.unsprung().mass(),
                    axle.unsprung().height(),
                    axle.track(),
                    ofSuspension,
                    ofTyres,
                    tyresLeft,
                    RollStiffness.rollStiffnessInSeries(ofSuspension, tyresLeft),
                    leftStiffness + rightStiffness,
                    trail,
                    law.camberThrustRatio(),
                    axle.geometry().rollCamber());
        }

        AxleForces forces(double ay, double sideForce) {
            double link = LoadTransfer.linkForce(sideForce, unsprungMass, ay);
            return new AxleForces(
                    sideForce,
                    link,
                    LoadTransfer.geometricMoment(link, rollCentre),
                    LoadTransfer.unsprungMoment(unsprungMass, ay, unsprungHeight));
        }

        /** k·G/Kt, N·m: the tilt of the tyres under what goes past the springs, as a moment on the body. */
        double momentOfTyres(AxleForces forces) {
            return series * forces.pastSprings() / tyresLeft;
        }

        AxleSums sums(AxleForces forces, double roll) {
            double elastic = LoadTransfer.elasticMoment(series, roll, forces.pastSprings(), tyresLeft);
            double tilt = RollStiffness.tyreTilt(elastic, forces.pastSprings(), tyresLeft);
            return new AxleSums(
                    forces.side,
                    forces.link,
                    forces.geometric,
                    forces.unsprung,
                    elastic,
                    suspension,
                    tyres,
                    tyresLeft,
                    series,
                    tilt,
                    roll - tilt,
                    LoadTransfer.lateralLoadTransfer(tyres, tilt, track));
        }

        /** Lean of the wheels: with the axle, or with the part of the suspension roll that its links leave. */
        double lean(AxleSums sums) {
            return rollCamber * sums.suspensionRoll() + sums.tyreTilt();
        }
    }
}
