package evenhand.validation;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What the model answered, by the names that a check expects; a single number is a list of one. */
final class Computed {
    private final Map<String, double[]> values = new LinkedHashMap<>();

    Computed with(String name, double... numbers) {
        values.put(name, numbers);
        return this;
    }

    /** A table, row after row. */
    Computed with(String name, List<double[]> rows) {
        return with(name, rows.stream().flatMapToDouble(Arrays::stream).toArray());
    }

    boolean has(String name) {
        return values.containsKey(name);
    }

    double[] of(String name) {
        return values.get(name);
    }
}
