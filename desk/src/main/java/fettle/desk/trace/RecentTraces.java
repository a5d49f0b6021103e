package fettle.desk.trace;

import fettle.engine.health.ModelOverlay;
import fettle.engine.health.TraceHealth;
import fettle.engine.trace.Trace;
import fettle.workshop.KeptTrace;
import fettle.workshop.Traces;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Keeps the last few traces read, so that zooming does not read and identify the file anew. Thread-safe. */
final class RecentTraces {
    private static final int MOST_KEPT = 3;

    private final Traces traces;
    private final Map<Long, Looked> kept = new LinkedHashMap<>();

    RecentTraces(Traces traces) {
        this.traces = traces;
    }

    /**
     * A trace with what was found in it.
     *
     * @param model its volts by the circuits found; {@code null} where none were
     */
    record Looked(
            Trace samples, TraceHealth health, @Nullable ModelOverlay model) {}

    synchronized Looked look(long id) {
        KeptTrace trace = traces.find(id);
        Looked looked = kept.remove(id);
        Looked found = looked == null ? looked(trace) : looked;
        kept.put(id, found);
        if (kept.size() > MOST_KEPT) {
            kept.remove(kept.keySet().iterator().next());
        }
        return found;
    }

    private Looked looked(KeptTrace trace) {
        Trace samples = traces.read(trace.id());
        TraceHealth health = traces.health(trace, samples);
        return new Looked(
                samples, health, traces.overlay(trace, samples, health).orElse(null));
    }
}
