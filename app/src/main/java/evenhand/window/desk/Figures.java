package evenhand.window.desk;

import evenhand.words.InPrint;
import java.util.ArrayList;
import java.util.List;

/** Figures side by side, a column for each set-up; cells are ready for show. */
public record Figures(List<String> columns, List<Line> lines) {
    public static final Figures NONE = new Figures(List.of(), List.of());

    /** A line of the table. */
    public sealed interface Line {
        String words();
    }

    public record Heading(String words) implements Line {}

    public record Row(String words, String unit, List<String> cells) implements Line {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    public Figures {
        columns = List.copyOf(columns);
        lines = List.copyOf(lines);
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

        /** @param unit as it is written; it is shown as it is set */
        public Builder row(String words, String unit, List<String> cells) {
            lines.add(new Row(words, InPrint.symbol(unit), InPrint.sentences(cells)));
            return this;
        }

        public Figures build() {
            return new Figures(columns, lines);
        }
    }
}
