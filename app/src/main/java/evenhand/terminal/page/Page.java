package evenhand.terminal.page;

import evenhand.forms.Table;
import java.util.List;

/** An answer for people as it is written: headings, tables, and sentences broken to the width of the terminal. */
public final class Page {
    private final StringBuilder text = new StringBuilder();
    private final Console console;

    public Page(Console console) {
        this.console = console;
    }

    /** What stands at the top. */
    public void title(String words) {
        text.append(Paint.bold(Console.oneLine(words), console)).append('\n');
    }

    /** A heading below what was before. */
    public void heading(String words) {
        blank();
        title(words);
    }

    /** A heading of what the reader must not miss. */
    public void warning(String words) {
        blank();
        text.append(Paint.warning(words, console)).append('\n');
    }

    public void blank() {
        text.append('\n');
    }

    /** A line as it is. */
    public void line(String words) {
        text.append(words).append('\n');
    }

    /** A paragraph; its first line after the indent, the others after as many blanks. */
    public void paragraph(String indent, String words) {
        Paragraph.append(text, indent, words, console.columns());
    }

    /** Sentences below a heading, each a paragraph. */
    public void sentences(List<String> sentences) {
        sentences.forEach(sentence -> paragraph("  ", sentence));
    }

    /** A table below what was before. */
    public void table(Table table) {
        blank();
        tableAtOnce(table);
    }

    /** A table right below its heading. */
    public void tableAtOnce(Table table) {
        text.append(TableText.of(table, console));
    }

    public String text() {
        return text.toString();
    }
}
