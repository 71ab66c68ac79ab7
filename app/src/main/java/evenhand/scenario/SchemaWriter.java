package evenhand.scenario;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import evenhand.catalogue.Content;
import evenhand.catalogue.Shape;
import evenhand.catalogue.Slot;
import evenhand.quantity.Dimension;
import evenhand.quantity.QuantityPattern;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Writes the format as JSON Schema 2020-12, from the shapes that read the file. Objects are closed; each
 * dimension has a definition of how its quantities are written. What hangs together over several keys, and how great a number
 * may be, only the reader knows. A patch has the same keys, none needed, each of which may
 * be null.
 */
public final class SchemaWriter {
    private final JsonGenerator json;
    private final Map<String, Definition> wanted = new LinkedHashMap<>();
    private final Set<Dimension> measured = EnumSet.noneOf(Dimension.class);

    private SchemaWriter(JsonGenerator json) {
        this.json = json;
    }

    /** A shape, whole or as a patch. */
    private record Definition(Shape<?> shape, Form form) {}

    private enum Form {
        WHOLE,
        PATCH
    }

    public static String schema() {
        StringWriter text = new StringWriter();
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter().withObjectIndenter(lines);
        try (JsonGenerator json = new JsonFactory().createGenerator(text).setPrettyPrinter(printer)) {
            new SchemaWriter(json).write();
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory", impossible);
        }
        return text.append('\n').toString();
    }

    private void write() throws IOException {
        json.writeStartObject();
        json.writeStringField("$schema", "https://json-schema.org/draft/2020-12/schema");
        json.writeStringField("title", "Evenhand scenario");
        body(new Definition(FileCatalogue.FILE, Form.WHOLE));
        json.writeObjectFieldStart("$defs");
        Set<String> written = new LinkedHashSet<>();
        while (written.size() < wanted.size()) {
            for (Map.Entry<String, Definition> next : List.copyOf(wanted.entrySet())) {
                if (written.add(next.getKey())) {
                    json.writeObjectFieldStart(next.getKey());
                    body(next.getValue());
                    json.writeEndObject();
                }
            }
        }
        for (Dimension dimension : measured) {
            if (!written.add(name(dimension))) {
                throw new IllegalStateException("a shape is named " + name(dimension) + ", as a dimension is");
            }
            quantity(dimension);
        }
        json.writeEndObject();
        json.writeEndObject();
    }

    private void body(Definition definition) throws IOException {
        if (definition.shape() instanceof Shape.Plain<?> plain) {
            object(plain.slots(), definition.form());
        } else if (definition.shape() instanceof Shape.Kinds<?> kinds) {
            kinds(kinds, definition.form());
        } else if (definition.shape() instanceof Shape.ByName<?> byName) {
            named(byName, definition.form());
        }
    }

    /** An object with names of the person's own; a patch takes one away by null. */
    private void named(Shape.ByName<?> shape, Form form) throws IOException {
        json.writeStringField("description", "each " + shape.meaning() + ", under a name of its own");
        json.writeStringField("type", "object");
        json.writeObjectFieldStart("propertyNames");
        json.writeStringField("pattern", Shape.ByName.PATTERN);
        json.writeEndObject();
        json.writeObjectFieldStart("additionalProperties");
        if (form == Form.PATCH) {
            json.writeArrayFieldStart("anyOf");
            json.writeStartObject();
            reference(shape.each(), form);
            json.writeEndObject();
            nothing();
            json.writeEndArray();
        } else {
            reference(shape.each(), form);
        }
        json.writeEndObject();
    }

    private void object(List<Slot<?>> slots, Form form) throws IOException {
        json.writeStringField("type", "object");
        json.writeObjectFieldStart("properties");
        properties(slots, form);
        json.writeEndObject();
        if (form == Form.WHOLE) {
            needs(slots, List.of());
        }
        json.writeBooleanField("additionalProperties", false);
    }

    private void kinds(Shape.Kinds<?> kinds, Form form) throws IOException {
        if (form == Form.PATCH) {
            patchOfAnyKind(kinds);
            return;
        }
        json.writeStringField("description", kinds.meaning());
        json.writeStringField("type", "object");
        json.writeArrayFieldStart("required");
        json.writeString(kinds.key());
        json.writeEndArray();
        json.writeArrayFieldStart("oneOf");
        for (Map.Entry<String, ? extends Shape.Plain<?>> kind : kinds.kinds().entrySet()) {
            json.writeStartObject();
            json.writeObjectFieldStart("properties");
            json.writeObjectFieldStart(kinds.key());
            json.writeStringField("const", kind.getKey());
            json.writeEndObject();
            properties(kind.getValue().slots(), form);
            json.writeEndObject();
            needs(kind.getValue().slots(), List.of(kinds.key()));
            json.writeBooleanField("additionalProperties", false);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** A patch may leave the kind away, so every kind's keys are open to it. */
    private void patchOfAnyKind(Shape.Kinds<?> kinds) throws IOException {
        Map<String, List<Slot<?>>> byKey = new LinkedHashMap<>();
        kinds.kinds()
                .values()
                .forEach(kind -> kind.slots()
                        .forEach(slot -> byKey.computeIfAbsent(slot.key(), k -> new ArrayList<>())
                                .add(slot)));
        json.writeStringField("type", "object");
        json.writeObjectFieldStart("properties");
        json.writeObjectFieldStart(kinds.key());
        words(kinds.kinds().keySet());
        json.writeEndObject();
        for (Map.Entry<String, List<Slot<?>>> slots : byKey.entrySet()) {
            json.writeObjectFieldStart(slots.getKey());
            json.writeArrayFieldStart("anyOf");
            for (Slot<?> slot : new LinkedHashSet<>(slots.getValue())) {
                json.writeStartObject();
                value(slot, Form.PATCH);
                json.writeEndObject();
            }
            nothing();
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndObject();
        json.writeBooleanField("additionalProperties", false);
    }

    private void properties(List<Slot<?>> slots, Form form) throws IOException {
        for (Slot<?> slot : slots) {
            json.writeObjectFieldStart(slot.key());
            if (!slot.meaning().isEmpty()) {
                json.writeStringField("description", slot.meaning());
            }
            if (form == Form.PATCH) {
                json.writeArrayFieldStart("anyOf");
                json.writeStartObject();
                value(slot, form);
                json.writeEndObject();
                nothing();
                json.writeEndArray();
            } else {
                value(slot, form);
            }
            json.writeEndObject();
        }
    }

    private void nothing() throws IOException {
        json.writeStartObject();
        json.writeStringField("type", "null");
        json.writeEndObject();
    }

    /** What must be there: keys outright, and pairs of which one must. */
    private void needs(List<Slot<?>> slots, List<String> more) throws IOException {
        Set<String> required = new LinkedHashSet<>(more);
        List<Slot<?>> either = new ArrayList<>();
        for (Slot<?> slot : slots) {
            if (slot.required()) {
                if (!slot.instead().isEmpty()) {
                    either.add(slot);
                } else {
                    required.add(slot.key());
                }
            }
        }
        if (!required.isEmpty()) {
            json.writeArrayFieldStart("required");
            for (String key : required) {
                json.writeString(key);
            }
            json.writeEndArray();
        }
        if (!either.isEmpty()) {
            json.writeArrayFieldStart("allOf");
            for (Slot<?> slot : either) {
                json.writeStartObject();
                boolean together = slot.instead().stream().allMatch(Slot.Instead::both);
                json.writeArrayFieldStart(together ? "anyOf" : "oneOf");
                List<String> keys = new ArrayList<>(List.of(slot.key()));
                slot.instead().forEach(other -> keys.add(other.slot().key()));
                for (String key : keys) {
                    json.writeStartObject();
                    json.writeArrayFieldStart("required");
                    json.writeString(key);
                    json.writeEndArray();
                    json.writeEndObject();
                }
                json.writeEndArray();
                json.writeEndObject();
            }
            json.writeEndArray();
        }
    }

    /** What a slot holds, and how far a bare ratio may go. */
    private void value(Slot<?> slot, Form form) throws IOException {
        content(slot.content(), form);
        if (slot.content() instanceof Content.Measure measure && measure.dimension() == Dimension.RATIO) {
            if (Double.isFinite(slot.bounds().low())) {
                json.writeNumberField("minimum", slot.bounds().low());
            }
            if (Double.isFinite(slot.bounds().high())) {
                json.writeNumberField("maximum", slot.bounds().high());
            }
        }
    }

    private void content(Content<?> content, Form form) throws IOException {
        if (content instanceof Content.Measure measure) {
            measure(measure.dimension(), measure.bare());
        } else if (content instanceof Content.Tolerance tolerance) {
            json.writeStringField("type", "string");
            json.writeStringField("pattern", QuantityPattern.ofTolerance(tolerance.dimension()));
        } else if (content instanceof Content.Choice<?> choice) {
            words(choice.words().keySet());
        } else if (content instanceof Content.Text) {
            json.writeStringField("type", "string");
        } else if (content instanceof Content.Texts) {
            json.writeStringField("type", "object");
            json.writeObjectFieldStart("additionalProperties");
            json.writeStringField("type", "string");
            json.writeEndObject();
        } else if (content instanceof Content.Points<?> points) {
            points(points.of());
        } else if (content instanceof Content.Numbers numbers) {
            json.writeStringField("type", "array");
            json.writeNumberField("minItems", Math.max(1, numbers.count()));
            if (numbers.count() > 0) {
                json.writeNumberField("maxItems", numbers.count());
            }
            json.writeObjectFieldStart("items");
            measure(numbers.dimension(), numbers.dimension() == Dimension.RATIO);
            json.writeEndObject();
        } else if (content instanceof Content.Names) {
            json.writeStringField("type", "array");
            json.writeNumberField("minItems", 1);
            json.writeObjectFieldStart("items");
            json.writeStringField("type", "string");
            json.writeEndObject();
        } else if (content instanceof Content.Shares) {
            shares();
        } else if (content instanceof Content.WordOr<?, ?> either) {
            json.writeArrayFieldStart("anyOf");
            json.writeStartObject();
            words(either.words().keySet());
            json.writeEndObject();
            json.writeStartObject();
            content(either.otherwise(), form);
            json.writeEndObject();
            json.writeEndArray();
        } else if (content instanceof Content.Flag) {
            json.writeStringField("type", "boolean");
        } else if (content instanceof Content.Group<?> group) {
            reference(group.shape(), form);
        } else if (content instanceof Content.Groups<?> groups) {
            json.writeStringField("type", "array");
            json.writeObjectFieldStart("items");
            reference(groups.shape(), Form.WHOLE); // a patch replaces lists whole
            json.writeEndObject();
        } else if (content instanceof Content.Changes<?> changes) {
            reference(changes.shape(), Form.PATCH);
        } else if (content instanceof Content.Version version) {
            json.writeNumberField("const", version.known());
        }
    }

    /** Pairs of a name and a number. */
    private void shares() throws IOException {
        json.writeStringField("type", "array");
        json.writeNumberField("minItems", 1);
        json.writeObjectFieldStart("items");
        json.writeStringField("type", "array");
        json.writeArrayFieldStart("prefixItems");
        json.writeStartObject();
        json.writeStringField("type", "string");
        json.writeEndObject();
        json.writeStartObject();
        measure(Dimension.RATIO, true);
        json.writeEndObject();
        json.writeEndArray();
        json.writeBooleanField("items", false);
        json.writeNumberField("minItems", 2);
        json.writeEndObject();
    }

    private void reference(Shape<?> shape, Form form) throws IOException {
        String name = shape.name() + (form == Form.PATCH ? "Changes" : "");
        Definition before = wanted.putIfAbsent(name, new Definition(shape, form));
        if (before != null && before.shape() != shape) {
            throw new IllegalStateException("two shapes are named " + name);
        }
        json.writeStringField("$ref", "#/$defs/" + name);
    }

    private void words(Set<String> words) throws IOException {
        json.writeArrayFieldStart("enum");
        for (String word : words) {
            json.writeString(word);
        }
        json.writeEndArray();
    }

    /** A quantity of its dimension; where the number may stand alone, that too. */
    private void measure(Dimension dimension, boolean bare) throws IOException {
        measured.add(dimension);
        if (!bare || dimension == Dimension.RATIO) {
            json.writeStringField("$ref", "#/$defs/" + name(dimension));
            return;
        }
        json.writeArrayFieldStart("anyOf");
        json.writeStartObject();
        json.writeStringField("type", "number");
        json.writeEndObject();
        json.writeStartObject();
        json.writeStringField("$ref", "#/$defs/" + name(dimension));
        json.writeEndObject();
        json.writeEndArray();
    }

    private void quantity(Dimension dimension) throws IOException {
        json.writeObjectFieldStart(name(dimension));
        json.writeStringField("description", dimension.words() + ", with a tolerance if there is one");
        if (dimension == Dimension.RATIO) {
            json.writeArrayFieldStart("type");
            json.writeString("number");
            json.writeString("string");
            json.writeEndArray();
        } else {
            json.writeStringField("type", "string");
        }
        json.writeStringField("pattern", QuantityPattern.of(dimension));
        json.writeArrayFieldStart("examples");
        for (String example : dimension.example().replace("\"", "").split(" or ", -1)) {
            json.writeString(example);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    /** {@code rollStiffness} of ROLL_STIFFNESS. */
    private static String name(Dimension dimension) {
        return Pattern.compile("_(.)")
                .matcher(dimension.name().toLowerCase(Locale.ROOT))
                .replaceAll(letter -> letter.group(1).toUpperCase(Locale.ROOT));
    }

    private void points(Content.CurveOf of) throws IOException {
        json.writeStringField("type", "array");
        if (of.mayBeUnmeasured()) {
            json.writeObjectFieldStart("not"); // no point or two, but one point is no curve
            json.writeNumberField("minItems", 1);
            json.writeNumberField("maxItems", 1);
            json.writeEndObject();
        } else {
            json.writeNumberField("minItems", of.fewest());
        }
        json.writeObjectFieldStart("items");
        json.writeStringField("type", "array");
        json.writeArrayFieldStart("prefixItems");
        for (Dimension dimension : List.of(of.at(), of.up())) {
            json.writeStartObject();
            measure(dimension, false);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeBooleanField("items", false);
        json.writeNumberField("minItems", 2);
        json.writeEndObject();
    }
}
