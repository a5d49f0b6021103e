package fettle.book.archive;

import fettle.book.store.UnusableBookException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Files that get their name only when they are whole. */
final class Targets {
    private Targets() {}

    /** Where to write until it is whole; refuses to overwrite. */
    static Path begin(Path target) {
        if (Files.exists(target)) {
            throw new UnusableBookException(target + " is there already. Choose another name, or move it away.");
        }
        Path folder = target.getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new UnusableBookException("there is no folder " + folder + ". Make it, or name another.");
        }
        Path part = target.resolveSibling(target.getFileName() + ".part");
        drop(part);
        try {
            return Files.createFile(part);
        } catch (IOException refused) {
            throw new UnusableBookException(
                    "the folder " + folder + " cannot be written. Name another, or look whether the disk is full.",
                    refused);
        }
    }

    static void drop(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException leftBehind) {
            throw new UnusableBookException(part + " cannot be removed. Remove it by hand.", leftBehind);
        }
    }
}
