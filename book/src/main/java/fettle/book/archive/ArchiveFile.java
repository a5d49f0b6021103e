package fettle.book.archive;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import fettle.book.store.LogFolder;
import fettle.book.store.SqliteFile;
import fettle.book.store.UnusableBookException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/** An archive read into memory, with its layout checked. Nothing is ever unpacked onto the disk. */
final class ArchiveFile {
    private static final int MIB = 1024 * 1024;

    /** More than a lifetime of entries. */
    private static final long MOST_BYTES = 1024L * MIB;

    /** An export packs to a tenth; a hostile archive that packs to a thousandth must not fill the memory. */
    private static final long MOST_TIMES_UNPACKED = 100;

    private static final long LEAST_ALLOWED_UNPACKED = 16L * MIB;

    private final Path path;
    private final Manifest manifest;
    private final Map<String, byte[]> files;

    private ArchiveFile(Path path, Manifest manifest, Map<String, byte[]> files) {
        this.path = path;
        this.manifest = manifest;
        this.files = files;
    }

    /**
     * Reads an archive that should hold these tables.
     *
     * @throws UnusableBookException if it is no zip, no archive of a book, of a newer version, or not whole
     */
    static ArchiveFile read(Path path, List<ArchiveTable> tables) {
        BookCopy.requireFile(path);
        Map<String, byte[]> files = unzip(path, tables);
        ArchiveFile archive = new ArchiveFile(path, manifest(path, files.get(Manifest.FILE)), files);
        archive.requireKnownVersion();
        tables.forEach(archive::requireWhole);
        return archive;
    }

    byte[] csv(ArchiveTable table) {
        return files.getOrDefault(table.file(), new byte[0]);
    }

    /**
     * Puts the logs it carries into a folder. What is missing or damaged is left out: it is lost alone.
     *
     * @throws UnusableBookException if the folder cannot be written
     */
    void unpackLogs(LogFolder logs) {
        try (ZipFile zip = new ZipFile(path.toFile())) {
            for (String sha256 : manifest.logs()) {
                ZipEntry entry = zip.getEntry(Manifest.logFile(sha256));
                if (entry != null && Manifest.isLogFile(entry.getName()) && !isBomb(entry) && !logs.isWhole(sha256)) {
                    unpack(zip, entry, sha256, logs);
                }
            }
        } catch (IOException failed) {
            throw new UnusableBookException(
                    "the logs of " + path + " cannot be written to " + logs.path()
                            + ". Look whether the disk is full; nothing was changed.",
                    failed);
        }
    }

    /** A packed log does not pack again; what does is no log. */
    private static boolean isBomb(ZipEntry log) {
        return log.getSize() > LEAST_ALLOWED_UNPACKED && log.getSize() > 2 * log.getCompressedSize();
    }

    private static void unpack(ZipFile zip, ZipEntry entry, String sha256, LogFolder logs) throws IOException {
        byte[] first;
        try (InputStream in = zip.getInputStream(entry)) {
            first = in.readNBytes(1);
        } catch (ZipException damaged) {
            return;
        }
        if (first.length > 0) {
            logs.keepPacked(sha256, out -> copy(zip, entry, out));
        }
    }

    /** A damaged entry ends early; what came of it does not match its name, and is told of as damaged. */
    private static void copy(ZipFile zip, ZipEntry entry, OutputStream out) throws IOException {
        try (InputStream in = zip.getInputStream(entry)) {
            in.transferTo(out);
        } catch (ZipException damaged) {
            out.flush();
        }
    }

    Manifest.Entry entry(ArchiveTable table) {
        return manifest.tables().stream()
                .filter(entry -> table.file().equals(entry.file()))
                .findFirst()
                .orElseThrow(() -> refusal(path, "its manifest does not name " + table.file()));
    }

    static UnusableBookException refusal(Path path, String why) {
        return new UnusableBookException("the archive " + path + " cannot be imported: " + why
                + ". Nothing was changed; use an archive that book export wrote.");
    }

    private static Map<String, byte[]> unzip(Path path, List<ArchiveTable> tables) {
        List<String> expected = tables.stream().map(ArchiveTable::file).toList();
        Map<String, byte[]> files = new HashMap<>();
        try (ZipFile zip = new ZipFile(path.toFile())) {
            int most = mostUnpacked(path);
            int left = most;
            for (ZipEntry entry : Collections.list(zip.entries())) {
                String name = entry.getName();
                if (Manifest.isLogFile(name)) {
                    continue;
                }
                if (!expected.contains(name) && !name.equals(Manifest.FILE) || files.containsKey(name)) {
                    throw refusal(path, "it holds \"" + printable(name) + "\", which Fettle does not write there");
                }
                byte[] bytes = bytes(zip, entry, left);
                if (bytes.length == left) {
                    throw refusal(path, "it unpacks to more than " + most / MIB + " MiB");
                }
                left -= bytes.length;
                files.put(name, bytes);
            }
        } catch (ZipException | IllegalArgumentException notZip) {
            throw new UnusableBookException(
                    refusal(path, "it is not a whole zip file").getMessage(), notZip);
        } catch (IOException unreadable) {
            throw new UnusableBookException(
                    refusal(path, "it cannot be read to the end").getMessage(), unreadable);
        }
        return files;
    }

    /** What the tables of an archive may come to [bytes]. */
    private static int mostUnpacked(Path path) throws IOException {
        long bySize = Math.max(Files.size(path) * MOST_TIMES_UNPACKED, LEAST_ALLOWED_UNPACKED);
        return (int) Math.min(bySize, Math.min(MOST_BYTES, Runtime.getRuntime().maxMemory() / 2));
    }

    private static byte[] bytes(ZipFile zip, ZipEntry entry, int most) throws IOException {
        try (InputStream in = zip.getInputStream(entry)) {
            return in.readNBytes(most);
        }
    }

    private static String printable(String name) {
        return name.replaceAll("\\p{Cntrl}", "?");
    }

    private static Manifest manifest(Path path, byte[] json) {
        if (json == null) {
            throw refusal(path, "it has no " + Manifest.FILE);
        }
        try {
            Manifest manifest = new ObjectMapper()
                    .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
                    .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
                    .readValue(json, Manifest.class);
            if (!manifest.format().equals(Manifest.FORMAT)) {
                throw refusal(path, "its manifest says it is \"" + printable(manifest.format()) + "\"");
            }
            return manifest;
        } catch (IOException wrong) {
            throw new UnusableBookException(
                    refusal(path, "its " + Manifest.FILE + " is not that of a bench book")
                            .getMessage(),
                    wrong);
        }
    }

    private void requireKnownVersion() {
        if (manifest.formatVersion() > Manifest.FORMAT_VERSION
                || manifest.schemaVersion() > SqliteFile.SCHEMA_VERSION) {
            throw new UnusableBookException("the archive " + path + " was written by a newer Fettle (schema "
                    + manifest.schemaVersion() + "; this one knows up to " + SqliteFile.SCHEMA_VERSION
                    + "). Use that version, or newer.");
        }
    }

    private void requireWhole(ArchiveTable table) {
        byte[] csv = files.get(table.file());
        if (csv == null) {
            throw refusal(path, table.file() + " is missing");
        }
        Manifest.Entry entry = entry(table);
        for (String column : table.header()) {
            if (!entry.columns().contains(column)) {
                throw refusal(path, table.file() + " has no column " + column);
            }
        }
        if (!Sha256.of(csv).equals(entry.sha256())) {
            throw refusal(path, table.file() + " is not as it was written (its SHA-256 does not match)");
        }
    }
}
