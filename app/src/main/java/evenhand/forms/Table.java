package evenhand.forms;

import evenhand.words.InPrint;
import evenhand.words.Numbers;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Things side by side, a column for each, and a row for each figure of them. Cells are ready for show. */
public record Table(List<String> columns, List<Line> lines) {
    public static final Table NONE = new Table(List.of(), List.of());

    /** What stands where there is no number. */
    public static final String NOTHING = "–";

    /** Head of a column of differences. */
    public static final String DIFFERENCE = "difference";

    /** What stands there where words do not differ. */
    private static final String SAME = "same";

    /** A number, and the unit behind it where it has one. */
    private static final Pattern NUMBER = Pattern.compile("([+−-]?\\d{1,9}(?:\\.\\d{1,6})?)( ?[^\\d\\s]{0,8})");

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

        private Row withDifferences(int base) {
            List<String> wide = new ArrayList<>();
            for (int i = 0; i < cells.size(); i++) {
                wide.add(cells.get(i));
                if (i != base) {
                    wide.add(difference(cells.get(base), cells.get(i)));
                }
            }
            return new Row(words, unit, wide);
        }

        private static String difference(String from, String to) {
            Matcher before = NUMBER.matcher(from);
            Matcher now = NUMBER.matcher(to);
            if (!before.matches() || !now.matches() || !before.group(2).equals(now.group(2))) {
                return from.equals(to) && !from.equals(NOTHING) ? SAME : "";
            }
            BigDecimal more = number(now).subtract(number(before));
            return Numbers.signed(more.doubleValue(), Math.max(0, more.scale())) + now.group(2);
        }

        private static BigDecimal number(Matcher cell) {
            return new BigDecimal(cell.group(1).replace('−', '-'));
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

    /** Whether there is something that its columns can be compared with: one of this name among others. */
    public boolean compares(String base) {
        return columns.size() > 1 && columns.contains(base);
    }

    /**
     * The same with a column behind each of the others that says by how much it differs from that of the base, in the digits of what
     * is shown; nothing where there are no two numbers.
     */
    public Table withDifferences(String base) {
        int at = columns.indexOf(base);
        return new Table(
                columns.stream()
                        .flatMap(name -> name.equals(base) ? Stream.of(name) : Stream.of(name, DIFFERENCE))
                        .toList(),
                lines.stream()
                        .map(line -> line instanceof Row row ? row.withDifferences(at) : line)
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
