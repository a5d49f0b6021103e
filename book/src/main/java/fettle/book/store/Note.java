package fettle.book.store;

import java.time.Instant;

/**
 * What the journal says of a change.
 *
 * @param at when it is made
 * @param actor who makes it
 * @param sentence what it changes, in words
 * @param subject the tag or name it is about; may be empty
 */
public record Note(Instant at, String actor, String sentence, String subject) {}
