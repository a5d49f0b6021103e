package fettle.desk.trace;

import fettle.desk.frame.Figures;
import fettle.engine.trace.TraceRecord;
import fettle.workshop.KeptTrace;
import fettle.workshop.Registered;
import fettle.workshop.TraceWords;
import fettle.workshop.Workshop;
import java.util.List;

/**
 * Every trace, newest first, and the form that takes another.
 *
 * @param packs tags a log can be of
 * @param pack the tag chosen; empty for none yet
 * @param rows the traces
 * @param faults why a log just given was refused; none if none was
 */
public record TracesPage(List<String> packs, String pack, List<Row> rows, List<String> faults) {

    /** One trace. */
    public record Row(long id, String pack, String when, String lasting, String passed, int events, String file) {}

    static TracesPage of(Workshop workshop, String pack, List<String> faults, Figures figures) {
        return new TracesPage(
                workshop.packs().list().stream()
                        .filter(item -> !item.retired())
                        .map(Registered::name)
                        .toList(),
                pack,
                workshop.traces().list().stream()
                        .map(trace -> row(trace, figures))
                        .toList(),
                faults);
    }

    private static Row row(KeptTrace trace, Figures figures) {
        TraceRecord record = trace.record();
        return new Row(
                trace.id(),
                trace.pack(),
                figures.moment(record.startedAt()),
                Figures.clock(record.durationSeconds()),
                TraceWords.passed(record.hasCurrent(), record.total()),
                record.events().size(),
                record.fileName());
    }
}
