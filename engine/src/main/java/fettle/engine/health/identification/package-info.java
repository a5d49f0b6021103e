/**
 * The equivalent circuit of a cell from its own log: series resistance, one or two resistor-capacitor pairs, start charge.
 *
 * <p>Current is positive when discharging; volts are of one cell. Residuals of a real log are correlated in time, so every ±
 * comes from their own correlation, not from the count of rows. Left out: dependence on current, hysteresis, any change of
 * resistance within one window.
 */
@NullMarked
package fettle.engine.health.identification;

import org.jspecify.annotations.NullMarked;
