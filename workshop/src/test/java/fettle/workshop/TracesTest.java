package fettle.workshop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.charge.TaskKind;
import fettle.engine.pack.Finding;
import fettle.engine.pack.Standing;
import fettle.engine.trace.EventKind;
import fettle.engine.trace.SegmentKind;
import fettle.engine.trace.Trace;
import fettle.engine.trace.TraceRecord;
import fettle.engine.units.InputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class TracesTest {
    @TempDir
    private Path folder;

    private Workshop workshop;

    @BeforeEach
    void open() {
        workshop = WorkshopFixtures.open(folder.resolve("book"));
        workshop.packs().add(WorkshopFixtures.pack("P07"));
        workshop.packs().add(WorkshopFixtures.pack("P08"));
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    /** A minute of rest, two of run at 30 A with one cell dipping, a minute of rest; a sample a second. */
    private Path flight(String name) {
        StringBuilder text = new StringBuilder("time_s,cell1_V,cell2_V,cell3_V,cell4_V,current_A\n");
        for (int i = 0; i < 240; i++) {
            boolean run = i >= 60 && i < 180;
            double volts = run ? 3.7 - 0.002 * (i - 60) : i < 60 ? 4.1 : 3.8;
            double third = i >= 150 && i < 156 ? 2.8 : volts;
            text.append(String.format(
                    Locale.ROOT, "%d,%.3f,%.3f,%.3f,%.3f,%d%n", i, volts, volts, third, volts, run ? 30 : 0));
        }
        return write(name, text.toString());
    }

    private Path write(String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text);
        } catch (IOException failed) {
            throw new AssertionError(failed);
        }
    }

    private KeptTrace add(Path file) {
        return workshop.traces()
                .add("p07", file, TraceChoices.NONE, TraceProgress.NONE)
                .trace();
    }

    @Test
    void keepsWhatIsInALogAndTheLogItself() throws IOException {
        Path file = flight("flight.csv");
        TraceAdded added = workshop.traces().add("p07", file, TraceChoices.NONE, TraceProgress.NONE);
        assertThat(added.entry().sentence()).isEqualTo("added trace flight.csv of P07: 1 run, 1000 mAh out, 2 events");
        TraceRecord record = workshop.traces().find(added.trace().id()).record();
        assertThat(record).isEqualTo(added.trace().record());
        assertThat(record.segments())
                .extracting(segment -> segment.kind())
                .containsExactly(SegmentKind.REST, SegmentKind.RUN, SegmentKind.REST);
        assertThat(record.total().outCoulombs()).isCloseTo(30 * 120, within(1e-6));
        assertThat(record.events())
                .extracting(event -> event.kind())
                .containsExactly(EventKind.UNDER_VOLTAGE, EventKind.CELL_COLLAPSE);
        assertThat(record.events().get(0).cell()).isEqualTo(3);
        Files.delete(file);
        Trace again = workshop.traces().read(added.trace().id());
        assertThat(again.size()).isEqualTo(240);
        assertThat(again.cellVolts()[2][150]).isEqualTo(2.8);
        assertThat(again.currentAmps()[100]).isEqualTo(30);
        assertThat(workshop.keeping().verify()).isEmpty();
    }

    @Test
    void takesTheSameFileTwiceAsOneTrace() throws IOException {
        KeptTrace first = add(flight("flight.csv"));
        Path copy = Files.copy(folder.resolve("flight.csv"), folder.resolve("copy.csv"));
        assertThatThrownBy(() -> workshop.traces().add("P08", copy, TraceChoices.NONE, TraceProgress.NONE))
                .isInstanceOf(InputException.class)
                .hasMessage("copy.csv is in this book already, byte for byte: trace " + first.id()
                        + " of P07. See: trace show " + first.id() + ".");
        assertThat(workshop.traces().list()).hasSize(1);
    }

    @Test
    void undoesAndTakesAgain() {
        Path file = flight("flight.csv");
        TraceAdded added = workshop.traces().add("P07", file, TraceChoices.NONE, TraceProgress.NONE);
        workshop.history().undo(added.entry().id());
        assertThat(workshop.traces().list()).isEmpty();
        assertThat(add(file).record().sha256()).isEqualTo(added.trace().record().sha256());
        assertThat(workshop.traces().ofPack("P07")).hasSize(1);
        assertThat(workshop.keeping().verify()).isEmpty();
    }

    @Test
    void savesNothingOfALogThatCannotBeRead() {
        Path wrong = write("wrong.csv", "time_s,volts,amps\n0,16.4,1\n1,16.0,6\n2,16.3,x\n3,15,9\n");
        assertThatThrownBy(() -> add(wrong)).hasMessageContaining("wrong.csv line 4, column 3 (amps)");
        Path six = write("six.csv", "time_s,c1,c2,c3,c4,c5,c6\n0,3.9,3.9,3.9,3.9,3.9,3.9\n1,3.9,3.9,3.9,3.9,3.9,3.9\n");
        assertThatThrownBy(() -> add(six)).hasMessageContaining("the log has 6 cells; P07 has 4 in series");
        assertThatThrownBy(() ->
                        workshop.traces().add("P07", flight("stopped.csv"), TraceChoices.NONE, (done, total) -> false))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("was stopped; nothing was kept");
        assertThat(workshop.traces().list()).isEmpty();
        assertThat(workshop.history().recent(0, 10)).hasSize(2);
    }

    @Test
    void readsTheNextLogOfASourceAsTheFirst() {
        Path first = write("first.csv", "zeit,U,X1\n0,16.0,0\n1,16.0,0\n2,16,0\n");
        TraceChoices said = new TraceChoices("time=1:s,amps=X1:mA", "charge", "", "first");
        workshop.traces().add("P07", first, said, TraceProgress.NONE);
        Path second = write("second.csv", "zeit,U,X1\n0,16.0,500\n1,16.1,500\n");
        TracePreview preview = workshop.traces().preview(second, TraceChoices.NONE);
        assertThat(preview.columns()).extracting(TracePreview.ColumnUse::use).containsExactly("time", "volts", "amps");
        assertThat(preview.columns().get(2).unit()).isEqualTo("mA");
        assertThat(preview.positive()).isEqualTo("charge");
        assertThat(preview.why()).isEqualTo("as with earlier logs of this source");
        assertThat(workshop.traces().read(add(second).id()).currentAmps()[0]).isEqualTo(-0.5);
    }

    @Test
    void goesOutIntoAnArchiveAndABackupAndComesBack() throws IOException {
        KeptTrace trace = add(flight("flight.csv"));
        workshop.keeping().exportTo(folder.resolve("book.zip"));
        workshop.keeping().backup(folder.resolve("book.backup"));
        try (Workshop imported = WorkshopFixtures.open(folder.resolve("imported"))) {
            imported.keeping().importFrom(folder.resolve("book.zip"));
            assertThat(imported.traces().list()).isEqualTo(workshop.traces().list());
            assertThat(imported.traces().read(trace.id()).packVolts())
                    .isEqualTo(workshop.traces().read(trace.id()).packVolts());
        }
        assertThat(Files.size(folder.resolve("book.backup"))).isPositive();
    }

    @Test
    void whatALogShowsPastALimitCountsAgainstThePackUntilItWasLookedInto() {
        KeptTrace trace = add(flight("flight.csv"));
        PackFile before = workshop.review().pack("P07");
        assertThat(ids(before)).contains("trace-cell-collapse", "trace-under-voltage");
        assertThat(before.review().assessment().standing()).isEqualTo(Standing.GROUNDED);
        assertThat(before.review().tasks()).anyMatch(task -> task.kind() == TaskKind.INSPECT);
        assertThat(before.exceptions())
                .extracting(exception -> exception.event().kind())
                .containsExactly(EventKind.UNDER_VOLTAGE, EventKind.CELL_COLLAPSE);

        assertThatThrownBy(() -> workshop.traces().acknowledge(trace.id(), " "))
                .hasMessageContaining("say what was found");
        JournalEntry entry = workshop.traces().acknowledge(trace.id(), "all cells 3.85 V after a day");
        assertThat(entry.sentence())
                .isEqualTo("looked into 2 events of trace " + trace.id()
                        + " of P07 (flight.csv): all cells 3.85 V after a day");
        PackFile after = workshop.review().pack("P07");
        assertThat(ids(after)).noneMatch(id -> id.startsWith("trace-"));
        assertThat(after.review().assessment().passed())
                .contains("nothing in its traces past a limit that was not looked into");
        assertThat(after.exceptions())
                .hasSize(2)
                .allMatch(exception -> !exception.acknowledged().isEmpty());
        assertThatThrownBy(() -> workshop.traces().acknowledge(trace.id(), "again"))
                .hasMessageContaining("looked into already");

        workshop.history().undo(entry.id());
        assertThat(ids(workshop.review().pack("P07"))).contains("trace-cell-collapse");
        assertThat(workshop.keeping().verify()).isEmpty();
    }

    private static List<String> ids(PackFile file) {
        return file.review().assessment().findings().stream().map(Finding::id).toList();
    }

    @Test
    void writesTheOpenFormat() throws IOException {
        KeptTrace trace = add(flight("flight.csv"));
        Path out = folder.resolve("out.bdf.csv");
        workshop.traces().export(trace.id(), out);
        assertThat(Files.readAllLines(out)).hasSize(241).startsWith("Test Time / s,Voltage / V,Current / A");
        assertThatThrownBy(() -> workshop.traces().export(trace.id(), out)).hasMessageContaining("cannot be written");
        assertThatThrownBy(() -> workshop.traces().find(99)).hasMessage("there is no trace 99. See: trace list.");
    }
}
