package fettle.book.store;

import fettle.book.record.Kind;
import fettle.book.record.Row;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One change of one item, with its state before and after.
 *
 * @param id its number, rising by one
 * @param at when it was made
 * @param actor who made it
 * @param sentence what was changed, in words
 * @param subject the tag or name it is about; may be empty
 * @param kind kind of the item
 * @param itemId id of the item
 * @param before the item before; {@code null} where the change made it
 * @param after the item after
 * @param undoes the change this one takes back; {@code null} for any other change
 * @param digest chained over all changes up to this one, so that damage shows
 */
public record JournalRow(
        long id,
        Instant at,
        String actor,
        String sentence,
        String subject,
        Kind kind,
        long itemId,
        @Nullable Row before,
        Row after,
        @Nullable Long undoes,
        String digest) {}
