package fettle.engine.control.servo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.control.Remark;
import fettle.engine.reference.ReferenceFiles;
import fettle.engine.units.InputException;
import org.junit.jupiter.api.Test;

class SignalSuitabilityTest {
    @Test
    void ordinarySignalSuitsAWingServo() {
        assertThat(SignalSuitability.of(Signal.around(1500e-6, 500e-6, 50), Servos.wing()))
                .isEmpty();
        assertThat(SignalSuitability.of(Signal.around(760e-6, 250e-6, 560), Servos.tail()))
                .isEmpty();
    }

    @Test
    void wideSignalDrivesANarrowPulseServoToItsStop() {
        assertThat(SignalSuitability.of(Signal.around(1520e-6, 500e-6, 50), Servos.tail()))
                .first()
                .satisfies(remark -> {
                    assertThat(remark.id()).isEqualTo("wrong-pulse-type");
                    assertThat(remark.statement()).contains("1520 µs", "510 µs to 1010 µs", "stalled");
                });
    }

    @Test
    void narrowSignalDrivesAWideServoToItsStop() {
        assertThat(SignalSuitability.of(Signal.around(760e-6, 250e-6, 560), Servos.wing()))
                .extracting(Remark::id)
                .containsExactly("wrong-pulse-type", "frame-too-fast");
    }

    @Test
    void centreOf1520OnAServoOf1500StandsTwoDegreesOff() {
        assertThat(SignalSuitability.of(Signal.around(1520e-6, 500e-6, 50), Servos.wing()))
                .singleElement()
                .satisfies(remark -> assertThat(remark.statement()).contains("20 µs", "2.0°"));
    }

    @Test
    void tellsHowFarPastTheStopItGoes() {
        assertThat(SignalSuitability.of(Signal.around(1500e-6, 700e-6, 50), Servos.wing()))
                .singleElement()
                .satisfies(remark -> assertThat(remark.statement()).contains("100 µs past"));
    }

    /** Every combination of frame and pulse in the reference folder's servo_signal_cases.csv; exact but for its rounding. */
    @Test
    void saysWhichPulsesFitIntoWhichFrame() {
        int rows = 0;
        for (String[] row : ReferenceFiles.rows("standards/servo_signal_cases.csv")) {
            Signal signal = Signal.around(
                    Double.parseDouble(row[2]) * 1e-6, Double.parseDouble(row[3]) * 1e-6, Double.parseDouble(row[0]));
            assertThat(signal.lowSeconds() * 1e6)
                    .as(String.join(",", row))
                    .isCloseTo(Double.parseDouble(row[6]), within(0.006));
            assertThat(SignalSuitability.of(signal, Servos.tail()).stream()
                            .noneMatch(remark -> remark.id().equals("frame-too-short")))
                    .as(String.join(",", row))
                    .isEqualTo(row[5].equals("yes"));
            rows++;
        }
        assertThat(rows).isEqualTo(40);
    }

    @Test
    void refusesPulsesNoServoTakesNamingAllFaults() {
        assertThatThrownBy(() -> new Signal(400e-6, 1500e-6, 2600e-6, 5))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("400 µs")
                .hasMessageContaining("2600 µs")
                .hasMessageContaining("frame rate");
    }
}
