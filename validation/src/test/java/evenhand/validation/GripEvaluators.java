package evenhand.validation;

import static evenhand.validation.Driven.ALL_THE_DRIVE;
import static evenhand.validation.Driven.GENTLE;
import static evenhand.validation.Driven.NEARLY_STRAIGHT;
import static evenhand.validation.Driven.fold;
import static evenhand.validation.Driven.onHardTyres;
import static evenhand.validation.Driven.row;

import evenhand.car.Air;
import evenhand.car.Drive;
import evenhand.car.End;
import evenhand.car.Weights;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import evenhand.tyre.MagicFormula;
import java.util.OptionalDouble;

/** What drag, drive and side force ask of the tyres in a turn, and where an axle can do no more. */
final class GripEvaluators {
    private GripEvaluators() {}

    /** Straight on under a drag at the height of the centre of gravity; it loads the axles as inertia does. */
    static Computed straightUnderDrag(Inputs in) {
        PlainCar plain = onHardTyres(CarInputs.carOfSameWeight(in));
        double pressure = Air.DENSITY / 2 * GENTLE * NEARLY_STRAIGHT; // of the air, N/m²
        double drag = in.has("ax_m_s2") ? in.number("mass_kg") * in.number("ax_m_s2") : in.number("drag_N", 0);
        plain.air = new Air(
                drag / pressure,
                OptionalDouble.empty(),
                in.number("front_lift_N", 0) / pressure,
                in.number("rear_lift_N", 0) / pressure);
        TurnRow row = row(plain.build(), NEARLY_STRAIGHT, GENTLE);
        return new Computed()
                .with("front_axle_N", sum(row, Wheel.FRONT_LEFT))
                .with("rear_axle_N", sum(row, Wheel.REAR_LEFT))
                .with("air_drag_N", row.airDrag())
                .with("drive_force_N", row.driveForce());
    }

    private static double sum(TurnRow row, Wheel wheel) {
        return row.wheel(wheel).load() + row.wheel(wheel.mirrored()).load();
    }

    /** Load that the propeller shaft's torque moves across a driven live axle. */
    static Computed shaftTorque(Inputs in) {
        PlainCar plain = onHardTyres(CarInputs.car(in));
        double pressure = Air.DENSITY / 2 * GENTLE * NEARLY_STRAIGHT;
        plain.air = new Air(in.number("drive_force_N") / pressure, OptionalDouble.empty(), 0, 0);
        TurnRow without = row(plain.build(), NEARLY_STRAIGHT, GENTLE);
        plain.drive = new Drive(
                End.REAR,
                new Drive.Differential.Open(),
                OptionalDouble.of(in.number("final_drive")),
                Drive.ShaftTurns.ANTICLOCKWISE);
        TurnRow with = row(plain.build(), NEARLY_STRAIGHT, GENTLE);
        double left = with.wheel(Wheel.REAR_LEFT).load()
                - without.wheel(Wheel.REAR_LEFT).load();
        double frontRight = with.wheel(Wheel.FRONT_RIGHT).load()
                - without.wheel(Wheel.FRONT_RIGHT).load();
        return new Computed()
                .with("load_shift_N", left)
                .with("load_shift_front_N", frontRight)
                .with("drive_force_N", with.driveForce());
    }

    /** Part of a side force that drive leaves. */
    static Computed frictionEllipse(Inputs in) {
        double pressure = Air.DENSITY / 2 * GENTLE * NEARLY_STRAIGHT;
        double[] forces = in.numbers("Fx_N");
        double[] left = new double[forces.length];
        for (int i = 0; i < forces.length; i++) {
            PlainCar plain = new PlainCar();
            plain.mass = 4 * in.number("wheel_load_N") / Weights.GRAVITY;
            MagicFormula tyre =
                    new MagicFormula(in.number("wheel_load_N"), 60_000, in.number("mu"), 0, 1e6, 1.3, -1, 0, 0, 0, 0);
            plain.front.tyre = tyre;
            plain.rear.tyre = tyre;
            plain.rear.frictionRatio = in.number("longitudinal_friction_ratio");
            double wanted = forces[i];
            // The circle itself takes a little drive as well: ask again with the drag less by that.
            double drag = 2 * wanted;
            for (int again = 0; again < 5; again++) {
                plain.air = new Air(Math.max(0, drag) / pressure, OptionalDouble.empty(), 0, 0);
                TurnRow row = row(plain.build(), NEARLY_STRAIGHT, GENTLE);
                drag += 2 * wanted - row.driveForce();
                left[i] = in.number("Fy0_N") * row.wheel(Wheel.REAR_LEFT).gripLeftForSide();
            }
        }
        return new Computed().with("Fy_N", left);
    }

    /**
     * Slip angles at lateral accelerations, and what each axle could do. The source has forces square to the car: its
     * acceleration is ours times cos β. An axle's own limit is found with it in front, where the fold is the axle's peak.
     */
    static Computed axleSlipsAndLimits(Inputs in) {
        PlainCar plain = CarInputs.carOfSameWeight(in);
        plain.rear.frictionRatio = ALL_THE_DRIVE;
        double[] paces = in.has("ay_m_s2") ? in.numbers("ay_m_s2") : new double[0];
        double[] front = new double[paces.length];
        double[] rear = new double[paces.length];
        double[] steer = new double[paces.length];
        for (int i = 0; i < paces.length; i++) {
            plain.air = Air.NONE;
            TurnRow row = row(plain.build(), NEARLY_STRAIGHT, paces[i]);
            for (int again = 0; again < 8; again++) {
                takePitchOff(plain, row);
                row = row(plain.build(), NEARLY_STRAIGHT, paces[i] / Math.cos(row.sideslip()));
            }
            front[i] = meanSlip(row, Wheel.FRONT_LEFT);
            rear[i] = meanSlip(row, Wheel.REAR_LEFT);
            steer[i] = row.steer() - row.ackermannSteer();
        }
        PlainCar turnedRound = turnedRound(plain);
        double frontLimit = limitOfFront(plain);
        double rearLimit = limitOfFront(turnedRound);
        return new Computed()
                .with("front_slip_rad", front)
                .with("rear_slip_rad", rear)
                .with("steer_minus_L_over_R_rad", steer)
                .with("front_limit_m_s2", frontLimit)
                .with("rear_limit_m_s2", rearLimit)
                .with("balance_m_s2", rearLimit - frontLimit);
    }

    private static double meanSlip(TurnRow row, Wheel wheel) {
        return (row.wheel(wheel).slip() + row.wheel(wheel.mirrored()).slip()) / 2;
    }

    /**
     * What the front axle can do while the rear holds whatever is asked. The rear tyres are chosen until both axles slip
     * alike at the fold: the front wheels then stand straight, and their force is square to the car.
     */
    private static double limitOfFront(PlainCar plain) {
        double rearLoad = plain.rearLoad() / 2;
        double stiffness = 60_000;
        TurnRow limit = null;
        for (int again = 0; again < 12; again++) {
            plain.rear.tyre = PlainCar.inLine(rearLoad, stiffness, 3, 0);
            limit = fold(plain.build(), NEARLY_STRAIGHT);
            takePitchOff(plain, limit);
            stiffness *= meanSlip(limit, Wheel.REAR_LEFT) / meanSlip(limit, Wheel.FRONT_LEFT);
        }
        plain.air = Air.NONE;
        return limit.lateralAcceleration() * Math.cos(limit.sideslip());
    }

    /** In the source nothing acts along the car: lift undoes what the inertia along a car with sideslip shifts. */
    private static void takePitchOff(PlainCar plain, TurnRow row) {
        double forwards = -row.lateralAcceleration() * Math.sin(row.sideslip());
        double shift = plain.mass * forwards * plain.cgHeight / plain.wheelbase;
        double pressure = Air.DENSITY / 2 * row.speed() * row.speed();
        plain.air = new Air(0, OptionalDouble.empty(), -shift / pressure, shift / pressure);
    }

    private static PlainCar turnedRound(PlainCar plain) {
        PlainCar round = new PlainCar();
        round.rear.frictionRatio = plain.rear.frictionRatio;
        round.front.tyreRate = plain.rear.tyreRate;
        round.rear.tyreRate = plain.front.tyreRate;
        round.mass = plain.mass;
        round.wheelbase = plain.wheelbase;
        round.cgBehindFront = plain.wheelbase - plain.cgBehindFront;
        round.cgHeight = plain.cgHeight;
        round.front.track = plain.rear.track;
        round.rear.track = plain.front.track;
        round.front.rollStiffness = plain.rear.rollStiffness;
        round.rear.rollStiffness = plain.front.rollStiffness;
        round.front.tyre = plain.rear.tyre;
        round.rear.tyre = plain.front.tyre;
        return round;
    }
}
