package fettle.engine.trace;

import static fettle.engine.trace.MeasuredTraces.Sign.DISCHARGE_NEGATIVE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.reference.ReferenceFiles;
import fettle.engine.trace.MeasuredTraces.Sign;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Charge and energy of measured discharges and charges against the figures that came with them: P. Kollmeyer, Panasonic
 * 18650PF Li-ion Battery Data, Mendeley Data v1, 2018, doi:10.17632/wykht8y7tg.1; Ai et al., J. Electrochem. Soc. 167
 * (2020) 013512; Ecker et al., J. Electrochem. Soc. 162 (2015) A1849; Wiggins, Allu, Wang, Zenodo,
 * doi:10.5281/zenodo.2580327; Saha and Goebel, NASA Prognostics Data Repository, 2007. Tolerance 0.1 %; where the figure
 * has fewer digits than that, half its last digit more.
 */
final class CountingAgainstOpenDataTest {
    private static final double SHARE = 0.001;
    private static final double SECONDS_PER_HOUR = 3600;

    @ParameterizedTest
    @CsvSource({
        "battery/panasonic-18650pf/dis1C_25C.csv.gz,   DISCHARGE_NEGATIVE, 2.8023, 9.831",
        "battery/panasonic-18650pf/us06_25C.csv.gz,    DISCHARGE_NEGATIVE, 2.5863, 8.863",
        "battery/panasonic-18650pf/mixed1_25C.csv.gz,  DISCHARGE_NEGATIVE, 2.6966, 9.420",
        "battery/pouch-discharge/lco2p28_0p1C.csv,     DISCHARGE_POSITIVE, 2.3355, 8.912",
        "battery/pouch-discharge/lco2p28_0p5C.csv,     DISCHARGE_POSITIVE, 2.3133, 8.667",
        "battery/pouch-discharge/lco2p28_1C.csv,       DISCHARGE_POSITIVE, 2.2868, 8.399",
    })
    void countsMeasuredDischarges(String file, Sign sign, double ampereHours, double wattHours) {
        Trace trace = MeasuredTraces.read(file, sign);
        Count count = Counting.of(trace);
        assertThat(count.netCoulombs() / SECONDS_PER_HOUR).isCloseTo(ampereHours, within(SHARE * ampereHours));
        assertThat(count.netJoules() / SECONDS_PER_HOUR).isCloseTo(wattHours, within(SHARE * wattHours + 0.0005));
        assertThat(count.unseenSeconds()).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "dis_1c_new_1,  2.8023",
        "dis_1c_new_2,  2.7557",
        "dis_1c_aged_1, 2.4381",
        "dis_1c_aged_2, 2.3581",
    })
    void countsWhatATrapezoidOfTheTestersRowsGives(String record, double ampereHours) {
        Trace trace = MeasuredTraces.read("battery/panasonic-18650pf/" + record + ".csv", DISCHARGE_NEGATIVE);
        assertThat(Counting.of(trace).outCoulombs() / SECONDS_PER_HOUR)
                .isCloseTo(ampereHours, within(SHARE * ampereHours));
    }

    @Test
    void countsASlowDischargeUpToItsEndAndNotThroughTheGapAfterIt() {
        Trace trace = MeasuredTraces.read("battery/panasonic-18650pf/c20_25C.csv.gz", DISCHARGE_NEGATIVE);
        Count count = Counting.of(trace);
        assertThat(count.outCoulombs() / SECONDS_PER_HOUR).isCloseTo(2.9950, within(SHARE * 2.9950));
        assertThat(count.inCoulombs() / SECONDS_PER_HOUR).isCloseTo(2.616, within(SHARE * 2.616 + 0.0005));
        assertThat(count.unseenSeconds()).isGreaterThan(48_000);
    }

    @Test
    void countsTheFirstRunOfUnevenlySampledCycles() {
        for (List<?> expected : List.of(List.of("cycles_1C", 30.326), List.of("cycles_2C", 29.94))) {
            Trace trace =
                    MeasuredTraces.read("battery/pouch-33ah-pulses/" + expected.get(0) + ".csv", DISCHARGE_NEGATIVE);
            List<Segment> segments = Segmentation.of(trace);
            List<Count> counts = Counting.ofSegments(trace, segments);
            double ampereHours = (double) expected.get(1);
            assertThat(firstRun(segments, counts).outCoulombs() / SECONDS_PER_HOUR)
                    .as("%s", expected.get(0))
                    .isCloseTo(ampereHours, within(SHARE * ampereHours + 0.0005));
        }
    }

    @Test
    void countsEveryTwelfthDischargeOfTwoAgeingCells() {
        int compared = 0;
        for (String cell : List.of("B0005", "B0006")) {
            List<String[]> cycles = ReferenceFiles.rows("battery/nasa-ageing/" + cell + "_cycles.csv");
            for (String[] row : cycles) {
                int cycle = Integer.parseInt(row[0]);
                if (cycle != 1 && cycle % 12 != 0) {
                    continue;
                }
                Trace trace = MeasuredTraces.rows(
                        "battery/nasa-ageing/" + cell + "_discharges.csv", DISCHARGE_NEGATIVE, "cycle", row[0]);
                double counted = Double.parseDouble(row[3]);
                assertThat(Counting.of(trace).outCoulombs() / SECONDS_PER_HOUR)
                        .as("%s cycle %d", cell, cycle)
                        .isCloseTo(counted, within(SHARE * counted));
                compared++;
            }
        }
        assertThat(compared).isGreaterThanOrEqualTo(28);
    }

    @ParameterizedTest
    @CsvSource({"chg_1c_new_2,  2.7838", "chg_1c_new_3,  2.7371", "chg_1c_aged_2, 2.4015", "chg_1c_aged_3, 2.3431"})
    void countsChargesLoggedEveryMinuteToWhatThatSamplingAllows(String record, double ampereHours) {
        Trace trace = MeasuredTraces.read("battery/panasonic-18650pf/" + record + ".csv", DISCHARGE_NEGATIVE);
        // Load-on and load-off fall between rows a minute apart: half a minute at 2.9 A and at 0.05 A.
        double edges = 30 * (2.9 + 0.05) / SECONDS_PER_HOUR;
        assertThat(Counting.of(trace).inCoulombs() / SECONDS_PER_HOUR)
                .isCloseTo(ampereHours, within(SHARE * ampereHours + edges));
    }

    private static Count firstRun(List<Segment> segments, List<Count> counts) {
        for (int i = 0; i < segments.size(); i++) {
            if (segments.get(i).kind() == SegmentKind.RUN) {
                return counts.get(i);
            }
        }
        throw new AssertionError("no run found");
    }
}
