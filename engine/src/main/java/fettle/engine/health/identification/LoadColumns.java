package fettle.engine.health.identification;

/** What a window's load does to its volts for a ladder of time constants, with the products of all of it: made once, asked often. */
final class LoadColumns {
    private static final int MOST_ROWS = 800; // products are taken from about so many rows: enough for a start

    private final double delaySeconds;
    private final double[] taus;
    private final int stride;
    private final double[] weights;
    private final double[] volts;
    private final double[] counted;
    private final double[][] columns;
    private final double[][] products;

    /** @param weights of every row of the window */
    LoadColumns(LoadWindow window, CellBelief belief, double delaySeconds, double[] weights, double[] taus) {
        this.delaySeconds = delaySeconds;
        this.taus = taus.clone();
        this.stride = Math.max(1, window.rows() / MOST_ROWS);
        int rows = (window.rows() + stride - 1) / stride;
        double[] amps = window.ampsDelayed(delaySeconds);
        double[] countedAll = new CircuitModel(window, belief.curve()).counted(amps);
        this.weights = new double[rows];
        this.volts = new double[rows];
        this.counted = new double[rows];
        this.columns = new double[taus.length + 1][rows];
        for (int at = 0; at < rows; at++) {
            this.weights[at] = weights[at * stride];
            volts[at] = window.volts(at * stride);
            counted[at] = countedAll[at * stride];
            columns[0][at] = -amps[at * stride];
        }
        for (int k = 0; k < taus.length; k++) {
            double[] smoothed = Polarisation.of(window, amps, taus[k]);
            for (int at = 0; at < rows; at++) {
                columns[k + 1][at] = -smoothed[at * stride];
            }
        }
        this.products = new double[columns.length][columns.length];
        for (int i = 0; i < columns.length; i++) {
            for (int j = 0; j <= i; j++) {
                products[i][j] = product(columns[i], columns[j]);
                products[j][i] = products[i][j];
            }
        }
    }

    double delaySeconds() {
        return delaySeconds;
    }

    int taus() {
        return taus.length;
    }

    double tau(int which) {
        return taus[which];
    }

    int stride() {
        return stride;
    }

    /** Volts of the rows looked at [V]; not to be changed. */
    double[] volts() {
        return volts;
    }

    /** Charge taken out at the rows looked at [C]; not to be changed. */
    double[] counted() {
        return counted;
    }

    /** Less amps, then less the current smoothed with each time constant; not to be changed. */
    double[] column(int which) {
        return columns[which];
    }

    double product(int left, int right) {
        return products[left][right];
    }

    /** Σ w·left·right. */
    double product(double[] left, double[] right) {
        double sum = 0;
        for (int row = 0; row < weights.length; row++) {
            sum += weights[row] * left[row] * right[row];
        }
        return sum;
    }
}
