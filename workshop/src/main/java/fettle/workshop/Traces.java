package fettle.workshop;

import fettle.book.intake.BatteryDataFormat;
import fettle.book.intake.Column;
import fettle.book.intake.ColumnRole;
import fettle.book.intake.LogFile;
import fettle.book.intake.LogPreview;
import fettle.book.intake.Mapping;
import fettle.book.intake.MappingText;
import fettle.book.intake.PositiveCurrent;
import fettle.book.intake.Preview;
import fettle.book.intake.ReadingChoices;
import fettle.book.intake.ReadingStoppedException;
import fettle.book.intake.TraceReader;
import fettle.book.record.Row;
import fettle.book.record.Shapes;
import fettle.book.store.Items;
import fettle.book.store.JournalRow;
import fettle.book.store.Stored;
import fettle.book.store.TraceFiles;
import fettle.engine.health.ModelOverlay;
import fettle.engine.health.TraceHealth;
import fettle.engine.pack.Pack;
import fettle.engine.trace.Trace;
import fettle.engine.trace.TraceLimits;
import fettle.engine.trace.TraceRecord;
import fettle.engine.trace.TraceRecorder;
import fettle.engine.trace.TraceResistance;
import fettle.engine.units.Estimate;
import fettle.engine.units.InputException;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Takes logs, keeps them as received, and tells what is in them. Thread-safe. */
public final class Traces {
    private final Ledger ledger;
    private final Shelf<Pack> packs;
    private final Rules rules;
    private final Items<TraceRecord> items;

    Traces(Ledger ledger, Shelf<Pack> packs, Rules rules) {
        this.ledger = ledger;
        this.packs = packs;
        this.rules = rules;
        this.items = ledger.book().items(Shapes.TRACE);
    }

    /**
     * What a log would be read as. Saves nothing.
     *
     * @throws InputException if it is no table of figures
     */
    public TracePreview preview(Path file, TraceChoices choices) {
        Preview preview = look(LogFile.of(file), reading(choices));
        return new TracePreview(
                preview.file(),
                preview.dialect().words(),
                preview.mapping().columns().stream().map(Traces::use).toList(),
                preview.mapping().positive().key(),
                preview.why(),
                preview.rows(),
                preview.questions());
    }

    /**
     * Reads a log, reviews it against the pack's limits and keeps it as received. All of it or nothing.
     *
     * @throws InputException if it cannot be read, cannot be of this pack, is in the book already, or was stopped
     * @throws UnknownNameException if there is no such pack
     */
    public TraceAdded add(String packTag, Path path, TraceChoices choices, TraceProgress progress) {
        LogFile file = LogFile.of(path);
        Stored<Pack> pack = ledger.use(() -> packs.stored(packTag));
        String sha256 = TraceFiles.sha256(file);
        String tag = pack.item().tag();
        ReadingChoices said = reading(choices);
        Preview preview = look(file, said);
        refuseKept(file, sha256, tag, MappingText.write(preview.mapping()));
        TraceRecord record = recorded(file, sha256, pack.item(), preview, said.zone(), progress, choices);
        ledger.book().traceFiles().keep(file, sha256); // on the disk before a row points at it
        return ledger.together(() -> {
            ledger.book().traceFiles().name(file, sha256);
            Row beside = Row.empty().with("pack_id", pack.id()).with("typed", typed(choices));
            JournalRow row = items.add(record, beside, ledger.note(TraceWords.added(tag, record), tag));
            return new TraceAdded(Ledger.fresh(row), new KeptTrace(row.itemId(), tag, record));
        });
    }

    /** Every trace, newest first. */
    public List<KeptTrace> list() {
        return packs.list().stream()
                .flatMap(pack -> ofPack(pack.name()).stream())
                .sorted(Comparator.comparingLong(KeptTrace::id).reversed())
                .toList();
    }

    /** The traces of one pack, newest first. */
    public List<KeptTrace> ofPack(String packTag) {
        Stored<Pack> pack = ledger.use(() -> packs.stored(packTag));
        String tag = pack.item().tag();
        return ledger.use(() -> items.ofPack(pack.id())).stream()
                .map(stored -> new KeptTrace(stored.id(), tag, stored.item()))
                .sorted(Comparator.comparingLong(KeptTrace::id).reversed())
                .toList();
    }

    /** @throws UnknownNameException if there is no such trace */
    public KeptTrace find(long id) {
        return list().stream()
                .filter(trace -> trace.id() == id)
                .findFirst()
                .orElseThrow(() -> new UnknownNameException("there is no trace " + id + ". See: trace list."));
    }

    /**
     * The samples of a trace, read again from the file as received.
     *
     * @throws InputException if it has more samples than can be held at once
     */
    public Trace read(long id) {
        TraceRecord record = find(id).record();
        LogFile file = ledger.book().traceFiles().kept(record.sha256(), record.fileName(), record.fileBytes());
        Mapping mapping = MappingText.read(record.mapping());
        ReadingChoices said = new ReadingChoices(List.of(), mapping.positive(), ZoneOffset.UTC);
        Preview preview = LogPreview.of(file, said, mapping);
        Trace trace = TraceReader.read(file, preview, ZoneOffset.UTC, (done, total) -> true)
                .trace();
        return new Trace(
                trace.timeSeconds(),
                trace.packVolts(),
                trace.currentAmps(),
                trace.cellVolts(),
                trace.temperatureKelvins(),
                record.startedAt());
    }

    /** What the samples of a trace say of its pack's resistance and charge. Computed anew each time. */
    public TraceHealth health(KeptTrace trace, Trace samples) {
        Pack pack = ledger.use(() -> packs.stored(trace.pack())).item();
        return TraceHealth.of(samples, pack).withCharge(samples, pack);
    }

    /** Pack volts by the circuits found in a trace, beside what was logged; empty where there are none. */
    public Optional<ModelOverlay> overlay(KeptTrace trace, Trace samples, TraceHealth health) {
        return ModelOverlay.of(
                samples, ledger.use(() -> packs.stored(trace.pack())).item(), health);
    }

    /**
     * Notes that the events of a trace were looked into; they then no longer count against the pack. Can be undone.
     *
     * @param finding what was found, in words
     * @throws InputException if it has no events, was looked into already, or nothing was said
     * @throws UnknownNameException if there is no such trace
     */
    public JournalEntry acknowledge(long id, String finding) {
        return ledger.together(() -> {
            KeptTrace trace = find(id);
            refuseUnlessOpen(trace, finding.strip());
            TraceRecord answered = trace.record().acknowledgedAs(finding.strip());
            return Ledger.fresh(items.replace(
                    id, answered, ledger.note(TraceWords.acknowledged(trace, finding.strip()), trace.pack())));
        });
    }

    private static void refuseUnlessOpen(KeptTrace trace, String finding) {
        if (finding.isEmpty()) {
            throw new InputException("finding", "say what was found, e.g. cells read 3.85 V after a day, no swelling.");
        }
        if (trace.record().events().isEmpty()) {
            throw new InputException("id", "trace " + trace.id() + " has no events to look into.");
        }
        if (!trace.record().acknowledged().isEmpty()) {
            throw new InputException(
                    "id",
                    "the events of trace " + trace.id() + " were looked into already: "
                            + trace.record().acknowledged() + ". Undo that first.");
        }
    }

    /**
     * Writes a trace into a new file in the open Battery Data Format 1.3, the pack as the test object.
     *
     * @throws InputException if it has no volts or no current, or the file is there already or cannot be written
     */
    public void export(long id, Path file) {
        Trace trace = writable(id);
        try (Writer into = Files.newBufferedWriter(file, StandardOpenOption.CREATE_NEW)) {
            BatteryDataFormat.write(trace, into);
        } catch (IOException failed) {
            throw new InputException(
                    "file", file + " cannot be written. Name a new file in a folder that is there and not full.");
        }
    }

    /** The same, into what the caller holds open. */
    public void export(long id, Writer into) throws IOException {
        BatteryDataFormat.write(writable(id), into);
    }

    private Trace writable(long id) {
        Trace trace = read(id);
        BatteryDataFormat.require(trace);
        return trace;
    }

    private TraceRecord recorded(
            LogFile file,
            String sha256,
            Pack pack,
            Preview preview,
            ZoneId zone,
            TraceProgress progress,
            TraceChoices choices) {
        TraceLimits limits = TraceLimits.of(pack, rules.limits(pack));
        TraceRecorder recorder = new TraceRecorder(limits, pack.tag(), swaps(choices.packs()));
        try {
            List<String> remarks = TraceReader.readParts(file, preview, zone, progress::goOn, recorder::add);
            return recorder.finish(new TraceRecorder.Origin(
                            file.name(),
                            sha256,
                            file.bytes(),
                            MappingText.write(preview.mapping()),
                            remarks,
                            choices.note().strip()))
                    .withResistances(resistances(recorder, pack));
        } catch (ReadingStoppedException stopped) {
            throw new InputException("file", String.valueOf(stopped.getMessage()));
        }
    }

    /** Of the longest run; nothing where no current was logged or the data cannot tell. */
    private static List<TraceResistance> resistances(TraceRecorder recorder, Pack pack) {
        List<TraceResistance> found = new ArrayList<>();
        recorder.longestRun()
                .filter(run -> run.hasCurrent() && run.hasVolts())
                .ifPresent(run -> TraceHealth.of(run, pack).cells().forEach(cell -> {
                    Estimate at25 = cell.r0At25Ohms();
                    if (at25 != null) {
                        found.add(new TraceResistance(cell.number(), at25.value(), at25.standardDeviation()));
                    }
                }));
        return found;
    }

    private Preview look(LogFile file, ReadingChoices said) {
        Preview bare = LogPreview.of(file, ReadingChoices.NONE, null);
        return LogPreview.of(file, said, saved(bare.mapping().headings()));
    }

    /** The mapping of the newest trace whose log had the same headings. */
    private @Nullable Mapping saved(String headings) {
        return ledger.use(items::all).stream()
                .sorted(Comparator.comparingLong((Stored<TraceRecord> stored) -> stored.id())
                        .reversed())
                .map(stored -> MappingText.read(stored.item().mapping()))
                .filter(mapping -> mapping.headings().equals(headings))
                .findFirst()
                .orElse(null);
    }

    /** A log of two packs side by side may be taken once for each, with other columns. */
    private void refuseKept(LogFile file, String sha256, String tag, String mapping) {
        list().stream()
                .filter(trace -> trace.record().sha256().equals(sha256)
                        && (trace.pack().equals(tag) || trace.record().mapping().equals(mapping)))
                .findFirst()
                .ifPresent(trace -> {
                    boolean whole = ledger.book().traceFiles().isWhole(sha256);
                    ledger.book().traceFiles().keep(file, sha256);
                    throw new InputException(
                            "file",
                            file.name() + " is in this book already, byte for byte: trace " + trace.id() + " of "
                                    + trace.pack()
                                    + (whole ? "" : "; its kept copy was missing or damaged and is mended now")
                                    + ". See: trace show " + trace.id() + ".");
                });
    }

    private static ReadingChoices reading(TraceChoices choices) {
        return new ReadingChoices(
                ReadingChoices.parse(choices.columns()), positive(choices.positive()), zone(choices.zone()));
    }

    private static @Nullable PositiveCurrent positive(String written) {
        return switch (written.strip()) {
            case "" -> null;
            case "discharge" -> PositiveCurrent.DISCHARGES;
            case "charge" -> PositiveCurrent.CHARGES;
            default ->
                throw new InputException(
                        "positive",
                        "what a positive current means is \"" + written + "\"; expected discharge or charge.");
        };
    }

    private static TraceRecorder.Swaps swaps(String written) {
        return switch (written.strip()) {
            case "" -> TraceRecorder.Swaps.ASK;
            case "one" -> TraceRecorder.Swaps.ONE_PACK;
            default -> throw new InputException("packs", "packs is \"" + written + "\"; expected one, or nothing.");
        };
    }

    private static ZoneId zone(String written) {
        try {
            return written.isBlank() ? ZoneOffset.UTC : ZoneId.of(written.strip());
        } catch (DateTimeException unknown) {
            throw new InputException(
                    "zone", "time zone is \"" + written + "\"; expected a name like Europe/Zurich or +02:00.");
        }
    }

    private static String typed(TraceChoices choices) {
        List<String> said = new ArrayList<>();
        if (!choices.columns().isBlank()) {
            said.add("columns " + choices.columns());
        }
        if (!choices.positive().isBlank()) {
            said.add("positive " + choices.positive());
        }
        if (!choices.zone().isBlank()) {
            said.add("zone " + choices.zone());
        }
        return String.join("; ", said);
    }

    private static TracePreview.ColumnUse use(Column column) {
        String role = column.role().key();
        return new TracePreview.ColumnUse(
                column.name(),
                column.role() == ColumnRole.CELL_VOLTS ? role + " " + column.cell() : role,
                column.unit().symbol(),
                column.sure());
    }
}
