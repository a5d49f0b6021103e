package fettle.book.store;

import org.jspecify.annotations.Nullable;

/** The book, a backup or an archive cannot be used; the message is one sentence for people, with the mend. */
public final class UnusableBookException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public UnusableBookException(String sentence) {
        super(sentence);
    }

    public UnusableBookException(String sentence, @Nullable Throwable cause) {
        super(sentence, cause);
    }
}
