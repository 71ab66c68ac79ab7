package evenhand.car;

/**
 * How far one axle gives under a load.
 *
 * @param squash further deflection of its tyres, m; its wheels come down by so much
 * @param travel bump travel of the suspension, m, below zero where the load lifts this end
 */
public record Sinking(double squash, double travel) {
    public static final Sinking NONE = new Sinking(0, 0);

    /** How far the body comes down over the axle, m. */
    public double drop() {
        return squash + travel;
    }
}
