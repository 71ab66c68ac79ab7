package evenhand.linear;

/**
 * Gaussian elimination with partial pivoting over one flat array that is kept for use again and again. Fields are read into
 * locals and places counted on, for a command ends before the compiler that would do so comes to it.
 */
public final class LinearSolve {
    /** The matrix, row by row; {@link #factor} overwrites it. */
    public final double[] matrix;

    private final int size;
    private final int[] pivots;

    public LinearSolve(int size) {
        this.size = size;
        matrix = new double[size * size];
        pivots = new int[size];
    }

    /** Factors the matrix; returns the sign of its determinant, zero where it is singular. */
    public int factor() {
        // In locals, rows by where they begin: a quarter of a turn's time is spent here, and the quick compiler takes
        // this as it stands.
        double[] m = matrix;
        int n = size;
        int end = n * n;
        int sign = 1;
        for (int k = 0; k < n; k++) {
            int upper = k * n;
            int pivot = upper;
            double largest = Math.abs(m[upper + k]);
            for (int row = upper + n; row < end; row += n) {
                double candidate = Math.abs(m[row + k]);
                if (candidate > largest) {
                    largest = candidate;
                    pivot = row;
                }
            }
            pivots[k] = pivot / n;
            if (!(largest > 0)) {
                return 0;
            }
            if (pivot != upper) {
                sign = -sign;
                for (int column = 0; column < n; column++) {
                    double swap = m[upper + column];
                    m[upper + column] = m[pivot + column];
                    m[pivot + column] = swap;
                }
            }
            double diagonal = m[upper + k];
            if (diagonal < 0) {
                sign = -sign;
            }
            for (int row = upper + n; row < end; row += n) {
                double factor = m[row + k];
                if (factor != 0) {
                    factor /= diagonal;
                    m[row + k] = factor;
                    for (int column = k + 1; column < n; column++) {
                        m[row + column] -= factor * m[upper + column];
                    }
                }
            }
        }
        return sign;
    }

    /** Solves for a right-hand side in place, after {@link #factor}. */
    public void solve(double[] right) {
        double[] m = matrix;
        int n = size;
        for (int k = 0; k < n; k++) {
            int pivot = pivots[k];
            double swap = right[pivot];
            right[pivot] = right[k];
            right[k] = swap;
        }
        for (int row = 1; row < n; row++) {
            double sum = right[row];
            int begin = row * n;
            for (int column = 0; column < row; column++) {
                sum -= m[begin + column] * right[column];
            }
            right[row] = sum;
        }
        for (int row = n - 1; row >= 0; row--) {
            double sum = right[row];
            int begin = row * n;
            for (int column = row + 1; column < n; column++) {
                sum -= m[begin + column] * right[column];
            }
            right[row] = sum / m[begin + row];
        }
    }
}
