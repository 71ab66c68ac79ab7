package evenhand.terminal.page;

import evenhand.forms.Table;
import java.util.ArrayList;
import java.util.List;

/** Set-ups side by side: a row per figure, its unit in the row's head. Those that find no room go below the others. */
final class TableText {
    private static final String INDENT = "  ";
    private static final String BETWEEN = "  ";
    /** Set-up names are broken to this width. */
    private static final int HEAD_WIDTH = 10;
    /** Longer names are cut: the words below have them whole. */
    private static final int MOST_HEAD_LINES = 3;
    /** No word of a name is shown longer. */
    private static final int LONGEST_HEAD_WORD = 24;

    private static final String CUT = "…";

    private TableText() {}

    /** As text, no wider than the console where that can be. */
    static String of(Table table, Console console) {
        List<String> heads = table.columns();
        List<Table.Line> lines = table.lines();
        int labels = 0;
        int units = 0;
        int[] widths = new int[heads.size()];
        List<List<String>> names = new ArrayList<>();
        for (int i = 0; i < heads.size(); i++) {
            List<String> name = head(heads.get(i));
            names.add(name);
            for (String part : name) {
                widths[i] = Math.max(widths[i], width(part));
            }
        }
        for (Table.Line line : lines) {
            if (line instanceof Table.Row row) {
                labels = Math.max(labels, width(row.words()));
                units = Math.max(units, width(row.unit()));
                for (int i = 0; i < widths.length; i++) {
                    widths[i] = Math.max(widths[i], width(row.cells().get(i)));
                }
            }
        }
        int left = INDENT.length() + labels + BETWEEN.length() + units;
        StringBuilder text = new StringBuilder();
        int from = 0;
        while (from < heads.size()) {
            int to = from;
            int room = console.columns() - left;
            while (to < heads.size() && (to == from || room >= BETWEEN.length() + widths[to])) {
                room -= BETWEEN.length() + widths[to];
                to++;
            }
            text.append(from == 0 ? "" : "\n");
            part(text, lines, console, left, labels, units, widths, names, from, to);
            from = to;
        }
        return text.toString();
    }

    private static List<String> head(String name) {
        List<String> head = new ArrayList<>();
        for (String line : Paragraph.lines(name, HEAD_WIDTH)) {
            if (head.size() == MOST_HEAD_LINES) {
                String last = head.remove(MOST_HEAD_LINES - 1);
                head.add(last.endsWith(CUT) ? last : last + CUT);
                break;
            }
            boolean fits = width(line) <= LONGEST_HEAD_WORD;
            head.add(fits ? line : line.substring(0, line.offsetByCodePoints(0, LONGEST_HEAD_WORD - 1)) + CUT);
        }
        return head;
    }

    private static void part(
            StringBuilder text,
            List<Table.Line> lines,
            Console console,
            int left,
            int labels,
            int units,
            int[] widths,
            List<List<String>> names,
            int from,
            int to) {
        int deepest = 0;
        for (int i = from; i < to; i++) {
            deepest = Math.max(deepest, names.get(i).size());
        }
        for (int depth = 0; depth < deepest; depth++) {
            StringBuilder head = new StringBuilder(" ".repeat(left));
            for (int i = from; i < to; i++) {
                int first = deepest - names.get(i).size();
                right(head.append(BETWEEN), depth < first ? "" : names.get(i).get(depth - first), widths[i]);
            }
            text.append(Paint.bold(head.toString().stripTrailing(), console)).append('\n');
        }
        for (Table.Line line : lines) {
            if (line instanceof Table.Heading heading) {
                text.append(Paint.bold(heading.words(), console)).append('\n');
            } else if (line instanceof Table.Row row) {
                StringBuilder one = new StringBuilder(INDENT).append(row.words());
                one.append(" ".repeat(labels - width(row.words())))
                        .append(BETWEEN)
                        .append(row.unit());
                one.append(" ".repeat(units - width(row.unit())));
                for (int i = from; i < to; i++) {
                    right(one.append(BETWEEN), row.cells().get(i), widths[i]);
                }
                text.append(one.toString().stripTrailing()).append('\n');
            }
        }
    }

    private static void right(StringBuilder text, String cell, int width) {
        text.append(" ".repeat(width - width(cell))).append(cell);
    }

    /** Characters as they are counted on a screen. */
    private static int width(String text) {
        return text.codePointCount(0, text.length());
    }
}
