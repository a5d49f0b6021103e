package fettle.book.record;

import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * How an engine record and a stored row become each other.
 *
 * <p>Only the record's own columns are here; whether an item is retired or withdrawn, and what was typed, is the
 * store's.
 *
 * @param <T> the engine's record
 */
public interface Shape<T> {
    Kind kind();

    Row toRow(T item, References references);

    /** The record, or {@link UnreadableRowException} or {@link fettle.engine.units.InputException} where it makes none. */
    T fromRow(Row row, References references);

    /** The enum constant stored under a column. */
    static <E extends Enum<E>> E constant(Class<E> type, Row row, String column) {
        String written = row.text(column);
        return Arrays.stream(type.getEnumConstants())
                .filter(constant -> constant.name().equals(written))
                .findFirst()
                .orElseThrow(() -> new UnreadableRowException(column + " is \"" + written + "\"; expected one of "
                        + Arrays.stream(type.getEnumConstants()).map(Enum::name).collect(Collectors.joining(", "))));
    }
}
