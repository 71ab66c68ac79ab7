package evenhand.window.desk;

import evenhand.words.InPrint;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The verdict on the set-ups that are shown, a line for each, ready for show.
 *
 * @param warnings what has to be said before anything else is believed
 * @param columns what is said of each set-up, in order
 * @param sure how sure it is; nothing until that is worked out
 */
public record Verdict(List<String> warnings, List<Column> columns, List<Line> lines, Optional<String> sure) {
    /**
     * What is said of each set-up.
     *
     * @param meaning what the words mean, for whoever does not know them
     */
    public record Column(String words, String meaning, Kind kind) {}

    /** What the cells of a column are; numbers stand below one another, some with their doubt. */
    public enum Kind {
        WORDS,
        NUMBER,
        NUMBER_WITH_DOUBT
    }

    /** What is said of a set-up, with the look that it has everywhere. */
    public record Line(String setup, int look, List<Cell> cells) {
        public Line {
            cells = List.copyOf(cells);
        }
    }

    /**
     * One thing that is said.
     *
     * @param doubt "± 2.1", where it is known
     * @param left a bar beside it
     * @param warning whether no driver wants it
     */
    public record Cell(String text, Optional<String> doubt, Optional<Bar> left, boolean warning) {
        public Cell {
            text = InPrint.sentence(text);
        }

        public static Cell of(String text) {
            return new Cell(text, Optional.empty(), Optional.empty(), false);
        }
    }

    /**
     * A part of a whole as a bar, with the words of what it is.
     *
     * @param part from 0 to 1
     * @param doubt half-width of its doubt, in the same measure
     */
    public record Bar(double part, OptionalDouble doubt, String words) {}

    public Verdict {
        warnings = InPrint.sentences(warnings);
        columns = columns.stream()
                .map(one -> new Column(InPrint.sentence(one.words()), one.meaning(), one.kind()))
                .toList();
        lines = List.copyOf(lines);
    }

    /** The largest part that a bar has to show. */
    public double largestBar() {
        return lines.stream()
                .flatMap(line -> line.cells().stream())
                .flatMap(cell -> cell.left().stream())
                .mapToDouble(Bar::part)
                .max()
                .orElse(0);
    }
}
