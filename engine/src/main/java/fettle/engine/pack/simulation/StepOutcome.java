package fettle.engine.pack.simulation;

import java.util.List;

/**
 * How one protocol step went.
 *
 * @param name the step's name
 * @param endedBy the condition that ended it
 * @param startSeconds when it began [s from the start of the protocol]
 * @param endSeconds when it ended [s from the start of the protocol]
 * @param first terminals at its first instant
 * @param last terminals at its last instant
 * @param passed what passed during it
 * @param limits when which limit of the demand took over
 */
public record StepOutcome(
        String name,
        End endedBy,
        double startSeconds,
        double endSeconds,
        Terminals first,
        Terminals last,
        Passed passed,
        List<LimitChange> limits) {
    public StepOutcome {
        limits = List.copyOf(limits);
    }

    /** How long it took [s]. */
    public double seconds() {
        return endSeconds - startSeconds;
    }

    /**
     * The common terminals at one instant.
     *
     * @param volts volts [V]
     * @param amps current [A], discharge positive
     * @param packAmps current of each pack [A], discharge positive
     */
    public record Terminals(double volts, double amps, List<Double> packAmps) {
        public Terminals {
            packAmps = List.copyOf(packAmps);
        }
    }

    /**
     * A change of the limit that holds.
     *
     * @param seconds when [s from the start of the protocol]
     * @param limit the limit that holds from then on
     */
    public record LimitChange(double seconds, Demand.Limit limit) {}
}
