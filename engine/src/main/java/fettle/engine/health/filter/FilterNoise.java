package fettle.engine.health.filter;

import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;

/**
 * How far volts, amps and the circuit can be trusted.
 *
 * @param quickVolts what the mean of one second's readings is off without memory [V], &gt; 0; a reading alone after a step
 *     of t seconds is off by 1/√t of that, so that a quick logger tells no more than a slow one
 * @param slowVolts what the circuit is off for a while [V], &gt; 0
 * @param memorySeconds how long it stays off [s], &gt; 0
 * @param driftPerHour charge lost count of in an hour, as a share of capacity; grows with the square root of time
 */
public record FilterNoise(double quickVolts, double slowVolts, double memorySeconds, double driftPerHour) {
    /** Two pairs on a lithium cell leave about 20 mV on a hard load, much of it for seconds to minutes; see docs/accuracy.md. */
    public static final FilterNoise USUAL = new FilterNoise(0.05, 0.03, 900, 0.003);

    public FilterNoise {
        new Faults()
                .range("quickVolts", "noise of volts", quickVolts, TradeUnit.MILLIVOLT, 0.01, 1000, "Give millivolts.")
                .range(
                        "slowVolts",
                        "error of the circuit",
                        slowVolts,
                        TradeUnit.MILLIVOLT,
                        0.01,
                        1000,
                        "Give millivolts.")
                .range("memory", "memory", memorySeconds, TradeUnit.SECOND, 0.1, 100_000, "Give seconds.")
                .range("drift", "drift of the count", driftPerHour, TradeUnit.PERCENT, 1e-6, 100, "Give per cent.")
                .refuse();
    }
}
