package evenhand.validation;

import evenhand.car.Weights;
import evenhand.lowering.ReserveSprings;
import evenhand.ride.ComfortBand;
import evenhand.ride.Modes;
import evenhand.ride.PitchBounce;
import evenhand.ride.QuarterCar;
import evenhand.ride.Road;
import evenhand.ride.RoadClass;
import evenhand.ride.RoadResponse;
import evenhand.ride.Transfer;
import evenhand.ride.Weighting;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** Frequencies, damping, roads and comfort. */
final class RideEvaluators {
    private RideEvaluators() {}

    private static QuarterCar quarterCar(Inputs in) {
        return new QuarterCar(
                in.number("ms_kg"),
                in.number("mu_kg"),
                in.number("ks_N_m"),
                in.number("kt_N_m"),
                in.number("c_N_s_m", 0));
    }

    /** A car of stone wheels: its body alone on its spring and damper. */
    private static QuarterCar bodyAlone(double mass, double rate, double damping) {
        return new QuarterCar(mass, PlainCar.NOTHING * mass, rate, PlainCar.STONE * rate, damping);
    }

    /** Frequencies and damping of both masses. */
    static Computed modes(Inputs in) {
        QuarterCar car = quarterCar(in);
        Modes undamped = car.undamped().modes();
        Modes damped = car.modes();
        double body = 2 * Math.PI * undamped.body().frequency();
        return new Computed()
                .with("undamped_Hz", both(undamped, Modes.Mode::frequency))
                .with("undamped_rad_s", both(undamped, Modes.Mode::angularFrequency))
                .with("eigen_abs_rad_s", both(damped, Modes.Mode::angularFrequency))
                .with("damping_ratio", both(damped, Modes.Mode::dampingRatio))
                .with("damped_Hz", both(damped, mode -> mode.dampedFrequency().orElse(Double.NaN)))
                .with("mode1_wheel_over_body", 1 - body * body * car.sprungMass() / car.wheelRate());
    }

    private static double[] both(Modes modes, ToDoubleFunction<Modes.Mode> reading) {
        return new double[] {reading.applyAsDouble(modes.body()), reading.applyAsDouble(modes.hop())};
    }

    /** Real and imaginary parts of the modes, of a car given by its ratios to the sprung mass. */
    static Computed eigenvalues(Inputs in) {
        Modes modes = new QuarterCar(
                        1,
                        in.number("mu_over_ms"),
                        in.number("ks_over_ms_s2"),
                        in.number("kt_over_ms_s2"),
                        in.number("c_over_ms_s"))
                .modes();
        return new Computed()
                .with("body_eigenvalue", eigenvalue(modes.body()))
                .with("axle_eigenvalue", eigenvalue(modes.hop()))
                .with("body_damping_ratio", modes.body().dampingRatio())
                .with("axle_damping_ratio", modes.hop().dampingRatio());
    }

    private static double[] eigenvalue(Modes.Mode mode) {
        return new double[] {
            -mode.dampingRatio() * mode.angularFrequency(),
            2 * Math.PI * mode.dampedFrequency().orElse(0)
        };
    }

    /** A wheel between spring and tyre while the body stands still, and the waves that shake it. */
    static Computed wheelHop(Inputs in) {
        double heavy = 1e12; // the body stands still
        QuarterCar car = new QuarterCar(heavy, in.number("mu_kg"), in.number("ks_N_m"), in.number("kt_N_m"), 0);
        double hop = car.modes().hop().frequency();
        double speed = hop * in.number("cobble_m");
        return new Computed().with("f_Hz", hop).with("speed_m_s", speed).with("speed_km_h", speed * 3.6);
    }

    /** What no spring and damper changes. */
    static Computed invariantPoints(Inputs in) {
        double ms = in.number("ms_kg");
        double mu = in.number("mu_kg");
        double kt = in.number("kt_N_m");
        List<Double> body = new ArrayList<>();
        List<Double> travel = new ArrayList<>();
        double tyreHop = in.number("tyre_hop_rad_s");
        double rattle = in.number("rattle_space_rad_s");
        for (double[] pair : in.lists("spring_damper_pairs")) {
            Transfer transfer = new Transfer(new QuarterCar(ms, mu, pair[0], kt, pair[1]));
            transfer.at(tyreHop / (2 * Math.PI));
            body.add(transfer.bodyAcceleration() / (tyreHop * tyreHop));
            transfer.at(rattle / (2 * Math.PI));
            travel.add(transfer.suspensionTravel());
        }
        return new Computed()
                .with("body_over_road_at_tyre_hop", numbers(body))
                .with("travel_over_road_at_rattle_space", numbers(travel));
    }

    private static double[] numbers(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** A road of waviness two without ends, by its white velocity: autocorrelation R·δ. */
    private record Endless(double roughness) implements Road {
        static Endless ofIntensity(double intensity, double speed) {
            double n0 = RoadClass.REFERENCE;
            return new Endless(intensity / (2 * Math.PI * Math.PI * n0 * n0 * speed));
        }

        @Override
        public double lowest() {
            return 1e-9;
        }

        @Override
        public double highest() {
            return 1e9;
        }

        @Override
        public double density(double n) {
            double over = RoadClass.REFERENCE / n;
            return roughness * over * over;
        }

        @Override
        public double[] corners() {
            return new double[0];
        }
    }

    static Computed whiteNoise(Inputs in) {
        double speed = in.number("speed_m_s", 1);
        Endless road =
                in.has("R_m2_s") ? Endless.ofIntensity(in.number("R_m2_s"), speed) : new Endless(in.number("Gd_n0_m3"));
        QuarterCar car = quarterCar(in);
        RoadResponse response = RoadResponse.of(car, road, speed);
        double weight = (car.sprungMass() + car.unsprungMass()) * Weights.GRAVITY;
        return new Computed()
                .with("travel_variance", square(response.suspensionTravel()))
                .with("acceleration_variance", square(response.bodyAcceleration()))
                .with("tyre_deflection_variance", square(response.tyreDeflection()))
                .with("rms_acceleration_m_s2", response.bodyAcceleration())
                .with("rms_travel_m", response.suspensionTravel())
                .with("rms_tyre_deflection_m", response.tyreDeflection())
                .with("rms_tyre_force_over_static", response.tyreDeflection() * car.tyreRate() / weight);
    }

    private static double square(double x) {
        return x * x;
    }

    /** Dampers that no other beats on an endless road, found by trying. */
    static Computed bestDampers(Inputs in) {
        QuarterCar car = quarterCar(in);
        Road road = new Endless(1e-6);
        return new Computed()
                .with("c_acceleration_N_s_m", best(car, road, RoadResponse::bodyAcceleration))
                .with("c_tyre_N_s_m", best(car, road, RoadResponse::tyreDeflection));
    }

    /** Golden section; a flat minimum is only found to the root of rounding. */
    private static double best(QuarterCar car, Road road, ToDoubleFunction<RoadResponse> reading) {
        double low = car.criticalDampingRate() / 50;
        double high = 2 * car.criticalDampingRate();
        double part = (Math.sqrt(5) - 1) / 2;
        for (int i = 0; i < 60; i++) {
            double left = high - part * (high - low);
            double right = low + part * (high - low);
            if (reading.applyAsDouble(RoadResponse.of(car.damped(left), road, 20))
                    < reading.applyAsDouble(RoadResponse.of(car.damped(right), road, 20))) {
                high = right;
            } else {
                low = left;
            }
        }
        return (low + high) / 2;
    }

    static Computed roadClasses(Inputs in) {
        double angular = 1 / (2 * Math.PI); // one rad/m, in cycle/m
        return new Computed()
                .with("Gd_n0_1e_6_m3", each(road -> road.density(in.number("n0_cycle_m", 0.1)) * 1e6))
                .with("upper_limit_1e_6_m3", each(road -> road.upperLimit() * 1e6))
                .with("Gd_Omega0_1e_6_m3", each(road -> road.density(angular) / (2 * Math.PI) * 1e6))
                .with("rms_mm", each(RideEvaluators::heightOfRoad));
    }

    private static double[] each(ToDoubleFunction<RoadClass> reading) {
        return Stream.of(RoadClass.values()).mapToDouble(reading).toArray();
    }

    /** R.m.s. height, mm: a body on springs of stone with a soft tyre follows nothing, so its tyre takes all. */
    private static double heightOfRoad(RoadClass road) {
        QuarterCar floating = new QuarterCar(1e6, 1e6, 1, 1, 1);
        return RoadResponse.of(floating, road, 1e4).tyreDeflection() * 1000;
    }

    static Computed weighting(Inputs in) {
        double[] frequencies = in.numbers("frequency_Hz");
        double[] wk = Arrays.stream(frequencies).map(Weighting.WK::at).toArray();
        double[] wd = Arrays.stream(frequencies).map(Weighting.WD::at).toArray();
        return new Computed()
                .with("Wk", wk)
                .with("Wd", wd)
                .with("Wk_x1000", Arrays.stream(wk).map(w -> w * 1000).toArray())
                .with("Wd_x1000", Arrays.stream(wd).map(w -> w * 1000).toArray());
    }

    static Computed comfort(Inputs in) {
        return new Computed()
                .with("from_m_s2", ends(ComfortBand::from))
                .with("to_m_s2", Arrays.copyOf(ends(ComfortBand::to), ComfortBand.values().length - 1))
                .with(
                        "bands_at",
                        Arrays.stream(in.numbers("acceleration_m_s2"))
                                .map(a -> ComfortBand.of(a).size())
                                .toArray());
    }

    private static double[] ends(ToDoubleFunction<ComfortBand> reading) {
        return Stream.of(ComfortBand.values()).mapToDouble(reading).toArray();
    }

    /** Static deflection that goes with a frequency of the body alone. */
    static Computed staticDeflection(Inputs in) {
        double g = in.number("g_m_s2");
        double mass = 300;
        return new Computed()
                .with(
                        "frequency_Hz",
                        Arrays.stream(in.numbers("deflection_mm"))
                                .map(mm -> bodyAlone(mass, mass * g / (mm / 1000), 0)
                                        .modes()
                                        .body()
                                        .frequency())
                                .toArray());
    }

    /** Frequency that lives with so many g of further load in so much travel. */
    static Computed reserveOfTravel(Inputs in) {
        double[] reserves = in.numbers("reserve_g");
        double[] travels = in.numbers("travel_mm");
        double[] frequencies = new double[reserves.length];
        for (int i = 0; i < reserves.length; i++) {
            frequencies[i] = ReserveSprings.frequency(reserves[i], travels[i] / 1000);
        }
        return new Computed().with("frequency_Hz", frequencies);
    }

    /** Body alone on spring and damper between road and body. */
    static Computed bodyOnSpring(Inputs in) {
        double mass = 250;
        double rate = 20_000;
        List<Double> atRoot = new ArrayList<>();
        List<Double> atResonance = new ArrayList<>();
        double natural = Math.sqrt(rate / mass) / (2 * Math.PI);
        for (double ratio : in.numbers("damping_ratio")) {
            Transfer transfer = new Transfer(bodyAlone(mass, rate, ratio * 2 * Math.sqrt(rate * mass)));
            atRoot.add(overRoad(transfer, Math.sqrt(2) * natural));
            atResonance.add(overRoad(transfer, natural));
        }
        return new Computed().with("at_sqrt2", numbers(atRoot)).with("at_resonance", numbers(atResonance));
    }

    private static double overRoad(Transfer transfer, double frequency) {
        transfer.at(frequency);
        return transfer.bodyAcceleration() / square(2 * Math.PI * frequency);
    }

    /** Damping ratio of a body alone, by a damper at its motion ratio. */
    static Computed bodyDampingRatio(Inputs in) {
        double ratio = in.number("motion_ratio");
        double damping = DamperInputs.linear(in.number("damper_N_s_m"), ratio).linearRate(0.1);
        return new Computed()
                .with(
                        "ratio",
                        bodyAlone(in.number("sprung_mass_kg"), in.number("wheel_rate_N_m"), damping)
                                .modes()
                                .body()
                                .dampingRatio());
    }

    static Computed damperByMotionRatio(Inputs in) {
        return new Computed()
                .with(
                        "wheel_damping_N_s_m",
                        Arrays.stream(in.numbers("motion_ratio"))
                                .map(ratio -> DamperInputs.linear(in.number("damper_N_s_m"), ratio)
                                        .linearRate(0.1))
                                .toArray());
    }

    static Computed pitchBounce(Inputs in) {
        double scale = in.has("front_ride_rate_N_m") ? 2 : 1; // per wheel, or per axle
        double kf = scale * in.number(scale == 2 ? "front_ride_rate_N_m" : "kf_N_m");
        double kr = scale * in.number(scale == 2 ? "rear_ride_rate_N_m" : "kr_N_m");
        double mass = in.number("mass_kg");
        double a = in.number("a_m");
        double b = in.number("b_m");
        double square = in.has("dynamic_index")
                ? in.number("dynamic_index") * a * b
                : square(in.number("radius_of_gyration_m"));
        PitchBounce found = PitchBounce.of(mass, mass * square, a, b, kf, kr);
        double slow = Math.min(found.bounceFrequency(), found.pitchFrequency());
        double fast = Math.max(found.bounceFrequency(), found.pitchFrequency());
        double bounceCentre = found.bounceCentre().orElse(Double.NaN);
        return new Computed()
                .with("f_Hz", slow, fast)
                .with("w_rad_s", 2 * Math.PI * slow, 2 * Math.PI * fast)
                .with("bounce_Hz", found.bounceFrequency())
                .with("pitch_Hz", found.pitchFrequency())
                .with("outer_node_m", Math.abs(bounceCentre))
                .with("inner_node_m", Math.abs(found.pitchCentre()))
                .with("bounce_centre_m", bounceCentre)
                .with("pitch_centre_m", found.pitchCentre());
    }

    static Computed inStep(Inputs in) {
        return new Computed()
                .with(
                        "speed_m_s",
                        PitchBounce.inStepSpeed(
                                        in.number("wheelbase_m"),
                                        in.number("front_Hz"),
                                        in.number("rear_Hz"),
                                        in.number("cycles"))
                                .orElse(Double.NaN));
    }

    static Computed wheelbaseFilter(Inputs in) {
        double wheelbase = in.number("wheelbase_m");
        return new Computed()
                .with(
                        "bounce_share",
                        Arrays.stream(in.numbers("no_bounce_m"))
                                .map(length -> PitchBounce.bounceShare(wheelbase, length))
                                .toArray())
                .with(
                        "pitch_share",
                        Arrays.stream(in.numbers("no_pitch_m"))
                                .map(length -> PitchBounce.pitchShare(wheelbase, length))
                                .toArray());
    }
}
