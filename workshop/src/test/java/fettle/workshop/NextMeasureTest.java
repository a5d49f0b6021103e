package fettle.workshop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class NextMeasureTest {
    @TempDir
    Path folder;

    private Workshop workshop;

    @BeforeEach
    void open() {
        workshop = WorkshopFixtures.open(folder);
        workshop.packs().add(WorkshopFixtures.pack("P07"));
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    private List<NextMeasure> next() {
        return NextMeasure.of(workshop.review().pack("P07"), WorkshopFixtures.MORNING);
    }

    @Test
    void beginsWithEachCellOfAPackNeverChecked() {
        assertThat(next().get(0).what()).contains("each of its 4 cells", "hour of rest");
        assertThat(next().get(0).begin()).isEqualTo("P07 ");
        assertThat(next()).hasSizeLessThanOrEqualTo(3);
    }

    @Test
    void asksForCellsWhereOnlyThePackWasRead() {
        workshop.entries().enter("P07 15.4V pack rest 2h");

        assertThat(next()).isNotEmpty();
        assertThat(next().get(0).what()).contains("balance lead");
    }

    @Test
    void asksAgainWhereTheLastCheckIsTooOld() {
        workshop.entries()
                .addCheck(
                        "P07",
                        WorkshopFixtures.check(
                                WorkshopFixtures.MORNING.minus(Duration.ofDays(400)), 3.84, 3.84, 3.84, 3.84),
                        "typed");

        assertThat(next().get(0).what()).contains("400 days old");
    }

    @Test
    void asksNothingOfAPackThatIsProven() {
        workshop.entries().enter("P07 3.84 3.84 3.84 3.84 21C rest 2h");

        assertThat(next()).isEmpty();
    }
}
