package evenhand.scenario;

import evenhand.car.End;
import evenhand.catalogue.Nearest;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.turn.Wheel;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;

/** Tolerances to build within, each by the path of a number of the car or of what follows from several: what they are can be said only once the set-ups are read. */
final class ToleranceReading {
    static final String KEY = "tolerances";

    /** Between the ends of a link that is known by points, which no number of the file is. */
    private static final Pattern LINK = Pattern.compile("(front|rear)\\.links\\.[A-Za-z]+\\.length");

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
        Map<String, Dimension> known = new LinkedHashMap<>();
        setups.forEach(setup -> setup.values().forEach(value -> known.putIfAbsent(value.path(), value.dimension())));
        for (Wheel wheel : Wheel.values()) {
            known.putIfAbsent("cornerWeights." + wheel.key(), Dimension.MASS);
        }
        known.put("crossWeight", Dimension.RATIO);
        for (End end : End.values()) {
            known.put(end.key() + ".caster", Dimension.ANGLE);
        }
        Map<String, Double> read = new HashMap<>();
        given.forEach((path, text) -> {
            String where = KEY + "." + path;
            Dimension dimension = LINK.matcher(path).matches() ? Dimension.LENGTH : known.get(path);
            if (dimension == null) {
                report.accept(
                        where,
                        "is no number of the car in any set-up; write its path from \"car\" on, such as \""
                                + Nearest.to(path, known.keySet()) + "\"");
                return;
            }
            try {
                double half = Quantity.parseTolerance(text, dimension).tolerance();
                if (half > 0) {
                    read.put(path, half);
                } else {
                    report.accept(where, "must be above zero: nothing is built exactly");
                }
            } catch (QuantityException e) {
                report.accept(where, e.message(dimension.example()));
            }
        });
        return read;
    }
}
