package evenhand.scenario;

import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Nearest;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;

/** Tolerances to build within, each by the path of a number of the car: what they are can be said only once the set-ups are read. */
final class ToleranceReading {
    static final String KEY = "tolerances";

    private ToleranceReading() {}

    /**
     * Half-widths by path, SI.
     *
     * @param given as they stand in the file
     * @param report takes the path in the file and what is wrong there
     */
    static Map<String, Double> of(Map<String, String> given, List<Setup> setups, BiConsumer<String, String> report) {
        if (given.isEmpty()) {
            return Map.of();
        }
        Map<String, Adjustable> numbers = new LinkedHashMap<>();
        setups.forEach(setup -> setup.values().forEach(value -> numbers.putIfAbsent(value.path(), value)));
        Map<String, Double> read = new HashMap<>();
        given.forEach((path, text) -> {
            String where = KEY + "." + path;
            Adjustable number = numbers.get(path);
            if (number == null) {
                report.accept(
                        where,
                        "is no number of the car in any set-up; write its path from \"car\" on, such as \""
                                + Nearest.to(path, numbers.keySet()) + "\"");
                return;
            }
            try {
                double half = Quantity.parseTolerance(text, number.dimension()).tolerance();
                if (half > 0) {
                    read.put(path, half);
                } else {
                    report.accept(where, "must be above zero: nothing is built exactly");
                }
            } catch (QuantityException e) {
                report.accept(where, e.message(number.dimension().example()));
            }
        });
        return read;
    }
}
