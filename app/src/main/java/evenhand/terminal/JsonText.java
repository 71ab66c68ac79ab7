package evenhand.terminal;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import evenhand.answers.Figure;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.OptionalDouble;

/** Answers for programs. Numbers are the shortest that read back the same; one that does not exist is left out. */
final class JsonText {
    private static final int USUAL_SIZE = 1 << 16;

    /** What writes the inside of an answer. */
    interface Content {
        void write(JsonGenerator json) throws IOException;
    }

    private JsonText() {}

    /** An answer of a command, as UTF-8 with a new line at its end. */
    static byte[] of(String command, Content content) {
        JsonFactory factory = JsonFactory.builder()
                .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
                .build();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(USUAL_SIZE);
        try (JsonGenerator json = factory.createGenerator(bytes)) {
            json.useDefaultPrettyPrinter();
            json.writeStartObject();
            json.writeNumberField("evenhand", 1);
            json.writeStringField("command", command);
            content.write(json);
            json.writeEndObject();
            json.writeRaw('\n');
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /** Figures by their keys. */
    static <T> void figures(JsonGenerator json, List<Figure<T>> figures, T part) throws IOException {
        for (Figure<T> figure : figures) {
            number(json, figure.key(), figure.value(part));
        }
    }

    /** An object of figures that share the unit in its key. */
    static <T> void budget(JsonGenerator json, String key, List<Figure<T>> figures, T part) throws IOException {
        json.writeObjectFieldStart(key);
        for (Figure<T> figure : figures) {
            number(json, figure.name(), figure.value(part));
        }
        json.writeEndObject();
    }

    static <T> void figure(JsonGenerator json, Figure<T> figure, T part) throws IOException {
        number(json, figure.key(), figure.value(part));
    }

    static void number(JsonGenerator json, String key, OptionalDouble value) throws IOException {
        if (value.isPresent()) {
            json.writeNumberField(key, value.getAsDouble() + 0.0); // + 0.0 makes -0.0 a plain zero
        }
    }
}
