package evenhand.report;

import static evenhand.report.Pencil.letter;
import static evenhand.report.Pencil.n;
import static evenhand.report.Pencil.squared;

import evenhand.car.Axle;
import evenhand.car.Bar;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Spring;
import evenhand.car.Weights;
import evenhand.handsums.HandSums;
import evenhand.handsums.HandSums.AxleSums;
import evenhand.quantity.Dimension;
import evenhand.words.EventWords;

/** Roll stiffness of an axle, worked through: springs, bar and stops, in series with the tyres. */
final class WorkedStiffness {
    private static final double G = Weights.GRAVITY;

    /** Where stops take part at rest, their roll stiffness is told apart; less than this part of it is rounding. */
    private static final double ROUNDING = 1e-9;

    private WorkedStiffness() {}

    static Working.Part of(Pencil pencil, End end) {
        Car car = pencil.car();
        HandSums sums = pencil.sums();
        Axle axle = car.axle(end);
        AxleSums of = pencil.axle(end);
        String i = letter(end);
        double t = axle.track();
        double springs = springs(pencil, axle, i);
        double bar = axle.barRollStiffness();
        if (axle.bar().orElse(null) instanceof Bar.Round round) {
            pencil.step(
                    "bar, by torsion of a round rod",
                    "Kb_" + i + " = G·π·d⁴ ÷ 32 ÷ l·(link·t ÷ arm)²·bushes",
                    n(Bar.Round.SHEAR_MODULUS / 1e9) + " × 1000000000 × 3.141593 × " + four(round.diameter())
                            + " ÷ 32 ÷ " + n(round.activeLength()) + " × "
                            + squared("(" + n(round.linkRatio()) + " × " + n(t) + " ÷ " + n(round.armLength()) + ")")
                            + " × " + n(round.bushFactor()),
                    bar,
                    "N·m/rad");
        } else if (bar > 0) {
            double given = Dimension.ROLL_STIFFNESS.metric().fromSi(bar);
            pencil.step(
                    "bar, as given",
                    "Kb_" + i + " = per degree × 180 ÷ π",
                    n(given) + " × 180 ÷ 3.141593",
                    bar,
                    "N·m/rad");
        }
        double more = of.suspensionRollStiffness() - springs - bar;
        boolean anyMore = Math.abs(more) > ROUNDING * of.suspensionRollStiffness();
        pencil.step(
                "suspension" + (anyMore ? ", with what " + addsMore(axle) + " add" : ""),
                "Ks_" + i + " = springs + bar" + (anyMore ? " + " + moreSymbol(axle) : ""),
                n(springs) + " + " + n(bar) + (anyMore ? " + " + n(more) : ""),
                of.suspensionRollStiffness(),
                "N·m/rad");
        pencil.step(
                "tyres",
                "Kz_" + i + " = ½·t²·k_tyre",
                "0.5 × " + squared(n(t)) + " × " + n(axle.tyre().verticalRate()),
                of.tyreRollStiffness(),
                "N·m/rad");
        pencil.step(
                "tyres, less the weight that moves outwards",
                "Kt_" + i + " = Kz − g·(ms·s·z + mu·hu)",
                n(of.tyreRollStiffness()) + " − " + n(G) + " × ("
                        + n(sums.sprung().mass()) + " × "
                        + n(sums.sprung().share(end)) + " × "
                        + n(axle.geometry().rollCentreHeight()) + " + "
                        + n(axle.unsprung().mass()) + " × " + n(axle.unsprung().height()) + ")",
                of.tyreRollStiffnessLeft(),
                "N·m/rad");
        pencil.step(
                "both in series",
                "k_" + i + " = Ks·Kt ÷ (Ks + Kt)",
                n(of.suspensionRollStiffness()) + " × " + n(of.tyreRollStiffnessLeft()) + " ÷ ("
                        + n(of.suspensionRollStiffness()) + " + " + n(of.tyreRollStiffnessLeft()) + ")",
                of.rollStiffness(),
                "N·m/rad");
        return pencil.part(
                "Roll stiffness, " + EventWords.end(end),
                "springs and tyres in series; Milliken & Milliken 1995 ch. 16 and 18");
    }

    /** Stops at rest; on links known by points also springs that turn as they are worked, and links that bind. */
    private static String addsMore(Axle axle) {
        String stops = "the stops that it stands on";
        String links = "springs that turn on their links, and links that bind,";
        boolean onStops = standsOnStops(axle);
        return axle.motion().isEmpty() ? stops : onStops ? stops + ", " + links : links;
    }

    private static String moreSymbol(Axle axle) {
        return axle.motion().isEmpty() ? "stops" : standsOnStops(axle) ? "stops + links" : "links";
    }

    private static boolean standsOnStops(Axle axle) {
        return axle.stops().bump().filter(stop -> stop.gap() < 0).isPresent();
    }

    private static double springs(Pencil pencil, Axle axle, String i) {
        double t = axle.track();
        if (axle.spring() instanceof Spring.AtWheel wheel) {
            double atWheel = wheel.rate() * wheel.motionRatio() * wheel.motionRatio();
            pencil.step(
                    "wheel rate",
                    "Kw_" + i + " = k·MR²",
                    n(wheel.rate()) + " × " + squared(n(wheel.motionRatio())),
                    atWheel,
                    "N/m");
            double springs = t * t * atWheel / 2;
            pencil.step(
                    "springs in roll", "½·t²·Kw", "0.5 × " + squared(n(t)) + " × " + n(atWheel), springs, "N·m/rad");
            return springs;
        }
        if (axle.spring() instanceof Spring.Leaning leaning) {
            double tan = Math.tan(leaning.lean());
            double cos = Math.cos(leaning.lean());
            double arm = leaning.base() / 2 - (axle.geometry().rollCentreHeight() - leaning.lowerMountHeight()) * tan;
            pencil.step(
                    "arm of a spring where its line passes the roll centre",
                    "e = base ÷ 2 − (z − z_low)·tan θ",
                    n(leaning.base()) + " ÷ 2 − (" + n(axle.geometry().rollCentreHeight()) + " − "
                            + n(leaning.lowerMountHeight()) + ") × " + n(tan),
                    arm,
                    "m");
            double springs = 2 * leaning.rate() * cos * cos * arm * arm;
            pencil.step(
                    "springs in roll",
                    "2·k·cos²θ·e²",
                    "2 × " + n(leaning.rate()) + " × " + squared(n(cos)) + " × " + squared(n(arm)),
                    springs,
                    "N·m/rad");
            return springs;
        }
        Spring.Upright upright = (Spring.Upright) axle.spring();
        double ratio = upright.motionRatio();
        double springs = upright.rate() * ratio * ratio * upright.base() * upright.base() / 2;
        pencil.step(
                "springs in roll",
                "½·k·MR²·base²",
                "0.5 × " + n(upright.rate()) + " × " + squared(n(ratio)) + " × " + squared(n(upright.base())),
                springs,
                "N·m/rad");
        return springs;
    }

    private static String four(double value) {
        return squared(squared(n(value)));
    }
}
