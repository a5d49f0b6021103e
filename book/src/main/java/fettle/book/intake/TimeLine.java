package fettle.book.intake;

import fettle.engine.units.InputException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;

/**
 * Makes rising time of a logger's stamps: clocks run on past midnight, rows a little out of order are put in order,
 * repeated rows are dropped, rows that share a stamp are spread over the step to the next, and where the clock is set
 * back the log goes on ten minutes later. Holds a few dozen rows at a time.
 */
final class TimeLine {
    /** Takes rows in order of time. */
    @FunctionalInterface
    interface Sink {
        void accept(double seconds, double[] values);
    }

    /** What a pause of unknown length is shown as [s]. */
    static final double PAUSE_SECONDS = 600;

    private static final int ROWS_HELD = 32;
    private static final int MOST_ROWS_OF_A_STAMP = 10_000;
    private static final double HALF_DAY_SECONDS = 43_200;
    private static final double WEEK_SECONDS = 604_800;
    private static final double LEAST_RESTART_SECONDS = 1;
    private static final double UNKNOWN_STEP_SECONDS = 1;

    private final boolean clock;
    private final Sink sink;
    private final Deque<double[]> held = new ArrayDeque<>();
    private double offset;
    private double newest = Double.NEGATIVE_INFINITY;
    private double usualStep = Double.NaN;

    private long repeated;
    private long shared;
    private long reordered;
    private long late;
    private int midnights;
    private final List<String> jumps = new ArrayList<>();

    /** @param clock whether stamps start again at midnight */
    TimeLine(boolean clock, Sink sink) {
        this.clock = clock;
        this.sink = sink;
    }

    /** @param values figures of the row; the place of the time is written here */
    void add(double stamp, double[] values, long line) {
        double seconds = stamp + offset;
        if (seconds < newest || seconds - newest > WEEK_SECONDS && !held.isEmpty()) {
            seconds = mended(seconds, line);
        }
        if (Double.isNaN(seconds)) {
            late++;
            return;
        }
        values[Samples.TIME] = seconds;
        hold(values);
        newest = Math.max(newest, seconds);
        while (held.size() > ROWS_HELD && held.peekFirst()[Samples.TIME] < held.peekLast()[Samples.TIME]) {
            emitGroup();
        }
        if (held.size() > MOST_ROWS_OF_A_STAMP) {
            throw new InputException(
                    "time",
                    "the clock stands still for more than " + MOST_ROWS_OF_A_STAMP + " rows up to line " + line
                            + ". Name the column that holds the time, or mend the log.");
        }
    }

    void finish() {
        while (!held.isEmpty()) {
            emitGroup();
        }
    }

    /** The time of a row whose stamp does not follow; {@code NaN} if its place is gone by. */
    private double mended(double seconds, long line) {
        double back = newest - seconds;
        if (clock && back > HALF_DAY_SECONDS) {
            offset += Stamps.DAY_SECONDS;
            midnights++;
            return seconds + Stamps.DAY_SECONDS;
        }
        boolean held = back > 0 && seconds > this.held.peekFirst()[Samples.TIME];
        if (held || back > 0 && back <= LEAST_RESTART_SECONDS) {
            boolean inReach = seconds >= this.held.peekFirst()[Samples.TIME];
            reordered += inReach ? 1 : 0;
            return inReach ? seconds : Double.NaN;
        }
        jumps.add(String.format(
                Locale.ROOT,
                "line %d: the clock jumps %s by %.0f s; how long the pause was is not known, it is shown as %.0f min.",
                line,
                back > 0 ? "back" : "forward",
                Math.abs(back),
                PAUSE_SECONDS / 60));
        double moved = newest + PAUSE_SECONDS;
        offset += moved - seconds;
        return moved;
    }

    private void hold(double[] row) {
        if (held.isEmpty() || row[Samples.TIME] >= held.peekLast()[Samples.TIME]) {
            held.addLast(row);
            return;
        }
        Deque<double[]> after = new ArrayDeque<>();
        while (!held.isEmpty() && held.peekLast()[Samples.TIME] > row[Samples.TIME]) {
            after.addFirst(held.removeLast());
        }
        held.addLast(row);
        held.addAll(after);
    }

    /** Emits the rows that share the oldest stamp. */
    private void emitGroup() {
        double[] first = held.removeFirst();
        double[] second = held.peekFirst();
        if (second != null && second[Samples.TIME] > first[Samples.TIME]) {
            usualStep = second[Samples.TIME] - first[Samples.TIME];
            sink.accept(first[Samples.TIME], first);
            return;
        }
        List<double[]> group = new ArrayList<>(List.of(first));
        Iterator<double[]> rest = held.iterator();
        while (rest.hasNext()) {
            double[] next = rest.next();
            if (next[Samples.TIME] > first[Samples.TIME]) {
                break;
            }
            if (Arrays.equals(next, group.get(group.size() - 1))) {
                repeated++;
            } else {
                group.add(next);
            }
            rest.remove();
        }
        double step = held.isEmpty() ? usualStep : held.peekFirst()[Samples.TIME] - first[Samples.TIME];
        double span = Double.isNaN(usualStep) ? step : Math.min(step, Math.max(usualStep, 0));
        span = Double.isNaN(span) ? UNKNOWN_STEP_SECONDS : span;
        shared += group.size() - 1;
        for (int i = 0; i < group.size(); i++) {
            sink.accept(first[Samples.TIME] + span * i / group.size(), group.get(i));
        }
        usualStep = Double.isNaN(step) ? usualStep : step;
    }

    /** What was mended, in sentences. */
    List<String> remarks() {
        List<String> remarks = new ArrayList<>(jumps);
        tell(remarks, midnights, "the clock passed midnight ", " times", "the clock passed midnight once");
        tell(remarks, repeated, "", " rows said the same twice and were left out", "one row said the same twice");
        tell(
                remarks,
                shared,
                "",
                " rows share a time stamp with another and were spread over the step to the next",
                "one row shares a time stamp with another and was set behind it");
        tell(remarks, reordered, "", " rows came late and were put in order", "one row came late and was put in order");
        tell(remarks, late, "", " rows came too late to be put in order and were left out", "one row came too late");
        return remarks;
    }

    private static void tell(List<String> remarks, long count, String before, String after, String once) {
        if (count == 1) {
            remarks.add(once + ".");
        } else if (count > 1) {
            remarks.add(before + count + after + ".");
        }
    }
}
