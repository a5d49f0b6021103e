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

    private static String rows(int from, int to, double volts) {
        StringBuilder text = new StringBuilder();
        for (int i = from; i < to; i++) {
            text.append(i).append(',').append(volts).append(",0\n");
        }
        return text.toString();
    }

    /** At 3.5 V a cell, then nothing for a quarter of an hour, then 4.1 V. */
    private Path swapped() {
        return write("swapped.csv", "time_s,volts,amps\n" + rows(0, 120, 14.0) + rows(1020, 1140, 16.4));
    }

    @Test
    void asksWhetherTheLogGoesOnWithAnotherPack() {
        Path file = swapped();
        TraceChoices sign = new TraceChoices("", "discharge", "", "", "");
        assertThatThrownBy(() -> workshop.traces().add("P07", file, sign, TraceProgress.NONE))
                .isInstanceOf(InputException.class)
                .hasMessage(
                        "volts at rest rise from 14.00 to 16.40 V across the gap at 1020 s with no charge seen: another"
                                + " pack, or a charge that was not logged. If it is all P07, say so (--one-pack); else cut the log"
                                + " before sample 121 and add each part to the pack it is of.");
        assertNothingKept();
        TraceChoices one = new TraceChoices("", "discharge", "", "", "one");
        assertThat(workshop.traces()
                        .add("P07", file, one, TraceProgress.NONE)
                        .trace()
                        .record()
                        .remarks())
                .anyMatch(remark -> remark.contains("another pack"));
    }

    @Test
    void takesALogOfTwoPacksOnceForEach() {
        Path file = write(
                "pair.csv",
                "time_s,A volts,A current,B volts,B current\n0,15.4,1,16.0,2\n1,15.0,6,15.5,9\n2,15.3,2,16.0,2\n");
        assertThatThrownBy(() -> add(file)).hasMessageContaining("looks like a log of two packs side by side");
        assertNothingKept();
        TraceChoices first = new TraceChoices("volts=2,amps=3", "", "", "", "");
        TraceChoices second = new TraceChoices("volts=4,amps=5", "", "", "", "");
        long one = workshop.traces()
                .add("P07", file, first, TraceProgress.NONE)
                .trace()
                .id();
        assertThatThrownBy(() -> workshop.traces().add("P08", file, first, TraceProgress.NONE))
                .hasMessageContaining("in this book already");
        long other = workshop.traces()
                .add("P08", file, second, TraceProgress.NONE)
                .trace()
                .id();
        assertThat(workshop.traces().read(one).packVolts()).containsExactly(15.4, 15.0, 15.3);
        assertThat(workshop.traces().read(other).packVolts()).containsExactly(16.0, 15.5, 16.0);
        assertThatThrownBy(() -> workshop.traces().add("P08", file, second, TraceProgress.NONE))
                .hasMessageContaining("in this book already");
        assertThat(workshop.keeping().verify()).isEmpty();
    }

    @Test
    void everyRefusalLeavesNothingBehind() throws IOException {
        Files.write(folder.resolve("photo.csv"), new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, 0, 0, 0});
        assertThatThrownBy(() -> add(folder.resolve("photo.csv"))).hasMessageContaining("photo.csv is a JPEG picture");
        Path pack = write("pack6.csv", "time_s,volts\n0,25.0\n1,25.0\n2,24.9\n");
        assertThatThrownBy(() -> add(pack))
                .hasMessageContaining("the log's volts reach 25.00 V, 6.25 V a cell for the 4 cells of P07");
        Path eight = write("eight.csv", "time_s,c1,c2,c3,c4,c5,c6,c7,c8\n0,4,4,4,4,4,4,4,4\n1,4,4,4,4,4,4,4,4\n");
        assertThatThrownBy(() -> add(eight))
                .hasMessageContaining("If it is of two packs side by side, map the cells of");
        Path words = write("words.csv", "time_s,volts,height\n0,NaN,3\n1,nan,4\n");
        assertThatThrownBy(() -> add(words)).hasMessageContaining("no row with volts or current");
        assertNothingKept();
    }

    @Test
    void keepsVoltsAloneAndConstantColumnsAndSaysWhatCannotBeKnown() {
        TraceRecord volts = add(write("volts.csv", "time_s,volts\n0,16.0\n1,15.9\n2,15.8\n"))
                .record();
        assertThat(volts.hasCurrent()).isFalse();
        assertThat(volts.resistances()).isEmpty();
        assertThat(volts.remarks())
                .anyMatch(remark -> remark.startsWith("no current was logged: charge, energy and resistance cannot"));
        Path still = write("still.csv", "time_s,volts,amps\n" + rows(0, 200, 15.2));
        TraceRecord constant = workshop.traces()
                .add("P07", still, new TraceChoices("", "discharge", "", "", ""), TraceProgress.NONE)
                .trace()
                .record();
        assertThat(constant.remarks())
                .contains("pack volts never changes in 200 samples: the sensor may not be connected.");
    }

    private void assertNothingKept() {
        assertThat(workshop.traces().list()).isEmpty();
        assertThat(workshop.history().recent(0, 10)).hasSize(2);
        assertThat(folder.resolve("book").resolve("logs"))
                .satisfiesAnyOf(
                        logs -> assertThat(logs).doesNotExist(),
                        logs -> assertThat(logs).isEmptyDirectory());
    }

    @Test
    void readsTheNextLogOfASourceAsTheFirst() {
        Path first = write("first.csv", "zeit,U,X1\n0,16.0,0\n1,16.0,0\n2,16,0\n");
        TraceChoices said = new TraceChoices("time=1:s,amps=X1:mA", "charge", "", "first", "");
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
