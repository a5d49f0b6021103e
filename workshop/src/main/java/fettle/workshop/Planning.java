package fettle.workshop;

import fettle.engine.outing.KeptPlan;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/** A plan being searched in the background: how far it has come, and the way to stop it. Thread-safe. */
public final class Planning {
    private final String outing;
    private final AtomicReference<@Nullable KeptPlan> best = new AtomicReference<>();
    private final AtomicReference<State> state = new AtomicReference<>(State.PREPARING);
    private final AtomicReference<String> trouble = new AtomicReference<>("");
    private final AtomicBoolean cancelled = new AtomicBoolean();

    Planning(String outing) {
        this.outing = outing;
    }

    /** How far a planning has come. */
    public enum State {
        PREPARING("working out charge times"),
        SEARCHING("searching"),
        DONE("done"),
        REFUSED("refused");

        private final String word;

        State(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /**
     * What can be told of it.
     *
     * @param outing the outing's name
     * @param state how far it has come
     * @param trouble why it was refused; empty unless it was
     * @param best the best plan so far; {@code null} before the first
     */
    public record Progress(
            String outing,
            State state,
            String trouble,
            @Nullable KeptPlan best) {
        public boolean running() {
            return state == State.PREPARING || state == State.SEARCHING;
        }
    }

    /** What can be told now. */
    public Progress progress() {
        return new Progress(outing, state.get(), trouble.get(), best.get());
    }

    /** Stops it at the next look; the best plan so far is kept. */
    public void cancel() {
        cancelled.set(true);
    }

    boolean goOn(KeptPlan plan) {
        best.set(plan);
        state.set(State.SEARCHING);
        return !cancelled.get();
    }

    void done() {
        state.set(State.DONE);
    }

    void refused(String why) {
        trouble.set(why);
        state.set(State.REFUSED);
    }
}
