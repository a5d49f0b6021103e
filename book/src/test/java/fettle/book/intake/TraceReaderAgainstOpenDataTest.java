package fettle.book.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.trace.Counting;
import fettle.engine.trace.Trace;
import java.io.IOException;
import java.nio.file.Files;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Measured logs read by their headings alone: which sign means discharge, and the charge counted, against the notes that
 * came with them (sources as named in the engine's CountingAgainstOpenDataTest). Charge within 0.1 %.
 */
final class TraceReaderAgainstOpenDataTest {
    private static Reading read(String file) {
        LogFile log = MeasuredLogs.log(file);
        return TraceReader.read(
                log, LogPreview.of(log, ReadingChoices.NONE, null), ZoneOffset.UTC, ReadingProgress.NONE);
    }

    @ParameterizedTest
    @CsvSource({
        "battery/panasonic-18650pf/dis1C_25C.csv.gz,  CHARGES,    2.8023",
        "battery/panasonic-18650pf/us06_25C.csv.gz,   CHARGES,    2.5863",
        "battery/panasonic-18650pf/mixed1_25C.csv.gz, CHARGES,    2.6966",
        "battery/panasonic-18650pf/dis_1c_new_1.csv,  CHARGES,    2.8023",
        "battery/panasonic-18650pf/dis_1c_aged_2.csv, CHARGES,    2.3581",
        "battery/pouch-discharge/lco2p28_0p1C.csv,    DISCHARGES, 2.3355",
        "battery/pouch-discharge/lco2p28_0p5C.csv,    DISCHARGES, 2.3133",
        "battery/pouch-discharge/lco2p28_1C.csv,      DISCHARGES, 2.2868",
    })
    void findsTheSignAndCounts(String file, PositiveCurrent positive, double ampereHours) {
        LogFile log = MeasuredLogs.log(file);
        assertThat(LogPreview.of(log, ReadingChoices.NONE, null).mapping().positive())
                .isEqualTo(positive);
        assertThat(Counting.of(read(file).trace()).netCoulombs() / 3600)
                .isCloseTo(ampereHours, within(0.001 * ampereHours));
    }

    @ParameterizedTest
    @CsvSource({
        "battery/panasonic-18650pf/c20_25C.csv.gz", "battery/panasonic-18650pf/chg_1c_new_2.csv",
        "battery/panasonic-18650pf/chg_1c_aged_3.csv", "battery/panasonic-18650pf/hppc_0C.csv.gz",
        "battery/panasonic-18650pf/hppc_25C.csv.gz", "battery/pouch-33ah-pulses/cycles_1C.csv",
        "battery/pouch-33ah-pulses/cycles_2C.csv", "battery/pouch-33ah-pulses/hppc_25C.csv",
        "battery/nasa-ageing/B0005_discharges.csv", "battery/nasa-ageing/pulsed_B0025.csv",
    })
    void findsThatPositiveCharges(String file) {
        LogFile log = MeasuredLogs.log(file);
        assertThat(LogPreview.of(log, ReadingChoices.NONE, null).mapping().positive())
                .isEqualTo(PositiveCurrent.CHARGES);
    }

    @Test
    void findsTheRunsOfALogWhoseClockStartsAgain() {
        Reading reading = read("battery/nasa-ageing/B0005_discharges.csv");
        assertThat(reading.remarks())
                .filteredOn(remark -> remark.contains("the clock jumps back"))
                .hasSize(14);
        assertThat(reading.trace().hasTemperature()).isTrue();
    }

    @Test
    void readsFlightsWithoutCurrent() throws IOException {
        for (String flight : List.of("flight_1", "flight_11", "flight_47")) {
            String file = "battery/flights-1s-voltage/" + flight + ".csv";
            Trace trace = read(file).trace();
            assertThat(trace.hasCurrent()).isFalse();
            assertThat(trace.size())
                    .isEqualTo(Files.readAllLines(MeasuredLogs.path(file)).size() - 1);
        }
    }
}
