package fettle.workshop;

/** The book cannot be opened, written or read; the message is one sentence with the mend. */
public final class BookException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public BookException(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
