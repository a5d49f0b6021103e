package fettle.book.record;

/** A stored row that does not make an item: it was damaged, or written by something else. */
public final class UnreadableRowException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public UnreadableRowException(String sentence) {
        super(sentence);
    }
}
