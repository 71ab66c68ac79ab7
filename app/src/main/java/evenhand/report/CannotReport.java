package evenhand.report;

/** Why a report cannot be made or kept, in one line. */
public final class CannotReport extends Exception {
    private static final long serialVersionUID = 1L;

    public CannotReport(String why) {
        super(why);
    }
}
