package fettle.workshop;

import java.util.List;

/**
 * What a log would be read as.
 *
 * @param file its name
 * @param dialect how its table is written, in words
 * @param columns what each column is taken for
 * @param positive what a positive current means: discharge, charge or unclear
 * @param why what that was told from
 * @param rows its first rows of figures, as written
 * @param questions what must be said before it can be read; none if nothing
 */
public record TracePreview(
        String file,
        String dialect,
        List<ColumnUse> columns,
        String positive,
        String why,
        List<List<String>> rows,
        List<String> questions) {
    public TracePreview {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        questions = List.copyOf(questions);
    }

    /**
     * One column's use.
     *
     * @param name its heading
     * @param use e.g. {@code volts}, {@code cell 2}, {@code unused}
     * @param unit unit or format of its fields; empty if unused
     * @param sure false where the heading did not say so and the figures were gone by
     */
    public record ColumnUse(String name, String use, String unit, boolean sure) {}
}
