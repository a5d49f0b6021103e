/** Set-ups: a craft's sheets and sweeps, and a linkage drawn as it moves. */
@NullMarked
package fettle.desk.setup;

import org.jspecify.annotations.NullMarked;
