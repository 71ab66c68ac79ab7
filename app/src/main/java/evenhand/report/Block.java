package evenhand.report;

import evenhand.chart.Chart;
import evenhand.drawing.Drawing;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** A piece of a paper, as data. */
public sealed interface Block
        permits Block.Heading, Block.Text, Block.Points, Block.Figures, Block.Table, Block.Facts, Block.Fields {
    /** A heading inside a section. */
    record Heading(String text) implements Block {}

    /** A paragraph. */
    record Text(String text, Tone tone) implements Block {
        static Text plain(String text) {
            return new Text(text, Tone.PLAIN);
        }

        static Text quiet(String text) {
            return new Text(text, Tone.QUIET);
        }
    }

    /** How loud a paragraph is. */
    enum Tone {
        PLAIN,
        QUIET,
        /** What the reader must not miss. */
        WARNING
    }

    /** Sentences below one another, each with a dot before it. */
    record Points(List<String> sentences) implements Block {
        public Points {
            sentences = List.copyOf(sentences);
        }
    }

    /**
     * Pictures beside one another.
     *
     * @param first part of the width that the first has; the others share the rest
     * @param height of each over the width of the paper's text
     */
    record Figures(List<Figure> figures, double first, double height) implements Block {
        public Figures {
            figures = List.copyOf(figures);
        }

        /** Each as wide as the others. */
        static Figures even(double height, Figure... figures) {
            return new Figures(List.of(figures), 1.0 / figures.length, height);
        }

        /** Widths of all, together less than this by the gaps between them; whole numbers. */
        List<Integer> widths(double all, double gap) {
            int count = figures.size();
            double room = all - gap * (count - 1);
            int one = (int) (count == 1 ? room : first * room);
            List<Integer> widths = new ArrayList<>(List.of(one));
            for (int i = 1; i < count; i++) {
                widths.add((int) ((room - one) / (count - 1)));
            }
            return widths;
        }
    }

    /** One picture. */
    sealed interface Figure permits Plot, View {
        String title();
    }

    record Plot(Chart chart) implements Figure {
        @Override
        public String title() {
            return chart.title();
        }
    }

    record View(Drawing drawing) implements Figure {
        @Override
        public String title() {
            return drawing.title();
        }
    }

    /** Rows under heads. */
    record Table(List<Column> columns, List<Row> rows) implements Block {
        public Table {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
            for (Row row : rows) {
                if (row.cells().size() != columns.size()) {
                    throw new IllegalArgumentException("a row of " + row.cells().size() + " cells under "
                            + columns.size() + " heads: " + row.cells());
                }
            }
        }
    }

    /**
     * A column.
     *
     * @param weight its part of the width is its weight over that of all
     */
    record Column(String head, double weight, Kind kind) {
        static Column words(String head, double weight) {
            return new Column(head, weight, Kind.WORDS);
        }

        static Column number(String head, double weight) {
            return new Column(head, weight, Kind.NUMBER);
        }

        static Column blank(String head, double weight) {
            return new Column(head, weight, Kind.BLANK);
        }
    }

    /** What stands in a column. */
    enum Kind {
        WORDS,
        /** To the right. */
        NUMBER,
        /** A box to be written into by hand. */
        BLANK
    }

    /**
     * A row; a marked one is changed against the set-up before.
     *
     * @param boxes columns in which a box for the pen stands beside the words
     */
    record Row(List<String> cells, boolean marked, Set<Integer> boxes) {
        public Row {
            cells = List.copyOf(cells);
            boxes = Set.copyOf(boxes);
        }

        /** Without boxes beside words. */
        Row(List<String> cells, boolean marked) {
            this(cells, marked, Set.of());
        }

        static Row of(String... cells) {
            return new Row(List.of(cells), false);
        }
    }

    /** What stands beside a word: a verdict under each head, a meaning behind each name. No rules, no heads. */
    record Facts(List<Fact> facts) implements Block {
        public Facts {
            facts = List.copyOf(facts);
        }
    }

    /** One of them. */
    record Fact(String lead, String text, Tone tone) {}

    /** Boxes to be written into by hand, three in a line, each with its label. */
    record Fields(List<String> labels) implements Block {
        public Fields {
            labels = List.copyOf(labels);
        }
    }
}
