package evenhand.scenario;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.catalogue.Adjustable;
import evenhand.quantity.Quantity;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Slips of the plumb line and the rule: points that no car has, and sides that differ by more than was said to be sure. */
final class PointChecks {
    private static final String RIGHT = ".right.";
    private static final String OUT = ".out";

    /** Nearer to the middle than this the points of a pair are one, m. */
    private static final double MIDDLE = 0.005;

    /** Further out than the middle of the tyre by this, a point stands in the open air, m. */
    private static final double HALF_A_TYRE = 0.10;

    /** What thread is left differs from side to side on any car that was set on scales. */
    private static final String PERCH = ".perch.";

    private PointChecks() {}

    /** What is unusual, and where, by path. */
    static Map<String, String> of(Car car, List<Adjustable> values) {
        Map<String, String> found = new LinkedHashMap<>();
        Map<String, Adjustable> byPath = values.stream()
                .filter(value -> value.origin() == Adjustable.Origin.GIVEN)
                .collect(Collectors.toMap(Adjustable::path, Function.identity(), (one, other) -> one));
        for (Adjustable value : byPath.values().stream()
                .sorted((one, other) -> one.path().compareTo(other.path()))
                .toList()) {
            Adjustable left = byPath.get(value.path().replace(RIGHT, "."));
            if (value.path().contains(RIGHT) && !value.path().contains(PERCH) && left != null) {
                sides(left, value, found);
            }
            if (value.path().endsWith(OUT)) {
                out(car, value, found);
            }
        }
        return found;
    }

    private static void sides(Adjustable left, Adjustable right, Map<String, String> found) {
        double difference = right.si() - left.si();
        double sure = Math.max(left.tolerance(), right.tolerance());
        if (Math.abs(difference) > sure) {
            found.put(
                    right.path(),
                    "is " + text(Math.abs(difference), right) + (difference > 0 ? " more" : " less")
                            + " than on the left, where the tolerance is " + text(sure, right)
                            + "; if the car is meant to be alike, measure again: mirrored it would be "
                            + text(left.si(), right));
        }
    }

    private static void out(Car car, Adjustable value, Map<String, String> found) {
        for (End end : End.values()) {
            if (!value.path().startsWith(end.key() + ".")) {
                continue;
            }
            double half = car.axle(end).track() / 2;
            if (value.si() < MIDDLE) {
                found.put(value.path(), "stands on the middle of the car, where left and right would be one");
            } else if (value.si() > half + HALF_A_TYRE) {
                found.put(
                        value.path(),
                        "stands outside the tyre, whose middle is " + text(half, value) + " out; was the whole width"
                                + " measured, or the track?");
            }
        }
    }

    private static String text(double si, Adjustable value) {
        double number = new BigDecimal(value.unit().fromSi(si))
                .round(new MathContext(4))
                .doubleValue();
        return Quantity.of(value.unit().toSi(number), value.unit()).text();
    }
}
