package fettle.workshop.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.pack.Check;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.assertj.core.util.DoubleComparator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CheckLineTest {
    /** One step of a double near 4 V and near 300 K: conversions may end that far apart. */
    private static final double LAST_BIT = 1e-12;

    @Test
    void readsEverythingACheckCanSay() {
        Check check =
                check("P07 3.84 3.83 3.85 3.84 21C rest 2h ir 2.1 2.2 2.0 2.4 by charger swollen note soft corner");
        assertThat(check)
                .usingRecursiveComparison()
                .withComparatorForType(new DoubleComparator(LAST_BIT), Double.class)
                .isEqualTo(new Check(
                        LineFixtures.NOW,
                        List.of(3.84, 3.83, 3.85, 3.84),
                        null,
                        7_200.0,
                        294.15,
                        List.of(2.1e-3, 2.2e-3, 2.0e-3, 2.4e-3),
                        "charger",
                        Set.of(Check.Sign.SWELLING),
                        "soft corner"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "p07 3.84 3.83 3.85 3.84",
                "P07 check 3.84 3.83 3.85 3.84",
                "check P07 3.84 3.83 3.85 3.84",
                "P07: 3,84; 3,83; 3,85; 3,84.",
                "P07 3,84, 3,83, 3,85, 3,84",
                "P07 3840 3830 3850 3840",
                "P07 3840mV 3.83V 3850 mV 3,84 V",
                "  P07\t3.84\u00a03.83   3.85 3.84  "
            })
    void readsCellVoltsInTheFormsPeopleWrite(String line) {
        assertThat(check(line).cellRestVolts()).containsExactly(3.84, 3.83, 3.85, 3.84);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "P07 pack 15.4V",
                "P07 15.4V pack",
                "P07 15.4 pack 21C",
                "P07 15.4",
                "P07 15,4 V",
                "P07 pack 15400",
                "P07 21C 15.4V rest 2h"
            })
    void readsPackVoltsAloneAndSaysWhatTheyCannotTell(String line) {
        Check check = check(line);
        assertThat(check.packRestVolts()).isCloseTo(15.4, within(LAST_BIT));
        assertThat(check.cellRestVolts()).isEmpty();
        assertThat(LineFixtures.read(line).questions())
                .anySatisfy(question -> assertThat(question).startsWith("pack volts alone show no cell spread"));
    }

    @Test
    void asksWhetherAnUnconfirmedCellCountIsRight() {
        assertThat(LineFixtures.read("P14 30.8V pack").questions())
                .anySatisfy(question -> assertThat(question).startsWith("is P14 really 8S?"));
    }

    @Test
    void takesThePackVoltsOfASingleCellAsThatCells() {
        Check check = check("P01 pack 3.84");
        assertThat(check.cellRestVolts()).containsExactly(3.84);
        assertThat(check.packRestVolts()).isNull();
        assertThat(LineFixtures.read("P01 pack 3.84").questions()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"21C, 294.15", "21 °C, 294.15", "temp 21c, 294.15", "at 21C, 294.15", "70F, 294.2611", "-5°C, 268.15"})
    void readsTemperatures(String written, double kelvins) {
        assertThat(check("P07 15.4V " + written).temperatureKelvins()).isCloseTo(kelvins, within(1e-4));
    }

    @ParameterizedTest
    @CsvSource({
        "rest 2h, 7200",
        "rest 90min, 5400",
        "rest 90 min, 5400",
        "rest 1h30, 5400",
        "rest 1h 30min, 5400",
        "'rested 1,5 h', 5400",
        "rest 3 days, 259200",
        "rest 0h, 0"
    })
    void readsHowLongItRested(String written, double seconds) {
        assertThat(check("P07 " + written + " 15.4V").restSeconds()).isEqualTo(seconds);
    }

    @ParameterizedTest
    @CsvSource({
        "swollen, SWELLING",
        "Puffy, SWELLING",
        "damaged, DAMAGE",
        "dented, DAMAGE",
        "smells, SMELL",
        "smell, SMELL"
    })
    void readsWhatWasSeen(String written, Check.Sign sign) {
        assertThat(check("P07 " + written).signs()).containsExactly(sign);
    }

    @ParameterizedTest
    @CsvSource({
        "note soft corner 21C, soft corner 21C",
        "'note \"soft corner\" 21C', soft corner",
        "'\"soft corner\" 21C', soft corner",
        "'„soft corner“ 21C', soft corner"
    })
    void readsANoteQuotedOrToTheEndOfTheLine(String written, String note) {
        assertThat(check("P07 15.4V " + written).note()).isEqualTo(note);
    }

    @ParameterizedTest
    @CsvSource({
        "at 14:30, 2026-11-25T13:30:00Z",
        "today 9:05, 2026-11-25T08:05:00Z",
        "yesterday 18:30, 2026-11-24T17:30:00Z",
        "yesterday, 2026-11-24T11:00:00Z",
        "on 2026-11-02, 2026-11-02T11:00:00Z",
        "2026-11-02 18:30, 2026-11-02T17:30:00Z",
        "at 2026-07-02 at 18:30:15, 2026-07-02T16:30:15Z",
        "2h ago, 2026-11-25T12:00:00Z",
        "today, 2026-11-25T14:00:00Z"
    })
    void readsWhenItWasInTheClocksZone(String written, Instant at) {
        assertThat(check("P07 15.4V " + written).takenAt()).isEqualTo(at);
    }

    @Test
    void asksAboutReadingsOutsideTheLimitsAndDoesNotRefuseThem() {
        LineReading reading = LineFixtures.read("P07 4.25 3.83 3.85 2.84 61C on 2026-01-02");
        assertThat(reading.entry()).isNotNull();
        assertThat(reading.questions())
                .hasSize(5)
                .anySatisfy(question -> assertThat(question)
                        .startsWith("cell 1 at 4.250 V is above the charge limit of 4.20 V for LiPo"))
                .anySatisfy(question ->
                        assertThat(question).startsWith("cell 4 at 2.840 V is below the rest minimum of 3.00 V"))
                .anySatisfy(question -> assertThat(question).startsWith("cell 4 is 1410 mV below cell 1"))
                .anySatisfy(question -> assertThat(question).startsWith("61.0 °C is above the limit of 60 °C"))
                .anySatisfy(question -> assertThat(question).startsWith("2026-01-02 is before the pack was bought"));
    }

    @Test
    void asksWhereCellsAndPackDoNotAddUp() {
        assertThat(LineFixtures.read("P07 3.84 3.83 3.85 3.84 pack 15.4V").questions())
                .isEmpty();
        assertThat(LineFixtures.read("P07 3.84 3.83 3.85 3.84 pack 15.9V").questions())
                .singleElement()
                .asString()
                .startsWith("the cells add up to 15.36 V, but the pack reads 15.90 V");
    }

    private static Check check(String line) {
        LineReading reading = LineFixtures.read(line);
        assertThat(reading.problems()).as(line).isEmpty();
        assertThat(reading.entry()).as(line).isInstanceOf(Entry.OfCheck.class);
        return ((Entry.OfCheck) Objects.requireNonNull(reading.entry())).check();
    }
}
