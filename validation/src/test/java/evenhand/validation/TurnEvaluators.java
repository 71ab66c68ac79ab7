package evenhand.validation;

import evenhand.car.Air;
import evenhand.car.Car;
import evenhand.car.Drive;
import evenhand.car.End;
import evenhand.car.Steering;
import evenhand.car.Weights;
import evenhand.handsums.HandSums;
import evenhand.handsums.UndersteerBudget;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.turn.Direction;
import evenhand.turn.PaceAnswer;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import evenhand.tyre.MagicFormula;
import java.util.Arrays;
import java.util.OptionalDouble;

/** Cars in a turn, by hand sums and by the equilibrium. */
final class TurnEvaluators {
    /** A lateral acceleration at which angles are small and yet far from rounding, m/s². */
    private static final double GENTLE = 0.4;

    /** A circle so wide that the car goes straight, m. */
    private static final double NEARLY_STRAIGHT = 1e5;

    /** A ratio by which a tyre gives whatever drive is asked without losing side force. */
    private static final double ALL_THE_DRIVE = 1e6;

    private static final Unit DEGREE = Unit.of("deg");

    private TurnEvaluators() {}

    static HandSums handSums(Car car, double ay) {
        return ((HandSums.Found) HandSums.of(car, ay)).sums();
    }

    static TurnAnswer.Turns turns(Car car, double radius, double... paces) {
        TurnAnswer answer = SteadyTurn.answer(car, Arrays.stream(paces).boxed().toList(), radius, Direction.LEFT);
        if (answer instanceof TurnAnswer.NoTurn none) {
            throw new IllegalStateException("no turn: " + none.text());
        }
        return (TurnAnswer.Turns) answer;
    }

    static TurnRow row(Car car, double radius, double pace) {
        return ((PaceAnswer.InBalance) turns(car, radius, pace).paces().get(0)).row();
    }

    /** A turn at this speed on a circle that makes it gentle. */
    private static TurnRow gentle(Car car, double speed) {
        return row(car, speed * speed / GENTLE, GENTLE);
    }

    /** Roll and load transfer at a lateral acceleration, with every part. */
    static Computed sums(Inputs in) {
        Car car = CarInputs.carOfSameWeight(in).build();
        double scale = CarInputs.ofOurGravity(in);
        HandSums sums = handSums(car, in.number("ay_m_s2") / scale);
        HandSums.AxleSums front = sums.front();
        HandSums.AxleSums rear = sums.rear();
        double frontTrack = car.front().track();
        double rearTrack = car.rear().track();
        double perAcceleration = sums.rollAngle() / in.number("ay_m_s2");
        return new Computed()
                .with("sprung_mass_kg", sums.sprung().mass() / scale)
                .with("sprung_cg_behind_front_axle_m", sums.sprung().behindFront())
                .with("sprung_cg_height_m", sums.sprung().height())
                .with("roll_arm_m", sums.rollArm())
                .with("roll_rad", sums.rollAngle())
                .with("rad_per_m_s2", perAcceleration)
                .with("deg_per_g", DEGREE.fromSi(perAcceleration) * CarInputs.gravity(in))
                .with("front_elastic_N", front.elasticMoment() / frontTrack)
                .with("rear_elastic_N", rear.elasticMoment() / rearTrack)
                .with("front_geometric_N", front.geometricMoment() / frontTrack)
                .with("rear_geometric_N", rear.geometricMoment() / rearTrack)
                .with("front_unsprung_N", front.unsprungMoment() / frontTrack)
                .with("rear_unsprung_N", rear.unsprungMoment() / rearTrack)
                .with("load_transfer_front_N", front.loadTransfer())
                .with("load_transfer_rear_N", rear.loadTransfer())
                .with("front_load_transfer_share", sums.frontLoadTransferShare())
                .with("load_transfer_moment_Nm", sums.momentOfLoadTransfers(car))
                .with("moment_balance_residual_Nm", sums.momentOfLoadTransfers(car) - sums.overturningMoment(car));
    }

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
                .with("Fz1_N", car.staticLoad(End.FRONT, true) * 2 * CarInputs.ofOurGravity(in))
                .with("Fz2_N", car.staticLoad(End.REAR, true) * 2 * CarInputs.ofOurGravity(in))
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

    /** Steer that the circle needs at a crawl, by circles. */
    static Computed ackermannSteer(Inputs in) {
        PlainCar plain = new PlainCar();
        plain.wheelbase = in.si("wheelbase", Dimension.LENGTH);
        plain.cgBehindFront = plain.wheelbase * in.number("cg_behind_front_axle_over_L", 0.5);
        Car car = plain.build();
        double[] radii = in.sis("radius", Dimension.LENGTH);
        double[] crawl = new double[radii.length];
        double[] driven = new double[radii.length];
        for (int i = 0; i < radii.length; i++) {
            TurnRow row = row(car, radii[i], 0.2);
            crawl[i] = DEGREE.fromSi(row.ackermannSteer());
            driven[i] = DEGREE.fromSi(row.steer());
        }
        return new Computed().with("steer_deg", crawl).with("steer_of_neutral_car_deg", driven);
    }

    /** Both front wheels of a car with full Ackermann steering, by the angle of the inner one. */
    static Computed wheelSteer(Inputs in) {
        PlainCar plain = CarInputs.car(in);
        plain.steering = new Steering(16, 1);
        Car car = plain.build();
        double[] outer = Arrays.stream(in.numbers("inner_deg"))
                .map(inner -> {
                    double radius = Roots.between(
                            0.8 * plain.wheelbase + 1,
                            40 * plain.wheelbase,
                            r -> steerOf(car, r, Wheel.FRONT_LEFT) - DEGREE.toSi(inner));
                    return DEGREE.fromSi(steerOf(car, radius, Wheel.FRONT_RIGHT));
                })
                .toArray();
        return new Computed().with("outer_deg", outer);
    }

    private static double steerOf(Car car, double radius, Wheel wheel) {
        return row(car, radius, GENTLE).wheel(wheel).steer();
    }

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

    /** Tyres that need next to no slip, and so next to no drive, to hold the circle. */
    private static PlainCar onHardTyres(PlainCar plain) {
        plain.rear.frictionRatio = ALL_THE_DRIVE;
        return plain.onStiffness(1e7, 1e7);
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
            limit = turns(plain.build(), NEARLY_STRAIGHT).limit().row();
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

    /** Acceleration, in g, at which the inner wheels of a stiff car stand on nothing, by load transfer and by event. */
    static Computed staticStability(Inputs in) {
        double[] tracks = in.numbers("track_m");
        double[] heights = in.numbers("cg_height_m");
        double[] factors = new double[tracks.length];
        double[] lifts = new double[tracks.length];
        for (int i = 0; i < tracks.length; i++) {
            PlainCar plain = onHardTyres(new PlainCar());
            plain.cgHeight = heights[i];
            plain.front.track = tracks[i];
            plain.rear.track = tracks[i];
            Car car = plain.build();
            HandSums perG = handSums(car, Weights.GRAVITY);
            factors[i] = (car.staticLoad(End.FRONT, true) + car.staticLoad(End.REAR, true))
                    / (perG.front().loadTransfer() + perG.rear().loadTransfer());
            if (in.has("drive_to_the_lift")) {
                lifts[i] = tippingOver(car);
            }
        }
        return new Computed().with("ssf", factors).with("tips_over_m_s2", lifts);
    }

    /** Tyres with grip to spare: the turn ends where the car has no load left inside. */
    private static double tippingOver(Car car) {
        return turns(car, NEARLY_STRAIGHT).limit().lateralAcceleration();
    }

    /** Loads and roll that the equilibrium has at a pace on a wide circle, small angles given back to the source. */
    static Computed loadTransferInTheTurn(Inputs in) {
        Car car = CarInputs.carOfSameWeight(in).build();
        TurnRow row = row(car, NEARLY_STRAIGHT, in.number("ay_m_s2"));
        return new Computed()
                .with("load_transfer_front_N", row.frontLoadTransfer())
                .with("load_transfer_rear_N", row.rearLoadTransfer())
                .with("front_load_transfer_share", row.frontLoadTransferShare())
                .with("front_roll_rad", row.frontRoll())
                .with("rear_roll_rad", row.rearRoll())
                .with("roll_rad", row.roll())
                .with("speed_m_s", row.speed())
                .with(
                        "load_sum_N",
                        row.wheels().stream().mapToDouble(w -> w.load()).sum())
                .with(
                        "side_force_sum_N",
                        row.wheels().stream().mapToDouble(w -> w.lateralForce()).sum());
    }
}
