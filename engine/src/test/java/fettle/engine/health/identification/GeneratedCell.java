package fettle.engine.health.identification;

import fettle.engine.cell.RestCurve;
import java.util.Random;

/**
 * A made-up cell under a made-up load, stepped far finer than it is logged, with noise of a meter: white, slow and in steps.
 *
 * <p>Shares no formula with the estimator: each pair is integrated by the midpoint rule at a twentieth of the logging step.
 */
record GeneratedCell(
        double r0, double[] ohms, double[] taus, double startCharge, double capacityCoulombs, LoadWindow window) {
    private static final int FINE = 20;

    /** What varies from cell to cell. */
    record Recipe(int pairs, double hertz, double seconds, double whiteVolts, double slowVolts, double slowSeconds) {}

    static GeneratedCell of(RestCurve curve, Recipe recipe, Random random) {
        double capacity = 3600 * between(random, 1.0, 6.0);
        double start = between(random, 0.75, 0.98);
        double r0 = 40.0 * between(random, 0.6, 1.6) / capacity;
        double[] ohms = new double[recipe.pairs()];
        double[] taus = new double[recipe.pairs()];
        for (int pair = 0; pair < ohms.length; pair++) {
            ohms[pair] = r0 * between(random, 0.3, 0.9);
            taus[pair] = pair == 0 && ohms.length > 1 ? between(random, 2, 6) : between(random, 25, 80);
        }
        int rows = (int) (recipe.hertz() * recipe.seconds());
        double step = 1 / recipe.hertz();
        double[] amps = load(rows, step, capacity * 0.45 / recipe.seconds(), random);
        double[] volts = volts(curve, amps, step, capacity, start, r0, ohms, taus);
        double[] time = new double[rows];
        double slow = recipe.slowVolts() * random.nextGaussian();
        double stays = Math.exp(-step / recipe.slowSeconds());
        for (int row = 0; row < rows; row++) {
            time[row] = row * step;
            slow = stays * slow + recipe.slowVolts() * Math.sqrt(1 - stays * stays) * random.nextGaussian();
            double read = volts[row] + slow + recipe.whiteVolts() * random.nextGaussian();
            volts[row] = Math.rint(read * 1000) / 1000;
        }
        return new GeneratedCell(r0, ohms, taus, start, capacity, LoadWindow.of(time, amps, volts, 298.15));
    }

    private static double[] load(int rows, double step, double meanAmps, Random random) {
        double[] amps = new double[rows];
        double level = 0;
        double left = 20;
        for (int row = 0; row < rows; row++) {
            if (left <= 0) {
                level = random.nextInt(4) == 0 ? 0 : meanAmps * between(random, 0.2, 2.6);
                left = -20 * Math.log(1 - random.nextDouble()) + 1;
            }
            left -= step;
            amps[row] = level;
        }
        return amps;
    }

    private static double[] volts(
            RestCurve curve,
            double[] amps,
            double step,
            double capacity,
            double start,
            double r0,
            double[] ohms,
            double[] taus) {
        double[] volts = new double[amps.length];
        double[] across = new double[ohms.length];
        double charge = start;
        double fine = step / FINE;
        for (int row = 0; row < amps.length; row++) {
            for (int part = 0; row > 0 && part < FINE; part++) {
                double now = amps[row - 1] + (amps[row] - amps[row - 1]) * (part + 0.5) / FINE;
                charge -= now * fine / capacity;
                for (int pair = 0; pair < ohms.length; pair++) {
                    double half = across[pair] + 0.5 * fine * (now * ohms[pair] - across[pair]) / taus[pair];
                    across[pair] += fine * (now * ohms[pair] - half) / taus[pair];
                }
            }
            volts[row] = curve.volts(charge) - r0 * amps[row];
            for (double drop : across) {
                volts[row] -= drop;
            }
        }
        return volts;
    }

    private static double between(Random random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
