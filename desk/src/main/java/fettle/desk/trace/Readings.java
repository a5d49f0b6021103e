package fettle.desk.trace;

import fettle.engine.units.Fault;
import fettle.engine.units.InputException;
import fettle.workshop.TraceAdded;
import fettle.workshop.TraceChoices;
import fettle.workshop.TraceProgress;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Long logs being read, one after the other, beside the desk's pages: how far each is, and a way to stop it. Thread-safe. */
final class Readings {
    private static final int MOST_REMEMBERED = 16;

    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "reading of logs");
        thread.setDaemon(true); // a desk that closes does not wait for it; nothing is kept until it is whole
        return thread;
    });
    private final Map<String, Reading> readings = new LinkedHashMap<>();

    /** One log being read, or that was. */
    static final class Reading implements TraceProgress {
        private final String pack;
        private final TraceChoices choices;
        private volatile long doneBytes;
        private volatile long totalBytes;
        private volatile boolean stopped;
        private volatile @Nullable TraceAdded added;
        private volatile List<Fault> faults = List.of();

        private Reading(String pack, TraceChoices choices) {
            this.pack = pack;
            this.choices = choices;
        }

        String pack() {
            return pack;
        }

        TraceChoices choices() {
            return choices;
        }

        @Override
        public boolean goOn(long done, long total) {
            doneBytes = done;
            totalBytes = total;
            return !stopped;
        }

        void stop() {
            stopped = true;
        }

        /** How much of the file was read, in per cent; below 100 until what was found is in the book. */
        int perCent() {
            return totalBytes == 0 ? 0 : (int) Math.min(99, 100 * doneBytes / totalBytes);
        }

        boolean ended() {
            return added != null || !faults.isEmpty();
        }

        /** What was kept; empty while it is read, and where it was refused. */
        Optional<TraceAdded> added() {
            return Optional.ofNullable(added);
        }

        /** Why it was refused or stopped; none while it is read. */
        List<Fault> faults() {
            return faults;
        }
    }

    /**
     * Begins to read.
     *
     * @param token what the log waits under
     * @param work reads it, telling how far it is
     */
    synchronized void begin(String token, String pack, TraceChoices choices, Function<TraceProgress, TraceAdded> work) {
        Reading reading = new Reading(pack, choices);
        readings.put(token, reading);
        if (readings.size() > MOST_REMEMBERED) {
            readings.remove(readings.keySet().iterator().next());
        }
        worker.execute(() -> read(reading, work));
    }

    private static void read(Reading reading, Function<TraceProgress, TraceAdded> work) {
        try {
            reading.added = work.apply(reading);
        } catch (InputException refused) {
            reading.faults = refused.faults();
        } catch (RuntimeException broken) {
            reading.faults = List.of(new Fault("file", "the reading broke off: " + broken.getMessage()));
        }
    }

    synchronized Optional<Reading> find(String token) {
        return Optional.ofNullable(readings.get(token));
    }
}
