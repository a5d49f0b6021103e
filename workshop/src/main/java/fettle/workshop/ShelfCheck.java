package fettle.workshop;

import fettle.engine.units.Faults;
import fettle.engine.units.InputException;
import fettle.workshop.shelf.SheetRows;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Takes a whole shelf of checks in one sitting: all rows are saved, each to be undone alone, or none. Thread-safe. */
public final class ShelfCheck {
    private final Ledger ledger;
    private final Entries entries;

    ShelfCheck(Ledger ledger, Entries entries) {
        this.ledger = ledger;
        this.entries = entries;
    }

    /**
     * What would be saved for each row. Saves nothing.
     *
     * @param rows one pack a row, typed or pasted from a spreadsheet
     * @param every words that hold for every row, e.g. {@code 21C rest 2h}
     * @throws InputException if there is no row, there are too many, or a heading is not understood
     */
    public List<CheckRow> preview(String rows, String every) {
        Map<String, Integer> seen = new HashMap<>();
        List<CheckRow> previews = new ArrayList<>();
        for (SheetRows.Row row : SheetRows.of(rows, every)) {
            EntryPreview preview = entries.preview(row.line());
            Integer before = preview.packTag() == null ? null : seen.putIfAbsent(preview.packTag(), row.number());
            previews.add(new CheckRow(row.number(), before == null ? preview : again(preview, before)));
        }
        return previews;
    }

    /** Saves every row; throws {@link InputException} with the faults of every row if one cannot be saved. */
    public List<JournalEntry> save(String rows, String every) {
        return ledger.together(() -> {
            List<CheckRow> previews = preview(rows, every);
            Faults faults = new Faults();
            previews.forEach(row -> row.preview()
                    .problems()
                    .forEach(problem -> faults.add("rows", "row " + row.number() + ": " + problem.sentence())));
            faults.refuse();
            return previews.stream()
                    .map(row -> entries.enter(row.preview().line()))
                    .toList();
        });
    }

    private static EntryPreview again(EntryPreview preview, int before) {
        List<String> questions = new ArrayList<>(preview.questions());
        questions.add(preview.packTag() + " is in row " + before + " too. Is the tag right?");
        return new EntryPreview(
                preview.line(),
                preview.packTag(),
                preview.understood(),
                preview.problems(),
                questions,
                preview.corrections());
    }
}
