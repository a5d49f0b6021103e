package fettle.engine.reference;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;

/** Finds the measured and published files outside the project, or skips the test saying so. */
public final class ReferenceFiles {
    private ReferenceFiles() {}

    /** Lines of one file, e.g. {@code battery/ocv/lco_graphite_ai2020.csv}. */
    public static List<String> lines(String file) {
        try {
            return Files.readAllLines(path(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Rows of one table without its header, quotes taken off. */
    public static List<String[]> rows(String file) {
        return lines(file).stream()
                .skip(1)
                .map(line -> line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1))
                .map(row ->
                        Arrays.stream(row).map(cell -> cell.replace("\"", "")).toArray(String[]::new))
                .toList();
    }

    /** The file's path; the calling test is skipped where no reference folder exists. */
    public static Path path(String file) {
        Optional<Path> folder = folder();
        Assumptions.assumeTrue(
                folder.isPresent(),
                "SKIPPED: no reference folder. Set FETTLE_REFERENCE or put it at ../shared/reference to run this test.");
        return folder.get().resolve(file);
    }

    private static Optional<Path> folder() {
        String named = System.getenv("FETTLE_REFERENCE");
        if (named != null) {
            return Optional.of(Path.of(named));
        }
        for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
            Path candidate = at.resolve("shared/reference");
            if (Files.isDirectory(candidate)) {
                return Optional.of(candidate);
            }
        }
        return Optional.empty();
    }
}
