package fettle.reliability;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.workshop.JournalEntry;
import fettle.workshop.KeptTrace;
import fettle.workshop.Workshop;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Kills a process with SIGKILL while it enters checks, charges, set-up sheets and logs. After each kill the book opens,
 * verifies, and holds every entry that was acknowledged, in this kill or an earlier one. {@code -Dfettle.kills=N} asks for
 * more of it.
 */
final class KilledTest {
    private static final int KILLS = Integer.getInteger("fettle.kills", 6);
    private static final long SEED = Long.getLong("fettle.seed", 20_261);
    private static final int KILLS_A_BOOK = 20;
    private static final int MOST_ENTRIES_BEFORE = 30;
    private static final int MOST_MILLIS_OF_OPENING = 900;
    private static final int MOST_NANOS_INTO_THE_NEXT = 12_000_000;
    private static final int ALL = 1_000_000;

    @TempDir
    private Path folder;

    private final Random random = new Random(SEED);
    private int killsInOpening;

    @Test
    void everyAcknowledgedEntryOutlivesTheKill() throws IOException, InterruptedException {
        Map<Long, String> acknowledged = new TreeMap<>();
        Path book = folder;
        long entries = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            if (kill % KILLS_A_BOOK == 0) {
                entries += acknowledged.size();
                acknowledged.clear();
                book = Files.createDirectory(folder.resolve("book-" + kill));
            }
            writeAndKill(book, acknowledged);
            requireAll(book, acknowledged, "seed " + SEED + ", kill " + kill);
        }
        entries += acknowledged.size();
        System.out.println("killed " + KILLS + " times (" + killsInOpening + " before the first entry), " + entries
                + " entries acknowledged, all of them there");
        assertThat(entries).isGreaterThan(KILLS);
    }

    private void writeAndKill(Path book, Map<Long, String> acknowledged) throws IOException, InterruptedException {
        Process scribe = new ProcessBuilder(Processes.scribe("write", book.toString(), folder.toString()))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        BufferedReader said = scribe.inputReader();
        int wait = random.nextInt(MOST_ENTRIES_BEFORE + 5) - 5;
        if (wait <= 0) {
            Thread.sleep(random.nextInt(MOST_MILLIS_OF_OPENING));
        }
        int heard = 0;
        for (; heard < wait; heard++) {
            hear(said.readLine(), acknowledged);
        }
        pause(random.nextInt(MOST_NANOS_INTO_THE_NEXT));
        scribe.toHandle().destroyForcibly(); // SIGKILL; through the handle, so that what it said can still be read
        scribe.waitFor();
        for (String line = said.readLine(); line != null; line = said.readLine()) {
            hear(line, acknowledged);
            heard++;
        }
        killsInOpening += heard == 0 ? 1 : 0;
    }

    private static void pause(int nanos) {
        long until = System.nanoTime() + nanos;
        while (System.nanoTime() < until) {
            Thread.onSpinWait();
        }
    }

    /** A line cut off by the kill was not said. */
    private static void hear(String line, Map<Long, String> acknowledged) {
        String[] parts = String.valueOf(line).split(" ", 2);
        assertThat(parts).as("what the process said").hasSize(2);
        acknowledged.put(Long.valueOf(parts[0]), parts[1]);
    }

    private static void requireAll(Path book, Map<Long, String> acknowledged, String when) {
        try (Workshop workshop = Workshop.open(book, Clock.systemUTC(), "Marten")) {
            assertThat(workshop.keeping().verify()).as(when).isEmpty();
            Map<Long, String> held = workshop.history().recent(0, ALL).stream()
                    .collect(Collectors.toMap(
                            JournalEntry::id, JournalEntry::sentence, (one, two) -> one, HashMap::new));
            assertThat(held).as(when).containsAllEntriesOf(acknowledged);
            List<KeptTrace> traces = workshop.packs().list().isEmpty()
                    ? List.of()
                    : workshop.traces().ofPack("P07");
            if (!traces.isEmpty()) {
                assertThat(workshop.traces().read(traces.get(0).id()).size())
                        .as(when)
                        .isEqualTo(20);
            }
        }
    }
}
