package evenhand.bump;

/** The highest and the lowest value of something that is seen now and then: between three of them, by the parabola through them. */
final class Crest {
    double highest = Double.NEGATIVE_INFINITY;
    double lowest = Double.POSITIVE_INFINITY;

    private double firstTime;
    private double first;
    private double secondTime;
    private double second;
    private int seen;

    /** Something bends: what comes has nothing to do with what was. */
    void begin() {
        seen = 0;
    }

    void see(double time, double value) {
        take(value);
        if (seen >= 2) {
            double before = (second - first) / (secondTime - firstTime);
            double after = (value - second) / (time - secondTime);
            double bend = (after - before) / (time - firstTime);
            double slope = before + bend * (secondTime - firstTime); // at the second
            double turn = secondTime - slope / (2 * bend);
            if (turn > firstTime && turn < time) {
                take(second - slope * slope / (4 * bend));
            }
        }
        firstTime = secondTime;
        first = second;
        secondTime = time;
        second = value;
        seen++;
    }

    private void take(double value) {
        highest = Math.max(highest, value);
        lowest = Math.min(lowest, value);
    }

    /** The greatest size. */
    double greatest() {
        return Math.max(highest, -lowest);
    }
}
