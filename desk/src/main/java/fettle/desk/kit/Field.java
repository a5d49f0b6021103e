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
 * @param need whether it can be left empty
 * @param usual what stands in it at first; may be empty
 */
public record Field(String key, String label, String hint, Kind kind, List<String> choices, Need need, String usual) {

    /** How a field is entered. */
    public enum Kind {
        LINE,
        LINES,
        DAY,
        /** One of the choices. */
        CHOICE,
        /** Any of the choices, kept as a list with commas. */
        CHOICES
    }

    /** Whether a field can be left empty. */
    public enum Need {
        NEEDED,
        OPTIONAL,
        /** The hint says when. */
        DEPENDS
    }

    static Field line(String key, String label, String hint) {
        return of(key, label, hint, Kind.LINE, List.of());
    }

    static Field lines(String key, String label, String hint) {
        return of(key, label, hint, Kind.LINES, List.of());
    }

    static Field day(String key, String label, String hint) {
        return of(key, label, hint, Kind.DAY, List.of());
    }

    static Field choice(String key, String label, String hint, List<String> choices) {
        return of(key, label, hint, Kind.CHOICE, choices);
    }

    static Field choices(String key, String label, String hint, List<String> choices) {
        return of(key, label, hint, Kind.CHOICES, choices);
    }

    private static Field of(String key, String label, String hint, Kind kind, List<String> choices) {
        return new Field(key, label, hint, kind, choices, Need.OPTIONAL, "");
    }

    /** The same, not to be left empty. */
    Field asNeeded() {
        return new Field(key, label, hint, kind, choices, Need.NEEDED, usual);
    }

    /** The same, with something in it at first. */
    Field usually(String text) {
        return new Field(key, label, hint, kind, choices, need, text);
    }
}
