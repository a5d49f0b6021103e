package fettle.workshop;

import java.time.Instant;

/**
 * One change of the book.
 *
 * @param id its number, rising
 * @param at when it was made
 * @param actor who made it
 * @param sentence what was changed, in words, e.g. {@code added pack P07 (LiPo 4S 5000 mAh)}
 * @param subject the tag or name it is about; may be empty
 * @param undone whether a later change undid it
 * @param undoable whether it can be undone now
 */
public record JournalEntry(
        long id, Instant at, String actor, String sentence, String subject, boolean undone, boolean undoable) {}
