package fettle.book.intake;

/** A field that cannot be read, told with its line and column. */
final class FieldException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    FieldException(String sentence) {
        super(sentence);
    }
}
