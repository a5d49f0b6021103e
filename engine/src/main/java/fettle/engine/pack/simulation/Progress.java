package fettle.engine.pack.simulation;

/** Told now and then how far a long simulation has come; may stop it. */
@FunctionalInterface
public interface Progress {
    /**
     * Asked every few thousand steps.
     *
     * @param seconds simulated time so far [s]
     * @param steps time steps so far
     * @return false to stop
     */
    boolean goOn(double seconds, long steps);

    /** Never stops. */
    static Progress silent() {
        return (seconds, steps) -> true;
    }
}
