/** Set-up sheets: what every surface of a craft was set to, what changed since, and what to check before the first run. */
@NullMarked
package fettle.engine.control.setup;

import org.jspecify.annotations.NullMarked;
