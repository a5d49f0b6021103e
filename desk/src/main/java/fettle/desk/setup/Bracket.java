package fettle.desk.setup;

/**
 * The span that may be used, bracketed in every panel.
 *
 * @param from lower end, in the frame's units
 * @param to upper end
 * @param label what it is, with its figures
 */
public record Bracket(String from, String to, String label) {}
