package fettle.book.store;

import fettle.book.record.Kind;
import fettle.book.record.References;
import fettle.book.record.Row;
import fettle.book.record.Shape;
import fettle.book.record.UnreadableRowException;
import fettle.engine.units.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The items of one kind in a book. Every change and its line in the journal are one transaction. Thread-safe. */
public final class Items<T> {
    private final Book book;
    private final Shape<T> shape;

    Items(Book book, Shape<T> shape) {
        this.book = book;
        this.shape = shape;
    }

    /** All of them but the withdrawn, in the order they were added. */
    public List<Stored<T>> all() {
        return where("withdrawn = ?", 0L);
    }

    /** The entries of one pack, in the order they were added. */
    public List<Stored<T>> ofPack(long packId) {
        return where("withdrawn = 0 AND pack_id = ?", packId);
    }

    /** The item of that name, in any case. */
    public Optional<Stored<T>> named(String name) {
        String condition = "withdrawn = 0 AND " + shape.kind().nameColumn() + " = ? COLLATE NOCASE";
        return where(condition, name.strip()).stream().findFirst();
    }

    /**
     * Adds an item.
     *
     * @param beside what the store keeps beside the record: what was typed, the pack it is of
     */
    public JournalRow add(T item, Row beside, Note note) {
        return book.inTransaction(handle -> {
            Row row =
                    shape.toRow(item, new StoredReferences(handle)).and(beside).withFlag("withdrawn", false);
            Uniqueness.require(handle, shape.kind(), row, null);
            long id = new ItemTable(handle, shape.kind()).insert(row);
            return new JournalTable(handle).append(note, new ItemChange(shape.kind(), id, null, row), null);
        });
    }

    /** Puts another record in an item's place; what refers to it stays. */
    public JournalRow replace(long id, T item, Note note) {
        return book.inTransaction(handle -> change(handle, id, shape.toRow(item, new StoredReferences(handle)), note));
    }

    /** Changes columns the store keeps beside the record, e.g. whether it is retired. */
    public JournalRow mark(long id, Row columns, Note note) {
        return book.inTransaction(handle -> change(handle, id, columns, note));
    }

    /** The row an item would have, to tell what a change would change. */
    public Row rowOf(T item) {
        return book.inTransaction(handle -> shape.toRow(item, new StoredReferences(handle)));
    }

    private JournalRow change(Handle handle, long id, Row changed, Note note) {
        Kind kind = shape.kind();
        ItemTable table = new ItemTable(handle, kind);
        Row before = table.read(id)
                .orElseThrow(() -> new InputException("id", "there is no " + kind.table() + " number " + id + "."));
        Row after = before.and(changed);
        Uniqueness.require(handle, kind, after, id);
        table.overwrite(id, after);
        return new JournalTable(handle).append(note, new ItemChange(kind, id, before, after), null);
    }

    private List<Stored<T>> where(String condition, Object parameter) {
        return book.inTransaction(handle -> {
            References references = new StoredReferences(handle);
            Map<Long, Row> rows = new ItemTable(handle, shape.kind()).where(condition, parameter);
            List<Stored<T>> items = new ArrayList<>();
            rows.forEach((id, row) -> readable(id, row, references).ifPresent(items::add));
            return List.copyOf(items);
        });
    }

    /** A damaged row is left out, and told of by {@link Book#damaged}; the others are no worse for it. */
    private Optional<Stored<T>> readable(long id, Row row, References references) {
        try {
            return Optional.of(new Stored<>(id, Shape.decode(shape, row, references), row));
        } catch (UnreadableRowException damaged) {
            book.leaveOut(shape.kind().table() + " row " + id + " cannot be read: " + damaged.getMessage());
            return Optional.empty();
        }
    }
}
