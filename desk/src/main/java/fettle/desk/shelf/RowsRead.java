package fettle.desk.shelf;

import fettle.desk.frame.LineReading;
import fettle.workshop.CheckRow;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What was made of typed rows.
 *
 * @param rows each with its place among the lines
 * @param fault what stands against all of them; empty if nothing does
 * @param left tags of packs in use that no row names
 */
public record RowsRead(List<Row> rows, String fault, List<String> left) {

    /** One row: its number, the pack it names if any, and how it was read. */
    public record Row(int number, @Nullable String tag, LineReading reading) {}

    static RowsRead nothing(List<String> tags) {
        return new RowsRead(List.of(), "", tags);
    }

    static RowsRead refused(String fault, List<String> tags) {
        return new RowsRead(List.of(), fault, tags);
    }

    static RowsRead of(List<CheckRow> rows, List<String> tags) {
        Set<String> named = rows.stream()
                .map(row -> row.preview().packTag())
                .filter(Objects::nonNull)
                .collect(Collectors.toSet());
        return new RowsRead(
                rows.stream()
                        .map(row -> new Row(row.number(), row.preview().packTag(), LineReading.of(row.preview())))
                        .toList(),
                "",
                tags.stream().filter(tag -> !named.contains(tag)).toList());
    }

    /** How many rows can be saved. */
    public long good() {
        return rows.stream().filter(row -> row.reading().canSave()).count();
    }

    /** The state of all rows in a sentence. */
    public String summary() {
        long bad = rows.size() - good();
        if (rows.isEmpty()) {
            return "No row yet.";
        }
        String all = rows.size() == 1 ? "1 row" : rows.size() + " rows";
        return bad == 0
                ? all + ", all understood. Nothing is saved yet."
                : all + ", " + bad + " to mend before any is saved.";
    }
}
