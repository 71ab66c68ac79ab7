package evenhand.forms;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import evenhand.quantity.Unseen;
import evenhand.words.Units;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/** Answers for programs. Numbers are the shortest that read back the same; one that does not exist is left out. */
public final class JsonForm {
    private static final int USUAL_SIZE = 1 << 16;

    private final JsonGenerator json;

    private JsonForm(JsonGenerator json) {
        this.json = json;
    }

    /** An answer of a command, as UTF-8 with a new line at its end. */
    public static <T> byte[] write(String command, Contents<T> contents, T answer) {
        JsonFactory factory = JsonFactory.builder()
                .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
                .build();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(USUAL_SIZE);
        try (JsonGenerator json = factory.createGenerator(bytes)) {
            json.useDefaultPrettyPrinter();
            json.writeStartObject();
            json.writeNumberField("evenhand", 1);
            json.writeStringField("command", command);
            new JsonForm(json).members(contents, answer);
            json.writeEndObject();
            json.writeRaw('\n');
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        // They can only stand in texts, where their number means the same and no terminal obeys it.
        return Unseen.shown(bytes.toString(StandardCharsets.UTF_8), true).getBytes(StandardCharsets.UTF_8);
    }

    private <T> void members(Contents<T> contents, T part) throws IOException {
        for (Member<T> member : contents.members()) {
            if (member instanceof Member.Value<T> number) {
                OptionalDouble value = number.reading().apply(part, Units.METRIC);
                if (value.isPresent()) {
                    json.writeFieldName(number.key().apply(Units.METRIC));
                    number(value.getAsDouble());
                }
            } else if (member instanceof Member.Text<T> text) {
                Optional<String> value = text.reading().apply(part, Units.METRIC);
                if (value.isPresent()) {
                    json.writeStringField(text.key(), value.get());
                }
            } else if (member instanceof Member.Flag<T> flag) {
                Optional<Boolean> value = flag.reading().apply(part);
                if (value.isPresent()) {
                    json.writeBooleanField(flag.key(), value.get());
                }
            } else if (member instanceof Member.Whole<T> whole) {
                OptionalLong value = whole.reading().apply(part);
                if (value.isPresent()) {
                    json.writeNumberField(whole.key(), value.getAsLong());
                }
            } else if (member instanceof Member.Nested<T, ?> nested) {
                nested(nested, part);
            } else if (member instanceof Member.Many<T, ?> many) {
                many(many, part);
            } else if (member instanceof Member.Series<T, ?> series) {
                series(series, part);
            }
        }
    }

    private <T, P> void nested(Member.Nested<T, P> nested, T part) throws IOException {
        Optional<P> inner = nested.reading().apply(part);
        if (inner.isPresent() && nested.key().isEmpty()) {
            members(nested.contents(), inner.get());
        } else if (inner.isPresent()) {
            json.writeFieldName(nested.key());
            object(nested.contents(), inner.get());
        }
    }

    private <T, P> void many(Member.Many<T, P> many, T part) throws IOException {
        Optional<List<P>> inner = many.reading().apply(part);
        if (inner.isPresent()) {
            json.writeArrayFieldStart(many.key());
            for (P one : inner.get()) {
                object(many.contents(), one);
            }
            json.writeEndArray();
        }
    }

    private <T, E> void series(Member.Series<T, E> series, T part) throws IOException {
        Optional<List<E>> inner = series.reading().apply(part);
        if (inner.isPresent()) {
            json.writeFieldName(series.key());
            array(inner.get());
        }
    }

    private <P> void object(Contents<P> contents, P part) throws IOException {
        json.writeStartObject();
        members(contents, part);
        json.writeEndObject();
    }

    private void array(List<?> values) throws IOException {
        json.writeStartArray();
        for (Object value : values) {
            if (value instanceof Double number) {
                number(number);
            } else if (value instanceof List<?> inner) {
                array(inner);
            } else {
                json.writeString(String.valueOf(value));
            }
        }
        json.writeEndArray();
    }

    private void number(double value) throws IOException {
        json.writeNumber(value + 0.0); // + 0.0 makes -0.0 a plain zero
    }
}
