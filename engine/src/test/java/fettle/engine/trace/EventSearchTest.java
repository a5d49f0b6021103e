package fettle.engine.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.units.InputException;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

final class EventSearchTest {
    private static final double[] NONE = {};
    private static final int SAMPLES = 600;

    /** A one-cell pack: 3.0 to 4.2 V, 20 A out, 2 A in, charged at 0 to 45 °C, to 60 °C. */
    static TraceLimits oneCell() {
        return limits(1);
    }

    private static TraceLimits limits(int cells) {
        return new TraceLimits(cells, 3.0, 4.2, 20.0, 2.0, 333.15, 273.15, 318.15);
    }

    private static double[] column(IntToDoubleFunction value) {
        double[] column = new double[SAMPLES];
        Arrays.setAll(column, value);
        return column;
    }

    /** Samples a second apart. */
    private static Trace trace(double[] amps, double[] kelvins, double[]... cells) {
        double[] pack =
                column(i -> Arrays.stream(cells).mapToDouble(cell -> cell[i]).sum());
        return new Trace(column(i -> i), pack, amps, cells, kelvins, null);
    }

    private static List<TraceEvent> events(Trace trace) {
        return EventSearch.of(trace, Segmentation.of(trace), limits(trace.cells()));
    }

    @Test
    void tellsWhichCellWentBelowItsLimitForHowLongAndHowFar() {
        double[] steady = column(i -> 3.7);
        double[] weak = column(i -> i >= 200 && i <= 204 ? 2.95 - 0.01 * (i - 200) : 3.5);
        List<TraceEvent> events = events(trace(column(i -> 10), NONE, steady, weak, steady));
        TraceEvent under = events.stream()
                .filter(event -> event.kind() == EventKind.UNDER_VOLTAGE)
                .findFirst()
                .orElseThrow();
        assertThat(under.cell()).isEqualTo(2);
        assertThat(under.atSeconds()).isEqualTo(200);
        assertThat(under.durationSeconds()).isEqualTo(4);
        assertThat(under.worstSi()).isCloseTo(2.91, within(1e-9));
        assertThat(under.sentence())
                .isEqualTo("cell 2 below its lowest volts under load for 4.0 s: 2.910 V, limit 3.000 V");
        assertThat(events)
                .filteredOn(event -> event.kind() == EventKind.CELL_COLLAPSE)
                .singleElement()
                .satisfies(event -> assertThat(event.cell()).isEqualTo(2));
    }

    @Test
    void joinsDipsThatFollowCloselyAndPartsThoseThatDoNot() {
        double[] cell = column(i -> i == 100 || i == 103 || i == 300 ? 2.8 : 3.6);
        List<TraceEvent> events = events(trace(column(i -> 10), NONE, cell));
        assertThat(events).extracting(TraceEvent::atSeconds).containsExactly(100.0, 300.0);
    }

    @Test
    void holdsPackVoltsAgainstTheLimitTimesCellsWhereCellsAreNotLogged() {
        Trace pack = Trace.of(column(i -> i), column(i -> i < 300 ? 8.5 : 5.9), column(i -> 10));
        assertThat(EventSearch.of(pack, Segmentation.of(pack), limits(2)))
                .extracting(TraceEvent::kind)
                .containsExactly(EventKind.OVER_CHARGE, EventKind.UNDER_VOLTAGE);
    }

    @Test
    void leavesAChargerThatRegulatesOnTheLimitAlone() {
        double[] cell = column(i -> i % 2 == 0 ? 4.203 : 4.199);
        assertThat(events(trace(column(i -> -1), NONE, cell))).isEmpty();
    }

    @Test
    void tellsTooMuchCurrentEitherWay() {
        double[] amps = column(i -> i < 100 ? 25 : i < 200 ? 0 : -3);
        assertThat(events(trace(amps, NONE, column(i -> 3.8))))
                .extracting(TraceEvent::kind, TraceEvent::worstSi)
                .containsExactly(tuple(EventKind.OVER_CURRENT, 25.0), tuple(EventKind.OVER_CHARGE_CURRENT, 3.0));
    }

    @Test
    void tellsHeatAndChargingInTheCold() {
        double[] kelvins = column(i -> i < 300 ? 270 : 335);
        double[] amps = column(i -> i < 300 ? -1 : 0);
        List<TraceEvent> events = events(trace(amps, kelvins, column(i -> 3.8)));
        assertThat(events)
                .extracting(TraceEvent::kind)
                .containsExactly(EventKind.CHARGED_COLD, EventKind.OVER_TEMPERATURE);
        assertThat(events.get(0).sentence())
                .isEqualTo("pack charged colder than allowed for 299.0 s: -3.1 °C, limit 0.0 °C");
    }

    @Test
    void findsASuddenRiseOfResistanceAndItsTime() {
        double[] amps = column(i -> i % 4 < 2 ? 5 : 15);
        double[] joint = column(i -> 4.0 - amps[i] * (i < 301 ? 0.010 : 0.022));
        double[] sound = column(i -> 4.0 - amps[i] * 0.010);
        List<TraceEvent> events = events(trace(amps, NONE, sound, joint));
        assertThat(events).singleElement().satisfies(event -> {
            assertThat(event.kind()).isEqualTo(EventKind.RESISTANCE_STEP);
            assertThat(event.cell()).isEqualTo(2);
            assertThat(event.atSeconds()).isCloseTo(301, within(20.0));
            assertThat(event.worstSi()).isCloseTo(0.022, within(1e-6));
            assertThat(event.limitSi()).isCloseTo(0.010, within(1e-6));
        });
    }

    @Test
    void findsNoStepOfResistanceInSoundCellsDriven() {
        for (String file : List.of("us06_25C.csv.gz", "mixed1_25C.csv.gz")) {
            Trace trace =
                    MeasuredTraces.read("battery/panasonic-18650pf/" + file, MeasuredTraces.Sign.DISCHARGE_NEGATIVE);
            assertThat(ResistanceSteps.of(trace, Segmentation.of(trace)))
                    .as(file)
                    .isEmpty();
        }
    }

    @Test
    void refusesALogOfAnotherPack() {
        Trace six = trace(column(i -> 1), NONE, column(i -> 3.8), column(i -> 3.8), column(i -> 3.8));
        assertThatThrownBy(() -> PackFit.require(six, limits(4), "P07"))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("the log has 3 cells; P07 has 4 in series.");
        Trace volts = Trace.of(column(i -> i), column(i -> 24.9), column(i -> 1));
        assertThatThrownBy(() -> PackFit.require(volts, limits(4), "P07"))
                .hasMessageContaining("reach 24.90 V, 6.23 V a cell for the 4 cells of P07");
        PackFit.require(volts, limits(6), "P09");
    }

    @Test
    void tellsTheCurrentsOffsetAndWhatItDoesToTheCount() {
        double[] amps = column(i -> i < 200 || i >= 400 ? 0.004 : 10.004);
        Trace trace = Trace.of(column(i -> i), column(i -> 3.8), amps);
        CurrentOffset offset = CurrentOffset.of(trace, Segmentation.of(trace)).orElseThrow();
        assertThat(offset.amps().value()).isCloseTo(0.004, within(1e-12));
        assertThat(offset.countCoulombs()).isCloseTo(0.004 * 599, within(1e-9));
    }

    @Test
    void doubtsWhatCannotBe() {
        double[] stuck = column(i -> 5);
        double[] volts = column(i -> i % 50 < 25 ? 3.9 : 3.6);
        assertThat(TraceReview.of(trace(stuck, NONE, volts), oneCell()).remarks())
                .contains("current never changes in 600 samples: the sensor may not be connected.")
                .anyMatch(remark -> remark.startsWith("current stays at exactly 5.000 A for 599 s from 0.0 s"));
        double[] time = column(i -> i < 300 ? i : i + 5_000);
        Trace swapped = Trace.of(time, column(i -> i < 300 ? 3.6 : 4.1), column(i -> 0));
        assertThat(TraceReview.of(swapped, oneCell()).remarks())
                .anyMatch(remark -> remark.startsWith("volts at rest rise from 3.60 to 4.10 V across the gap"));
    }
}
