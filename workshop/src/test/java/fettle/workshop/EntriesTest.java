package fettle.workshop;

import static fettle.workshop.WorkshopFixtures.MORNING;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.Check;
import fettle.engine.pack.Craft;
import fettle.engine.pack.CraftKind;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.RuleOverride;
import fettle.engine.units.InputException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EntriesTest {
    private static final String LINE = "p07 3.84 3.83 3,85 3840 21C rest 2h ir 2.1 2.2 2.0 2.4 by charger";

    @TempDir
    Path folder;

    Workshop workshop;
    Entries entries;

    @BeforeEach
    void open() {
        workshop = WorkshopFixtures.open(folder);
        workshop.packs().add(WorkshopFixtures.pack("P07"));
        workshop.craft().add(new Craft("Kestrel", CraftKind.GLIDER, 4, "", null, null, "", ""));
        entries = workshop.entries();
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    @Test
    void previewsALineAndSavesNothing() {
        int before = workshop.history().recent(0, 50).size();
        EntryPreview preview = entries.preview(LINE);
        assertThat(preview.canSave()).isTrue();
        assertThat(preview.packTag()).isEqualTo("P07");
        assertThat(preview.problems()).isEmpty();
        assertThat(preview.understood()).contains("cell 1 3.840 V", "cell 3 3.850 V", "21.0 °C", "rested 2 h");
        assertThat(workshop.history().recent(0, 50)).hasSize(before);
    }

    @Test
    void savesALineAsTheCheckItSays() {
        entries.enter(LINE);
        Check saved = workshop.review().pack("P07").history().checks().get(0);
        assertThat(saved.takenAt()).isEqualTo(MORNING);
        assertThat(saved.cellRestVolts()).containsExactly(3.84, 3.83, 3.85, 3.84);
        assertThat(saved.temperatureKelvins()).isEqualTo(294.15);
        assertThat(saved.restSeconds()).isEqualTo(7_200);
        assertThat(saved.resistanceMethod()).isEqualTo("charger");
        assertThat(saved.signs()).isEqualTo(Set.of());
    }

    @Test
    void refusesALineWithEveryProblemAtItsColumn() {
        assertThatThrownBy(() -> entries.enter("P07 3.84 3.83 3.85 39 blue"))
                .isInstanceOfSatisfying(
                        InputException.class,
                        refused -> assertThat(refused.faults())
                                .extracting(fault -> fault.sentence())
                                .hasSize(2)
                                .anySatisfy(sentence -> assertThat(sentence).startsWith("column 20: cell 4 is 39"))
                                .anySatisfy(sentence -> assertThat(sentence).startsWith("column 23: \"blue\"")));
    }

    @Test
    void undoesAnEntryLikeAnyOtherChange() {
        entries.enter(LINE);
        JournalEntry entered = entries.enter("P07 ran Kestrel 7.5 min left 30%");
        assertThat(entered.sentence()).isEqualTo("ran P07 in Kestrel: 7.5 min, 30 % left");
        workshop.history().undo(entered.id());
        assertThat(workshop.review().pack("P07").history().runs()).isEmpty();
        assertThat(workshop.review().pack("P07").history().checks()).hasSize(1);
        workshop.history().undoLatest();
        assertThat(workshop.review().pack("P07").history().checks()).isEmpty();
    }

    @Test
    void savesChargesWithTheMomentTheySay() {
        entries.enter("P07 charged 3100mAh to 4.2V/cell 31C yesterday 18:30");
        ChargeRecord saved = workshop.review().pack("P07").history().charges().get(0);
        assertThat(saved)
                .isEqualTo(new ChargeRecord(Instant.parse("2026-05-31T18:30:00Z"), 3_100 * 3.6, 16.8, 304.15, ""));
    }

    @Test
    void keepsALineAcrossClosingAndOpeningTheBook() {
        entries.enter(LINE);
        workshop.close();
        workshop = WorkshopFixtures.open(folder);
        assertThat(workshop.review().pack("P07").history().checks()).hasSize(1);
    }

    @Test
    void asksByTheLimitsInForceForThePack() {
        assertThat(entries.preview("P07 4.17 4.16 4.17 4.16").questions()).isEmpty();
        workshop.rules().change(new RuleOverride(Chemistry.LIPO, Quantity.CHARGE_LIMIT, 4.1, "P07", ""));
        assertThat(entries.preview("P07 4.17 4.16 4.17 4.16").questions())
                .singleElement()
                .asString()
                .startsWith("cell 1 at 4.170 V is above the charge limit of 4.10 V");
    }

    @Test
    void saysThatARetiredPackTakesNoEntriesAndSuggestsOnlyThoseInUse() {
        workshop.packs().add(WorkshopFixtures.pack("P08"));
        workshop.packs().retire("P08", "tired");
        assertThat(entries.preview("P08 15.4V").problems().get(0).sentence()).startsWith("P08 is retired");
        assertThat(entries.preview("P8 15.4V").problems().get(0).sentence()).endsWith("nearest: P07.");
        assertThatThrownBy(() -> entries.enter("P08 15.4V")).isInstanceOf(InputException.class);
    }
}
