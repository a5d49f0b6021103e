package fettle.workshop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fettle.engine.pack.Craft;
import fettle.engine.pack.CraftKind;
import fettle.engine.pack.fit.CraftFit;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CraftFitsTest {
    @TempDir
    private Path folder;

    private Workshop workshop;

    @BeforeEach
    void open() {
        workshop = WorkshopFixtures.open(folder);
        workshop.craft().add(new Craft("Wren", CraftKind.PLANE, 4, "", null, null, "", ""));
        workshop.packs().add(WorkshopFixtures.pack("P01"));
        workshop.packs().add(WorkshopFixtures.pack("P02"));
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    @Test
    void drawsFromPutBackAfterThreeRunsAndSaysSo() {
        for (int day = 1; day <= 3; day++) {
            workshop.entries().enter("P01 ran Wren 6 min 2026-05-0" + day + " 12:00");
            workshop.entries().enter("P01 charged " + (2900 + 50 * day) + "mAh 2026-05-0" + day + " 18:00");
        }

        CraftFit fit = workshop.fits().of("wren", Map.of());

        // 3000 mAh in 6 min is 30 A; the neighbours are half an ampere off
        assertThat(fit.remarks()).contains("Wren draws 30.0 ± 0.5 A by what was put back after 3 runs");
        // 5000 mAh less 20 % reserve at 30 A is 8 min
        assertThat(fit.fits()).anySatisfy(one -> {
            assertThat(one.tags()).isEqualTo(List.of("P02"));
            assertThat(one.reasons()).contains("8.0 min at the typical current, to reserve");
        });
        assertThat(fit.fits()).anyMatch(one -> one.tags().equals(List.of("P01", "P02")));
    }

    @Test
    void asksForTheCurrentWhereNothingSaysIt() {
        CraftFit fit = workshop.fits().of("Wren", Map.of("capacity", "6000"));

        assertThat(fit.remarks()).anyMatch(remark -> remark.startsWith("the typical current of Wren is not entered"));
        assertThat(fit.misfits()).anyMatch(one -> one.reasons().contains("holds 5000 mAh, asked are 6000 mAh"));
        assertThatThrownBy(() -> workshop.fits().of("Wren", Map.of("heaviest", "much")))
                .hasMessageContaining("heaviest pack");
        assertThatThrownBy(() -> workshop.fits().of("Kite", Map.of())).hasMessageContaining("Kite");
    }
}
