package evenhand.report;

import static evenhand.report.Pencil.degrees;
import static evenhand.report.Pencil.letter;
import static evenhand.report.Pencil.n;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Weights;
import evenhand.handsums.HandSums;
import evenhand.handsums.HandSums.AxleSums;
import evenhand.words.EventWords;

/** Roll of the body, worked through: side forces, their moments, and what the springs are left with. */
final class WorkedRoll {
    private static final double G = Weights.GRAVITY;

    private WorkedRoll() {}

    static Working.Part of(Pencil pencil) {
        Car car = pencil.car();
        HandSums sums = pencil.sums();
        double m = car.weights().mass();
        double b = car.wheelbase() - car.cgBehindFront();
        double pf = pencil.trail(End.FRONT);
        double pr = pencil.trail(End.REAR);
        Car.Sprung sprung = sums.sprung();
        pencil.step(
                "side force of the front axle",
                "Y_f = m·g·(b + p_r) ÷ (L − p_f + p_r)",
                n(m) + " × " + n(G) + " × (" + n(b) + " + " + n(pr) + ") ÷ (" + n(car.wheelbase()) + " − " + n(pf)
                        + " + " + n(pr) + ")",
                sums.front().sideForce(),
                "N");
        pencil.step(
                "side force of the rear axle",
                "Y_r = m·g − Y_f",
                n(m) + " × " + n(G) + " − " + n(sums.front().sideForce()),
                sums.rear().sideForce(),
                "N");
        for (End end : End.values()) {
            Axle axle = car.axle(end);
            AxleSums of = pencil.axle(end);
            String i = letter(end);
            double mu = axle.unsprung().mass();
            pencil.step(
                    "force through the links, " + EventWords.end(end),
                    "N_" + i + " = Y − mu·g",
                    n(of.sideForce()) + " − " + n(mu) + " × " + n(G),
                    of.linkForce(),
                    "N");
            pencil.step(
                    "moment by links and unsprung mass, " + EventWords.end(end),
                    "G_" + i + " = N·z + mu·g·hu",
                    n(of.linkForce()) + " × " + n(axle.geometry().rollCentreHeight()) + " + " + n(mu) + " × " + n(G)
                            + " × " + n(axle.unsprung().height()),
                    pencil.outside(end),
                    "N·m");
        }
        double overturning = sums.front().linkForce()
                        * (sprung.height() - car.front().geometry().rollCentreHeight())
                + sums.rear().linkForce()
                        * (sprung.height() - car.rear().geometry().rollCentreHeight());
        pencil.step(
                "moment left for the springs",
                "E = N_f·(hs − z_f) + N_r·(hs − z_r)",
                n(sums.front().linkForce()) + " × (" + n(sprung.height()) + " − "
                        + n(car.front().geometry().rollCentreHeight())
                        + ") + " + n(sums.rear().linkForce()) + " × (" + n(sprung.height()) + " − "
                        + n(car.rear().geometry().rollCentreHeight()) + ")",
                overturning,
                "N·m");
        pencil.step(
                "roll of the body",
                "φ = (E + k_f·G_f ÷ Kt_f + k_r·G_r ÷ Kt_r) ÷ (k_f + k_r − ms·g·H)",
                "(" + n(overturning) + " + " + series(pencil, End.FRONT) + " + " + series(pencil, End.REAR) + ") ÷ ("
                        + n(sums.front().rollStiffness()) + " + "
                        + n(sums.rear().rollStiffness()) + " − "
                        + n(sprung.mass()) + " × " + n(G) + " × " + n(sums.rollArm()) + ")",
                sums.rollAngle(),
                "rad");
        pencil.step(
                "the same in degrees",
                "φ·180 ÷ π",
                n(sums.rollAngle()) + " × 180 ÷ 3.141593",
                degrees(sums.rollAngle()),
                "deg");
        return pencil.part("Roll at 1 g", "moments about the roll axis; Milliken & Milliken 1995 ch. 18");
    }

    private static String series(Pencil pencil, End end) {
        return n(pencil.axle(end).rollStiffness()) + " × " + n(pencil.outside(end)) + " ÷ "
                + n(pencil.axle(end).tyreRollStiffnessLeft());
    }
}
