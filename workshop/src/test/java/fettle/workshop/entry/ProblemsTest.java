package fettle.workshop.entry;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProblemsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                // the pack
                "P7 3.84 | 1 | P7 | there is no pack \"P7\" in this book. Begin with a pack's tag; nearest: P07,",
                "3.84 3.83 3.85 3.84 | 1 | 3.84 | which pack is it? Begin with the pack's tag",
                "charged | 1 | charged | which pack is it?",
                "P99 15.4V | 1 | P99 | P99 is retired, so nothing is entered for it. Restore it first",
                "P07 | 1 | P07 | the check has neither volts nor anything seen.",
                // readings
                "P07 3.84 3.83 3.85 -3.84 | 20 | -3.84 | cell 4 is -3.84 V; expected 0 to 5 V.",
                "P07 3.84 3.83 3.85 39 | 20 | 39 | cell 4 is 39 V; expected 0 to 5 V. Check the decimal point",
                "P07 3840 3830 900 3840 | 15 | 900 | cell 3 is 900 V; expected 0 to 5 V. Check the decimal point, the unit",
                "P07 3.84 3.83 3.85 | 15 | 3.85 | 3 cell readings for P07, which is 4S; expected 4. Give one per cell",
                "P14 3.8 3.8 3.8 3.8 3.8 3.8 3.8 3.8 3.81 | 37 | 3.81 | 9 cell readings for P14, which is 8S; expected 8. Take",
                "P07 3.84 3.83 3.85 3.84 21 | 25 | 21 | 5 cell readings for P07, which is 4S; expected 4. If 21 is the temperature, write 21C.",
                "P07 39V | 5 | 39V | pack volts are 39.00 V for P07, which is 4S; expected 0 to 20 V.",
                "P07 3.8O 3.83 3.85 3.84 | 5 | 3.8O | \"3.8O\" has a letter among its digits.",
                "P07 3..84 3.83 3.85 3.84 | 5 | 3..84 | \"3..84\" has two decimal points side by side.",
                "P07 3.84,3.83,3.85,3.84 | 5 | 3.84,3.83,3.85,3.84 | \"3.84,3.83,3.85,3.84\" has figures run together.",
                "P07 3.84 3.83 3.85 3.84x | 20 | 3.84x | \"3.84x\" has the unit \"x\", which is not read here.",
                "P07 3,840mV 3.83 3.85 3.84 | 5 | 3,840mV | cell 1 is \"3,840\", which can be read two ways.",
                // particulars
                "P07 15.4V 21° | 11 | 21° | \"21°\" has no scale. Write 21C or 21F.",
                "P07 15.4V temp 21 | 16 | 21 | temperature is \"21\", which has no unit.",
                "P07 15.4V 200C | 11 | 200C | temperature is 200 °C; expected -40 to 120 °C.",
                "P07 15.4V 21C 22C | 15 | 22C | the temperature is given already, at column 11. Take one away.",
                "P07 15.4V rest 2 | 16 | 2 | rest is \"2\", which has no unit. Write 2 s or 2 min or 2 h or 2 d.",
                "P07 15.4V rest 1:30 | 16 | 1:30 | \"1:30\" can be read in more than one way. Write 1h30 or 1min30.",
                "P07 15.4V rest overnight | 16 | overnight | \"overnight\" is no length of time. Write how long",
                "P07 15.4V rest | 11 | rest | \"rest\" needs the time since the last load or charge",
                "P07 15.4V rest 2h rest 3h | 24 | 3h | the rest is given already, at column 16.",
                "P07 15.4V ir | 11 | ir | \"ir\" needs one resistance per cell behind it",
                "P07 15.4V ir 2.1 2.2 | 18 | 2.2 | 2 resistance readings for P07, which is 4S; expected 4.",
                "P07 15.4V ir 2.1 2.2 2.0 2.4 by | 30 | by | \"by\" needs how resistance was measured",
                "P07 swolen | 5 | swolen | \"swolen\" is not understood here. Did you mean swollen?",
                "P07 15.4V no swelling | 11 | no | \"no\" is not read: swelling, damage and smell are given only where",
                "P07 swollen puffy | 13 | puffy | \"puffy\" is given already. Take one away.",
                "P07 swollen note | 13 | note | \"note\" needs some text behind it.",
                "P07 swollen \"\" | 13 | \"\" | the note is empty.",
                "P07 swollen \"corner | 13 | \"corner | the quote is not closed.",
                "P07 swollen blue | 13 | blue | \"blue\" is not understood here. Expected volts",
                "P07 15.4V ran Kestrel 7min | 11 | ran | \"ran\" stands right behind the pack's tag",
                // when
                "P07 15.4V 18:30 | 11 | 18:30 | \"18:30\" can be read in more than one way. Write at 18:30 for a time of day",
                "P07 15.4V at 23:30 | 11 | at | 2026-11-25 23:30 is still to come; it is 2026-11-25 15:00 now.",
                "P07 15.4V at 25:30 | 14 | 25:30 | \"25:30\" is not a time of day; expected 00:00 to 23:59.",
                "P07 15.4V on 25/11/2026 | 14 | 25/11/2026 | \"25/11/2026\" is not a day of the calendar written year-month-day",
                "P07 15.4V on 2026-02-30 | 14 | 2026-02-30 | \"2026-02-30\" is not a day of the calendar",
                "P07 15.4V 1926-11-25 | 11 | 1926-11-25 | 1926-11-25 12:00 is before 1990. Check the year.",
                "P07 15.4V at | 11 | at | \"at\" needs a time or a day behind it",
                "P07 15.4V 2026-11-02T18:30 | 11 | 2026-11-02T18:30 | \"2026-11-02T18:30\" has its day and time in one.",
                "P07 15.4V yesterday today | 21 | today | the time is given already, at column 11.",
                "P07 15.4V on Monday | 14 | Monday | \"Monday\" is not read as a day.",
                // charges
                "P07 charged | 1 | P07 | the charge has neither put-back nor end volts. Give at least one.",
                "P07 charged 1.84 | 13 | 1.84 | put-back is \"1.84\", which has no unit. Write 1.84 mAh or 1.84 Ah.",
                "P07 charged 1,840mAh | 13 | 1,840mAh | put-back is \"1,840\", which can be read two ways.",
                "P07 charged -1840mAh | 13 | -1840mAh | put-back is -1840 mAh; expected 0 to 200000 mAh.",
                "P07 charged 16.8V | 13 | 16.8V | are those the volts at the end? Then write to 16.8V.",
                "P07 charged 1840mAh to 168V | 24 | 168V | end volts are 168.00 V for P07, which is 4S; expected 0 to 20 V.",
                "P02 charged 1840mAh to 4.2 | 24 | 4.2 | 4.20 V could be the whole pack or one cell of P02, which is 2S. Write to 4.20V/cell or to pack 4.20V.",
                "P07 charged 1840mAh at 1C | 24 | 1C | \"1C\" can be a rate or a temperature.",
                "P07 charged 1840mAh 2C | 21 | 2C | \"2C\" can be a rate or a temperature.",
                "P07 charged full | 13 | full | \"full\" says no figure. Write the volts it ended at",
                // runs
                "P07 ran Kestrel | 5 | ran | how long did it run? Write e.g. 7.5min.",
                "P07 ran Kestral 7.5min | 9 | Kestral | there is no craft \"Kestral\" in this book. Nearest names: Kestrel,",
                "P07 ran Brok Heron 7min | 9 | Brok Heron | there is no craft \"Brok Heron\" in this book.",
                "P07 ran \"Brok Heron\" 7min | 9 | \"Brok Heron\" | there is no craft \"Brok Heron\" in this book. Nearest names: Brook Heron,",
                "P07 ran Kestrel 7.5 | 17 | 7.5 | run time is \"7.5\", which has no unit.",
                "P07 ran Kestrel 7:30 | 17 | 7:30 | \"7:30\" can be read in more than one way.",
                "P07 ran Kestrel 7min left 30 | 27 | 30 | \"30\" left is neither a share nor volts. Write left 30% or left 30V.",
                "P07 ran Kestrel 7min left 130% | 27 | 130% | what remained is 130 %; expected 0 to 100 %.",
                "P02 ran Mudlark 6min left 3.7 | 27 | 3.7 | 3.70 V could be the whole pack or one cell of P02, which is 2S.",
                "P07 ran Kestrel 7min left | 22 | left | \"left\" needs what remained",
                "P07 ran Kestrel 7min Kestrel | 22 | Kestrel | the craft is given already, at column 9.",
                "P07 ran Kestrel 7min used | 22 | used | \"used\" is not kept: give what remained",
                "P07 ran Kestrel 7min lef | 22 | lef | \"lef\" is not understood here. Did you mean left?"
            })
    void tellsTheOneThingWrongAtItsColumnWithTheMend(String line, int column, String part, String sentence) {
        LineReading reading = LineFixtures.read(line);
        assertThat(reading.entry()).isNull();
        assertThat(reading.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.column()).isEqualTo(column);
            assertThat(problem.part()).isEqualTo(part);
            assertThat(problem.sentence()).startsWith(sentence);
        });
    }

    @Test
    void tellsEverythingWrongAtOnceInTheOrderOfTheLine() {
        assertThat(LineFixtures.read("P8 -3.84 blue 21C 22C at 25:00").problems())
                .extracting(Problem::column)
                .containsExactly(1, 4, 10, 19, 26);
    }

    @Test
    void tellsOfAnEmptyLineAndOneTooLong() {
        assertThat(LineFixtures.read("  ").problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.sentence()).startsWith("the line is empty."));
        String tooLong = "P07 " + "3.84 ".repeat(EntryLine.LONGEST / 5);
        assertThat(LineFixtures.read(tooLong).problems()).singleElement().satisfies(problem -> {
            assertThat(problem.column()).isEqualTo(EntryLine.LONGEST + 1);
            assertThat(problem.sentence()).startsWith("the line has 1004 characters; at most 1000 are read.");
        });
    }

    @Test
    void raisesNoQuestionOverReadingsItRefuses() {
        assertThat(LineFixtures.read("P07 3.84 3.83 3.85 39").questions()).isEmpty();
        assertThat(LineFixtures.read("P07 39V").questions()).isEmpty();
    }
}
