package evenhand.window.desk;

import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.scenario.ScenarioWriter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is noted at the side of the circle and not yet put down: one reading of a road test. Immutable.
 *
 * @param typed texts by key, as typed
 */
public record Noted(Kind kind, Map<String, String> typed) {
    /** What can be read. */
    public enum Kind {
        STEADY("a steady turn", "readings"),
        LIMIT("an end that went", "limits"),
        BOUNCE("a bounced end", "bounce");

        private final String words;
        private final String list;

        Kind(String words, String list) {
            this.words = words;
            this.list = list;
        }

        public String words() {
            return words;
        }

        /** Key of the list that it stands in. */
        String list() {
            return list;
        }

        public List<Field> fields() {
            return switch (this) {
                case STEADY -> STEADY_TURN;
                case LIMIT -> END_THAT_WENT;
                case BOUNCE -> BOUNCED_END;
            };
        }
    }

    private static final Field TURNING = Field.choice("turn", "turning", "left", "right");
    private static final Field LAPS = Field.number("laps", "laps", "", Dimension.RATIO, true);
    private static final Field TIME = Field.number("time", "time", "s", Dimension.TIME, true);
    private static final List<Field> STEADY_TURN = List.of(
            TURNING,
            LAPS,
            TIME,
            Field.number("steeringWheel", "steering wheel", "deg", Dimension.ANGLE, false),
            Field.number("roll", "lean", "deg", Dimension.ANGLE, false));
    private static final List<Field> END_THAT_WENT =
            List.of(TURNING, LAPS, TIME, Field.choice("firstAxle", "end that went", "front", "rear"));
    private static final List<Field> BOUNCED_END = List.of(
            Field.choice("axle", "end", "front", "rear"),
            Field.number("frequency", "swings in a second", "Hz", Dimension.FREQUENCY, false),
            Field.number("nextSwing", "next swing", "", Dimension.RATIO, false));

    /**
     * Something that is noted.
     *
     * @param unit that stands behind the field, for a bare number
     * @param choices where nothing is typed
     */
    public record Field(
            String key,
            String words,
            String unit,
            Optional<Dimension> dimension,
            boolean needed,
            List<String> choices) {
        public Field {
            choices = List.copyOf(choices);
        }

        private static Field number(String key, String words, String unit, Dimension dimension, boolean needed) {
            return new Field(key, words, unit, Optional.of(dimension), needed, List.of());
        }

        private static Field choice(String key, String words, String one, String other) {
            return new Field(key, words, "", Optional.empty(), true, List.of(one, other));
        }

        /** A bare number, or one with a tolerance alone, with its unit behind it. */
        private String complete(String text) {
            String whole = text.strip().replace("+-", "±").replace("+/-", "±");
            if (unit.isEmpty() || !whole.matches("[-+−]?[\\d.]+(\\s*±\\s*[\\d.]+)?")) {
                return whole;
            }
            int tolerance = whole.indexOf('±');
            return tolerance < 0
                    ? whole + " " + unit
                    : whole.substring(0, tolerance).strip() + " " + unit + " ± "
                            + whole.substring(tolerance + 1).strip() + " " + unit;
        }
    }

    /** Nothing noted yet, of three laps, which are usual. */
    public static final Noted NOTHING = new Noted(Kind.STEADY, Map.of("turn", "left", "laps", "3"));

    public Noted {
        typed = Collections.unmodifiableMap(new LinkedHashMap<>(typed));
    }

    /** With another text in a field. */
    public Noted with(String key, String text) {
        Map<String, String> next = new LinkedHashMap<>(typed);
        next.put(key, text);
        return new Noted(kind, next);
    }

    /** Another kind of reading; what both have stays, but as many laps as are usual for it. */
    public Noted as(Kind next) {
        Map<String, String> kept = new LinkedHashMap<>();
        for (Field field : next.fields()) {
            Optional<String> own = field.key().equals("laps")
                    ? Optional.of(next == Kind.LIMIT ? "1" : "3")
                    : Optional.ofNullable(typed.get(field.key()));
            own.or(() -> field.choices().stream().findFirst()).ifPresent(text -> kept.put(field.key(), text));
        }
        return new Noted(next, kept);
    }

    /** What stays for the next reading of the kind: which way, and how many laps. */
    public Noted next() {
        Map<String, String> kept = new LinkedHashMap<>(typed);
        kept.keySet()
                .removeIf(key -> kind.fields().stream()
                        .anyMatch(field ->
                                field.key().equals(key) && field.choices().isEmpty() && !key.equals("laps")));
        return new Noted(kind, kept);
    }

    /** What stands before a value in a line: "lean "; a word that says what it is needs nothing. */
    static String label(Kind kind, String key) {
        return switch (key) {
            case "turn", "axle", "firstAxle" -> key.equals("firstAxle") ? "first went the " : "";
            default ->
                kind.fields().stream()
                        .filter(field -> field.key().equals(key))
                        .findFirst()
                        .map(field -> field.words() + " ")
                        .orElse(key + " ");
        };
    }

    public String text(Field field) {
        return typed.getOrDefault(field.key(), "");
    }

    /** What is wrong with what was typed in a field; nothing where it is sound or empty. */
    public Optional<String> problem(Field field) {
        String text = text(field);
        if (text.isBlank() || field.dimension().isEmpty()) {
            return Optional.empty();
        }
        try {
            Quantity.parse(field.complete(text), field.dimension().get());
            return Optional.empty();
        } catch (QuantityException wrong) {
            return Optional.of(String.valueOf(wrong.getMessage()));
        }
    }

    /** Whether enough is typed, all of it sound, to be put down. */
    public boolean isWhole() {
        boolean sound = kind.fields().stream().allMatch(field -> problem(field).isEmpty());
        boolean needed = kind.fields().stream()
                .allMatch(field -> !field.needed() || !text(field).isBlank());
        boolean read = kind == Kind.LIMIT
                || kind.fields().stream()
                        .anyMatch(field -> !field.needed() && !text(field).isBlank());
        return sound && needed && read;
    }

    /** As the file writes it. */
    public String json() {
        List<String> members = new ArrayList<>();
        for (Field field : kind.fields()) {
            String text = text(field);
            if (!text.isBlank()) {
                members.add(ScenarioWriter.quoted(field.key()) + ": "
                        + (field.dimension().isPresent()
                                ? ScenarioWriter.scalar(field.complete(text))
                                : ScenarioWriter.quoted(text)));
            }
        }
        return "{" + String.join(", ", members) + "}";
    }
}
