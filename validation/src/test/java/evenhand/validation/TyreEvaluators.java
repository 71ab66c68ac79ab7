package evenhand.validation;

import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.tyre.MagicFormula;
import evenhand.tyre.PacejkaCoefficients;
import evenhand.tyre.SideForce;
import evenhand.tyre.TyreEstimate;
import evenhand.tyre.TyreKind;
import evenhand.tyre.TyreSize;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/** Tyres put to the model, one at a time or as the pair of an axle. */
final class TyreEvaluators {
    /** A slip so great that the curve has run out. */
    private static final double FAR_OUT = 1e12;

    private TyreEvaluators() {}

    /** A tyre at the load where the source states peak, stiffness and curvature; its slip in the source's own unit. */
    private static SideForce statedAt(double load, double peak, double stiffness, double shape, double curvature) {
        return SideForce.of(new MagicFormula(load, stiffness, peak / load, 0, 2, shape, curvature, 0, 0, 0, 0));
    }

    private static MagicFormula formula(Inputs in) {
        return new MagicFormula(
                in.number("Fz0_N"),
                in.number("K0_N_rad"),
                in.number("mu0", 1),
                in.number("s", 0),
                in.number("p"),
                in.number("C", 1.4),
                in.number("E", 0),
                in.number("camber_thrust_ratio", 0),
                in.number("friction_camber_loss_per_rad2", 0),
                in.number("best_lean_in_rad", 0),
                in.number("trail_m", 0));
    }

    /** Force over slip from factors stated load by load. */
    static Computed curve(Inputs in) {
        double[] loads = in.numbers("load_N");
        double[] peaks = in.numbers("D_N");
        double[] stiffnesses = in.numbers("BCD_N_per_unit");
        double[] curvatures = in.numbers("E");
        double[] shapes = in.has("C_by_load") ? in.numbers("C_by_load") : null;
        List<double[]> forces = new ArrayList<>();
        for (int i = 0; i < loads.length; i++) {
            double shape = shapes == null ? in.number("C") : shapes[i];
            SideForce tyre = statedAt(loads[i], peaks[i], stiffnesses[i], shape, curvatures[i]);
            double load = loads[i];
            forces.add(Arrays.stream(in.numbers("slip"))
                    .map(slip -> force(tyre, slip, load))
                    .toArray());
        }
        return new Computed().with("F_N", forces);
    }

    /** Two tyres of an axle at one slip, loads given from the innermost outwards and mirrored about the middle one. */
    static Computed pairAtOneSlip(Inputs in) {
        double[] loads = in.numbers("load_N");
        double[] peaks = in.numbers("D_N");
        double[] stiffnesses = in.numbers("BCD_N_per_unit");
        double[] curvatures = in.numbers("E");
        int middle = loads.length / 2;
        double[] pairs = new double[middle + 1];
        double[] losses = new double[middle + 1];
        for (int k = 0; k <= middle; k++) {
            for (int i : new int[] {middle - k, middle + k}) {
                SideForce tyre = statedAt(loads[i], peaks[i], stiffnesses[i], in.number("C"), curvatures[i]);
                pairs[k] += force(tyre, in.number("slip"), loads[i]);
            }
            losses[k] = Unit.of("%").fromSi(1 - pairs[k] / pairs[0]);
        }
        return new Computed().with("pair_force_N", pairs).with("loss_percent", losses);
    }

    /** Slope, peak and run-out of one curve. */
    static Computed shape(Inputs in) {
        double b = in.number("B");
        double c = in.number("C");
        double d = in.number("D");
        SideForce tyre = statedAt(1000, d, b * c * d, c, in.number("E"));
        tyre.at(0, 0, 1000);
        Computed computed = new Computed().with("slope_at_zero", tyre.forceBySlip);
        double atPeak = Roots.between(1e-3 / b, 100 / b, slip -> slope(tyre, slip, 1000));
        tyre.at(atPeak, 0, 1000);
        return computed.with("x_peak", atPeak)
                .with("peak", tyre.force)
                .with("peak_said", tyre.peak)
                .with("asymptote", force(tyre, FAR_OUT, 1000));
    }

    static Computed stiffnessByLoad(Inputs in) {
        MagicFormula tyre = formula(in);
        double[] stiffnesses = Arrays.stream(in.numbers("load_N"))
                .map(tyre::corneringStiffness)
                .toArray();
        SideForce force = SideForce.of(tyre);
        double[] slopes = Arrays.stream(in.numbers("load_N"))
                .map(load -> slope(force, 0, load))
                .toArray();
        double atPeak = Roots.between(100, 1e6, tyre::corneringStiffnessByLoad);
        return new Computed()
                .with("K_N_rad", stiffnesses)
                .with("slope_of_force_N_rad", slopes)
                .with("load_of_peak_N", atPeak)
                .with("peak_N_rad", tyre.corneringStiffness(atPeak));
    }

    /** Greatest side force of pairs of tyres at one common slip angle, and the sum of what each could do alone. */
    static Computed greatestOfPair(Inputs in) {
        SideForce tyre = SideForce.of(formula(in));
        List<double[]> pairs = in.lists("loads_N");
        double[] peaks = new double[pairs.size()];
        double[] slips = new double[pairs.size()];
        double[] sums = new double[pairs.size()];
        for (int i = 0; i < peaks.length; i++) {
            double[] loads = pairs.get(i);
            slips[i] = Roots.between(1e-3, 1, slip -> slope(tyre, slip, loads[0]) + slope(tyre, slip, loads[1]));
            for (double load : loads) {
                peaks[i] += force(tyre, slips[i], load);
                sums[i] += tyre.peak;
            }
        }
        return new Computed()
                .with("peak_N", peaks)
                .with("slip_at_peak_rad", slips)
                .with("sum_of_own_peaks_N", sums)
                .with("loss_N", sums[0] - sums[sums.length - 1]);
    }

    /** Greatest side force of one tyre at given loads and leans, over its load. */
    static Computed friction(Inputs in) {
        SideForce tyre = SideForce.of(formula(in));
        double[] loads = in.numbers("load_N");
        double[] leansIn = in.has("lean_in_deg") ? in.numbers("lean_in_deg") : new double[loads.length];
        double[] frictions = new double[loads.length];
        for (int i = 0; i < loads.length; i++) {
            // A turn to the left: leaning in is leaning to the left.
            tyre.at(0.1, -Unit.of("deg").toSi(leansIn[i]), loads[i]);
            frictions[i] = tyre.peak / loads[i];
        }
        return new Computed().with("mu", frictions);
    }

    /** Lean that makes as much side force as a slip angle: the ratio of both stiffnesses. */
    static Computed camberThrust(Inputs in) {
        SideForce tyre = SideForce.of(formula(in));
        tyre.at(0, 0, in.number("Fz0_N"));
        double leftwards = -tyre.forceByLean;
        return new Computed()
                .with("camber_stiffness_N_rad", Math.abs(leftwards))
                .with("ratio", Math.abs(leftwards / tyre.forceBySlip));
    }

    /** Trail and aligning moment where the force has reached a part of its peak. */
    static Computed brush(Inputs in) {
        double load = in.number("Fz_N");
        double mu = in.number("mu");
        MagicFormula law = new MagicFormula(load, 100_000, mu, 0, 2, 1.3, 0, 0, 0, 0, in.number("half_contact_m") / 3);
        SideForce tyre = SideForce.of(law);
        double peakSlip = Roots.between(1e-3, 1, slip -> slope(tyre, slip, load));
        double[] forces = in.numbers("Fy_N");
        double[] trails = new double[forces.length];
        double[] moments = new double[forces.length];
        for (int i = 0; i < forces.length; i++) {
            double wanted = forces[i];
            tyre.at(Roots.between(0, peakSlip, slip -> force(tyre, slip, load) - wanted), 0, load);
            trails[i] = tyre.trail;
            moments[i] = -tyre.trail * tyre.force + tyre.residualMoment;
        }
        tyre.at(0, 0, load);
        double atRest = tyre.trail;
        double best = greatest(1e-4, peakSlip, slip -> moment(tyre, slip, load));
        tyre.at(best, 0, load);
        return new Computed()
                .with("trail_m", trails)
                .with("Mz_Nm", moments)
                .with("trail_at_zero_m", atRest)
                .with("Mz_peak_Nm", tyre.trail * tyre.force)
                .with("Fy_there_over_muFz", tyre.force / tyre.peak);
    }

    /** Pneumatic trail of a tyre without slip at several loads. */
    static Computed trailByLoad(Inputs in) {
        MagicFormula law = formula(in);
        return new Computed()
                .with(
                        "trail_m",
                        Arrays.stream(in.numbers("load_N"))
                                .map(law::pneumaticTrail)
                                .toArray());
    }

    private static double moment(SideForce tyre, double slip, double load) {
        tyre.at(slip, 0, load);
        return tyre.trail * tyre.force;
    }

    private static PacejkaCoefficients coefficients(Inputs in) {
        Map<PacejkaCoefficients.Name, Double> values = new EnumMap<>(PacejkaCoefficients.Name.class);
        in.values()
                .path("coefficients")
                .properties()
                .forEach(entry -> values.put(
                        PacejkaCoefficients.Name.valueOf(entry.getKey()),
                        entry.getValue().asDouble()));
        return new PacejkaCoefficients(values);
    }

    /** Stiffness, friction and trail of a published set, in the signs of the set. */
    static Computed publishedSet(Inputs in) {
        PacejkaCoefficients set = coefficients(in);
        SideForce tyre = SideForce.of(set);
        double[] loads = in.numbers("load_N");
        double[] stiffness = new double[loads.length];
        double[] friction = new double[loads.length];
        double[] camber = new double[loads.length];
        double[] trail = new double[loads.length];
        for (int i = 0; i < loads.length; i++) {
            stiffness[i] = -set.corneringStiffness(loads[i]);
            tyre.at(0, 0, loads[i]);
            friction[i] = -tyre.peak / loads[i];
            camber[i] = tyre.forceByLean;
            trail[i] = set.pneumaticTrail(loads[i]);
        }
        return new Computed()
                .with("K_N_rad", stiffness)
                .with("mu", friction)
                .with("K_gamma_N_rad", camber)
                .with("Dt_m", trail)
                .with("ratio_at_rated_load", set.camberThrustRatio())
                .with("load_of_greatest_stiffness_N", Roots.between(100, 1e5, set::corneringStiffnessByLoad));
    }

    /** Side force and aligning moment of a published set over slip, ISO signs. */
    static Computed publishedForce(Inputs in) {
        SideForce tyre = SideForce.of(coefficients(in));
        double lean = Unit.of("deg").toSi(in.number("camber_deg", 0));
        List<double[]> forces = new ArrayList<>();
        List<double[]> moments = new ArrayList<>();
        for (double load : in.numbers("load_N")) {
            double[] slips = in.numbers("slip_deg");
            double[] force = new double[slips.length];
            double[] moment = new double[slips.length];
            for (int i = 0; i < slips.length; i++) {
                tyre.at(-Unit.of("deg").toSi(slips[i]), lean, load);
                force[i] = tyre.force;
                moment[i] = -tyre.trail * tyre.force + tyre.residualMoment;
            }
            forces.add(force);
            moments.add(moment);
        }
        return new Computed().with("Fy_N", forces).with("Mz_Nm", moments);
    }

    /** Radius and vertical rate that a size, a pressure and a radial carcass let expect. */
    static Computed size(Inputs in) {
        List<TyreSize> sizes = sizes(in);
        double[] rates = new double[sizes.size()];
        for (int i = 0; i < rates.length && in.has("pressure"); i++) {
            double pressure = in.sis("pressure", Dimension.PRESSURE)[i];
            rates[i] = TyreEstimate.verticalRate(sizes.get(i), TyreKind.TOURING_RADIAL, pressure);
        }
        return new Computed()
                .with(
                        "radius_m",
                        sizes.stream().mapToDouble(TyreSize::freeRadius).toArray())
                .with("table_radius_m", sizes.get(0).freeRadius())
                .with(
                        "Kz_N_mm",
                        Arrays.stream(rates).map(Unit.of("N/mm")::fromSi).toArray());
    }

    private static List<TyreSize> sizes(Inputs in) {
        return in.texts("size").stream()
                .map(text -> TyreSize.read(text, Optional.empty()).orElseThrow())
                .toList();
    }

    /** What tyres of these sizes are made to carry. */
    static Computed loadCapacity(Inputs in) {
        return new Computed()
                .with(
                        "capacity_kg",
                        sizes(in).stream()
                                .mapToDouble(TyreEstimate::loadCapacity)
                                .toArray());
    }

    /** Load at which a tyre's estimates are stated, at each pressure. */
    static Computed referenceLoad(Inputs in) {
        TyreSize size = sizes(in).get(0);
        return new Computed()
                .with(
                        "F0_N",
                        Arrays.stream(in.sis("pressure", Dimension.PRESSURE))
                                .map(pressure -> TyreEstimate.referenceLoad(size, pressure))
                                .toArray());
    }

    private static double force(SideForce tyre, double slip, double load) {
        tyre.at(slip, 0, load);
        return tyre.force;
    }

    private static double slope(SideForce tyre, double slip, double load) {
        tyre.at(slip, 0, load);
        return tyre.forceBySlip;
    }

    /** Where a function with one hump is greatest, by golden section. */
    static double greatest(double low, double high, DoubleUnaryOperator function) {
        double golden = (Math.sqrt(5) - 1) / 2;
        double a = low;
        double b = high;
        while (b - a > 1e-9 * b) {
            double left = b - golden * (b - a);
            double right = a + golden * (b - a);
            if (function.applyAsDouble(left) < function.applyAsDouble(right)) {
                a = left;
            } else {
                b = right;
            }
        }
        return (a + b) / 2;
    }
}
