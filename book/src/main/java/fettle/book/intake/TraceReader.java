package fettle.book.intake;

import de.siegmar.fastcsv.reader.CsvParseException;
import fettle.engine.trace.Trace;
import fettle.engine.units.Fault;
import fettle.engine.units.InputException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Reads a log by its preview, row by row.
 *
 * <p>Memory does not grow with the log: {@link #readParts} hands on traces of bounded length. A field that is neither
 * figure nor missing is refused with its line and column; nothing is handed on as whole then. Not thread-safe.
 */
public final class TraceReader {
    /** Samples a trace held whole may have: 4 million, 320 MB with ten columns. */
    public static final int MOST_SAMPLES = 4_000_000;

    private static final int PART_SAMPLES = 500_000;
    private static final int MOST_FAULTS = 5;

    private final LogFile file;
    private final Preview preview;
    private final RowFields fields;
    private final Samples samples;
    private final TimeLine timeLine;
    private final Consumer<Trace> sink;
    private final int partSamples;
    private final ZoneId zone;
    private final List<Fault> faults = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private double origin = Double.NaN;
    private @Nullable Instant startedAt;
    private long rows;
    private long handedOn;
    private long headings;

    private TraceReader(LogFile file, Preview preview, ZoneId zone, int partSamples, Consumer<Trace> sink) {
        this.file = file;
        this.preview = preview;
        this.fields = new RowFields(file.name(), preview);
        this.samples = new Samples(preview.mapping().cells().size());
        this.timeLine = new TimeLine(fields.isClock(), this::sample);
        this.sink = sink;
        this.partSamples = partSamples;
        this.zone = zone;
    }

    /**
     * Reads a log of up to {@link #MOST_SAMPLES} as one trace.
     *
     * @throws InputException if it cannot be read, with line and column; or if it is longer
     * @throws ReadingStoppedException if {@code progress} says so
     */
    public static Reading read(LogFile file, Preview preview, ZoneId zone, ReadingProgress progress) {
        List<Trace> whole = new ArrayList<>();
        TraceReader reader = new TraceReader(file, preview, zone, MOST_SAMPLES, whole::add);
        reader.run(progress);
        if (whole.size() > 1) {
            throw new InputException(
                    "file",
                    file.name() + " has more than " + MOST_SAMPLES
                            + " samples, too many to hold at once. It can be counted and searched, not identified; cut it"
                            + " into its runs.");
        }
        return new Reading(whole.get(0), reader.rows, reader.remarks);
    }

    /**
     * Reads a log of any length in parts of up to half a million samples.
     *
     * @return what was mended on the way, in sentences
     */
    public static List<String> readParts(
            LogFile file, Preview preview, ZoneId zone, ReadingProgress progress, Consumer<Trace> sink) {
        TraceReader reader = new TraceReader(file, preview, zone, PART_SAMPLES, sink);
        reader.run(progress);
        return List.copyOf(reader.remarks);
    }

    private void run(ReadingProgress progress) {
        if (!preview.questions().isEmpty()) {
            throw new InputException(preview.questions().stream()
                    .map(question -> new Fault("columns", question))
                    .toList());
        }
        try (LogText.Opened text = LogText.open(file, progress);
                LogRows parted = new LogRows(text.reader(), preview.dialect())) {
            for (LogRow row = parted.next(); row != null; row = parted.next()) {
                take(row);
            }
        } catch (CsvParseException malformed) {
            throw refusal(malformed);
        } catch (IOException | UncheckedIOException cut) {
            throw cutOff(cut);
        }
        timeLine.finish();
        refuseFaults();
        handOn();
        if (handedOn == 0) {
            throw new InputException("file", file.name() + " has no row with volts or current in it.");
        }
        remarks.addAll(timeLine.remarks());
        samples.remark(remarks);
        if (headings > 0) {
            remarks.add("the headings come again " + (headings == 1 ? "once" : headings + " times")
                    + ": several logs in one file.");
        }
    }

    /** The library wraps what went wrong below it. */
    private RuntimeException refusal(CsvParseException malformed) {
        if (malformed.getCause() instanceof ReadingStoppedException stopped) {
            return stopped;
        }
        if (malformed.getCause() instanceof IOException || malformed.getCause() instanceof UncheckedIOException) {
            return cutOff(malformed.getCause());
        }
        return new InputException(
                "file",
                file.name() + " cannot be parted into fields after row " + rows + ": "
                        + String.valueOf(malformed.getMessage()).replace('\n', ' ')
                        + " Look for a quotation mark that is never closed.");
    }

    private InputException cutOff(Throwable cut) {
        return new InputException(
                "file",
                file.name() + " breaks off after row " + rows + " (" + said(cut) + "). Copy it from the logger again.");
    }

    /** What went wrong at the bottom; the library's words around it say nothing to a person. */
    private static String said(Throwable cut) {
        Throwable bottom = cut;
        while (bottom.getCause() != null) {
            bottom = bottom.getCause();
        }
        return String.valueOf(bottom.getMessage()).replace('\n', ' ');
    }

    private void take(LogRow row) {
        if (row.line() < preview.dialect().firstDataLine() || row.isComment()) {
            return;
        }
        try {
            double stamp = fields.seconds(row);
            if (!Double.isNaN(stamp)) {
                double[] values = fields.values(row);
                if (startedAt == null && rows == 0) {
                    startedAt = fields.instant(row, zone);
                }
                rows++;
                timeLine.add(stamp, values, row.line());
            }
        } catch (FieldException wrong) {
            if (fields.isHeading(row)) {
                headings++;
                return;
            }
            faults.add(new Fault("file", String.valueOf(wrong.getMessage())));
            if (faults.size() == MOST_FAULTS) {
                refuseFaults();
            }
        }
    }

    private void refuseFaults() {
        if (!faults.isEmpty()) {
            throw new InputException(faults);
        }
    }

    private void sample(double seconds, double[] values) {
        origin = Double.isNaN(origin) ? seconds : origin;
        double since = seconds - origin;
        if (since > samples.lastSeconds()) {
            if (samples.size() == partSamples) {
                handOn();
            }
            samples.add(since, values);
        }
    }

    private void handOn() {
        Trace trace = samples.trace(startedAt);
        if (trace != null) {
            handedOn += trace.size();
            sink.accept(trace);
        }
        samples.clear();
    }
}
