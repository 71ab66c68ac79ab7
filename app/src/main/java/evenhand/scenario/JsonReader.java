package evenhand.scenario;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import evenhand.quantity.Unseen;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads JSON into a tree that knows the place of every value. Numbers stay as they are written. */
final class JsonReader {
    /** A scenario nests to nine. */
    static final int DEEPEST = 64;

    /** So much of a key is enough to recognise it by. */
    private static final int SHOWN = 60;

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST + 2)
                    .maxStringLength((int) Source.LARGEST)
                    .maxNameLength((int) Source.LARGEST)
                    .maxNumberLength((int) Source.LARGEST)
                    .build())
            .build();

    private final Source source;
    private final JsonParser parser;
    private final Problems problems;
    private final int offset;

    private JsonReader(Source source, JsonParser parser, Problems problems, int offset) {
        this.source = source;
        this.parser = parser;
        this.problems = problems;
        this.offset = offset;
    }

    /** Too deep to go on. */
    private static final class TooDeep extends IOException {
        private static final long serialVersionUID = 1L;
    }

    /** The file's value. A second value of the same key is a problem, and the reading goes on. */
    static Optional<Json> read(Source source, Problems problems) {
        int offset = source.text().startsWith("\uFEFF") ? 1 : 0;
        String text = source.text().substring(offset);
        if (text.isBlank()) {
            problems.at(source.place("", offset, offset), "is empty; a scenario begins with { \"evenhand\": 1,");
            return Optional.empty();
        }
        try (JsonParser parser = FACTORY.createParser(text)) {
            JsonReader reader = new JsonReader(source, parser, problems, offset);
            parser.nextToken();
            Json root = reader.value("", 0);
            if (parser.nextToken() != null) {
                problems.at(reader.here(""), "has something after its end; a scenario is one object in { }");
                return Optional.empty();
            }
            return Optional.of(root);
        } catch (TooDeep deep) {
            return Optional.empty();
        } catch (JsonProcessingException wrong) {
            int at = wrong.getLocation() == null ? 0 : (int) wrong.getLocation().getCharOffset();
            at = Math.max(0, Math.min(at + offset, source.text().length()));
            problems.at(
                    source.place("", at, at),
                    "is not JSON here: " + JsonWords.of(wrong.getOriginalMessage(), source.text(), at));
            return Optional.empty();
        } catch (IOException impossible) {
            throw new UncheckedIOException("reading from memory", impossible);
        }
    }

    private Place here(String where) {
        int start = (int) parser.currentTokenLocation().getCharOffset() + offset;
        return source.place(where, start, start);
    }

    private Json value(String where, int depth) throws IOException {
        JsonToken token = parser.currentToken();
        Place start = here(where);
        if (depth > DEEPEST) {
            problems.at(start, "", "is nested deeper than " + DEEPEST + " brackets; no scenario is");
            throw new TooDeep();
        }
        return switch (token) {
            case START_OBJECT -> object(where, start, depth);
            case START_ARRAY -> array(where, start, depth);
            case VALUE_STRING -> {
                String text = parser.getText();
                yield new Json.Str(ended(start, endOfString(start.start())), text);
            }
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> {
                String text = parser.getText();
                yield new Json.Num(ended(start, start.start() + text.length()), text);
            }
            case VALUE_TRUE -> new Json.Bool(ended(start, start.start() + 4), true);
            case VALUE_FALSE -> new Json.Bool(ended(start, start.start() + 5), false);
            default -> new Json.Null(ended(start, start.start() + 4));
        };
    }

    private static Place ended(Place start, int end) {
        return new Place(start.where(), start.line(), start.column(), start.start(), end);
    }

    private int endOfString(int start) {
        int at = start + 1;
        while (source.text().charAt(at) != '"') {
            at += source.text().charAt(at) == '\\' ? 2 : 1;
        }
        return at + 1;
    }

    private Place bracketEnd(Place start) {
        return ended(start, (int) parser.currentTokenLocation().getCharOffset() + offset + 1);
    }

    private Json object(String where, Place start, int depth) throws IOException {
        Map<String, Json> members = new LinkedHashMap<>();
        Map<String, Place> keys = new LinkedHashMap<>();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String key = parser.currentName();
            String below = where.isEmpty() ? shown(key) : where + "." + shown(key);
            int from = here(below).start();
            Place at = ended(here(below), endOfString(from));
            parser.nextToken();
            Json value = value(below, depth + 1);
            if (members.containsKey(key)) {
                problems.at(at, "stands here a second time; leave out one of the two");
            } else {
                members.put(key, value);
                keys.put(key, at);
            }
        }
        return new Json.Obj(bracketEnd(start), members, keys, Map.of());
    }

    private Json array(String where, Place start, int depth) throws IOException {
        List<Json> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(value(where + "[" + items.size() + "]", depth + 1));
        }
        return new Json.Arr(bracketEnd(start), items);
    }

    /** A key on one line, and not too long for one. */
    static String shown(String text) {
        return text.codePointCount(0, text.length()) <= SHOWN
                ? Unseen.shown(text)
                : Unseen.shown(text.substring(0, text.offsetByCodePoints(0, SHOWN))) + "…";
    }
}
