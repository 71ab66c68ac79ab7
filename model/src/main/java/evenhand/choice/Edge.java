package evenhand.choice;

import java.util.function.DoublePredicate;

/**
 * The edge between values that do and values that do not.
 *
 * @param inside the last known one that does
 * @param outside the first known one that does not
 */
record Edge(double inside, double outside) {
    /** Closes in on the edge between a value that does and one that does not by so many halvings. */
    static Edge between(double does, double doesNot, int halvings, DoublePredicate test) {
        double inside = does;
        double outside = doesNot;
        for (int k = 0; k < halvings; k++) {
            double middle = (inside + outside) / 2;
            if (test.test(middle)) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        return new Edge(inside, outside);
    }
}
