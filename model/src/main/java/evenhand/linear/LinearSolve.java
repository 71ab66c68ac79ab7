package evenhand.linear;

/** Gaussian elimination with partial pivoting over one flat array that is kept for use again and again. */
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
        int sign = 1;
        for (int k = 0; k < size; k++) {
            int pivot = k;
            double largest = Math.abs(matrix[k * size + k]);
            for (int row = k + 1; row < size; row++) {
                double candidate = Math.abs(matrix[row * size + k]);
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
                for (int column = 0; column < size; column++) {
                    double swap = matrix[k * size + column];
                    matrix[k * size + column] = matrix[pivot * size + column];
                    matrix[pivot * size + column] = swap;
                }
            }
            double diagonal = matrix[k * size + k];
            if (diagonal < 0) {
                sign = -sign;
            }
            for (int row = k + 1; row < size; row++) {
                double factor = matrix[row * size + k];
                if (factor != 0) {
                    factor /= diagonal;
                    matrix[row * size + k] = factor;
                    for (int column = k + 1; column < size; column++) {
                        matrix[row * size + column] -= factor * matrix[k * size + column];
                    }
                }
            }
        }
        return sign;
    }

    /** Solves for a right-hand side in place, after {@link #factor}. */
    public void solve(double[] right) {
        for (int k = 0; k < size; k++) {
            double swap = right[pivots[k]];
            right[pivots[k]] = right[k];
            right[k] = swap;
        }
        for (int row = 1; row < size; row++) {
            double sum = right[row];
            for (int column = 0; column < row; column++) {
                sum -= matrix[row * size + column] * right[column];
            }
            right[row] = sum;
        }
        for (int row = size - 1; row >= 0; row--) {
            double sum = right[row];
            for (int column = row + 1; column < size; column++) {
                sum -= matrix[row * size + column] * right[column];
            }
            right[row] = sum / matrix[row * size + row];
        }
    }
}
