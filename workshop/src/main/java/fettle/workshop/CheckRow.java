package fettle.workshop;

/**
 * One row of a shelf of checks.
 *
 * @param number its place among the lines typed, from 1
 * @param preview what would be saved for it
 */
public record CheckRow(int number, EntryPreview preview) {}
