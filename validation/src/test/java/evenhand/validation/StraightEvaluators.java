package evenhand.validation;

import evenhand.car.Alignment;
import evenhand.car.Axle;
import evenhand.car.Brakes;
import evenhand.car.Car;
import evenhand.car.LateralLocator;
import evenhand.car.Reaction;
import evenhand.car.Spring;
import evenhand.car.Stops;
import evenhand.car.SwingArm;
import evenhand.car.Unsprung;
import evenhand.car.Weights;
import evenhand.car.links.SideView.BrakesAt;
import evenhand.straight.Braking;
import evenhand.straight.Driving;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Braking and pulling away straight ahead. */
final class StraightEvaluators {
    private static final double G = Weights.GRAVITY;

    private StraightEvaluators() {}

    private static Car car(Inputs in) {
        PlainCar plain = new PlainCar();
        plain.mass = in.number("mass_kg", 1000);
        plain.wheelbase = in.number("wheelbase_m");
        plain.cgHeight = in.number("cg_height_m");
        plain.cgBehindFront = in.number("cg_behind_front_m", plain.wheelbase / 2);
        double rate = in.number("kf_N_m", PlainCar.STONE);
        plain.front.spring = new Spring.AtWheel(rate / 2, 1, Spring.Lengths.UNKNOWN);
        return plain.build().braked(new Brakes(OptionalDouble.of(in.number("front_brake_share", 0.6))));
    }

    private static Car swinging(Car car, double frontSlope, double rearSlope, double rearRate) {
        return new Car(
                car.weights(),
                car.wheelbase(),
                car.cgHeight(),
                car.chassisTorsionalStiffness(),
                car.steering(),
                car.air(),
                car.rollingResistance(),
                front(car, frontSlope),
                rear(car, rearSlope, rearRate),
                car.drive(),
                car.pitchInertia(),
                car.seat(),
                car.brakes());
    }

    private static Axle front(Car car, double slope) {
        Axle.Independent front = (Axle.Independent) car.front();
        return new Axle.Independent(
                front.track(),
                front.unsprung(),
                front.rollCentre(),
                front.spring(),
                front.bar(),
                front.stops(),
                front.damper(),
                0,
                front.rollCamber(),
                front.alignment(),
                front.tyre(),
                front.rollInertia(),
                reaction(slope));
    }

    private static Axle rear(Car car, double slope, double rate) {
        Axle rear = car.rear();
        return new Axle.Live(
                rear.track(),
                new Unsprung(PlainCar.NOTHING, PlainCar.NOTHING),
                new LateralLocator.PanhardRod(0.2, 0),
                new Spring.Upright(rate / 2, 1, 1, Spring.Lengths.UNKNOWN),
                Optional.empty(),
                Stops.NONE,
                Optional.empty(),
                0,
                new Alignment(0, 0, 0, 0, 0),
                rear.tyre(),
                OptionalDouble.empty(),
                reaction(slope));
    }

    /** Links that rise by so much per metre from the contact point towards the middle of the car. */
    private static Reaction reaction(double slope) {
        return new Reaction(Optional.of(new SwingArm(1, slope, 0.3)), BrakesAt.WHEELS, OptionalDouble.empty());
    }

    /** Angle of the front links in side view that carries a wanted share of the load transfer. */
    static Computed antiDive(Inputs in) {
        double perSlope = new Braking(swinging(car(in), 1, 0, PlainCar.STONE))
                .row(0.5 * G, true)
                .orElseThrow()
                .antiDive();
        return new Computed().with("angle_deg", Math.toDegrees(Math.atan(in.number("anti_dive") / perSlope)));
    }

    /** Squat and pitch of a driven live axle over the slope of its links: straight lines, so two slopes tell all. */
    static Computed antiPitch(Inputs in) {
        double rate = in.number("kr_N_m");
        Driving.Pulling flat = pulling(in, 0, rate);
        Driving.Pulling sloped = pulling(in, 0.1, rate);
        double squat = flat.rearHeave() / (flat.rearHeave() - sloped.rearHeave()) * 0.1;
        double pitch = flat.pitch() / (flat.pitch() - sloped.pitch()) * 0.1;
        return new Computed()
                .with("no_squat", squat)
                .with("no_pitch", pitch)
                .with("front_rise_mm", 1000 * flat.frontHeave())
                .with("rear_squat_without_anti_mm", -1000 * flat.rearHeave());
    }

    private static Driving.Pulling pulling(Inputs in, double slope, double rate) {
        return new Driving(swinging(car(in), 0, slope, rate))
                .pulling(in.number("ax_m_s2"))
                .orElseThrow();
    }

    /** Which end locks first at a friction, and where both ends use as much. */
    static Computed lockOrder(Inputs in) {
        Braking.Answer answer = new Braking(car(in))
                .answer(new Braking.Asked(List.of(0.5 * G), List.of(in.number("friction")), List.of(), 80 / 3.6, true));
        Braking.Locks locks = answer.locks().get(0).locks().orElseThrow();
        Computed computed = new Computed()
                .with("lock_g", locks.deceleration() / G)
                .with("front_first", locks.axle() == evenhand.car.End.FRONT ? 1 : 0);
        return answer.crossings().isEmpty()
                ? computed
                : computed.with("equal_g", answer.crossings().get(0).deceleration() / G);
    }

    /** Ideal forces over the weight at a deceleration. */
    static Computed idealForces(Inputs in) {
        Car car = car(in);
        Braking.Row row =
                new Braking(car).row(in.number("deceleration_g") * G, true).orElseThrow();
        double weight = car.weights().mass() * G;
        return new Computed()
                .with("front_over_weight", row.front().idealForce() / weight)
                .with("rear_over_weight", row.rear().idealForce() / weight);
    }

    /** Way to a stop. */
    static Computed stop(Inputs in) {
        return new Computed()
                .with("distance_m", Braking.distance(in.number("speed_km_h") / 3.6, in.number("deceleration_m_s2")));
    }
}
