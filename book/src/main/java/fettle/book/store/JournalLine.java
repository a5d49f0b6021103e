package fettle.book.store;

/**
 * A change as the journal shows it.
 *
 * @param row the change
 * @param undone whether a later change took it back
 * @param undoable whether it can be taken back now
 */
public record JournalLine(JournalRow row, boolean undone, boolean undoable) {}
