package fettle.book.intake;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;

/** Measured logs outside the project; tests that need one are skipped where there are none. */
final class MeasuredLogs {
    private MeasuredLogs() {}

    static LogFile log(String file) {
        return LogFile.of(path(file));
    }

    static Path path(String file) {
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
            if (Files.isDirectory(at.resolve("shared/reference"))) {
                return Optional.of(at.resolve("shared/reference"));
            }
        }
        return Optional.empty();
    }
}
