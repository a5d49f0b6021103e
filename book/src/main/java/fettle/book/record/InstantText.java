package fettle.book.record;

import java.time.Instant;
import java.time.format.DateTimeParseException;

/** Instants as ISO 8601 text in UTC, to the nanosecond. */
public final class InstantText {
    private InstantText() {}

    public static Instant read(Row row, String column) {
        return read(column, row.text(column));
    }

    public static Instant read(String column, String text) {
        try {
            return Instant.parse(text);
        } catch (DateTimeParseException damaged) {
            throw new UnreadableRowException(column + " is \"" + text + "\", which is not an instant");
        }
    }
}
