package fettle.book.store;

import fettle.book.record.Kind;
import fettle.book.record.Row;
import org.jspecify.annotations.Nullable;

/**
 * An item before and after a change.
 *
 * @param before {@code null} where the change made it
 */
record ItemChange(Kind kind, long itemId, @Nullable Row before, Row after) {}
