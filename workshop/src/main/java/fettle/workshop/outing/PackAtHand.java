package fettle.workshop.outing;

import fettle.engine.pack.Assessment;
import fettle.engine.pack.Pack;
import fettle.engine.rule.Limits;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A pack offered for an outing, as it is when the planning starts.
 *
 * @param assessment its state
 * @param limits the rules that hold for it
 * @param capacityCoulombs its present capacity [C]
 * @param stepOhms resistance of a cell [Ω]
 * @param chargeFraction its charge, from the low end of what is known; 0 if it is left out
 * @param freeAt when it is free and cool; {@code null} for at once
 * @param leftOutBecause why it cannot be planned; empty if it can
 */
public record PackAtHand(
        Assessment assessment,
        Limits limits,
        double capacityCoulombs,
        double stepOhms,
        double chargeFraction,
        @Nullable Instant freeAt,
        String leftOutBecause) {
    public Pack pack() {
        return assessment.pack();
    }

    public String tag() {
        return pack().tag();
    }

    public boolean usable() {
        return leftOutBecause.isEmpty();
    }
}
