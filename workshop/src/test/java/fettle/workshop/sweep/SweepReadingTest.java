package fettle.workshop.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.control.sweep.SweepPoint;
import fettle.engine.units.InputException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SweepReadingTest {
    @TempDir
    private Path folder;

    @Test
    void takesColumnsAndUnitsFromTheHeadings() {
        SweepReading reading = read(
                "time_s,pulse_us,current_mA,angle_deg",
                pulse -> String.format(Locale.ROOT, "%d,%d,%d,%.1f", pulse / 10, pulse, 200, 0.1 * (pulse - 1500)));

        SweepPoint first = reading.sweep().points().get(0);
        assertThat(first.pulseSeconds()).isCloseTo(1000e-6, within(1e-12));
        assertThat(first.amps()).isCloseTo(0.2, within(1e-12));
        assertThat(first.angleRadians()).isCloseTo(Math.toRadians(-50), within(1e-12));
        assertThat(reading.read()).anyMatch(read -> read.contains("in µs") && read.contains("in mA"));
    }

    @Test
    void readsDecimalCommasAndUnitsInARowOfTheirOwn() {
        SweepReading reading = read(
                "Puls;Strom\nms;A",
                pulse -> String.format(Locale.ROOT, "%.3f;0.25", pulse / 1000.0).replace('.', ','),
                "1",
                "2");

        assertThat(reading.sweep().points().get(0).pulseSeconds()).isCloseTo(1000e-6, within(1e-12));
        assertThat(reading.sweep().points().get(0).amps()).isCloseTo(0.25, within(1e-12));
    }

    @Test
    void asksWhereColumnsLookSwapped() {
        assertThatThrownBy(() -> read("pulse_us,current_ma", pulse -> "220," + pulse))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("look swapped");
    }

    @Test
    void asksWhereMilliampsAndAmpsWereMixedUp() {
        assertThatThrownBy(() -> read("pulse_us,current_A", pulse -> pulse + ",220"))
                .hasMessageContaining("are they in mA?");
        assertThatThrownBy(() -> read("pulse_us,current_mA", pulse -> pulse + ",0.22"))
                .hasMessageContaining("are they in A?");
        assertThatThrownBy(() -> read("pulse,current", pulse -> pulse + ",8.5")).hasMessageContaining("mA or A?");
        assertThat(read("pulse,current", pulse -> pulse + ",0.22")
                        .sweep()
                        .points()
                        .get(0)
                        .amps())
                .isCloseTo(0.22, within(1e-12));
    }

    @Test
    void namesLineAndColumnOfWhatIsNoNumber() {
        assertThatThrownBy(() -> read("pulse_us,current_mA", pulse -> pulse + (pulse == 1050 ? ",twenty" : ",20")))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("line 7, column 2 (current): \"twenty\"");
    }

    @Test
    void refusesAShortSweepAMissingFileAndAColumnThereIsNot() {
        assertThatThrownBy(() -> SweepReading.of(folder.resolve("none.csv"), SweepChoices.NONE))
                .hasMessageContaining("not a file");
        assertThatThrownBy(() -> write("pulse_us,current_mA\n1000,200\n1500,200\n2000,400\n", SweepChoices.NONE))
                .hasMessageContaining("3 readings");
        assertThatThrownBy(() -> read("pulse_us,current_mA", pulse -> pulse + ",20", "width", ""))
                .hasMessageContaining("no column \"width\"; there are pulse, current");
    }

    @Test
    void earlierSweepIsCompared() {
        SweepReading one = read("pulse_us,current_mA", pulse -> pulse + "," + (200 + 6 * Math.max(0, pulse - 1700)));
        SweepReading two = read("pulse_us,current_mA", pulse -> pulse + "," + (200 + 6 * Math.max(0, pulse - 1600)));

        assertThat(SweepAnswer.of(one).sinceEarlier()).isNull();
        assertThat(SweepAnswer.of(two, one.sweep()).sinceEarlier().remarks())
                .anyMatch(remark -> remark.id().equals("binding-moved"));
    }

    private SweepReading read(String heading, IntFunction<String> row) {
        return read(heading, row, "", "");
    }

    private SweepReading read(String heading, IntFunction<String> row, String pulse, String current) {
        String rows = IntStream.rangeClosed(0, 80)
                .mapToObj(step -> row.apply(1000 + 10 * step))
                .collect(Collectors.joining("\n"));
        return write(heading + "\n" + rows + "\n", new SweepChoices(pulse, current, "", "", "", null, null));
    }

    private SweepReading write(String text, SweepChoices choices) {
        try {
            return SweepReading.of(Files.writeString(folder.resolve("sweep.csv"), text), choices);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
