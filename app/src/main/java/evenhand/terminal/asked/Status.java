package evenhand.terminal.asked;

/** How a command ended, for the shell. */
public enum Status {
    /** Done. */
    DONE(0),
    /** Computed, but a set-up has no answer or an aim cannot be met. */
    NO_ANSWER(1),
    /** The command line or a file is wrong. */
    WRONG(2),
    /** A defect of the program. */
    DEFECT(3);

    private final int code;

    Status(int code) {
        this.code = code;
    }

    public int code() {
        return code;
    }
}
