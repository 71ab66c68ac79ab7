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
        double[] m = matrix;
        int n = size;
        int sign = 1;
        for (int k = 0; k < n; k++) {
            int top = k * n;
            int pivot = k;
            double largest = Math.abs(m[top + k]);
            for (int row = k + 1, at = top + n + k; row < n; row++, at += n) {
                double candidate = Math.abs(m[at]);
                if (candidate > largest) {
                    largest = candidate;
                    pivot = row;
                }
            }
            pivots[k] = pivot;
            if (!(largest > 0)) {
                return 0;
            }
            if (pivot != k) {
                sign = -sign;
                swap(m, top, pivot * n, n);
            }
            double diagonal = m[top + k];
            if (diagonal < 0) {
                sign = -sign;
            }
            int end = top + n;
            for (int row = k + 1, at = end + k; row < n; row++, at += n) {
                double factor = m[at];
                if (factor != 0) {
                    factor /= diagonal;
                    m[at] = factor;
                    for (int from = top + k + 1, to = at + 1; from < end; from++, to++) {
                        m[to] -= factor * m[from];
                    }
                }
            }
        }
        return sign;
    }

    private static void swap(double[] m, int one, int other, int count) {
        for (int i = 0; i < count; i++) {
            double kept = m[one + i];
            m[one + i] = m[other + i];
            m[other + i] = kept;
        }
    }

    /** Solves for a right-hand side in place, after {@link #factor}. */
    public void solve(double[] right) {
        double[] m = matrix;
        int n = size;
        for (int k = 0; k < n; k++) {
            double swap = right[pivots[k]];
            right[pivots[k]] = right[k];
            right[k] = swap;
        }
        for (int row = 1; row < n; row++) {
            double sum = right[row];
            for (int column = 0, at = row * n; column < row; column++, at++) {
                sum -= m[at] * right[column];
            }
            right[row] = sum;
        }
        for (int row = n - 1; row >= 0; row--) {
            double sum = right[row];
            for (int column = row + 1, at = row * n + row + 1; column < n; column++, at++) {
                sum -= m[at] * right[column];
            }
            right[row] = sum / m[row * n + row];
        }
    }
}
