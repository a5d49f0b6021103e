package fettle.bench;

import fettle.engine.health.TraceHealth;
import fettle.engine.pack.Pack;
import fettle.engine.trace.Trace;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** Every trace of a large book looked at again, as after a change of the model: whole process, both processors. */
public final class Reanalysis {
    private static final int ROWS = 3000; // five minutes at 10 Hz
    private static final double HERTZ = 10;
    private static final int CELLS = 3;
    private static final int DIFFERENT = 200; // so many different logs, each used again and again

    private Reanalysis() {}

    public static void main(String[] arguments) {
        int count = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 5000;
        int cells = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 0;
        Pack pack = pack();
        Trace[] traces = IntStream.range(0, DIFFERENT)
                .mapToObj(which -> trace(MadeUpLog.of(ROWS, HERTZ, which), cells))
                .toArray(Trace[]::new);
        long processorBegin = processorNanos();
        long begin = System.nanoTime();
        long told = IntStream.range(0, count)
                .parallel()
                .filter(which -> TraceHealth.of(traces[which % DIFFERENT], pack).cells().stream()
                        .allMatch(cell -> cell.circuit() != null))
                .count();
        double seconds = 1e-9 * (System.nanoTime() - begin);
        double processorSeconds = 1e-9 * (processorNanos() - processorBegin);
        int processors = Runtime.getRuntime().availableProcessors();
        System.out.printf(
                Locale.ROOT,
                "%d traces of %d rows, %s: %.1f s, %.0f traces/s on %d processors; by processor time, as if nothing else ran, %.0f; a resistance told in %d%n",
                count,
                ROWS,
                cells == 0 ? "pack volts alone" : cells + " cells logged",
                seconds,
                count / seconds,
                processors,
                processors * count / processorSeconds,
                told);
    }

    private static long processorNanos() {
        return ProcessHandle.current().info().totalCpuDuration().orElseThrow().toNanos();
    }

    private static Pack pack() {
        return new Pack(
                "P01",
                MadeUpLog.CHEMISTRY,
                CELLS,
                1,
                MadeUpLog.CAPACITY_COULOMBS,
                null,
                null,
                null,
                "",
                null,
                "",
                Pack.Identity.CONFIRMED,
                List.of(),
                "");
    }

    private static Trace trace(MadeUpLog log, int cells) {
        double[] packVolts = new double[ROWS];
        for (int row = 0; row < ROWS; row++) {
            packVolts[row] = CELLS * log.volts()[row];
        }
        double[][] cellVolts =
                IntStream.range(0, cells).mapToObj(cell -> log.volts()).toArray(double[][]::new);
        return new Trace(log.seconds(), packVolts, log.amps(), cellVolts, new double[0], null);
    }
}
