package fettle.book.store;

import fettle.book.record.Kind;
import fettle.book.record.Row;
import fettle.engine.units.InputException;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** A name is given once in each shelf, and a rule changed once in each place; the database holds the same, this says so. */
final class Uniqueness {
    private Uniqueness() {}

    static void require(Handle handle, Kind kind, Row row, @Nullable Long ownId) {
        if (row.flag("withdrawn")) {
            return;
        }
        if (kind == Kind.TRACE) {
            requireFile(handle, row, ownId);
        } else if (kind == Kind.RULE) {
            requireRule(handle, row, ownId);
        } else if (!kind.nameColumn().isEmpty()) {
            requireName(handle, kind, row, ownId);
        }
    }

    private static void requireName(Handle handle, Kind kind, Row row, @Nullable Long ownId) {
        String column = kind.nameColumn();
        String name = row.text(column);
        Optional<Long> holder = new ItemTable(handle, kind).id(name);
        if (holder.isPresent() && !holder.get().equals(ownId)) {
            throw new InputException(
                    column, column + " " + name + " is already in this book. Choose another, or edit that one.");
        }
    }

    /** The same log twice is one trace of a pack. */
    private static void requireFile(Handle handle, Row row, @Nullable Long ownId) {
        new ItemTable(handle, Kind.TRACE)
                .where("withdrawn = 0 AND file_sha256 = ?", row.text("file_sha256")).entrySet().stream()
                        .filter(other -> !other.getKey().equals(ownId)
                                && other.getValue().whole("pack_id") == row.whole("pack_id"))
                        .map(Map.Entry::getKey)
                        .findFirst()
                        .ifPresent(id -> {
                            throw new InputException(
                                    "file",
                                    row.text("file_name") + " is in this book already, byte for byte: trace " + id
                                            + ". See: trace show " + id + ".");
                        });
    }

    /** A rule is changed once for the book and once for each pack. */
    private static void requireRule(Handle handle, Row row, @Nullable Long ownId) {
        boolean taken = new ItemTable(handle, Kind.RULE)
                .where("withdrawn = 0 AND quantity = ?", row.text("quantity")).entrySet().stream()
                        .filter(other -> !other.getKey().equals(ownId))
                        .map(Map.Entry::getValue)
                        .anyMatch(other -> other.text("chemistry").equals(row.text("chemistry"))
                                && Objects.equals(other.wholeOrNull("pack_id"), row.wholeOrNull("pack_id")));
        if (taken) {
            throw new InputException("quantity", "this rule has been changed anew since. Undo that change first.");
        }
    }
}
