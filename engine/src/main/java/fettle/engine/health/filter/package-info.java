/**
 * Charge while a pack runs: a sigma-point filter on the cell's identified circuit, and what its surprises say of health.
 *
 * <p>Current is positive when discharging. What the circuit leaves unexplained is a state of its own with a memory, so the
 * filter does not mistake the model's slow errors for charge.
 */
@NullMarked
package fettle.engine.health.filter;

import org.jspecify.annotations.NullMarked;
