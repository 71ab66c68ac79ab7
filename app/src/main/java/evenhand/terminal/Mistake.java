package evenhand.terminal;

/** The command line asks for something that cannot be. The message says what, and how to mend it, in one line. */
final class Mistake extends Exception {
    private static final long serialVersionUID = 1L;

    Mistake(String message) {
        super(message);
    }
}
