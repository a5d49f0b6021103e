package fettle.book.record;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * One item as stored, without its id: column values and the rows of its parts. Immutable.
 *
 * <p>A value is a {@link String}, a {@link Long}, a {@link Double} or absent. Columns are kept in the order of their
 * names, so that the same item always prints the same.
 */
public final class Row {
    private final SortedMap<String, @Nullable Object> values;
    private final SortedMap<String, List<Row>> parts;

    private Row(Map<String, @Nullable Object> values, Map<String, List<Row>> parts) {
        this.values = Collections.unmodifiableSortedMap(new TreeMap<>(values));
        this.parts = Collections.unmodifiableSortedMap(new TreeMap<>(parts));
    }

    public static Row empty() {
        return new Row(Map.of(), Map.of());
    }

    public Row with(String column, @Nullable String text) {
        return withValue(column, text);
    }

    public Row with(String column, @Nullable Double real) {
        return withValue(column, real);
    }

    public Row with(String column, @Nullable Long whole) {
        return withValue(column, whole);
    }

    public Row with(String column, int whole) {
        return withValue(column, (long) whole);
    }

    /** Yes or no, stored as 1 or 0. */
    public Row withFlag(String column, boolean yes) {
        return withValue(column, yes ? 1L : 0L);
    }

    /** A value of any of the stored types, as a database or JSON reader gives it. */
    public Row withValue(String column, @Nullable Object value) {
        if (!(value == null || value instanceof String || value instanceof Long || value instanceof Double)) {
            throw new UnreadableRowException(
                    column + " holds a " + value.getClass().getSimpleName());
        }
        Map<String, @Nullable Object> more = new TreeMap<>(values);
        more.put(column, value);
        return new Row(more, parts);
    }

    public Row without(String column) {
        Map<String, @Nullable Object> fewer = new TreeMap<>(values);
        fewer.remove(column);
        return new Row(fewer, parts);
    }

    /** The rows of its parts in one child table, in order. */
    public Row withParts(String table, List<Row> rows) {
        Map<String, List<Row>> more = new TreeMap<>(parts);
        more.put(table, List.copyOf(rows));
        return new Row(values, more);
    }

    /** Everything of another row beside what is here; the other wins where both have it. */
    public Row and(Row other) {
        Map<String, @Nullable Object> moreValues = new TreeMap<>(values);
        moreValues.putAll(other.values);
        Map<String, List<Row>> moreParts = new TreeMap<>(parts);
        moreParts.putAll(other.parts);
        return new Row(moreValues, moreParts);
    }

    public SortedMap<String, @Nullable Object> values() {
        return values;
    }

    public SortedMap<String, List<Row>> parts() {
        return parts;
    }

    public List<Row> parts(String table) {
        return parts.getOrDefault(table, List.of());
    }

    public String text(String column) {
        return required(column, textOrNull(column));
    }

    public @Nullable String textOrNull(String column) {
        return as(String.class, column);
    }

    public double real(String column) {
        return required(column, realOrNull(column));
    }

    public @Nullable Double realOrNull(String column) {
        return as(Double.class, column);
    }

    public long whole(String column) {
        return required(column, wholeOrNull(column));
    }

    public @Nullable Long wholeOrNull(String column) {
        return as(Long.class, column);
    }

    public boolean flag(String column) {
        return whole(column) == 1;
    }

    private <V> @Nullable V as(Class<V> type, String column) {
        Object value = values.get(column);
        if (value == null || type.isInstance(value)) {
            return type.cast(value);
        }
        throw new UnreadableRowException(column + " is \"" + value + "\", which is of another type");
    }

    private static <V> V required(String column, @Nullable V value) {
        if (value == null) {
            throw new UnreadableRowException(column + " is missing");
        }
        return value;
    }

    /** A column or part that is not there equals one that is empty: older versions wrote rows without it. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Row row && told().equals(row.told()) && filled().equals(row.filled());
    }

    @Override
    public int hashCode() {
        return 31 * told().hashCode() + filled().hashCode();
    }

    private Map<String, @Nullable Object> told() {
        Map<String, @Nullable Object> told = new TreeMap<>(values);
        told.values().removeIf(Objects::isNull);
        return told;
    }

    private Map<String, List<Row>> filled() {
        Map<String, List<Row>> filled = new TreeMap<>(parts);
        filled.values().removeIf(List::isEmpty);
        return filled;
    }

    @Override
    public String toString() {
        return RowJson.write(this);
    }
}
