package fettle.engine.health.identification;

/** Symmetric, positive definite equations of a handful of unknowns, solved by Cholesky's factors in place. */
final class SmallSystem {
    private SmallSystem() {}

    /** ln|A| of equations that {@link #solve} has overwritten. */
    static double logDeterminant(double[][] solved) {
        double sum = 0;
        for (int i = 0; i < solved.length; i++) {
            sum += 2 * Math.log(Math.max(Double.MIN_NORMAL, solved[i][i]));
        }
        return sum;
    }

    /**
     * The answer of A x = b; A and b are overwritten.
     *
     * <p>A pivot that rounding has taken to nothing leaves its unknown at 0: the others explain all it could.
     */
    static double[] solve(double[][] a, double[] b) {
        int size = b.length;
        for (int i = 0; i < size; i++) {
            double[] row = a[i];
            for (int j = 0; j <= i; j++) {
                double sum = row[j];
                for (int k = 0; k < j; k++) {
                    sum -= row[k] * a[j][k];
                }
                if (j < i) {
                    row[j] = a[j][j] > 0 ? sum / a[j][j] : 0;
                } else {
                    row[i] = sum > 0 ? Math.sqrt(sum) : 0;
                }
            }
        }
        for (int i = 0; i < size; i++) {
            double sum = b[i];
            for (int k = 0; k < i; k++) {
                sum -= a[i][k] * b[k];
            }
            b[i] = a[i][i] > 0 ? sum / a[i][i] : 0;
        }
        for (int i = size - 1; i >= 0; i--) {
            double sum = b[i];
            for (int k = i + 1; k < size; k++) {
                sum -= a[k][i] * b[k];
            }
            b[i] = a[i][i] > 0 ? sum / a[i][i] : 0;
        }
        return b;
    }
}
