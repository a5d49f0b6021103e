package fettle.desk.kit;

import java.util.List;

/**
 * One field of a form.
 *
 * @param key its name, the same as in JSON and on the command line
 * @param label what stands above it
 * @param hint how to write it, with an example
 * @param kind how it is entered
 * @param choices what can be chosen; empty for typed fields
 */
public record Field(String key, String label, String hint, Kind kind, List<String> choices) {

    /** How a field is entered. */
    public enum Kind {
        LINE,
        LINES,
        CHOICE
    }

    static Field line(String key, String label, String hint) {
        return new Field(key, label, hint, Kind.LINE, List.of());
    }

    static Field lines(String key, String label, String hint) {
        return new Field(key, label, hint, Kind.LINES, List.of());
    }

    static Field choice(String key, String label, String hint, List<String> choices) {
        return new Field(key, label, hint, Kind.CHOICE, choices);
    }
}
