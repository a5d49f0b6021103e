package fettle.book.store;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The changes of one item in order. An undoing and what it undid cancel; a change can be undone when every later one
 * of the same item has cancelled.
 */
final class ItemChain {
    private final List<JournalRow> rows;

    private ItemChain(List<JournalRow> rows) {
        this.rows = rows;
    }

    static ItemChain of(List<JournalRow> oldestFirst) {
        return new ItemChain(oldestFirst);
    }

    /** Whether a later undoing of it is itself in force. */
    boolean isUndone(long id) {
        Set<Long> undone = new HashSet<>();
        for (int index = rows.size() - 1; index >= 0; index--) {
            JournalRow row = rows.get(index);
            Long undoes = row.undoes();
            if (undoes != null && !undone.contains(row.id())) {
                undone.add(undoes);
            }
        }
        return undone.contains(id);
    }

    /** The latest change after this one that has not cancelled; empty if none stands in the way. */
    Optional<JournalRow> inTheWay(long id) {
        Deque<JournalRow> standing = new ArrayDeque<>();
        for (JournalRow row : after(id)) {
            JournalRow last = standing.peek();
            Long undoes = row.undoes();
            if (last != null && undoes != null && undoes == last.id()) {
                standing.pop();
            } else {
                standing.push(row);
            }
        }
        return Optional.ofNullable(standing.peek());
    }

    private List<JournalRow> after(long id) {
        List<JournalRow> later = new ArrayList<>(rows);
        later.removeIf(row -> row.id() <= id);
        return later;
    }
}
