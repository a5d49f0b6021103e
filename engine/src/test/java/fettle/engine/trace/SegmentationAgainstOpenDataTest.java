package fettle.engine.trace;

import static fettle.engine.trace.MeasuredTraces.Sign.DISCHARGE_NEGATIVE;
import static fettle.engine.trace.SegmentKind.BALANCE;
import static fettle.engine.trace.SegmentKind.CHARGE_CONSTANT_CURRENT;
import static fettle.engine.trace.SegmentKind.CHARGE_CONSTANT_VOLTAGE;
import static fettle.engine.trace.SegmentKind.REST;
import static fettle.engine.trace.SegmentKind.RUN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What measured packs did, against the protocols and figures that came with the records. Sources as in {@link
 * CountingAgainstOpenDataTest}; flights: R. Craciun, Crazyflie 2.0 battery data, CC BY-SA 4.0; the bleed circuit is
 * solved by a general circuit simulator.
 */
final class SegmentationAgainstOpenDataTest {
    @ParameterizedTest
    @CsvSource({
        "chg_1c_new_2,  3480, 2.366",
        "chg_1c_new_3,  3360, 2.271",
        "chg_1c_aged_2, 2880, 1.883",
        "chg_1c_aged_3, 2700, 1.740",
    })
    void partsAChargeWhereItsVoltageIsHeld(String record, double heldFromSeconds, double ampereHoursByThen) {
        Trace trace = MeasuredTraces.read("battery/panasonic-18650pf/" + record + ".csv", DISCHARGE_NEGATIVE);
        List<Segment> segments = Segmentation.of(trace);
        assertThat(segments)
                .extracting(Segment::kind)
                .containsExactly(REST, CHARGE_CONSTANT_CURRENT, CHARGE_CONSTANT_VOLTAGE, REST);
        Segment held = segments.get(2);
        // One row, a minute.
        assertThat(trace.timeSeconds()[held.from()]).isCloseTo(heldFromSeconds, within(60.1));
        Count before = Counting.of(trace, 0, sampleAt(trace, heldFromSeconds));
        double halfARow = 30 * 2.9 / 3600;
        assertThat(before.inCoulombs() / 3600)
                .isCloseTo(ampereHoursByThen, within(halfARow + 0.001 * ampereHoursByThen));
    }

    @ParameterizedTest
    @CsvSource({"2, 3230, 1.351", "20, 3150, 1.318", "60, 2810, 1.175", "100, 2149, 0.897", "140, 1729, 0.721"})
    void partsTheChargesOfAnAgeingCell(String charge, double heldFromSeconds, double ampereHoursByThen) {
        Trace trace =
                MeasuredTraces.rows("battery/nasa-ageing/charges_B0005.csv", DISCHARGE_NEGATIVE, "charge", charge);
        List<Segment> segments = Segmentation.of(trace);
        Segment held = segments.stream()
                .filter(segment -> segment.kind() == CHARGE_CONSTANT_VOLTAGE)
                .findFirst()
                .orElseThrow();
        // The figures are of the full record; this one is thinned to a row every 13 to 20 s.
        assertThat(trace.timeSeconds()[held.from()]).isCloseTo(heldFromSeconds, within(25.0));
        assertThat(Counting.of(trace, 0, held.from()).inCoulombs() / 3600).isCloseTo(ampereHoursByThen, within(0.012));
    }

    @Test
    void findsFiveCyclesOfChargeRestAndRun() {
        Trace trace = MeasuredTraces.read("battery/pouch-33ah-pulses/cycles_1C.csv", DISCHARGE_NEGATIVE);
        List<SegmentKind> kinds =
                Segmentation.of(trace).stream().map(Segment::kind).toList();
        List<SegmentKind> cycle = List.of(REST, CHARGE_CONSTANT_CURRENT, CHARGE_CONSTANT_VOLTAGE, REST, RUN);
        assertThat(kinds.subList(0, 20))
                .isEqualTo(
                        IntStream.range(0, 20).mapToObj(i -> cycle.get(i % 5)).toList());
    }

    @Test
    void takesADriveWithBrakingAsOneRun() {
        Trace trace = MeasuredTraces.read("battery/panasonic-18650pf/us06_25C.csv.gz", DISCHARGE_NEGATIVE);
        assertThat(Segmentation.of(trace)).extracting(Segment::kind).containsExactly(REST, RUN, REST);
    }

    @Test
    void findsEveryPulseOfTheTimedTable() {
        Trace trace = MeasuredTraces.read("battery/panasonic-18650pf/hppc_25C.csv.gz", DISCHARGE_NEGATIVE);
        List<Double> runs = Segmentation.of(trace).stream()
                .filter(segment -> segment.kind() == RUN)
                .map(segment -> trace.timeSeconds()[segment.from()])
                .toList();
        List<String[]> table = MeasuredTraces.table("battery/panasonic-18650pf/hppc_25C_pulses_timed.csv");
        for (String[] pulse : table.subList(1, table.size())) {
            double on = Double.parseDouble(pulse[1]);
            // The table's load-on is interpolated between rows 0.1 s apart.
            assertThat(runs).as("pulse %s at %.1f s", pulse[0], on).anyMatch(from -> Math.abs(from - on) < 0.25);
        }
        assertThat(table).hasSize(65);
    }

    @ParameterizedTest
    @CsvSource({"flight_1, 2.951", "flight_11, 3.056", "flight_47, 3.326"})
    void findsTakeOffWithoutCurrent(String flight, double lowestVolts) {
        Trace trace = MeasuredTraces.read("battery/flights-1s-voltage/" + flight + ".csv", DISCHARGE_NEGATIVE);
        List<Segment> segments = Segmentation.of(trace);
        assertThat(segments).extracting(Segment::kind).containsExactly(REST, RUN);
        assertThat(trace.timeSeconds()[segments.get(1).from()]).isBetween(0.95, 1.25);
        TraceReview review = TraceReview.of(trace, EventSearchTest.oneCell());
        assertThat(review.counts()).isEmpty();
        assertThat(review.remarks()).anyMatch(remark -> remark.startsWith("no current was logged"));
        // The lowest of every fifth row, as they are here, lies up to 45 mV above the lowest of all rows.
        assertThat(review.events())
                .allSatisfy(event -> assertThat(event.worstSi()).isBetween(lowestVolts, lowestVolts + 0.045))
                .hasSize(lowestVolts < 2.96 ? 1 : 0);
    }

    @Test
    void knowsCellsBledLevelFromARest() {
        List<String[]> rows = MeasuredTraces.table("battery/circuits/bleed.csv");
        List<String[]> body = rows.subList(1, rows.size());
        double[][] cells = new double[4][];
        for (int cell = 0; cell < 4; cell++) {
            int column = cell + 1;
            cells[cell] = body.stream()
                    .mapToDouble(row -> Double.parseDouble(row[column]))
                    .toArray();
        }
        double[] time =
                body.stream().mapToDouble(row -> Double.parseDouble(row[0])).toArray();
        double[] pack = new double[time.length];
        for (int i = 0; i < pack.length; i++) {
            pack[i] = cells[0][i] + cells[1][i] + cells[2][i] + cells[3][i];
        }
        Trace trace = new Trace(time, pack, new double[time.length], cells, new double[0], null);
        assertThat(Segmentation.of(trace)).extracting(Segment::kind).containsExactly(BALANCE);
    }

    private static int sampleAt(Trace trace, double seconds) {
        int sample = 0;
        while (trace.timeSeconds()[sample] < seconds) {
            sample++;
        }
        return sample;
    }
}
