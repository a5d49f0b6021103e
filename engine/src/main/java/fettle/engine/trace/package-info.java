/**
 * Time series from any logger: what was recorded, where it rests, charges and runs, what passed through it, and what
 * went wrong in it.
 *
 * <p>Current is positive when discharging, everywhere; the readers of files turn the sign on the way in. Columns are
 * primitive arrays that are shared, not copied: nobody writes to them after a trace is made.
 */
@NullMarked
package fettle.engine.trace;

import org.jspecify.annotations.NullMarked;
