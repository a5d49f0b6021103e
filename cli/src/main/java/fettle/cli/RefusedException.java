package fettle.cli;

/** Something asked of the command line that cannot be done; the message is one sentence with the mend. */
final class RefusedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    RefusedException(String sentence) {
        super(sentence);
    }
}
