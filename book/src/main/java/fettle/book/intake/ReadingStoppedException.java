package fettle.book.intake;

/** A reading was stopped by the one who asked for it. */
public final class ReadingStoppedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public ReadingStoppedException(String name) {
        super("reading " + name + " was stopped; nothing was kept.");
    }
}
