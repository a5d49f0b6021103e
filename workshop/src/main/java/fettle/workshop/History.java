package fettle.workshop;

import fettle.book.store.JournalLine;
import fettle.book.store.JournalRow;
import fettle.engine.units.InputException;
import java.util.List;

/** The journal of every change, and undo. Thread-safe. */
public final class History {
    private static final int PAGE = 50;

    private final Ledger ledger;

    History(Ledger ledger) {
        this.ledger = ledger;
    }

    /** Changes, newest first. */
    public List<JournalEntry> recent(int offset, int limit) {
        return lines(offset, limit).stream().map(Ledger::entry).toList();
    }

    /**
     * Undoes one change; the undoing is itself a change that can be undone.
     *
     * @throws InputException if there is no such change, it is undone, or a later one stands in its way
     */
    public JournalEntry undo(long id) {
        return ledger.together(() -> {
            String sentence =
                    ledger.book().journal().find(id).map(this::undoing).orElse("");
            String subject = ledger.book()
                    .journal()
                    .find(id)
                    .map(line -> line.row().subject())
                    .orElse("");
            return Ledger.fresh(ledger.book().journal().undo(id, ledger.note(sentence, subject)));
        });
    }

    /**
     * Undoes the latest change in force. Asked again, it goes one further back: undoings themselves are passed over.
     *
     * @throws InputException if nothing can be undone
     */
    public JournalEntry undoLatest() {
        return ledger.together(() -> undo(latestInForce()));
    }

    private long latestInForce() {
        for (int offset = 0; ; offset += PAGE) {
            List<JournalLine> page = lines(offset, PAGE);
            if (page.isEmpty()) {
                throw new InputException("id", "there is nothing left to undo.");
            }
            for (JournalLine line : page) {
                if (line.row().undoes() == null && line.undoable()) {
                    return line.row().id();
                }
            }
        }
    }

    private List<JournalLine> lines(int offset, int limit) {
        return ledger.use(() -> ledger.book().journal().recent(offset, limit));
    }

    private String undoing(JournalLine line) {
        JournalRow row = line.row();
        return "undid #" + row.id() + ": " + row.sentence();
    }
}
