package fettle.workshop;

/** Told how far the reading of a log is; can stop it. */
@FunctionalInterface
public interface TraceProgress {
    TraceProgress NONE = (done, total) -> true;

    /**
     * @param doneBytes bytes read
     * @param totalBytes bytes of the file
     * @return false to stop; nothing is kept then
     */
    boolean goOn(long doneBytes, long totalBytes);
}
