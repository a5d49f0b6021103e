/** Packs, what was read from them, and the assessment of their state. Current is positive when discharging. */
@NullMarked
package fettle.engine.pack;

import org.jspecify.annotations.NullMarked;
