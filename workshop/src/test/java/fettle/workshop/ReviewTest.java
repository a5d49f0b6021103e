package fettle.workshop;

import static fettle.workshop.WorkshopFixtures.MORNING;
import static fettle.workshop.WorkshopFixtures.check;
import static fettle.workshop.WorkshopFixtures.pack;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fettle.engine.charge.Task;
import fettle.engine.pack.Check;
import fettle.engine.pack.Standing;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReviewTest {
    private static final Instant YESTERDAY = MORNING.minus(Duration.ofDays(1));

    @TempDir
    Path folder;

    Workshop workshop;

    @BeforeEach
    void open() {
        workshop = WorkshopFixtures.open(folder);
        workshop.packs().add(pack("P07"));
        workshop.packs().add(pack("P08"));
        workshop.packs().add(pack("P09"));
        workshop.entries().addCheck("P07", check(YESTERDAY, 3.84, 3.83, 3.84, 3.84), "");
        workshop.entries().addCheck("P08", check(YESTERDAY, 2.10, 3.83, 3.84, 3.84), "");
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    @Test
    void putsTheWorstStandingFirstAndTheSoonestTaskFirst() {
        ShelfReview review = workshop.review().shelf();
        assertThat(review.now()).isEqualTo(MORNING);
        assertThat(review.packs().get(0).assessment().pack().tag()).isEqualTo("P08");
        assertThat(review.packs())
                .extracting(pack -> pack.assessment().standing())
                .isSortedAccordingTo(Comparator.<Standing>naturalOrder().reversed());
        assertThat(review.tasks())
                .extracting(Task::due)
                .isSortedAccordingTo(Comparator.nullsLast(Comparator.naturalOrder()));
        assertThat(review.tasks())
                .filteredOn(task -> MORNING.equals(task.due()))
                .extracting(Task::packTag)
                .startsWith("P08")
                .endsWith("P09");
    }

    @Test
    void leavesRetiredPacksOutButStillShowsTheirFile() {
        workshop.packs().retire("P08", "over-discharged");
        assertThat(workshop.review().shelf().packs())
                .extracting(pack -> pack.assessment().pack().tag())
                .containsExactlyInAnyOrder("P07", "P09");
        PackFile file = workshop.review().pack("p08");
        assertThat(file.retired()).isTrue();
        assertThat(file.review().assessment().standing()).isEqualTo(Standing.RETIRED);
        assertThat(file.review().tasks()).isEmpty();
        assertThat(file.history().checks()).hasSize(1);
    }

    @Test
    void givesHistoryOldestFirstWhateverTheOrderOfEntry() {
        workshop.entries().addCheck("P07", check(YESTERDAY.minusSeconds(90), 3.9, 3.9, 3.9, 3.9), "");
        assertThat(workshop.review().pack("P07").history().checks())
                .extracting(Check::takenAt)
                .containsExactly(YESTERDAY.minusSeconds(90), YESTERDAY);
    }

    @Test
    void forgetsAnEntryThatIsUndone() {
        JournalEntry low = workshop.entries().addCheck("P07", check(MORNING, 2.0, 2.0, 2.0, 2.0), "");
        assertThat(workshop.review().pack("P07").history().checks()).hasSize(2);
        workshop.history().undo(low.id());
        assertThat(workshop.review().pack("P07").history().checks()).hasSize(1);
    }

    @Test
    void refusesAnUnknownTag() {
        assertThatThrownBy(() -> workshop.review().pack("P77")).isInstanceOf(UnknownNameException.class);
    }

    @Test
    void servesManyThreadsAtOnceWithoutLosingAnEntry() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(6);
        try {
            List<Callable<JournalEntry>> work = IntStream.range(0, 60)
                    .mapToObj(entry -> (Callable<JournalEntry>) () -> {
                        workshop.review().shelf();
                        return workshop.entries()
                                .addCheck("P09", check(YESTERDAY.plusSeconds(entry), 3.8, 3.8, 3.8, 3.8), "");
                    })
                    .toList();
            for (Future<JournalEntry> done : threads.invokeAll(work)) {
                assertThat(done.get().id()).isPositive();
            }
        } finally {
            threads.shutdownNow();
        }
        assertThat(workshop.review().pack("P09").history().checks()).hasSize(60);
        assertThat(workshop.keeping().verify()).isEmpty();
    }
}
