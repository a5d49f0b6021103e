package fettle.book.archive;

import static fettle.book.BookFixtures.note;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fettle.book.BookFixtures;
import fettle.book.GeneratedBook;
import fettle.book.record.Shapes;
import fettle.book.store.Book;
import fettle.book.store.JournalLine;
import fettle.book.store.UnusableBookException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ArchiveRoundTripTest {
    @TempDir
    Path folder;

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 5, 8, 13})
    void bringsAnyBookBackWithoutLossAndExportsTheSameBytesAgain(long seed) throws IOException {
        Path first = folder.resolve("first.zip");
        Path second = folder.resolve("second.zip");
        Map<String, Object> written;
        try (Book book = Book.open(folder.resolve("a"))) {
            GeneratedBook.fill(book, seed);
            written = contents(book);
            Export.write(book, first);
        }
        try (Book book = Book.open(folder.resolve("b"))) {
            Import.read(book, first);
            assertThat(contents(book)).isEqualTo(written);
            assertThat(Verification.of(book)).isEmpty();
            Export.write(book, second);
        }
        assertThat(Files.mismatch(first, second)).isEqualTo(-1);
    }

    @Test
    void carriesWithdrawnEntriesSoThatTheirUndoingCanStillBeUndone() {
        Path archive = folder.resolve("book.zip");
        try (Book book = Book.open(folder.resolve("a"))) {
            BookFixtures.fill(book);
            book.journal().undo(5, note("undid #5", "P07"));
            Export.write(book, archive);
        }
        try (Book book = Book.open(folder.resolve("b"))) {
            Import.read(book, archive);
            assertThat(book.items(Shapes.CHECK).ofPack(1)).isEmpty();
            book.journal().undo(10, note("undid #10", "P07"));
            assertThat(book.items(Shapes.CHECK).ofPack(1)).hasSize(1);
        }
    }

    @Test
    void carriesServosSetUpSheetsSweepsOutingsAndPlans() {
        Path archive = folder.resolve("book.zip");
        try (Book book = Book.open(folder.resolve("a"))) {
            BookFixtures.fill(book);
            BookFixtures.fillControls(book);
            BookFixtures.fillOuting(book);
            Export.write(book, archive);
        }
        try (Book book = Book.open(folder.resolve("b"))) {
            Import.read(book, archive);
            assertThat(book.items(Shapes.SERVO).all().get(0).item()).isEqualTo(BookFixtures.servo("wing"));
            assertThat(book.items(Shapes.SET_UP_SHEET).all().get(0).item()).isEqualTo(BookFixtures.sheet("Kestrel"));
            assertThat(book.items(Shapes.SURFACE_SWEEP).all().get(0).item()).isEqualTo(BookFixtures.sweep("Kestrel"));
            assertThat(book.items(Shapes.OUTING).all().get(0).item()).isEqualTo(BookFixtures.outing("Lake day"));
            assertThat(book.items(Shapes.OUTING_PLAN).all().get(0).item()).isEqualTo(BookFixtures.plan("Lake day"));
        }
    }

    @Test
    void namesQuantitiesWithTheirUnitsInEveryHeader() throws IOException {
        Path archive = folder.resolve("book.zip");
        try (Book book = Book.open(folder.resolve("a"))) {
            BookFixtures.fill(book);
            Export.write(book, archive);
        }
        try (ZipFile zip = new ZipFile(archive.toFile())) {
            String cells = new String(
                    zip.getInputStream(zip.getEntry("pack_check_cell.csv")).readAllBytes(), StandardCharsets.UTF_8);
            assertThat(cells)
                    .startsWith("pack_check_id,position,rest_volts,resistance_ohms\r\n1,1,3.84,0.0021\r\n")
                    .endsWith("1,4,3.84,\r\n");
        }
    }

    @Test
    void importsOnlyIntoAnEmptyBook() {
        Path archive = folder.resolve("book.zip");
        try (Book book = Book.open(folder.resolve("a"))) {
            BookFixtures.fill(book);
            Export.write(book, archive);
            assertThatThrownBy(() -> Import.read(book, archive))
                    .isInstanceOf(UnusableBookException.class)
                    .hasMessageContaining("this book is not empty");
            assertThat(Verification.of(book)).isEmpty();
        }
    }

    @Test
    void refusesToOverwriteAFile() throws IOException {
        Path there = Files.writeString(folder.resolve("there.zip"), "mine");
        try (Book book = Book.open(folder.resolve("a"))) {
            assertThatThrownBy(() -> Export.write(book, there))
                    .isInstanceOf(UnusableBookException.class)
                    .hasMessageContaining("is there already");
        }
        assertThat(there).hasContent("mine");
    }

    private static Map<String, Object> contents(Book book) {
        Map<String, Object> contents = new LinkedHashMap<>();
        Shapes.ALL.forEach(
                shape -> contents.put(shape.kind().table(), book.items(shape).all()));
        List<JournalLine> journal = book.journal().recent(0, 10_000);
        contents.put("journal", journal);
        return contents;
    }
}
