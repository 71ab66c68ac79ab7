package evenhand.terminal.asked;

/** The command line asks for something that cannot be. The message says what, and how to mend it, in one line. */
public final class Mistake extends Exception {
    private static final long serialVersionUID = 1L;

    public Mistake(String message) {
        super(message);
    }
}
