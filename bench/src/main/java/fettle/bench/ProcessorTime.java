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
    private static final int WARM_UP = 300;
    private static final int RUNS = 300;
    private static final int CELLS = 6;
    private static final double NANOS_PER_SECOND = 1e9;

    private ProcessorTime() {}

    public static void main(String[] arguments) {
        Bench bench = SixCells.bench();
        tell("constant current", bench, SixCells.cycles(1));
        tell("hour of charge", bench, SixCells.charge());
        tell("constant power", bench, SixCells.power());
    }

    /** Processor seconds of one run: the median. */
    static double seconds(Bench bench, Protocol protocol) {
        double[] nanos = new double[RUNS];
        for (int run = -WARM_UP; run < RUNS; run++) {
            long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            Simulation.run(bench, protocol);
            if (run >= 0) {
                nanos[run] = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before;
            }
        }
        Arrays.sort(nanos);
        return nanos[RUNS / 2] / NANOS_PER_SECOND;
    }

    private static void tell(String what, Bench bench, Protocol protocol) {
        Summary summary = Simulation.run(bench, protocol);
        double seconds = seconds(bench, protocol);
        System.out.printf(
                Locale.ROOT,
                "%-18s %6d time steps of %d cells: %.3f ms, %.1f million cell-steps/s%n",
                what,
                summary.timeSteps(),
                CELLS,
                1e3 * seconds,
                1e-6 * CELLS * summary.timeSteps() / seconds);
    }
}
