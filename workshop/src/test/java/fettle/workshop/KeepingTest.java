package fettle.workshop;

import static fettle.workshop.WorkshopFixtures.MORNING;
import static fettle.workshop.WorkshopFixtures.pack;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeepingTest {
    private static final Clock CLOCK = Clock.fixed(MORNING, ZoneOffset.UTC);

    @TempDir
    Path folder;

    @Test
    void backsUpAndExportsIntoAFolderUnderTheInstantAndReadsBothBack() throws IOException {
        Path stick = Files.createDirectory(folder.resolve("stick"));
        try (Workshop workshop = WorkshopFixtures.open(folder.resolve("a"))) {
            workshop.packs().add(pack("P07"));
            workshop.keeping().backup(stick);
            workshop.keeping().exportTo(stick);
        }
        Path backup = stick.resolve("fettle-20260601T070000Z.sqlite");
        Path archive = stick.resolve("fettle-20260601T070000Z.zip");
        Workshop.restore(backup, folder.resolve("b"), CLOCK);
        try (Workshop restored = WorkshopFixtures.open(folder.resolve("b"));
                Workshop imported = WorkshopFixtures.open(folder.resolve("c"))) {
            imported.keeping().importFrom(archive);
            assertThat(restored.packs().find("P07").item()).isEqualTo(pack("P07"));
            assertThat(imported.packs().find("P07").item()).isEqualTo(pack("P07"));
            assertThat(imported.keeping().verify()).isEmpty();
        }
    }

    @Test
    void tellsEveryRefusalOfTheBookAsABookException() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "mine");
        refuses(() -> WorkshopFixtures.open(file), "is a file");
        refuses(() -> Workshop.restore(file, folder.resolve("b"), CLOCK), "is damaged");
        try (Workshop workshop = WorkshopFixtures.open(folder.resolve("a"))) {
            refuses(() -> WorkshopFixtures.open(folder.resolve("a")), "is in use by process");
            refuses(() -> workshop.keeping().backup(file), "is there already");
            refuses(() -> workshop.keeping().exportTo(file), "is there already");
            refuses(() -> workshop.keeping().importFrom(file), "not a whole zip file");
        }
    }

    private static void refuses(Runnable work, String why) {
        assertThatThrownBy(work::run).isInstanceOf(BookException.class).hasMessageContaining(why);
    }
}
