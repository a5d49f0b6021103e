package fettle.cli;

import fettle.workshop.EntryPreview;
import java.util.Arrays;

/** Marks to print under an entry line. */
final class MarkedLine {
    private MarkedLine() {}

    /** {@code ^^^} under every part with a problem, to stand under the line. */
    static String marks(EntryPreview preview) {
        char[] marks = new char[preview.line().length() + 1];
        Arrays.fill(marks, ' ');
        preview.problems().forEach(problem -> {
            int from = Math.min(problem.column() - 1, marks.length - 1);
            int to = Math.min(from + Math.max(1, problem.part().length()), marks.length);
            Arrays.fill(marks, from, to, '^');
        });
        return String.valueOf(marks).stripTrailing();
    }
}
