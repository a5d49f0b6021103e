package fettle.workshop.worksheet;

import java.util.List;

/**
 * One field of a worksheet.
 *
 * @param key its name in forms, JSON and on the command line
 * @param label what stands above it
 * @param hint how to write it, with an example
 * @param usual what it stands for where nothing is typed; empty if it must be typed or may be left out
 * @param choices what can be chosen; empty for typed fields
 * @param lines whether it takes several lines
 */
public record WorksheetField(String key, String label, String hint, String usual, List<String> choices, boolean lines) {
    public WorksheetField {
        choices = List.copyOf(choices);
    }

    /** The same, standing for something else where nothing is typed. */
    WorksheetField with(String otherUsual) {
        return new WorksheetField(key, label, hint, otherUsual, choices, lines);
    }

    static WorksheetField line(String key, String label, String hint, String usual) {
        return new WorksheetField(key, label, hint, usual, List.of(), false);
    }

    static WorksheetField lines(String key, String label, String hint) {
        return new WorksheetField(key, label, hint, "", List.of(), true);
    }

    static WorksheetField choice(String key, String label, String hint, String usual, List<String> choices) {
        return new WorksheetField(key, label, hint, usual, choices, false);
    }
}
