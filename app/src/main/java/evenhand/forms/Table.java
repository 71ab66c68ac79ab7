package evenhand.forms;

import evenhand.words.InPrint;
import java.util.ArrayList;
import java.util.List;

/** Things side by side, a column for each, and a row for each figure of them. Cells are ready for show. */
public record Table(List<String> columns, List<Line> lines) {
    public static final Table NONE = new Table(List.of(), List.of());

    /** What stands where there is no number. */
    public static final String NOTHING = "–";

    /** A line of the table. */
    public sealed interface Line {
        String words();
    }

    public record Heading(String words) implements Line {}

    public record Row(String words, String unit, List<String> cells) implements Line {
        public Row {
            cells = List.copyOf(cells);
        }

        boolean isEmpty() {
            return cells.stream().allMatch(NOTHING::equals);
        }

        private Row inPrint() {
            return new Row(words, InPrint.symbol(unit), InPrint.sentences(cells));
        }
    }

    public Table {
        columns = List.copyOf(columns);
        lines = List.copyOf(lines);
    }

    /** The same with its units set as in print. */
    public Table inPrint() {
        return new Table(
                columns,
                lines.stream()
                        .map(line -> line instanceof Row row ? row.inPrint() : line)
                        .toList());
    }

    /** Gathers lines. */
    public static final class Builder {
        private final List<String> columns;
        private final List<Line> lines = new ArrayList<>();

        public Builder(List<String> columns) {
            this.columns = columns;
        }

        public Builder heading(String words) {
            lines.add(new Heading(words));
            return this;
        }

        public Builder row(String words, String unit, List<String> cells) {
            return row(new Row(words, unit, cells));
        }

        Builder row(Row row) {
            lines.add(row);
            return this;
        }

        public Table build() {
            return new Table(columns, lines);
        }
    }
}
