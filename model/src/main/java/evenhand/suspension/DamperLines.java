package evenhand.suspension;

/**
 * A damper as its wheel feels it, for whoever follows it in time: straight lines over {@link #over what they count by}, which
 * is the wheel's own speed where the leverage stays, else the damper's, at the leverage that it has there.
 *
 * <pre>  F = MR(u)·D(MR(u)·u')  </pre>
 * u travel of the wheel, m, u' its speed, m/s, both towards the body; D the straight lines, N over m/s.
 *
 * <p>One per thread; allocates nothing.
 */
public final class DamperLines {
    /** How far a damper goes per travel of its wheel, and how that changes. */
    abstract static class Ratio {
        double value;
        double byTravel; // 1/m

        abstract void at(double travel);
    }

    private static final class Stays extends Ratio {
        private Stays() {
            value = 1;
        }

        @Override
        void at(double travel) {}
    }

    private final ForceLines lines;
    private final Ratio ratio;

    private DamperLines(ForceLines lines, Ratio ratio) {
        this.lines = lines;
        this.ratio = ratio;
    }

    /** Lines over the wheel's own speed, forces at the wheel. */
    public static DamperLines atWheel(ForceLines lines) {
        return new DamperLines(lines, new Stays());
    }

    /** Lines over the damper's speed, forces at the damper. */
    static DamperLines atDamper(ForceLines lines, Ratio ratio) {
        return new DamperLines(lines, ratio);
    }

    public int pieces() {
        return lines.pieces();
    }

    /** What the lines count by, m/s. */
    public double over(double travel, double speed) {
        ratio.at(travel);
        return ratio.value * speed;
    }

    /** The piece that holds where the lines count so much. */
    public int pieceAt(double over) {
        return lines.pieceAt(over);
    }

    /** Upper end of a piece by what the lines count. */
    public double end(int piece) {
        return lines.high(piece);
    }

    /** Ends of a piece by the wheel's speed, at a travel. */
    public double low(int piece, double travel) {
        ratio.at(travel);
        return lines.low(piece) / ratio.value;
    }

    public double high(int piece, double travel) {
        ratio.at(travel);
        return lines.high(piece) / ratio.value;
    }

    /** Force at the wheel upwards on the body, N. */
    public double force(int piece, double travel, double speed) {
        ratio.at(travel);
        return ratio.value * lines.force(piece, ratio.value * speed);
    }

    /** How fast that force changes, N/s: the damper's own speed changes with that of the wheel and with the leverage. */
    public double forceRate(int piece, double travel, double speed, double acceleration) {
        ratio.at(travel);
        double ratioRate = ratio.byTravel * speed;
        double over = ratio.value * speed;
        return ratioRate * lines.force(piece, over)
                + ratio.value * lines.slope(piece) * (ratio.value * acceleration + ratioRate * speed);
    }
}
