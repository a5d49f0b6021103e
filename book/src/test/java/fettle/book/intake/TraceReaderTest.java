package fettle.book.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.trace.Trace;
import fettle.engine.units.InputException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class TraceReaderTest {
    private static final List<String> ROWS = List.of(
            "time_s,voltage_V,current_A,temperature_C",
            "0,12.40,1.0,20.0",
            "1,12.10,6.0,20.5",
            "2,12.35,2.0,21.0",
            "3,11.90,9.0,21.5",
            "4,12.20,4.0,22.0",
            "5,12.45,0.5,22.0");

    private static TextLog plain() {
        return TextLog.of(ROWS.toArray(String[]::new));
    }

    private static void assertPlain(Trace trace) {
        assertThat(trace.timeSeconds()).containsExactly(0, 1, 2, 3, 4, 5);
        assertThat(trace.packVolts()).containsExactly(12.40, 12.10, 12.35, 11.90, 12.20, 12.45);
        assertThat(trace.currentAmps()).containsExactly(1, 6, 2, 9, 4, 0.5);
        assertThat(trace.temperatureKelvins()[1]).isCloseTo(293.65, within(1e-9));
    }

    @Test
    void readsAPlainTable() {
        Reading reading = plain().read();
        assertPlain(reading.trace());
        assertThat(reading.remarks()).isEmpty();
        assertThat(plain().preview().dialect().words())
                .isEqualTo("UTF-8, separated by commas, decimal point, headings in line 1, figures from line 2");
    }

    @ParameterizedTest
    @ValueSource(strings = {";", "\t", "|"})
    void readsAnySeparatorWithADecimalComma(String separator) {
        String[] lines = ROWS.stream()
                .map(row -> row.replace(",", separator).replace('.', ','))
                .toArray(String[]::new);
        assertPlain(TextLog.of(lines).read().trace());
    }

    @Test
    void readsQuotedFieldsWithADecimalCommaBetweenCommas() {
        String[] lines = ROWS.stream()
                .map(row -> "\"" + row.replace(",", "\",\"").replace('.', ',') + "\"")
                .toArray(String[]::new);
        assertPlain(TextLog.of(lines).read().trace());
    }

    @ParameterizedTest
    @CsvSource({"UTF-8", "UTF-16LE", "UTF-16BE"})
    void skipsAByteOrderMark(String charset) {
        String[] lines = ROWS.toArray(String[]::new);
        lines[0] = "\uFEFF" + lines[0];
        assertPlain(TextLog.in(Charset.forName(charset), lines).read().trace());
    }

    @Test
    void readsWesternTextAndItsDegreeSign() {
        String[] lines = ROWS.toArray(String[]::new);
        lines[0] = "Zeit (s),Spannung (V),Strom (A),Temperatur (°C)";
        TextLog western = TextLog.in(Charset.forName("windows-1252"), lines);
        assertPlain(western.read().trace());
        assertThat(western.preview().dialect().encoding()).isEqualTo("windows-1252");
    }

    @Test
    void readsCommentsARowOfUnitsAndWindowsLineEnds() {
        String text = "# logger 3\r\n# \"started, by hand\"\r\nTime;Pack volts;Current;Temp\r\ns;mV;mA;°F\r\n"
                + "0;12400;1000;68\r\n# a note; 5; 6; 7\r\n1;12100;6000;68\r\n2;12350;2000;68\r\n3;11900;9000;68\r\n"
                + "4;12200;4000;68\r\n5;12450;500;68\r\n";
        TextLog log = new TextLog("log.txt", text.getBytes(StandardCharsets.UTF_8));
        Trace trace = log.read().trace();
        assertThat(trace.packVolts())
                .containsExactly(new double[] {12.40, 12.10, 12.35, 11.90, 12.20, 12.45}, within(1e-12));
        assertThat(trace.currentAmps()).containsExactly(1, 6, 2, 9, 4, 0.5);
        assertThat(trace.temperatureKelvins()[0]).isCloseTo(293.15, within(1e-9));
        assertThat(log.preview().dialect().firstDataLine()).isEqualTo(5);
    }

    @Test
    void readsGzip() throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(packed)) {
            gzip.write(plain().content());
        }
        assertPlain(new TextLog("log.csv.gz", packed.toByteArray()).read().trace());
        byte[] cut = Arrays.copyOf(packed.toByteArray(), packed.size() - 12);
        assertThatThrownBy(() -> new TextLog("cut.csv.gz", cut).read())
                .isInstanceOf(InputException.class)
                .hasMessageContaining("cut.csv.gz cannot be read: Unexpected end");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "time_ms | 0 | 500 | 1500",
                "t [µs] | 0 | 500000 | 1500000",
                "Time (min) | 0 | 0.008333333333333333 | 0.025",
                "time | 12:00:00.0 | 12:00:00.5 | 12:00:01.5",
                "Timestamp | 2026-05-01T12:00:00Z | 2026-05-01T12:00:00.500Z | 2026-05-01T12:00:01.500Z",
                "Date/Time | 01.05.2026 12:00:00 | 01.05.2026 12:00:00,500 | 01.05.2026 12:00:01,500",
                "Clock | 11:59:59.5 AM | 12:00:00.0 PM | 12:00:01.0 PM",
                "Unix Time / s | 1777636800.0 | 1777636800.5 | 1777636801.5",
                "time | 1777636800000 | 1777636800500 | 1777636801500",
                "elapsed | 00:00 | 00:00.5 | 00:01.5",
            })
    void readsTimeInEveryForm(String heading, String first, String second, String third) {
        Trace trace = TextLog.of(heading + ";volts;amps", first + ";12.4;1", second + ";12.0;6", third + ";12.2;2")
                .read(TextLog.of(heading + ";volts;amps", first + ";12.4;1", second + ";12.0;6", third + ";12.2;2")
                        .preview("", PositiveCurrent.DISCHARGES))
                .trace();
        assertThat(trace.timeSeconds()).containsExactly(new double[] {0, 0.5, 1.5}, within(1e-6));
    }

    @Test
    void knowsTheInstantOfTheFirstRow() {
        Trace zoned = TextLog.of("time,volts", "2026-05-01T14:00:00+02:00,12.4", "2026-05-01T14:00:01+02:00,12.3")
                .read()
                .trace();
        assertThat(zoned.startedAt()).isEqualTo(Instant.parse("2026-05-01T12:00:00Z"));
        Trace apart = TextLog.of("Date,Time,volts", "2026-05-01,23:59:59,12.4", "2026-05-02,00:00:01,12.3")
                .read()
                .trace();
        assertThat(apart.startedAt()).isEqualTo(Instant.parse("2026-05-01T23:59:59Z"));
        assertThat(apart.timeSeconds()).containsExactly(0, 2);
    }

    @Test
    void runsOnPastMidnight() {
        Reading reading = TextLog.of("time,volts", "23:59:58,12.4", "23:59:59,12.3", "00:00:00,12.3", "00:00:02,12.2")
                .read();
        assertThat(reading.trace().timeSeconds()).containsExactly(0, 1, 2, 4);
        assertThat(reading.remarks()).containsExactly("the clock passed midnight once.");
    }

    @Test
    void ordersLateRowsDropsRepeatedOnesAndSpreadsSharedStamps() {
        Reading reading = TextLog.of(
                        "time_s,volts",
                        "0,12.0",
                        "1,11.9",
                        "3,11.7",
                        "2,11.8",
                        "4,11.6",
                        "4,11.6",
                        "5,11.5",
                        "5,11.4",
                        "6,11.3")
                .read();
        assertThat(reading.trace().timeSeconds()).containsExactly(0, 1, 2, 3, 4, 5, 5.5, 6);
        assertThat(reading.trace().packVolts()).containsExactly(12.0, 11.9, 11.8, 11.7, 11.6, 11.5, 11.4, 11.3);
        assertThat(reading.remarks())
                .containsExactlyInAnyOrder(
                        "one row said the same twice.",
                        "one row shares a time stamp with another and was set behind it.",
                        "one row came late and was put in order.");
    }

    @Test
    void goesOnTenMinutesLaterWhereTheClockIsSetBack() {
        List<String> lines = new ArrayList<>(List.of("time_s,volts"));
        for (int run = 0; run < 2; run++) {
            for (int i = 0; i <= 100; i++) {
                lines.add(i + "," + (12 - 0.01 * i));
            }
        }
        Reading reading = TextLog.of(lines.toArray(String[]::new)).read();
        assertThat(reading.trace().size()).isEqualTo(202);
        assertThat(reading.trace().timeSeconds()[101]).isEqualTo(700);
        assertThat(reading.trace().durationSeconds()).isEqualTo(800);
        assertThat(reading.remarks()).singleElement().asString().startsWith("line 103: the clock jumps back by 100 s");
    }

    @Test
    void fillsShortHolesAndLeavesOutRowsInLongOnes() {
        Reading reading = TextLog.of(
                        "time_s,volts,amps",
                        "0,12.0,1",
                        "1,,5",
                        "2,11.0,NaN",
                        "3,12.0,1",
                        "4,--,1",
                        "30,11,5",
                        "31,12,1",
                        "32,11,5")
                .read();
        assertThat(reading.trace().timeSeconds()).containsExactly(0, 1, 2, 3, 30, 31, 32);
        assertThat(reading.trace().packVolts()[1]).isEqualTo(11.5);
        assertThat(reading.trace().currentAmps()[2]).isEqualTo(3);
        assertThat(reading.remarks())
                .containsExactly(
                        "2 missing values were filled by the straight line between neighbours.",
                        "one row without volts or current left out.");
    }

    @Test
    void turnsTheSignToDischargePositive() {
        String[] charging = ROWS.stream()
                .map(row -> row.replaceAll("^(\\d,[^,]*),([\\d.]+)", "$1,-$2"))
                .toArray(String[]::new);
        TextLog log = TextLog.of(charging);
        assertThat(log.preview().mapping().positive()).isEqualTo(PositiveCurrent.CHARGES);
        assertThat(log.preview().why()).startsWith("when the current steps up, the volts step up");
        assertPlain(log.read().trace());
    }

    @Test
    void asksWhichSignMeansDischargeWhereItCannotTell() {
        TextLog log = TextLog.of("time_s,volts,amps", "0,12,0", "1,12,0", "2,12,0", "3,12,0");
        assertThat(log.preview().questions()).singleElement().asString().contains("--positive discharge");
        assertThatThrownBy(log::read)
                .isInstanceOf(InputException.class)
                .hasMessageContaining("cannot be told: too little current flows to tell");
        assertThat(log.read(log.preview("", PositiveCurrent.CHARGES)).trace().size())
                .isEqualTo(4);
    }

    @Test
    void takesCellsInOrderAndTheirSumForThePack() {
        Trace trace = TextLog.of("time_s;cell 2 (V);Cell 1 (V)", "0;3.9;4.0", "1;3.8;3.9")
                .read()
                .trace();
        assertThat(trace.cellVolts()[0]).containsExactly(4.0, 3.9);
        assertThat(trace.cellVolts()[1]).containsExactly(3.9, 3.8);
        assertThat(trace.packVolts()).containsExactly(new double[] {7.9, 7.7}, within(1e-12));
    }

    @Test
    void saysLineAndColumnOfEveryBadField() {
        TextLog log = TextLog.of(
                "time_s,volts,amps", "0,12.4,1", "1,12.0,6", "2,12.3,2", "3,1x.0,9", "4,12.3,oops", "5,12.3,1");
        assertThatThrownBy(log::read)
                .isInstanceOf(InputException.class)
                .hasMessage("flight.csv line 5, column 2 (volts): \"1x.0\" is not a number; expected a decimal point."
                        + " Correct or delete the line.\n"
                        + "flight.csv line 6, column 3 (amps): \"oops\" is not a number; expected a decimal point."
                        + " Correct or delete the line.");
    }

    @Test
    void refusesAPhotoByWhatItIs() {
        byte[] photo = new byte[5000];
        photo[0] = (byte) 0xFF;
        photo[1] = (byte) 0xD8;
        photo[2] = (byte) 0xFF;
        assertThatThrownBy(() -> new TextLog("flight.csv", photo).preview())
                .hasMessage("flight.csv is a JPEG picture, not a table of figures. Export the log as CSV and give that"
                        + " file.");
        assertThatThrownBy(() -> TextLog.of("").preview()).hasMessageStartingWith("flight.csv is empty");
        assertThatThrownBy(() -> TextLog.of("Dear diary,", "today I flew, and it was fine.")
                        .preview())
                .hasMessageStartingWith("flight.csv holds no rows of figures");
        assertThatThrownBy(() -> new TextLog("x.csv", new byte[] {1, 2, 3, 4, 5, 6, 7}).preview())
                .hasMessageStartingWith("x.csv is not text");
    }

    @Test
    void usesWhatThereIsWithoutCurrentAndRefusesNothingOfUse() {
        Trace trace = TextLog.of("time_s,volts", "0,12.4", "1,12.3").read().trace();
        assertThat(trace.hasCurrent()).isFalse();
        assertThatThrownBy(() -> TextLog.of("time_s,height", "0,12.4", "1,12.3").read())
                .hasMessageContaining("no column that is known as volts or current. Its columns are column 1 (time_s),"
                        + " column 2 (height).");
        assertThatThrownBy(() -> TextLog.of("0,12.4", "1,12.3").read())
                .hasMessageContaining("no column that is known as time");
        TextLog bare = TextLog.of("0,12.4", "1,12.3");
        assertThat(bare.read(bare.preview("time=1:s,volts=2:V", null)).trace().packVolts())
                .containsExactly(12.4, 12.3);
    }

    @Test
    void asksWhichColumnsAreWhoseWhereTwoPacksAreLoggedSideBySide() {
        TextLog log = TextLog.of(
                "time_s,A volts,A current,B volts,B current", "0,12.4,1,16.0,2", "1,12.0,6,15.5,9", "2,12.3,2,16.0,2");
        assertThatThrownBy(log::read)
                .isInstanceOf(InputException.class)
                .hasMessage("flight.csv looks like a log of two packs side by side: column 2 (A volts), column 3 (A"
                        + " current) of one, column 4 (B volts), column 5 (B current) of the other. Add it once for each"
                        + " pack with the columns that are its own, --columns volts=2,amps=3 for the one and --columns"
                        + " volts=4,amps=5 for the other.");
        Trace second = log.read(log.preview("volts=4,amps=5", null)).trace();
        assertThat(second.packVolts()).containsExactly(16.0, 15.5, 16.0);
        assertThat(second.currentAmps()).containsExactly(2, 9, 2);
        TextLog alike = TextLog.of("time_s;A cell 1;A cell 2;B cell 1;B cell 2", "0;4;4;3;3", "1;4;4;3;3");
        assertThat(alike.preview().questions())
                .singleElement()
                .asString()
                .contains("--columns cell1=2,cell2=3 for the one and --columns cell1=4,cell2=5 for the other");
    }

    @Test
    void asksForTheLogToBeCutWhereItsRowsNameSeveralPacks() {
        TextLog log = TextLog.of("time_s,pack,volts", "0,A,12.4", "1,A,12.3", "2,B,16.1", "3,B,16.0");
        assertThatThrownBy(log::read)
                .hasMessage("flight.csv has rows of several packs: column 2 (pack) says A, B. Cut the file so that each"
                        + " has the rows of one pack, and add each to its own. If it says something else, say"
                        + " unused=2.");
        assertThat(log.read(log.preview("unused=2", null)).trace().size()).isEqualTo(4);
        assertThat(TextLog.of("time_s,pack,volts", "0,A,12.4", "1,A,12.3")
                        .preview()
                        .questions())
                .isEmpty();
    }

    @Test
    void aCurrentOfTheMotorBesideTheBatteryIsNoSecondPack() {
        TextLog log = TextLog.of("time_s,volts,current,motor current", "0,12.4,1,1", "1,12.0,6,5", "2,12.3,2,2");
        assertThat(log.preview().questions()).isEmpty();
    }

    @Test
    void aColumnOfWordsForNoNumberIsAsIfItWereNotLogged() {
        Trace trace = TextLog.of("time_s,volts,temperature_C", "0,12.4,NaN", "1,12.0,nan", "2,12.3,")
                .read()
                .trace();
        assertThat(trace.hasTemperature()).isFalse();
        assertThatThrownBy(() -> TextLog.of("time_s,volts,height", "0,NaN,3", "1,NaN,4", "2,NaN,5")
                        .read())
                .hasMessageContaining("has no row with volts or current in it");
    }

    /** Ten million rows that exist only while they are read: what is held at once stays at one part. */
    @Test
    void readsTenMillionRowsInPartsOfBoundedLength() {
        long[] seen = new long[2];
        LogFile log = new GeneratedLog(10_000_000);
        TraceReader.readParts(
                log, LogPreview.of(log, ReadingChoices.NONE, null), ZoneOffset.UTC, ReadingProgress.NONE, part -> {
                    seen[0] += part.size();
                    seen[1] = Math.max(seen[1], part.size());
                });
        assertThat(seen[0]).isEqualTo(10_000_000);
        assertThat(seen[1]).isEqualTo(500_000);
        assertThatThrownBy(() -> TraceReader.read(
                        log, LogPreview.of(log, ReadingChoices.NONE, null), ZoneOffset.UTC, ReadingProgress.NONE))
                .hasMessageContaining("too many to hold at once");
    }

    @Test
    void takesAPersonsWordOverTheHeadings() {
        TextLog log = TextLog.of("time_s,volts,Motor volts,amps", "0,5.0,12.4,1", "1,5.0,12.0,6", "2,5.0,12.3,2");
        Preview preview = log.preview("volts=Motor volts:V", PositiveCurrent.DISCHARGES);
        assertThat(log.read(preview).trace().packVolts()).containsExactly(12.4, 12.0, 12.3);
        assertThatThrownBy(() -> log.preview("volts=9:V", null)).hasMessageContaining("there is no column \"9\"");
        assertThatThrownBy(() -> log.preview("volt=2", null)).hasMessageContaining("\"volt=2\" is not understood");
    }

    @Test
    void remembersAMappingForTheSameHeadings() {
        TextLog log = TextLog.of("zeit,U,X1", "0,12,0", "1,12,0");
        Mapping saved =
                log.preview("time=1:s,amps=3:mA", PositiveCurrent.CHARGES).mapping();
        Preview again = LogPreview.of(TextLog.of("zeit,U,X1", "0,12,4", "1,12,5"), ReadingChoices.NONE, saved);
        assertThat(again.mapping()).isEqualTo(saved);
        assertThat(again.why()).isEqualTo("as with earlier logs of this source");
        Preview other = LogPreview.of(TextLog.of("zeit,U,X2", "0,12,4", "1,12,5"), ReadingChoices.NONE, saved);
        assertThat(other.mapping().of(ColumnRole.AMPS)).isEmpty();
    }

    @Test
    void readsInPartsAndStopsWhenTold() {
        StringBuilder text = new StringBuilder("time_s,volts,amps\n");
        for (int i = 0; i < 600_000; i++) {
            text.append(i)
                    .append(",12.")
                    .append(i % 7)
                    .append(',')
                    .append(7 - i % 7)
                    .append('\n');
        }
        TextLog log = new TextLog("long.csv", text.toString().getBytes(StandardCharsets.US_ASCII));
        List<Trace> parts = new ArrayList<>();
        TraceReader.readParts(log, log.preview(), ZoneOffset.UTC, ReadingProgress.NONE, parts::add);
        assertThat(parts).extracting(Trace::size).containsExactly(500_000, 100_000);
        assertThat(parts.get(1).timeSeconds()[0]).isEqualTo(500_000);
        assertThatThrownBy(() -> TraceReader.readParts(
                        log, log.preview(), ZoneOffset.UTC, (done, total) -> done < total / 2, parts::add))
                .isInstanceOf(ReadingStoppedException.class)
                .hasMessage("reading long.csv was stopped; nothing was kept.");
    }

    @Test
    void knowsHeadingsThatComeAgain() {
        Reading reading = TextLog.of("time_s,volts", "0,12.0", "1,11.9", "time_s,volts", "2,11.8", "3,11.7")
                .read();
        assertThat(reading.trace().size()).isEqualTo(4);
        assertThat(reading.remarks()).containsExactly("the headings come again once: several logs in one file.");
    }
}
