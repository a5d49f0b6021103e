package fettle.engine.trace;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the record keeps of a trace beside the file as received.
 *
 * @param fileName the file's name as received
 * @param sha256 what its bytes are known by, 64 hexadecimal digits
 * @param fileBytes its size
 * @param mapping how its columns are read, as the reader of files writes it
 * @param samples samples it has
 * @param cells cells logged one by one
 * @param hasCurrent whether current was logged, so that charge was counted
 * @param startedAt time of its first sample; {@code null} if the logger knew no date
 * @param durationSeconds from first to last sample [s]
 * @param offsetAmps what its current shows at rest [A]; {@code null} if it never rested or no current was logged
 * @param segments what the pack did
 * @param events what went wrong
 * @param rests volts at the end of its rests
 * @param resistances what its longest run says of the cells' resistance; empty where it cannot tell
 * @param remarks what was mended, cannot be known or is doubtful, in sentences
 * @param note free text
 * @param acknowledged what was found when its events were looked into; empty while nobody has
 */
public record TraceRecord(
        String fileName,
        String sha256,
        long fileBytes,
        String mapping,
        long samples,
        int cells,
        boolean hasCurrent,
        @Nullable Instant startedAt,
        double durationSeconds,
        @Nullable Double offsetAmps,
        List<SegmentRecord> segments,
        List<TraceEvent> events,
        List<TraceRest> rests,
        List<TraceResistance> resistances,
        List<String> remarks,
        String note,
        String acknowledged) {
    public TraceRecord {
        segments = List.copyOf(segments);
        events = List.copyOf(events);
        rests = List.copyOf(rests);
        resistances = List.copyOf(resistances);
        remarks = List.copyOf(remarks);
    }

    /** The same with what its longest run says of resistance. */
    public TraceRecord withResistances(List<TraceResistance> found) {
        return new TraceRecord(
                fileName,
                sha256,
                fileBytes,
                mapping,
                samples,
                cells,
                hasCurrent,
                startedAt,
                durationSeconds,
                offsetAmps,
                segments,
                events,
                rests,
                found,
                remarks,
                note,
                acknowledged);
    }

    /** The same, its events looked into. */
    public TraceRecord acknowledgedAs(String what) {
        return new TraceRecord(
                fileName,
                sha256,
                fileBytes,
                mapping,
                samples,
                cells,
                hasCurrent,
                startedAt,
                durationSeconds,
                offsetAmps,
                segments,
                events,
                rests,
                resistances,
                remarks,
                note,
                what);
    }

    /** Charge and energy of the whole trace. */
    public Count total() {
        return segments.stream().map(SegmentRecord::count).reduce(Count.NOTHING, Count::plus);
    }
}
