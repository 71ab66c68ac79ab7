package evenhand.validation;

import evenhand.car.Axle;
import evenhand.car.Bar;
import evenhand.car.Car;
import evenhand.car.Curve;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.Spring;
import evenhand.car.Stops;
import evenhand.car.Weights;
import evenhand.handsums.HandSums;
import evenhand.quantity.Unit;
import evenhand.suspension.AxleSuspension;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Springs, stops and bars as the wheels feel them. */
final class SuspensionEvaluators {
    private SuspensionEvaluators() {}

    private static AxleSuspension rear(PlainCar plain) {
        return AxleSuspension.of(plain.build(), End.REAR);
    }

    /** A round bar: what its ends feel, and what an axle of some track feels through its links. */
    static Computed roundBar(Inputs in) {
        double[] diameters = in.has("diameters_m") ? in.numbers("diameters_m") : new double[] {in.number("diameter_m")};
        double track = in.number("track_m", 1);
        double[] stiffnesses = Arrays.stream(diameters)
                .map(d -> bar(in, d, in.number("link_ratio", 1), in.number("bush_factor", 1))
                        .rollStiffness(track))
                .toArray();
        // One N at each end over one m of each is a moment of 1·base over an angle of 2/base.
        double base = Math.sqrt(2);
        return new Computed()
                .with("roll_stiffness_Nm_rad", stiffnesses)
                .with("roll_stiffness_Nm_deg", Unit.of("N*m/deg").fromSi(stiffnesses[0]))
                .with("roll_stiffness_lbf_in_deg", Unit.of("lbf*in/deg").fromSi(stiffnesses[0]))
                .with("rule_of_the_handbook_lbf_in_deg", Unit.of("lbf*in/deg").fromSi(stiffnesses[0]))
                .with("end_rate_N_m", bar(in, diameters[0], 1, 1).rollStiffness(base))
                .with("wheel_rate_N_m", bar(in, diameters[0], 1, 1).rollStiffness(1))
                .with("torsional_rate_Nm_rad", bar(in, diameters[0], 1, 1).rollStiffness(in.number("arm_m")))
                .with(
                        "over_the_first",
                        Arrays.stream(stiffnesses).map(k -> k / stiffnesses[0]).toArray());
    }

    private static Bar bar(Inputs in, double diameter, double linkRatio, double bushFactor) {
        return new Bar.Round(diameter, in.number("arm_m"), in.number("free_length_m"), linkRatio, bushFactor);
    }

    /** Rate at the wheel of an independent axle for several motion ratios. */
    static Computed motionRatio(Inputs in) {
        return new Computed()
                .with(
                        "wheel_rate_N_mm",
                        Arrays.stream(in.numbers("motion_ratio"))
                                .map(ratio -> {
                                    PlainCar plain = new PlainCar();
                                    double rate = Unit.of("N/mm").toSi(in.number("spring_N_mm"));
                                    plain.rear.spring = new Spring.AtWheel(rate, ratio, Spring.Lengths.UNKNOWN);
                                    return Unit.of("N/mm").fromSi(rear(plain).heaveRate());
                                })
                                .toArray());
    }

    /** Springs of a live axle that lean inwards: rate of one side in heave, and the axle's stiffness in roll. */
    static Computed leaningSprings(Inputs in) {
        double rate = Unit.of("N/mm").toSi(in.number("spring_N_mm", 30));
        double[] leans = in.numbers("lean_deg");
        double[] light = new double[leans.length];
        double[] loaded = new double[leans.length];
        double[] roll = new double[leans.length];
        for (int i = 0; i < leans.length; i++) {
            double lean = Unit.of("deg").toSi(leans[i]);
            PlainCar plain = new PlainCar();
            // The source's load is that along the spring; one side carries its upright part.
            plain.mass = 4 * in.number("load_N", 2500) * Math.cos(lean) / Weights.GRAVITY;
            plain.rear.live = true;
            plain.rear.rollCentre = in.number("roll_centre_m", 0.3);
            light[i] = rearOn(plain, in, rate, lean, OptionalDouble.empty()).heaveRate();
            OptionalDouble length = OptionalDouble.of(in.number("installed_length_m", 0.3));
            AxleSuspension suspension = rearOn(plain, in, rate, lean, length);
            loaded[i] = suspension.heaveRate();
            suspension.at(0, 0, plain.rear.rollCentre);
            roll[i] = suspension.momentByRoll;
        }
        return new Computed()
                .with("cos2_rate_N_mm", each(light, Unit.of("N/mm")::fromSi))
                .with("rate_N_mm", each(loaded, Unit.of("N/mm")::fromSi))
                .with("rate_ratio", each(light, k -> k / rate))
                .with("roll_stiffness_Nm_rad", roll);
    }

    private static AxleSuspension rearOn(
            PlainCar plain, Inputs in, double rate, double lean, OptionalDouble installed) {
        plain.rear.spring = new Spring.Leaning(
                rate,
                in.number("base_m", 1),
                lean,
                in.number("lower_mount_m", 0.3),
                new Spring.Lengths(installed, OptionalDouble.empty(), OptionalDouble.empty()));
        return rear(plain);
    }

    private static double[] each(double[] values, java.util.function.DoubleUnaryOperator change) {
        return Arrays.stream(values).map(change).toArray();
    }

    /** A live axle on upright springs, beside the same springs at the wheels. */
    static Computed springBase(Inputs in) {
        double rate = Unit.of("N/mm").toSi(in.number("spring_N_mm"));
        PlainCar live = new PlainCar();
        live.rear.track = in.number("track_m");
        live.rear.live = true;
        live.rear.spring = new Spring.Upright(rate, in.number("spring_base_m"), 1, Spring.Lengths.UNKNOWN);
        if (in.has("bar_Nm_rad")) {
            live.rear.bar = new Bar.Measured(in.number("bar_Nm_rad"));
        }
        PlainCar independent = new PlainCar();
        independent.rear.track = live.rear.track;
        independent.rear.spring = new Spring.AtWheel(rate, 1, Spring.Lengths.UNKNOWN);
        double onBase = rollStiffness(live);
        double onTrack = rollStiffness(independent);
        return new Computed()
                .with("roll_stiffness_Nm_rad", onBase)
                .with("with_track_by_mistake_Nm_rad", onTrack)
                .with("ratio", onBase / onTrack);
    }

    private static double rollStiffness(PlainCar plain) {
        AxleSuspension suspension = rear(plain);
        suspension.at(0, 0, plain.rear.rollCentre);
        return suspension.momentByRoll;
    }

    /** A spring, and a second one that comes in after a gap: the model's bump stop. */
    static Computed secondSpring(Inputs in) {
        PlainCar plain = new PlainCar();
        double first = Unit.of("N/mm").toSi(in.number("first_N_mm"));
        double second = Unit.of("N/mm").toSi(in.number("second_N_mm"));
        double gap = Unit.of("mm").toSi(in.number("gap_mm"));
        plain.rear.spring = new Spring.AtWheel(first, 1, Spring.Lengths.UNKNOWN);
        Curve curve = new Curve(List.of(new Curve.Point(0, 0), new Curve.Point(1, second)));
        Stops stops = new Stops(
                Optional.of(new Stops.Bump(gap, curve, OptionalDouble.empty())), Optional.empty(), Optional.empty());
        Car car = withRearStops(plain.build(), stops);
        AxleSuspension suspension = AxleSuspension.of(car, End.REAR);
        double[] travels = in.numbers("travel_mm");
        double[] forces = new double[travels.length];
        double[] ofFirst = new double[travels.length];
        double[] ofSecond = new double[travels.length];
        suspension.at(0, 0, 0);
        double rest = suspension.force / 2;
        double restOfFirst = suspension.springLoad(0, 0, 0, Side.LEFT);
        for (int i = 0; i < travels.length; i++) {
            double travel = Unit.of("mm").toSi(travels[i]);
            suspension.at(travel, 0, 0);
            forces[i] = suspension.force / 2 - rest;
            ofFirst[i] = suspension.springLoad(travel, 0, 0, Side.LEFT) - restOfFirst;
            ofSecond[i] = forces[i] - ofFirst[i];
        }
        return new Computed().with("force_N", forces).with("first_N", ofFirst).with("second_N", ofSecond);
    }

    private static Car withRearStops(Car car, Stops stops) {
        Axle.Independent rear = (Axle.Independent) car.rear();
        return new Car(
                car.weights(),
                car.wheelbase(),
                car.cgHeight(),
                car.chassisTorsionalStiffness(),
                car.steering(),
                car.air(),
                car.rollingResistance(),
                car.front(),
                new Axle.Independent(
                        rear.track(),
                        rear.unsprung(),
                        rear.rollCentre(),
                        rear.spring(),
                        rear.bar(),
                        stops,
                        rear.damper(),
                        rear.lowered(),
                        rear.rollCamber(),
                        rear.alignment(),
                        rear.tyre(),
                        rear.rollInertia()),
                car.drive(),
                car.pitchInertia(),
                car.seat());
    }

    /** Suspension and tyres one after the other. */
    static Computed inSeries(Inputs in) {
        HandSums sums = Driven.handSums(CarInputs.car(in).build(), 1);
        double perWheel = 2 / Math.pow(in.within("front").number("track_m"), 2);
        return new Computed()
                .with("K_tyres_Nm_rad", sums.front().tyreRollStiffness())
                .with("K_axle_Nm_rad", sums.front().rollStiffness())
                .with("ride_rate_N_mm", Unit.of("N/mm").fromSi(sums.front().rollStiffness() * perWheel));
    }
}
