package evenhand.validation;

import static evenhand.validation.Driven.GENTLE;
import static evenhand.validation.Driven.NEARLY_STRAIGHT;
import static evenhand.validation.Driven.gentle;
import static evenhand.validation.Driven.handSums;
import static evenhand.validation.Driven.row;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.Weights;
import evenhand.handsums.UndersteerBudget;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.turn.TurnRow;

/** What is known of the linear two-wheel car, asked of the turn at small angles. */
final class LinearCarEvaluators {
    private static final Unit DEGREE = Unit.of("deg");

    private LinearCarEvaluators() {}

    /** The understeer budget by hand sums, and the gradient that the equilibrium has at small acceleration. */
    static Computed budget(Inputs in) {
        Car car = CarInputs.car(in).build();
        double gravity = CarInputs.gravity(in);
        UndersteerBudget budget = handSums(car, gravity).budget();
        double ofTurn = limitOfGradient(car);
        return new Computed()
                .with("tyres_rad_per_g", budget.tyres() * gravity)
                .with("aligning_torque_rad_per_g", budget.aligningTorque() * gravity)
                .with("camber_rad_per_g", budget.camber() * gravity)
                .with("roll_steer_rad_per_g", budget.rollSteer() * gravity)
                .with("lateral_force_steer_rad_per_g", budget.lateralForceSteer() * gravity)
                .with("aligning_torque_steer_rad_per_g", budget.aligningTorqueSteer() * gravity)
                .with("gradient_rad_per_g", budget.gradient() * gravity)
                .with("gradient_of_turn_rad_per_g", ofTurn * gravity);
    }

    /** The gradient of the equilibrium as the acceleration tends to nothing on a wide circle. */
    private static double limitOfGradient(Car car) {
        double small = 0.001 * Weights.GRAVITY;
        double atSmall = row(car, NEARLY_STRAIGHT, small).understeerGradient().orElseThrow();
        double atTwice =
                row(car, NEARLY_STRAIGHT, 2 * small).understeerGradient().orElseThrow();
        return 2 * atSmall - atTwice;
    }

    static Computed budgetInSum(Inputs in) {
        double[] terms = in.numbers("terms_front_less_rear_deg_per_g");
        return new Computed()
                .with(
                        "understeer_deg_per_g",
                        new UndersteerBudget(terms[0], terms[1], terms[2], terms[3], terms[4], terms[5]).gradient());
    }

    /** The linear two-wheel car: gradient by hand sums, everything else by driving the turn. */
    static Computed linearCar(Inputs in) {
        PlainCar plain = CarInputs.car(in);
        Car car = plain.build();
        double gravity = CarInputs.gravity(in);
        double gradient = handSums(car, gravity).budget().gradient();
        Computed computed = new Computed()
                .with("understeer_gradient_rad_per_m_s2", gradient)
                .with("stability_factor_s2_m2", gradient / car.wheelbase())
                .with("K_us_rad", gradient * gravity)
                .with("K_us_deg", DEGREE.fromSi(gradient) * gravity)
                .with("Fz1_N", car.staticLoad(End.FRONT, Side.LEFT) * 2 * CarInputs.ofOurGravity(in))
                .with("Fz2_N", car.staticLoad(End.REAR, Side.LEFT) * 2 * CarInputs.ofOurGravity(in))
                .with("understeer_gradient_of_turn_rad_per_m_s2", limitOfGradient(car));
        if (gradient > 0) {
            double speed = speedWhereSteerIs(2, car);
            computed.with("characteristic_speed_m_s", speed)
                    .with("characteristic_speed_mph", Unit.of("mph").fromSi(speed));
        } else {
            computed.with("critical_speed_m_s", speedWhereSteerIs(0, car));
        }
        if (in.has("speed_m_s") || in.has("speed")) {
            double speed = in.has("speed_m_s") ? in.number("speed_m_s") : in.si("speed", Dimension.SPEED);
            atSpeed(computed, in, car, speed, gravity);
        }
        return computed;
    }

    private static void atSpeed(Computed computed, Inputs in, Car car, double speed, double gravity) {
        TurnRow gentle = gentle(car, speed);
        double yawRate = gentle.lateralAcceleration() / gentle.speed();
        computed.with("yaw_rate_gain_per_s", yawRate / gentle.steer())
                .with("steady_yaw_rate_rad_s", yawRate / gentle.steer() * in.number("steer_rad", 1))
                .with("sideslip_gain", gentle.sideslip() / gentle.steer())
                .with(
                        "lateral_acceleration_gain_g_per_deg",
                        gentle.lateralAcceleration() / gravity / DEGREE.fromSi(gentle.steer()));
        if (in.has("radius_m") || in.has("radius")) {
            double radius = in.has("radius_m") ? in.number("radius_m") : in.si("radius", Dimension.LENGTH);
            TurnRow turn = row(car, radius, speed * speed / radius);
            computed.with("steer_rad", turn.steer())
                    .with("sideslip_rad", turn.sideslip())
                    .with("sideslip_deg", DEGREE.fromSi(turn.sideslip()));
        }
    }

    /** The speed at which a circle needs so many times the steer that it needs at a crawl. */
    private static double speedWhereSteerIs(double times, Car car) {
        double radius = 20_000;
        double rough = speedWhereSteerIs(times, car, radius, 5, 200);
        radius = rough * rough / GENTLE;
        return speedWhereSteerIs(times, car, radius, 0.8 * rough, 1.2 * rough);
    }

    private static double speedWhereSteerIs(double times, Car car, double radius, double low, double high) {
        return Roots.between(low, high, speed -> {
            TurnRow row = row(car, radius, speed * speed / radius);
            return (row.steer() - times * row.ackermannSteer()) * radius;
        });
    }

    /** Where the yaw rate that a little steer brings is greatest. */
    static Computed yawGainPeak(Inputs in) {
        Car car = CarInputs.car(in).build();
        double speed = TyreEvaluators.greatest(10, 80, v -> yawRateGain(car, v));
        return new Computed()
                .with("speed_of_peak_m_s", speed)
                .with("peak_yaw_rate_gain_per_s", yawRateGain(car, speed))
                .with("characteristic_speed_m_s", speedWhereSteerIs(2, car));
    }

    private static double yawRateGain(Car car, double speed) {
        TurnRow row = gentle(car, speed);
        return row.lateralAcceleration() / row.speed() / row.steer();
    }

    /** The place of the centre of gravity that would make the car neutral on its tyres. */
    static Computed neutralSteerPoint(Inputs in) {
        PlainCar plain = CarInputs.car(in);
        double place = plain.cgBehindFront;
        double front = in.within("front").number("c_alpha_axle_N_rad");
        double rear = in.within("rear").number("c_alpha_axle_N_rad");
        double neutral = Roots.between(0.05 * plain.wheelbase, 0.95 * plain.wheelbase, there -> {
            plain.cgBehindFront = there;
            return handSums(plain.onStiffness(front, rear).build(), 1).budget().gradient() * 1000;
        });
        return new Computed()
                .with("neutral_steer_point_behind_front_axle_m", neutral)
                .with("static_margin", (neutral - place) / plain.wheelbase)
                .with("s_m", place - neutral);
    }

    static Computed zeroSideslip(Inputs in) {
        Car car = CarInputs.car(in).build();
        double radius = 1000;
        return new Computed()
                .with(
                        "speed_m_s",
                        Roots.between(
                                5,
                                80,
                                speed ->
                                        row(car, radius, speed * speed / radius).sideslip() * radius));
    }

    /** The understeer gradient as three ways of driving a circle test show it. */
    static Computed circleTests(Inputs in) {
        Car car = CarInputs.car(in).build();
        double radius = in.number("radius_m");
        double[] paces = in.numbers("ay_m_s2");
        double between = paces[1] - paces[0];
        double constantRadius =
                (row(car, radius, paces[1]).steer() - row(car, radius, paces[0]).steer()) / between;
        double speed = in.number("speed_m_s");
        double constantSpeed = (row(car, speed * speed / paces[1], paces[1]).steer()
                        - row(car, speed * speed / paces[0], paces[0]).steer())
                / between;
        double steer = in.number("steer_rad");
        double curvature = (curvatureAt(car, paces[1], steer) - curvatureAt(car, paces[0], steer)) / between;
        return new Computed()
                .with("constant_radius_slope", constantRadius)
                .with(
                        "tangent_at_constant_radius",
                        row(car, radius, paces[0]).understeerGradient().orElseThrow())
                .with("constant_speed_slope", constantSpeed)
                .with("constant_steer_curvature_slope_s2_m2", curvature);
    }

    private static double curvatureAt(Car car, double pace, double steer) {
        return Roots.between(
                1e-4, 0.1, curvature -> row(car, 1 / curvature, pace).steer() - steer);
    }
}
