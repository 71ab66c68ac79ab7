package evenhand.report;

import static evenhand.report.Pencil.letter;
import static evenhand.report.Pencil.n;
import static evenhand.report.Pencil.squared;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.tyre.MagicFormula;
import evenhand.words.EventWords;
import java.util.Optional;

/** What tyres give at the loads that they carry at rest, worked through; nothing where their law has too many coefficients. */
final class WorkedTyres {
    private static final Unit PER_DEGREE = Dimension.CORNERING_STIFFNESS.metric();

    private WorkedTyres() {}

    static Optional<Working.Part> of(Pencil pencil, End end) {
        Car car = pencil.car();
        if (!(car.axle(end).tyre().lateral() instanceof MagicFormula law)) {
            return Optional.empty();
        }
        double left = car.staticLoad(end, Side.LEFT);
        double right = car.staticLoad(end, Side.RIGHT);
        double one = stiffness(pencil, law, left, left == right ? "" : ", left");
        double other = left == right ? one : stiffness(pencil, law, right, ", right");
        pencil.step(
                "of both tyres", "C_" + letter(end) + " = their sum", n(one) + " + " + n(other), one + other, "N/deg");
        double load = pencil.restLoad(end) / 2;
        pencil.step(
                "pneumatic trail",
                "p_" + letter(end) + " = p0·√(W ÷ 2 ÷ Fz0)",
                n(law.pneumaticTrail()) + " × √(" + n(load) + " ÷ " + n(law.referenceLoad()) + ")",
                pencil.trail(end),
                "m");
        return Optional.of(pencil.part(
                "Tyres at rest, " + EventWords.end(end), "Pacejka 2012 eq. 4.E25; trail of the brush model, ch. 3"));
    }

    private static double stiffness(Pencil pencil, MagicFormula law, double load, String side) {
        double q = law.stiffnessPeakLoadRatio();
        double x = load / (q * law.referenceLoad());
        double stiffness = PER_DEGREE.fromSi(law.corneringStiffness(load));
        pencil.step(
                "load of a tyre over that of its greatest stiffness" + side,
                "x = W_tyre ÷ (q·Fz0)",
                n(load) + " ÷ (" + n(q) + " × " + n(law.referenceLoad()) + ")",
                x,
                "");
        pencil.step(
                "its cornering stiffness",
                "K0·x·(q + 1 ÷ q) ÷ (1 + x²)",
                n(PER_DEGREE.fromSi(law.corneringStiffness())) + " × " + n(x) + " × (" + n(q) + " + 1 ÷ " + n(q)
                        + ") ÷ (1 + " + squared(n(x)) + ")",
                stiffness,
                "N/deg");
        return stiffness;
    }
}
