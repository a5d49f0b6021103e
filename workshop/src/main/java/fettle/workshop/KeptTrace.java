package fettle.workshop;

import fettle.engine.trace.TraceRecord;

/**
 * A trace in the book.
 *
 * @param id its number
 * @param pack the pack's tag
 * @param record what was found in it
 */
public record KeptTrace(long id, String pack, TraceRecord record) {}
