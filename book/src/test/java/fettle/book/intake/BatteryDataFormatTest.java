package fettle.book.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fettle.engine.trace.Trace;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The columns and the sign of the Battery Data Format 1.3, as its vocabulary names them. */
final class BatteryDataFormatTest {
    private static final Trace TRACE = new Trace(
            new double[] {0, 0.1, 0.35},
            new double[] {8.4, 8.1, 8.2},
            new double[] {0, 12.5, -3},
            new double[][] {{4.2, 4.05, 4.1}, {4.2, 4.05, 4.1}},
            new double[] {293.15, 294.15, 295.15},
            Instant.parse("2026-05-01T12:00:00Z"));

    @Test
    void comesBackAsItWentOut() throws IOException {
        StringWriter text = new StringWriter();
        BatteryDataFormat.write(TRACE, text);
        assertThat(text.toString())
                .startsWith("Test Time / s,Voltage / V,Current / A,Unix Time / s,Surface Temperature / degC\r\n"
                        + "0.0,8.4,0.0,1777636800.000,20.0\r\n0.1,8.1,-12.5,");
        TextLog log = new TextLog("pack.bdf", text.toString().getBytes(StandardCharsets.UTF_8));
        Trace again = log.read().trace();
        assertThat(again.timeSeconds()).isEqualTo(TRACE.timeSeconds());
        assertThat(again.packVolts()).isEqualTo(TRACE.packVolts());
        assertThat(again.currentAmps()).isEqualTo(TRACE.currentAmps());
        assertThat(again.startedAt()).isEqualTo(TRACE.startedAt());
        assertThat(again.temperatureKelvins()).isEqualTo(TRACE.temperatureKelvins());
        assertThat(log.preview().why()).isEqualTo("the battery data format states it");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Test Time / s,Voltage / V,Current / A,Step Time / s,Ambient Temperature / degC",
                "test_time_second,voltage_volt,current_ampere,step_time_second,ambient_temperature_celsius",
            })
    void knowsLabelsAndMachineNames(String header) {
        Trace trace =
                TextLog.of(header, "0,3.9,-1,0,25", "1,3.8,-2,1,25").read().trace();
        assertThat(trace.currentAmps()).containsExactly(1, 2);
        assertThat(trace.hasTemperature()).as("ambient is not the pack").isFalse();
    }

    @Test
    void refusesWhatTheFormatCannotHold() {
        Trace volts = Trace.of(new double[] {0}, new double[] {8}, new double[0]);
        assertThatThrownBy(() -> BatteryDataFormat.write(volts, new StringWriter()))
                .hasMessageContaining("has no current");
        assertThatThrownBy(() -> BatteryDataFormat.writeCell(TRACE, 3, new StringWriter()))
                .hasMessageContaining("cell is 3; expected 1 to 2");
    }
}
