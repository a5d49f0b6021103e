package fettle.engine.pack.assessment;

import fettle.engine.cell.RestCurve;
import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Step;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Charge of a cell from its rest volts.
 *
 * <p>Formula: value z with ocv(z) = v, held to 0 … 1. Its ± is the root mean square distance from z under the density
 * p(z | v) ∝ exp(−½ ((v − ocv(z)) / σ(z))²) / σ(z) on 0 … 1, with σ² = meter² + rest² + band(z)². On a flat curve the
 * ± therefore grows to what is honest, and never past the ends.
 *
 * <p>Leaves out: temperature of the curve (about 0.2 mV/K), hysteresis beyond the band.
 */
public final class RestCharge {
    private static final int GRID = 400;

    /** Volts still to settle right after use, and how fast they go. Common practice, no source. */
    private static final double UNSETTLED_VOLTS = 0.015;

    private static final double SETTLING_SECONDS = 1800;
    private static final double SETTLED_VOLTS = 0.001;
    private static final double UNKNOWN_REST_VOLTS = 0.010;

    private RestCharge() {}

    /** What is still to settle of a rest reading [V], one standard deviation. */
    public static double restVolts(@Nullable Double restSeconds) {
        return restSeconds == null
                ? UNKNOWN_REST_VOLTS
                : SETTLED_VOLTS + UNSETTLED_VOLTS * Math.exp(-restSeconds / SETTLING_SECONDS);
    }

    /** Charge of one cell at rest; meter and settling are one standard deviation each [V]. */
    public static Estimate of(RestCurve curve, double volts, double meterVolts, double settlingVolts) {
        double value = Math.max(0, Math.min(1, curve.charge(volts)));
        double fixed = meterVolts * meterVolts + settlingVolts * settlingVolts;
        double[] exponent = new double[GRID + 1];
        double[] spread = new double[GRID + 1];
        double largest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= GRID; i++) {
            double charge = i / (double) GRID;
            double band = curve.bandVolts(charge);
            spread[i] = Math.sqrt(fixed + band * band);
            double distance = (volts - curve.volts(charge)) / spread[i];
            exponent[i] = -0.5 * distance * distance - Math.log(spread[i]);
            largest = Math.max(largest, exponent[i]);
        }
        double weights = 0;
        double squares = 0;
        for (int i = 0; i <= GRID; i++) {
            double weight = Math.exp(exponent[i] - largest);
            double away = i / (double) GRID - value;
            weights += weight;
            squares += weight * away * away;
        }
        return new Estimate(
                value,
                Math.sqrt(squares / weights),
                drivers(curve, value, meterVolts, settlingVolts, Math.sqrt(squares / weights)));
    }

    static Step step(
            int cell, double volts, Estimate charge, RestCurve curve, double meterVolts, double settlingVolts) {
        return new Step(
                "charge of cell " + cell,
                "z with rest curve(z) = v; ± from meter, settling and the band between cells",
                List.of(
                        "v = " + TradeUnit.VOLT.print(volts, 3),
                        "meter ± " + TradeUnit.MILLIVOLT.print(meterVolts, 1),
                        "settling ± " + TradeUnit.MILLIVOLT.print(settlingVolts, 1),
                        "band ± " + TradeUnit.MILLIVOLT.print(curve.bandVolts(charge.value()), 1),
                        "slope " + TradeUnit.MILLIVOLT.print(curve.slopeVolts(charge.value()) / 100, 1) + " per %"),
                TradeUnit.PERCENT.print(charge, 1),
                curve.citation());
    }

    /** Shares the ± between its causes by their variances at the value. */
    private static List<Driver> drivers(
            RestCurve curve, double value, double meter, double settling, double deviation) {
        double band = curve.bandVolts(value);
        double all = Math.sqrt(meter * meter + settling * settling + band * band);
        return List.of(
                new Driver("meter accuracy", deviation * meter / all),
                new Driver("rest time", deviation * settling / all),
                new Driver("spread between cells of the chemistry", deviation * band / all));
    }
}
