package fettle.book.store;

import fettle.book.intake.LogFile;
import fettle.engine.units.InputException;
import java.io.BufferedInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Set;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;

/**
 * The folder beside the book that holds logs as received, each packed with gzip under the SHA-256 of its bytes.
 *
 * <p>A log gets its name only when it is whole and on the disk; a row of the book that names it is written after that. So a
 * row never points at half a file, and what a kill leaves behind is a file without a row, which {@link #sweep} removes.
 *
 * @param path the folder; made when the first log comes
 */
public record LogFolder(Path path) {
    private static final int COPY_BYTES = 64 * 1024;
    private static final String ENDING = ".gz";
    private static final String UNFINISHED = ".part";

    /** Writes into an output. */
    @FunctionalInterface
    public interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    /** Where a log stands. */
    public Path file(String sha256) {
        return path.resolve(sha256 + ENDING);
    }

    /** Keeps a log as received; one that is there and whole is left as it is. */
    public void keep(LogFile log, String sha256) {
        if (isWhole(sha256)) {
            return;
        }
        try {
            put(sha256, out -> {
                try (InputStream in = log.open();
                        GZIPOutputStream gzip = new GZIPOutputStream(out, COPY_BYTES)) {
                    in.transferTo(gzip);
                }
            });
        } catch (IOException failed) {
            throw new InputException(
                    "file",
                    log.name() + " cannot be kept in " + path + ": " + failed.getMessage()
                            + ". Look whether the disk is full; nothing was kept.");
        }
    }

    /** Keeps a packed log from a backup or an archive. */
    public void keepPacked(String sha256, Content packed) throws IOException {
        put(sha256, packed);
    }

    private void put(String sha256, Content content) throws IOException {
        Files.createDirectories(path);
        Path part = path.resolve(sha256 + UNFINISHED);
        try (FileOutputStream out = new FileOutputStream(part.toFile())) {
            content.writeTo(new NotClosing(out));
            out.getFD().sync();
        }
        Files.move(part, file(sha256), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        try (FileChannel folder = FileChannel.open(path, StandardOpenOption.READ)) {
            folder.force(true); // so that the name, too, is on the disk
        } catch (IOException notHere) {
            // some systems do not open folders; there the move itself is what can be had
        }
    }

    /** Its bytes as received. */
    public InputStream open(String sha256) throws IOException {
        InputStream packed = new BufferedInputStream(Files.newInputStream(file(sha256)), COPY_BYTES);
        try {
            return new GZIPInputStream(packed, COPY_BYTES);
        } catch (IOException damaged) {
            packed.close();
            throw damaged;
        }
    }

    /** Whether a log is there, byte for byte as received. */
    public boolean isWhole(String sha256) {
        if (!Files.isRegularFile(file(sha256))) {
            return false;
        }
        try (InputStream in = open(sha256)) {
            return sha256(in).equals(sha256);
        } catch (IOException damaged) {
            return false;
        }
    }

    /**
     * Removes what a cut-off addition left behind: unfinished files, and logs no row names.
     *
     * @param named the logs the book names
     */
    void sweep(Set<String> named) throws IOException {
        if (!Files.isDirectory(path)) {
            return;
        }
        try (DirectoryStream<Path> files = Files.newDirectoryStream(path, "*{" + ENDING + "," + UNFINISHED + "}")) {
            for (Path file : files) {
                String name = String.valueOf(file.getFileName());
                boolean known =
                        name.endsWith(ENDING) && named.contains(name.substring(0, name.length() - ENDING.length()));
                if (!known) {
                    Files.deleteIfExists(file);
                }
            }
        }
    }

    /** What bytes are known by, 64 hexadecimal digits. */
    static String sha256(InputStream in) throws IOException {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            byte[] piece = new byte[COPY_BYTES];
            for (int count = in.read(piece); count >= 0; count = in.read(piece)) {
                digest.update(piece, 0, count);
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException("every Java has SHA-256", never);
        }
    }

    /** Lets what writes through it close without closing the file, which is still to be put on the disk. */
    private static final class NotClosing extends OutputStream {
        private final OutputStream out;

        NotClosing(OutputStream out) {
            this.out = out;
        }

        @Override
        public void write(int single) throws IOException {
            out.write(single);
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            out.write(bytes, from, length);
        }

        @Override
        public void flush() throws IOException {
            out.flush();
        }
    }
}
