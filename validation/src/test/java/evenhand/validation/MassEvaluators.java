package evenhand.validation;

import evenhand.car.AxleLift;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.HeightGuess;
import evenhand.car.Side;
import evenhand.car.Weights;
import java.util.ArrayList;
import java.util.List;

/** What stands on the wheels, and where the centre of gravity is. */
final class MassEvaluators {
    private MassEvaluators() {}

    static Computed staticLoads(Inputs in) {
        Car car = CarInputs.carOfSameWeight(in).build();
        double front = car.staticLoad(End.FRONT, Side.LEFT);
        double rear = car.staticLoad(End.REAR, Side.LEFT);
        return new Computed()
                .with("front_wheel_N", front)
                .with("rear_wheel_N", rear)
                .with("front_axle_N", front + car.staticLoad(End.FRONT, Side.RIGHT))
                .with("rear_axle_N", rear + car.staticLoad(End.REAR, Side.RIGHT));
    }

    /** A car on four scales. */
    static Computed fourScales(Inputs in) {
        double[] scales = in.numbers("scales_kg");
        PlainCar plain = new PlainCar();
        Weights weights = new Weights.Corners(scales[0], scales[1], scales[2], scales[3]);
        plain.mass = weights.mass();
        plain.cgBehindFront = plain.wheelbase * (1 - weights.frontFraction());
        return new Computed()
                .with("mass_kg", weights.mass())
                .with("front_fraction", weights.frontFraction())
                .with("front_left_fraction", weights.leftFraction(End.FRONT))
                .with("rear_left_fraction", weights.leftFraction(End.REAR))
                .with("cg_behind_front_axle_m", plain.build().cgBehindFront());
    }

    static Computed sprungMass(Inputs in) {
        Car.Sprung sprung = CarInputs.car(in).build().sprung();
        return new Computed()
                .with("sprung_mass_kg", sprung.mass())
                .with("sprung_cg_behind_front_axle_m", sprung.behindFront())
                .with("sprung_cg_height_m", sprung.height())
                .with("front_share", sprung.frontShare());
    }

    /** The guess for a car that nobody has lifted, for bodies of all kinds the same. */
    static Computed underRoof(Inputs in) {
        double height = HeightGuess.under(in.number("roof_m"));
        Computed computed = new Computed();
        for (String body : List.of("convertible", "coupe", "hatchback", "sedan", "wagon", "suv")) {
            computed.with(body + "_m", height);
        }
        return computed;
    }

    /** One axle raised; the other axle's load on its scales tells the height. */
    static Computed axleLift(Inputs in) {
        PlainCar plain = CarInputs.car(in);
        Car car = plain.build();
        double gravity = CarInputs.gravity(in);
        boolean rearLifted = !in.has("lifted") || in.text("lifted").equals("rear");
        double level = rearLifted
                ? plain.mass * car.weights().frontFraction()
                : plain.mass * (1 - car.weights().frontFraction());
        double[] rises = in.numbers("lift_m");
        double[] loads = in.numbers("other_axle_N");
        double[] heights = new double[rises.length];
        double[] errors = new double[rises.length];
        List<AxleLift.Reading> all = new ArrayList<>();
        for (int i = 0; i < rises.length; i++) {
            double gain = loads[i] / gravity - level;
            all.add(new AxleLift.Reading(rises[i], gain));
            heights[i] = height(in, car, rearLifted, List.of(new AxleLift.Reading(rises[i], gain)));
            double wrongGain = gain + in.number("scale_error_kg", 0);
            errors[i] = height(in, car, rearLifted, List.of(new AxleLift.Reading(rises[i], wrongGain))) - heights[i];
        }
        return new Computed()
                .with("cg_height_m", heights)
                .with("cg_height_of_all_m", height(in, car, rearLifted, all))
                .with("height_error_m", errors);
    }

    private static double height(Inputs in, Car car, boolean rearLifted, List<AxleLift.Reading> readings) {
        double front = in.number("wheel_radius_m", 0.3);
        return new AxleLift(rearLifted ? End.REAR : End.FRONT, readings)
                .cgHeight(
                        car.weights().mass(),
                        car.wheelbase(),
                        car.weights().frontFraction(),
                        front,
                        in.number("rear_wheel_radius_m", front));
    }

    /** The body let down by its perches. */
    static Computed lowered(Inputs in) {
        Car car = CarInputs.car(in).build().settled();
        return new Computed()
                .with("cg_height_m", car.cgHeight())
                .with("sprung_cg_height_m", car.sprung().height())
                .with("front_roll_centre_m", car.front().geometry().rollCentreHeight())
                .with("rear_roll_centre_m", car.rear().geometry().rollCentreHeight());
    }
}
