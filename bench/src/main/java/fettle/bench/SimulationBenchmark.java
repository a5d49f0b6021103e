package fettle.bench;

import fettle.engine.pack.simulation.Bench;
import fettle.engine.pack.simulation.Protocol;
import fettle.engine.pack.simulation.Simulation;
import fettle.engine.pack.simulation.Summary;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;

/** Cell-steps per second and whole charges, on one thread. */
@State(Scope.Benchmark)
@Threads(1)
@Fork(value = 2, jvmArgsAppend = "-XX:+UseSerialGC") // as ./fettle runs
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
public class SimulationBenchmark {
    private static final int CELLS = 6;
    private static final int HOUR = 3600;
    private static final int DAY_HOURS = 24;

    private final Bench bench = SixCells.bench();
    private final Protocol hour = SixCells.cycles(1);
    private final Protocol day = SixCells.cycles(DAY_HOURS);
    private final Protocol charge = SixCells.charge();
    private final Protocol power = SixCells.power();

    /** Cell-steps at constant current: two pairs, heat and temperature law. */
    @Benchmark
    @BenchmarkMode(Mode.Throughput)
    @OutputTimeUnit(TimeUnit.MICROSECONDS)
    @OperationsPerInvocation(CELLS * HOUR)
    public Summary cellSteps() {
        return Simulation.run(bench, hour);
    }

    /** The same for a day: what it allocates is to stay that of an hour but for the list of steps. */
    @Benchmark
    @BenchmarkMode(Mode.Throughput)
    @OutputTimeUnit(TimeUnit.MICROSECONDS)
    @OperationsPerInvocation(CELLS * HOUR * DAY_HOURS)
    public Summary cellStepsOfADay() {
        return Simulation.run(bench, day);
    }

    /** An hour's charge of a 6S pack with its change from current to voltage limit. */
    @Benchmark
    @BenchmarkMode(Mode.AverageTime)
    @OutputTimeUnit(TimeUnit.MICROSECONDS)
    public Summary hourOfCharge() {
        return Simulation.run(bench, charge);
    }

    /** A 6S pack at constant power. */
    @Benchmark
    @BenchmarkMode(Mode.AverageTime)
    @OutputTimeUnit(TimeUnit.MICROSECONDS)
    public Summary hourAtConstantPower() {
        return Simulation.run(bench, power);
    }
}
