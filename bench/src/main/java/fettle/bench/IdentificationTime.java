package fettle.bench;

import fettle.engine.health.identification.Identification;
import fettle.engine.health.identification.LoadWindow;
import fettle.engine.health.identification.PairCount;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;

/** What {@link IdentificationBenchmark} measures, by the thread's own processor time: fit for a machine that is busy with other work. */
public final class IdentificationTime {
    private static final int ROWS = 1_000_000;
    private static final double HERTZ = 100;
    private static final int WARM_UP = 8;
    private static final int RUNS = 25;
    private static final int LIBRARY_RUNS = 3;
    private static final double NANOS_PER_MILLI = 1e6;

    private IdentificationTime() {}

    public static void main(String[] arguments) {
        MadeUpLog log = MadeUpLog.of(ROWS, HERTZ, 5);
        LoadWindow window = window(log);
        double own =
                median(RUNS, () -> Identification.of(window, IdentificationBenchmark.belief(), PairCount.AS_DATA_TELL));
        double copied = median(
                RUNS, () -> Identification.of(window(log), IdentificationBenchmark.belief(), PairCount.AS_DATA_TELL));
        double library = median(LIBRARY_RUNS, () -> GeneralLeastSquares.fit(log));
        System.out.printf(
                Locale.ROOT,
                "%d rows: identified in %.0f ms, %.0f ms with copying and checking of the window; general library %.0f ms, %.0f times%n",
                ROWS,
                own,
                copied,
                library,
                library / own);
    }

    private static LoadWindow window(MadeUpLog log) {
        return LoadWindow.of(log.seconds(), log.amps(), log.volts(), 298.15);
    }

    /** Median processor time of a thread [ms]. */
    private static double median(int runs, Runnable work) {
        double[] millis = new double[runs];
        for (int run = -Math.min(WARM_UP, runs); run < runs; run++) {
            long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            work.run();
            if (run >= 0) {
                millis[run] =
                        (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before) / NANOS_PER_MILLI;
            }
        }
        Arrays.sort(millis);
        return millis[runs / 2];
    }
}
