package fettle.desk.journal;

import fettle.desk.frame.Figures;
import fettle.workshop.JournalEntry;
import java.util.List;

/**
 * A page of the journal.
 *
 * @param rows newest first
 * @param earlier offset of the next page; 0 if there is none
 */
public record JournalPage(List<Row> rows, int earlier) {

    /** One change. */
    public record Row(long id, String at, String actor, String sentence, boolean undone, boolean undoable) {}

    static JournalPage of(List<JournalEntry> entries, int earlier, Figures figures) {
        return new JournalPage(
                entries.stream()
                        .map(entry -> new Row(
                                entry.id(),
                                figures.moment(entry.at()),
                                entry.actor(),
                                Figures.unbroken(entry.sentence()),
                                entry.undone(),
                                entry.undoable()))
                        .toList(),
                earlier);
    }
}
