/**
 * Control set-ups: what servo pulses do to surfaces. Angles in radians, counter-clockwise positive; pulses in seconds;
 * currents positive into the servo. Every answer brings its working, its doubts and the cautions that belong to the
 * action; none of it replaces the maker's instructions, the club's rules or local codes.
 */
@NullMarked
package fettle.engine.control;

import org.jspecify.annotations.NullMarked;
