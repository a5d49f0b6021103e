package fettle.desk.frame;

/**
 * A page that could not be shown.
 *
 * @param heading what happened, in a few words
 * @param sentence what happened and how to mend it
 */
public record Trouble(String heading, String sentence) {}
