package fettle.book.store;

import fettle.book.record.InstantText;
import fettle.book.record.Kind;
import fettle.book.record.Row;
import fettle.book.record.RowJson;
import fettle.book.record.UnreadableRowException;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Appends to and reads the journal. Nothing in it is ever changed. */
public final class JournalTable {
    private final Handle handle;

    public JournalTable(Handle handle) {
        this.handle = handle;
    }

    JournalRow append(Note note, ItemChange change, @Nullable Long undoes) {
        Optional<JournalRow> last = latest();
        JournalRow undigested = new JournalRow(
                last.map(JournalRow::id).orElse(0L) + 1,
                note.at(),
                note.actor(),
                note.sentence(),
                note.subject(),
                change.kind(),
                change.itemId(),
                change.before(),
                change.after(),
                undoes,
                "");
        JournalRow row =
                JournalDigest.seal(undigested, last.map(JournalRow::digest).orElse(""));
        insert(row);
        return row;
    }

    public Optional<JournalRow> read(long id) {
        return list("WHERE id = ?", id).stream().findFirst();
    }

    /** Newest first. */
    List<JournalRow> recent(int offset, int limit) {
        return list("ORDER BY id DESC LIMIT ? OFFSET ?", limit, offset);
    }

    /** Every number, rising. */
    public List<Long> ids() {
        return handle.createQuery("SELECT id FROM journal ORDER BY id")
                .mapTo(Long.class)
                .list();
    }

    /** Every change of one item, oldest first. */
    List<JournalRow> ofItem(Kind kind, long itemId) {
        return list("WHERE item_kind = ? AND item_id = ? ORDER BY id", kind.table(), itemId);
    }

    private Optional<JournalRow> latest() {
        return recent(0, 1).stream().findFirst();
    }

    private List<JournalRow> list(String clause, Object... parameters) {
        var query = handle.createQuery("SELECT * FROM journal " + clause);
        for (int parameter = 0; parameter < parameters.length; parameter++) {
            query.bind(parameter, parameters[parameter]);
        }
        return query.map((result, context) -> decode(RowReader.read(result))).list();
    }

    private void insert(JournalRow row) {
        Row before = row.before();
        handle.createUpdate("INSERT INTO journal (id, at_utc, actor, sentence, subject, item_kind, item_id,"
                        + " before_json, after_json, undoes, digest) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
                .bind(0, row.id())
                .bind(1, row.at().toString())
                .bind(2, row.actor())
                .bind(3, row.sentence())
                .bind(4, row.subject())
                .bind(5, row.kind().table())
                .bind(6, row.itemId())
                .bind(7, before == null ? null : RowJson.write(before))
                .bind(8, RowJson.write(row.after()))
                .bind(9, row.undoes())
                .bind(10, row.digest())
                .execute();
    }

    private static JournalRow decode(Row row) {
        String before = row.textOrNull("before_json");
        String table = row.text("item_kind");
        return new JournalRow(
                row.whole("id"),
                InstantText.read(row, "at_utc"),
                row.text("actor"),
                row.text("sentence"),
                row.text("subject"),
                Kind.ofTable(table).orElseThrow(() -> new UnreadableRowException("item_kind is \"" + table + "\"")),
                row.whole("item_id"),
                before == null ? null : RowJson.read(before),
                RowJson.read(row.text("after_json")),
                row.wholeOrNull("undoes"),
                row.text("digest"));
    }
}
