package evenhand.terminal;

/** Text for people that keeps to one screen. */
final class OneScreen {
    /** Lines of a screen. */
    static final int LINES = 30;

    private final Console console;
    private final StringBuilder text = new StringBuilder();

    OneScreen(Console console) {
        this.console = console;
    }

    void bold(String line) {
        text.append(Paint.bold(line, console)).append('\n');
    }

    void paragraph(String words) {
        paragraph("", words);
    }

    void paragraph(String indent, String words) {
        Paragraph.append(text, indent, words, console.columns());
    }

    /** What is to be seen before all else. */
    void warning(String words) {
        StringBuilder lines = new StringBuilder();
        Paragraph.append(lines, "! ", words, console.columns());
        lines.toString()
                .lines()
                .forEach(line -> text.append(Paint.warning(line, console)).append('\n'));
    }

    /** A sentence, where it leaves room for so many lines more. */
    void ifItFits(String words, int rest) {
        if (hasRoom(Paragraph.lines(Console.oneLine(words), console.columns()).size() + rest)) {
            paragraph(words);
        }
    }

    /** A warning, where it leaves room for so many lines more. */
    void warningIfItFits(String words, int rest) {
        if (hasRoom(
                Paragraph.lines(Console.oneLine(words), console.columns() - 2).size() + rest)) {
            warning(words);
        }
    }

    /** Lines that are broken already. */
    void block(String lines) {
        text.append(lines);
    }

    void blank() {
        text.append('\n');
    }

    /** Whether so many lines more keep to the screen. */
    boolean hasRoom(int lines) {
        return text.chars().filter(character -> character == '\n').count() + lines <= LINES;
    }

    String text() {
        return text.toString();
    }
}
