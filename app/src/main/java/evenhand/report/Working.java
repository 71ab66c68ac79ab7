package evenhand.report;

import evenhand.car.Axle;
import evenhand.car.Bar;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Spring;
import evenhand.car.Weights;
import evenhand.handsums.HandSums;
import evenhand.handsums.HandSums.AxleSums;
import evenhand.quantity.Dimension;
import evenhand.tyre.LateralLaw;
import evenhand.words.EventWords;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/**
 * The hand sums with a car's numbers put in, so that they can be followed with a pocket calculator. SI and radians throughout, at a
 * lateral acceleration of 1 g; the formulas are those of {@link HandSums}.
 */
public final class Working {
    /** Digits that count in what is put in, and in what comes out. */
    private static final int DIGITS_IN = 7;

    private static final int DIGITS_OUT = 5;

    private static final double G = Weights.GRAVITY;

    /** Where stops take part at rest, their roll stiffness is told apart; less than this part of it is rounding. */
    private static final double ROUNDING = 1e-9;

    /**
     * One line.
     *
     * @param what it is
     * @param formula in symbols
     * @param numbers the same with the numbers put in
     * @param value SI but for angles per g, which are deg
     * @param unit of the value
     */
    public record Step(String what, String formula, String numbers, double value, String unit) {
        /** The result as it is printed. */
        public String result() {
            return digits(value, DIGITS_OUT) + (unit.isEmpty() ? "" : " " + unit);
        }
    }

    /** Lines that belong together, and where their formulas come from. */
    public record Part(String title, String source, List<Step> steps) {
        public Part {
            steps = List.copyOf(steps);
        }
    }

    private final Car car;
    private final HandSums sums;
    private List<Step> steps = new ArrayList<>();

    private Working(Car car, HandSums sums) {
        this.car = car;
        this.sums = sums;
    }

    /**
     * All of it.
     *
     * @param car at rest
     * @param sums of it, at 1 g
     */
    public static List<Part> of(Car car, HandSums sums) {
        Working working = new Working(car, sums);
        List<Part> parts = new ArrayList<>();
        working.masses();
        parts.add(
                working.part("Masses", "moments of mass about front axle and ground; Milliken & Milliken 1995 ch. 18"));
        for (End end : End.values()) {
            working.stiffness(end);
            parts.add(working.part(
                    "Roll stiffness, " + EventWords.end(end),
                    "springs and tyres in series; Milliken & Milliken 1995 ch. 16 and 18"));
        }
        working.roll();
        parts.add(working.part("Roll at 1 g", "moments about the roll axis; Milliken & Milliken 1995 ch. 18"));
        for (End end : End.values()) {
            working.transfer(end);
            parts.add(working.part("Load transfer at 1 g, " + EventWords.end(end), "Milliken & Milliken 1995 ch. 18"));
        }
        working.proof();
        parts.add(working.part("Proof", "all load transfers together hold what turns the car over"));
        working.budget();
        parts.add(working.part(
                "Understeer gradient in a very gentle turn", "Gillespie 1992 ch. 6; Bundorf & Leffert 1976"));
        return parts;
    }

    private Part part(String title, String source) {
        Part part = new Part(title, source, steps);
        steps = new ArrayList<>();
        return part;
    }

    private void step(String what, String formula, String numbers, double value, String unit) {
        steps.add(new Step(what, formula, numbers, value, unit));
    }

    /** With so many digits that count, however small it is. */
    private static String digits(double value, int count) {
        return new BigDecimal(value)
                .round(new MathContext(count))
                .stripTrailingZeros()
                .toPlainString()
                .replace('-', '−');
    }

    /** A number as it is put in. */
    private static String n(double value) {
        String text = digits(value, DIGITS_IN);
        return text.startsWith("−") ? "(" + text + ")" : text;
    }

    private AxleSums axle(End end) {
        return end == End.FRONT ? sums.front() : sums.rear();
    }

    private static String of(End end) {
        return end == End.FRONT ? "f" : "r";
    }

    private double restLoad(End end) {
        return car.staticLoad(end, true) + car.staticLoad(end, false);
    }

    private double trail(End end) {
        return car.axle(end).tyre().lateral().pneumaticTrail(restLoad(end) / 2);
    }

    private void masses() {
        double m = car.weights().mass();
        double front = car.weights().frontFraction();
        double l = car.wheelbase();
        double muf = car.front().unsprung().mass();
        double mur = car.rear().unsprung().mass();
        Car.Sprung sprung = sums.sprung();
        step(
                "centre of gravity behind the front axle",
                "a = L·(1 − front share)",
                n(l) + " × (1 − " + n(front) + ")",
                car.cgBehindFront(),
                "m");
        step("sprung mass", "ms = m − mu_f − mu_r", n(m) + " − " + n(muf) + " − " + n(mur), sprung.mass(), "kg");
        step(
                "its centre behind the front axle",
                "as = (m·a − mu_r·L) ÷ ms",
                "(" + n(m) + " × " + n(car.cgBehindFront()) + " − " + n(mur) + " × " + n(l) + ") ÷ " + n(sprung.mass()),
                sprung.behindFront(),
                "m");
        step(
                "its height",
                "hs = (m·h − mu_f·hu_f − mu_r·hu_r) ÷ ms",
                "(" + n(m) + " × " + n(car.cgHeight()) + " − " + n(muf) + " × "
                        + n(car.front().unsprung().height()) + " − " + n(mur) + " × "
                        + n(car.rear().unsprung().height()) + ") ÷ " + n(sprung.mass()),
                sprung.height(),
                "m");
        step(
                "share over the rear axle",
                "s_r = as ÷ L",
                n(sprung.behindFront()) + " ÷ " + n(l),
                sprung.rearShare(),
                "");
        step("share over the front axle", "s_f = 1 − s_r", "1 − " + n(sprung.rearShare()), sprung.frontShare(), "");
        step(
                "roll arm",
                "H = hs − (z_f·s_f + z_r·s_r)",
                n(sprung.height()) + " − (" + n(car.front().rollCentreHeight()) + " × " + n(sprung.frontShare()) + " + "
                        + n(car.rear().rollCentreHeight()) + " × " + n(sprung.rearShare()) + ")",
                sums.rollArm(),
                "m");
    }

    private void stiffness(End end) {
        Axle axle = car.axle(end);
        AxleSums of = axle(end);
        String i = of(end);
        double t = axle.track();
        double springs = springs(axle, i);
        double bar = axle.barRollStiffness();
        if (axle.bar().orElse(null) instanceof Bar.Round round) {
            step(
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
            step(
                    "bar, as given",
                    "Kb_" + i + " = per degree × 180 ÷ π",
                    n(given) + " × 180 ÷ 3.141593",
                    bar,
                    "N·m/rad");
        }
        double stops = of.suspensionRollStiffness() - springs - bar;
        boolean onStops = Math.abs(stops) > ROUNDING * of.suspensionRollStiffness();
        step(
                "suspension" + (onStops ? ", with what the stops that it stands on add" : ""),
                "Ks_" + i + " = springs + bar" + (onStops ? " + stops" : ""),
                n(springs) + " + " + n(bar) + (onStops ? " + " + n(stops) : ""),
                of.suspensionRollStiffness(),
                "N·m/rad");
        step(
                "tyres",
                "Kz_" + i + " = ½·t²·k_tyre",
                "0.5 × " + squared(n(t)) + " × " + n(axle.tyre().verticalRate()),
                of.tyreRollStiffness(),
                "N·m/rad");
        step(
                "tyres, less the weight that moves outwards",
                "Kt_" + i + " = Kz − g·(ms·s·z + mu·hu)",
                n(of.tyreRollStiffness()) + " − " + n(G) + " × ("
                        + n(sums.sprung().mass()) + " × "
                        + n(sums.sprung().share(end)) + " × " + n(axle.rollCentreHeight()) + " + "
                        + n(axle.unsprung().mass()) + " × " + n(axle.unsprung().height()) + ")",
                of.tyreRollStiffnessLeft(),
                "N·m/rad");
        step(
                "both in series",
                "k_" + i + " = Ks·Kt ÷ (Ks + Kt)",
                n(of.suspensionRollStiffness()) + " × " + n(of.tyreRollStiffnessLeft()) + " ÷ ("
                        + n(of.suspensionRollStiffness()) + " + " + n(of.tyreRollStiffnessLeft()) + ")",
                of.rollStiffness(),
                "N·m/rad");
    }

    private double springs(Axle axle, String i) {
        double t = axle.track();
        if (axle.spring() instanceof Spring.AtWheel wheel) {
            double atWheel = wheel.rate() * wheel.motionRatio() * wheel.motionRatio();
            step(
                    "wheel rate",
                    "Kw_" + i + " = k·MR²",
                    n(wheel.rate()) + " × " + squared(n(wheel.motionRatio())),
                    atWheel,
                    "N/m");
            double springs = t * t * atWheel / 2;
            step("springs in roll", "½·t²·Kw", "0.5 × " + squared(n(t)) + " × " + n(atWheel), springs, "N·m/rad");
            return springs;
        }
        if (axle.spring() instanceof Spring.Leaning leaning) {
            double tan = Math.tan(leaning.lean());
            double cos = Math.cos(leaning.lean());
            double arm = leaning.base() / 2 - (axle.rollCentreHeight() - leaning.lowerMountHeight()) * tan;
            step(
                    "arm of a spring where its line passes the roll centre",
                    "e = base ÷ 2 − (z − z_low)·tan θ",
                    n(leaning.base()) + " ÷ 2 − (" + n(axle.rollCentreHeight()) + " − " + n(leaning.lowerMountHeight())
                            + ") × " + n(tan),
                    arm,
                    "m");
            double springs = 2 * leaning.rate() * cos * cos * arm * arm;
            step(
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
        step(
                "springs in roll",
                "½·k·MR²·base²",
                "0.5 × " + n(upright.rate()) + " × " + squared(n(ratio)) + " × " + squared(n(upright.base())),
                springs,
                "N·m/rad");
        return springs;
    }

    private static String squared(String text) {
        return text + " × " + text;
    }

    private static String four(double value) {
        return squared(squared(n(value)));
    }

    private void roll() {
        double m = car.weights().mass();
        double b = car.wheelbase() - car.cgBehindFront();
        double pf = trail(End.FRONT);
        double pr = trail(End.REAR);
        Car.Sprung sprung = sums.sprung();
        step(
                "side force of the front axle",
                "Y_f = m·g·(b + p_r) ÷ (L − p_f + p_r)",
                n(m) + " × " + n(G) + " × (" + n(b) + " + " + n(pr) + ") ÷ (" + n(car.wheelbase()) + " − " + n(pf)
                        + " + " + n(pr) + ")",
                sums.front().sideForce(),
                "N");
        step(
                "side force of the rear axle",
                "Y_r = m·g − Y_f",
                n(m) + " × " + n(G) + " − " + n(sums.front().sideForce()),
                sums.rear().sideForce(),
                "N");
        for (End end : End.values()) {
            Axle axle = car.axle(end);
            AxleSums of = axle(end);
            String i = of(end);
            double mu = axle.unsprung().mass();
            step(
                    "force through the links, " + EventWords.end(end),
                    "N_" + i + " = Y − mu·g",
                    n(of.sideForce()) + " − " + n(mu) + " × " + n(G),
                    of.linkForce(),
                    "N");
            step(
                    "moment by links and unsprung mass, " + EventWords.end(end),
                    "G_" + i + " = N·z + mu·g·hu",
                    n(of.linkForce()) + " × " + n(axle.rollCentreHeight()) + " + " + n(mu) + " × " + n(G) + " × "
                            + n(axle.unsprung().height()),
                    outside(end),
                    "N·m");
        }
        double overturning = sums.front().linkForce()
                        * (sprung.height() - car.front().rollCentreHeight())
                + sums.rear().linkForce() * (sprung.height() - car.rear().rollCentreHeight());
        step(
                "moment left for the springs",
                "E = N_f·(hs − z_f) + N_r·(hs − z_r)",
                n(sums.front().linkForce()) + " × (" + n(sprung.height()) + " − "
                        + n(car.front().rollCentreHeight())
                        + ") + " + n(sums.rear().linkForce()) + " × (" + n(sprung.height()) + " − "
                        + n(car.rear().rollCentreHeight()) + ")",
                overturning,
                "N·m");
        step(
                "roll of the body",
                "φ = (E + k_f·G_f ÷ Kt_f + k_r·G_r ÷ Kt_r) ÷ (k_f + k_r − ms·g·H)",
                "(" + n(overturning) + " + " + series(End.FRONT) + " + " + series(End.REAR) + ") ÷ ("
                        + n(sums.front().rollStiffness()) + " + "
                        + n(sums.rear().rollStiffness()) + " − "
                        + n(sprung.mass()) + " × " + n(G) + " × " + n(sums.rollArm()) + ")",
                sums.rollAngle(),
                "rad");
        step(
                "the same in degrees",
                "φ·180 ÷ π",
                n(sums.rollAngle()) + " × 180 ÷ 3.141593",
                degrees(sums.rollAngle()),
                "deg");
    }

    private double outside(End end) {
        return axle(end).geometricMoment() + axle(end).unsprungMoment();
    }

    private String series(End end) {
        return n(axle(end).rollStiffness()) + " × " + n(outside(end)) + " ÷ "
                + n(axle(end).tyreRollStiffnessLeft());
    }

    private static double degrees(double angle) {
        return Dimension.ANGLE.metric().fromSi(angle);
    }

    private void transfer(End end) {
        AxleSums of = axle(end);
        String i = of(end);
        step(
                "moment by springs and bar",
                "M_" + i + " = k·(φ − G ÷ Kt)",
                n(of.rollStiffness()) + " × (" + n(sums.rollAngle()) + " − " + n(outside(end)) + " ÷ "
                        + n(of.tyreRollStiffnessLeft()) + ")",
                of.elasticMoment(),
                "N·m");
        step(
                "tilt on the tyres",
                "ψ_" + i + " = (M + G) ÷ Kt",
                "(" + n(of.elasticMoment()) + " + " + n(outside(end)) + ") ÷ " + n(of.tyreRollStiffnessLeft()),
                of.tyreTilt(),
                "rad");
        step(
                "roll of the suspension",
                "φs_" + i + " = φ − ψ",
                n(sums.rollAngle()) + " − " + n(of.tyreTilt()),
                of.suspensionRoll(),
                "rad");
        step(
                "load that the outer wheel gains",
                "ΔFz_" + i + " = Kz·ψ ÷ t",
                n(of.tyreRollStiffness()) + " × " + n(of.tyreTilt()) + " ÷ "
                        + n(car.axle(end).track()),
                of.loadTransfer(),
                "N");
    }

    private void proof() {
        double held = sums.momentOfLoadTransfers(car);
        step(
                "moment of the load transfers",
                "ΔFz_f·t_f + ΔFz_r·t_r",
                n(sums.front().loadTransfer()) + " × " + n(car.front().track()) + " + "
                        + n(sums.rear().loadTransfer()) + " × " + n(car.rear().track()),
                held,
                "N·m");
        Car.Sprung sprung = sums.sprung();
        StringBuilder numbers = new StringBuilder(n(G) + " × (" + n(sprung.mass()) + " × " + n(sprung.height()));
        for (End end : End.values()) {
            numbers.append(" + ").append(n(car.axle(end).unsprung().mass())).append(" × ");
            numbers.append(n(car.axle(end).unsprung().height()));
        }
        numbers.append(" + ")
                .append(n(sprung.mass()))
                .append(" × ")
                .append(n(sums.rollArm()))
                .append(" × ");
        numbers.append(n(sums.rollAngle()));
        for (End end : End.values()) {
            Axle axle = car.axle(end);
            numbers.append(" + (")
                    .append(n(sprung.mass()))
                    .append(" × ")
                    .append(n(sprung.share(end)))
                    .append(" × ");
            numbers.append(n(axle.rollCentreHeight()))
                    .append(" + ")
                    .append(n(axle.unsprung().mass()));
            numbers.append(" × ")
                    .append(n(axle.unsprung().height()))
                    .append(") × ")
                    .append(n(axle(end).tyreTilt()));
        }
        step(
                "moment that turns the car over",
                "g·(ms·hs + Σ mu·hu + ms·H·φ + Σ (ms·s·z + mu·hu)·ψ)",
                numbers.append(')').toString(),
                sums.overturningMoment(car),
                "N·m");
        step(
                "the front tyres' share of the load transfer",
                "ΔFz_f ÷ (ΔFz_f + ΔFz_r)",
                n(sums.front().loadTransfer()) + " ÷ (" + n(sums.front().loadTransfer()) + " + "
                        + n(sums.rear().loadTransfer()) + ")",
                sums.frontLoadTransferShare(),
                "");
    }

    private double corneringStiffness(End end) {
        LateralLaw law = car.axle(end).tyre().lateral();
        return Dimension.CORNERING_STIFFNESS
                .metric()
                .fromSi(law.corneringStiffness(car.staticLoad(end, true))
                        + law.corneringStiffness(car.staticLoad(end, false)));
    }

    private void budget() {
        double cf = corneringStiffness(End.FRONT);
        double cr = corneringStiffness(End.REAR);
        step(
                "the tyres' slip",
                "W_f ÷ C_f − W_r ÷ C_r",
                n(restLoad(End.FRONT)) + " ÷ " + n(cf) + " − " + n(restLoad(End.REAR)) + " ÷ " + n(cr),
                perG(sums.budget().tyres()),
                "deg/g");
        step(
                "pneumatic trail of the tyres",
                "(Y_f − W_f) ÷ C_f − (Y_r − W_r) ÷ C_r",
                "(" + n(sums.front().sideForce()) + " − " + n(restLoad(End.FRONT)) + ") ÷ " + n(cf) + " − ("
                        + n(sums.rear().sideForce()) + " − " + n(restLoad(End.REAR)) + ") ÷ " + n(cr),
                perG(sums.budget().aligningTorque()),
                "deg/g");
        step(
                "lean of the wheels",
                "c_f·λ_f − c_r·λ_r",
                camber(End.FRONT) + " − " + camber(End.REAR),
                perG(sums.budget().camber()),
                "deg/g");
        step(
                "roll steer",
                "ε_f·φs_f + ε_r·φs_r",
                n(car.front().alignment().rollSteer()) + " × "
                        + n(degrees(sums.front().suspensionRoll())) + " + "
                        + n(car.rear().alignment().rollSteer()) + " × "
                        + n(degrees(sums.rear().suspensionRoll())),
                perG(sums.budget().rollSteer()),
                "deg/g");
        step(
                "give under side force",
                "A_f·Y_f + A_r·Y_r",
                n(degrees(car.front().alignment().lateralForceSteer()) * 1e3) + " × "
                        + n(sums.front().sideForce())
                        + " ÷ 1000 + " + n(degrees(car.rear().alignment().lateralForceSteer()) * 1e3) + " × "
                        + n(sums.rear().sideForce()) + " ÷ 1000",
                perG(sums.budget().lateralForceSteer()),
                "deg/g");
        step(
                "give under aligning torque",
                "B_f·p_f·Y_f + B_r·p_r·Y_r",
                aligning(End.FRONT) + " + " + aligning(End.REAR),
                perG(sums.budget().aligningTorqueSteer()),
                "deg/g");
        step(
                "understeer gradient",
                "the sum",
                List.of(
                                sums.budget().tyres(),
                                sums.budget().aligningTorque(),
                                sums.budget().camber(),
                                sums.budget().rollSteer(),
                                sums.budget().lateralForceSteer(),
                                sums.budget().aligningTorqueSteer())
                        .stream()
                        .map(term -> n(perG(term)))
                        .collect(java.util.stream.Collectors.joining(" + ")),
                perG(sums.budget().gradient()),
                "deg/g");
    }

    private static double perG(double gradient) {
        return Dimension.UNDERSTEER_GRADIENT.metric().fromSi(gradient);
    }

    private String camber(End end) {
        Axle axle = car.axle(end);
        String lean = axle instanceof Axle.Independent independent
                ? "(" + n(independent.rollCamber()) + " × "
                        + n(degrees(axle(end).suspensionRoll())) + " + "
                        + n(degrees(axle(end).tyreTilt())) + ")"
                : n(degrees(axle(end).tyreTilt()));
        return n(axle.tyre().lateral().camberThrustRatio()) + " × " + lean;
    }

    private String aligning(End end) {
        return n(degrees(car.axle(end).alignment().aligningTorqueSteer()) * 1e3) + " × " + n(trail(end)) + " × "
                + n(axle(end).sideForce()) + " ÷ 1000";
    }
}
