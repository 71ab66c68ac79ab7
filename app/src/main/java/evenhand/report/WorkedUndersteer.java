package evenhand.report;

import static evenhand.report.Pencil.degrees;
import static evenhand.report.Pencil.n;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.handsums.HandSums;
import evenhand.quantity.Dimension;
import evenhand.tyre.LateralLaw;
import java.util.List;
import java.util.stream.Collectors;

/** The understeer gradient of a very gentle turn, worked through term by term. */
final class WorkedUndersteer {
    private WorkedUndersteer() {}

    static Working.Part of(Pencil pencil) {
        Car car = pencil.car();
        HandSums sums = pencil.sums();
        double cf = corneringStiffness(car, End.FRONT);
        double cr = corneringStiffness(car, End.REAR);
        pencil.step(
                "the tyres' slip",
                "W_f ÷ C_f − W_r ÷ C_r",
                n(pencil.restLoad(End.FRONT)) + " ÷ " + n(cf) + " − " + n(pencil.restLoad(End.REAR)) + " ÷ " + n(cr),
                perG(sums.budget().tyres()),
                "deg/g");
        pencil.step(
                "pneumatic trail of the tyres",
                "(Y_f − W_f) ÷ C_f − (Y_r − W_r) ÷ C_r",
                "(" + n(sums.front().sideForce()) + " − " + n(pencil.restLoad(End.FRONT)) + ") ÷ " + n(cf) + " − ("
                        + n(sums.rear().sideForce()) + " − " + n(pencil.restLoad(End.REAR)) + ") ÷ " + n(cr),
                perG(sums.budget().aligningTorque()),
                "deg/g");
        pencil.step(
                "lean of the wheels",
                "c_f·λ_f − c_r·λ_r",
                camber(pencil, End.FRONT) + " − " + camber(pencil, End.REAR),
                perG(sums.budget().camber()),
                "deg/g");
        pencil.step(
                "roll steer",
                "ε_f·φs_f + ε_r·φs_r",
                n(car.front().geometry().rollSteer()) + " × "
                        + n(degrees(sums.front().suspensionRoll())) + " + "
                        + n(car.rear().geometry().rollSteer()) + " × "
                        + n(degrees(sums.rear().suspensionRoll())),
                perG(sums.budget().rollSteer()),
                "deg/g");
        pencil.step(
                "give under side force",
                "A_f·Y_f + A_r·Y_r",
                n(degrees(car.front().alignment().lateralForceSteer()) * 1e3) + " × "
                        + n(sums.front().sideForce())
                        + " ÷ 1000 + " + n(degrees(car.rear().alignment().lateralForceSteer()) * 1e3) + " × "
                        + n(sums.rear().sideForce()) + " ÷ 1000",
                perG(sums.budget().lateralForceSteer()),
                "deg/g");
        pencil.step(
                "give under aligning torque",
                "B_f·p_f·Y_f + B_r·p_r·Y_r",
                aligning(pencil, End.FRONT) + " + " + aligning(pencil, End.REAR),
                perG(sums.budget().aligningTorqueSteer()),
                "deg/g");
        pencil.step(
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
                        .collect(Collectors.joining(" + ")),
                perG(sums.budget().gradient()),
                "deg/g");
        return pencil.part("Understeer gradient in a very gentle turn", "Gillespie 1992 ch. 6; Bundorf & Leffert 1976");
    }

    /** Of both tyres of an axle at rest, N/deg. */
    private static double corneringStiffness(Car car, End end) {
        LateralLaw law = car.axle(end).tyre().lateral();
        return Dimension.CORNERING_STIFFNESS
                .metric()
                .fromSi(law.corneringStiffness(car.staticLoad(end, Side.LEFT))
                        + law.corneringStiffness(car.staticLoad(end, Side.RIGHT)));
    }

    private static double perG(double gradient) {
        return Dimension.UNDERSTEER_GRADIENT.metric().fromSi(gradient);
    }

    private static String camber(Pencil pencil, End end) {
        Axle axle = pencil.car().axle(end);
        String lean = axle instanceof Axle.Independent independent
                ? "(" + n(independent.rollCamber()) + " × "
                        + n(degrees(pencil.axle(end).suspensionRoll())) + " + "
                        + n(degrees(pencil.axle(end).tyreTilt())) + ")"
                : n(degrees(pencil.axle(end).tyreTilt()));
        return n(axle.tyre().lateral().camberThrustRatio()) + " × " + lean;
    }

    private static String aligning(Pencil pencil, End end) {
        return n(degrees(pencil.car().axle(end).alignment().aligningTorqueSteer()) * 1e3) + " × " + n(pencil.trail(end))
                + " × " + n(pencil.axle(end).sideForce()) + " ÷ 1000";
    }
}
