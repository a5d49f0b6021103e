package fettle.book.archive;

import static fettle.book.BookFixtures.NOON;
import static org.assertj.core.api.Assertions.assertThat;

import fettle.book.BookFixtures;
import fettle.book.record.Shapes;
import fettle.book.store.Book;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A backup is taken while another thread goes on entering: what was saved before it began is in it, and it is whole. */
final class BackupWhileWritingTest {
    private static final int BACKUPS = 3;

    @TempDir
    private Path folder;

    @Test
    void holdsEverythingSavedBeforeItBeganAndRestoresToAWholeBook() throws InterruptedException {
        long[] savedBefore = new long[BACKUPS];
        long[] savedAfter = new long[BACKUPS];
        try (Book book = Book.open(folder.resolve("book"))) {
            BookFixtures.fill(book);
            AtomicLong saved = new AtomicLong();
            AtomicBoolean enough = new AtomicBoolean();
            Thread writer = new Thread(() -> {
                while (!enough.get()) {
                    saved.set(BookFixtures.addCheck(book, NOON.plusSeconds(saved.get()))
                            .id());
                }
            });
            writer.start();
            for (int backup = 0; backup < BACKUPS; backup++) {
                savedBefore[backup] = saved.get();
                Backup.write(book, folder.resolve(backup + ".sqlite"));
                savedAfter[backup] = saved.get();
            }
            enough.set(true);
            writer.join();
        }
        for (int backup = 0; backup < BACKUPS; backup++) {
            Path home = folder.resolve("restored-" + backup);
            Restore.put(folder.resolve(backup + ".sqlite"), home, NOON);
            try (Book book = Book.open(home)) {
                assertThat(Verification.of(book)).isEmpty();
                long latest = book.journal().recent(0, 1).get(0).row().id();
                assertThat(latest).isBetween(savedBefore[backup], savedAfter[backup] + 1);
                assertThat(book.items(Shapes.CHECK).ofPack(1)).isNotEmpty();
            }
        }
        assertThat(savedAfter[BACKUPS - 1]).as("entries made meanwhile").isGreaterThan(savedBefore[0]);
    }
}
