package evenhand.window.desk;

import evenhand.catalogue.Content;
import evenhand.catalogue.Shape;
import evenhand.catalogue.Slot;
import evenhand.words.ChangeWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A point that was measured, as a line of the table of its link.
 *
 * @param path of the point
 * @param label within its link: "body"; "body, right" for what differs there
 * @param meaning what it is the end of
 * @param cells its coordinates
 */
public record PointRow(String path, String label, String meaning, List<FormField> cells) {
    /** Coordinates in the order of a table: of a pair out from the middle, of what is there once left of it. */
    private static final List<String> COORDINATES = List.of("ahead", "out", "left", "up");

    private static final String RIGHT = "right";

    public PointRow {
        cells = List.copyOf(cells);
    }

    /** Whether an object of the file is a point, with or without more to it. */
    static boolean isPoint(Slot<?> slot) {
        return slot.content() instanceof Content.Group<?> group
                && group.shape() instanceof Shape.Plain<?> plain
                && plain.slot("ahead").isPresent()
                && (plain.slot("out").isPresent() || plain.slot("left").isPresent());
    }

    /** Whether a path leads to what differs on the right side. */
    static boolean isOfRight(String path) {
        return path.contains("." + RIGHT + ".");
    }

    /** Whether a field of a section is a coordinate of one of its points. */
    public static boolean isCoordinate(FormField field) {
        return isCoordinate(field.path())
                && field.slot()
                        .map(slot -> slot.content() instanceof Content.Measure)
                        .orElse(false);
    }

    /** Whether a number of the car is a coordinate, by its path. */
    public static boolean isCoordinate(String path) {
        return COORDINATES.contains(key(path));
    }

    private static String key(String path) {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    private static String above(String path) {
        return path.substring(0, Math.max(0, path.lastIndexOf('.')));
    }

    /**
     * The points among the fields of a section, each followed by what differs on its right.
     *
     * @param section path of the link
     * @param meaning of a point's path
     */
    public static List<PointRow> among(String section, List<FormField> fields, UnaryOperator<String> meaning) {
        Map<String, List<FormField>> points = new LinkedHashMap<>();
        fields.stream()
                .filter(PointRow::isCoordinate)
                .forEach(field -> points.computeIfAbsent(above(field.path()), path -> new ArrayList<>())
                        .add(field));
        List<PointRow> rows = new ArrayList<>();
        for (Map.Entry<String, List<FormField>> point : points.entrySet()) {
            if (!isOfRight(point.getKey())) {
                rows.add(row(section, point.getKey(), point.getValue(), meaning));
                String other = section + "." + RIGHT + point.getKey().substring(section.length());
                Optional.ofNullable(points.get(other))
                        .ifPresent(cells -> rows.add(row(section, other, cells, meaning)));
            }
        }
        return rows;
    }

    private static PointRow row(String section, String path, List<FormField> cells, UnaryOperator<String> meaning) {
        return new PointRow(path, label(section, path), meaning.apply(path), cells);
    }

    /** "axle, right" of {@code right.axle} in a link; the last word where the section is the point itself. */
    private static String label(String section, String path) {
        if (path.equals(section)) {
            return ChangeWords.name(key(path));
        }
        return words(path.substring(section.length() + 1));
    }

    /** A path within a link as it is said there: "top bolt"; of what differs on the right "longer, right". */
    public static String words(String own) {
        return own.startsWith(RIGHT + ".")
                ? ChangeWords.name(own.substring(RIGHT.length() + 1)) + ", " + RIGHT
                : ChangeWords.name(own);
    }

    /** The columns of a table of such rows. */
    public static List<Grid.Column> columns(List<PointRow> rows) {
        List<Grid.Column> columns = new ArrayList<>();
        for (String key : COORDINATES) {
            rows.stream()
                    .flatMap(row -> row.cells().stream())
                    .filter(cell -> key(cell.path()).equals(key))
                    .findFirst()
                    .ifPresent(cell -> columns.add(new Grid.Column(key, cell.meaning(), cell.dimension(), false)));
        }
        return columns;
    }

    /** Its cell in a column. */
    public Optional<FormField> cell(Grid.Column column) {
        return cells.stream()
                .filter(cell -> key(cell.path()).equals(column.key()))
                .findFirst();
    }
}
