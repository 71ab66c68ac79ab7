package evenhand.ride;

/** A road by how rough it is at each spatial frequency, as a car at a steady speed meets it. */
public interface Road {
    /** Lowest spatial frequency that it has, cycle/m. */
    double lowest();

    /** Highest spatial frequency that it has, cycle/m. */
    double highest();

    /**
     * One-sided density of the height's variance, m³, between {@link #lowest} and {@link #highest}.
     *
     * @param spatialFrequency cycle/m
     */
    double density(double spatialFrequency);

    /** Spatial frequencies at which the density has a corner, rising, cycle/m; none where it is smooth. */
    double[] corners();
}
