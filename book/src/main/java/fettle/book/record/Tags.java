package fettle.book.record;

import java.util.Arrays;
import java.util.List;

/** Tags of packs in one column, with spaces between them: a tag has none. */
final class Tags {
    private Tags() {}

    static String write(List<String> tags) {
        return String.join(" ", tags);
    }

    static List<String> read(String written) {
        return Arrays.stream(written.split(" ")).filter(tag -> !tag.isEmpty()).toList();
    }
}
