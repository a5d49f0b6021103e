package fettle.book.archive;

import static fettle.book.BookFixtures.NOON;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fettle.book.BookFixtures;
import fettle.book.record.Shapes;
import fettle.book.store.Book;
import fettle.book.store.UnusableBookException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BackupAndRestoreTest {
    @TempDir
    Path folder;

    @Test
    void bringsABookBackAndKeepsWhatWasThereBeside() {
        Path home = folder.resolve("it's a \"book\"");
        Path backup = folder.resolve("it's a copy.sqlite");
        try (Book book = Book.open(home)) {
            BookFixtures.fill(book);
            assertThat(Backup.write(book, backup)).anyMatch(line -> line.contains("9 changes"));
            BookFixtures.addCheck(book, NOON.plusSeconds(3_600));
        }
        List<String> done = Restore.put(backup, home, NOON);
        assertThat(done).anyMatch(line -> line.contains("kept what was there in "));
        assertThat(checks(home)).isEqualTo(1);
        assertThat(checks(home.resolve("kept-20260601T120000Z"))).isEqualTo(2);
    }

    @Test
    void writesOneFileThatNeedsNoOtherBesideIt() throws IOException {
        Path place = Files.createDirectory(folder.resolve("stick"));
        try (Book book = Book.open(folder.resolve("a"))) {
            BookFixtures.fill(book);
            Backup.write(book, place.resolve("copy.sqlite"));
        }
        try (var files = Files.list(place)) {
            assertThat(files).containsExactly(place.resolve("copy.sqlite"));
        }
    }

    @Test
    void restoresIntoAFolderWithoutABook() {
        Path backup = folder.resolve("copy.sqlite");
        try (Book book = Book.open(folder.resolve("a"))) {
            BookFixtures.fill(book);
            Backup.write(book, backup);
        }
        Restore.put(backup, folder.resolve("new"), NOON);
        assertThat(checks(folder.resolve("new"))).isEqualTo(1);
    }

    @Test
    void refusesADamagedBackupAndLeavesTheBookAlone() throws IOException {
        Path home = folder.resolve("a");
        Path backup = folder.resolve("copy.sqlite");
        try (Book book = Book.open(home)) {
            BookFixtures.fill(book);
            Backup.write(book, backup);
        }
        byte[] bytes = Files.readAllBytes(backup);
        Arrays.fill(bytes, bytes.length / 2, bytes.length / 2 + 4_096, (byte) 0x5a);
        Files.write(backup, bytes);
        refuses(backup, home, "damaged");
        refuses(
                Files.writeString(folder.resolve("text.sqlite"), "no database, only text ".repeat(50)),
                home,
                "damaged");
        refuses(Files.createFile(folder.resolve("empty.sqlite")), home, "holds no book");
        refuses(folder.resolve("nowhere.sqlite"), home, "is not a file");
        assertThat(checks(home)).isEqualTo(1);
        try (var files = Files.list(home)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder("book.sqlite", "book.lock");
        }
    }

    @Test
    void refusesToRestoreOverABookInUse() {
        Path backup = folder.resolve("copy.sqlite");
        Path home = folder.resolve("a");
        try (Book book = Book.open(home)) {
            Backup.write(book, backup);
            refuses(backup, home, "is in use by process");
        }
    }

    @Test
    void completesARestoreThatWasCutOff() throws IOException {
        Path home = folder.resolve("a");
        Path backup = folder.resolve("copy.sqlite");
        try (Book book = Book.open(home)) {
            BookFixtures.fill(book);
            Backup.write(book, backup);
            BookFixtures.addCheck(book, NOON.plusSeconds(3_600));
        }
        Files.copy(backup, home.resolve("book.sqlite.restoring"));
        assertThat(checks(home)).isEqualTo(1);
    }

    private static void refuses(Path backup, Path home, String why) {
        assertThatThrownBy(() -> Restore.put(backup, home, NOON))
                .isInstanceOf(UnusableBookException.class)
                .hasMessageContaining(why);
    }

    private static int checks(Path home) {
        try (Book book = Book.open(home)) {
            assertThat(Verification.of(book)).isEmpty();
            return book.items(Shapes.CHECK).ofPack(1).size();
        }
    }
}
