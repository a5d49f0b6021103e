package fettle.engine.health.identification;

import fettle.engine.cell.RestCurve;
import fettle.engine.units.InputException;
import fettle.engine.working.Citation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A cell's own rest-voltage curve and capacity from one slow discharge, full to empty.
 *
 * <p>Formula: rest volts = volts + i·R, R what a long load sees; charge by counting, 1 at the first row, 0 at the last. The
 * first half per cent is carried on from below, for there the load still settles. Holds
 * for discharges of C/10 and slower: the correction is then a few millivolts.
 *
 * @param curve the curve; its band is half the correction
 * @param capacityCoulombs what was counted out [C]
 */
public record SlowCurve(RestCurve curve, double capacityCoulombs) {
    private static final int KNOTS = 200;
    private static final double SETTLING_CHARGE = 0.003; // the first minutes of load show settling, not the curve
    private static final int SLOPE_KNOTS = 2; // far enough apart for the steps of a meter
    private static final double LEAST_RISE_VOLTS = 1e-5;

    /**
     * The curve of a discharge.
     *
     * @param discharge from the last row of rest before it to its last loaded row
     * @param settledOhms what a long load sees of the cell's resistance [Ω]
     * @param citation whose measurement it is
     */
    public static SlowCurve of(LoadWindow discharge, double settledOhms, Citation citation) {
        int rows = discharge.rows();
        double[] counted = new double[rows];
        for (int row = 1; row < rows; row++) {
            double step = discharge.seconds(row) - discharge.seconds(row - 1);
            counted[row] = counted[row - 1] + 0.5 * (discharge.amps(row) + discharge.amps(row - 1)) * step;
        }
        double capacity = counted[rows - 1];
        if (!(capacity > 0)) {
            throw new InputException(
                    "discharge",
                    "the slow discharge took out " + capacity
                            + " C; expected more than 0. Check the sign of the current.");
        }
        List<double[]> knots = new ArrayList<>();
        for (int row = rows - 1; row >= 0; row--) {
            double charge = 1 - counted[row] / capacity;
            double volts = discharge.volts(row) + settledOhms * discharge.amps(row);
            boolean far = knots.isEmpty() || charge >= knots.get(knots.size() - 1)[0] + 1.0 / KNOTS;
            boolean rises = knots.isEmpty() || volts > knots.get(knots.size() - 1)[1] + LEAST_RISE_VOLTS;
            if (far && rises && charge < 1 - SETTLING_CHARGE) {
                knots.add(new double[] {charge, volts});
            }
        }
        knots.add(full(knots));
        double[] charge = knots.stream().mapToDouble(knot -> knot[0]).toArray();
        double[] volts = knots.stream().mapToDouble(knot -> knot[1]).toArray();
        double[] band = new double[charge.length];
        Arrays.fill(band, 0.5 * settledOhms * counted[rows - 1] / discharge.durationSeconds());
        return new SlowCurve(RestCurve.of(charge, volts, band, citation), capacity);
    }

    /** The line through the last settled knots, carried on to charge 1. */
    private static double[] full(List<double[]> knots) {
        double[] last = knots.get(knots.size() - 1);
        double[] before = knots.get(Math.max(0, knots.size() - 1 - SLOPE_KNOTS));
        double slope = (last[1] - before[1]) / (last[0] - before[0]);
        return new double[] {1, last[1] + slope * (1 - last[0])};
    }
}
