package evenhand.validation;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One entry of {@code validation/checks/*.json}.
 *
 * @param file that it stands in
 * @param entry the entry itself
 */
record Check(String file, JsonNode entry) {
    /** How the expected values are known. */
    static final List<String> WAYS_OF_KNOWING = List.of("read", "derived", "from memory");

    /** One expected number beside what the model gave. */
    record Comparison(Check check, String name, double expected, double computed, double allowed) {
        double error() {
            return computed - expected;
        }

        String text() {
            return name + ": expected " + expected + ", computed " + computed + ", allowed " + allowed;
        }

        boolean holds() {
            return Math.abs(error()) <= allowed;
        }
    }

    String id() {
        return text("id");
    }

    String what() {
        return text("what");
    }

    String source() {
        return text("source");
    }

    String known() {
        return text("known");
    }

    String evaluator() {
        return text("evaluator");
    }

    String note() {
        return text("note");
    }

    String reasonOfTolerance() {
        return entry.path("tolerance").path("because").asText();
    }

    /** Asks the model, and sets each expected number beside its answer. */
    List<Comparison> compare() {
        Evaluator evaluator = Evaluators.BY_NAME.get(evaluator());
        assertThat(evaluator).as("evaluator \"%s\"", evaluator()).isNotNull();
        Computed computed = evaluator.of(new Inputs(entry.path("inputs")));
        List<Comparison> comparisons = new ArrayList<>();
        entry.path("expected").properties().forEach(expected -> {
            String name = expected.getKey();
            assertThat(computed.has(name)).as("computed: %s", name).isTrue();
            double[] wanted = flat(expected.getValue());
            double[] found = computed.of(name);
            assertThat(found).as("count of %s", name).hasSameSizeAs(wanted);
            for (int i = 0; i < wanted.length; i++) {
                String shown = wanted.length == 1 ? name : name + "[" + i + "]";
                comparisons.add(new Comparison(this, shown, wanted[i], found[i], allowed(name, wanted[i])));
            }
        });
        return comparisons;
    }

    private double allowed(String name, double expected) {
        JsonNode tolerance = entry.path("tolerance");
        JsonNode own = tolerance.has(name) ? tolerance.path(name) : tolerance;
        return Math.max(own.path("abs").asDouble(), own.path("rel").asDouble() * Math.abs(expected));
    }

    private static double[] flat(JsonNode expected) {
        if (!expected.isArray()) {
            return new double[] {expected.asDouble()};
        }
        return expected.valueStream()
                .flatMapToDouble(part -> Arrays.stream(flat(part)))
                .toArray();
    }

    private String text(String name) {
        return entry.path(name).asText();
    }
}
