/** Sweeps from files: which column is what, in which unit, and what the sweep says. */
@NullMarked
package fettle.workshop.sweep;

import org.jspecify.annotations.NullMarked;
