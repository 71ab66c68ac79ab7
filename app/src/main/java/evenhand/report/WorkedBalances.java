package evenhand.report;

import static evenhand.report.Pencil.n;

import evenhand.car.Air;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.Weights;
import evenhand.turn.Direction;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import evenhand.turn.WheelState;
import evenhand.words.EventWords;

/**
 * The balances of the whole car in one state of its turn, with the numbers put in that the full equilibrium found: what is left over
 * shows how well it was solved. Axes of the car, ISO 8855.
 */
final class WorkedBalances {
    private WorkedBalances() {}

    /**
     * Of one state.
     *
     * @param pace in words: "at 0.5 g", "at the limit"
     */
    static Working.Part of(Pencil pencil, TurnRow row, double radius, Direction way, String pace) {
        Car car = pencil.car();
        double m = car.weights().mass();
        double a = way == Direction.LEFT ? row.lateralAcceleration() : -row.lateralAcceleration();
        double cos = Math.cos(row.sideslip());
        double sin = Math.sin(row.sideslip());
        double drag = row.airDrag();
        pencil.left(
                "along the car",
                "ΣFx − D·cos β + m·ac·sin β",
                sum(row, End.FRONT, WheelState::longitudinalForce) + " + "
                        + sum(row, End.REAR, WheelState::longitudinalForce) + " − " + n(drag) + " × " + n(cos) + " + "
                        + n(m) + " × " + n(a) + " × " + n(sin),
                total(row, WheelState::longitudinalForce) - drag * cos + m * a * sin,
                "N");
        pencil.left(
                "across the car",
                "ΣFy − D·sin β − m·ac·cos β",
                sum(row, End.FRONT, WheelState::lateralForce) + " + " + sum(row, End.REAR, WheelState::lateralForce)
                        + " − " + n(drag) + " × " + n(sin) + " − " + n(m) + " × " + n(a) + " × " + n(cos),
                total(row, WheelState::lateralForce) - drag * sin - m * a * cos,
                "N");
        pencil.left(
                "round the upright axis",
                "a·ΣFy_f − b·ΣFy_r − Σ ½·t·(Fx_left − Fx_right) + y·ΣFx + ΣMz",
                yawNumbers(car, row),
                yaw(car, row),
                "N·m");
        double pressure = Air.DENSITY / 2 * row.lateralAcceleration() * radius;
        double transfer = (drag * cos * car.air().dragHeight().orElse(car.cgHeight()) - m * a * sin * car.cgHeight())
                / car.wheelbase();
        String shifted = "(" + n(drag) + " × " + n(cos) + " × "
                + n(car.air().dragHeight().orElse(car.cgHeight())) + " − " + n(m) + " × " + n(a) + " × " + n(sin)
                + " × " + n(car.cgHeight()) + ") ÷ " + n(car.wheelbase());
        for (End end : End.values()) {
            boolean front = end == End.FRONT;
            double lift =
                    pressure * (front ? car.air().frontLiftArea() : car.air().rearLiftArea());
            double share = (front ? car.wheelbase() - car.cgBehindFront() : car.cgBehindFront()) / car.wheelbase();
            double left = wheel(row, end, true).load()
                    + wheel(row, end, false).load()
                    - m * Weights.GRAVITY * share
                    + (front ? transfer : -transfer)
                    + lift;
            pencil.left(
                    "upright, " + EventWords.end(end) + " axle",
                    "ΣFz − m·g·" + (front ? "b ÷ L + Q" : "a ÷ L − Q") + " + lift",
                    sum(row, end, WheelState::load) + " − " + n(m) + " × " + n(Weights.GRAVITY) + " × " + n(share)
                            + (front ? " + " : " − ") + shifted + " + " + n(lift),
                    left,
                    "N");
        }
        return pencil.part(
                "What is left over " + pace + ", turning " + way.key(),
                "equilibrium of the whole car, its loads and forces as found; Milliken & Milliken 1995 ch. 5 (0: less than "
                        + Pencil.result(Pencil.NOTHING) + ", worked out with all digits)");
    }

    private interface Of {
        double value(WheelState wheel);
    }

    private static WheelState wheel(TurnRow row, End end, boolean left) {
        return row.wheel(Wheel.of(end, left ? Side.LEFT : Side.RIGHT));
    }

    private static double total(TurnRow row, Of what) {
        return row.wheels().stream().mapToDouble(what::value).sum();
    }

    private static String sum(TurnRow row, End end, Of what) {
        return n(what.value(wheel(row, end, true))) + " + " + n(what.value(wheel(row, end, false)));
    }

    private static double yaw(Car car, TurnRow row) {
        double yaw = total(row, WheelState::aligningMoment)
                + car.cgLeftOfMiddle() * total(row, WheelState::longitudinalForce);
        for (End end : End.values()) {
            WheelState left = wheel(row, end, true);
            WheelState right = wheel(row, end, false);
            yaw += arm(car, end) * (left.lateralForce() + right.lateralForce())
                    - car.axle(end).track() / 2 * (left.longitudinalForce() - right.longitudinalForce());
        }
        return yaw;
    }

    private static double arm(Car car, End end) {
        return end == End.FRONT ? car.cgBehindFront() : car.cgBehindFront() - car.wheelbase();
    }

    private static String yawNumbers(Car car, TurnRow row) {
        StringBuilder numbers = new StringBuilder();
        for (End end : End.values()) {
            numbers.append(end == End.FRONT ? "" : " − ")
                    .append(n(Math.abs(arm(car, end))))
                    .append(" × (")
                    .append(sum(row, end, WheelState::lateralForce))
                    .append(")");
        }
        for (End end : End.values()) {
            numbers.append(" − 0.5 × ")
                    .append(n(car.axle(end).track()))
                    .append(" × (")
                    .append(n(wheel(row, end, true).longitudinalForce()))
                    .append(" − ")
                    .append(n(wheel(row, end, false).longitudinalForce()))
                    .append(")");
        }
        return numbers.append(" + ")
                .append(n(car.cgLeftOfMiddle()))
                .append(" × (")
                .append(sum(row, End.FRONT, WheelState::longitudinalForce))
                .append(" + ")
                .append(sum(row, End.REAR, WheelState::longitudinalForce))
                .append(") + ")
                .append(sum(row, End.FRONT, WheelState::aligningMoment))
                .append(" + ")
                .append(sum(row, End.REAR, WheelState::aligningMoment))
                .toString();
    }
}
