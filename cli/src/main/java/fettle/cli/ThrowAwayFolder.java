package fettle.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** A new folder that is deleted with all its content when closed. */
record ThrowAwayFolder(Path path) implements AutoCloseable {
    static ThrowAwayFolder make() {
        try {
            return new ThrowAwayFolder(Files.createTempDirectory("fettle-demo-"));
        } catch (IOException fault) {
            throw new RefusedException("no folder can be made for temporary files (" + fault.getMessage()
                    + "). Free some space, or name a folder: --book DIR.");
        }
    }

    @Override
    public void close() {
        try (Stream<Path> content = Files.walk(path)) {
            for (Path each : content.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(each);
            }
        } catch (IOException fault) {
            throw new RefusedException(
                    "the demo's folder could not be deleted (" + fault.getMessage() + "). Delete it: " + path);
        }
    }
}
