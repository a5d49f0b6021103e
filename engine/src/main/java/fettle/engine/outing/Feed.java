package fettle.engine.outing;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A charger at a place with what feeds it there.
 *
 * @param spot where
 * @param charger the charger's name
 * @param source the source's name
 * @param efficiencyFraction share of the source's power that reaches the packs
 * @param from from when the source gives power, e.g. while a generator has fuel; {@code null} for no such limit
 * @param until until when; {@code null} for no such limit
 */
public record Feed(
        Spot spot,
        String charger,
        String source,
        double efficiencyFraction,
        @Nullable Instant from,
        @Nullable Instant until) {}
