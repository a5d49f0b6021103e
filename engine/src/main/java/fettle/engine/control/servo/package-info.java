/**
 * Servos: pulses in and angles out, the signal that suits a servo, its ratings by voltage. No standard fixes the servo
 * signal; defaults are common practice and meant to be confirmed.
 */
@NullMarked
package fettle.engine.control.servo;

import org.jspecify.annotations.NullMarked;
