package fettle.book.store;

import fettle.book.record.Row;

/**
 * An item as stored.
 *
 * @param id its id, for ever
 * @param item the engine's record
 * @param row the whole row, with what the store keeps beside the record
 */
public record Stored<T>(long id, T item, Row row) {
    /** Whether a piece of kit is out of use. */
    public boolean retired() {
        return row.flag("retired");
    }
}
