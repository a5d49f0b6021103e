package fettle.workshop.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TypedSweepTest {
    @Test
    void readsPulseCurrentAndAngleWithOrWithoutUnits() {
        SweepReading bare = read(pulse -> pulse + " 0.2 " + (pulse - 1500) / 10);
        SweepReading units = read(pulse ->
                pulse / 1000 + "," + String.format("%03d", pulse % 1000) + " ms; 0,20 A; " + (pulse - 1500) / 10 + "°");

        for (SweepReading reading : new SweepReading[] {bare, units}) {
            assertThat(reading.sweep().points().get(0).pulseSeconds()).isCloseTo(1000e-6, within(1e-12));
            assertThat(reading.sweep().points().get(0).amps()).isCloseTo(0.2, within(1e-12));
            assertThat(reading.sweep().points().get(0).angleRadians()).isCloseTo(Math.toRadians(-50), within(1e-12));
        }
        assertThat(bare.file()).isEqualTo("typed readings");
    }

    @Test
    void asksWhatAFileWouldBeAskedFor() {
        assertThatThrownBy(() -> read(pulse -> "0.2 " + pulse)).hasMessageContaining("pulse");
        assertThatThrownBy(() -> read(pulse -> pulse + " 9")).hasMessageContaining("mA");
        assertThatThrownBy(() -> read(pulse -> pulse + (pulse < 1200 ? " 200mA" : " 0.2A")))
                .hasMessageContaining("more than one unit: mA, A");
        assertThatThrownBy(() -> read(pulse -> pulse + (pulse < 1200 ? " 200mA 3" : " 200mA")))
                .hasMessageContaining("some readings have an angle");
    }

    @Test
    void namesTheLineThatIsNoReading() {
        assertThatThrownBy(() -> TypedSweep.read("1000 200mA\n\n1100\n1200 fast", SweepChoices.NONE))
                .hasMessageContaining("line 3: \"1100\" is no reading")
                .hasMessageContaining("line 4: \"1200 fast\" is no reading");
        assertThatThrownBy(() -> TypedSweep.read(" \n", SweepChoices.NONE)).hasMessageContaining("no reading is typed");
        assertThatThrownBy(() -> TypedSweep.read("1000 200mA\n1500 200mA\n2000 210mA", SweepChoices.NONE))
                .hasMessageContaining("3");
        assertThatThrownBy(() -> read(pulse -> 2 * pulse + 1000 + " 200mA")).hasMessageContaining("500 to 2500 µs");
    }

    private static SweepReading read(IntFunction<String> line) {
        return TypedSweep.read(
                IntStream.iterate(1000, pulse -> pulse <= 1600, pulse -> pulse + 40)
                        .mapToObj(line)
                        .collect(Collectors.joining("\n")),
                SweepChoices.NONE);
    }
}
