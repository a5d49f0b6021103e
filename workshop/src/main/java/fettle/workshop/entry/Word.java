package fettle.workshop.entry;

/**
 * One word of a line.
 *
 * @param column position of its first character, from 1
 * @param part it as it stands in the line, quotes included
 * @param text what it says: quotes taken off, a number and its unit apart joined by one space
 * @param quoted true if it stood in quotes or is free text, so that it is no word of the grammar
 */
record Word(int column, String part, String text, boolean quoted) {
    boolean is(String keyword) {
        return !quoted && text.equalsIgnoreCase(keyword);
    }
}
