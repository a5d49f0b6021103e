package fettle.workshop.entry;

/**
 * A part of a line that cannot be taken.
 *
 * @param column position of its first character, from 1
 * @param part the part, exactly as it stands in the line from that column on
 * @param sentence what is wrong and how to mend it
 */
public record Problem(int column, String part, String sentence) {}
