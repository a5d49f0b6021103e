package fettle.workshop.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import fettle.engine.units.Fault;
import fettle.engine.units.InputException;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WorksheetsTest {
    private static final Map<String, String> PACK = Map.of("cells", "4S", "capacity", "5000", "resistance", "3 mΩ");

    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource({
        "charge, charge=40 % amps=5, Full in",
        "storage, charge=100 % amps=5 discharge=30, Discharge 17",
        "storage, charge=3.3 amps=5, Charge ",
        "storage, charge=50 % amps=5, Nothing to charge or discharge",
        "balance, charge=40%;42%;41%;40% amps=5, Balance while charging",
        "load, charge=95 % load=40A, Lasts",
        "load, charge=95 % load=400W, Lasts",
        "load, charge=95 % load=60 A 20 s; 20 A 3 min, Lasts",
        "rating, label=300A, Carries",
        "cold, charge=100 % load=20A, Gives"
    })
    void answersInOneSentenceWithItsWorking(String word, String typed, String verdict) {
        Sheet sheet = Worksheets.of(word).answer(with(typed));
        assertThat(sheet.verdict()).startsWith(verdict);
        assertThat(sheet.working().steps().isEmpty()).isFalse();
    }

    @Test
    void figuresSayWhatTheirDoubtComesFrom() {
        Sheet sheet = Worksheets.of("load").answer(with("charge=95 % load=40A"));
        assertThat(sheet.figures())
                .filteredOn(figure -> figure.key().equals("first_sag"))
                .singleElement()
                .satisfies(sag -> assertThat(sag.drivers()).startsWith("resistance"))
                .satisfies(sag -> assertThat(sag.printed()).contains("±").endsWith(" V"));
    }

    @Test
    void voltsPerCellAndSharesMeanTheSame() {
        Worksheet charge = Worksheets.of("charge");
        double byVolts = charge.answer(with("charge=3.84;3.84;3.84;3.84 amps=5"))
                .figures()
                .get(0)
                .value()
                .value();
        double byOne = charge.answer(with("charge=3,84V amps=5"))
                .figures()
                .get(0)
                .value()
                .value();
        assertThat(byVolts).isEqualTo(byOne);
    }

    @Test
    void everyFaultIsToldAtItsField() {
        InputException refused = catchThrowableOfType(
                InputException.class,
                () -> Worksheets.of("charge")
                        .answer(Map.of("cells", "4S", "capacity", "-4", "charge", "3.9 3.8", "leads", "x")));
        assertThat(refused.faults())
                .extracting(Fault::field)
                .contains("amps", "capacity", "charge", "resistance", "leads")
                .doesNotContain("mass");
        assertThat(refused).hasMessageContaining("charge has 2 figures for 4 cells");
    }

    @Test
    void refusesPackVoltsWhereCellVoltsAreMeant() {
        assertThatThrownBy(() -> Worksheets.of("charge").answer(with("charge=15.4 amps=5")))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("rest volts are 15.400 V for one cell");
    }

    @Test
    void tellsWhichPartOfAProfileIsWrong() {
        assertThatThrownBy(() -> Worksheets.of("load").answer(with("charge=95 % load=60 A 20 s; 20 A")))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("\"20 A\" is not a part of a profile");
    }

    @Test
    void joinsPacksAlikeAndNamesTheLineThatIsWrong() {
        Map<String, String> typed = new HashMap<>(Map.of("cells", "4S", "amps", "8"));
        typed.put("packs", "P01; 3.84; 5000 mAh; 3 mΩ; 5 A\nP02; 3.83; 5000 mAh; 3 mΩ; 5 A");
        assertThat(Worksheets.of("join").answer(typed).verdict()).startsWith("They may be joined");
        typed.put("packs", "P01; 4.15; 5000 mAh; 3 mΩ; 5 A\nP02; 3.60; 5000 mAh; 3 mΩ; 5 A");
        assertThat(Worksheets.of("join").answer(typed).verdict()).startsWith("Do not join them: bring P0");
        typed.put("packs", "P01; 3.84; 5000 mAh; 3 mΩ; 5 A\nP02; 3.80; 5000 mAh; 3 mΩ");
        assertThatThrownBy(() -> Worksheets.of("join").answer(typed))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("line 2: 4 parts");
    }

    @Test
    void anUnknownWorksheetIsRefusedWithThoseThereAre() {
        assertThatThrownBy(() -> Worksheets.of("fly"))
                .isInstanceOf(InputException.class)
                .hasMessageContaining(
                        "there are charge, storage, balance, join, load, rating, cold, timer, field, generator, usb, travel, linkage, throws, holes, match, swashplate, signal, hinge, servo-power");
    }

    private static Map<String, String> with(String typed) {
        Map<String, String> words = new HashMap<>(PACK);
        for (String pair : typed.split(" (?=\\w+=)")) {
            words.put(pair.split("=")[0], pair.split("=")[1]);
        }
        return words;
    }
}
