package fettle.book.record;

import fettle.engine.units.InputException;
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

    /** The record, or {@link UnreadableRowException} or {@link InputException} where the row makes none. */
    T fromRow(Row row, References references);

    /** The record of a stored row; whatever keeps it from being one is an {@link UnreadableRowException}. */
    static <T> T decode(Shape<T> shape, Row row, References references) {
        try {
            return shape.fromRow(row, references);
        } catch (InputException | ArithmeticException damaged) {
            throw new UnreadableRowException(String.valueOf(damaged.getMessage()));
        }
    }

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
