package fettle.workshop;

import fettle.book.record.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Names what differs between two rows in words: {@code rated capacity, keeper}. */
final class ChangedParts {
    /** Units at the end of a column's name, which people need not read. */
    private static final String UNIT = "_(coulombs|amps|volts|watts|joules|kilograms|on|id)$";

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
        return column.replaceFirst(UNIT, "").replace('_', ' ');
    }
}
