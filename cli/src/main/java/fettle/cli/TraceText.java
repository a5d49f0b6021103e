package fettle.cli;

import fettle.desk.frame.Figures;
import fettle.engine.trace.Count;
import fettle.engine.trace.SegmentRecord;
import fettle.engine.trace.TraceEvent;
import fettle.engine.trace.TraceRecord;
import fettle.engine.units.Counted;
import fettle.engine.units.TradeUnit;
import fettle.workshop.KeptTrace;
import fettle.workshop.RegisterReading;
import fettle.workshop.TracePreview;
import fettle.workshop.TraceWords;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Traces as text. */
final class TraceText {
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);
    private static final int SHORTEST_SHOWN = 1;

    private TraceText() {}

    /** One line: number, pack, when, how long, what passed, how many events, which file. */
    static String line(KeptTrace trace, ZoneId zone) {
        TraceRecord record = trace.record();
        return String.format(
                Locale.ROOT,
                "%4d  %-8s %-16s %10s  %-28s %-9s %s",
                trace.id(),
                trace.pack(),
                when(record, zone),
                Figures.clock(record.durationSeconds()),
                TraceWords.passed(record.hasCurrent(), record.total()),
                record.events().isEmpty() ? "" : Counted.of(record.events().size(), "event"),
                record.fileName());
    }

    static String full(KeptTrace trace, ZoneId zone) {
        TraceRecord record = trace.record();
        List<String> lines = new ArrayList<>();
        lines.add("trace " + trace.id() + " of " + trace.pack() + ": " + record.fileName());
        lines.addAll(Wrapped.lines("when", when(record, zone) + ", " + Figures.clock(record.durationSeconds())));
        lines.addAll(Wrapped.lines(
                "samples", record.samples() + (record.cells() > 0 ? ", " + record.cells() + " cells" : "")));
        lines.addAll(Wrapped.lines("passed", TraceWords.passed(record.hasCurrent(), record.total()) + energy(record)));
        Double offset = record.offsetAmps();
        if (offset != null) {
            lines.addAll(Wrapped.lines(
                    "offset",
                    TradeUnit.MILLIAMPERE.print(offset, 1) + " shown at rest: "
                            + TradeUnit.MILLIAMPERE_HOUR.print(
                                    offset * record.total().countedSeconds(), 1)
                            + " of the count"));
        }
        lines.add("");
        record.segments().stream()
                .filter(segment -> segment.durationSeconds() >= SHORTEST_SHOWN)
                .map(segment -> segment(segment, record.hasCurrent()))
                .forEach(lines::add);
        for (TraceEvent event : record.events()) {
            lines.addAll(Wrapped.lines("event", "at " + Figures.clock(event.atSeconds()) + ": " + event.sentence()));
        }
        record.resistances().forEach(found -> lines.addAll(Wrapped.lines("R0", ResistanceText.kept(found))));
        if (!record.acknowledged().isEmpty()) {
            lines.addAll(Wrapped.lines("looked", "into: " + record.acknowledged()));
        }
        record.remarks().forEach(remark -> lines.addAll(Wrapped.lines("note", remark)));
        if (!record.note().isBlank()) {
            lines.addAll(Wrapped.lines("said", record.note()));
        }
        return String.join(System.lineSeparator(), lines);
    }

    static String preview(TracePreview preview) {
        List<String> lines = new ArrayList<>();
        lines.add(preview.file() + ": " + preview.dialect());
        int number = 1;
        for (TracePreview.ColumnUse column : preview.columns()) {
            lines.add(String.format(
                    Locale.ROOT,
                    "  column %2d  %-28s %-12s %s%s",
                    number,
                    column.name(),
                    column.use(),
                    column.unit(),
                    column.sure() ? "" : "  (by its figures)"));
            number++;
        }
        lines.addAll(Wrapped.lines("positive", preview.positive() + ": " + preview.why()));
        preview.rows().forEach(row -> lines.add("  " + String.join(" | ", row)));
        preview.questions().forEach(question -> lines.addAll(Wrapped.lines("ask", question)));
        return String.join(System.lineSeparator(), lines);
    }

    static String registers(RegisterReading reading) {
        List<String> lines = new ArrayList<>();
        for (RegisterReading.Entry entry : reading.registers()) {
            lines.add(String.format(Locale.ROOT, "%-24s %s  %s", entry.name(), entry.raw(), entry.meaning()));
        }
        if (!reading.check().isEmpty()) {
            lines.add("to take it as a check: fettle check TAG " + reading.check());
        }
        reading.remarks().forEach(remark -> lines.addAll(Wrapped.lines("note", remark)));
        return String.join(System.lineSeparator(), lines);
    }

    private static String segment(SegmentRecord segment, boolean counted) {
        return String.format(
                        Locale.ROOT,
                        "  %10s – %-10s %-26s %s",
                        Figures.clock(segment.fromSeconds()),
                        Figures.clock(segment.toSeconds()),
                        segment.kind().label(),
                        segment.kind().isLoaded() ? TraceWords.passed(counted, segment.count()) : "")
                .stripTrailing();
    }

    private static String energy(TraceRecord record) {
        Count total = record.total();
        return total.outJoules() + total.inJoules() == 0
                ? ""
                : "; " + TradeUnit.WATT_HOUR.print(total.outJoules(), 2) + " out, "
                        + TradeUnit.WATT_HOUR.print(total.inJoules(), 2) + " in";
    }

    private static String when(TraceRecord record, ZoneId zone) {
        Instant startedAt = record.startedAt();
        return startedAt == null ? "no date" : WHEN.format(startedAt.atZone(zone));
    }
}
