package fettle.desk.frame;

import fettle.workshop.EntryPreview;
import fettle.workshop.EntryPreview.Correction;
import fettle.workshop.EntryPreview.LineProblem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * An entry line as read, ready to be shown: the line cut into good and bad parts so that a mark stands under each bad one.
 *
 * @param line as typed
 * @param parts the line in order, cut where something was not understood; empty if all was
 * @param understood one phrase per thing understood
 * @param problems sentences, each with its column
 * @param questions what to look at although it can be saved
 * @param corrections the line with a tag that was perhaps meant
 * @param canSave whether Enter saves it
 */
public record LineReading(
        String line,
        List<Part> parts,
        List<String> understood,
        List<String> problems,
        List<String> questions,
        List<Correction> corrections,
        boolean canSave) {

    /** A stretch of the line; {@code bad} if it was not understood. */
    public record Part(String text, boolean bad) {}

    public static LineReading of(EntryPreview preview) {
        List<String> problems = preview.problems().stream()
                .map(problem -> "column " + problem.column() + ": " + problem.sentence())
                .toList();
        return new LineReading(
                preview.line(),
                cut(preview.line(), preview.problems()),
                preview.understood(),
                problems,
                preview.questions(),
                preview.corrections(),
                preview.canSave());
    }

    private static List<Part> cut(String line, List<LineProblem> problems) {
        List<Part> parts = new ArrayList<>();
        int at = 0;
        List<LineProblem> inOrder = problems.stream()
                .sorted(Comparator.comparingInt(LineProblem::column))
                .toList();
        for (LineProblem problem : inOrder) {
            int start = Math.min(line.length(), problem.column() - 1);
            if (start < at) {
                continue;
            }
            if (start > at) {
                parts.add(new Part(line.substring(at, start), false));
            }
            int end = Math.min(line.length(), start + problem.part().length());
            // A problem with no part of its own, such as a line that ends too soon, still gets its mark.
            parts.add(new Part(end > start ? line.substring(start, end) : " ", true));
            at = end;
        }
        if (!parts.isEmpty() && at < line.length()) {
            parts.add(new Part(line.substring(at), false));
        }
        return List.copyOf(parts);
    }
}
