package fettle.desk.shelf;

import fettle.workshop.JournalEntry;
import java.util.List;

/**
 * A shelf being checked.
 *
 * @param rows as typed
 * @param every what holds for every row, as typed
 * @param packs every pack in use
 * @param read what was made of the rows
 * @param saved what was just saved, in order; empty if nothing was
 * @param back the address of this page with what was saved
 */
public record ShelfPage(
        String rows, String every, List<KnownPack> packs, RowsRead read, List<JournalEntry> saved, String back) {

    /** A pack in use: its tag, what it is, and how many readings it takes. */
    public record KnownPack(String tag, String label, int cells) {}
}
