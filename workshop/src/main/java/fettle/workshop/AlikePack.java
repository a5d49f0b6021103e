package fettle.workshop;

import fettle.engine.health.LadderReading;
import fettle.engine.pack.PresentCapacity;
import fettle.engine.pack.Standing;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A pack beside those of the same label bought together.
 *
 * @param tag its tag
 * @param bought when
 * @param standing its standing
 * @param capacity what it holds
 * @param latest the latest resistance of each cell, by the way of reading used most
 * @param charges charges noted or logged
 * @param leaking true if a cell leaks faster than its neighbours
 */
public record AlikePack(
        String tag,
        @Nullable LocalDate bought,
        Standing standing,
        PresentCapacity capacity,
        List<LadderReading> latest,
        int charges,
        boolean leaking) {
    public AlikePack {
        latest = List.copyOf(latest);
    }
}
