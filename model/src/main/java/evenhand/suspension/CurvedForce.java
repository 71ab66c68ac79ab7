package evenhand.suspension;

/**
 * A force upwards on the body over bump travel that runs along no straight line: springs, and links that bind, whose leverage
 * changes with travel. Set by {@link #at}, allocates nothing; one per thread.
 */
public abstract class CurvedForce {
    /** N. */
    double force;

    /** Its slope, N/m. */
    double rate;

    /** Its integral over travel, from wherever it counts, J. */
    double energy;

    /** Sets force, rate and energy at a travel, m. */
    abstract void at(double travel);
}
