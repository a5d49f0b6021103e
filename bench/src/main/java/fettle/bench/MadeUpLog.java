package fettle.bench;

import fettle.engine.cell.Chemistry;
import fettle.engine.cell.DefaultCurves;
import fettle.engine.cell.RestCurve;
import java.util.Random;

/**
 * A run of a made-up cell as a logger would write it: a throttle that steps, two pairs, noise white and slow, volts in
 * millivolts. What the figures are is of no weight; how many rows there are is.
 *
 * @param seconds time of each row [s]
 * @param amps current [A]
 * @param volts volts of the cell [V]
 */
record MadeUpLog(double[] seconds, double[] amps, double[] volts) {
    static final Chemistry CHEMISTRY = Chemistry.LIPO;
    static final RestCurve CURVE = DefaultCurves.of(CHEMISTRY);
    static final double CAPACITY_COULOMBS = 18_000;
    static final double START_CHARGE = 0.98;
    static final double R0 = 0.005;
    static final double R1 = 0.002;
    static final double R2 = 0.003;
    static final double TAU1 = 4;
    static final double TAU2 = 50;

    private static final double SHARE_USED = 0.75;
    private static final double REST_BEFORE_SECONDS = 20;
    private static final double MEAN_HOLD_SECONDS = 20;
    private static final double WHITE_VOLTS = 0.002;
    private static final double SLOW_VOLTS = 0.001;
    private static final double SLOW_SECONDS = 2;

    static MadeUpLog of(int rows, double hertz, long seed) {
        Random random = new Random(seed);
        double step = 1 / hertz;
        double meanAmps = SHARE_USED * CAPACITY_COULOMBS / (rows * step);
        MadeUpLog log = new MadeUpLog(new double[rows], new double[rows], new double[rows]);
        double charge = START_CHARGE;
        double first = 0;
        double second = 0;
        double slow = 0;
        double level = 0;
        double left = REST_BEFORE_SECONDS;
        double stays = Math.exp(-step / SLOW_SECONDS);
        for (int row = 0; row < rows; row++) {
            if (left <= 0) {
                level = random.nextInt(4) == 0 ? 0 : meanAmps * (0.2 + 2 * random.nextDouble());
                left = 1 - MEAN_HOLD_SECONDS * Math.log(1 - random.nextDouble());
            }
            left -= step;
            charge -= level * step / CAPACITY_COULOMBS;
            first += (level - first) * step / TAU1;
            second += (level - second) * step / TAU2;
            slow = stays * slow + SLOW_VOLTS * Math.sqrt(1 - stays * stays) * random.nextGaussian();
            double read = CURVE.volts(charge) - R0 * level - R1 * first - R2 * second;
            log.seconds[row] = row * step;
            log.amps[row] = level;
            log.volts[row] = Math.rint(1e3 * (read + slow + WHITE_VOLTS * random.nextGaussian())) / 1e3;
        }
        return log;
    }
}
