package fettle.cli;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Writes files that were not there before. */
final class NewFile {
    private NewFile() {}

    /** Writes a file; refuses to write over one. */
    static void write(Path file, byte[] bytes) {
        try {
            Files.write(file, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        } catch (FileAlreadyExistsException there) {
            throw new RefusedException(file + " is there already. Name a new file, or move that one away.");
        } catch (IOException e) {
            throw new RefusedException(
                    file + " cannot be written. Name a file in a folder that is there and that you may write in.");
        }
    }
}
