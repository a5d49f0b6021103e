package fettle.book.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fettle.book.archive.Verification;
import fettle.book.record.Shapes;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Kills a process that is writing, at moments of no one's choosing: whatever it had acknowledged must be there. */
class KilledProcessTest {
    private static final int KILLS = 5;
    private static final int MOST_ENTRIES_BEFORE_A_KILL = 60;
    private static final int MOST_NANOS_INTO_THE_NEXT = 3_000_000;

    @TempDir
    Path folder;

    @Test
    void losesNoAcknowledgedEntryAndLeavesAWholeBook() throws IOException, InterruptedException {
        long seed = System.nanoTime();
        Random random = new Random(seed);
        long acknowledged = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            acknowledged = writeAndKill(random);
            try (Book book = Book.open(folder)) {
                assertThat(Verification.of(book)).as("seed %d", seed).isEmpty();
                assertThat(book.journal().find(acknowledged))
                        .as("seed %d", seed)
                        .isPresent();
                long latest = book.journal().recent(0, 1).get(0).row().id();
                assertThat(book.items(Shapes.CHECK).ofPack(1))
                        .as("seed %d", seed)
                        .hasSize((int) latest - 1);
            }
        }
        assertThat(acknowledged).isGreaterThan(KILLS);
    }

    @Test
    void refusesASecondProcessAndNamesTheFirst() throws IOException, InterruptedException {
        Process writer = start();
        try {
            writer.inputReader().readLine();
            assertThatThrownBy(() -> Book.open(folder).close())
                    .isInstanceOf(UnusableBookException.class)
                    .hasMessageContaining("is in use by process " + writer.pid())
                    .hasMessageContaining("Close that Fettle first");
        } finally {
            writer.destroyForcibly().waitFor();
        }
        Book.open(folder).close();
    }

    /** The last number the process said before it was killed. */
    private long writeAndKill(Random random) throws IOException, InterruptedException {
        Process writer = start();
        BufferedReader said = writer.inputReader();
        long acknowledged = 0;
        for (int entry = 1 + random.nextInt(MOST_ENTRIES_BEFORE_A_KILL); entry > 0; entry--) {
            acknowledged = Long.parseLong(said.readLine());
        }
        long until = System.nanoTime() + random.nextInt(MOST_NANOS_INTO_THE_NEXT);
        while (System.nanoTime() < until) {
            Thread.onSpinWait();
        }
        writer.toHandle().destroyForcibly(); // SIGKILL; through the handle, so that what it said can still be read
        writer.waitFor();
        for (String line = said.readLine(); line != null; line = said.readLine()) {
            acknowledged = line.matches("\\d+") ? Math.max(acknowledged, Long.parseLong(line)) : acknowledged;
        }
        return acknowledged;
    }

    private Process start() throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        EntryWriter.class.getName(),
                        folder.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }
}
