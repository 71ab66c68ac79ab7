package evenhand.validation;

import static evenhand.validation.Driven.GENTLE;
import static evenhand.validation.Driven.NEARLY_STRAIGHT;
import static evenhand.validation.Driven.fold;
import static evenhand.validation.Driven.handSums;
import static evenhand.validation.Driven.onHardTyres;
import static evenhand.validation.Driven.row;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.Steering;
import evenhand.car.Weights;
import evenhand.handsums.HandSums;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import java.util.Arrays;

/** Roll, load transfer and steer of cars in a turn, by hand sums and by the equilibrium. */
final class TurnEvaluators {
    private static final Unit DEGREE = Unit.of("deg");

    private TurnEvaluators() {}

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
                .with("load_transfer_front_N", front.lateralLoadTransfer())
                .with("load_transfer_rear_N", rear.lateralLoadTransfer())
                .with("front_load_transfer_share", sums.frontLoadTransferShare())
                .with("load_transfer_moment_Nm", sums.momentOfLoadTransfers(car))
                .with("moment_balance_residual_Nm", sums.momentOfLoadTransfers(car) - sums.overturningMoment(car));
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
            factors[i] = (car.staticLoad(End.FRONT, Side.LEFT) + car.staticLoad(End.REAR, Side.LEFT))
                    / (perG.front().lateralLoadTransfer() + perG.rear().lateralLoadTransfer());
            if (in.has("drive_to_the_lift")) {
                lifts[i] = tippingOver(car);
            }
        }
        return new Computed().with("ssf", factors).with("tips_over_m_s2", lifts);
    }

    /** Tyres with grip to spare: the turn ends where the car has no load left inside. */
    private static double tippingOver(Car car) {
        return fold(car, NEARLY_STRAIGHT).lateralAcceleration();
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
}
