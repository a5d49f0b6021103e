package fettle.documents;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Finds the project's documents. */
final class Documents {
    private Documents() {}

    /** The project's folder: the nearest one upwards that holds the command. */
    static Path home() {
        Path folder = Path.of("").toAbsolutePath();
        while (Files.notExists(folder.resolve("fettle")) || Files.notExists(folder.resolve("check"))) {
            folder = folder.getParent();
        }
        return folder;
    }

    /** Every document for people. */
    static List<Path> all() {
        try (Stream<Path> docs = Files.walk(home().resolve("docs"))) {
            return Stream.concat(
                            Stream.of(home().resolve("README.md"), home().resolve("CHANGELOG.md")),
                            docs.filter(path -> path.toString().endsWith(".md")))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String text(Path document) {
        try {
            return Files.readString(document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The cells of the table rows of a document that have at least a number of them, header and rulers included. */
    static List<List<String>> rows(String document, int leastCells) {
        return text(home().resolve(document))
                .lines()
                .filter(line -> line.startsWith("| "))
                .map(line -> Stream.of(line.substring(1).split("\\|"))
                        .map(String::strip)
                        .toList())
                .filter(cells -> cells.size() >= leastCells)
                .toList();
    }
}
