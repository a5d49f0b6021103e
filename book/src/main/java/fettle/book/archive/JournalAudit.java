package fettle.book.archive;

import fettle.book.record.Kind;
import fettle.book.record.Row;
import fettle.book.record.UnreadableRowException;
import fettle.book.store.ItemTable;
import fettle.book.store.JournalDigest;
import fettle.book.store.JournalRow;
import fettle.book.store.JournalTable;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Holds the journal against itself and against what is stored: each change begins where the one before it ended. */
final class JournalAudit {
    private final Handle handle;
    private final List<String> faults;
    private final Map<ItemKey, Row> states = new HashMap<>();

    private record ItemKey(Kind kind, long id) {}

    private JournalAudit(Handle handle, List<String> faults) {
        this.handle = handle;
        this.faults = faults;
    }

    static void of(Handle handle, List<String> faults) {
        JournalAudit audit = new JournalAudit(handle, faults);
        if (audit.replay()) {
            audit.compare();
        }
    }

    /** Follows every change; false if a line is unreadable, so that what comes after cannot be judged. */
    private boolean replay() {
        JournalTable journal = new JournalTable(handle);
        long expected = 1;
        String digest = "";
        for (long id : journal.ids()) {
            Optional<JournalRow> row = readable(journal, id);
            if (row.isEmpty()) {
                return false;
            }
            if (id != expected) {
                faults.add("the journal goes from #" + (expected - 1) + " to #" + id + ": changes are missing");
            }
            follow(row.get(), digest);
            digest = row.get().digest();
            expected = id + 1;
        }
        return true;
    }

    private Optional<JournalRow> readable(JournalTable journal, long id) {
        try {
            return journal.read(id);
        } catch (UnreadableRowException damaged) {
            faults.add("journal #" + id + " cannot be read: " + damaged.getMessage());
            return Optional.empty();
        }
    }

    private void follow(JournalRow row, String previousDigest) {
        if (!row.digest().equals(JournalDigest.of(row, previousDigest))) {
            faults.add("journal #" + row.id() + " is not as it was written: its digest does not match");
        }
        Row before = states.put(new ItemKey(row.kind(), row.itemId()), row.after());
        if (!Objects.equals(before, row.before())) {
            faults.add("journal #" + row.id() + " does not begin where the change before it ended");
        }
    }

    private void compare() {
        for (Kind kind : Kind.values()) {
            ItemTable table = new ItemTable(handle, kind);
            for (long id : table.ids()) {
                Row journalled = states.remove(new ItemKey(kind, id));
                if (!differs(table, id, journalled)) {
                    continue;
                }
                faults.add(kind.table() + " row " + id + " is not as the journal says");
            }
        }
        states.keySet().forEach(lost -> faults.add(lost.kind().table() + " row " + lost.id() + " is missing"));
    }

    private static boolean differs(ItemTable table, long id, Row journalled) {
        try {
            return !table.read(id).equals(Optional.ofNullable(journalled));
        } catch (UnreadableRowException damaged) {
            return true;
        }
    }
}
