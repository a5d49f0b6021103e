package fettle.engine.pack.simulation;

/** The simulation was stopped from outside. */
public final class CancelledException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    CancelledException(double seconds) {
        super("stopped after " + Math.round(seconds) + " simulated seconds.");
    }
}
