package fettle.engine.health;

import fettle.engine.units.Estimate;
import java.time.Instant;

/**
 * One rung of the resistance ladder: a cell's resistance against its own first reading by the same method.
 *
 * @param at when
 * @param method how it was read: the keeper's words, or {@link ResistanceLadder#TRACES}
 * @param cell from 1; 0 for the mean cell
 * @param ohmsAt25 at 25 °C [Ω]
 * @param timesFirst times its first reading by this method
 */
public record LadderReading(Instant at, String method, int cell, Estimate ohmsAt25, double timesFirst) {}
