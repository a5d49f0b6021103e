package fettle.engine.health.filter;

import fettle.engine.health.identification.IdentifiedCell;
import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import java.util.List;

/**
 * Follows a cell's charge reading by reading. Not thread-safe; no allocation per reading.
 *
 * <p>State: charge z, smoothed currents of both pairs, slow error b of the circuit. Formula: dz = −i dt/Q, dx = (i − x) dt/τ,
 * db = −b dt/T + noise, V = ocv(z) − k(T)·(R0 i + R1 x1 + R2 x2) + b + white noise.
 *
 * <p>Leaves out: change of capacity and resistance within a run; those show as alarms.
 */
public final class ChargeFilter {
    private static final int CHARGE = 0;
    private static final int FIRST = 1;
    private static final int SECOND = 2;
    private static final int SLOW = 3;
    private static final double CURRENT_DEVIATION_SHARE = 0.01; // of the current: gain of the amps' sensor
    private static final double LOWEST_CHARGE = -0.1;
    private static final double HIGHEST_CHARGE = 1.1;

    private final IdentifiedCell cell;
    private final FilterNoise noise;
    private final SigmaPoints points;
    private final double[] innovation;
    private final InnovationAlarm alarm;
    private double lastSeconds = Double.NaN;
    private double lastAmps;
    private double amps;
    private double factor = 1;

    private ChargeFilter(IdentifiedCell cell, FilterNoise noise, Estimate startCharge) {
        this.cell = cell;
        this.noise = noise;
        this.points = new SigmaPoints(
                new double[] {startCharge.value(), 0, 0, 0},
                new double[] {startCharge.standardDeviation(), 1e-3, 1e-3, noise.slowVolts()});
        this.innovation = points.room();
        this.alarm = new InnovationAlarm();
    }

    /** A filter before its first reading; the pairs are taken as at rest. */
    public static ChargeFilter starting(IdentifiedCell cell, FilterNoise noise, Estimate startCharge) {
        return new ChargeFilter(cell, noise, startCharge);
    }

    /**
     * Takes one reading.
     *
     * @param seconds time, later than the last [s]
     * @param loadAmps current [A]
     * @param volts volts of the cell [V]
     * @param kelvins its temperature [K]
     */
    public void take(double seconds, double loadAmps, double volts, double kelvins) {
        double step = Double.isNaN(lastSeconds) ? 0 : seconds - lastSeconds;
        if (step > 0) {
            predict(step, 0.5 * (lastAmps + loadAmps));
        }
        amps = loadAmps;
        factor = cell.law().factor(kelvins);
        double quick = noise.quickVolts() * noise.quickVolts() / (step > 0 ? step : 1);
        points.update(this::voltsOf, volts, quick, innovation);
        points.mean[CHARGE] = Math.max(LOWEST_CHARGE, Math.min(HIGHEST_CHARGE, points.mean[CHARGE]));
        alarm.take(step, innovation[0], innovation[1]);
        lastSeconds = seconds;
        lastAmps = loadAmps;
    }

    private void predict(double step, double meanAmps) {
        double capacity = cell.capacityCoulombs();
        double drift = noise.driftPerHour() * noise.driftPerHour() * TradeUnit.HOUR.fromSi(step);
        points.step(CHARGE, 1, -meanAmps * step / capacity, drift);
        pair(FIRST, step / cell.firstSeconds(), meanAmps);
        pair(SECOND, step / cell.secondSeconds(), meanAmps);
        double stays = Math.exp(-step / noise.memorySeconds());
        points.step(SLOW, stays, 0, noise.slowVolts() * noise.slowVolts() * (1 - stays * stays));
    }

    private void pair(int state, double ratio, double meanAmps) {
        double stays = Math.exp(-ratio);
        double doubt = CURRENT_DEVIATION_SHARE * meanAmps * (1 - stays);
        points.step(state, stays, (1 - stays) * meanAmps, doubt * doubt);
    }

    private double voltsOf(double[] state) {
        double charge = state[CHARGE];
        double drop = cell.resistances().ohms(0, charge) * amps
                + cell.resistances().ohms(1, charge) * state[FIRST]
                + cell.resistances().ohms(2, charge) * state[SECOND];
        return cell.rest().volts(charge) - factor * drop + state[SLOW];
    }

    /** Charge now, fraction. */
    public Estimate charge() {
        double deviation = Math.sqrt(points.covariance[CHARGE][CHARGE]);
        return new Estimate(
                points.mean[CHARGE], deviation, List.of(new Driver("circuit, curve and count so far", deviation)));
    }

    /** Charge now, fraction, without its ±. */
    public double chargeFraction() {
        return points.mean[CHARGE];
    }

    /** What the circuit is off by now [V]: volts read less volts explained. */
    public double slowErrorVolts() {
        return points.mean[SLOW];
    }

    /** True while readings surprise the filter more than its noise allows: the cell is not behaving like itself. */
    public boolean alarms() {
        return alarm.sounds() || Math.abs(points.mean[SLOW]) > InnovationAlarm.SLOW_DEVIATIONS * noise.slowVolts();
    }
}
