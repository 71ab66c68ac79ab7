package evenhand.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** How a table is set on a sheet: how wide its columns are, where its words break, how high its rows are. Points. */
final class TableLayout {
    static final double SIZE = 9;
    static final double LINE = 11.2;

    /** In a form to be filled in, whose rows are as high as its boxes: all of a car on two sheets. */
    private static final double FORM_SIZE = 8;

    private static final double FORM_LINE = 10.2;

    static final double CELL = 3;

    /** Height of a box that a pen has room in: 8 mm and a little. */
    static final double BOX = 23;

    /** Part of a cell's width that its box takes. */
    private static final double BOX_SHARE = 0.46;

    /** A table lower than this part of a sheet is not torn. */
    private static final double WHOLE = 0.48;

    /** The same of one with boxes, whose rows are high. */
    private static final double WHOLE_WITH_BOXES = 0.22;

    private final PdfType type;
    private final double[] widths;
    private final double wholeBelow;
    private final double size;
    private final double line;
    private final Lines heads;
    private final List<Lines> rows;

    TableLayout(PdfType type, Block.Table table, double width, double sheetHeight) {
        this.type = type;
        double all = table.columns().stream().mapToDouble(Block.Column::weight).sum();
        widths = table.columns().stream()
                .mapToDouble(column -> column.weight() / all * width)
                .toArray();
        boolean boxes = table.rows().stream().anyMatch(row -> !row.boxes().isEmpty());
        size = boxes ? FORM_SIZE : SIZE;
        line = boxes ? FORM_LINE : LINE;
        wholeBelow = (boxes ? WHOLE_WITH_BOXES : WHOLE) * sheetHeight;
        heads = lines(table.columns().stream().map(Block.Column::head).toList(), true, Set.of());
        rows = table.rows().stream()
                .map(row -> lines(row.cells(), row.marked(), row.boxes()))
                .toList();
    }

    /**
     * A row, or what of it is still to be set.
     *
     * @param cells lines of each
     * @param boxes columns with a box
     * @param line height of a line
     */
    record Lines(List<List<String>> cells, Set<Integer> boxes, double line) {
        double height() {
            double words = cells.stream().mapToInt(List::size).max().orElse(1) * line + CELL;
            return boxes.isEmpty() ? words : Math.max(words, BOX + 2);
        }

        boolean isEmpty() {
            return cells.isEmpty();
        }

        /** So many lines of it. */
        Lines first(int lines) {
            return new Lines(
                    cells.stream()
                            .map(cell -> cell.subList(0, Math.min(lines, cell.size())))
                            .toList(),
                    boxes,
                    line);
        }

        /** What is left of a row that did not fit its page; nothing where it did. */
        Lines rest(int lines) {
            return cells.stream().allMatch(cell -> cell.size() <= lines)
                    ? new Lines(List.of(), Set.of(), line)
                    : new Lines(
                            cells.stream()
                                    .map(cell -> cell.subList(Math.min(lines, cell.size()), cell.size()))
                                    .toList(),
                            Set.of(),
                            line);
        }
    }

    double width(int column) {
        return widths[column];
    }

    /** Of its letters. */
    double size() {
        return size;
    }

    double line() {
        return line;
    }

    int columns() {
        return widths.length;
    }

    /** Width of a column's box. */
    double box(int column) {
        return BOX_SHARE * widths[column];
    }

    Lines heads() {
        return heads;
    }

    List<Lines> rows() {
        return rows;
    }

    private Lines lines(List<String> texts, boolean bold, Set<Integer> boxes) {
        List<List<String>> cells = new ArrayList<>();
        for (int i = 0; i < widths.length; i++) {
            double room = widths[i] - 2 * CELL - (boxes.contains(i) ? box(i) : 0);
            cells.add(type.wrap(type.clean(texts.get(i)), bold, size, room));
        }
        return new Lines(cells, boxes, line);
    }

    /** Height of the whole. */
    double all() {
        return heads.height() + rows.stream().mapToDouble(Lines::height).sum();
    }

    /** Height of what is not torn: all of a low one, the beginning of a high one. */
    double together() {
        double all = all();
        return all < wholeBelow ? all : heads.height() + 3 * line;
    }
}
