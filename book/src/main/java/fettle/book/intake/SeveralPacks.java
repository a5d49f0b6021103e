package fettle.book.intake;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Sees where a log is of several packs: two columns for the same cell, two of volts and two of current, or a column that
 * names a pack in each row. A trace is of one pack, so a person is asked which columns or rows are whose.
 */
final class SeveralPacks {
    private static final String NAMES_A_PACK =
            "(?:pack|battery|batt?|akku|channel|port|slot)(?: ?(?:id|no|nr|name|number))?";
    private static final int MOST_NAMES = 8;

    private SeveralPacks() {}

    /**
     * The question to a person; empty if the log is of one pack.
     *
     * @param recognised every column as its heading says, doubles included
     */
    static Optional<String> question(String file, List<Column> recognised, List<CsvRecord> rows) {
        return sideBySide(file, recognised).or(() -> inTurn(file, recognised, rows));
    }

    private static Optional<String> sideBySide(String file, List<Column> columns) {
        List<Column> first = new ArrayList<>();
        List<Column> second = new ArrayList<>();
        for (Column column : columns) {
            boolean ofAPack = column.role() == ColumnRole.PACK_VOLTS
                    || column.role() == ColumnRole.AMPS
                    || column.role() == ColumnRole.CELL_VOLTS;
            if (ofAPack) {
                boolean again = first.stream().anyMatch(before -> isSame(before, column));
                (again ? second : first).add(column);
            }
        }
        boolean cells = second.stream().anyMatch(column -> column.role() == ColumnRole.CELL_VOLTS);
        boolean whole = second.stream().map(Column::role).distinct().count() > 1;
        if (!cells && !whole) {
            return Optional.empty();
        }
        return Optional.of(file + " looks like a log of two packs side by side: " + labels(first) + " of one, "
                + labels(second)
                + " of the other. Add it once for each pack with the columns that are its own, --columns "
                + uses(first, second) + " for the one and --columns " + uses(second, first) + " for the other.");
    }

    private static boolean isSame(Column one, Column other) {
        return one.role() == other.role() && one.cell() == other.cell();
    }

    private static String labels(List<Column> columns) {
        return columns.stream().map(Column::label).collect(Collectors.joining(", "));
    }

    private static String uses(List<Column> taken, List<Column> left) {
        List<String> uses = new ArrayList<>();
        left.stream()
                .filter(column -> taken.stream().noneMatch(other -> isSame(other, column)))
                .forEach(column -> uses.add("unused=" + (column.index() + 1)));
        taken.forEach(column -> uses.add(key(column) + "=" + (column.index() + 1)));
        return String.join(",", uses);
    }

    private static String key(Column column) {
        return column.role().key() + (column.cell() > 0 ? column.cell() : "");
    }

    private static Optional<String> inTurn(String file, List<Column> columns, List<CsvRecord> rows) {
        for (Column column : columns) {
            String words = ColumnNames.part(column.name())
                    .words()
                    .toLowerCase(Locale.ROOT)
                    .strip();
            if (column.role() == ColumnRole.UNUSED && words.matches(NAMES_A_PACK)) {
                Set<String> names = rows.stream()
                        .filter(row -> column.index() < row.getFieldCount())
                        .map(row -> row.getField(column.index()).strip())
                        .filter(name -> !name.isEmpty())
                        .collect(Collectors.toCollection(LinkedHashSet::new));
                if (names.size() > 1 && names.size() <= MOST_NAMES) {
                    return Optional.of(file + " has rows of several packs: " + column.label() + " says "
                            + String.join(", ", names)
                            + ". Cut the file so that each has the rows of one pack, and add each to its own. If it says"
                            + " something else, say unused=" + (column.index() + 1) + ".");
                }
            }
        }
        return Optional.empty();
    }
}
