package evenhand.handsums;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Weights;
import evenhand.suspension.AxleSuspension;
import evenhand.tyre.LateralLaw;

/**
 * Roll and load transfer at a lateral acceleration, in closed form: linear springs at rest rates, suspension and tyres
 * in series, roll centres at rest, rigid chassis, with the weight that moves outwards as body and tyres lean. The
 * tyres' sideways give, jacking and drive are left out.
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
     * @param loadTransfer what the outer wheel gains, N
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
            double loadTransfer) {}

    /** An answer of the hand sums: the sums, or that gravity beats springs and tyres. */
    public sealed interface Outcome permits Found, FallsOver {}

    /** The car stands. */
    public record Found(HandSums sums) implements Outcome {}

    /** Gravity beats springs and tyres: there is no roll angle that balances. */
    public record FallsOver(String text) implements Outcome {}

    /** Share of the front axle in the load transfer of both. */
    public double frontLoadTransferShare() {
        return front.loadTransfer() / (front.loadTransfer() + rear.loadTransfer());
    }

    /** The hand sums of a car as it stands at rest, per lateral acceleration {@code ay}, m/s². */
    public static Outcome of(Car car, double ay) {
        double g = Weights.GRAVITY;
        Car.Sprung sprung = car.sprung();
        AxleAtRest front = AxleAtRest.of(car, End.FRONT);
        AxleAtRest rear = AxleAtRest.of(car, End.REAR);
        double arm = sprung.height() - front.rollCentre * sprung.frontShare() - rear.rollCentre * sprung.rearShare();
        for (AxleAtRest axle : new AxleAtRest[] {front, rear}) {
            if (axle.tyresLeft <= 0) {
                return new FallsOver("the tyres of an axle are too soft to hold the car upright");
            }
        }
        double stiffness = front.series + rear.series;
        if (stiffness <= sprung.mass() * g * arm) {
            return new FallsOver(String.format(
                    java.util.Locale.ROOT,
                    "its springs and tyres resist roll with %.0f N*m/deg, and its weight above the roll axis takes %.0f"
                            + " N*m/deg: it falls over on its springs",
                    Math.toRadians(stiffness),
                    Math.toRadians(sprung.mass() * g * arm)));
        }

        double b = car.wheelbase() - car.cgBehindFront();
        double frontForce = car.weights().mass() * ay * (b + rear.trail) / (car.wheelbase() - front.trail + rear.trail);
        double rearForce = car.weights().mass() * ay - frontForce;
        double frontLink = frontForce - front.unsprungMass * ay;
        double rearLink = rearForce - rear.unsprungMass * ay;
        double frontOutside = frontLink * front.rollCentre + front.unsprungMass * ay * front.unsprungHeight;
        double rearOutside = rearLink * rear.rollCentre + rear.unsprungMass * ay * rear.unsprungHeight;
        double overturning =
                frontLink * (sprung.height() - front.rollCentre) + rearLink * (sprung.height() - rear.rollCentre);
        double roll = (overturning
                        + front.series * frontOutside / front.tyresLeft
                        + rear.series * rearOutside / rear.tyresLeft)
                / (stiffness - sprung.mass() * g * arm);
        AxleSums frontSums = front.sums(ay, frontForce, roll);
        AxleSums rearSums = rear.sums(ay, rearForce, roll);
        UndersteerBudget budget =
                ay == 0 ? new UndersteerBudget(0, 0, 0, 0, 0, 0) : budget(car, ay, front, rear, frontSums, rearSums);
        return new Found(new HandSums(ay, sprung, arm, frontSums, rearSums, roll, budget));
    }

    private static UndersteerBudget budget(
            Car car, double ay, AxleAtRest front, AxleAtRest rear, AxleSums frontSums, AxleSums rearSums) {
        double frontMass = car.weights().mass() * car.weights().frontFraction();
        double rearMass = car.weights().mass() - frontMass;
        double tyres = frontMass / front.corneringStiffness - rearMass / rear.corneringStiffness;
        double frontForce = frontSums.sideForce() / ay;
        double rearForce = rearSums.sideForce() / ay;
        var f = car.front().alignment();
        var r = car.rear().alignment();
        return new UndersteerBudget(
                tyres,
                frontForce / front.corneringStiffness - rearForce / rear.corneringStiffness - tyres,
                (front.camberThrustRatio * front.lean(frontSums) - rear.camberThrustRatio * rear.lean(rearSums)) / ay,
                (f.rollSteer() * frontSums.suspensionRoll() + r.rollSteer() * rearSums.suspensionRoll()) / ay,
                f.lateralForceSteer() * frontForce + r.lateralForceSteer() * rearForce,
                f.aligningTorqueSteer() * front.trail * frontForce + r.aligningTorqueSteer() * rear.trail * rearForce);
    }

    /** Moment of the load transfers about the ground, N·m. */
    public double momentOfLoadTransfers(Car car) {
        return front.loadTransfer() * car.front().track()
                + rear.loadTransfer() * car.rear().track();
    }

    /** What turns the car over: side forces at their heights, and the weights that lean outwards, N·m. */
    public double overturningMoment(Car car) {
        double g = Weights.GRAVITY;
        double unsprung = car.front().unsprung().mass() * car.front().unsprung().height()
                + car.rear().unsprung().mass() * car.rear().unsprung().height();
        double leaning = sprung.mass() * rollArm * rollAngle
                + tiltingMoment(car.front(), sprung.frontShare()) * front.tyreTilt()
                + tiltingMoment(car.rear(), sprung.rearShare()) * rear.tyreTilt();
        return lateralAcceleration * (sprung.mass() * sprung.height() + unsprung) + g * leaning;
    }

    private double tiltingMoment(Axle axle, double share) {
        return sprung.mass() * share * axle.rollCentreHeight()
                + axle.unsprung().mass() * axle.unsprung().height();
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
            suspension.at(0, 0, axle.rollCentreHeight());
            double ks = suspension.momentByRoll;
            double kz = axle.track() * axle.track() * axle.tyre().verticalRate() / 2;
            Car.Sprung sprung = car.sprung();
            double kt = kz
                    - Weights.GRAVITY
                            * (sprung.mass() * sprung.share(end) * axle.rollCentreHeight()
                                    + axle.unsprung().mass() * axle.unsprung().height());
            LateralLaw law = axle.tyre().lateral();
            double leftStiffness = law.corneringStiffness(car.staticLoad(end, true));
            double rightStiffness = law.corneringStiffness(car.staticLoad(end, false));
            double trail = law.pneumaticTrail((car.staticLoad(end, true) + car.staticLoad(end, false)) / 2);
            return new AxleAtRest(
                    axle.rollCentreHeight(),
                    axle.unsprung().mass(),
                    axle.unsprung().height(),
                    axle.track(),
                    ks,
                    kz,
                    kt,
                    ks * kt / (ks + kt),
                    leftStiffness + rightStiffness,
                    trail,
                    law.camberThrustRatio(),
                    axle instanceof Axle.Independent independent ? independent.rollCamber() : 0);
        }

        AxleSums sums(double ay, double sideForce, double roll) {
            double link = sideForce - unsprungMass * ay;
            double geometric = link * rollCentre;
            double ofUnsprung = unsprungMass * ay * unsprungHeight;
            double outside = geometric + ofUnsprung;
            double elastic = series * (roll - outside / tyresLeft);
            double tilt = (elastic + outside) / tyresLeft;
            return new AxleSums(
                    sideForce,
                    link,
                    geometric,
                    ofUnsprung,
                    elastic,
                    suspension,
                    tyres,
                    tyresLeft,
                    series,
                    tilt,
                    roll - tilt,
                    tyres * tilt / track);
        }

        /** Lean of the wheels: with the axle, or with the part of the suspension roll that its links leave. */
        double lean(AxleSums sums) {
            return rollCamber * sums.suspensionRoll() + sums.tyreTilt();
        }
    }
}
