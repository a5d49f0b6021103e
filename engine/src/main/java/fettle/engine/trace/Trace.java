package fettle.engine.trace;

import fettle.engine.units.InputException;
import java.time.Instant;
import java.util.Arrays;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * One recorded time series of one pack, as columns. A column nobody logged has length 0; every other has one value a
 * sample. The arrays are shared, not copied; nobody writes to them.
 *
 * @param timeSeconds time of each sample [s] on the trace's own clock, rising strictly; sample steps may differ
 * @param packVolts volts of the whole pack [V], finite; empty if not logged
 * @param currentAmps current [A], discharge positive, finite; empty if not logged
 * @param cellVolts volts of each cell [V], first index the cell, second the sample; {@code NaN} where that cell was not
 *     logged near that time; no rows if cells were not logged
 * @param temperatureKelvins temperature of the pack [K]; {@code NaN} where not logged near that time; empty if not
 *     logged
 * @param startedAt the instant of time 0; {@code null} if the logger knew no date
 */
public record Trace(
        double[] timeSeconds,
        double[] packVolts,
        double[] currentAmps,
        double[][] cellVolts,
        double[] temperatureKelvins,
        @Nullable Instant startedAt) {
    private static final double[] NONE = {};

    public Trace {
        if (timeSeconds.length == 0) {
            throw new InputException("time", "the trace has no samples; expected at least one row of figures.");
        }
        for (int i = 0; i < timeSeconds.length; i++) {
            if (!Double.isFinite(timeSeconds[i]) || (i > 0 && !(timeSeconds[i] > timeSeconds[i - 1]))) {
                throw new InputException(
                        "time",
                        String.format(
                                Locale.ROOT,
                                "time of sample %d is %.3f s; expected it to rise from sample to sample. Sort the rows.",
                                i + 1,
                                timeSeconds[i]));
            }
        }
        refuseUnlessWhole("packVolts", packVolts, timeSeconds.length);
        refuseUnlessWhole("currentAmps", currentAmps, timeSeconds.length);
        refuseUnlessFits("temperatureKelvins", temperatureKelvins, timeSeconds.length);
        for (double[] cell : cellVolts) {
            if (cell.length != timeSeconds.length) {
                throw new InputException("cellVolts", "a cell has " + cell.length + " values; expected one a sample.");
            }
        }
    }

    /** A trace of pack volts and current alone. */
    public static Trace of(double[] timeSeconds, double[] packVolts, double[] currentAmps) {
        return new Trace(timeSeconds, packVolts, currentAmps, new double[0][], NONE, null);
    }

    /** Number of samples, ≥ 1. */
    public int size() {
        return timeSeconds.length;
    }

    /** Number of cells logged one by one; 0 if none. */
    public int cells() {
        return cellVolts.length;
    }

    public boolean hasVolts() {
        return packVolts.length > 0;
    }

    public boolean hasCurrent() {
        return currentAmps.length > 0;
    }

    public boolean hasTemperature() {
        return temperatureKelvins.length > 0;
    }

    /** Time between first and last sample [s]. */
    public double durationSeconds() {
        return timeSeconds[size() - 1] - timeSeconds[0];
    }

    /** The samples from {@code from} (inclusive) to {@code to} (exclusive), their times unchanged. */
    public Trace part(int from, int to) {
        double[][] cells = new double[cells()][];
        for (int cell = 0; cell < cells.length; cell++) {
            cells[cell] = Arrays.copyOfRange(cellVolts[cell], from, to);
        }
        return new Trace(
                Arrays.copyOfRange(timeSeconds, from, to),
                cut(packVolts, from, to),
                cut(currentAmps, from, to),
                cells,
                cut(temperatureKelvins, from, to),
                startedAt);
    }

    private static double[] cut(double[] column, int from, int to) {
        return column.length == 0 ? column : Arrays.copyOfRange(column, from, to);
    }

    private static void refuseUnlessWhole(String field, double[] column, int size) {
        refuseUnlessFits(field, column, size);
        for (double value : column) {
            if (!Double.isFinite(value)) {
                throw new InputException(field, field + " holds a value that is not a number; expected none.");
            }
        }
    }

    private static void refuseUnlessFits(String field, double[] column, int size) {
        if (column.length != 0 && column.length != size) {
            throw new InputException(
                    field, field + " has " + column.length + " values; expected none or one a sample, " + size + ".");
        }
    }
}
