package fettle.cli;

import java.util.ArrayList;
import java.util.List;

/** Text broken at spaces behind a label in the margin. */
final class Wrapped {
    /** What a page of text fits in. */
    static final int COLUMNS = 100;

    private static final int MARGIN = 9;

    private Wrapped() {}

    /** The text in lines that fit, the first with the label before it. */
    static List<String> lines(String label, String text) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+")) {
            if (!line.isEmpty() && MARGIN + line.length() + 1 + word.length() > COLUMNS) {
                lines.add(margin(lines.isEmpty() ? label : "") + line);
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(margin(lines.isEmpty() ? label : "") + line);
        return lines;
    }

    private static String margin(String label) {
        return String.format("%" + (MARGIN - 1) + "s ", label);
    }
}
