/**
 * The day as numbers: who is where and when, what feeds and charges, which packs, which runs are wanted, what comes first.
 *
 * <p>Times are whole minutes from the start of the problem; durations are rounded up. Charge is a fraction, 0 empty and 1 full.
 */
@NullMarked
package fettle.planner.problem;

import org.jspecify.annotations.NullMarked;
