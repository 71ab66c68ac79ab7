package evenhand.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntFunction;

/**
 * What each change is worth: its difference, averaged over all orders in which the changes can be made one after the other.
 * <pre>  φi = Σ(S without i)  a(S)·z(S+i) / m · (v(S+i) − v(S))  </pre>
 * v(S) value with the changes S made; a(S) number of orders from none to S, z(S) from S to all, m of all orders; only such
 * orders count as pass through values that exist. Where all exist, a·z/m = |S|!·(n−|S|−1)!/n!, and this is the Shapley value.
 * The shares add up to v(all) − v(none), because the steps of every order do.
 *
 * <p>Source: Shapley, A value for n-person games, 1953. Leaving out orders that cannot be gone is ours.
 *
 * @param shares of the changes, in their order
 * @param largest the largest difference that a change makes anywhere on the way; 0 for one without effect
 * @param ordersUsed number of orders that pass through values that exist
 * @param orders number of all orders
 */
public record Shapley(List<Double> shares, List<Double> largest, double ordersUsed, double orders) {
    /** 2 to this power is what is computed for one comparison. */
    public static final int MOST = 12;

    public Shapley {
        shares = List.copyOf(shares);
        largest = List.copyOf(largest);
    }

    /** Whether some orders had to be left out. */
    public boolean avoids() {
        return ordersUsed < orders;
    }

    /**
     * The shares of changes.
     *
     * @param changes how many, no more than {@link #MOST}
     * @param values with the changes made whose bits are set; none where there is no answer
     * @return none where no order passes only through values that exist
     */
    public static Optional<Shapley> of(int changes, IntFunction<OptionalDouble> values) {
        if (changes > MOST) {
            throw new IllegalArgumentException("more than " + MOST + " changes: group them");
        }
        int all = (1 << changes) - 1;
        OptionalDouble[] value = new OptionalDouble[all + 1];
        for (int set = 0; set <= all; set++) {
            value[set] = values.apply(set);
        }
        double[] before = new double[all + 1];
        before[0] = value[0].isPresent() ? 1 : 0;
        for (int set = 0; set < all; set++) {
            for (int i = 0; i < changes; i++) {
                int with = set | 1 << i;
                if (set != with && value[with].isPresent()) {
                    before[with] += before[set];
                }
            }
        }
        double used = before[all];
        if (used == 0) {
            return Optional.empty();
        }
        double[] after = new double[all + 1];
        after[all] = 1;
        for (int set = all - 1; set >= 0; set--) {
            for (int i = 0; i < changes && value[set].isPresent(); i++) {
                int with = set | 1 << i;
                after[set] += set != with ? after[with] : 0;
            }
        }
        double orders = 1;
        List<Double> shares = new ArrayList<>();
        List<Double> largest = new ArrayList<>();
        for (int i = 0; i < changes; i++) {
            orders *= i + 1;
            double share = 0;
            double most = 0;
            for (int set = 0; set <= all; set++) {
                int with = set | 1 << i;
                if (set != with && value[set].isPresent() && value[with].isPresent()) {
                    double step = value[with].getAsDouble() - value[set].getAsDouble();
                    share += before[set] * after[with] / used * step;
                    most = Math.max(most, Math.abs(step));
                }
            }
            shares.add(share);
            largest.add(most);
        }
        return Optional.of(new Shapley(shares, largest, used, orders));
    }
}
