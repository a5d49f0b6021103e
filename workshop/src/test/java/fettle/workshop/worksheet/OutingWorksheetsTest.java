package fettle.workshop.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.units.Fault;
import fettle.engine.units.InputException;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The worksheets of a day away: timer, field battery, generator, USB, travel. */
class OutingWorksheetsTest {
    private static final Map<String, String> PACK =
            Map.of("cells", "4S", "capacity", "5000", "resistance", "3 mΩ", "charge", "100 %");

    @Test
    void setsATimerFromEarlierRunsAndCorrectsItAfterwards() {
        Map<String, String> typed = with(PACK, "runs", "6 min; 2900 mAh\n6 min; 3100\n360 s; 29 A");
        Sheet sheet = Worksheets.of("timer").answer(typed);
        assertThat(sheet.verdict()).startsWith("Set ").contains("risk of 5 %");
        assertThat(value(sheet, "typical")).isGreaterThan(value(sheet, "setting"));
        Sheet after = Worksheets.of("timer").answer(with(typed, "after", "6 min; 3800 mAh"));
        assertThat(after.notes().get(0)).startsWith("It drew more than expected");
    }

    @Test
    void feedsChargesFromAFieldBatteryUntilItsReserve() {
        Sheet sheet = Worksheets.of("field")
                .answer(Map.of("capacity", "80", "uses", "charge P07; 60 Wh; 45 min\niron; 40 W; 20 min"));
        assertThat(sheet.verdict()).startsWith("Enough");
        // 60 Wh through a charger of 85 %, and 40 W for a third of an hour
        assertThat(value(sheet, "given")).isCloseTo(3600 * (60 / 0.85 + 40.0 / 3), within(1.0));
        Sheet small = Worksheets.of("field").answer(Map.of("capacity", "7", "uses", "charge P07; 60 Wh; 45 min"));
        assertThat(small.verdict()).startsWith("Not enough").contains("12.24 V");
    }

    @Test
    void tellsTheFuelTimeOfAGenerator() {
        Sheet sheet = Worksheets.of("generator")
                .answer(Map.of("watts", "1000", "full", "4", "quarter", "9 h", "load", "250"));
        assertThat(sheet.verdict()).isEqualTo("Lasts 9.0 h at 250 W.");
        assertThat(sheet.caution()).contains("outdoors only");
    }

    @Test
    void countsChargesOfADeviceToStorageAndToReserve() {
        Sheet sheet =
                Worksheets.of("usb").answer(with(PACK, "device", "19.25 Wh", "level", "PD fixed 20 V, 5 A cable"));
        assertThat(value(sheet, "to_reserve")).isGreaterThan(value(sheet, "to_storage"));
        assertThat(value(sheet, "stop_storage")).isGreaterThan(value(sheet, "stop_reserve"));
        assertThat(sheet.notes()).anyMatch(note -> note.contains("only steps down will not do"));
        assertThat(sheet.notes()).anyMatch(note -> note.contains("cable marked for 5 A"));
    }

    @Test
    void listsPacksForAJourneyWithTheDatesOfItsRules() {
        Sheet sheet = Worksheets.of("travel")
                .answer(Map.of(
                        "packs",
                        "P01; LiPo; 4S; 5000 mAh; spare; 80 %\nP02; LiPo; 6S; 5000; spare\nP03; LiPo; 12S; 5000; spare\n"
                                + "P04; LiPo; 3S; 2200; in craft; grounded"));
        assertThat(sheet.verdict()).contains("1 may travel, 1 with the carrier's approval, 2 not");
        assertThat(sheet.caution()).contains("Confirm with the carrier", "2026-03-27");
    }

    @Test
    void saysHowMuchToDrawBeforeAPackIsSentAsCargo() {
        Sheet sheet = Worksheets.of("travel")
                .answer(Map.of("packs", "P01; LiPo; 4S; 5000 mAh; spare; 80 %", "sent", "cargo alone"));
        assertThat(sheet.verdict()).contains("UN3480", "30 %", "cargo aircraft only");
        assertThat(value(sheet, "P01_draw")).isCloseTo(2500 * 3.6, within(1e-6));
    }

    @Test
    void everyMistakeIsToldAtItsField() {
        refused(
                "travel",
                Map.of("packs", "P01; LiPo; 4S", "travellers", "none", "day", "soon"),
                "packs",
                "travellers",
                "day");
        refused("field", Map.of("capacity", "80", "uses", "x; 3 V; 2 min", "exponent", "9"), "uses", "exponent");
        refused("generator", Map.of("watts", "1000", "full", "4", "quarter", "3", "load", "250"), "quarter");
        refused("usb", with(PACK, "device", "19 Wh", "level", "USB 9"), "level");
        refused("timer", with(PACK, "runs", "6 min", "risk", "5 %"), "runs");
        refused("timer", with(PACK, "runs", ""), "runs");
    }

    private static void refused(String word, Map<String, String> typed, String... fields) {
        InputException refused = catchThrowableOfType(
                InputException.class, () -> Worksheets.of(word).answer(typed));
        assertThat(refused.faults()).as(word).extracting(Fault::field).contains(fields);
    }

    private static double value(Sheet sheet, String key) {
        return sheet.figures().stream()
                .filter(figure -> figure.key().equals(key))
                .findFirst()
                .orElseThrow()
                .value()
                .value();
    }

    private static Map<String, String> with(Map<String, String> base, String... more) {
        Map<String, String> all = new HashMap<>(base);
        for (int i = 0; i < more.length; i += 2) {
            all.put(more[i], more[i + 1]);
        }
        return all;
    }
}
