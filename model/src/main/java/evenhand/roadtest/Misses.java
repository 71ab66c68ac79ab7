package evenhand.roadtest;

import java.util.Optional;

/** What a correction works on: how far predictions miss, by how far each unknown is off in its standard deviations. */
interface Misses {
    int unknowns();

    /** The misses where the unknowns are; none where no such car stands and turns. */
    Optional<At> at(double[] z);

    /** Slopes of the predictions there, a row for each and a column for each unknown; in the unit of the misses. */
    double[][] slopes(double[] z, At here);

    /**
     * Misses and their standard deviations, in one unit for each.
     *
     * @param misses measured less expected
     */
    record At(double[] misses, double[] sigmas) {}
}
