package evenhand.terminal.page;

import evenhand.forms.Table;
import evenhand.scenario.Setup;
import evenhand.words.BothWays;
import evenhand.words.NotGiven;
import java.util.ArrayList;
import java.util.List;

/**
 * A page that a person sees at once: no longer than a screen, and a line more for each set-up beyond eight. What finds no room is
 * left to {@code --full}, which its last line names.
 */
public final class OneScreen {
    private static final int LINES = 30;
    private static final int SETUPS = 8;
    /** The column of names is no wider. */
    public static final int NAME = 29;

    private static final int MOST_NOT_GIVEN = 4;

    private static final String CUT = "…";
    private static final String BETWEEN = "  ";

    private final Console console;
    private int most;
    private final String last;
    private final List<String> lines = new ArrayList<>();

    /** @param last what stands below: what there is besides */
    public OneScreen(Console console, int setups, String last) {
        this.console = console;
        this.most = LINES + Math.max(0, setups - SETUPS) - 1;
        this.last = last;
    }

    /** Keeps lines free for what comes later. */
    public void reserve(int lines) {
        most -= lines;
    }

    /** Gives them back. */
    public void release(int lines) {
        most += lines;
    }

    /** How many lines are left. */
    public int room() {
        return most - lines.size();
    }

    /** What it is about, shortened where it has to be, and what was asked of it. */
    public void title(String scenario, String asked) {
        String about = cut(Console.oneLine(scenario), Math.max(1, console.columns() - width(asked)));
        lines.add(Paint.bold(cut(about + Console.oneLine(asked), console.columns()), console));
    }

    /** What nobody may miss: it is told in full where there are few, else by name. */
    public void warnings(List<String> inFull, String together) {
        if (inFull.size() > 2) {
            warning(together);
        } else {
            inFull.forEach(this::warning);
        }
    }

    /** What was taken as none because it was not given, and hardly is so. */
    public void cautions(List<Setup> setups) {
        NotGiven.cautions(setups).forEach(this::warning);
    }

    /** What else was taken as none because it was not given, if it finds room. */
    public void notGiven(List<Setup> setups) {
        NotGiven.inShort(setups, MOST_NOT_GIVEN).ifPresent(words -> paragraph("", words));
    }

    /** What nobody may miss. */
    public void warning(String words) {
        for (String line : wrapped(BothWays.WARNING, words)) {
            if (room() > 0) {
                lines.add(Paint.warning(line, console));
            }
        }
    }

    public void blank() {
        lines.add("");
    }

    /** A line that is broken already. */
    public void line(String line) {
        lines.add(cut(line, console.columns()));
    }

    public void table(Table table) {
        TableText.of(table, console).lines().forEach(lines::add);
    }

    /** A paragraph, if it leaves so many lines for what comes later. */
    public void paragraphBefore(String words, int later) {
        reserve(later);
        paragraph("", words);
        release(later);
    }

    /** How many lines a paragraph takes. */
    public int lines(String indent, String words) {
        return wrapped(indent, words).size();
    }

    /** A paragraph, if it finds room; whether it did. */
    public boolean paragraph(String indent, String words) {
        List<String> wrapped = wrapped(indent, words);
        boolean fits = wrapped.size() <= room();
        if (fits) {
            lines.addAll(wrapped);
        }
        return fits;
    }

    /**
     * As many of some phrases as find room in so many lines, the first ones first; never none.
     *
     * @param brief what is said where the first of them finds no room
     */
    public void phrases(String start, List<String> phrases, String brief, int atMost) {
        String said = start + phrases.get(0);
        if (wrapped("", said + ".").size() > atMost) {
            paragraph("", start + brief + ".");
            return;
        }
        for (String phrase : phrases.subList(1, phrases.size())) {
            String more = said + "; " + phrase;
            if (wrapped("", more + ".").size() <= atMost) {
                said = more;
            }
        }
        paragraph("", said + ".");
    }

    /** Rows below one another, if they all find room; the first column is of names, the others are set to the right. */
    public boolean columns(List<List<String>> rows) {
        if (rows.size() > room()) {
            return false;
        }
        int[] widths = new int[rows.get(0).size()];
        for (List<String> row : rows) {
            for (int i = 0; i < widths.length; i++) {
                int width = width(row.get(i));
                widths[i] = Math.max(widths[i], i == 0 ? Math.min(width, NAME) : width);
            }
        }
        for (List<String> row : rows) {
            String name = cut(Console.oneLine(row.get(0)), widths[0]);
            StringBuilder line = new StringBuilder(name).append(" ".repeat(widths[0] - width(name)));
            for (int i = 1; i < widths.length; i++) {
                line.append(BETWEEN)
                        .append(" ".repeat(widths[i] - width(row.get(i))))
                        .append(row.get(i));
            }
            lines.add(cut(line.toString().stripTrailing(), console.columns()));
        }
        return true;
    }

    private List<String> wrapped(String indent, String words) {
        StringBuilder text = new StringBuilder();
        Paragraph.append(text, indent, words, console.columns());
        return text.toString().lines().map(line -> cut(line, console.columns())).toList();
    }

    public static String cut(String text, int width) {
        return width(text) <= width
                ? text
                : text.substring(0, text.offsetByCodePoints(0, width - 1)).stripTrailing() + CUT;
    }

    private static int width(String text) {
        return text.codePointCount(0, text.length());
    }

    public String text() {
        return String.join("\n", lines) + "\n" + last + "\n";
    }
}
