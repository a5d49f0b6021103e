package fettle.desk.trace;

import fettle.engine.trace.Trace;
import fettle.workshop.Traces;
import java.util.LinkedHashMap;
import java.util.Map;

/** Keeps the last few traces read, so that zooming does not read the file anew. Thread-safe. */
final class RecentTraces {
    private static final int MOST_KEPT = 3;

    private final Traces traces;
    private final Map<Long, Trace> kept = new LinkedHashMap<>();

    RecentTraces(Traces traces) {
        this.traces = traces;
    }

    synchronized Trace read(long id) {
        traces.find(id);
        Trace trace = kept.remove(id);
        Trace found = trace == null ? traces.read(id) : trace;
        kept.put(id, found);
        if (kept.size() > MOST_KEPT) {
            kept.remove(kept.keySet().iterator().next());
        }
        return found;
    }
}
