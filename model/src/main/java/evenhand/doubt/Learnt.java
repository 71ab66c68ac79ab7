package evenhand.doubt;

import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Deviation;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * What a car's numbers have turned out to be, and what is left of their errors: normal about that, and no longer each by itself.
 * <pre>  value = number + halfWidth/2·z,   z ~ N(moved, C)  </pre>
 * cut at what is possible. A number that nobody learnt anything of is what it was, z ~ N(0, 1).
 */
public final class Learnt implements Deviation {
    private final List<String> paths;
    private final double[] moved;
    private final RealMatrix covariance;
    private final Tolerance.Unsaid unsaid;
    private final Map<String, Integer> places = new HashMap<>();

    /**
     * @param paths of the numbers
     * @param moved by how much each is off, in the standard deviations that it had
     * @param covariance of what is left of that
     */
    public Learnt(List<String> paths, double[] moved, double[][] covariance, Tolerance.Unsaid unsaid) {
        this.paths = List.copyOf(paths);
        this.moved = moved.clone();
        this.covariance = MatrixUtils.createRealMatrix(covariance);
        this.unsaid = unsaid;
        for (int k = 0; k < paths.size(); k++) {
            places.put(paths.get(k), k);
        }
    }

    /** Which values without a tolerance were taken as exact when it was learnt. */
    public Tolerance.Unsaid unsaid() {
        return unsaid;
    }

    @Override
    public double of(Adjustable number) {
        return off(number, 0);
    }

    /** A number that is off by some standard deviations more. */
    double off(Adjustable number, double more) {
        return at(number, unsaid, movedBy(number.path()) + more);
    }

    /** A number that is off by some of its standard deviations, SI, cut at what is possible. */
    public static double at(Adjustable number, Tolerance.Unsaid unsaid, double deviates) {
        double sigma = Tolerance.of(number, unsaid) / 2;
        return sigma == 0 || deviates == 0
                ? number.si()
                : number.slot().bounds().cut(number.si() + sigma * deviates);
    }

    /** By how much a number has moved, in the standard deviations that it had. */
    public double movedBy(String path) {
        Integer k = places.get(path);
        return k == null ? 0 : moved[k];
    }

    /** What is left of a number's doubt, over what it was. */
    double left(String path) {
        Integer k = places.get(path);
        return k == null ? 1 : Math.sqrt(Math.max(0, covariance.getEntry(k, k)));
    }

    /** What is left of two numbers together, over what each was. */
    public double together(String one, String other) {
        Integer k = places.get(one);
        Integer j = places.get(other);
        if (k == null || j == null) {
            return one.equals(other) ? 1 : 0;
        }
        return covariance.getEntry(k, j);
    }

    /** What is left of each two of some numbers together. */
    double[][] together(List<String> order) {
        int n = order.size();
        double[][] left = new double[n][n];
        for (int k = 0; k < n; k++) {
            for (int j = 0; j < n; j++) {
                left[k][j] = together(order.get(k), order.get(j));
            }
        }
        return left;
    }

    /** What is left of each, where errors of one standard deviation were: a row a number, from independent deviates a column each. */
    double[][] factor(List<String> order) {
        return factor(together(order));
    }

    /** L of C = L·Lᵀ, L lower triangular, of a covariance that may be singular but for rounding. */
    public static double[][] factor(double[][] covariance) {
        return covariance.length == 0
                ? covariance
                : new CholeskyDecomposition(MatrixUtils.createRealMatrix(covariance), 1e-9, 0)
                        .getL()
                        .getData();
    }

    /** The numbers, in the order in which they were learnt. */
    public List<String> paths() {
        return paths;
    }

    /** By how much each has moved, in the standard deviations that it had. */
    public double[] moved() {
        return IntStream.range(0, moved.length).mapToDouble(k -> moved[k]).toArray();
    }
}
