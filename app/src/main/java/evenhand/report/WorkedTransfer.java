package evenhand.report;

import static evenhand.report.Pencil.letter;
import static evenhand.report.Pencil.n;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Weights;
import evenhand.handsums.HandSums;
import evenhand.handsums.HandSums.AxleSums;
import evenhand.words.EventWords;

/** Load transfer of the axles, worked through, and the proof that it holds what turns the car over. */
final class WorkedTransfer {
    private static final double G = Weights.GRAVITY;

    private WorkedTransfer() {}

    static Working.Part of(Pencil pencil, End end) {
        Car car = pencil.car();
        HandSums sums = pencil.sums();
        AxleSums of = pencil.axle(end);
        String i = letter(end);
        pencil.step(
                "moment by springs and bar",
                "M_" + i + " = k·(φ − G ÷ Kt)",
                n(of.rollStiffness()) + " × (" + n(sums.rollAngle()) + " − " + n(pencil.outside(end)) + " ÷ "
                        + n(of.tyreRollStiffnessLeft()) + ")",
                of.elasticMoment(),
                "N·m");
        pencil.step(
                "tilt on the tyres",
                "ψ_" + i + " = (M + G) ÷ Kt",
                "(" + n(of.elasticMoment()) + " + " + n(pencil.outside(end)) + ") ÷ " + n(of.tyreRollStiffnessLeft()),
                of.tyreTilt(),
                "rad");
        pencil.step(
                "roll of the suspension",
                "φs_" + i + " = φ − ψ",
                n(sums.rollAngle()) + " − " + n(of.tyreTilt()),
                of.suspensionRoll(),
                "rad");
        pencil.step(
                "load that the outer wheel gains",
                "ΔFz_" + i + " = Kz·ψ ÷ t",
                n(of.tyreRollStiffness()) + " × " + n(of.tyreTilt()) + " ÷ "
                        + n(car.axle(end).track()),
                of.lateralLoadTransfer(),
                "N");
        return pencil.part("Load transfer at 1 g, " + EventWords.end(end), "Milliken & Milliken 1995 ch. 18");
    }

    static Working.Part proof(Pencil pencil) {
        Car car = pencil.car();
        HandSums sums = pencil.sums();
        double held = sums.momentOfLoadTransfers(car);
        pencil.step(
                "moment of the load transfers",
                "ΔFz_f·t_f + ΔFz_r·t_r",
                n(sums.front().lateralLoadTransfer()) + " × " + n(car.front().track()) + " + "
                        + n(sums.rear().lateralLoadTransfer()) + " × "
                        + n(car.rear().track()),
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
            numbers.append(n(axle.geometry().rollCentreHeight()))
                    .append(" + ")
                    .append(n(axle.unsprung().mass()));
            numbers.append(" × ")
                    .append(n(axle.unsprung().height()))
                    .append(") × ")
                    .append(n(pencil.axle(end).tyreTilt()));
        }
        pencil.step(
                "moment that turns the car over",
                "g·(ms·hs + Σ mu·hu + ms·H·φ + Σ (ms·s·z + mu·hu)·ψ)",
                numbers.append(')').toString(),
                sums.overturningMoment(car),
                "N·m");
        pencil.step(
                "the front tyres' share of the load transfer",
                "ΔFz_f ÷ (ΔFz_f + ΔFz_r)",
                n(sums.front().lateralLoadTransfer()) + " ÷ (" + n(sums.front().lateralLoadTransfer()) + " + "
                        + n(sums.rear().lateralLoadTransfer()) + ")",
                sums.frontLoadTransferShare(),
                "");
        return pencil.part("Proof", "all load transfers together hold what turns the car over");
    }
}
