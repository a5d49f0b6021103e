package fettle.cli;

import static fettle.cli.ShellAssert.done;
import static fettle.cli.ShellAssert.misused;
import static fettle.cli.ShellAssert.refused;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class TraceWordTest {
    @TempDir
    private Path home;

    private Shell shell;
    private String flight = "";

    @BeforeEach
    void packAndLog() throws IOException {
        shell = new Shell(home);
        done(shell.line("pack add P07 --chemistry LiPo --cells 3S --capacity 2200mAh"));
        StringBuilder text = new StringBuilder("time;voltage [V];current [A]\n");
        for (int i = 0; i < 180; i++) {
            boolean run = i >= 60 && i < 120;
            text.append(i).append(run ? ";11,1;20,0\n" : ";12,3;0,0\n");
        }
        flight = Files.writeString(home.resolve("flight.csv"), text).toString();
    }

    @Test
    void addsListsAndShows() {
        Shell.Result added = shell.run("trace", "add", "P07", flight);
        done(added);
        assertThat(added.out())
                .contains("added trace flight.csv of P07: 1 run, 333 mAh out, 0 events")
                .contains("rest", "run");
        assertThat(shell.line("trace list").out()).contains("P07", "333 mAh out", "flight.csv");
        assertThat(shell.line("trace show 1").out()).contains("trace 1 of P07", "passed 333 mAh out; 3.70 Wh out");
        assertThat(shell.line("trace show 1 --json").out()).contains("\"sha256\"");
        assertThat(shell.line("trace resistance 1").out()).containsAnyOf("R0 ", "cannot be told");
        done(shell.line("undo"));
        assertThat(shell.line("trace list").out()).isBlank();
    }

    @Test
    void previewsWithoutSaving() {
        Shell.Result preview = shell.run("trace", "add", "P07", flight, "--preview");
        done(preview);
        assertThat(preview.out())
                .contains(
                        "separated by semicolons, decimal comma",
                        "volts",
                        "amps",
                        "discharge: when the current steps up");
        assertThat(shell.line("trace list").out()).isBlank();
    }

    @Test
    void writesTheOpenFormatOnce() {
        done(shell.run("trace", "add", "P07", flight));
        String out = home.resolve("out.csv").toString();
        done(shell.run("trace", "export", "1", out));
        assertThat(home.resolve("out.csv")).exists();
        refused(shell.run("trace", "export", "1", out), "cannot be written");
    }

    @Test
    void refusesInOneSentence() throws IOException {
        refused(shell.run("trace", "add", "P09", flight), "P09");
        refused(shell.run("trace", "add", "P07", home.resolve("none.csv").toString()), "is not a file");
        Path photo = Files.write(home.resolve("photo.csv"), new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, 0, 0});
        refused(shell.run("trace", "add", "P07", photo.toString()), "is a JPEG picture");
        refused(shell.run("trace", "add", "P07", flight, "--positive", "up"), "expected discharge or charge");
        done(shell.run("trace", "add", "P07", flight));
        refused(shell.run("trace", "add", "P07", flight), "in this book already", "trace 1 of P07");
        refused(shell.line("trace show 7"), "there is no trace 7");
        misused(shell.line("trace show seven"), "NUMBER");
    }

    @Test
    void tellsWhatRegistersSay() throws IOException {
        Path dump = Files.writeString(
                home.resolve("dump.csv"),
                "register,raw\nVoltage,0x3138\n0x0A,65535\nTemperature,2982\nBatteryStatus,0x0080\nnonsense\n");
        Shell.Result told = shell.run("trace", "registers", dump.toString());
        done(told);
        assertThat(told.out())
                .contains("Voltage", "12.600 V", "-1 mA", "25.05 °C", "INITIALIZED error=0")
                .contains("fettle check TAG 12.600V 25.1C", "line 6 is no register");
        Files.writeString(dump, "Voltage,0x3138\nCurrent,0xEC78\n");
        assertThat(shell.run("trace", "registers", dump.toString()).out())
                .contains("5.00 A flows: these are no rest volts")
                .doesNotContain("fettle check");
        Files.writeString(dump, "a,b\n1,2\n");
        refused(shell.run("trace", "registers", dump.toString()), "lists no register");
    }
}
