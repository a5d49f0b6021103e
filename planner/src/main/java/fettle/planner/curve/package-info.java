/**
 * Charge curves of the planner from the engine's simulation: straight pieces that never understate time or power, with their
 * error told.
 */
@NullMarked
package fettle.planner.curve;

import org.jspecify.annotations.NullMarked;
