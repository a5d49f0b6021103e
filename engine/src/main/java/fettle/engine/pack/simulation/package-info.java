/**
 * What happens in packs when something is asked of them: cells in series and parallel, packs joined, bleed, protocols.
 *
 * <p>Current is positive when discharging, seen from the packs. All resistances, leads and bleed resistors included, are
 * linear within a step, so each step is solved in closed form; currents are held over a step and chosen so that the demand
 * is met by the mean over the step (second order in the step).
 */
@NullMarked
package fettle.engine.pack.simulation;

import org.jspecify.annotations.NullMarked;
