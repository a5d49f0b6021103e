package fettle.workshop;

/** A name that is not in the book; the message says which names are near. */
public final class UnknownNameException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public UnknownNameException(String sentence) {
        super(sentence);
    }
}
