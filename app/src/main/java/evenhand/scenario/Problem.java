package evenhand.scenario;

import evenhand.quantity.Unseen;
import java.util.Comparator;

/**
 * Something wrong in a file, and how to mend it.
 *
 * @param line from 1; 0 where it is the file itself
 * @param where path of the value; empty for the whole file
 */
public record Problem(String file, int line, int column, String where, String what) {
    static final Comparator<Problem> BY_PLACE =
            Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column);

    /** {@code FILE:LINE:COLUMN: WHERE: WHAT}. */
    @Override
    public String toString() {
        return written(file, line, column, where, what);
    }

    static String written(String file, int line, int column, String where, String what) {
        return Unseen.shown(file + (line > 0 ? ":" + line + ":" + column : "") + ": "
                + (where.isEmpty() ? "" : where + ": ") + what);
    }
}
