package fettle.workshop;

import fettle.book.record.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Names what differs between two rows in words: {@code rated capacity, keeper}. */
final class ChangedParts {
    /** Ends of a column's name that people need not read. */
    private static final String SILENT = "_(coulombs|amps|volts|watts|joules|kilograms|on|id)$";

    /** Columns whose name without its unit does not say what they are. */
    private static final Map<String, String> SAID = Map.of(
            "max_watts", "power",
            "total_watts", "total power",
            "energy_joules", "energy",
            "typical_amps", "typical current",
            "peak_amps", "peak current");

    private ChangedParts() {}

    /** What {@code after} changes of {@code before}; columns only {@code before} has stay as they are. */
    static List<String> between(Row before, Row after) {
        List<String> changed = new ArrayList<>();
        after.values().forEach((column, value) -> {
            if (!Objects.equals(before.values().get(column), value)) {
                changed.add(words(column));
            }
        });
        after.parts().forEach((table, rows) -> {
            if (!before.parts(table).equals(rows)) {
                changed.add(words(table.replaceFirst("^[a-z]+_", "")) + (table.endsWith("y") ? "" : "s"));
            }
        });
        return changed;
    }

    private static String words(String column) {
        return SAID.getOrDefault(column, column.replaceFirst(SILENT, "").replace('_', ' '));
    }
}
