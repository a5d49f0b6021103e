package fettle.book.store;

import fettle.book.record.Kind;
import fettle.book.record.Row;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import org.jdbi.v3.core.statement.Update;
import org.jspecify.annotations.Nullable;

/**
 * Writes and reads whole rows with their parts. Column and table names come from the shapes and the schema, never from
 * people, so they are safe inside SQL text.
 */
public final class ItemTable {
    private static final String ID = "id";
    private static final String POSITION = "position";

    private final Handle handle;
    private final Kind kind;

    public ItemTable(Handle handle, Kind kind) {
        this.handle = handle;
        this.kind = kind;
    }

    long insert(Row row) {
        long id = handle.createQuery("SELECT ifnull(max(id), 0) + 1 FROM " + kind.table())
                .mapTo(Long.class)
                .one();
        insertLine(kind.table(), row.with(ID, id));
        insertParts(id, row);
        return id;
    }

    void overwrite(long id, Row row) {
        SortedMap<String, @Nullable Object> values = row.values();
        String assignments = String.join(" = ?, ", values.keySet()) + " = ?";
        Update update = handle.createUpdate("UPDATE " + kind.table() + " SET " + assignments + " WHERE id = ?");
        bind(update, List.copyOf(values.keySet()), values);
        update.bind(values.size(), id).execute();
        for (String part : kind.childTables()) {
            handle.execute("DELETE FROM " + part + " WHERE " + kind.ownerColumn() + " = ?", id);
        }
        insertParts(id, row);
    }

    /** Every id, withdrawn items included. */
    public List<Long> ids() {
        return handle.createQuery("SELECT id FROM " + kind.table() + " ORDER BY id")
                .mapTo(Long.class)
                .list();
    }

    public Optional<Row> read(long id) {
        return Optional.ofNullable(where("id = ?", id).get(id));
    }

    /** Rows by id that meet a condition with one parameter, in order of id. */
    Map<Long, Row> where(String condition, Object parameter) {
        Map<Long, Row> rows = new LinkedHashMap<>();
        query("SELECT * FROM " + kind.table() + " WHERE " + condition + " ORDER BY id", parameter)
                .forEach(line -> rows.put(line.whole(ID), line.without(ID)));
        for (String part : kind.childTables()) {
            Map<Long, List<Row>> parts = parts(part, condition, parameter);
            rows.replaceAll((id, row) -> row.withParts(part, parts.getOrDefault(id, List.of())));
        }
        return rows;
    }

    Optional<String> name(long id) {
        return handle.createQuery("SELECT " + kind.nameColumn() + " FROM " + kind.table() + " WHERE id = ?")
                .bind(0, id)
                .mapTo(String.class)
                .findOne();
    }

    /** The id of the item in the book by that name, in any case. */
    Optional<Long> id(String name) {
        return handle.createQuery("SELECT id FROM " + kind.table() + " WHERE withdrawn = 0 AND " + kind.nameColumn()
                        + " = ? COLLATE NOCASE")
                .bind(0, name)
                .mapTo(Long.class)
                .findOne();
    }

    /** How many items in the book refer to one of this kind, themselves or in their parts. */
    long referring(long id) {
        long count = 0;
        for (Kind other : Kind.values()) {
            for (Map.Entry<String, Kind> reference : other.references().entrySet()) {
                if (reference.getValue() == kind) {
                    count += count(other.table() + " WHERE withdrawn = 0 AND " + reference.getKey() + " = ?", id);
                }
            }
            for (Kind.PartReference reference : other.partReferences()) {
                if (reference.kind() == kind) {
                    count += count(
                            other.table() + " WHERE withdrawn = 0 AND id IN (SELECT " + other.ownerColumn() + " FROM "
                                    + reference.table() + " WHERE " + reference.column() + " = ?)",
                            id);
                }
            }
        }
        return count;
    }

    private long count(String from, long id) {
        return handle.createQuery("SELECT count(*) FROM " + from)
                .bind(0, id)
                .mapTo(Long.class)
                .one();
    }

    private Map<Long, List<Row>> parts(String table, String condition, Object parameter) {
        String owner = kind.ownerColumn();
        Map<Long, List<Row>> parts = new HashMap<>();
        query(
                        "SELECT * FROM " + table + " WHERE " + owner + " IN (SELECT id FROM " + kind.table() + " WHERE "
                                + condition + ") ORDER BY " + owner + ", " + POSITION,
                        parameter)
                .forEach(line -> parts.computeIfAbsent(line.whole(owner), any -> new ArrayList<>())
                        .add(line.without(owner).without(POSITION)));
        return parts;
    }

    private List<Row> query(String sql, Object parameter) {
        try (Query query = handle.createQuery(sql)) {
            return query.bind(0, parameter)
                    .map((result, context) -> RowReader.read(result))
                    .list();
        }
    }

    private void insertParts(long id, Row row) {
        row.parts().forEach((table, parts) -> {
            for (int part = 0; part < parts.size(); part++) {
                insertLine(table, parts.get(part).with(kind.ownerColumn(), id).with(POSITION, part + 1));
            }
        });
    }

    private void insertLine(String table, Row row) {
        List<String> columns = List.copyOf(row.values().keySet());
        Update update = handle.createUpdate("INSERT INTO " + table + " (" + String.join(", ", columns) + ") VALUES ("
                + "?, ".repeat(columns.size() - 1) + "?)");
        bind(update, columns, row.values());
        update.execute();
    }

    private static void bind(Update update, List<String> columns, Map<String, @Nullable Object> values) {
        for (int column = 0; column < columns.size(); column++) {
            update.bind(column, values.get(columns.get(column)));
        }
    }
}
