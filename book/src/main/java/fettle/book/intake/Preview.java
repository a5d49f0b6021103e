package fettle.book.intake;

import java.util.ArrayList;
import java.util.List;

/**
 * What a log would be read as, to be confirmed before anything is kept.
 *
 * @param file its name
 * @param dialect how its table is written
 * @param mapping what its columns are taken for
 * @param why what the sign of the current was told from, or why it cannot be told
 * @param rows its first rows of figures, as written
 * @param questions what a person must say before it can be read; none if nothing
 */
public record Preview(
        String file, Dialect dialect, Mapping mapping, String why, List<List<String>> rows, List<String> questions) {
    public Preview {
        rows = List.copyOf(rows);
        questions = List.copyOf(questions);
    }

    /** The same with one more question. */
    Preview asking(String question) {
        List<String> more = new ArrayList<>(questions);
        more.add(question);
        return new Preview(file, dialect, mapping, why, rows, more);
    }
}
