package fettle.book.intake;

import fettle.engine.trace.Trace;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Rows on their way to a trace: columns that grow, and what is missing in them filled.
 *
 * <p>Pack volts and current are filled by the straight line between neighbours up to ten seconds apart; rows without
 * them beyond that are left out. Cells and temperature are filled over a minute and stay {@code NaN} beyond. Spans:
 * common practice, no source.
 */
final class Samples {
    private static final double BRIDGE_SECONDS = 10;
    private static final double SLOW_BRIDGE_SECONDS = 60;
    private static final int FIRST_CAPACITY = 4096;

    /** Places in a row's values: time, pack volts, current, temperature, then the cells. */
    static final int TIME = 0;

    static final int PACK = 1;
    static final int AMPS = 2;
    static final int TEMPERATURE = 3;
    static final int FIRST_CELL = 4;

    private final int cells;
    private final double[][] columns;
    private int size;
    private long filled;
    private long dropped;

    Samples(int cells) {
        this.cells = cells;
        this.columns = new double[FIRST_CELL + cells][FIRST_CAPACITY];
    }

    int size() {
        return size;
    }

    double lastSeconds() {
        return size == 0 ? Double.NEGATIVE_INFINITY : columns[TIME][size - 1];
    }

    void add(double seconds, double[] values) {
        if (size == columns[TIME].length) {
            for (int i = 0; i < columns.length; i++) {
                columns[i] = Arrays.copyOf(columns[i], 2 * size);
            }
        }
        columns[TIME][size] = seconds;
        for (int i = PACK; i < columns.length; i++) {
            columns[i][size] = values[i];
        }
        size++;
    }

    void clear() {
        size = 0;
    }

    /** The trace of what is held; {@code null} if no row has volts or current. */
    @Nullable
    Trace trace(@Nullable Instant startedAt) {
        sumCells();
        boolean volts = hasAny(PACK);
        boolean amps = hasAny(AMPS);
        if (volts) {
            fill(columns[PACK], BRIDGE_SECONDS);
        }
        if (amps) {
            fill(columns[AMPS], BRIDGE_SECONDS);
        }
        keepWhole(volts, amps);
        if (size == 0 || !(volts || amps)) {
            return null;
        }
        fill(columns[TEMPERATURE], SLOW_BRIDGE_SECONDS);
        double[][] cellVolts = new double[cells][];
        for (int cell = 0; cell < cells; cell++) {
            fill(columns[FIRST_CELL + cell], SLOW_BRIDGE_SECONDS);
            cellVolts[cell] = column(FIRST_CELL + cell, true);
        }
        return new Trace(
                Arrays.copyOf(columns[TIME], size),
                column(PACK, volts),
                column(AMPS, amps),
                cellVolts,
                column(TEMPERATURE, hasAny(TEMPERATURE)),
                startedAt);
    }

    /** Where only cells were logged, the pack has their sum. */
    private void sumCells() {
        if (cells == 0 || hasAny(PACK)) {
            return;
        }
        for (int i = 0; i < size; i++) {
            double sum = 0;
            for (int cell = 0; cell < cells; cell++) {
                sum += columns[FIRST_CELL + cell][i];
            }
            columns[PACK][i] = sum;
        }
    }

    private boolean hasAny(int column) {
        for (int i = 0; i < size; i++) {
            if (!Double.isNaN(columns[column][i])) {
                return true;
            }
        }
        return false;
    }

    private double[] column(int column, boolean logged) {
        return logged ? Arrays.copyOf(columns[column], size) : new double[0];
    }

    private void fill(double[] values, double longestSeconds) {
        double[] time = columns[TIME];
        int known = -1;
        for (int i = 0; i < size; i++) {
            if (Double.isNaN(values[i])) {
                continue;
            }
            if (known >= 0 && known < i - 1 && time[i] - time[known] <= longestSeconds) {
                for (int j = known + 1; j < i; j++) {
                    double share = (time[j] - time[known]) / (time[i] - time[known]);
                    values[j] = values[known] + share * (values[i] - values[known]);
                    filled++;
                }
            }
            known = i;
        }
    }

    private void keepWhole(boolean volts, boolean amps) {
        int kept = 0;
        for (int i = 0; i < size; i++) {
            boolean whole = !(volts && Double.isNaN(columns[PACK][i])) && !(amps && Double.isNaN(columns[AMPS][i]));
            if (whole) {
                for (double[] column : columns) {
                    column[kept] = column[i];
                }
                kept++;
            }
        }
        dropped += size - kept;
        size = kept;
    }

    void remark(List<String> remarks) {
        if (filled > 0) {
            remarks.add((filled == 1 ? "one missing value was" : filled + " missing values were")
                    + " filled by the straight line between neighbours.");
        }
        if (dropped > 0) {
            remarks.add((dropped == 1 ? "one row" : dropped + " rows") + " without volts or current left out.");
        }
    }
}
