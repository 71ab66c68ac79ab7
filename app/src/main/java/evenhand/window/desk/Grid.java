package evenhand.window.desk;

import evenhand.catalogue.Content;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Entry;
import evenhand.catalogue.Shape;
import evenhand.catalogue.Slot;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.scenario.ScenarioWriter;
import evenhand.words.ChangeWords;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A list as a table of cells: the points of a curve, numbers, small objects of one shape, free words with their texts, or
 * names by themselves or with how often each counts.
 *
 * @param rows as the person gave them; an empty cell where an object leaves something out
 */
public record Grid(Kind kind, List<Column> columns, List<List<String>> rows) {
    /** What a row stands for. */
    public enum Kind {
        POINTS,
        NUMBERS,
        OBJECTS,
        WORDS,
        NAMES,
        SHARES
    }

    /**
     * What stands under one another.
     *
     * @param key of the value; a word of its own where the file has no key for it
     * @param dimension of the quantities; none where it holds texts
     * @param needed whether no row can do without
     */
    public record Column(String key, String meaning, Optional<Dimension> dimension, boolean needed) {
        public String label() {
            return ChangeWords.name(key);
        }

        /** The unit of show; a damper is no car on a road. */
        private String unit(Units units) {
            return dimension
                    .map(own -> own == Dimension.SPEED
                            ? (units == Units.METRIC ? "m/s" : "in/s")
                            : FormField.unit(own, units).symbol())
                    .orElse("");
        }

        /** What is wrong with a text in it, as a clause; nothing where it is sound. */
        public Optional<String> problem(String text) {
            if (text.isBlank()) {
                return needed ? Optional.of("is needed") : Optional.empty();
            }
            if (dimension.isEmpty()) {
                return Optional.empty();
            }
            try {
                Quantity.parse(text, dimension.get());
                return Optional.empty();
            } catch (QuantityException wrong) {
                return Optional.of(String.valueOf(wrong.getMessage()));
            }
        }
    }

    public Grid {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /** The name of a column, with the unit that a bare number has there: "force, N". */
    public String head(int column, Units units) {
        String unit = unit(column, units);
        return columns.get(column).label() + (unit.isEmpty() ? "" : ", " + unit);
    }

    /** What was typed in a column, a bare number with the unit that stands over it. */
    public String complete(int column, String typed, Units units) {
        String text = typed.strip();
        String unit = unit(column, units);
        return unit.isEmpty() || !text.matches("[-+−]?\\d+([.]\\d+)?") ? text : text + " " + unit;
    }

    /** The unit that all of a column is written in; that of show where there are several or none. */
    private String unit(int column, Units units) {
        Column head = columns.get(column);
        if (head.dimension().isEmpty()) {
            return "";
        }
        List<String> used = rows.stream()
                .flatMap(row -> symbol(row.get(column), head.dimension().get()).stream())
                .distinct()
                .toList();
        return used.size() == 1 ? used.get(0) : head.unit(units);
    }

    private static Optional<String> symbol(String text, Dimension dimension) {
        try {
            return Optional.of(Quantity.parse(text, dimension).unit().symbol());
        } catch (QuantityException leftOut) { // an object may leave it out
            return Optional.empty();
        }
    }

    /** The table of what a slot holds; none where it is no list, or one of larger things. */
    static Optional<Grid> of(Slot<?> slot, Optional<Entry> entry) {
        if (slot.content() instanceof Content.Points<?> points) {
            return Optional.of(points(points.of(), entry));
        } else if (slot.content() instanceof Content.Names) {
            List<List<String>> rows = entry.orElse(null) instanceof Entry.Names own
                    ? own.names().stream().map(List::of).toList()
                    : List.of();
            return Optional.of(new Grid(
                    Kind.NAMES, List.of(new Column(slot.key(), slot.meaning(), Optional.empty(), true)), rows));
        } else if (slot.content() instanceof Content.Shares) {
            List<List<String>> rows = entry.orElse(null) instanceof Entry.Shares own
                    ? own.shares().stream()
                            .map(share -> List.of(share.name(), share.times().text()))
                            .toList()
                    : List.of();
            return Optional.of(new Grid(
                    Kind.SHARES,
                    List.of(
                            new Column("case", slot.meaning(), Optional.empty(), true),
                            new Column("times", "how often it counts", Optional.of(Dimension.RATIO), true)),
                    rows));
        } else if (slot.content() instanceof Content.Numbers numbers) {
            List<List<String>> rows = entry.orElse(null) instanceof Entry.Numbers own
                    ? own.numbers().stream()
                            .map(number -> List.of(number.text()))
                            .toList()
                    : List.of();
            return Optional.of(new Grid(
                    Kind.NUMBERS,
                    List.of(new Column(slot.key(), slot.meaning(), Optional.of(numbers.dimension()), true)),
                    rows));
        } else if (slot.content() instanceof Content.Texts) {
            List<List<String>> rows = new ArrayList<>();
            entry.filter(Entry.Texts.class::isInstance)
                    .map(Entry.Texts.class::cast)
                    .ifPresent(own -> own.texts().forEach((word, text) -> rows.add(List.of(word, text))));
            return Optional.of(new Grid(
                    Kind.WORDS,
                    List.of(
                            new Column("what", slot.meaning(), Optional.empty(), true),
                            new Column("words", slot.meaning(), Optional.empty(), true)),
                    rows));
        } else if (slot.content() instanceof Content.Groups<?> groups && isSmall(groups.shape())) {
            return Optional.of(objects((Shape.Plain<?>) groups.shape(), entry));
        }
        return Optional.empty();
    }

    private static boolean isSmall(Shape<?> shape) {
        return shape instanceof Shape.Plain<?> plain
                && plain.slots().stream()
                        .allMatch(slot ->
                                slot.content() instanceof Content.Measure || slot.content() instanceof Content.Text);
    }

    private static Grid points(Content.CurveOf of, Optional<Entry> entry) {
        List<List<String>> rows = new ArrayList<>();
        if (entry.orElse(null) instanceof Entry.Drawn drawn) {
            drawn.points()
                    .forEach(point ->
                            rows.add(List.of(point.at().text(), point.force().text())));
        }
        return new Grid(
                Kind.POINTS,
                List.of(
                        new Column(of.across(), of.across() + " of a point", Optional.of(of.at()), true),
                        new Column(of.upwards(), of.upwards() + " there", Optional.of(of.up()), true)),
                rows);
    }

    private static Grid objects(Shape.Plain<?> shape, Optional<Entry> entry) {
        List<Column> columns = shape.slots().stream()
                .map(slot -> new Column(
                        slot.key(),
                        slot.meaning(),
                        slot.content() instanceof Content.Measure measure
                                ? Optional.of(measure.dimension())
                                : Optional.empty(),
                        slot.required()))
                .toList();
        List<List<String>> rows = new ArrayList<>();
        if (entry.orElse(null) instanceof Entry.Listed listed) {
            for (Entries item : listed.items()) {
                rows.add(columns.stream()
                        .map(column -> item.get(column.key()).map(Entry::text).orElse(""))
                        .toList());
            }
        }
        return new Grid(Kind.OBJECTS, columns, rows);
    }

    /** These rows as the file writes them. A point goes where it belongs. */
    public String json(List<List<String>> wanted) {
        List<List<String>> ordered = new ArrayList<>(wanted);
        if (kind == Kind.POINTS) {
            ordered.sort(Comparator.comparingDouble(row -> si(row.get(0))));
        }
        String items = String.join(", ", ordered.stream().map(this::item).toList());
        return kind == Kind.WORDS ? "{" + items + "}" : "[" + items + "]";
    }

    private double si(String text) {
        try {
            return Quantity.parse(text, columns.get(0).dimension().orElseThrow())
                    .si();
        } catch (QuantityException wrong) {
            return Double.POSITIVE_INFINITY;
        }
    }

    /** One row as the file writes it. */
    public String item(List<String> cells) {
        if (kind == Kind.WORDS) {
            return ScenarioWriter.quoted(cells.get(0)) + ": " + ScenarioWriter.quoted(cells.get(1));
        }
        if (kind == Kind.NUMBERS || kind == Kind.NAMES) {
            return value(0, cells.get(0));
        }
        if (kind == Kind.SHARES) {
            return "[" + value(0, cells.get(0)) + ", " + value(1, cells.get(1)) + "]";
        }
        List<String> values = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            if (kind == Kind.POINTS) {
                values.add(ScenarioWriter.quoted(cells.get(i)));
            } else if (!cells.get(i).isBlank()) {
                values.add(ScenarioWriter.quoted(columns.get(i).key()) + ": " + value(i, cells.get(i)));
            }
        }
        String all = String.join(", ", values);
        return kind == Kind.POINTS ? "[" + all + "]" : "{" + all + "}";
    }

    /** A cell of an object as the file writes it. */
    String value(int column, String text) {
        return columns.get(column).dimension().isPresent() ? ScenarioWriter.scalar(text) : ScenarioWriter.quoted(text);
    }
}
