package fettle.workshop.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every example of the document for users is true. */
class DocumentedLinesTest {
    private static final Path DOCUMENT = Path.of("..", "docs", "entry-line.md");

    @Test
    void everyDocumentedLineIsSaved() throws IOException {
        List<String> lines = block("entry");
        assertThat(lines).hasSizeGreaterThan(30);
        lines.forEach(line -> {
            assertThat(LineFixtures.read(line).problems()).as(line).isEmpty();
            assertThat(LineFixtures.read(line).entry()).as(line).isNotNull();
        });
    }

    @Test
    void everyDocumentedRefusalIsTold() throws IOException {
        List<String> lines = block("refused");
        assertThat(lines).hasSizeGreaterThan(10);
        for (int at = 0; at + 1 < lines.size(); at += 2) {
            Problem problem = LineFixtures.read(lines.get(at)).problems().get(0);
            assertThat("column " + problem.column() + ": " + problem.sentence()).startsWith(lines.get(at + 1));
        }
    }

    /** The lines of every block of that kind. */
    private static List<String> block(String kind) throws IOException {
        List<String> found = new ArrayList<>();
        boolean inside = false;
        for (String line : Files.readAllLines(DOCUMENT)) {
            if (line.startsWith("```")) {
                inside = line.equals("```" + kind);
            } else if (inside) {
                found.add(line);
            }
        }
        return found;
    }
}
