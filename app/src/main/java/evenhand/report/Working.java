package evenhand.report;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.handsums.HandSums;
import java.util.ArrayList;
import java.util.List;

/**
 * The hand sums with a car's numbers put in, so that they can be followed with a pocket calculator. SI and radians throughout, at a
 * lateral acceleration of 1 g; the formulas are those of {@link HandSums}.
 */
public final class Working {
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
            return Pencil.result(value) + (unit.isEmpty() ? "" : " " + unit);
        }
    }

    /** Lines that belong together, and where their formulas come from. */
    public record Part(String title, String source, List<Step> steps) {
        public Part {
            steps = List.copyOf(steps);
        }
    }

    private Working() {}

    /**
     * All of it.
     *
     * @param car at rest
     * @param sums of it, at 1 g
     */
    public static List<Part> of(Car car, HandSums sums) {
        List<Part> parts = new ArrayList<>();
        parts.add(WorkedMasses.of(new Pencil(car, sums)));
        for (End end : End.values()) {
            WorkedTyres.of(new Pencil(car, sums), end).ifPresent(parts::add);
        }
        for (End end : End.values()) {
            parts.add(WorkedStiffness.of(new Pencil(car, sums), end));
        }
        parts.add(WorkedRoll.of(new Pencil(car, sums)));
        for (End end : End.values()) {
            parts.add(WorkedTransfer.of(new Pencil(car, sums), end));
        }
        parts.add(WorkedTransfer.proof(new Pencil(car, sums)));
        parts.add(WorkedUndersteer.of(new Pencil(car, sums)));
        return parts;
    }
}
