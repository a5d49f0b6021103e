package fettle.book.store;

import fettle.book.record.Kind;
import fettle.book.record.References;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Looks names and ids up in the book as it is in the present transaction. */
public record StoredReferences(Handle handle) implements References {
    @Override
    public @Nullable String name(Kind kind, @Nullable Long id) {
        return id == null ? null : new ItemTable(handle, kind).name(id).orElse(null);
    }

    @Override
    public @Nullable Long id(Kind kind, @Nullable String name) {
        return name == null ? null : new ItemTable(handle, kind).id(name).orElse(null);
    }
}
