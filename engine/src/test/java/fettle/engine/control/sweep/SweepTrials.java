package fettle.engine.control.sweep;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Sweeps of random servos on the imagined bench, and how far the analysis is from their truth. */
final class SweepTrials {
    private final double noiseAmps;
    private final double stepMicros;
    private final Random random;
    private final List<Double> errorMicros = new ArrayList<>();
    private int sides;
    private int withinTwo;
    private int falseBindings;
    private int freeSweeps;

    SweepTrials(double noiseAmps, double stepMicros, long seed) {
        this.noiseAmps = noiseAmps;
        this.stepMicros = stepMicros;
        this.random = new Random(seed);
    }

    SweepTrials bound(int count) {
        for (int trial = 0; trial < count; trial++) {
            ServoBench bench = bench(1000 + 150 * random.nextDouble(), 1850 + 150 * random.nextDouble());
            SweepResult result = analyse(bench, bench.lowContact() - beyond(), bench.highContact() + beyond());
            take(result.low(), bench.lowContact());
            take(result.high(), bench.highContact());
        }
        return this;
    }

    SweepTrials free(int count) {
        for (int trial = 0; trial < count; trial++) {
            SweepResult result = analyse(bench(0, 9999), 1000, 2000);
            falseBindings += result.low() == null && result.high() == null ? 0 : 1;
            freeSweeps++;
        }
        return this;
    }

    double medianMicros() {
        return quantile(0.5);
    }

    double quantile(double share) {
        double[] rising =
                errorMicros.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        return rising[(int) (share * (rising.length - 1))];
    }

    double missedShare() {
        return 1 - errorMicros.size() / (double) sides;
    }

    double withinTwoDeviations() {
        return withinTwo / (double) errorMicros.size();
    }

    double falseShare() {
        return falseBindings / (double) freeSweeps;
    }

    private void take(Binding found, double truthMicros) {
        sides++;
        if (found != null) {
            double error = Math.abs(found.pulseSeconds().value() * 1e6 - truthMicros);
            errorMicros.add(error);
            withinTwo += error <= 2e6 * found.pulseSeconds().standardDeviation() ? 1 : 0;
        }
    }

    private SweepResult analyse(ServoBench bench, double from, double to) {
        List<SweepPoint> points = new ArrayList<>(bench.sweep(from, to, random));
        if (random.nextBoolean()) {
            points.addAll(bench.sweep(to, from, random));
        }
        return SweepAnalysis.of(Sweep.of(points));
    }

    private double beyond() {
        return 40 + 120 * random.nextDouble();
    }

    private ServoBench bench(double lowContact, double highContact) {
        double friction = 0.1 + 0.25 * random.nextDouble();
        return new ServoBench(
                stepMicros,
                noiseAmps,
                lowContact,
                highContact,
                0.004 * Math.pow(5, random.nextDouble()),
                0.004 * Math.pow(10, random.nextDouble()),
                1 + 0.5 * random.nextDouble(),
                0.8 + 1.7 * random.nextDouble(),
                friction,
                0.08 * friction * random.nextDouble(),
                60 + 400 * random.nextDouble(),
                random.nextBoolean() ? 0 : 0.0006 * random.nextDouble(),
                1400 + 200 * random.nextDouble(),
                random.nextBoolean() ? 0 : 0.02);
    }

    @Override
    public String toString() {
        return String.format(
                "%2.0f mA, %2.0f µs: median %4.1f µs, 95 %% %5.1f µs, missed %4.1f %%, within 2 sd %3.0f %%, false %4.2f %%",
                1000 * noiseAmps,
                stepMicros,
                errorMicros.isEmpty() ? Double.NaN : medianMicros(),
                errorMicros.isEmpty() ? Double.NaN : quantile(0.95),
                100 * missedShare(),
                100 * withinTwoDeviations(),
                100 * falseShare());
    }

    /** Prints the table of docs/accuracy.md. */
    public static void main(String[] arguments) {
        for (double noise : new double[] {0.005, 0.02, 0.04}) {
            for (double step : new double[] {5, 10, 25}) {
                System.out.println(
                        new SweepTrials(noise, step, 20_261_125).bound(1000).free(2000));
            }
        }
    }
}
