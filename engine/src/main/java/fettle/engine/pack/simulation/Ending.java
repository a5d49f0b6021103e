package fettle.engine.pack.simulation;

import org.jspecify.annotations.Nullable;

/** When a protocol step in hand ends: at a known time, or at a condition watched. */
final class Ending {
    private final End[] watched;
    private final @Nullable End timed;
    private final double atSeconds;

    /** The ending of a step that begins at a time [s]. */
    Ending(ProtocolStep step, double beginsSeconds) {
        watched =
                step.ends().stream().filter(end -> end.kind() != EndKind.AFTER).toArray(End[]::new);
        timed = step.ends().stream()
                .filter(end -> end.kind() == EndKind.AFTER && end.value() <= step.mostSeconds())
                .findFirst()
                .orElse(null);
        atSeconds = beginsSeconds + step.mostSeconds();
    }

    /** The time it ends at the latest [s]; infinite if it has none. */
    double atSeconds() {
        return atSeconds;
    }

    /** Whether a condition is met at an instant; the time is left aside. */
    boolean isMet(Moment now) {
        for (End end : watched) {
            if (end.met(now)) {
                return true;
            }
        }
        return false;
    }

    /** The first condition met at an instant, else the time if it has come. */
    @Nullable
    End met(Moment now) {
        for (End end : watched) {
            if (end.met(now)) {
                return end;
            }
        }
        return now.seconds() >= atSeconds ? timed : null;
    }
}
