package fettle.book.store;

import fettle.book.record.Kind;
import fettle.book.record.Row;
import fettle.engine.units.InputException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The journal of a book, and undo. Thread-safe. */
public final class Journal {
    private final Book book;

    Journal(Book book) {
        this.book = book;
    }

    /** Changes, newest first, each with whether it is undone and can be. */
    public List<JournalLine> recent(int offset, int limit) {
        return book.inTransaction(handle -> new JournalTable(handle)
                .recent(offset, limit).stream().map(row -> line(handle, row)).toList());
    }

    /** One change. */
    public Optional<JournalLine> find(long id) {
        return book.inTransaction(handle -> new JournalTable(handle).read(id).map(row -> line(handle, row)));
    }

    /**
     * Takes one change back; that is itself a change, which can be undone.
     *
     * @throws InputException if there is no such change, it is undone, or something stands in the way
     */
    public JournalRow undo(long id, Note note) {
        return book.inTransaction(handle -> {
            JournalTable journal = new JournalTable(handle);
            JournalRow row = journal.read(id)
                    .orElseThrow(() -> new InputException("id", "the journal has no #" + id + ". See: journal."));
            ItemTable table = new ItemTable(handle, row.kind());
            Row present =
                    table.read(row.itemId()).orElseThrow(() -> refusal(row, "its item is missing. Run: book verify."));
            Row restored = restored(row);
            refuseIfInTheWay(handle, row, present, restored);
            table.overwrite(row.itemId(), restored);
            return journal.append(note, new ItemChange(row.kind(), row.itemId(), present, restored), id);
        });
    }

    private static JournalLine line(Handle handle, JournalRow row) {
        ItemChain chain = ItemChain.of(new JournalTable(handle).ofItem(row.kind(), row.itemId()));
        boolean undone = chain.isUndone(row.id());
        return new JournalLine(row, undone, !undone && chain.inTheWay(row.id()).isEmpty() && isFree(handle, row));
    }

    /** The item as it was before; one that was not there is kept, but withdrawn. */
    private static Row restored(JournalRow row) {
        Row before = row.before();
        return before == null ? row.after().withFlag("withdrawn", true) : before;
    }

    private static void refuseIfInTheWay(Handle handle, JournalRow row, Row present, Row restored) {
        ItemChain chain = ItemChain.of(new JournalTable(handle).ofItem(row.kind(), row.itemId()));
        if (chain.isUndone(row.id())) {
            throw refusal(row, "it is undone already.");
        }
        chain.inTheWay(row.id()).ifPresent(later -> {
            throw refusal(row, "#" + later.id() + " (" + later.sentence() + ") came later. Undo that first.");
        });
        if (!present.equals(row.after())) {
            throw refusal(row, "the book no longer holds what it wrote. Run: book verify.");
        }
        refuseIfReferred(handle, row, restored);
        Uniqueness.require(handle, row.kind(), restored, row.itemId());
    }

    private static void refuseIfReferred(Handle handle, JournalRow row, Row restored) {
        if (restored.flag("withdrawn")) {
            long referring = new ItemTable(handle, row.kind()).referring(row.itemId());
            if (referring > 0) {
                throw refusal(
                        row,
                        referring + (referring == 1 ? " other entry refers" : " other entries refer") + " to "
                                + row.subject() + ". Retire it instead, or undo those first.");
            }
        } else if (missingReference(handle, row.kind(), restored)) {
            throw refusal(row, "what it refers to is itself undone. Undo that undoing first.");
        }
    }

    private static boolean missingReference(Handle handle, Kind kind, Row row) {
        for (Map.Entry<String, Kind> reference : kind.references().entrySet()) {
            Long id = row.wholeOrNull(reference.getKey());
            if (id != null && isWithdrawn(handle, reference.getValue(), id)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isWithdrawn(Handle handle, Kind kind, long id) {
        return new ItemTable(handle, kind)
                .read(id)
                .map(row -> row.flag("withdrawn"))
                .orElse(true);
    }

    /** Whether undoing it would leave no reference without its item. */
    private static boolean isFree(Handle handle, JournalRow row) {
        Row restored = restored(row);
        return restored.flag("withdrawn")
                ? new ItemTable(handle, row.kind()).referring(row.itemId()) == 0
                : !missingReference(handle, row.kind(), restored);
    }

    private static InputException refusal(JournalRow row, String why) {
        return new InputException("id", "#" + row.id() + " (" + row.sentence() + ") cannot be undone: " + why);
    }
}
