package fettle.cli;

import static fettle.cli.ShellAssert.done;
import static fettle.cli.ShellAssert.refused;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Servos, set-up sheets and kept sweeps on the command line. */
final class ControlWordsTest {
    private static final String RUDDER = "rudder; wing; 1100 1500 1900; 80 mm; high 25/25, low 15/15; arm 10; horn 15";

    @TempDir
    private Path home;

    private Shell shell;

    @BeforeEach
    void open() {
        shell = new Shell(home);
        done(shell.line("craft add Harrier --kind plane"));
    }

    @Test
    void servoComesBackAsTypedAndEditsOneField() {
        done(shell.run(
                "servo",
                "add",
                "wing",
                "--turn",
                "9.7°",
                "--ratings",
                "4.8V 4.5kgcm 0.15s; 6V 5.5kgcm 0.12s stall 1.6A"));
        done(shell.line("servo edit wing --frame 333Hz"));

        assertThat(shell.line("servo show wing").out())
                .contains("1500 µs", "9.7 °", "333 Hz", "6V 5.5kg·cm 0.12s stall 1.6A");
        assertThat(shell.line("servo list").out()).contains("wing", "4.8 V 4.5 kg·cm, 6.0 V 5.5 kg·cm");
        assertThat(shell.line("servo add tail --centre 300 --ratings 6V").err())
                .contains("centre pulse is 300 µs", "is not volts, torque");
    }

    @Test
    void laterSheetTellsWhatDiffersAndTheCheckList() {
        done(shell.run("setup", "add", "Harrier", "--surface", RUDDER, "--date", "2026-05-01"));
        done(shell.run("setup", "add", "harrier", "--surface", RUDDER.replace("1500", "1512"), "--note", "new horn"));

        assertThat(shell.line("setup show Harrier").out())
                .contains("rudder, centre: 1500 µs → 1512 µs", "new horn", "34.6 mm", "[ ] Failsafe");
        assertThat(shell.line("setup list Harrier").out().lines()).hasSize(2);
        done(shell.line("undo"));
        assertThat(shell.line("setup show Harrier").out()).contains("set 2026-05-01", "nothing differs");
    }

    @Test
    void surfaceAndPowerAreWorkedOutFromTheSheet() {
        done(shell.run("servo", "add", "wing", "--ratings", "6V 5.5kgcm 0.12s idle 9mA moving 0.28A stall 1.6A"));
        done(shell.run("setup", "add", "Harrier", "--surface", RUDDER + "; pushrod aft 120 above 0 arm 90 horn 90"));

        assertThat(shell.line("setup show Harrier").out()).contains("pushrod, hinge 120.0 mm aft");
        assertThat(shell.line("setup surface Harrier rudder --volts 6V --speed 30m/s --working")
                        .out())
                .contains(
                        "times the torque to design for",
                        "Pulse for high up (25.0°)",
                        "Stall torque at 6.0 V",
                        "ISO 2533");
        assertThat(shell.line("setup power Harrier --input 12.6 --output 6 --continuous 3 --peak 5")
                        .out())
                .contains("Taken: rudder; 0.009 A; 0.28 A; 1.6 A; 300 mm; 26; data.");
        refused(shell.line("setup surface Harrier flap"), "there are rudder");
        refused(shell.line("setup surface Harrier rudder --volts 8.4V"), "its data covers 6.00 V to 6.00 V");
        refused(
                shell.line("setup power Nobody --input 12 --output 6 --continuous 3 --peak 5"),
                "Nobody is not in this book");
    }

    @Test
    void sweepMayBeTypedPointByPoint() {
        List<String> words = new ArrayList<>(List.of("sweep", "--craft", "Harrier", "--surface", "rudder"));
        IntStream.rangeClosed(0, 20).forEach(step -> {
            words.add("--point");
            words.add((1000 + 40 * step) + " " + (200 + 150 * Math.max(0, step - 12)) + "mA");
        });
        Shell.Result swept = shell.run(words.toArray(String[]::new));

        done(swept);
        assertThat(swept.out()).startsWith("End points ").contains("binds above");
        assertThat(shell.line("sweep").err()).contains("give either FILE or readings");
        refused(shell.run("sweep", "--point", "1000", "--point", "1100 0.2A"), "line 1: \"1000\" is no reading");
    }

    @Test
    void sheetIsRefusedWithItsLine() {
        refused(
                shell.run("setup", "add", "Harrier", "--surface", RUDDER, "--surface", "elevator; wing"),
                "line 2: 2 parts");
        refused(shell.run("setup", "add", "Kite", "--surface", RUDDER), "Kite is not in this book");
        refused(shell.run("setup", "add", "Harrier", "--surface", RUDDER, "--date", "1.5.2026"), "2026-05-16");
        refused(shell.line("setup show Harrier"), "no set-up sheet yet");
    }

    @Test
    void keptSweepIsComparedWithTheOneBefore() throws IOException {
        done(shell.run("sweep", sweep(1850).toString(), "--craft", "Harrier", "--surface", "rudder"));
        var later = shell.run("sweep", sweep(1800).toString(), "--craft", "Harrier", "--surface", "Rudder");

        assertThat(later.out()).contains("since the earlier sweep", "moved by -50");
        assertThat(later.err()).contains("swept Rudder of Harrier");
        refused(shell.run("sweep", sweep(1800).toString(), "--craft", "Harrier"), "names no surface");
    }

    private Path sweep(int binding) throws IOException {
        return Files.writeString(
                home.resolve("sweep.csv"),
                "pulse_us,current_mA\n"
                        + IntStream.rangeClosed(0, 100)
                                .map(step -> 1000 + 10 * step)
                                .mapToObj(pulse ->
                                        pulse + "," + (200 + pulse % 20 / 10 + 6 * Math.max(0, pulse - binding)))
                                .collect(Collectors.joining("\n")));
    }
}
