package fettle.book.archive;

import fettle.book.record.References;
import fettle.book.record.Shape;
import fettle.book.record.Shapes;
import fettle.book.record.UnreadableRowException;
import fettle.book.store.Book;
import fettle.book.store.ItemTable;
import fettle.book.store.StoredReferences;
import fettle.book.store.TraceFiles;
import fettle.book.store.UnusableBookException;
import java.util.ArrayList;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.JdbiException;

/**
 * Looks through a whole book: the file's structure, references, every row as the engine's record, and the journal
 * against what is stored.
 */
public final class Verification {
    private final Handle handle;
    private final List<String> faults = new ArrayList<>();

    private Verification(Handle handle) {
        this.handle = handle;
    }

    /** The faults of an open book in words; none if it is whole. */
    public static List<String> of(Book book) {
        try {
            return book.inTransaction(handle -> {
                List<String> faults = new ArrayList<>(of(handle));
                faults.addAll(TraceFiles.faults(handle, book.folder().logs()));
                return List.copyOf(faults);
            });
        } catch (UnusableBookException damaged) {
            return List.of(String.valueOf(damaged.getMessage()));
        }
    }

    /** The same of any file that holds a book, its logs aside. */
    static List<String> of(Handle handle) {
        Verification verification = new Verification(handle);
        verification.attempt("the file", verification::structure);
        verification.attempt("the references", verification::references);
        Shapes.ALL.forEach(
                shape -> verification.attempt("table " + shape.kind().table(), () -> verification.rows(shape)));
        verification.attempt("the journal", () -> JournalAudit.of(handle, verification.faults));
        return List.copyOf(verification.faults);
    }

    private void structure() {
        handle.createQuery("PRAGMA integrity_check").mapTo(String.class).list().stream()
                .filter(line -> !line.equals("ok"))
                .forEach(line -> faults.add("the file is damaged: " + line.replace('\n', ' ')));
    }

    private void references() {
        handle.createQuery("PRAGMA foreign_key_check")
                .map((result, context) -> result.getString("table") + " row " + result.getLong("rowid")
                        + " refers to a " + result.getString("parent") + " that is not there")
                .forEach(faults::add);
    }

    private <T> void rows(Shape<T> shape) {
        References references = new StoredReferences(handle);
        ItemTable table = new ItemTable(handle, shape.kind());
        for (long id : table.ids()) {
            attempt(
                    shape.kind().table() + " row " + id,
                    () -> table.read(id).ifPresent(row -> Shape.decode(shape, row, references)));
        }
    }

    /** A damaged part is a fault to report; the look goes on with the next. */
    private void attempt(String what, Runnable look) {
        try {
            look.run();
        } catch (JdbiException | UnreadableRowException damaged) {
            faults.add(what + " cannot be read: "
                    + String.valueOf(damaged.getMessage()).lines().findFirst().orElse("it is damaged"));
        }
    }
}
