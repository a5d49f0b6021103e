package fettle.book.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fettle.book.BookFixtures;
import fettle.book.store.Book;
import fettle.book.store.SqliteFile;
import fettle.book.store.UnusableBookException;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BadArchiveTest {
    @TempDir
    Path folder;

    Book empty;
    Map<String, byte[]> files;

    @BeforeEach
    void exportAGoodOne() throws IOException {
        Path good = folder.resolve("good.zip");
        try (Book book = Book.open(folder.resolve("a"))) {
            BookFixtures.fill(book);
            Export.write(book, good);
        }
        files = unzip(good);
        empty = Book.open(folder.resolve("b"));
    }

    @AfterEach
    void close() {
        empty.close();
    }

    @Test
    void refusesWhatIsNotThereOrNoZip() throws IOException {
        refuses(folder.resolve("nowhere.zip"), "is not a file");
        refuses(Files.writeString(folder.resolve("text.zip"), "not a zip at all"), "not a whole zip file");
        refuses(Files.createFile(folder.resolve("empty.zip")), "not a whole zip file");
    }

    @Test
    void refusesAZipThatWasCutOff() throws IOException {
        byte[] whole = Files.readAllBytes(folder.resolve("good.zip"));
        Path cut = Files.write(folder.resolve("cut.zip"), Arrays.copyOf(whole, whole.length / 2));
        refuses(cut, "not a whole zip file");
    }

    @Test
    void refusesAWrongManifest() throws IOException {
        edit(Manifest.FILE, Manifest.FORMAT, "recipe book");
        refuses(zip(), "its manifest says it is \"recipe book\"");
        files.put(Manifest.FILE, "[1, 2".getBytes(StandardCharsets.UTF_8));
        refuses(zip(), "manifest.json is not that of a bench book");
        files.put(Manifest.FILE, "{}".getBytes(StandardCharsets.UTF_8));
        refuses(zip(), "manifest.json is not that of a bench book");
        files.remove(Manifest.FILE);
        refuses(zip(), "it has no manifest.json");
    }

    @Test
    void refusesANewerVersion() throws IOException {
        edit(Manifest.FILE, "\"schema_version\" : " + SqliteFile.SCHEMA_VERSION, "\"schema_version\" : 99");
        refuses(zip(), "written by a newer Fettle (schema 99; this one knows up to " + SqliteFile.SCHEMA_VERSION + ")");
    }

    @Test
    void refusesAMissingTableAndAMissingColumn() throws IOException {
        edit(Manifest.FILE, "\"keeper\",", "");
        refuses(zip(), "pack.csv has no column keeper");
        files.remove("pack.csv");
        refuses(zip(), "pack.csv is missing");
    }

    @Test
    void refusesAColumnMissingFromTheFileAloneEvenWithAMatchingDigest() throws IOException {
        reseal("pack_charge.csv", "returned_coulombs,", "");
        refuses(zip(), "pack_charge.csv does not begin with the columns");
    }

    @Test
    void refusesAChangedFigureByItsDigest() throws IOException {
        edit("pack_check_cell.csv", "3.84", "3.94");
        refuses(zip(), "pack_check_cell.csv is not as it was written");
    }

    @Test
    void refusesAChangedFigureByTheJournalWhereTheDigestWasMadeToMatch() throws IOException {
        reseal("pack_check_cell.csv", "3.84", "3.94");
        refuses(zip(), "pack_check row 1 is not as the journal says");
    }

    @Test
    void refusesLettersInAFigureWithLineAndColumn() throws IOException {
        reseal("pack_check_cell.csv", "1,1,3.84", "1,1,high");
        refuses(zip(), "pack_check_cell.csv line 2, column 3 (rest_volts): \"high\" is not a number");
    }

    @Test
    void refusesARowTheBookDoesNotTake() throws IOException {
        reseal("pack_check_cell.csv", "1,2,", "1,1,");
        refuses(zip(), "pack_check_cell.csv holds a row the book does not take");
    }

    @Test
    void refusesPathsThatClimbOutAndWritesNothingThere() throws IOException {
        files.put("../../climbed.csv", "x".getBytes(StandardCharsets.UTF_8));
        refuses(zip(), "it holds \"../../climbed.csv\"");
        try (var found = Files.walk(folder)) {
            assertThat(found.map(file -> file.getFileName().toString())).doesNotContain("climbed.csv");
        }
    }

    private void refuses(Path archive, String why) {
        assertThatThrownBy(() -> Import.read(empty, archive))
                .isInstanceOf(UnusableBookException.class)
                .hasMessageContaining(why);
        assertThat(empty.journal().recent(0, 10)).isEmpty();
        assertThat(Verification.of(empty)).isEmpty();
    }

    private void edit(String file, String from, String to) {
        String text = new String(files.get(file), StandardCharsets.UTF_8);
        assertThat(text).contains(from);
        int at = text.indexOf(from);
        String edited = text.substring(0, at) + to + text.substring(at + from.length());
        files.put(file, edited.getBytes(StandardCharsets.UTF_8));
    }

    /** An edit with the manifest's digest made to match, as a forger would. */
    private void reseal(String file, String from, String to) {
        String before = Sha256.of(files.get(file));
        edit(file, from, to);
        edit(Manifest.FILE, before, Sha256.of(files.get(file)));
    }

    private Path zip() throws IOException {
        Path archive = folder.resolve("edited.zip");
        try (OutputStream out = Files.newOutputStream(archive);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(file.getKey()));
                zip.write(file.getValue());
            }
        }
        return archive;
    }

    private static Map<String, byte[]> unzip(Path archive) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (ZipFile zip = new ZipFile(archive.toFile())) {
            for (ZipEntry entry : Collections.list(zip.entries())) {
                files.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
            }
        }
        return files;
    }
}
