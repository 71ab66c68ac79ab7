package evenhand.validation;

import evenhand.car.Air;
import evenhand.car.Alignment;
import evenhand.car.Bar;
import evenhand.car.Weights;
import evenhand.tyre.MagicFormula;
import java.util.OptionalDouble;

/** Builds the car that a check describes; what it leaves out is that of a {@link PlainCar}. */
final class CarInputs {
    private CarInputs() {}

    static PlainCar car(Inputs in) {
        PlainCar car = new PlainCar();
        car.mass = mass(in);
        car.wheelbase = in.has("lf_m") ? in.number("lf_m") + in.number("lr_m") : in.number("wheelbase_m", 2.5);
        car.cgBehindFront = cgBehindFront(in, car.wheelbase);
        car.cgHeight = in.number("cg_height_m", PlainCar.NOTHING);
        car.torsion = in.number("chassis_Nm_rad", Double.POSITIVE_INFINITY);
        axle(car.front, in.within("front"));
        axle(car.rear, in.within("rear"));
        if (in.has("sprung")) {
            fromSprung(car, in.within("sprung"));
        }
        tyres(car, in);
        car.air = new Air(
                in.number("drag_area_m2", 0),
                OptionalDouble.empty(),
                in.number("front_lift_area_m2", 0),
                in.number("rear_lift_area_m2", 0));
        car.rollingResistance = in.number("rolling_resistance", 0);
        return car;
    }

    /** The same car made as much heavier as its source's g is greater than ours, so that its weights agree. */
    static PlainCar carOfSameWeight(Inputs in) {
        PlainCar car = car(in);
        double scale = ofOurGravity(in);
        car.mass *= scale;
        car.front.unsprungMass *= scale;
        car.rear.unsprungMass *= scale;
        tyres(car, in);
        return car;
    }

    /** The source's g over ours. */
    static double ofOurGravity(Inputs in) {
        return gravity(in) / Weights.GRAVITY;
    }

    static double gravity(Inputs in) {
        return in.number("g_m_s2", Weights.GRAVITY);
    }

    private static double mass(Inputs in) {
        return in.has("weight_N") ? in.number("weight_N") / gravity(in) : in.number("mass_kg", 1000);
    }

    private static double cgBehindFront(Inputs in, double wheelbase) {
        if (in.has("lf_m")) {
            return in.number("lf_m");
        }
        if (in.has("front_share")) {
            return wheelbase * (1 - in.number("front_share"));
        }
        return in.number("cg_behind_front_axle_m", wheelbase / 2);
    }

    /** The source gives the sprung mass and its place: the whole car's follow by moments of mass. */
    private static void fromSprung(PlainCar car, Inputs in) {
        double mass = in.number("mass_kg");
        double share = in.number("front_share");
        double height =
                in.number("above_roll_axis_m") + share * car.front.rollCentre + (1 - share) * car.rear.rollCentre;
        car.mass = mass + car.front.unsprungMass + car.rear.unsprungMass;
        car.cgBehindFront = car.wheelbase * ((1 - share) * mass + car.rear.unsprungMass) / car.mass;
        car.cgHeight = (mass * height
                        + car.front.unsprungMass * car.front.unsprungHeight
                        + car.rear.unsprungMass * car.rear.unsprungHeight)
                / car.mass;
    }

    private static void axle(PlainCar.PlainAxle axle, Inputs in) {
        axle.track = in.number("track_m", axle.track);
        axle.unsprungMass = in.number("unsprung_kg", axle.unsprungMass);
        axle.unsprungHeight = in.number("unsprung_height_m", axle.unsprungHeight);
        axle.rollCentre = in.number("roll_centre_m", axle.rollCentre);
        axle.perBump = in.number("roll_centre_per_bump", axle.perBump);
        axle.rollStiffness = in.number("roll_stiffness_Nm_rad", axle.rollStiffness);
        axle.tyreRate = in.number("tyre_rate_N_m", axle.tyreRate);
        axle.rollCamber = in.number("roll_camber", axle.rollCamber);
        axle.radius = in.number("wheel_radius_m", axle.radius);
        axle.live = in.has("live") && in.values().path("live").asBoolean();
        axle.lowered = in.number("lowered_m", 0);
        if (in.has("bar_Nm_rad")) {
            axle.bar = new Bar.Measured(in.number("bar_Nm_rad"));
        }
        axle.alignment = new Alignment(
                in.number("camber_rad", 0),
                0,
                in.number("roll_steer", 0),
                in.number("lateral_force_steer_rad_N", 0),
                in.number("aligning_torque_steer_rad_Nm", 0));
    }

    private static void tyres(PlainCar car, Inputs in) {
        car.front.tyre = tyre(in, in.within("front"), car.frontLoad() / 2);
        car.rear.tyre = tyre(in, in.within("rear"), car.rearLoad() / 2);
    }

    private static MagicFormula tyre(Inputs in, Inputs axle, double restLoad) {
        if (in.has("tyre")) {
            Inputs tyre = in.within("tyre");
            return new MagicFormula(
                    tyre.number("Fz0_N"),
                    tyre.number("K0_N_rad"),
                    tyre.number("mu0"),
                    tyre.number("s"),
                    tyre.number("p"),
                    tyre.number("C"),
                    tyre.number("E"),
                    0,
                    0,
                    0,
                    0);
        }
        double stiffness = axle.has("c_alpha_tyre_N_rad")
                ? axle.number("c_alpha_tyre_N_rad")
                : axle.number("c_alpha_axle_N_rad", 100_000) / 2;
        MagicFormula inLine = PlainCar.inLine(restLoad, stiffness, axle.number("trail_m", 0));
        return new MagicFormula(
                inLine.referenceLoad(),
                inLine.corneringStiffness(),
                inLine.friction(),
                0,
                inLine.stiffnessPeakLoadRatio(),
                inLine.shape(),
                inLine.curvature(),
                axle.number("camber_thrust_ratio", 0),
                0,
                0,
                inLine.pneumaticTrail());
    }
}
