package evenhand.scenario;

import java.util.Comparator;

/** Something unusual in a file that may well be so. */
public record Warning(String file, int line, int column, String where, String what) {
    static final Comparator<Warning> BY_PLACE =
            Comparator.comparingInt(Warning::line).thenComparingInt(Warning::column);

    /** {@code FILE:LINE:COLUMN: WHERE: WHAT}. */
    @Override
    public String toString() {
        return Problem.written(file, line, column, where, what);
    }
}
