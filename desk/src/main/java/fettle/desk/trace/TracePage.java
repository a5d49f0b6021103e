package fettle.desk.trace;

import fettle.desk.frame.Figures;
import fettle.engine.health.TraceHealth;
import fettle.engine.trace.Count;
import fettle.engine.trace.SegmentRecord;
import fettle.engine.trace.TraceEvent;
import fettle.engine.trace.TraceRecord;
import fettle.engine.units.TradeUnit;
import fettle.workshop.KeptTrace;
import fettle.workshop.TraceWords;
import java.util.ArrayList;
import java.util.List;

/**
 * One trace: its picture is drawn from its samples; here is what was found in it.
 *
 * @param facts name and value of each figure
 * @param segments what the pack did
 * @param events what went wrong
 * @param resistance each cell's resistance in the longest run; empty if it cannot be told
 * @param resistanceRemarks what was assumed of it
 * @param remarks what was mended, cannot be known or is doubtful
 * @param acknowledged what was found when its events were looked into; empty while nobody has
 * @param fault why a finding just given was refused; empty if none was
 * @param writable whether it can be written in the open format
 */
public record TracePage(
        long id,
        String pack,
        String file,
        List<Fact> facts,
        List<SegmentRow> segments,
        List<EventRow> events,
        List<ResistanceRow> resistance,
        List<String> resistanceRemarks,
        List<String> remarks,
        String acknowledged,
        String fault,
        boolean writable) {

    /** A figure of the whole trace. */
    public record Fact(String name, String value) {}

    /** One segment; {@code from} and {@code to} in seconds for the picture. */
    public record SegmentRow(String kind, String at, String lasting, String passed, double from, double to) {}

    /** One event; {@code at} in seconds for the picture. */
    public record EventRow(String when, String sentence, double at) {}

    static TracePage of(KeptTrace trace, TraceHealth health, String fault, Figures figures) {
        TraceRecord record = trace.record();
        return new TracePage(
                trace.id(),
                trace.pack(),
                record.fileName(),
                facts(record, figures),
                record.segments().stream()
                        .map(segment -> row(segment, record.hasCurrent()))
                        .toList(),
                record.events().stream().map(TracePage::row).toList(),
                health.cells().stream().map(ResistanceRow::of).toList(),
                health.remarks(),
                record.remarks(),
                record.acknowledged(),
                fault,
                record.hasCurrent());
    }

    private static List<Fact> facts(TraceRecord record, Figures figures) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("begun", figures.moment(record.startedAt())));
        facts.add(new Fact("lasts", Figures.clock(record.durationSeconds())));
        facts.add(new Fact("samples", Long.toString(record.samples())));
        Count total = record.total();
        facts.add(new Fact("passed", TraceWords.passed(record.hasCurrent(), total)));
        if (record.hasCurrent()) {
            facts.add(new Fact("energy out", TradeUnit.WATT_HOUR.print(total.outJoules(), 2)));
            facts.add(new Fact("energy in", TradeUnit.WATT_HOUR.print(total.inJoules(), 2)));
        }
        Double offset = record.offsetAmps();
        if (offset != null) {
            facts.add(new Fact(
                    "current shown at rest",
                    TradeUnit.MILLIAMPERE.print(offset, 1) + ", "
                            + TradeUnit.MILLIAMPERE_HOUR.print(offset * total.countedSeconds(), 1) + " of the count"));
        }
        if (!record.note().isBlank()) {
            facts.add(new Fact("note", record.note()));
        }
        return facts;
    }

    private static SegmentRow row(SegmentRecord segment, boolean counted) {
        return new SegmentRow(
                segment.kind().label(),
                Figures.clock(segment.fromSeconds()),
                Figures.clock(segment.durationSeconds()),
                segment.kind().isLoaded() ? TraceWords.passed(counted, segment.count()) : "",
                segment.fromSeconds(),
                segment.toSeconds());
    }

    private static EventRow row(TraceEvent event) {
        return new EventRow(Figures.clock(event.atSeconds()), event.sentence(), event.atSeconds());
    }
}
