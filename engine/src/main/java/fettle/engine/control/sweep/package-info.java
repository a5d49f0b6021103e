/**
 * Sweeps: a servo's current, and where measured its angle, against the pulse. Pulses in seconds, currents in amperes into
 * the servo. The thresholds that tell binding from load are Fettle's own choice, tried on generated sweeps
 * (docs/accuracy.md); no published ones were found.
 */
@NullMarked
package fettle.engine.control.sweep;

import org.jspecify.annotations.NullMarked;
