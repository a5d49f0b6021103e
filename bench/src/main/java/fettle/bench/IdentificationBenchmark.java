package fettle.bench;

import fettle.engine.health.identification.CellBelief;
import fettle.engine.health.identification.Identification;
import fettle.engine.health.identification.IdentifiedCircuit;
import fettle.engine.health.identification.LoadWindow;
import fettle.engine.health.identification.PairCount;
import fettle.engine.units.Estimate;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;

/** A cell's circuit from a log in memory, beside a general-purpose least-squares library on the same rows. One thread. */
@State(Scope.Benchmark)
@Threads(1)
@Fork(
        value = 1,
        jvmArgsAppend = {"-XX:+UseSerialGC", "-Xmx3g"})
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class IdentificationBenchmark {
    private static final double HERTZ = 100;

    @Param({"3000", "1000000"})
    private int rows;

    private MadeUpLog log;
    private LoadWindow window;
    private CellBelief belief;

    @Setup
    public void setUp() {
        log = MadeUpLog.of(rows, rows > 100_000 ? HERTZ : HERTZ / 10, 5);
        window = LoadWindow.of(log.seconds(), log.amps(), log.volts(), 298.15);
        belief = belief();
    }

    static CellBelief belief() {
        double capacity = MadeUpLog.CAPACITY_COULOMBS;
        return new CellBelief(
                MadeUpLog.CURVE,
                new Estimate(MadeUpLog.START_CHARGE - 0.01, 0.05, List.of()),
                new Estimate(1.02 * capacity, 0.1 * capacity, List.of()));
    }

    /** Both pair counts tried, with ±, spikes, delay and the rest. */
    @Benchmark
    public IdentifiedCircuit identify() {
        return Identification.of(window, belief, PairCount.AS_DATA_TELL);
    }

    /** The same with the copying and checking of the window. */
    @Benchmark
    public IdentifiedCircuit windowAndIdentify() {
        return Identification.of(
                LoadWindow.of(log.seconds(), log.amps(), log.volts(), 298.15), belief, PairCount.AS_DATA_TELL);
    }

    /** Two pairs, start charge and capacity by Levenberg and Marquardt over every row, from one start near the truth; no ±. */
    @Benchmark
    public double[] generalLibrary() {
        return GeneralLeastSquares.fit(log);
    }
}
