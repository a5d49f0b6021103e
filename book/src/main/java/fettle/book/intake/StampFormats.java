package fettle.book.intake;

import java.util.List;
import java.util.Optional;

/** Tells how a column writes its stamps. */
final class StampFormats {
    private static final String CLOCK = "\\d{1,4}:\\d{1,2}.*";
    private static final String YEAR_FIRST = "\\d{4}[-./]\\d{1,2}[-./]\\d{1,2}.*";
    private static final String YEAR_LAST = "\\d{1,2}([-./])\\d{1,2}\\1\\d{2,4}.*";

    private StampFormats() {}

    /** The format of a column; empty if it holds plain figures. Day or month first is told from days past the twelfth. */
    static Optional<ColumnUnit> of(List<String> fields) {
        if (fields.isEmpty()) {
            return Optional.empty();
        }
        String first = fields.get(0).strip();
        if (first.matches(CLOCK)) {
            return Optional.of(ColumnUnit.CLOCK);
        }
        if (first.matches(YEAR_FIRST)) {
            return Optional.of(ColumnUnit.DATE_TIME);
        }
        if (!first.matches(YEAR_LAST)) {
            return Optional.empty();
        }
        boolean monthFirst = fields.stream()
                .map(field -> field.strip().split("[-./ T]"))
                .anyMatch(parts -> parts.length > 1 && parts[1].matches("1[3-9]|2\\d|3[01]"));
        return Optional.of(monthFirst ? ColumnUnit.DATE_TIME_MONTH_FIRST : ColumnUnit.DATE_TIME_DAY_FIRST);
    }
}
