package fettle.workshop.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.Run;
import java.time.Instant;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ChargeAndRunLineTest {
    private static final double LAST_BIT = 1e-9;

    @Test
    void readsEverythingAChargeCanSay() {
        assertThat(charge("P07 charged 3100mAh to 16.80V 31C yesterday 18:30 note slow"))
                .isEqualTo(new ChargeRecord(Instant.parse("2026-11-24T17:30:00Z"), 3_100 * 3.6, 16.8, 304.15, "slow"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "P07 charged 1840 mAh to 16.8V",
                "charged P07 1840 to 16.8",
                "p07 charge to 16,8 V 1.84Ah",
                "P07 charged 1840mAh to 4.2V/cell",
                "P07 charged 1840mAh to 4.2 per cell",
                "P07 charged 1840mAh to 4200 mV a cell",
                "P07 charged 1840mAh to pack 16.8V",
                "P07 charged 1840mAh to 4.2"
            })
    void readsPutBackAndEndVoltsInTheFormsPeopleWrite(String line) {
        ChargeRecord charge = charge(line);
        assertThat(charge.returnedCoulombs()).isCloseTo(1_840 * 3.6, within(LAST_BIT));
        assertThat(charge.endPackVolts()).isCloseTo(16.8, within(LAST_BIT));
    }

    @Test
    void saysWhenItTookOneCellsVoltsForThePack() {
        assertThat(LineFixtures.read("P07 charged 1840mAh to 4.2").questions())
                .singleElement()
                .asString()
                .startsWith("4.20 V is taken as the volts per cell, 16.80 V for the pack.");
        assertThat(LineFixtures.read("P07 charged 1840mAh to 4.2V/cell").questions())
                .isEmpty();
    }

    @Test
    void keepsAnOverDischargeSaidPlainly() {
        assertThat(run("P07 ran Kestrel 7min left pack 3.78V").remainingPackVolts())
                .isEqualTo(3.78);
    }

    @Test
    void asksAboutAChargePastThePackOrItsLimit() {
        assertThat(LineFixtures.read("P07 charged 6100mAh to 17.2V").questions())
                .hasSize(2)
                .anySatisfy(question -> assertThat(question).startsWith("6100 mAh put back is more than"))
                .anySatisfy(question -> assertThat(question)
                        .startsWith("17.20 V at the end is 4.300 V per cell, which is above the charge limit"));
    }

    @Test
    void readsEverythingARunCanSay() {
        assertThat(run("P07 ran Brook Heron 7.5min left 30% left 15.2V 41C at 14:30 note gusty"))
                .isEqualTo(
                        new Run(Instant.parse("2026-11-25T13:30:00Z"), "Brook Heron", 450, 0.3, 15.2, 314.15, "gusty"));
    }

    @ParameterizedTest
    @CsvSource({
        "P07 ran Kestrel 7.5 min left 30%, Kestrel",
        "'ran P07 kestrel 7,5min 30% left', Kestrel",
        "'P07 flew \"Brook Heron\" 450s left 30 %', Brook Heron",
        "P07 ran in brook heron for 7min30 30% left, Brook Heron",
        "P07 ran 7min 30s Kestrel 2 left 30%, Kestrel 2",
        "P07 drove Kestrel 2 7.5min 30% left 41C, Kestrel 2"
    })
    void readsCraftTimeAndShareInTheFormsPeopleWrite(String line, String craft) {
        Run run = run(line);
        assertThat(run.craft()).isEqualTo(craft);
        assertThat(run.durationSeconds()).isEqualTo(450);
        assertThat(run.remainingFraction()).isEqualTo(0.3);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"left 15.12V", "left 3.78", "left 3,78", "left 3.78V/cell", "15.12V left", "left pack 15.12"})
    void readsTheVoltsLeftOfThePackOrPerCell(String written) {
        assertThat(run("P07 ran Kestrel 7min " + written).remainingPackVolts()).isCloseTo(15.12, within(LAST_BIT));
    }

    @Test
    void asksAboutAMissingCraftAndOneOfOtherCells() {
        assertThat(LineFixtures.read("P07 ran 7min").questions())
                .singleElement()
                .asString()
                .startsWith("which craft ran it?");
        assertThat(LineFixtures.read("P07 ran Mudlark 7min").questions())
                .containsExactly("Mudlark is registered for 2S, and P07 is 4S. Is it the right pack?");
    }

    @Test
    void takesQuotedTextBehindTheCraftAsTheNote() {
        assertThat(run("P07 ran Kestrel 7min \"gusty wind\"").note()).isEqualTo("gusty wind");
    }

    private static ChargeRecord charge(String line) {
        return ((Entry.OfCharge) entry(line)).charge();
    }

    private static Run run(String line) {
        return ((Entry.OfRun) entry(line)).run();
    }

    private static Entry entry(String line) {
        LineReading reading = LineFixtures.read(line);
        assertThat(reading.problems()).as(line).isEmpty();
        return Objects.requireNonNull(reading.entry());
    }
}
