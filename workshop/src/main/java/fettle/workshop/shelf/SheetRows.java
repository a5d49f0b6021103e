package fettle.workshop.shelf;

import fettle.engine.units.Faults;
import fettle.engine.units.InputException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Cuts typed or pasted rows into entry lines: one pack a row, tag first. Cells of a spreadsheet are parted by tabs; a first
 * row that begins with {@code tag} or {@code pack} says what each column holds, in any order.
 */
public final class SheetRows {
    /** Most rows taken at once. */
    public static final int MOST = 200;

    private static final String TAB = "\t";

    private final List<Row> rows = new ArrayList<>();
    private @Nullable List<SheetColumn> columns;

    private SheetRows() {}

    /**
     * A row.
     *
     * @param number its place among all typed lines, from 1
     * @param line the same as an entry line
     */
    public record Row(int number, String line) {}

    /**
     * The rows of a text, blank ones passed over.
     *
     * @param every words that hold for every row, e.g. {@code 21C rest 2h}; may be empty
     * @throws InputException if there is none, there are too many, or a heading is not understood
     */
    public static List<Row> of(String text, String every) {
        SheetRows sheet = new SheetRows();
        int number = 0;
        for (String typed : text.lines().toList()) {
            number++;
            if (!typed.isBlank()) {
                sheet.take(number, typed, every.strip());
            }
        }
        if (sheet.rows.isEmpty()) {
            throw new InputException("rows", "there is no row. Write one pack a row: its tag, then its readings.");
        }
        if (sheet.rows.size() > MOST) {
            throw new InputException(
                    "rows", sheet.rows.size() + " rows are more than " + MOST + ". Save them in parts.");
        }
        return List.copyOf(sheet.rows);
    }

    private void take(int number, String typed, String every) {
        List<String> cells =
                List.of(typed.split(TAB, -1)).stream().map(String::strip).toList();
        if (rows.isEmpty() && columns == null && typed.contains(TAB) && isHeading(cells)) {
            columns = headings(number, cells);
            return;
        }
        List<SheetColumn> known = columns;
        String line = known == null || !typed.contains(TAB) ? joined(cells) : headed(cells, known);
        rows.add(new Row(number, with(line, every)));
    }

    private static boolean isHeading(List<String> cells) {
        return cells.stream()
                .anyMatch(cell ->
                        SheetColumn.of(cell).filter(SheetColumn.TAG::equals).isPresent());
    }

    private static List<SheetColumn> headings(int number, List<String> cells) {
        Faults faults = new Faults();
        List<SheetColumn> columns = new ArrayList<>();
        for (String cell : cells) {
            Optional<SheetColumn> column = SheetColumn.of(cell);
            if (column.isEmpty() && !cell.isEmpty()) {
                faults.add(
                        "rows",
                        "row " + number + ": the heading \"" + cell
                                + "\" is not understood. Known are tag, cell 1, cell 2 …, pack volts, ir 1 …, temperature,"
                                + " rest, when, seen and note; take out the column, or name it so.");
            }
            columns.add(column.orElse(SheetColumn.NOTE));
        }
        faults.refuse();
        return columns;
    }

    private static String joined(List<String> cells) {
        return cells.stream().filter(cell -> !cell.isEmpty()).collect(Collectors.joining(" "));
    }

    /** The line in the order an entry line is read: tag, volts, resistances behind one {@code ir}, the rest, the note. */
    private static String headed(List<String> cells, List<SheetColumn> columns) {
        Map<SheetColumn, String> words = new EnumMap<>(SheetColumn.class);
        IntStream.range(0, Math.min(cells.size(), columns.size()))
                .filter(at -> !cells.get(at).isEmpty())
                .forEach(at -> words.merge(
                        columns.get(at), columns.get(at).word(cells.get(at)), (before, next) -> before + " " + next));
        words.computeIfPresent(SheetColumn.RESISTANCE, (column, figures) -> "ir " + figures);
        return String.join(" ", words.values());
    }

    /** What holds for every row stands before a note, which takes all behind it. */
    private static String with(String line, String every) {
        if (every.isEmpty()) {
            return line;
        }
        int note = line.replace('“', '"').indexOf(" note ");
        int quote = line.replace('“', '"').indexOf(" \"");
        int at = note < 0 ? quote : quote < 0 ? note : Math.min(note, quote);
        return at < 0 ? line + " " + every : line.substring(0, at) + " " + every + line.substring(at);
    }
}
