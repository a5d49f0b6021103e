package fettle.book.store;

import fettle.book.record.Row;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import org.jspecify.annotations.Nullable;

/** Reads the present line of a result as a row. */
public final class RowReader {
    private RowReader() {}

    public static Row read(ResultSet result) throws SQLException {
        ResultSetMetaData columns = result.getMetaData();
        Row row = Row.empty();
        for (int column = 1; column <= columns.getColumnCount(); column++) {
            row = row.withValue(columns.getColumnName(column), value(result.getObject(column)));
        }
        return row;
    }

    /** The driver gives small whole numbers as {@link Integer}. */
    private static @Nullable Object value(@Nullable Object value) {
        return value instanceof Integer whole ? (Object) whole.longValue() : value;
    }
}
