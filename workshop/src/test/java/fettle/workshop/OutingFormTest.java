package fettle.workshop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fettle.engine.outing.Outing;
import fettle.engine.units.Fault;
import fettle.engine.units.InputException;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OutingFormTest {
    private static final Map<String, String> USUAL = Map.ofEntries(
            Map.entry("name", "Lake day"),
            Map.entry("date", "2026-05-16"),
            Map.entry("zone", "Europe/Zurich"),
            Map.entry("leaveHome", "08:00"),
            Map.entry("arrive", "09:00"),
            Map.entry("packUp", "15:00"),
            Map.entry("backHome", "16:00"),
            Map.entry("ambient", "18C"),
            Map.entry("attended", "field 09:00 to 15:00"),
            Map.entry("runs", "Heron x2; value 3; 09:30 to 14:30; 6 min; gap 10 min; takes 70 %"));

    private static OutingForm form(String... changes) {
        Map<String, String> words = new HashMap<>(USUAL);
        for (int at = 0; at < changes.length; at += 2) {
            words.put(changes[at], changes[at + 1]);
        }
        return new OutingForm(
                word(words, "name"),
                word(words, "date"),
                word(words, "zone"),
                word(words, "leaveHome"),
                word(words, "arrive"),
                word(words, "packUp"),
                word(words, "backHome"),
                word(words, "ambient"),
                word(words, "attended"),
                word(words, "feeds"),
                word(words, "packs"),
                word(words, "runs"),
                word(words, "goals"),
                word(words, "storageBy"),
                word(words, "note"));
    }

    private static String word(Map<String, String> words, String key) {
        return words.getOrDefault(key, "");
    }

    private static List<Fault> faults(String... changes) {
        InputException refused = org.junit.jupiter.api.Assertions.assertThrows(
                InputException.class, () -> form(changes).toOuting());
        return refused.faults();
    }

    @Test
    void readsADayAndWritesItBackAsItWasTyped() {
        Outing outing = form(
                        "attended", "home day before 19:00 to 22:30\nfield 09:00 to 15:00",
                        "feeds", "field: outdoor on trolley; 85 %; 09:00 to 12:00",
                        "packs", "A1, A2",
                        "goals", "the earliest finish\nthe gentlest charges")
                .toOuting();
        assertThat(outing.times().arrive()).isEqualTo(Instant.parse("2026-05-16T07:00:00Z"));
        assertThat(outing.attended().get(0).from()).isEqualTo(Instant.parse("2026-05-15T17:00:00Z"));
        assertThat(outing.runs()).extracting(Outing.NamedRun::name).containsExactly("Heron 1", "Heron 2");
        assertThat(outing.goals()).containsExactly("EARLIEST_FINISH", "LEAST_STRESS");
        OutingForm written = OutingForm.of(outing);
        assertThat(written.attended()).isEqualTo("home day before 19:00 to 22:30\nfield 09:00 to 15:00");
        assertThat(written.feeds()).isEqualTo("field: outdoor on trolley; 85 %; 09:00 to 12:00");
        assertThat(written.runs()).isEqualTo("Heron x2; value 3; 09:30 to 14:30; 6 min; gap 10 min; takes 70 %");
        assertThat(written.toOuting()).isEqualTo(outing);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        date      | 2026-02-30                       | date     | expected year-month-day
        zone      | Mars                             | zone     | Europe/Zurich
        arrive    | 25:00                            | arrive   | 00:00 to 23:59
        arrive    | noon                             | arrive   | expected a time
        arrive    | 07:30                            | arrive   | not after home is left
        packUp    | 01:30                            | packUp   | write day after before the time
        backHome  | 14:30                            | backHome | not after packing up
        ambient   | 200C                             | ambient  | -40
        attended  | field 22:00 to 01:00             | attended | write day after before the time
        attended  | field 08:30 to 15:00             | attended | Arrive earlier
        attended  | home 10:00 to 11:00              | attended | is while out
        attended  | here 10:00 to 11:00              | attended | expected a place and two times
        feeds     | outdoor                          | feeds    | expected place, charger and source
        runs      | Heron                            | runs     | expected craft, times and run time
        runs      | Heron; 16:00 to 17:00; 6 min     | runs     | Pack up 66 min later
        runs      | Heron; 07:00 to 08:30; 6 min     | runs     | Arrive 30 min earlier
        runs      | Heron; 12:00 to 11:00; 6 min     | runs     | latest not before the earliest
        goals     | fun                              | goals    | the most valuable runs
        packs     | A1 a1                            | packs    | named twice
        """)
    void refusesAtTheFieldAndSaysHowToMend(String key, String typed, String field, String mend) {
        List<Fault> faults = faults(key, typed);
        assertThat(faults).anySatisfy(fault -> {
            assertThat(fault.field()).isEqualTo(field);
            assertThat(fault.sentence()).contains(mend);
        });
    }

    @Test
    void refusesToBeInTwoPlacesAtOnce() {
        assertThat(faults("attended", "field 09:00 to 15:00\nhome 14:00 to 18:00"))
                .anySatisfy(fault -> assertThat(fault.sentence()).contains("both at home and at the field"));
    }

    @Test
    void countsTheHoursOfADayWhoseClockIsPutForward() {
        Outing outing = form("date", "2026-03-29", "leaveHome", "00:30", "arrive", "01:30")
                .toOuting();
        assertThat(Duration.between(outing.times().arrive(), outing.times().packUp()))
                .isEqualTo(Duration.ofMinutes(750));
    }

    @Test
    void refusesATimeThatDoesNotExist() {
        assertThat(faults("date", "2026-03-29", "leaveHome", "02:30"))
                .anySatisfy(fault ->
                        assertThat(fault.sentence()).contains("does not exist").contains("Write 03:00 or later"));
    }

    @Test
    void asksWhichOfATimeThatComesTwiceIsMeant() {
        assertThat(faults("date", "2026-10-25", "leaveHome", "02:30"))
                .anySatisfy(fault -> assertThat(fault.sentence()).contains("02:30+02:00 for the first"));
        Outing outing = form("date", "2026-10-25", "leaveHome", "02:30+01:00").toOuting();
        assertThat(outing.times().leaveHome()).isEqualTo(Instant.parse("2026-10-25T01:30:00Z"));
        assertThat(OutingForm.of(outing).leaveHome()).isEqualTo("02:30+01:00");
    }

    @Test
    void namesEveryFaultAtOnce() {
        assertThatThrownBy(
                        () -> form("date", "x", "ambient", "", "runs", "Heron").toOuting())
                .isInstanceOfSatisfying(
                        InputException.class,
                        refused -> assertThat(refused.faults())
                                .extracting(Fault::field)
                                .contains("date", "ambient", "runs"));
    }
}
