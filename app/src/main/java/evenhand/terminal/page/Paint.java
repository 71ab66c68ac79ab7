package evenhand.terminal.page;

/** Emphasis on a terminal that may have it; the text says the same without. */
final class Paint {
    private static final String BOLD = "\u001b[1m";
    private static final String YELLOW = "\u001b[33m";
    private static final String PLAIN = "\u001b[0m";

    private Paint() {}

    static String bold(String text, Console console) {
        return console.colour() ? BOLD + text + PLAIN : text;
    }

    static String warning(String text, Console console) {
        return console.colour() ? YELLOW + text + PLAIN : text;
    }
}
