package fettle.book.record;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import org.jspecify.annotations.Nullable;

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

    /** The same of a column that may be empty. */
    public static @Nullable Instant readOrNull(Row row, String column) {
        String text = row.textOrNull(column);
        return text == null ? null : read(column, text);
    }

    /** How an instant that may be missing is written. */
    public static @Nullable String orNull(@Nullable Instant at) {
        return at == null ? null : at.toString();
    }
}
