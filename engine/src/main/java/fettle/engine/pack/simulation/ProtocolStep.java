package fettle.engine.pack.simulation;

import java.util.Arrays;
import java.util.List;

/**
 * One step of a protocol: a demand held until one of its conditions is met.
 *
 * @param name how messages and results call it
 * @param demand what is asked of the packs
 * @param ends the first one met ends the step; at least one
 * @param stepSeconds time step of the calculation [s], > 0
 */
public record ProtocolStep(String name, Demand demand, List<End> ends, double stepSeconds) {
    public ProtocolStep {
        ends = List.copyOf(ends);
    }

    public static ProtocolStep of(String name, Demand demand, double stepSeconds, End... ends) {
        return new ProtocolStep(name, demand, Arrays.asList(ends), stepSeconds);
    }

    /** The same step calculated with another time step [s]. */
    public ProtocolStep withStepSeconds(double seconds) {
        return new ProtocolStep(name, demand, ends, seconds);
    }

    /** The earliest time condition among its ends [s]; infinite without one. */
    double mostSeconds() {
        double most = Double.POSITIVE_INFINITY;
        for (End end : ends) {
            if (end.kind() == EndKind.AFTER) {
                most = Math.min(most, end.value());
            }
        }
        return most;
    }
}
