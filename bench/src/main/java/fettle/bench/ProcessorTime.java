package fettle.bench;

import fettle.engine.pack.simulation.Bench;
import fettle.engine.pack.simulation.Protocol;
import fettle.engine.pack.simulation.Simulation;
import fettle.engine.pack.simulation.Summary;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;

/** The same measurements by the thread's own processor time: fit for a machine that is busy with other work. */
public final class ProcessorTime {
    private static final int WARM_UP = 1000;
    private static final int RUNS = 1000;
    private static final int CELLS = 6;
    private static final double NANOS_PER_SECOND = 1e9;

    private ProcessorTime() {}

    public static void main(String[] arguments) {
        Bench bench = SixCells.bench();
        tell("constant current", bench, SixCells.cycles(1));
        tell("hour of charge", bench, SixCells.charge());
        tell("constant power", bench, SixCells.power());
    }

    /**
     * Processor time of one run.
     *
     * @param median the median of all runs [s]
     * @param least the least disturbed run [s]
     */
    record Seconds(double median, double least) {}

    static Seconds seconds(Bench bench, Protocol protocol) {
        double[] nanos = new double[RUNS];
        for (int run = -WARM_UP; run < RUNS; run++) {
            long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            Simulation.run(bench, protocol);
            if (run >= 0) {
                nanos[run] = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before;
            }
        }
        Arrays.sort(nanos);
        return new Seconds(nanos[RUNS / 2] / NANOS_PER_SECOND, nanos[0] / NANOS_PER_SECOND);
    }

    private static void tell(String what, Bench bench, Protocol protocol) {
        Summary summary = Simulation.run(bench, protocol);
        Seconds seconds = seconds(bench, protocol);
        double cellSteps = (double) CELLS * summary.timeSteps();
        System.out.printf(
                Locale.ROOT,
                "%-18s %6d time steps of %d cells: median %.3f ms, %.1f million cell-steps/s; least %.3f ms, %.1f million%n",
                what,
                summary.timeSteps(),
                CELLS,
                1e3 * seconds.median(),
                1e-6 * cellSteps / seconds.median(),
                1e3 * seconds.least(),
                1e-6 * cellSteps / seconds.least());
    }
}
