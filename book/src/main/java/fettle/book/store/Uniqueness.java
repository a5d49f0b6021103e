package fettle.book.store;

import fettle.book.record.Kind;
import fettle.book.record.Row;
import fettle.engine.units.InputException;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** A name is given once in each shelf; the database holds the same, this says so in words. */
final class Uniqueness {
    private Uniqueness() {}

    static void require(Handle handle, Kind kind, Row row, @Nullable Long ownId) {
        String column = kind.nameColumn();
        if (column.isEmpty() || row.flag("withdrawn")) {
            return;
        }
        String name = row.text(column);
        Optional<Long> holder = new ItemTable(handle, kind).id(name);
        if (holder.isPresent() && !holder.get().equals(ownId)) {
            throw new InputException(
                    column, column + " " + name + " is already in this book. Choose another, or edit that one.");
        }
    }
}
