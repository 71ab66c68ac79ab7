package evenhand.report;

import evenhand.report.Block.Column;
import evenhand.report.Block.Row;
import evenhand.report.Block.Table;
import java.util.List;

/** What the letters in the working stand for, and in which unit they go in. */
final class Symbols {
    private static final List<Row> ROWS = List.of(
            row("m, ms, mu", "mass of the car; of its sprung part; unsprung, of an axle", "kg"),
            row("ms1", "sprung mass on one wheel", "kg"),
            row("h, hs, hu", "height of the centre of gravity; of the sprung mass; of the unsprung mass", "m"),
            row(
                    "L, a, b, as",
                    "wheelbase; from the centre of gravity to front and rear axle; from the front axle to the sprung mass",
                    "m"),
            row("t", "track", "m"),
            row("z, z_low", "roll centre's height; height of the lower spring mounts", "m"),
            row("s, H", "an axle's share of the sprung mass; its centre above the roll axis", "–, m"),
            row("g, ac", "9.80665; lateral acceleration, to the left positive", "m/s²"),
            row(
                    "k, k_tyre, MR",
                    "spring rate; tyre's vertical rate; travel of the part over that of the wheel",
                    "N/m, N/m, –"),
            row("base, e, θ", "distance between the spring mounts; arm of a spring in roll; its lean", "m, m, rad"),
            row("Kw, Kr", "rate at the wheel; the same with the tyre in series", "N/m"),
            row(
                    "Kb, Ks, Kz, Kt, k_f, k_r",
                    "roll stiffness of bar; suspension; tyres; tyres less what leans; axle",
                    "N·m/rad"),
            row(
                    "φ, φs, ψ",
                    "roll of the body; of the suspension; tilt on the tyres",
                    "rad, deg where not in the sum of roll"),
            row("M, G, E", "moment by springs and bar; by links and unsprung mass; left for the springs", "N·m"),
            row("Y, N, W", "side force of an axle; through its links; its load at rest", "N"),
            row("ΔFz", "what the outer wheel gains", "N"),
            row("C, K0", "cornering stiffness of both tyres; of one at its reference load", "N/deg"),
            row("Fz0, q, x", "reference load; load of the greatest stiffness over it; load over that", "N, –, –"),
            row("p, p0", "pneumatic trail; at the reference load", "m"),
            row("c_f, c_r with λ", "camber thrust ratio; lean of the wheels", "–, deg"),
            row("ε", "roll steer, deg per deg of the suspension's roll", "–"),
            row("A, B", "give under side force; under aligning torque", "deg/kN, deg/(kN·m)"),
            row("B with P", "sum and product of both squares ω²", "1/s², 1/s⁴"),
            row(
                    "c, cc, ζ, ω",
                    "damping at the wheel; critical; damping ratio; angular frequency",
                    "N·s/m, N·s/m, –, rad/s"),
            row("Fx, Fy, Fz, Mz", "forces along, across and upright on a wheel; its aligning moment", "N, N, N, N·m"),
            row("y", "centre of gravity to the left of the middle", "m"),
            row("D, β, Q", "drag of the air; sideslip; load that goes from front to rear", "N, rad, N"),
            row("_f, _r", "front, rear", ""));

    private Symbols() {}

    private static Row row(String symbol, String means, String unit) {
        return Row.of(symbol, means, unit);
    }

    static Table table() {
        return new Table(
                List.of(Column.words("symbol", 1.8), Column.words("meaning", 5.6), Column.words("unit", 2.2)), ROWS);
    }
}
