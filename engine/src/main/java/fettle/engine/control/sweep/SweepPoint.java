package fettle.engine.control.sweep;

import org.jspecify.annotations.Nullable;

/**
 * One reading of a sweep.
 *
 * @param pulseSeconds pulse [s], 500 … 2500 µs
 * @param amps current into the servo [A], 0 … 50
 * @param angleRadians servo or surface angle [rad]; {@code null} where it was not measured
 */
public record SweepPoint(
        double pulseSeconds, double amps, @Nullable Double angleRadians) {
    public SweepPoint(double pulseSeconds, double amps) {
        this(pulseSeconds, amps, null);
    }
}
