package fettle.workshop;

import static fettle.workshop.WorkshopFixtures.MORNING;
import static fettle.workshop.WorkshopFixtures.pack;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.Craft;
import fettle.engine.pack.CraftKind;
import fettle.engine.pack.Pack;
import fettle.engine.pack.Run;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.RuleOverride;
import fettle.engine.units.InputException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShelfTest {
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
    void journalsEveryChangeInWordsWithTradeUnits() {
        assertThat(workshop.packs().add(pack("P07")).sentence()).isEqualTo("added pack P07 (LiPo 4S 5000 mAh)");
        assertThat(workshop.packs().edit("p07", pack("P17", "Ada")).sentence())
                .isEqualTo("changed pack P07 (now P17): keeper, tag");
        assertThat(workshop.packs().retire("P17", "swollen").sentence()).isEqualTo("retired pack P17: swollen");
        assertThat(workshop.packs().restore("P17").sentence()).isEqualTo("brought back pack P17");
        assertThat(workshop.sources().add(WorkshopFixtures.source("Mains")).sentence())
                .isEqualTo("added source Mains (mains supply, 600 W)");
        assertThat(workshop.craft()
                        .add(new Craft("Kestrel", CraftKind.GLIDER, 3, "", null, null, "", ""))
                        .sentence())
                .isEqualTo("added craft Kestrel (glider, 3S)");
    }

    @Test
    void journalsEntriesInWordsWithTradeUnits() {
        workshop.packs().add(pack("P07"));
        Entries entries = workshop.entries();
        assertThat(entries.addCheck("p07", WorkshopFixtures.check(MORNING, 3.84, 3.83, 3.85, 3.84), "typed")
                        .sentence())
                .isEqualTo("check of P07: 3.840 3.830 3.850 3.840 V, 21 °C");
        assertThat(entries.addCharge("P07", new ChargeRecord(MORNING, 11_160.0, null, null, ""), "")
                        .sentence())
                .isEqualTo("charged P07: 3100 mAh put back");
        assertThat(entries.addRun("P07", new Run(MORNING, "Kestrel", 390, 0.3, null, null, ""), "")
                        .sentence())
                .isEqualTo("ran P07 in Kestrel: 6.5 min, 30 % left");
    }

    @Test
    void listsByNameAsPeopleOrderThemRetiredIncluded() {
        List.of("P10", "P2", "p1", "Q3").forEach(tag -> workshop.packs().add(pack(tag)));
        workshop.packs().retire("P2", "");
        assertThat(workshop.packs().list()).extracting(Registered::name).containsExactly("p1", "P2", "P10", "Q3");
        assertThat(workshop.packs().list()).extracting(Registered::retired).containsExactly(false, true, false, false);
    }

    @Test
    void namesTheNearestTagsOfAnUnknownOne() {
        List.of("P07", "P10", "Q3").forEach(tag -> workshop.packs().add(pack(tag)));
        assertThatThrownBy(() -> workshop.packs().find("P70"))
                .isInstanceOf(UnknownNameException.class)
                .hasMessage("P70 is not in this book; nearest tags: P07, P10, Q3.");
        assertThatThrownBy(() -> workshop.craft().find("Kestrel"))
                .isInstanceOf(UnknownNameException.class)
                .hasMessage("Kestrel is not in this book, which has no craft yet. Add it first.");
        assertThatThrownBy(() ->
                        workshop.entries().addCheck("P70", WorkshopFixtures.check(MORNING, 3.8, 3.8, 3.8, 3.8), ""))
                .isInstanceOf(UnknownNameException.class);
    }

    @Test
    void refusesWhatWouldChangeNothing() {
        workshop.packs().add(pack("P07"));
        assertThatThrownBy(() -> workshop.packs().edit("P07", pack("P07")))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("unchanged");
        assertThatThrownBy(() -> workshop.packs().restore("P07"))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("in use already");
        workshop.packs().retire("P07", "");
        assertThatThrownBy(() -> workshop.packs().retire("P07", ""))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("retired already");
    }

    @Test
    void refusesAMakersLimitAboveTheBoundOfItsChemistry() {
        Pack plain = pack("P07");
        Pack hot = new Pack(
                plain.tag(),
                plain.chemistry(),
                plain.cellsInSeries(),
                plain.cellsInParallel(),
                plain.ratedCapacityCoulombs(),
                plain.chargeRatingAmps(),
                plain.dischargeRatingAmps(),
                plain.massKilograms(),
                plain.connector(),
                plain.bought(),
                plain.keeper(),
                plain.identity(),
                List.of(new RuleOverride(Chemistry.LIPO, Quantity.CHARGE_LIMIT, 4.25, null, "the label says so")),
                plain.note());
        assertThatThrownBy(() -> workshop.packs().add(hot))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("4.20 V");
        assertThat(workshop.packs().list()).isEmpty();
    }

    @Test
    void doesSeveralThingsAllOrNothing() {
        assertThatThrownBy(() -> workshop.together(() -> {
                    workshop.packs().add(pack("P07"));
                    return workshop.packs().add(pack("P07"));
                }))
                .isInstanceOf(InputException.class);
        assertThat(workshop.packs().list()).isEmpty();
        assertThat(workshop.history().recent(0, 10)).isEmpty();
    }
}
