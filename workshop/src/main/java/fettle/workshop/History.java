package fettle.workshop;

import java.util.List;

/** The journal of every change, and undo. */
public final class History {
    /** Changes, newest first. */
    public List<JournalEntry> recent(int offset, int limit) {
        throw new UnsupportedOperationException();
    }

    /** Undoes one change; the undoing is itself a change that can be undone. */
    public JournalEntry undo(long id) {
        throw new UnsupportedOperationException();
    }

    /** Undoes the latest change that can be undone. */
    public JournalEntry undoLatest() {
        throw new UnsupportedOperationException();
    }
}
