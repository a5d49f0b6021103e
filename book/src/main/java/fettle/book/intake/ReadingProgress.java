package fettle.book.intake;

/** Told how far a reading is; can stop it. */
@FunctionalInterface
public interface ReadingProgress {
    ReadingProgress NONE = (done, total) -> true;

    /**
     * @param doneBytes bytes of the file as received that were read
     * @param totalBytes its size
     * @return false to stop; the reading then throws {@link ReadingStoppedException}
     */
    boolean goOn(long doneBytes, long totalBytes);
}
