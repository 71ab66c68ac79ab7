package evenhand.report;

import static evenhand.report.Pencil.letter;
import static evenhand.report.Pencil.n;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Weights;
import evenhand.ride.AxleRide;
import evenhand.ride.Modes;
import evenhand.ride.QuarterCar;
import evenhand.suspension.WheelDamper;
import evenhand.words.EventWords;

/** Frequencies and damping of one wheel and what stands on it, worked through: two masses on two springs and a damper. */
final class WorkedRide {
    private WorkedRide() {}

    static Working.Part of(Pencil pencil, AxleRide ride) {
        Car car = pencil.car();
        End end = ride.end();
        String i = letter(end);
        QuarterCar two = ride.undamped();
        double ms = two.sprungMass();
        double mu = two.unsprungMass();
        double ks = two.wheelRate();
        double kt = two.tyreRate();
        pencil.step(
                "sprung mass on one wheel",
                "ms1_" + i + " = W_" + i + " ÷ 2 ÷ g − mu ÷ 2",
                n(car.axleLoad(end)) + " ÷ 2 ÷ " + n(Weights.GRAVITY) + " − "
                        + n(car.axle(end).unsprung().mass()) + " ÷ 2",
                ms,
                "kg");
        pencil.step("wheel rate, the slope of springs and stops at rest", "Kw_" + i, n(ks), ks, "N/m");
        pencil.step(
                "ride rate, the tyre in series",
                "Kr_" + i + " = Kw·k_tyre ÷ (Kw + k_tyre)",
                n(ks) + " × " + n(kt) + " ÷ (" + n(ks) + " + " + n(kt) + ")",
                ride.rates().ride(),
                "N/m");
        double sum = ks / ms + (ks + kt) / mu;
        double product = ks / ms * kt / mu;
        pencil.step(
                "sum of both squares ω²",
                "B = Kw ÷ ms1 + (Kw + k_tyre) ÷ (mu ÷ 2)",
                n(ks) + " ÷ " + n(ms) + " + (" + n(ks) + " + " + n(kt) + ") ÷ " + n(mu),
                sum,
                "1/s²");
        pencil.step(
                "their product",
                "P = Kw·k_tyre ÷ (ms1·mu ÷ 2)",
                n(ks) + " × " + n(kt) + " ÷ (" + n(ms) + " × " + n(mu) + ")",
                product,
                "1/s⁴");
        String root = "√(" + n(sum) + " × " + n(sum) + " − 4 × " + n(product) + ")";
        pencil.step(
                "frequency of the wheel's hop",
                "√((B + √(B² − 4·P)) ÷ 2) ÷ 2π",
                "√((" + n(sum) + " + " + root + ") ÷ 2) ÷ (2 × 3.141593)",
                ride.hopFrequency(),
                "Hz");
        double hop = ride.undampedModes().hop().angularFrequency();
        pencil.step(
                "frequency of the body",
                "√P ÷ ω_hop ÷ 2π",
                "√(" + n(product) + ") ÷ " + n(hop) + " ÷ (2 × 3.141593)",
                ride.bodyFrequency(),
                "Hz");
        ride.damped()
                .ifPresent(damped ->
                        damping(pencil, damped, WheelDamper.of(car, end).orElseThrow(), i));
        return pencil.part(
                "Frequencies and damping, " + EventWords.end(end), "Gillespie 1992 ch. 5; Wong 2008 ch. 7; two masses");
    }

    private static void damping(Pencil pencil, AxleRide.Damped damped, WheelDamper damper, String i) {
        QuarterCar two = damped.quarterCar();
        double c = two.dampingRate();
        double ms = two.sprungMass();
        double mu = two.unsprungMass();
        double ks = two.wheelRate();
        double kt = two.tyreRate();
        double speed = AxleRide.USUAL_DAMPER_SPEED;
        pencil.step(
                "damping at the wheel, at " + n(speed) + " m/s of the damper",
                "c_" + i + " = mean of MR²·force ÷ speed in bump and rebound",
                "(" + n(damper.bumpRate(speed)) + " + " + n(damper.reboundRate(speed)) + ") ÷ 2",
                c,
                "N·s/m");
        pencil.step(
                "what would be critical",
                "cc_" + i + " = 2·√(Kw·ms1)",
                "2 × √(" + n(ks) + " × " + n(ms) + ")",
                two.criticalDampingRate(),
                "N·s/m");
        pencil.step(
                "damping ratio of the body alone",
                "c ÷ cc",
                n(c) + " ÷ " + n(two.criticalDampingRate()),
                c / two.criticalDampingRate(),
                "");
        Modes modes = damped.modes();
        double body = modes.body().angularFrequency();
        double hop = modes.hop().angularFrequency();
        double ofHop = modes.hop().dampingRatio();
        pencil.step(
                "damping ratio of the body with the wheel, ω and ζ from the parted polynomial of both masses",
                "ζ = (c·(1 ÷ ms1 + 2 ÷ mu) − 2·ζ_hop·ω_hop) ÷ 2 ÷ ω",
                "(" + n(c) + " × (1 ÷ " + n(ms) + " + 1 ÷ " + n(mu) + ") − 2 × " + n(ofHop) + " × " + n(hop)
                        + ") ÷ 2 ÷ " + n(body),
                modes.body().dampingRatio(),
                "");
        pencil.step(
                "proof: both together",
                "ω·ω_hop = √(Kw·k_tyre ÷ (ms1·mu ÷ 2))",
                "√(" + n(ks) + " × " + n(kt) + " ÷ (" + n(ms) + " × " + n(mu) + "))",
                body * hop,
                "1/s²");
    }
}
