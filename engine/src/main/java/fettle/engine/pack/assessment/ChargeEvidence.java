package fettle.engine.pack.assessment;

import fettle.engine.units.Estimate;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * What one entry of the record says of the charge in the pack.
 *
 * @param at when
 * @param lowest charge of the weakest cell, or of the mean cell where cells were not read; {@code null} if it cannot be told
 * @param highestFraction charge of the fullest cell; 0 if it cannot be told
 * @param how the entry in words
 */
record ChargeEvidence(Instant at, @Nullable Estimate lowest, double highestFraction, String how) {}
