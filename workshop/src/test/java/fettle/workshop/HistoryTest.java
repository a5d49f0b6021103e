package fettle.workshop;

import static fettle.workshop.WorkshopFixtures.MORNING;
import static fettle.workshop.WorkshopFixtures.pack;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fettle.engine.units.InputException;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HistoryTest {
    @TempDir
    Path folder;

    Workshop workshop;

    @BeforeEach
    void open() {
        workshop = WorkshopFixtures.open(folder);
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    @Test
    void tellsChangesNewestFirstWithWhoAndWhen() {
        workshop.packs().add(pack("P07"));
        workshop.packs().add(pack("P08"));
        assertThat(workshop.history().recent(0, 10))
                .containsExactly(
                        new JournalEntry(2, MORNING, "Marten", "added pack P08 (LiPo 4S 5000 mAh)", "P08", false, true),
                        new JournalEntry(
                                1, MORNING, "Marten", "added pack P07 (LiPo 4S 5000 mAh)", "P07", false, true));
        assertThat(workshop.history().recent(1, 10)).hasSize(1);
    }

    @Test
    void undoesAndSaysWhatItUndid() {
        workshop.packs().add(pack("P07"));
        JournalEntry undone = workshop.history().undo(1);
        assertThat(undone.sentence()).isEqualTo("undid #1: added pack P07 (LiPo 4S 5000 mAh)");
        assertThat(undone.subject()).isEqualTo("P07");
        assertThat(workshop.packs().list()).isEmpty();
        assertThat(workshop.history().recent(1, 1).get(0).undone()).isTrue();
        workshop.history().undo(undone.id());
        assertThat(workshop.packs().list()).hasSize(1);
        assertThat(workshop.history().recent(2, 1).get(0).undone()).isFalse();
    }

    @Test
    void goesFurtherBackEachTimeTheLatestIsUndone() {
        workshop.packs().add(pack("P07"));
        workshop.packs().edit("P07", pack("P07", "Ada"));
        workshop.packs().retire("P07", "puffed");
        workshop.history().undoLatest();
        assertThat(workshop.packs().find("P07").retired()).isFalse();
        workshop.history().undoLatest();
        assertThat(workshop.packs().find("P07").item().keeper()).isEmpty();
        workshop.history().undoLatest();
        assertThat(workshop.packs().list()).isEmpty();
        assertThatThrownBy(() -> workshop.history().undoLatest())
                .isInstanceOf(InputException.class)
                .hasMessageContaining("nothing left to undo");
    }

    @Test
    void goesFurtherBackAfterARedoToo() {
        workshop.packs().add(pack("P07"));
        workshop.packs().add(pack("P08"));
        JournalEntry undone = workshop.history().undoLatest();
        workshop.history().undo(undone.id());
        workshop.history().undoLatest();
        assertThat(workshop.packs().list()).extracting(Registered::name).containsExactly("P07");
    }
}
