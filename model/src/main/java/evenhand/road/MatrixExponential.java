package evenhand.road;

/**
 * exp(A) of a small matrix by scaling, a Taylor series and squaring, to the last digits of a double.
 *
 * <p>Source: Moler &amp; Van Loan, Nineteen Dubious Ways to Compute the Exponential of a Matrix, 2003, method 3.
 */
final class MatrixExponential {
    /** Terms that a matrix of norm ½ needs for the last digit. */
    private static final int TERMS = 18;

    private MatrixExponential() {}

    static double[][] of(double[][] a) {
        int n = a.length;
        double norm = 0;
        for (double[] row : a) {
            double sum = 0;
            for (double value : row) {
                sum += Math.abs(value);
            }
            norm = Math.max(norm, sum);
        }
        int halvings = Math.max(0, Math.getExponent(norm) + 2);
        double scale = Math.scalb(1.0, -halvings);
        double[][] scaled = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                scaled[i][j] = a[i][j] * scale;
            }
        }
        double[][] result = unit(n);
        for (int term = TERMS; term >= 1; term--) { // 1 + A·(1 + A/2·(1 + A/3·(...)))
            double[][] product = times(scaled, result);
            result = unit(n);
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    result[i][j] += product[i][j] / term;
                }
            }
        }
        for (int i = 0; i < halvings; i++) {
            result = times(result, result);
        }
        return result;
    }

    private static double[][] unit(int n) {
        double[][] unit = new double[n][n];
        for (int i = 0; i < n; i++) {
            unit[i][i] = 1;
        }
        return unit;
    }

    private static double[][] times(double[][] a, double[][] b) {
        int n = a.length;
        double[][] product = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double sum = 0;
                for (int k = 0; k < n; k++) {
                    sum += a[i][k] * b[k][j];
                }
                product[i][j] = sum;
            }
        }
        return product;
    }
}
