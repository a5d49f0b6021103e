package fettle.workshop;

import fettle.book.store.Book;
import fettle.book.store.JournalLine;
import fettle.book.store.JournalRow;
import fettle.book.store.Note;
import fettle.book.store.UnusableBookException;
import java.time.Clock;
import java.time.Instant;
import java.util.function.Supplier;

/** The open book with who writes in it and the clock; what every use case shares. */
record Ledger(Book book, Clock clock, String actor) {
    /** Work with the book, its failures told as the workshop tells them. */
    <R> R use(Supplier<R> work) {
        return told(work);
    }

    /** The same, all or nothing. */
    <R> R together(Supplier<R> work) {
        return told(() -> book.inTransaction(handle -> work.get()));
    }

    Note note(String sentence, String subject) {
        return new Note(now(), actor, sentence, subject);
    }

    Instant now() {
        return clock.instant();
    }

    static <R> R told(Supplier<R> work) {
        try {
            return work.get();
        } catch (UnusableBookException unusable) {
            throw new BookException(unusable.getMessage(), unusable);
        }
    }

    /** A change just made: nothing can stand in the way of undoing it yet. */
    static JournalEntry fresh(JournalRow row) {
        return entry(new JournalLine(row, false, true));
    }

    static JournalEntry entry(JournalLine line) {
        JournalRow row = line.row();
        return new JournalEntry(
                row.id(), row.at(), row.actor(), row.sentence(), row.subject(), line.undone(), line.undoable());
    }
}
