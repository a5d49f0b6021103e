package fettle.workshop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fettle.engine.cell.Chemistry;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.Rule;
import fettle.engine.rule.RuleOverride;
import fettle.engine.units.InputException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RulesTest {
    private static final double HOUR = 3_600;

    @TempDir
    Path folder;

    Workshop workshop;

    @BeforeEach
    void open() {
        workshop = WorkshopFixtures.open(folder);
        workshop.packs().add(WorkshopFixtures.pack("P07"));
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    @Test
    void changesARuleForTheBookAndForOnePack() {
        assertThat(storageTime(24, null, "").sentence()).isEqualTo("changed LiPo longest time kept full to 24 h");
        assertThat(storageTime(12, "p07", "hot shed").sentence())
                .isEqualTo("changed LiPo longest time kept full to 12 h for P07 (hot shed)");
        assertThat(inForce(null).valueSi()).isEqualTo(24 * HOUR);
        assertThat(inForce("P07").valueSi()).isEqualTo(12 * HOUR);
    }

    @Test
    void needsAReasonForALooserRuleAndShowsIt() {
        assertThatThrownBy(() -> storageTime(200, null, " "))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("Give the reason");
        JournalEntry change = storageTime(200, null, "cold cellar");
        assertThat(change.sentence()).contains("cold cellar");
        assertThat(inForce(null).loosened()).isTrue();
        assertThat(inForce(null).citation().toString()).contains("cold cellar");
    }

    @Test
    void neverLetsALipoCellAboveItsLimitWhateverTheReason() {
        RuleOverride above = new RuleOverride(Chemistry.LIPO, Quantity.CHARGE_LIMIT, 4.21, null, "a very good reason");
        assertThatThrownBy(() -> workshop.rules().change(above))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("4.20 V");
        assertThat(workshop.history().recent(0, 10)).hasSize(1);
    }

    @Test
    void takesAChangeBackAndUndoesThatToo() {
        double usual = inForce(null).valueSi();
        storageTime(24, null, "");
        storageTime(30, null, "");
        workshop.history().undoLatest();
        assertThat(inForce(null).valueSi()).isEqualTo(24 * HOUR);
        JournalEntry reset = workshop.rules().reset(Chemistry.LIPO, Quantity.STORAGE_TIME, null);
        assertThat(reset.sentence()).isEqualTo("reset LiPo longest time kept full");
        assertThat(inForce(null).valueSi()).isEqualTo(usual);
        workshop.history().undo(reset.id());
        assertThat(inForce(null).valueSi()).isEqualTo(24 * HOUR);
    }

    @Test
    void refusesToUndoAResetOnceTheRuleIsChangedAnew() {
        storageTime(24, null, "");
        long reset = workshop.rules()
                .reset(Chemistry.LIPO, Quantity.STORAGE_TIME, null)
                .id();
        storageTime(30, null, "");
        assertThatThrownBy(() -> workshop.history().undo(reset))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("changed anew since");
        assertThat(inForce(null).valueSi()).isEqualTo(30 * HOUR);
    }

    @Test
    void refusesToResetWhatIsNotChangedAndRulesOfAnUnknownPack() {
        assertThatThrownBy(() -> workshop.rules().reset(Chemistry.NIMH, Quantity.RESERVE, null))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("is not changed in this book");
        assertThatThrownBy(() -> storageTime(24, "P99", "")).isInstanceOf(UnknownNameException.class);
    }

    private JournalEntry storageTime(double hours, @Nullable String tag, String reason) {
        return workshop.rules()
                .change(new RuleOverride(Chemistry.LIPO, Quantity.STORAGE_TIME, hours * HOUR, tag, reason));
    }

    private Rule inForce(@Nullable String tag) {
        return workshop.rules().inForce(Chemistry.LIPO, tag).stream()
                .filter(rule -> rule.quantity() == Quantity.STORAGE_TIME)
                .findFirst()
                .orElseThrow();
    }
}
