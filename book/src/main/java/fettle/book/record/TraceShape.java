package fettle.book.record;

import fettle.engine.trace.Count;
import fettle.engine.trace.EventKind;
import fettle.engine.trace.SegmentKind;
import fettle.engine.trace.SegmentRecord;
import fettle.engine.trace.TraceEvent;
import fettle.engine.trace.TraceRecord;
import fettle.engine.trace.TraceResistance;
import fettle.engine.trace.TraceRest;
import java.time.Instant;
import java.util.List;
import java.util.Objects;

/** Traces with their segments and events; the file itself is kept apart, by what its bytes are. */
public final class TraceShape implements Shape<TraceRecord> {
    private static final String SEGMENTS = "pack_trace_segment";
    private static final String EVENTS = "pack_trace_event";
    private static final String RESTS = "pack_trace_rest";
    private static final String RESISTANCES = "pack_trace_resistance";

    @Override
    public Kind kind() {
        return Kind.TRACE;
    }

    @Override
    public Row toRow(TraceRecord trace, References references) {
        Instant startedAt = trace.startedAt();
        return Row.empty()
                .with("file_name", trace.fileName())
                .with("file_sha256", trace.sha256())
                .with("file_bytes", trace.fileBytes())
                .with("mapping", trace.mapping())
                .with("samples", trace.samples())
                .with("cells", trace.cells())
                .withFlag("has_current", trace.hasCurrent())
                .with("started_at_utc", startedAt == null ? null : startedAt.toString())
                .with("duration_seconds", trace.durationSeconds())
                .with("offset_amps", trace.offsetAmps())
                .with("remarks", String.join("\n", trace.remarks()))
                .with("note", trace.note())
                .with("acknowledged", trace.acknowledged().isEmpty() ? null : trace.acknowledged())
                .withParts(
                        SEGMENTS, trace.segments().stream().map(TraceShape::row).toList())
                .withParts(EVENTS, trace.events().stream().map(TraceShape::row).toList())
                .withParts(RESTS, trace.rests().stream().map(TraceShape::row).toList())
                .withParts(
                        RESISTANCES,
                        trace.resistances().stream().map(TraceShape::row).toList());
    }

    @Override
    public TraceRecord fromRow(Row row, References references) {
        return new TraceRecord(
                row.text("file_name"),
                row.text("file_sha256"),
                row.whole("file_bytes"),
                row.text("mapping"),
                row.whole("samples"),
                Math.toIntExact(row.whole("cells")),
                row.flag("has_current"),
                row.textOrNull("started_at_utc") == null ? null : InstantText.read(row, "started_at_utc"),
                row.real("duration_seconds"),
                row.realOrNull("offset_amps"),
                row.parts(SEGMENTS).stream().map(TraceShape::segment).toList(),
                row.parts(EVENTS).stream().map(TraceShape::event).toList(),
                row.parts(RESTS).stream().map(TraceShape::rest).toList(),
                row.parts(RESISTANCES).stream().map(TraceShape::resistance).toList(),
                row.text("remarks").isEmpty()
                        ? List.of()
                        : List.of(row.text("remarks").split("\n")),
                row.text("note"),
                Objects.requireNonNullElse(row.textOrNull("acknowledged"), ""));
    }

    private static Row row(SegmentRecord segment) {
        Count count = segment.count();
        return Row.empty()
                .with("kind", segment.kind().name())
                .with("from_seconds", segment.fromSeconds())
                .with("to_seconds", segment.toSeconds())
                .with("out_coulombs", count.outCoulombs())
                .with("in_coulombs", count.inCoulombs())
                .with("out_joules", count.outJoules())
                .with("in_joules", count.inJoules())
                .with("counted_seconds", count.countedSeconds())
                .with("unseen_seconds", count.unseenSeconds());
    }

    private static SegmentRecord segment(Row row) {
        return new SegmentRecord(
                Shape.constant(SegmentKind.class, row, "kind"),
                row.real("from_seconds"),
                row.real("to_seconds"),
                new Count(
                        row.real("out_coulombs"),
                        row.real("in_coulombs"),
                        row.real("out_joules"),
                        row.real("in_joules"),
                        row.real("counted_seconds"),
                        row.real("unseen_seconds")));
    }

    private static Row row(TraceEvent event) {
        return Row.empty()
                .with("kind", event.kind().name())
                .with("cell", event.cell())
                .with("at_seconds", event.atSeconds())
                .with("duration_seconds", event.durationSeconds())
                .with("worst_si", event.worstSi())
                .with("limit_si", event.limitSi());
    }

    private static Row row(TraceRest rest) {
        return Row.empty()
                .with("cell", rest.cell())
                .with("at_seconds", rest.atSeconds())
                .with("rested_seconds", rest.restedSeconds())
                .with("volts", rest.volts())
                .with("kelvins", rest.kelvins());
    }

    private static TraceRest rest(Row row) {
        return new TraceRest(
                Math.toIntExact(row.whole("cell")),
                row.real("at_seconds"),
                row.real("rested_seconds"),
                row.real("volts"),
                row.realOrNull("kelvins"));
    }

    private static Row row(TraceResistance found) {
        return Row.empty()
                .with("cell", found.cell())
                .with("ohms_at_25", found.ohmsAt25())
                .with("deviation_ohms", found.deviationOhms());
    }

    private static TraceResistance resistance(Row row) {
        return new TraceResistance(
                Math.toIntExact(row.whole("cell")), row.real("ohms_at_25"), row.real("deviation_ohms"));
    }

    private static TraceEvent event(Row row) {
        return new TraceEvent(
                Shape.constant(EventKind.class, row, "kind"),
                Math.toIntExact(row.whole("cell")),
                row.real("at_seconds"),
                row.real("duration_seconds"),
                row.real("worst_si"),
                row.real("limit_si"));
    }
}
