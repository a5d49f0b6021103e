package fettle.workshop;

import fettle.engine.pack.Assessment;
import fettle.engine.pack.Pack;
import fettle.engine.pack.PackHistory;

/**
 * A pack as sums about it need it.
 *
 * @param assessment its state now
 * @param history its record as noted
 */
public record KnownPack(Assessment assessment, PackHistory history) {
    public Pack pack() {
        return assessment.pack();
    }
}
