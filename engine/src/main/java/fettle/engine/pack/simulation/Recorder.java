package fettle.engine.pack.simulation;

/** Takes the instants of a simulation as they come. */
@FunctionalInterface
public interface Recorder {
    /** Called at the start, at every sample and at the end of every protocol step. */
    void take(Moment now);

    /** Keeps nothing. */
    static Recorder none() {
        return now -> {};
    }
}
