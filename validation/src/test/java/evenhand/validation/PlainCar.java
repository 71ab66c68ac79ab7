package evenhand.validation;

import evenhand.car.Air;
import evenhand.car.Alignment;
import evenhand.car.Axle;
import evenhand.car.Bar;
import evenhand.car.Car;
import evenhand.car.Drive;
import evenhand.car.Seat;
import evenhand.car.Spring;
import evenhand.car.Steering;
import evenhand.car.Stops;
import evenhand.car.Unsprung;
import evenhand.car.Weights;
import evenhand.tyre.LateralLaw;
import evenhand.tyre.MagicFormula;
import evenhand.tyre.Tyre;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A car with nothing in it but what a textbook's sum has: unless said otherwise its centre of gravity lies on the
 * ground, nothing is unsprung, springs and tyres are as stiff as stone, wheels stand parallel and the air is thin.
 * A check sets the fields that its source speaks of.
 */
final class PlainCar {
    /** Something that stands for nothing where the model wants a value above zero: kg, m. */
    static final double NOTHING = 1e-9;

    /** Rate or roll stiffness that gives way by less than any check sees, N/m or N·m/rad. */
    static final double STONE = 1e10;

    double mass = 1000;
    double wheelbase = 2.5;
    double cgBehindFront = 1.25;
    double cgHeight = NOTHING;
    double torsion = Double.POSITIVE_INFINITY;
    Steering steering = new Steering(16, 0);
    Air air = Air.NONE;
    double rollingResistance = 0;
    Drive drive = Drive.USUAL;
    final PlainAxle front = new PlainAxle();
    final PlainAxle rear = new PlainAxle();

    /** One axle of a plain car. */
    static final class PlainAxle {
        double track = 1.4;
        double unsprungMass = NOTHING;
        double unsprungHeight = NOTHING;
        double rollCentre = 0;
        double perBump = 0;
        double rollStiffness = STONE;
        double lowered = 0;
        double rollCamber = 1;
        double radius = 0.3;
        double tyreRate = STONE;
        double frictionRatio = 1;
        Alignment alignment = new Alignment(0, 0, 0, 0, 0);
        Spring spring;
        Stops stops = Stops.NONE;
        Bar bar;
        LateralLaw tyre;
        boolean live;

        private Axle build() {
            Tyre fitted = new Tyre(radius, tyreRate, tyre, frictionRatio, OptionalDouble.empty());
            Unsprung unsprung = new Unsprung(unsprungMass, unsprungHeight);
            if (live) {
                return new Axle.Live(
                        track,
                        unsprung,
                        new evenhand.car.LateralLocator.PanhardRod(Math.max(rollCentre, NOTHING), perBump),
                        spring == null ? new Spring.Upright(2 * rollStiffness, 1, 1, Spring.Lengths.UNKNOWN) : spring,
                        Optional.ofNullable(bar),
                        stops,
                        Optional.empty(),
                        lowered,
                        alignment,
                        fitted,
                        OptionalDouble.empty());
            }
            return new Axle.Independent(
                    track,
                    unsprung,
                    new Axle.RollCentre(rollCentre, perBump),
                    spring == null
                            ? new Spring.AtWheel(2 * rollStiffness / (track * track), 1, Spring.Lengths.UNKNOWN)
                            : (Spring.AtWheel) spring,
                    Optional.ofNullable(bar),
                    stops,
                    Optional.empty(),
                    lowered,
                    rollCamber,
                    alignment,
                    fitted,
                    OptionalDouble.empty());
        }
    }

    double frontLoad() {
        return mass * Weights.GRAVITY * (1 - cgBehindFront / wheelbase);
    }

    double rearLoad() {
        return mass * Weights.GRAVITY * cgBehindFront / wheelbase;
    }

    /** Gives each axle tyres of this cornering stiffness, N/rad of both together, and force in line with slip. */
    PlainCar onStiffness(double frontAxle, double rearAxle) {
        front.tyre = inLine(frontLoad() / 2, frontAxle / 2, 0);
        rear.tyre = inLine(rearLoad() / 2, rearAxle / 2, 0);
        return this;
    }

    /**
     * A tyre whose force keeps in line with slip as long as it is small (no cubic term), stiffness as the load. A soft
     * one has less friction, so that it peaks before it stands across.
     */
    static MagicFormula inLine(double load, double stiffness, double trail) {
        double friction = Math.min(3, 0.15 * stiffness / load);
        return inLine(load, stiffness, friction, trail);
    }

    static MagicFormula inLine(double load, double stiffness, double friction, double trail) {
        double shape = 1.3;
        return new MagicFormula(load, stiffness, friction, 0, 1e6, shape, -1 - shape * shape / 2, 0, 0, 0, trail);
    }

    Car build() {
        if (front.tyre == null) {
            onStiffness(100_000, 100_000);
        }
        return new Car(
                new Weights.Whole(mass, 1 - cgBehindFront / wheelbase),
                wheelbase,
                cgHeight,
                torsion,
                steering,
                air,
                rollingResistance,
                front.build(),
                rear.build(),
                drive,
                OptionalDouble.empty(),
                Seat.USUAL);
    }
}
