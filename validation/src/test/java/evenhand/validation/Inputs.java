package evenhand.validation;

import com.fasterxml.jackson.databind.JsonNode;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import java.util.List;

/** The inputs of a check by name; a name carries its unit. */
record Inputs(JsonNode values) {
    boolean has(String name) {
        return values.has(name);
    }

    double number(String name) {
        JsonNode value = values.path(name);
        if (!value.isNumber()) {
            throw new IllegalArgumentException("the check has no number \"" + name + "\" among its inputs");
        }
        return value.asDouble();
    }

    /** A text such as "100.6 in", read as a person's entry is, SI. */
    double si(String name, Dimension dimension) {
        return si(values.path(name).asText(), name, dimension);
    }

    double[] sis(String name, Dimension dimension) {
        return values.path(name)
                .valueStream()
                .mapToDouble(text -> si(text.asText(), name, dimension))
                .toArray();
    }

    private static double si(String text, String name, Dimension dimension) {
        try {
            return Quantity.parse(text, dimension, Double.MAX_VALUE).si();
        } catch (QuantityException e) {
            throw new IllegalArgumentException(name + ": " + text, e);
        }
    }

    double number(String name, double otherwise) {
        return has(name) ? number(name) : otherwise;
    }

    double[] numbers(String name) {
        return listOf(values.path(name), name);
    }

    /** One list per entry. */
    List<double[]> lists(String name) {
        return values.path(name).valueStream().map(list -> listOf(list, name)).toList();
    }

    List<String> texts(String name) {
        return values.path(name).valueStream().map(JsonNode::asText).toList();
    }

    String text(String name) {
        return values.path(name).asText();
    }

    Inputs within(String name) {
        return new Inputs(values.path(name));
    }

    private static double[] listOf(JsonNode list, String name) {
        if (!list.isArray()) {
            throw new IllegalArgumentException("the check has no list \"" + name + "\" among its inputs");
        }
        return list.valueStream().mapToDouble(JsonNode::asDouble).toArray();
    }
}
