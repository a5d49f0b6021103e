package fettle.workshop;

/**
 * A trace just added.
 *
 * @param entry its line in the journal
 * @param trace what was kept
 */
public record TraceAdded(JournalEntry entry, KeptTrace trace) {}
