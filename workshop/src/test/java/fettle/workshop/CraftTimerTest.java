package fettle.workshop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.pack.Craft;
import fettle.engine.pack.CraftKind;
import fettle.workshop.worksheet.CraftTimer;
import fettle.workshop.worksheet.Sheet;
import fettle.workshop.worksheet.Worksheet;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CraftTimerTest {
    @TempDir
    private Path folder;

    private Workshop workshop;

    @BeforeEach
    void open() {
        workshop = WorkshopFixtures.open(folder);
        workshop.packs().add(WorkshopFixtures.pack("P01"));
        workshop.packs().add(WorkshopFixtures.pack("P02"));
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    @Test
    void beginsFromWhatWasPutBackAfterTheCraftsRunsWithAnyPackOfAsManyCells() {
        workshop.craft().add(new Craft("Wren", CraftKind.PLANE, 4, "", 12.0, 45.0, "", ""));
        for (int day = 1; day <= 3; day++) {
            workshop.entries().enter("P01 ran Wren 6 min 2026-05-0" + day + " 12:00");
            workshop.entries().enter("P01 charged " + (2900 + 50 * day) + "mAh 2026-05-0" + day + " 18:00");
        }

        Worksheet timer = CraftTimer.of(workshop, "wren", "P02");
        Sheet sheet = timer.answer(Map.of());

        assertThat(usual(timer, "runs")).isEqualTo("360 s; 2950 mAh\n360 s; 3000 mAh\n360 s; 3050 mAh");
        assertThat(usual(timer, "cells")).isEqualTo("4S");
        assertThat(usual(timer, "peak")).isEqualTo("45.0 A");
        // 5000 mAh less 20 % reserve at 30 A is 8 min
        assertThat(value(sheet, "typical")).isCloseTo(480, within(10.0));
        assertThat(value(sheet, "setting")).isLessThan(480);
        assertThat(value(timer.answer(Map.of("risk", "1 %")), "setting")).isLessThan(value(sheet, "setting"));
    }

    @Test
    void goesByTheEnteredCurrentWhereNoRunTellsAndAsksWhereNothingDoes() {
        workshop.craft().add(new Craft("Wren", CraftKind.PLANE, 4, "", 12.0, null, "", ""));
        workshop.craft().add(new Craft("Otter", CraftKind.BOAT, 4, "", null, null, "", ""));

        assertThat(usual(CraftTimer.of(workshop, "Wren", "P01"), "runs")).isEqualTo("5 min; 12.0 A");
        assertThatThrownBy(() -> CraftTimer.of(workshop, "Otter", "P01").answer(Map.of()))
                .hasMessageContaining("no earlier run");
        assertThatThrownBy(() -> CraftTimer.of(workshop, "Wren", "P99")).hasMessageContaining("P99");
    }

    @Test
    void aPackOfOtherCellsOrOutOfUseIsNotTimed() {
        workshop.craft().add(new Craft("Wren", CraftKind.PLANE, 3, "", 12.0, null, "", ""));
        workshop.craft().add(new Craft("Heron", CraftKind.PLANE, 4, "", 12.0, null, "", ""));
        workshop.packs().retire("P02", "swollen");

        assertThatThrownBy(() -> CraftTimer.of(workshop, "Wren", "P01").answer(Map.of()))
                .hasMessageContaining("Wren takes 3S, P01 is 4S");
        assertThatThrownBy(() -> CraftTimer.of(workshop, "Heron", "P02").answer(Map.of()))
                .hasMessageContaining("P02 is retired");
    }

    private static String usual(Worksheet worksheet, String key) {
        return worksheet.fields().stream()
                .filter(field -> field.key().equals(key))
                .findFirst()
                .orElseThrow()
                .usual();
    }

    private static double value(Sheet sheet, String key) {
        return sheet.figures().stream()
                .filter(figure -> figure.key().equals(key))
                .findFirst()
                .orElseThrow()
                .value()
                .value();
    }
}
