package evenhand.window.question;

import evenhand.answers.Answers;
import evenhand.answers.Judged;
import evenhand.answers.Trial;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.quantity.Quantity;
import evenhand.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * One adjustment moved up and down by its usual step, and what the car answers.
 *
 * @param now where it stands, SI
 * @param points rising; those that turn
 */
record Sweep(double now, double step, List<Point> points) {
    private static final int STEPS = 8;

    record Point(double si, Answers answers) {}

    Sweep {
        points = List.copyOf(points);
    }

    static Sweep of(Entries car, Adjustable value, Trial trial) {
        List<Point> points = new ArrayList<>();
        for (int i = -STEPS; i <= STEPS; i++) {
            double si = value.si() + i * value.step();
            if (value.slot().bounds().holds(si)) {
                Catalogue.build(Catalogue.with(car, value.path(), si))
                        .value()
                        .map(trial::ask)
                        .filter(answers -> answers.noTurn().isEmpty())
                        .ifPresent(answers -> points.add(new Point(si, answers)));
            }
        }
        return new Sweep(value.si(), value.step(), points);
    }

    /** How much a figure moves per unit of the adjustment where it stands, SI, over one step up and down. */
    Optional<Double> slope(Judged judged) {
        OptionalDouble below = at(judged, now - step);
        OptionalDouble above = at(judged, now + step);
        return below.isPresent() && above.isPresent()
                ? Optional.of((above.getAsDouble() - below.getAsDouble()) / (2 * step))
                : Optional.empty();
    }

    private OptionalDouble at(Judged judged, double si) {
        return points.stream()
                .filter(point -> Math.abs(point.si() - si) < step / 1000)
                .map(point -> judged.si(point.answers()))
                .findFirst()
                .orElse(OptionalDouble.empty());
    }

    /** Where a figure has a value, nearest to where the adjustment stands; a straight line between two points of the sweep. */
    Optional<Double> where(Judged judged, double wished) {
        Optional<Double> nearest = Optional.empty();
        for (int i = 1; i < points.size(); i++) {
            Point one = points.get(i - 1);
            Point other = points.get(i);
            OptionalDouble from = judged.si(one.answers());
            OptionalDouble to = judged.si(other.answers());
            if (from.isPresent()
                    && to.isPresent()
                    && (from.getAsDouble() - wished) * (to.getAsDouble() - wished) <= 0
                    && from.getAsDouble() != to.getAsDouble()) {
                double part = (wished - from.getAsDouble()) / (to.getAsDouble() - from.getAsDouble());
                double si = one.si() + part * (other.si() - one.si());
                if (nearest.isEmpty() || Math.abs(si - now) < Math.abs(nearest.get() - now)) {
                    nearest = Optional.of(si);
                }
            }
        }
        return nearest;
    }

    /** One number of each point that has the figure. */
    double[] values(Judged judged, ToDoubleFunction<Point> number) {
        return points.stream()
                .filter(point -> judged.si(point.answers()).isPresent())
                .mapToDouble(number)
                .toArray();
    }

    /** So many of the points, evenly, the first and the last among them. */
    List<Point> someOf(int count) {
        List<Point> some = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Point point = points.get(Math.round((float) i * (points.size() - 1) / (count - 1)));
            if (!some.contains(point)) {
                some.add(point);
            }
        }
        return some;
    }

    /** A value as a shop would set it: to a tenth of the usual step. */
    static String rounded(Adjustable value, double si) {
        Unit unit = value.unit();
        double grain = Math.pow(10, Math.floor(Math.log10(unit.fromSi(value.step())) - 1 + 1e-9));
        double digits = Math.max(0, -Math.log10(grain));
        double number = Math.round(unit.fromSi(si) / grain) * grain;
        double clean = new java.math.BigDecimal(number)
                .setScale((int) Math.round(digits), java.math.RoundingMode.HALF_EVEN)
                .doubleValue();
        return Quantity.of(unit.toSi(clean), unit).text();
    }
}
