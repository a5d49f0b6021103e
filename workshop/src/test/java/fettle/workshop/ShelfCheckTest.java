package fettle.workshop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fettle.engine.pack.Check;
import fettle.engine.units.InputException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ShelfCheckTest {
    @TempDir
    Path folder;

    private Workshop workshop;

    @BeforeEach
    void open() {
        workshop = WorkshopFixtures.open(folder);
        IntStream.rangeClosed(1, 20).forEach(number -> workshop.packs().add(WorkshopFixtures.pack("P" + number)));
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    private List<Check> checks(String tag) {
        return workshop.review().pack(tag).history().checks();
    }

    @Test
    void savesAShelfOfTwentyEachToBeUndoneAlone() {
        String rows = IntStream.rangeClosed(1, 20)
                .mapToObj(number -> "P" + number + " 3.84 3.83 3.85 3.8" + number % 10)
                .collect(Collectors.joining("\n"));

        List<JournalEntry> saved = workshop.shelfCheck().save(rows, "21C rest 2h");

        assertThat(saved).hasSize(20);
        assertThat(checks("P17").get(0).cellRestVolts()).containsExactly(3.84, 3.83, 3.85, 3.87);
        assertThat(checks("P17").get(0).restSeconds()).isEqualTo(7200);
        workshop.history().undo(saved.get(16).id());
        assertThat(checks("P17")).isEmpty();
        assertThat(checks("P16")).hasSize(1);
        assertThat(checks("P18")).hasSize(1);
    }

    @Test
    void savesNoneWhereOneRowCannotBeSavedAndNamesItsRow() {
        String rows = "P1 3.84 3.83 3.85 3.84\n\nP2 3.84 3.83 38.5 3.84\nP77 3.8 3.8 3.8 3.8\n";

        assertThatThrownBy(() -> workshop.shelfCheck().save(rows, ""))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("row 3: ")
                .hasMessageContaining("row 4: ")
                .hasMessageContaining("P7");
        assertThat(checks("P1")).isEmpty();
    }

    @Test
    void readsASpreadsheetWithAHeadingInAnyOrder() {
        String sheet = "Note\tTag\tCell 1\tCell 2\tCell 3\tCell 4\tTemp (°F)\tRest (min)\tIR1\tIR2\tIR3\tIR4\n"
                + "soft corner\tP3\t3,84\t3,83\t3,85\t3,84\t70\t90\t2.1\t2.2\t2.0\t2.4\n";

        workshop.shelfCheck().save(sheet, "");

        Check check = checks("P3").get(0);
        assertThat(check.cellRestVolts()).containsExactly(3.84, 3.83, 3.85, 3.84);
        assertThat(check.restSeconds()).isEqualTo(5400);
        assertThat(check.temperatureKelvins()).isEqualTo(294.26, org.assertj.core.api.Assertions.within(0.01));
        assertThat(check.cellResistanceOhms()).hasSize(4);
        assertThat(check.note()).isEqualTo("soft corner");
    }

    @Test
    void readsTagAndCellsWithoutAHeading() {
        workshop.shelfCheck().save("P3\t3.84\t3.83\t3.85\t3.84\t\t\n", "21C rest 2h");

        assertThat(checks("P3").get(0).cellRestVolts()).hasSize(4);
    }

    @Test
    void putsWhatHoldsForEveryRowBeforeANote() {
        workshop.shelfCheck().save("P3 3.84 3.83 3.85 3.84 note a soft corner", "21C rest 2h");

        assertThat(checks("P3").get(0).note()).isEqualTo("a soft corner");
        assertThat(checks("P3").get(0).restSeconds()).isEqualTo(7200);
    }

    @Test
    void asksWhereATagComesTwice() {
        List<CheckRow> rows = workshop.shelfCheck().preview("P3 3.84 3.83 3.85 3.84\nP3 3.81 3.81 3.82 3.81", "");

        assertThat(rows.get(1).preview().questions()).anyMatch(question -> question.contains("row 1"));
        assertThat(rows.get(1).preview().canSave()).isTrue();
    }

    @Test
    void refusesAHeadingItDoesNotKnowRatherThanDropAColumn() {
        assertThatThrownBy(() -> workshop.shelfCheck().preview("tag\tcell 1\tweight\nP3\t3.84\t540", ""))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("\"weight\"");
    }

    @Test
    void refusesNoRowsAndTooMany() {
        assertThatThrownBy(() -> workshop.shelfCheck().save(" \n\n", "")).hasMessageContaining("no row");
        assertThatThrownBy(() -> workshop.shelfCheck().preview("P1 3.8\n".repeat(201), ""))
                .hasMessageContaining("200");
    }
}
