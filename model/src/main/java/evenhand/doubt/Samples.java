package evenhand.doubt;

import java.util.Arrays;
import java.util.BitSet;

/**
 * A figure of many cars, as far as they have it.
 */
public final class Samples {
    private final double[] values;
    private final BitSet has;

    private Samples(double[] values, BitSet has) {
        this.values = values;
        this.has = has;
    }

    /** Of these numbers, each of them present. */
    public static Samples of(double[] values) {
        BitSet has = new BitSet();
        has.set(0, values.length);
        return new Samples(values.clone(), has);
    }

    /** Of these numbers, as far as they are present. */
    static Samples of(double[] values, boolean[] present) {
        BitSet has = new BitSet();
        for (int i = 0; i < values.length; i++) {
            has.set(i, present[i]);
        }
        return new Samples(values, has);
    }

    int size() {
        return values.length;
    }

    /** How many have a value. */
    int count() {
        return has.cardinality();
    }

    boolean has(int sample) {
        return has.get(sample);
    }

    /** Of a sample that has one. */
    double value(int sample) {
        return values[sample];
    }

    /** These less others of the same cars, where both have a value. */
    Samples less(Samples other) {
        BitSet both = (BitSet) has.clone();
        both.and(other.has);
        double[] differences = new double[values.length];
        for (int i = both.nextSetBit(0); i >= 0; i = both.nextSetBit(i + 1)) {
            differences[i] = values[i] - other.values[i];
        }
        return new Samples(differences, both);
    }

    /** These with something added to each. */
    Samples plus(double[] more) {
        double[] sums = new double[values.length];
        for (int i = 0; i < sums.length; i++) {
            sums[i] = values[i] + more[i];
        }
        return new Samples(sums, has);
    }

    /** Mean; zero of none. */
    double mean() {
        return has.stream().mapToDouble(i -> values[i]).average().orElse(0);
    }

    double standardDeviation() {
        double mean = mean();
        double sum = has.stream()
                .mapToDouble(i -> values[i] - mean)
                .map(off -> off * off)
                .sum();
        return count() < 2 ? 0 : Math.sqrt(sum / (count() - 1));
    }

    /** In rising order. */
    private double[] sorted() {
        return has.stream().mapToDouble(i -> values[i]).sorted().toArray();
    }

    /** The values below which these parts of the samples lie, straight between neighbours; there must be a sample. */
    double[] quantiles(double... parts) {
        double[] sorted = sorted();
        return Arrays.stream(parts)
                .map(part -> {
                    double place = part * (sorted.length - 1);
                    int below = (int) Math.floor(place);
                    int above = Math.min(below + 1, sorted.length - 1);
                    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
                })
                .toArray();
    }
}
