package fettle.book.archive;

import fettle.book.record.Kind;
import java.util.ArrayList;
import java.util.List;
import org.jdbi.v3.core.Handle;

/**
 * A table as an archive holds it.
 *
 * @param name the table
 * @param order columns that put its rows in a fixed order
 * @param columns all its columns, in the order of the schema
 */
record ArchiveTable(String name, String order, List<Column> columns) {
    /** The types of the schema, which is strict. */
    enum Type {
        INTEGER,
        REAL,
        TEXT
    }

    /** @param optional whether an empty field means that there is no value */
    record Column(String name, Type type, boolean optional) {}

    /** Every table of a book, each after those it refers to. */
    static List<ArchiveTable> all(Handle handle) {
        List<ArchiveTable> tables = new ArrayList<>();
        tables.add(of(handle, "journal", "id"));
        tables.add(of(handle, "trace_file", "sha256"));
        for (Kind kind : Kind.values()) {
            tables.add(of(handle, kind.table(), "id"));
            kind.childTables().forEach(part -> tables.add(of(handle, part, kind.ownerColumn() + ", position")));
        }
        return List.copyOf(tables);
    }

    private static ArchiveTable of(Handle handle, String name, String order) {
        List<Column> columns = handle.createQuery("SELECT name, type, \"notnull\", pk FROM pragma_table_info(?)")
                .bind(0, name)
                .map((result, context) -> new Column(
                        result.getString("name"),
                        Type.valueOf(result.getString("type")),
                        !result.getBoolean("notnull") && result.getInt("pk") == 0))
                .list();
        return new ArchiveTable(name, order, columns);
    }

    String file() {
        return name + ".csv";
    }

    List<String> header() {
        return columns.stream().map(Column::name).toList();
    }
}
